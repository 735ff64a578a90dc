package bellcrank.examples.file;

import bellcrank.statics.motion.Deflection;
import bellcrank.statics.motion.Drum;
import bellcrank.statics.motion.HandWinch;
import bellcrank.statics.motion.Handle;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes what a file asks beyond balance, limits and travel. */
final class InquiriesText {

  private final AmountText amounts;
  private final Optional<TravelPlan> travel;

  InquiriesText(AmountText amounts, Optional<TravelPlan> travel) {
    this.amounts = amounts;
    this.travel = travel;
  }

  void write(Inquiries asked, YamlLayout out) {
    section(out, "find", asked.finds().isEmpty());
    asked.finds().forEach(one -> out.entry(one.name(), find(one)));
    section(out, "winches", asked.winches().isEmpty());
    asked.winches().forEach(one -> out.entry(one.name(), winch(one)));
    section(out, "measured lines", asked.measuredLines().isEmpty());
    asked.measuredLines().forEach(one -> out.entry(one.name(), line(one)));
    section(out, "hang", asked.hangs().isEmpty());
    asked.hangs().forEach(one -> out.entry(one.name(), carried(one)));
    section(out, "balance point", asked.handles().isEmpty());
    asked.handles().forEach(one -> out.entry(one.name(), carried(one)));
  }

  private static void section(YamlLayout out, String key, boolean empty) {
    if (!empty) {
      out.section(key);
    }
  }

  private String find(FindPlan plan) {
    Dimension dimension = plan.unknown().dimension(travel);
    Flow flow = new Flow().put("unknown", unknown(plan.unknown()));
    plan.range()
        .ifPresent(
            range ->
                flow.put("from", amount(range.from(), dimension))
                    .put("to", amount(range.to(), dimension)));
    flow.text("ask", plan.ask().text())
        .put("equals", amount(plan.target().si(), plan.target().dimension()));
    plan.expected().ifPresent(one -> flow.put("expect", expected(one)));
    return flow.written();
  }

  private String amount(double si, Dimension dimension) {
    return amounts.ofKind(si, dimension);
  }

  private String expected(FindPlan.Values values) {
    List<String> written = new ArrayList<>();
    values.values().forEach(one -> written.add(amounts.withUnit(one.quantity().si(), one.unit())));
    Flow flow = new Flow().put("values", Flow.items(written));
    if (!values.values().isEmpty()) {
      flow.put("digits", Integer.toString(values.digits()));
    }
    return flow.text("source", values.source()).written();
  }

  private String unknown(FindUnknown unknown) {
    DirectionText directions = new DirectionText(amounts);
    if (unknown instanceof FindUnknown.Move move) {
      return new Flow()
          .texts("move", move.points())
          .put("along", directions.of(move.along()))
          .written();
    }
    if (unknown instanceof FindUnknown.Place place) {
      return new Flow()
          .text("place", place.point())
          .put("along", directions.of(place.along()))
          .text("measured from", place.from())
          .written();
    }
    if (unknown instanceof FindUnknown.Turn turn) {
      return new Flow().texts("turn", turn.points()).text("about", turn.about()).written();
    }
    if (unknown instanceof FindUnknown.OfLoad load) {
      return new Flow().text(load.kind().key(), load.load()).written();
    }
    return unknown instanceof FindUnknown.Slope
        ? new Flow().text("slope", UnknownReader.GROUND).written()
        : new Flow().text("drive", UnknownReader.TRAVEL).written();
  }

  private String winch(WinchPlan plan) {
    Flow flow = new Flow();
    plan.hand().ifPresent(hand -> handle(flow, hand));
    plan.firstPull().ifPresent(one -> flow.put("first layer pull", force(one)));
    flow.text("hauls", plan.hauls().text()).put("drum", drum(plan));
    if (plan.wound() != 0) {
      flow.put("wound", length(plan.wound()));
    }
    plan.length().ifPresent(one -> flow.put("length", length(one)));
    return flow.written();
  }

  private String length(double si) {
    return amounts.bare(si, Dimension.LENGTH);
  }

  private String force(double si) {
    return amounts.bare(si, Dimension.FORCE);
  }

  private void handle(Flow flow, HandWinch hand) {
    if (hand.handle() instanceof Handle.Lever lever) {
      flow.put("lever", length(lever.length()))
          .put("swing", amounts.withUnit(lever.swing(), Dimension.ANGLE));
    } else {
      flow.put("crank", length(hand.handle().arm()));
    }
    if (hand.ratio() != 1) {
      flow.put("gear ratio", AmountText.number(hand.ratio()));
    }
    if (hand.efficiency() != 1) {
      flow.put("efficiency", AmountText.number(hand.efficiency()));
    }
  }

  private String drum(WinchPlan plan) {
    Drum drum = plan.drum();
    Flow flow =
        new Flow()
            .put("radius", length(drum.radius()))
            .put("rope", length(drum.ropeDiameter()))
            .put("turns", Integer.toString(drum.turnsPerLayer()));
    plan.flange().ifPresent(one -> flow.put("flange", length(one)));
    return flow.written();
  }

  private String line(MeasuredLine line) {
    Deflection measured = line.deflection();
    Flow flow =
        new Flow()
            .put("force", force(measured.force()))
            .put("span", length(measured.span()))
            .put("at", length(measured.at()))
            .put("deflection", length(measured.deflection()));
    Deflection.Errors errors = line.errors();
    Flow stated = new Flow();
    boolean some = false;
    if (errors.force() > 0) {
      stated.put("force", force(errors.force()));
      some = true;
    }
    if (errors.span() > 0) {
      stated.put("span", length(errors.span()));
      some = true;
    }
    if (errors.at() > 0) {
      stated.put("at", length(errors.at()));
      some = true;
    }
    if (errors.deflection() > 0) {
      stated.put("deflection", length(errors.deflection()));
      some = true;
    }
    if (some) {
      flow.put("errors", stated.written());
    }
    line.stiffness()
        .ifPresent(one -> flow.put("stiffness", amounts.bare(one, Dimension.FORCE_PER_LENGTH)));
    line.beside().ifPresent(ask -> flow.text("beside", ask.text()));
    return flow.written();
  }

  private static String carried(HangPlan plan) {
    Flow flow = new Flow();
    if (plan.to().isPresent()) {
      flow.texts("line", List.of(plan.from(), plan.to().get()));
    } else {
      flow.text("from", plan.from());
    }
    return flow.textsIfAny("bodies", plan.bodies()).written();
  }
}
