package bellcrank.examples.file;

import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Direction;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads {@code seek}. */
final class SeekReader {

  static final Map<String, Sought.Want> WANTS = wants();

  private final Reading reading;

  SeekReader(Reading reading) {
    this.reading = reading;
  }

  private static Map<String, Sought.Want> wants() {
    Map<String, Sought.Want> wants = new LinkedHashMap<>();
    wants.put("force", Sought.Want.FORCE);
    wants.put("components", Sought.Want.COMPONENTS);
    wants.put("couple", Sought.Want.COUPLE);
    wants.put("mass", Sought.Want.MASS);
    wants.put("intensity", Sought.Want.INTENSITY);
    return wants;
  }

  void read(Named named) {
    boolean free = reading.parts().declare(named.text(), named.name());
    Optional<Fields> fields =
        named
            .value()
            .fields("what is sought, such as {want: force, direction: up, member: lever, at: A}");
    if (fields.isEmpty()) {
      return;
    }
    fields.get().only(FileKeys.SOUGHT);
    reading.index().add(PartIndex.Section.PART, named.text(), named.name(), fields);
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    if (!free) {
      draft.fail();
    }
    sought(draft)
        .ifPresent(
            sought -> {
              reading.device().load(sought);
              reading.parts().add(sought);
            });
  }

  private Optional<Sought> sought(Draft draft) {
    Sought.Want want = draft.choiceNeeded("want", WANTS, Sought.Want.COMPONENTS);
    TargetReader targets = new TargetReader(reading);
    if (want != Sought.Want.COUPLE) {
      superfluous(draft, "screw", "screw only for want: couple");
    }
    if (want == Sought.Want.INTENSITY) {
      return intensity(draft, targets.member(draft));
    }
    superfluous(draft, "from", "from and to only for want: intensity");
    superfluous(draft, "to", "from and to only for want: intensity");
    if (want == Sought.Want.COUPLE) {
      superfluous(draft, "joint", "member: a joint takes no couple");
      superfluous(draft, "direction", "no direction: couples are positive counter-clockwise");
      String turned = targets.memberOrScrew(draft);
      Optional<String> at = targets.placeOfCouple(draft);
      return draft.made(() -> new Sought(draft.part(), want, turned, at, Optional.empty()));
    }
    Target target = targets.read(draft, true);
    Optional<Direction> direction = Optional.empty();
    if (want == Sought.Want.FORCE) {
      direction = Optional.of(draft.direction("direction", draft.placed(target.at().orElse(""))));
    } else if (draft.isSound()) {
      superfluous(draft, "direction", "a direction only for want: force");
    }
    Optional<Direction> along = direction;
    return draft.made(() -> new Sought(draft.part(), want, target.body(), target.at(), along));
  }

  private static Optional<Sought> intensity(Draft draft, String member) {
    superfluous(draft, "at", "from and to for an intensity");
    superfluous(draft, "joint", "member: a joint takes no spread load");
    String from = draft.place("from");
    String to = draft.place("to");
    Direction direction =
        draft
            .fields()
            .find("direction")
            .map(spot -> draft.direction(spot, draft.placed(from)))
            .orElse(Direction.DOWN);
    return draft.made(
        () ->
            new Sought(
                draft.part(),
                Sought.Want.INTENSITY,
                member,
                Optional.of(from),
                Optional.of(direction),
                Optional.of(to)));
  }

  private static void superfluous(Draft draft, String key, String wanted) {
    draft
        .fields()
        .find(key)
        .ifPresent(
            spot -> {
              spot.report("the key " + key, wanted);
              draft.fail();
            });
  }
}
