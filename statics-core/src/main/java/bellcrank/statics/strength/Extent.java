package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/** The checks on lengths of a cross-section, which say what usually went wrong: the unit. */
final class Extent {

  /** No section is wider; such a number was most likely meant in mm. */
  private static final double LARGEST = 20;

  private Extent() {}

  static double positive(String part, String field, double length) {
    return below(part, field, length, LARGEST, "");
  }

  static double below(String part, String field, double length, double bound, String whose) {
    if (!(length > 0 && length < bound)) {
      throw new ModelException(part, field, length, "above 0 and below " + bound + " m" + whose);
    }
    return length;
  }

  static double upTo(String part, String field, double length, double bound, String whose) {
    if (!(length > 0 && length <= bound)) {
      throw new ModelException(part, field, length, "above 0 and at most " + bound + " m" + whose);
    }
    return length;
  }

  static double orNone(String part, String field, double length, double bound, String whose) {
    if (!(length >= 0 && length <= bound)) {
      throw new ModelException(part, field, length, "from 0 to " + bound + " m" + whose);
    }
    return length;
  }
}
