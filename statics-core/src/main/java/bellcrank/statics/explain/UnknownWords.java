package bellcrank.statics.explain;

import bellcrank.statics.equilibrium.DirectionWords;
import bellcrank.statics.geometry.Vector;

/** Tells which way a quantity acts. */
final class UnknownWords {

  private UnknownWords() {}

  static String direction(Vector sense) {
    String words = DirectionWords.of(sense);
    return words.equals("left") || words.equals("right") ? "to the " + words : words;
  }

  static String meaning(Unknown one) {
    String positive = one.sense().equals(Vector.ZERO) ? "" : direction(one.sense());
    return switch (one.kind()) {
      case AXIAL -> "axial force of " + one.part() + ", tension positive";
      case ROPE -> "tension of " + one.part();
      case COUPLE ->
          "couple of " + one.part() + " on " + one.body() + ", positive counter-clockwise";
      case TURNING ->
          "couple of " + one.part() + " on " + one.body() + ", positive where it drives it apart";
      case SIZE -> "size of the force of " + one.part();
      case NORMAL -> of("normal force", one, positive);
      case FRICTION -> of("friction", one, positive);
      case SOUGHT -> "sought " + one.part() + on(one, positive);
      case COMPONENT -> of("force", one, positive);
    };
  }

  private static String of(String what, Unknown one, String positive) {
    return what + " of " + one.part() + on(one, positive);
  }

  private static String on(Unknown one, String positive) {
    return " on " + one.body() + (positive.isEmpty() ? "" : ", positive " + positive);
  }

  static String value(Unknown one, double si) {
    if (si == 0) {
      return "no force";
    }
    return switch (one.kind()) {
      case AXIAL -> si > 0 ? "tension" : "compression";
      case ROPE -> si > 0 ? "it pulls" : "it would have to push";
      case COUPLE -> (si > 0 ? "counter-clockwise" : "clockwise") + " on " + one.body();
      case TURNING -> si > 0 ? "it drives the ends apart" : "it draws the ends together";
      case SIZE -> "its size";
      default ->
          one.sense().equals(Vector.ZERO)
              ? "on " + one.body()
              : direction(one.sense().times(si)) + " on " + one.body();
    };
  }
}
