package bellcrank.examples.file;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code loads}. */
final class LoadsReader {

  static final String TO_ITS_LEFT = "to its left";
  static final String TO_ITS_RIGHT = "to its right";

  static final Map<String, SpreadLoad.Per> PER =
      Map.of("length", SpreadLoad.Per.LENGTH, "horizontal", SpreadLoad.Per.HORIZONTAL);

  private final Reading reading;

  LoadsReader(Reading reading) {
    this.reading = reading;
  }

  void read(Named named) {
    boolean free = reading.parts().declare(named.text(), named.name());
    Optional<Fields> fields =
        named
            .value()
            .fields("a load, such as {force: 220 N, direction: down, member: lever, at: grip}");
    Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "load", FileKeys.LOADS));
    if (fields.isEmpty() || kind.isEmpty()) {
      return;
    }
    reading.index().add(PartIndex.Section.PART, named.text(), named.name(), fields);
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    if (!free) {
      draft.fail();
    }
    load(kind.get(), draft)
        .ifPresent(
            load -> {
              reading.device().load(load);
              reading.parts().add(load);
            });
  }

  private Optional<? extends Load> load(String kind, Draft draft) {
    return switch (kind) {
      case "force" -> force(draft);
      case "couple" -> couple(draft);
      case "spread" -> spread(draft);
      case "weight" -> weight(draft);
      case "spring" -> spring(draft);
      default -> torsionSpring(draft);
    };
  }

  private Optional<Force> force(Draft draft) {
    Target target = new TargetReader(reading).read(draft, true);
    String at = target.at().orElse("");
    Optional<Spot> stated = draft.fields().find("force");
    Vector vector =
        stated.isPresent() ? vector(draft, stated.get(), draft.placed(at)) : Vector.ZERO;
    return draft.made(() -> new Force(draft.part(), target.body(), at, vector));
  }

  private Vector vector(Draft draft, Spot stated, Optional<Point> own) {
    Optional<Spot> direction = draft.fields().find("direction");
    if (stated.isItems()) {
      direction.ifPresent(
          spot -> {
            spot.report("no direction, since the force has components");
            draft.fail();
          });
      Optional<Vector> components =
          reading
              .values()
              .pair(stated, Dimension.FORCE, "a force, or components such as [3 kN, -1 kN]")
              .map(pair -> Vector.of(pair.get(0), pair.get(1)));
      return draft.orFail(components, Vector.ZERO);
    }
    double size = draft.amount(stated, Dimension.FORCE);
    Optional<Spot> needed =
        draft.fields().need("direction", "a direction such as down, 130 deg or [3, -4]");
    return draft.orFail(
        needed.flatMap(spot -> reading.directions().vector(size, spot, own)), Vector.ZERO);
  }

  private Optional<Couple> couple(Draft draft) {
    double moment = draft.amount("couple", Dimension.MOMENT);
    TargetReader targets = new TargetReader(reading);
    String turned = targets.memberOrScrew(draft);
    Optional<String> at = targets.placeOfCouple(draft);
    return draft.made(() -> new Couple(draft.part(), turned, moment, at));
  }

  private Optional<SpreadLoad> spread(Draft draft) {
    String member = new TargetReader(reading).member(draft);
    String from = draft.place("from");
    String to = draft.place("to");
    Optional<Spot> spot = draft.fields().find("spread");
    List<Double> ends = draft.orFail(spot.flatMap(this::intensities), List.of(0.0, 0.0));
    Optional<Spot> stated = draft.fields().find("direction");
    Optional<String> word = stated.flatMap(Spot::textIfAny);
    boolean right = word.filter(TO_ITS_RIGHT::equals).isPresent();
    boolean square = right || word.filter(TO_ITS_LEFT::equals).isPresent();
    Direction given =
        stated
            .filter(direction -> !square)
            .map(direction -> draft.direction(direction, draft.placed(from)))
            .orElse(Direction.DOWN);
    Optional<Direction> direction = square ? Optional.empty() : Optional.of(given);
    double sign = right ? -1 : 1;
    SpreadLoad.Per per = draft.choice("per", PER, SpreadLoad.Per.LENGTH);
    return draft.made(
        () ->
            new SpreadLoad(
                draft.part(),
                member,
                from,
                to,
                sign * ends.get(0),
                sign * ends.get(1),
                direction,
                per));
  }

  private Optional<List<Double>> intensities(Spot spot) {
    return spot.isItems()
        ? reading.values().pair(spot, Dimension.FORCE_PER_LENGTH, "two values such as [0, 10 kN/m]")
        : reading
            .values()
            .amount(spot, Dimension.FORCE_PER_LENGTH)
            .map(value -> List.of(value, value));
  }

  private Optional<Weight> weight(Draft draft) {
    double mass = draft.fields().find("weight").map(draft::mass).orElse(0.0);
    Target target = new TargetReader(reading).read(draft, false);
    return draft.made(() -> new Weight(draft.part(), target.body(), target.at(), mass));
  }

  private static Optional<Spring> spring(Draft draft) {
    double stiffness = draft.amount("spring", Dimension.FORCE_PER_LENGTH);
    String from = draft.place("from");
    String to = draft.place("to");
    List<String> joins = draft.joins(false);
    double freeLength = draft.amount("free length", Dimension.LENGTH);
    return draft.made(
        () ->
            new Spring(
                draft.part(),
                End.of(joins.get(0), from),
                End.of(joins.get(1), to),
                stiffness,
                freeLength));
  }

  private static Optional<TorsionSpring> torsionSpring(Draft draft) {
    double stiffness = draft.amount("torsion spring", Dimension.MOMENT_PER_ANGLE);
    List<String> joins = draft.joins(false);
    double turned = draft.amount("turned", Dimension.ANGLE);
    return draft.made(
        () -> new TorsionSpring(draft.part(), joins.get(0), joins.get(1), stiffness, turned));
  }
}
