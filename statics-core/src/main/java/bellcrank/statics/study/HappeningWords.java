package bellcrank.statics.study;

import bellcrank.statics.limits.Event;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes what happens as a clause. */
final class HappeningWords {

  private static final int DIGITS = 4;

  private HappeningWords() {}

  static String of(Happening happening, UnitSystem units) {
    if (happening instanceof Happening.Above above) {
      return above.figure().text() + " is above " + text(above.bound(), units);
    }
    if (happening instanceof Happening.Below below) {
      return below.figure().text() + " is below " + text(below.bound(), units);
    }
    return happening instanceof Happening.AtPart at
        ? at.part().orElse("some part") + " " + verb(at.kinds())
        : "the device gives way";
  }

  private static String text(Quantity bound, UnitSystem units) {
    return units.format(bound.si(), bound.dimension(), DIGITS);
  }

  private static String verb(Set<Event.Kind> kinds) {
    if (kinds.equals(EnumSet.of(Event.Kind.SLIDES, Event.Kind.SLIPS_ROUND))) {
      return "slips";
    }
    return EnumSet.copyOf(kinds).stream()
        .map(HappeningWords::verb)
        .collect(Collectors.joining(" or "));
  }

  private static String verb(Event.Kind kind) {
    return switch (kind) {
      case SLIDES -> "slides";
      case LIFTS -> "lifts";
      case TIPS -> "tips";
      case SINKS -> "sinks";
      case GOES_SLACK -> "goes slack";
      case SLIPS_ROUND -> "slips round its post";
      case TURNS -> "turns against its friction";
      case RUNS -> "runs in its thread";
    };
  }
}
