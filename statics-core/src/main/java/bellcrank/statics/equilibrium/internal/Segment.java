package bellcrank.statics.equilibrium.internal;

/** A straight line from one place to another, in drawn and scaled coordinates. */
record Segment(double ax, double ay, double bx, double by) {

  double length() {
    return Math.hypot(bx - ax, by - ay);
  }

  /** How far along the line the foot of a place lies from its start; negative before it. */
  double along(double x, double y) {
    double length = length();
    return length > 0 ? ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length : 0;
  }

  /** How far a place is from the line between its ends. */
  double distance(double x, double y) {
    double length = length();
    double way = Math.max(0, Math.min(length, along(x, y)));
    double share = length > 0 ? way / length : 0;
    return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay));
  }
}
