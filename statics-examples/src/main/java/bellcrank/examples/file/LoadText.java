package bellcrank.examples.file;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes loads, sought quantities and cases. */
final class LoadText {

  private final AmountText amounts;
  private final DirectionText directions;
  private final BodyNames bodies;

  LoadText(AmountText amounts, BodyNames bodies) {
    this.amounts = amounts;
    this.directions = new DirectionText(amounts);
    this.bodies = bodies;
  }

  String written(Load load) {
    return flow(load).written();
  }

  // a chain of tests, since Java 17 has no switch over the kinds
  private Flow flow(Load load) {
    if (load instanceof Force force) {
      return target(directions.force(force.vector()), force.body(), Optional.of(force.at()));
    }
    if (load instanceof Couple couple) {
      return turned(
          new Flow().put("couple", amounts.bare(couple.moment(), Dimension.MOMENT)),
          couple.member(),
          couple.at());
    }
    if (load instanceof SpreadLoad spread) {
      return spread(spread);
    }
    if (load instanceof Weight weight) {
      return target(
          new Flow().put("weight", amounts.mass(weight.mass())), weight.body(), weight.at());
    }
    if (load instanceof Spring spring) {
      return new Flow()
          .put("spring", amounts.bare(spring.stiffness(), Dimension.FORCE_PER_LENGTH))
          .text("from", spring.first().at())
          .text("to", spring.second().at())
          .texts("joins", List.of(spring.first().body(), spring.second().body()))
          .put("free length", amounts.bare(spring.freeLength(), Dimension.LENGTH));
    }
    if (load instanceof TorsionSpring spring) {
      return new Flow()
          .put("torsion spring", amounts.bare(spring.stiffness(), Dimension.MOMENT_PER_ANGLE))
          .texts("joins", List.of(spring.body(), spring.other()))
          .put("turned", amounts.withUnit(spring.turned(), Dimension.ANGLE));
    }
    return sought((Sought) load);
  }

  private Flow spread(SpreadLoad spread) {
    String start = amounts.bare(spread.start(), Dimension.FORCE_PER_LENGTH);
    String end = amounts.bare(spread.end(), Dimension.FORCE_PER_LENGTH);
    Flow flow =
        new Flow()
            .put("spread", start.equals(end) ? start : Flow.items(List.of(start, end)))
            .text("member", spread.member())
            .text("from", spread.from())
            .text("to", spread.to());
    if (spread.direction().isEmpty()) {
      flow.text("direction", LoadsReader.TO_ITS_LEFT);
    } else if (!spread.direction().get().equals(Direction.DOWN)) {
      flow.put("direction", directions.of(spread.direction().get()));
    }
    return spread.per() == SpreadLoad.Per.LENGTH ? flow : flow.text("per", "horizontal");
  }

  private Flow sought(Sought sought) {
    Flow flow = new Flow().text("want", sought.want().name().toLowerCase(Locale.ROOT));
    sought.direction().ifPresent(direction -> flow.put("direction", directions.of(direction)));
    if (sought.to().isPresent()) {
      return flow.text("member", sought.body()).text("from", sought.at()).text("to", sought.to());
    }
    return sought.want() == Sought.Want.COUPLE
        ? turned(flow, sought.body(), sought.at())
        : target(flow, sought.body(), sought.at());
  }

  /** What a couple turns: a member, or a screw if no body has that name. */
  private Flow turned(Flow flow, String target, Optional<String> at) {
    return flow.text(bodies.names().contains(target) ? "member" : "screw", target).text("at", at);
  }

  private Flow target(Flow flow, String body, Optional<String> at) {
    if (bodies.is(body, BodyNames.Kind.MEMBER)) {
      return flow.text("member", body).text("at", at);
    }
    Optional<String> own = bodies.placeOfJoint(body);
    boolean implied = own.isEmpty() || own.equals(at);
    return flow.text("joint", body).text("at", implied ? Optional.empty() : at);
  }

  String written(LoadCase loadCase) {
    Flow flow = new Flow();
    if (!loadCase.factors().isEmpty()) {
      Flow factors = new Flow();
      loadCase.factors().forEach((load, factor) -> factors.put(load, AmountText.number(factor)));
      flow.put("factors", factors.written());
    }
    if (loadCase.dynamic() != 1) {
      flow.put("dynamic", AmountText.number(loadCase.dynamic()));
    }
    return flow.written();
  }
}
