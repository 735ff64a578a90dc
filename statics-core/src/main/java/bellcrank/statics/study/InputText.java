package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Material;
import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The text form of inputs, both ways. */
final class InputText {

  static final String X = "x";
  static final String Y = "y";
  static final String DISTANCE = "distance";
  static final String TURN = "turn";
  static final String SIZE = "size";
  static final String DIRECTION = "direction";
  static final String GRAVITY = "gravity";
  static final String SLOPE = "slope";
  static final String FACTOR = "factor";
  static final String DYNAMIC = "dynamic factor";
  static final String FROM = " from ";
  static final String ABOUT = " about ";
  static final String IN = " in ";
  static final String AT = " at ";

  private static final String OF = " of ";
  private static final List<String> BETWEEN = List.of(FROM, ABOUT, IN, AT);

  private final String text;

  private InputText(String text) {
    this.text = text;
  }

  /** A name as it stands in a text: in double quotes where it would be read as something else. */
  static String name(String name) {
    boolean unclear =
        BETWEEN.stream().anyMatch(name::contains)
            || name.chars().anyMatch(c -> ",[]".indexOf(c) >= 0);
    return unclear ? '"' + name + '"' : name;
  }

  static InputNumber parse(String text) {
    return new InputText(text.strip()).number();
  }

  /** Several numbers as one; empty if no text says that. */
  static Optional<InputNumber> together(List<InputNumber> numbers) {
    Together together = new Together(numbers);
    try {
      return Optional.of(parse(together.text())).filter(together::equals);
    } catch (ModelException noSuchText) {
      return Optional.empty();
    }
  }

  private InputNumber number() {
    if (text.equals(GRAVITY)) {
      return new ForceNumbers.Gravity();
    }
    if (text.equals(SLOPE)) {
      return new ForceNumbers.Slope();
    }
    int of = text.indexOf(OF);
    if (of < 0) {
      throw fail("a number of a part, such as \"x of ram\" or \"friction of heel\"; " + words());
    }
    String what = text.substring(0, of).strip();
    String rest = text.substring(of + OF.length()).strip();
    return rest.startsWith("[") && !what.equals(TURN) ? together(what, rest) : one(what, rest);
  }

  /** The same number of each of the parts in brackets. */
  private InputNumber together(String what, String rest) {
    List<InputNumber> all =
        list(rest).stream().map(part -> one(what, name(part))).distinct().toList();
    if (all.size() < list(rest).size()) {
      throw fail("each name in brackets once");
    }
    return all.size() == 1 ? all.get(0) : new Together(all);
  }

  private InputNumber one(String what, String rest) {
    return switch (what) {
      case X, Y -> new PlaceNumbers.Coordinate(what.equals(Y), only(rest));
      case SIZE -> new ForceNumbers.Size(only(rest));
      case DIRECTION -> new ForceNumbers.Way(only(rest));
      case DYNAMIC -> new ForceNumbers.Dynamic(only(rest));
      case DISTANCE -> {
        List<String> two = two(rest, FROM, "distance of ram from hinge");
        yield new PlaceNumbers.Distance(only(two.get(0)), only(two.get(1)));
      }
      case FACTOR -> {
        List<String> two = two(rest, IN, "factor of hand in storm");
        yield new ForceNumbers.Factor(only(two.get(0)), only(two.get(1)));
      }
      case TURN -> {
        List<String> two = two(rest, ABOUT, "turn of [ram, grip] about hinge");
        yield new PlaceNumbers.Turn(list(two.get(0)), only(two.get(1)));
      }
      default -> ofPart(what, rest);
    };
  }

  private InputNumber ofPart(String what, String rest) {
    if (what.equals(PartKind.RADIUS.words()) && outside(rest, AT) >= 0) {
      List<String> two = two(rest, AT, "radius of tackle at crown");
      return new ForceNumbers.Sheave(only(two.get(0)), only(two.get(1)));
    }
    for (PartKind kind : PartKind.values()) {
      if (kind.words().equals(what)) {
        return kind.of(only(rest));
      }
    }
    for (Material.Strength strength : Material.Strength.values()) {
      if (strength.words().equals(what)) {
        return new MaterialNumber(Optional.of(strength), only(rest));
      }
    }
    if (what.equals(MaterialNumber.ELASTICITY)) {
      return new MaterialNumber(Optional.empty(), only(rest));
    }
    Optional<String> near = NearestName.of(what, known());
    throw fail(
        near.map(one -> "a number of the device; the nearest is \"" + one + " of …\"")
            .orElse(words()));
  }

  private static List<String> known() {
    List<String> all =
        new ArrayList<>(List.of(X, Y, DISTANCE, TURN, SIZE, DIRECTION, FACTOR, DYNAMIC));
    Stream.of(PartKind.values()).map(PartKind::words).forEach(all::add);
    Stream.of(Material.Strength.values()).map(Material.Strength::words).forEach(all::add);
    all.add(MaterialNumber.ELASTICITY);
    return all;
  }

  private static String words() {
    return "one of: " + GRAVITY + ", " + SLOPE + ", or of a part: " + String.join(", ", known());
  }

  /** Where a word stands outside quotes; −1 if it does not. */
  private static int outside(String text, String word) {
    boolean quoted = false;
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) == '"') {
        quoted = !quoted;
      } else if (!quoted && text.startsWith(word, at)) {
        return at;
      }
    }
    return -1;
  }

  private List<String> two(String rest, String word, String example) {
    int at = outside(rest, word);
    if (at < 0) {
      throw fail("\"" + word.strip() + "\" between two names, as in \"" + example + '"');
    }
    return List.of(rest.substring(0, at).strip(), rest.substring(at + word.length()).strip());
  }

  private List<String> list(String rest) {
    if (!rest.startsWith("[")) {
      return List.of(only(rest));
    }
    if (!rest.endsWith("]")) {
      throw fail("a closing bracket after the last point");
    }
    String inner = rest.substring(1, rest.length() - 1);
    List<String> names = new ArrayList<>();
    int comma = outside(inner, ",");
    while (comma >= 0) {
      names.add(only(inner.substring(0, comma).strip()));
      inner = inner.substring(comma + 1);
      comma = outside(inner, ",");
    }
    names.add(only(inner.strip()));
    return names;
  }

  private String only(String name) {
    boolean quoted = name.length() > 1 && name.startsWith("\"") && name.endsWith("\"");
    String bare = quoted ? name.substring(1, name.length() - 1) : name;
    if (bare.isBlank() || bare.indexOf('"') >= 0) {
      throw fail("a name after each word, in double quotes on both sides or on none");
    }
    if (!quoted && !name(bare).equals(bare)) {
      throw fail("the name " + bare + " in double quotes, since it has other words or signs in it");
    }
    return bare;
  }

  private ModelException fail(String wanted) {
    return new ModelException("input", "text", '"' + text + '"', wanted);
  }
}
