package bellcrank.examples.file;

import bellcrank.examples.file.RatingStatement.Stated;
import bellcrank.statics.device.Ask;
import bellcrank.statics.strength.ChainSeat;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Writes sections, materials and details. */
final class SizingText {

  private final AmountText amounts;
  private final SectionText sections;

  SizingText(AmountText amounts) {
    this.amounts = amounts;
    sections = new SectionText(amounts);
  }

  /** The whole key, one field of a mapping for each kind of detail. */
  String written(SizingStatement sizing) {
    Flow flow = new Flow().put("method", sizing.method().name().toLowerCase(Locale.ROOT));
    Flow materials = new Flow();
    sizing
        .materials()
        .own()
        .forEach((name, one) -> materials.put(name, MaterialText.written(one, amounts)));
    Flow parts = new Flow();
    sizing.parts().forEach((name, part) -> parts.put(name, part(part)));
    put(flow, "materials", materials, sizing.materials().own().size());
    put(flow, "parts", parts, sizing.parts().size());
    if (!sizing.columns().isEmpty()) {
      flow.put("columns", Flow.items(sizing.columns().stream().map(this::column).toList()));
    }
    named(flow, "pins", sizing.pins(), PinStatement::part, this::pin);
    named(flow, "welds", sizing.welds(), WeldStatement::name, this::weld);
    named(flow, "ratings", sizing.ratings(), RatingStatement::name, this::rating);
    named(flow, "seats", sizing.seats(), ChainSeat::name, this::seat);
    named(flow, "rules", sizing.rules(), FactorStatement::check, SizingText::rule);
    return flow.written();
  }

  /** The loads that grow. */
  static String driving(Driving driving) {
    List<String> loads = driving.loads();
    boolean one = loads.size() == 1 && !loads.get(0).equals(LimitsReader.ALL);
    Flow flow = new Flow();
    if (loads.isEmpty()) {
      flow.text("loads", LimitsReader.ALL);
    } else if (one) {
      flow.text("loads", loads.get(0));
    } else {
      flow.texts("loads", loads);
    }
    return flow.textsIfAny("tell", driving.tell().stream().map(Ask::text).toList()).written();
  }

  private static void put(Flow flow, String key, Flow value, int entries) {
    if (entries > 0) {
      flow.put(key, value.written());
    }
  }

  private static <T> void named(
      Flow flow, String key, List<T> all, Function<T, String> name, Function<T, String> text) {
    Flow each = new Flow();
    all.forEach(one -> each.put(name.apply(one), text.apply(one)));
    put(flow, key, each, all.size());
  }

  private String length(double si) {
    return amounts.withUnit(si, Dimension.LENGTH);
  }

  private String number(double si) {
    return AmountText.number(si);
  }

  private String part(PartStatement part) {
    Flow flow = sized(new Flow(), part.whole());
    List<String> bars = new ArrayList<>();
    part.bars()
        .forEach(
            (bar, own) ->
                bars.add(
                    sized(new Flow().texts("bar", List.of(bar.start(), bar.end())), own)
                        .written()));
    return (bars.isEmpty() ? flow : flow.put("bars", Flow.items(bars))).written();
  }

  private Flow sized(Flow flow, SizedStatement sized) {
    sized.section().ifPresent(section -> flow.put("section", sections.written(section)));
    return flow.text("material", sized.material());
  }

  private String column(ColumnEnds ends) {
    Flow flow =
        new Flow().text("part", ends.part()).text("from", ends.from()).text("to", ends.to());
    boolean pinned = ends.inPlane() == 1 && ends.side() == 1;
    if (!pinned) {
      flow.put("in plane", number(ends.inPlane())).put("side", number(ends.side()));
    }
    if (ends.curve() != ColumnEnds.Curve.C) {
      flow.put("curve", ends.curve().name().toLowerCase(Locale.ROOT));
    }
    return (pinned && ends.statement().equals(DetailReader.PINNED)
            ? flow
            : flow.text("ends", ends.statement()))
        .written();
  }

