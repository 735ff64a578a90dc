package bellcrank.statics.device;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes asks, and knows the words that have a meaning in them. */
final class AskText {

  static final char EN_DASH = '–';

  /** Words that end a name when they stand behind another word. */
  static final Set<String> ENDINGS =
      Set.of("on", "about", "at", "just", "along", "each", "in", "per");

  private static final Set<String> WORDS =
      Set.of("on", "about", "at", "just", "of", "along", "each", "in", "per", "from", "to");

  /** Words that stand before a whole ask. */
  static final Set<String> EXTREMES = Set.of(Subject.Extreme.GREATEST, Subject.Extreme.LEAST);

  private static final Set<String> HEADS =
      Set.of(
          "outcome",
          "freedoms",
          "redundancy",
          "verdict",
          "friction factor",
          "advantage",
          "resultant",
          "centre",
          "group",
          "multiple");

  private static final double SMALLEST_PLAIN = 1e-6;
  private static final double LARGEST_PLAIN = 1e9;

  private AskText() {}

  static String of(Ask ask) {
    StringBuilder text = new StringBuilder(subject(ask));
    ask.on().ifPresent(body -> text.append(" on ").append(name(body)));
    ask.about().ifPresent(point -> text.append(" about ").append(name(point)));
    ask.stretch().ifPresent(stretch -> text.append(stretch(stretch)));
    if (ask.each()) {
      text.append(" each");
    }
    ask.loadCase().ifPresent(one -> text.append(" in ").append(name(one)));
    return text.toString();
  }

  private static String subject(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Whole) {
      return ask.measure().word();
    }
    if (subject instanceof Subject.Advantage) {
      return ask.measure() == Measure.ACTUAL ? "advantage" : measured("advantage", ask);
    }
    if (subject instanceof Subject.Ratio ratio) {
      return of(ratio.numerator()) + " per " + of(ratio.denominator());
    }
    if (subject instanceof Subject.Extreme extreme) {
      return extreme.word() + " " + of(extreme.of());
    }
    if (subject instanceof Subject.Multiple multiple) {
      return call("multiple", multiple.loads());
    }
    if (subject instanceof Subject.Place place) {
      return call("distance", List.of(place.load()));
    }
    if (subject instanceof Subject.Group group) {
      return measured(call("group", group.bodies()), ask) + from(group.from());
    }
    if (subject instanceof Subject.Resultant resultant) {
      return measured(call("resultant", resultant.loads()), ask);
    }
    if (subject instanceof Subject.Centre centre) {
      return measured(call("centre", centre.bodies()), ask);
    }
    if (subject instanceof Subject.Spot spot) {
      return measured(call("point", List.of(spot.point())), ask);
    }
    return measured(name(((Subject.Part) subject).name()), ask);
  }

  private static String measured(String head, Ask ask) {
    return ask.measure() == Measure.VALUE ? head : head + "." + ask.measure().word();
  }

  private static String call(String head, List<String> names) {
    return names.isEmpty()
        ? head
        : names.stream().map(AskText::name).collect(Collectors.joining(", ", head + "(", ")"));
  }

  private static String from(List<String> bodies) {
    if (bodies.isEmpty()) {
      return "";
    }
    return " from " + (bodies.equals(List.of(Ground.NAME)) ? Ground.NAME : call("group", bodies));
  }

  static String ends(String start, String end) {
    return end(start) + EN_DASH + end(end);
  }

  static String stretch(Stretch stretch) {
    String ends = ends(stretch.start(), stretch.end());
    if (stretch.distance().isEmpty()) {
      return " along " + ends;
    }
    String where = stretch.side().map(side -> " just " + side.word() + " ").orElse(" at ");
    return where + length(stretch.distance().getAsDouble()) + " of " + ends;
  }

  private static String end(String point) {
    return point.indexOf(EN_DASH) >= 0 ? Check.quote(point) : name(point);
  }

  static String name(String name) {
    boolean unclear =
        HEADS.contains(name)
            || EXTREMES.contains(new AskCursor(name).peekWord())
            || name.chars().anyMatch(c -> ".,()".indexOf(c) >= 0)
            || hasWord(name);
    return unclear ? Check.quote(name) : name;
  }

  private static boolean hasWord(String name) {
    int start = 0;
    for (int i = 0; i <= name.length(); i++) {
      if (i == name.length() || Character.isWhitespace(name.charAt(i))) {
        if (WORDS.contains(name.substring(start, i))) {
          return true;
        }
        start = i + 1;
      }
    }
    return false;
  }

  static String length(double metres) {
    boolean plain = metres == 0 || (metres >= SMALLEST_PLAIN && metres < LARGEST_PLAIN);
    String exact = Double.toString(metres);
    return (plain ? new BigDecimal(exact).stripTrailingZeros().toPlainString() : exact) + " m";
  }
}
