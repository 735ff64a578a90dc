package bellcrank.statics.device;

import static bellcrank.statics.device.AskText.ENDINGS;

import bellcrank.statics.units.NearestName;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the text of an ask from left to right, without recursion. */
final class AskParser {

  private static final Pattern CALL =
      Pattern.compile("(group|resultant|centre|point|multiple|distance)\\s*+\\(");
  private static final Pattern LOOKS_LIKE_CALL = Pattern.compile("[^\\s(]++\\(.*+", Pattern.DOTALL);
  private static final Set<String> ENDINGS_AND_FROM =
      Set.of("on", "about", "at", "just", "along", "each", "in", "per", "from");
  private static final String WANTED_ENDING =
      "the end, or one of: from (after a group), on BODY, about POINT, at LENGTH of A–B,"
          + " just before or just after LENGTH of A–B, along A–B, each, in CASE, per ASK";

  private final AskCursor cursor;
  private final AskPieces pieces;

  private AskParser(String text) {
    this.cursor = new AskCursor(text);
    this.pieces = new AskPieces(text, cursor);
  }

  static Ask parse(String text) {
    return new AskParser(text).ask();
  }

  private Ask ask() {
    String extreme = cursor.peekWord();
    if (!AskText.EXTREMES.contains(extreme)) {
      return plainOrRatio();
    }
    cursor.word();
    if (cursor.atEnd()) {
      throw pieces.fail(
          extreme, "an ask after " + extreme + "; a part of that name in double quotes");
    }
    Ask whole = plainOrRatio();
    Ask within = whole.inNoCase();
    Ask end = extreme.equals(Subject.Extreme.GREATEST) ? within.greatest() : within.least();
    return whole.loadCase().map(end::inCase).orElse(end);
  }

  private Ask plainOrRatio() {
    Ask first = single();
    if (cursor.atEnd()) {
      return first;
    }
    if (first.loadCase().isPresent()) {
      throw pieces.fail("in", "the case after the second ask, for both: A per B in CASE");
    }
    cursor.word();
    Ask second = single();
    if (!cursor.atEnd()) {
      throw pieces.fail("per", "one ratio of two asks");
    }
    Ask plain = second.inNoCase();
    Ask ratio = pieces.checked("per", () -> first.per(plain));
    return second.loadCase().map(ratio::inCase).orElse(ratio);
  }

  /** One side of a ratio, or the whole; stops at {@code per} or at the end. */
  private Ask single() {
    Ask ask = head();
    while (true) {
      String word = cursor.peekWord();
      if (word.isEmpty() || word.equals("per")) {
        return ask;
      }
      cursor.word();
      ask = ending(ask, word);
    }
  }

  private Ask head() {
    if (cursor.atEnd()) {
      throw pieces.fail("", "an ask such as heel.x on lever");
    }
    if (AskText.EXTREMES.contains(cursor.peekWord())) {
      throw pieces.fail(
          cursor.peekWord(),
          "greatest or least once, before the whole ask; a part of that name in double quotes");
    }
    if (cursor.atQuote()) {
      String name = pieces.quoted();
      return measured(pieces.checked(name, () -> new Subject.Part(name)));
    }
    Matcher call = cursor.matcher(CALL);
    if (call.lookingAt()) {
      String head = call.group(1);
      cursor.skip(head.length());
      List<String> names = pieces.list(head);
      if (head.equals("distance")) {
        if (names.size() > 1) {
          throw pieces.fail(head, "one load: distance(" + names.get(0) + ") along A–B");
        }
        return Ask.of(new Subject.Place(names.get(0)), Measure.DISTANCE);
      }
      if (head.equals("point")) {
        if (names.size() > 1) {
          throw pieces.fail(head, "one point: point(" + names.get(0) + ").x");
        }
        return measured(new Subject.Spot(names.get(0)));
      }
      if (head.equals("multiple")) {
        return Ask.of(pieces.checked(head, () -> new Subject.Multiple(names)), Measure.VALUE);
      }
      return measured(
          pieces.checked(
              head,
              () ->
                  switch (head) {
                    case "group" -> new Subject.Group(names, List.of());
                    case "resultant" -> new Subject.Resultant(names);
                    default -> new Subject.Centre(names);
                  }));
    }
    return unquoted(cursor.words(ENDINGS));
  }

  private Ask measured(Subject subject) {
    if (!cursor.take('.')) {
      return Ask.of(subject, Measure.VALUE);
    }
    return Ask.of(subject, measure(cursor.words(ENDINGS_AND_FROM)));
  }

