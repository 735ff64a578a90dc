package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Subject;
import bellcrank.statics.units.Dimension;
import java.util.Optional;

/**
 * What a file may expect of its sizing beside the asks of a device. It is written in words of its
 * own and kept as the ask for a part of that name.
 *
 * @param kind what is expected
 * @param of the check, as {@code part: what}, or the ask at the first multiple; empty without
 */
public record StrengthAsk(Kind kind, String of) {

  private static final String QUOTE = "\"";

  /** Kinds of it. */
  public enum Kind {
    /** The multiple of the driving loads at which the first thing gives. */
    FIRST_MULTIPLE("first multiple"),
    /** The part that gives first, or {@code device} if it slips, tips, lifts, sinks or slackens. */
    FIRST_PART("first part"),
    /** The check that is reached first, or {@code gives way}. */
    FIRST_CHECK("first check"),
    /** The value of the drive where the first thing gives. */
    FIRST_DRIVE("first drive"),
    /** An answer where the first thing gives. */
    AT_FIRST("at first multiple: "),
    /** Share of the resistance that the stated loads use. */
    UTILISATION("utilisation of "),
    /** The multiple at which a check is reached. */
    MULTIPLE("multiple of ");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    private boolean hasMore() {
      return words.endsWith(" ");
    }
  }

  /**
   * The one that an ask stands for.
   *
   * @param ask an ask of an expectation
   * @return what is asked about strength; empty if it is an ask of the device
   */
  public static Optional<StrengthAsk> of(Ask ask) {
    return ask.subject() instanceof Subject.Part part && ask.equals(Ask.of(part.name()))
        ? of(part.name())
        : Optional.empty();
  }

  private static Optional<StrengthAsk> of(String name) {
    for (Kind kind : Kind.values()) {
      if (kind.hasMore() ? name.startsWith(kind.words) : name.equals(kind.words)) {
        return Optional.of(new StrengthAsk(kind, name.substring(kind.words.length())));
      }
    }
    return Optional.empty();
  }

  /** The ask that a text stands for, if it is one about strength. */
  static Optional<Ask> parse(String text) {
    boolean quoted = text.length() > 1 && text.startsWith(QUOTE) && text.endsWith(QUOTE);
    String bare = quoted ? text.substring(1, text.length() - 1) : text;
    Optional<StrengthAsk> found = of(bare);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Ask ask = Ask.of(bare);
    if (found.get().kind == Kind.AT_FIRST) {
      found.get().inner();
    }
    return Optional.of(ask);
  }

  /**
   * The text of an ask in a file.
   *
   * @param ask an ask of an expectation
   * @return its text, without quotes if it is about strength
   */
  public static String text(Ask ask) {
    return ask.subject() instanceof Subject.Part part && of(ask).isPresent()
        ? part.name()
        : ask.text();
  }

  /**
   * The ask at the first multiple.
   *
   * @return the ask
   * @throws ModelException if there is none, or it is not for a number that balance gives
   */
  public Ask inner() {
    Ask ask = Ask.parse(of);
    if (!TravelCheck.isNumber(ask)) {
      throw new ModelException(
          "ask", of, ask.text(), "an ask for a number that balance gives, in no case");
    }
    return ask;
  }

  /** Checks that the device has what it names. */
  void check(Device device) {
    if (kind == Kind.AT_FIRST) {
      inner().check(device);
    }
  }

  /** The kind of quantity; empty if the answer is words. */
  Optional<Dimension> dimension(PartNames parts, Dimension drive) {
    return switch (kind) {
      case FIRST_PART, FIRST_CHECK -> Optional.empty();
      case FIRST_DRIVE -> Optional.of(drive);
      case AT_FIRST -> AskDimension.of(inner(), parts);
      case FIRST_MULTIPLE, UTILISATION, MULTIPLE -> Optional.of(Dimension.NUMBER);
    };
  }
}
