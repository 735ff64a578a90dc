package bellcrank.statics.explain;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/**
 * What one unit of a force does to two bodies: force and couple on the first, the opposite on the
 * second. Both act on one line, so nothing is left of it where both bodies are in one cut.
 *
 * @param body number of the first body; {@link Picture#OUTSIDE} for the ground
 * @param other number of the second body; the same for the ground or if there is none
 * @param at where it acts on the first
 * @param otherAt where it acts on the second
 * @param force force on the first
 * @param couple couple on the first in N·m, counter-clockwise positive
 */
record Link(int body, int other, Point at, Point otherAt, Vector force, double couple) {

  Link moved(Vector by) {
    return new Link(body, other, at.plus(by), otherAt.plus(by), force, couple);
  }
}
