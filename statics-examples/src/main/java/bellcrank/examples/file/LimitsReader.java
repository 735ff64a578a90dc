package bellcrank.examples.file;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.limits.Variation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code limits}: what is varied until the device gives way. */
final class LimitsReader {

  /** The word for all loads but weights. */
  static final String ALL = "all";

  private static final String LOADS =
      "the name of a load, several such as [winch, hand], or all (but weights)";

  private final Reading reading;
  private final Map<String, Variation> limits = new LinkedHashMap<>();
  private final Map<String, Spot> spots = new LinkedHashMap<>();

  LimitsReader(Reading reading) {
    this.reading = reading;
  }

  void read(Named named) {
    Optional<Fields> fields =
        named.value().fields("a limit, such as {vary: winch} or {move: climber, from: A, to: B}");
    Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "limit", FileKeys.LIMITS));
    if (fields.isEmpty() || kind.isEmpty()) {
      return;
    }
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    Optional<Spot> main = fields.get().find(kind.get());
    Optional<Variation> variation =
        kind.get().equals("vary")
            ? main.flatMap(spot -> multiple(draft, spot))
            : main.flatMap(spot -> place(draft, spot));
    if (variation.isPresent() && main.isPresent()) {
      limits.put(named.text(), variation.get());
      spots.put(named.text(), main.get());
    }
  }

  private Optional<Variation> multiple(Draft draft, Spot spot) {
    List<String> loads = new ArrayList<>();
    if (!spot.textIfAny().filter(ALL::equals).isPresent()) {
      List<Spot> items = spot.isItems() ? spot.itemsIfAny() : List.of(spot);
      if (items.isEmpty()) {
        draft.fail();
        spot.report(LOADS);
      }
      items.forEach(item -> loads.add(load(draft, item, LOADS)));
    }
    return draft.made(() -> LimitAsk.named(draft.part(), new Variation.Multiple(loads)));
  }

  private Optional<Variation> place(Draft draft, Spot spot) {
    String load = load(draft, spot, "the name of a force or weight at a point of a member");
    String from = draft.place("from");
    String to = draft.place("to");
    return draft.made(() -> LimitAsk.named(draft.part(), new Variation.Place(load, from, to)));
  }

  private String load(Draft draft, Spot spot, String wanted) {
    Optional<String> name = spot.text(wanted);
    boolean given = name.filter(one -> new GivenLoads(reading).has(one, spot)).isPresent();
    return draft.orFail(name.filter(one -> given), "");
  }

  /** Checks that the device can be varied so; what cannot is reported. */
  Map<String, Variation> checked(Device device) {
    limits.forEach(
        (name, variation) -> {
          try {
            LimitAsk.of(variation).check(device);
          } catch (ModelException e) {
            e.problems().forEach(problem -> report(name, problem));
          }
        });
    return Collections.unmodifiableMap(limits);
  }

  private void report(String name, Problem problem) {
    Spot spot = spots.get(name);
    if (spot != null) {
      spot.report(Excerpt.quoted(problem.field()), problem.wanted());
    }
  }
}
