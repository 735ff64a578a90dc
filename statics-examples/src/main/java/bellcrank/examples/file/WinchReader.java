package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.motion.Drum;
import bellcrank.statics.motion.HandWinch;
import bellcrank.statics.motion.Handle;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code winches}. */
final class WinchReader {

  private final Reading reading;
  private final AsksReader asks;
  private final List<WinchPlan> winches = new ArrayList<>();

  WinchReader(Reading reading, AsksReader asks) {
    this.reading = reading;
    this.asks = asks;
  }

  List<WinchPlan> winches() {
    return winches;
  }

  void read(Named named) {
    Optional<Fields> fields =
        named.value().fields("a winch, such as {crank: 0.35 m, hauls: rope.tension, drum: …}");
    Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "winch", FileKeys.WINCHES));
    if (fields.isEmpty() || kind.isEmpty()) {
      return;
    }
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    Optional<Ask> hauls = force(draft);
    Optional<Fields> drumKeys =
        fields
            .get()
            .need("drum", "a drum, such as {radius: 60 mm, rope: 8 mm, turns: 12}")
            .flatMap(spot -> spot.fields("a drum, such as {radius: 60 mm, rope: 8 mm, turns: 12}"));
    Optional<Drum> drum = drumKeys.flatMap(keys -> drum(named.text(), keys));
    Optional<Double> flange = drumKeys.flatMap(keys -> flange(draft, keys));
    double wound = draft.amount("wound", Dimension.LENGTH, 0);
    Optional<Double> length = optional(draft, "length", Dimension.LENGTH);
    double size =
        draft.amount(
            kind.get(), kind.get().equals("first layer pull") ? Dimension.FORCE : Dimension.LENGTH);
    double ratio = draft.amount("gear ratio", Dimension.NUMBER, 1);
    double efficiency = draft.amount("efficiency", Dimension.NUMBER, 1);
    double swing = kind.get().equals("lever") ? draft.amount("swing", Dimension.ANGLE) : 1;
    if (hauls.isEmpty() || drum.isEmpty()) {
      return;
    }
    Optional<WinchPlan> winch =
        draft.made(
            () -> {
              Optional<HandWinch> hand =
                  handle(kind.get(), size, swing)
                      .map(handle -> new HandWinch(handle, ratio, efficiency, drum.get()));
              Optional<Double> pull = hand.isPresent() ? Optional.empty() : Optional.of(size);
              return new WinchPlan(
                  named.text(), hauls.get(), drum.get(), flange, hand, pull, wound, length);
            });
    winch.ifPresent(winches::add);
  }

  private Optional<Ask> force(Draft draft) {
    Optional<Spot> spot = draft.fields().need("hauls", "an ask for a tension or force");
    Optional<Ask> ask = spot.flatMap(asks::numberAsk);
    if (ask.isEmpty()
        || AskDimension.of(ask.get(), reading.parts()).equals(Optional.of(Dimension.FORCE))) {
      return ask;
    }
    return spot.flatMap(one -> one.refuse("an ask for a tension or force"));
  }

  static Optional<Double> optional(Draft draft, String key, Dimension dimension) {
    return draft.has(key) ? Optional.of(draft.amount(key, dimension)) : Optional.empty();
  }

  private static Optional<Handle> handle(String kind, double size, double swing) {
    return switch (kind) {
      case "crank" -> Optional.of(new Handle.Crank(size));
      case "lever" -> Optional.of(new Handle.Lever(size, swing));
      default -> Optional.empty();
    };
  }

  private Optional<Drum> drum(String name, Fields keys) {
    keys.only(FileKeys.DRUM);
    Draft draft = new Draft(reading, name, keys.whole(), keys);
    double radius = draft.amount("radius", Dimension.LENGTH);
    double rope = draft.amount("rope", Dimension.LENGTH);
    if (draft.has("turns") == draft.has("width")) {
      return keys.whole()
          .refuse(
              draft.has("turns") ? "turns and width" : "neither turns nor width",
              "one of the keys turns, in a layer, and width");
    }
    if (draft.has("width")) {
      double width = draft.amount("width", Dimension.LENGTH);
      return draft.made(() -> Drum.from(radius, rope, width));
    }
    int turns = draft.wholeNumber("turns", 1, 1);
    return draft.made(() -> new Drum(radius, rope, turns));
  }

  private Optional<Double> flange(Draft winch, Fields keys) {
    Draft draft = new Draft(reading, winch.part(), keys.whole(), keys);
    Optional<Double> flange = optional(draft, "flange", Dimension.LENGTH);
    if (!draft.isSound()) {
      winch.fail();
    }
    return flange;
  }
}
