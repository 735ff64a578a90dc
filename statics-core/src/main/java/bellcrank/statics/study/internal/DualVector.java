package bellcrank.statics.study.internal;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/** A place, force or direction whose coordinates change with an input. */
record DualVector(Dual x, Dual y) {

  static final DualVector ZERO = new DualVector(Dual.ZERO, Dual.ZERO);
  static final DualVector RIGHT = new DualVector(Dual.ONE, Dual.ZERO);
  static final DualVector UP = new DualVector(Dual.ZERO, Dual.ONE);

  static DualVector of(Point at) {
    return new DualVector(Dual.of(at.x()), Dual.of(at.y()));
  }

  static DualVector of(Vector value, Vector rate) {
    return new DualVector(new Dual(value.x(), rate.x()), new Dual(value.y(), rate.y()));
  }

  /** A direction that turns at a rate. */
  static DualVector of(Direction way, double turning) {
    return new DualVector(
        new Dual(way.x(), -turning * way.y()), new Dual(way.y(), turning * way.x()));
  }

  DualVector plus(DualVector other) {
    return new DualVector(x.plus(other.x), y.plus(other.y));
  }

  DualVector minus(DualVector other) {
    return new DualVector(x.minus(other.x), y.minus(other.y));
  }

  DualVector negative() {
    return new DualVector(x.negative(), y.negative());
  }

  DualVector times(Dual factor) {
    return new DualVector(x.times(factor), y.times(factor));
  }

  DualVector times(double factor) {
    return new DualVector(x.times(factor), y.times(factor));
  }

  Dual dot(DualVector other) {
    return x.times(other.x).plus(y.times(other.y));
  }

  Dual cross(DualVector other) {
    return x.times(other.y).minus(y.times(other.x));
  }

  Dual norm() {
    return Dual.hypot(x, y);
  }

  /** Turned by a right angle counter-clockwise. */
  DualVector perpendicular() {
    return new DualVector(y.negative(), x);
  }

  /** Of length one, or zero if it is zero. */
  DualVector unit() {
    Dual length = norm();
    return length.value() == 0 ? ZERO : new DualVector(x.over(length), y.over(length));
  }
}
