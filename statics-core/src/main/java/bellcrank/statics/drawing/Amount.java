package bellcrank.statics.drawing;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;

/** Writes values of a picture in its units. */
record Amount(UnitSystem units) {

  private static final int DIGITS = 4;

  String force(double newtons) {
    return units.format(newtons, Dimension.FORCE, DIGITS);
  }

  String moment(double newtonMetres) {
    return units.format(newtonMetres, Dimension.MOMENT, DIGITS);
  }

  String length(double metres) {
    return trimmed(units.format(metres, Dimension.LENGTH, DIGITS));
  }

  /** Without zeros behind the last digit that counts. */
  private static String trimmed(String text) {
    return text.replaceFirst("(\\.[0-9]*?)0+(?= |$)", "$1").replaceFirst("\\.(?= |$)", "");
  }

  String intensity(double newtonsPerMetre) {
    return units.format(newtonsPerMetre, Dimension.FORCE_PER_LENGTH, DIGITS);
  }

  String pressure(double pascals) {
    return units.format(pascals, Dimension.PRESSURE, DIGITS);
  }

  String angle(double radians) {
    String text = units.format(radians, Dimension.ANGLE, DIGITS);
    text = trimmed(text);
    return text.endsWith(" deg") ? text.substring(0, text.length() - 4) + "°" : text;
  }

  /** The largest force of the form 1, 2 or 5 times a power of ten that is not above another. */
  double roundForce(double newtons) {
    double value = units.unit(Dimension.FORCE).fromSi(newtons);
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    double digit = value / power;
    double round = digit >= 5 ? 5 : digit >= 2 ? 2 : 1;
    return units.unit(Dimension.FORCE).toSi(round * power);
  }

  /** A round force without needless digits. */
  String roundText(double newtons) {
    return units.format(newtons, Dimension.FORCE, 1);
  }
}