  private Ask unquoted(String raw) {
    int dot = raw.lastIndexOf('.');
    if (dot < 0) {
      Optional<Measure> whole = Measure.find(raw).filter(PartMeasures.WHOLE::contains);
      return whole.isPresent()
          ? Ask.of(new Subject.Whole(), whole.get())
          : Ask.of(subject(raw), Measure.VALUE);
    }
    Measure measure = measure(raw.substring(dot + 1));
    Subject subject = subject(raw.substring(0, dot).strip());
    return pieces.checked(measure.word(), () -> Ask.of(subject, measure));
  }

  private Subject subject(String name) {
    return switch (name) {
      case "advantage" -> new Subject.Advantage();
      case "resultant" -> new Subject.Resultant(List.of());
      case "centre" -> new Subject.Centre(List.of());
      case "multiple" -> new Subject.Multiple(List.of());
      default -> {
        if (LOOKS_LIKE_CALL.matcher(name).matches()) {
          throw pieces.fail(
              name,
              "group(…), resultant(…), centre(…), point(…), multiple(…) or distance(…), or a name in"
                  + " double quotes");
        }
        yield pieces.checked(name, () -> new Subject.Part(name));
      }
    };
  }

  private Measure measure(String raw) {
    String word = String.join(" ", Arrays.asList(raw.strip().split("\\s+")));
    Optional<Measure> found = Measure.find(word);
    if (found.isPresent()) {
      return found.get();
    }
    List<String> words = Arrays.stream(Measure.values()).map(Measure::word).toList();
    for (String known : words) {
      if (word.startsWith(known + " ")) {
        throw pieces.fail(word.substring(known.length() + 1), WANTED_ENDING);
      }
    }
    throw pieces.fail(
        word,
        NearestName.of(word, words)
            // one or two letters are near to x and y whatever they are
            .filter(near -> word.length() > 2 || near.equalsIgnoreCase(word))
            .map(near -> "a measure; the nearest is " + Check.quote(near))
            .orElseGet(
                () ->
                    "a measure: "
                        + String.join(", ", words)
                        + "; a name with a point in it stands in double quotes"));
  }

  private Ask ending(Ask ask, String word) {
    Set<String> stops = ask.subject() instanceof Subject.Group ? ENDINGS_AND_FROM : ENDINGS;
    return switch (word) {
      case "from" -> from(ask);
      case "on" -> {
        once(word, ask.on().isPresent());
        yield ask.onBody(pieces.name(word, "the name of a body", stops));
      }
      case "about" -> {
        once(word, ask.about().isPresent());
        yield ask.aboutPoint(pieces.name(word, "the name of a point", stops));
      }
      case "at", "along" -> {
        once("at or along", ask.stretch().isPresent());
        yield ask.stretched(pieces.stretch(word, stops));
      }
      case "just" -> {
        once("at or along", ask.stretch().isPresent());
        yield ask.stretched(pieces.besides(stops));
      }
      case "each" -> {
        once(word, ask.each());
        yield ask.eachPart();
      }
      case "in" -> {
        once(word, ask.loadCase().isPresent());
        yield ask.inCase(pieces.name(word, "the name of a case", stops));
      }
      default -> throw pieces.fail(word, WANTED_ENDING);
    };
  }

  private void once(String ending, boolean there) {
    if (there) {
      throw pieces.fail(ending, "each ending once");
    }
  }

  private Ask from(Ask ask) {
    if (!(ask.subject() instanceof Subject.Group group)) {
      throw pieces.fail(
          "from", "group(…) before from; a name with this word in it in double quotes");
    }
    once("from", !group.from().isEmpty());
    String wanted = "ground or group(…)";
    Matcher call = cursor.matcher(CALL);
    if (call.lookingAt() && call.group(1).equals("group")) {
      cursor.skip("group".length());
      List<String> names = pieces.list("group");
      return with(ask, pieces.checked("from", () -> new Subject.Group(group.bodies(), names)));
    }
    String name = pieces.name("from", wanted, ENDINGS_AND_FROM);
    if (!name.equals(Ground.NAME)) {
      throw pieces.fail(name, wanted);
    }
    return with(ask, new Subject.Group(group.bodies(), List.of(name)));
  }

  private static Ask with(Ask ask, Subject subject) {
    return new Ask(
        subject, ask.measure(), ask.on(), ask.about(), ask.stretch(), ask.each(), ask.loadCase());
  }
}