  private String pin(PinStatement pin) {
    Flow flow = new Flow().put("diameter", length(pin.diameter()));
    if (pin.planes() != 1) {
      flow.put("planes", Integer.toString(pin.planes()));
    }
    flow.text("material", pin.material());
    if (pin.gap() != 0) {
      flow.put("gap", length(pin.gap()));
    }
    if (!pin.plates().isEmpty()) {
      flow.put("plates", Flow.items(pin.plates().stream().map(this::plate).toList()));
    }
    return flow.written();
  }

  private String plate(PinStatement.PlateStatement plate) {
    return new Flow()
        .text("on", plate.on())
        .count(plate.count())
        .put("thickness", length(plate.thickness()))
        .put("hole", length(plate.hole()))
        .put("end", length(plate.end()))
        .put("width", length(plate.width()))
        .text("material", plate.material())
        .written();
  }

  private String weld(WeldStatement weld) {
    Flow flow = new Flow();
    weld.cut()
        .ifPresent(
            cut ->
                flow.text("member", weld.part())
                    .texts("bar", List.of(cut.start(), cut.end()))
                    .put("distance", length(cut.distance())));
    weld.body().ifPresent(body -> flow.text("connection", weld.part()).text("on", body));
    if (weld.plane() == FilletWeld.Plane.IN_PLANE) {
      flow.put("plane", DetailReader.IN_PLANE);
    }
    flow.put(weld.isLeg() ? "leg" : "throat", length(weld.size()));
    weld.box()
        .ifPresent(
            box -> flow.put("box", Flow.items(List.of(length(box.width()), length(box.height())))));
    if (!weld.seams().isEmpty()) {
      flow.put("seams", Flow.items(weld.seams().stream().map(this::seam).toList()));
    }
    flow.text("material", weld.material());
    weld.thickness().ifPresent(thickness -> flow.put("thickness", length(thickness)));
    weld.electrode()
        .ifPresent(
            strength -> flow.put("electrode", amounts.withUnit(strength, Dimension.PRESSURE)));
    return flow.written();
  }

  private String seam(FilletWeld.Seam seam) {
    return Flow.items(
        List.of(length(seam.x1()), length(seam.y1()), length(seam.x2()), length(seam.y2())));
  }

  private String rating(RatingStatement rating) {
    Flow flow = new Flow();
    if (!rating.part().equals(rating.name())) {
      flow.text("part", rating.part());
    }
    if (rating.limit() instanceof Stated.Own own) {
      flow.put("limit", amounts.withUnit(own.value(), Dimension.FORCE))
          .text("source", own.source());
    } else if (rating.limit() instanceof Stated.Row row) {
      flow.text("table", row.name());
    }
    if (rating.legs() != 1) {
      flow.put("legs", Integer.toString(rating.legs()));
    }
    if (rating.legAngle() != 0) {
      flow.put("leg angle", amounts.withUnit(rating.legAngle(), Dimension.ANGLE));
    }
    if (!rating.reductions().isEmpty()) {
      flow.put(
          "reductions", Flow.items(rating.reductions().stream().map(this::reduction).toList()));
    }
    return flow.written();
  }

  private String reduction(RatingStatement.ReductionStatement reduction) {
    Flow flow = new Flow().text("why", reduction.why());
    if (reduction.share() instanceof Stated.Own own) {
      return flow.put("share", number(own.value())).text("source", own.source()).written();
    }
    return flow.text("table", ((Stated.Row) reduction.share()).name()).written();
  }

  private String seat(ChainSeat seat) {
    return new Flow()
        .text("part", seat.part())
        .text("on", seat.body())
        .put("depth", new DirectionText(amounts).of(seat.depth()))
        .put("opening", amounts.withUnit(seat.opening(), Dimension.ANGLE))
        .put("friction", number(seat.friction()))
        .written();
  }

  private static String rule(FactorStatement rule) {
    return new Flow()
        .put("factor", AmountText.number(rule.factor()))
        .text("meaning", rule.meaning())
        .text("why", rule.why())
        .written();
  }
}
