package bellcrank.examples.file;

import bellcrank.statics.device.Device;
import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideStay;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads {@code side view}: the device as seen along its plane. */
final class SideViewReader {

  private static final String NAMES = "a list of names, such as [back stay]";

  private final Reading reading;
  private final Map<String, Spot> spots = new HashMap<>();

  SideViewReader(Reading reading) {
    this.reading = reading;
  }

  Optional<SideStatement> read(Spot whole) {
    Optional<Fields> fields =
        whole.fields("the device seen from the side, such as {base: foot, breadth: 0.8}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.SIDE_VIEW);
    Draft draft = new Draft(reading, SideStatement.PART, whole, fields.get());
    String base = base(draft);
    double breadth = draft.amount("breadth", Dimension.LENGTH);
    OptionalDouble friction =
        draft.has("friction")
            ? OptionalDouble.of(draft.amount("friction", Dimension.NUMBER, 0))
            : OptionalDouble.empty();
    double baseOffset = draft.amount("base offset", Dimension.LENGTH, 0);
    double lean = draft.amount("lean", Dimension.ANGLE, 0);
    double slope = draft.amount("slope", Dimension.ANGLE, 0);
    Map<String, Double> offsets = offsets(draft);
    List<SideLoad> loads = parts(draft, "loads", this::load);
    List<SideStay> stays = parts(draft, "stays", this::stay);
    List<String> leaveOut = leaveOut(draft);
    return draft.made(
        () ->
            new SideStatement(
                base, breadth, friction, baseOffset, lean, slope, offsets, loads, stays, leaveOut));
  }

  private String base(Draft draft) {
    String wanted = "the name of a contact base on the ground";
    Optional<Spot> spot = draft.fields().need("base", wanted);
    Optional<String> base = spot.flatMap(one -> one.text(wanted));
    base.ifPresent(name -> spot.ifPresent(one -> spots.put(key("base", name), one)));
    return draft.orFail(base, "base");
  }

  private Map<String, Double> offsets(Draft draft) {
    Map<String, Double> offsets = new LinkedHashMap<>();
    for (Named named : named(draft, "offsets", "offsets by the names of loads")) {
      offsets.put(named.text(), draft.amount(named.value(), Dimension.LENGTH));
      spots.put(key("offsets", named.text()), named.name());
    }
    return offsets;
  }

  private List<String> leaveOut(Draft draft) {
    Optional<Spot> spot = draft.fields().find("leave out");
    List<String> names = new ArrayList<>();
    if (spot.isPresent()) {
      for (Spot item : draft.orFail(spot.get().items(NAMES), List.<Spot>of())) {
        String name = draft.orFail(item.text(NAMES), "");
        names.add(name);
        spots.put(key("leave out", name), item);
      }
    }
    return names;
  }

  private static List<Named> named(Draft draft, String key, String wanted) {
    Optional<Spot> spot = draft.fields().find(key);
    return spot.isEmpty()
        ? List.of()
        : draft.orFail(spot.get().fields(wanted).map(Fields::named), List.of());
  }

  private <T> List<T> parts(Draft draft, String key, Function<Named, Optional<T>> maker) {
    List<T> parts = new ArrayList<>();
    for (Named named : named(draft, key, key + " by their names")) {
      spots.put(key(key, named.text()), named.name());
      Optional<T> part = maker.apply(named);
      part.ifPresent(parts::add);
      if (part.isEmpty()) {
        draft.fail();
      }
    }
    return parts;
  }

  private Optional<Draft> draft(Named named, String wanted, Collection<String> keys) {
    Optional<Fields> fields = named.value().fields(wanted);
    fields.ifPresent(found -> found.only(keys));
    return fields.map(found -> new Draft(reading, named.text(), named.name(), found));
  }

  private Optional<SideLoad> load(Named named) {
    Optional<Draft> found =
        draft(
            named, "a load seen from the side, such as {height: 2, side: 60}", FileKeys.SIDE_LOAD);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = found.get();
    double height = draft.amount("height", Dimension.LENGTH);
    double offset = draft.amount("offset", Dimension.LENGTH, 0);
    double down = draft.amount("down", Dimension.FORCE, 0);
    double side = draft.amount("side", Dimension.FORCE, 0);
    if (!draft.has("down") && !draft.has("side")) {
      draft.fail();
      draft.fields().need("side", "a force sideways or a force down");
    }
    return draft.made(() -> new SideLoad(named.text(), height, offset, down, side));
  }

  private Optional<SideStay> stay(Named named) {
    Optional<Draft> found =
        draft(
            named,
            "a stay seen from the side, such as {height: 2, anchor offset: -1.5}",
            FileKeys.SIDE_STAY);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = found.get();
    double height = draft.amount("height", Dimension.LENGTH);
    double offset = draft.amount("offset", Dimension.LENGTH, 0);
    double anchorOffset = draft.amount("anchor offset", Dimension.LENGTH);
    double anchorHeight = draft.amount("anchor height", Dimension.LENGTH, 0);
    return draft.made(() -> new SideStay(named.text(), height, offset, anchorOffset, anchorHeight));
  }

  /** Reports what of it does not fit the device. */
  void check(SideStatement side, Device device) {
    side.problems(device)
        .forEach(
            problem -> {
              String name = problem.value().substring(1, problem.value().length() - 1);
              Spot spot = spots.get(key(problem.field(), name));
              if (spot != null) {
                spot.report(problem.value(), problem.wanted());
              }
            });
  }

  private static String key(String field, String name) {
    return field + Spot.STEP + name;
  }
}
