package bellcrank.statics.study.internal;

/** Where a force enters the bars of a member. */
sealed interface DualEntry {

  /**
   * At a place.
   *
   * @param place the place
   */
  record At(DualVector place) implements DualEntry {}

  /**
   * Spread linearly along a segment.
   *
   * @param from start of the segment
   * @param to its end
   * @param start intensity at the start, as a force per whole segment
   * @param end intensity at the end
   */
  record Along(DualVector from, DualVector to, DualVector start, DualVector end)
      implements DualEntry {

    /** Force and moment about a place of the part between two shares of the segment. */
    DualSum part(Dual first, Dual last, DualVector about) {
      DualVector way = to.minus(from);
      DualVector slope = end.minus(start);
      Dual one = last.minus(first);
      Dual two = last.squared().minus(first.squared()).times(0.5);
      Dual three = last.squared().times(last).minus(first.squared().times(first)).times(1 / 3.0);
      DualVector force = start.times(one).plus(slope.times(two));
      DualVector lever = start.times(two).plus(slope.times(three));
      return new DualSum(force, from.minus(about).cross(force).plus(way.cross(lever)));
    }
  }

  /** Spread evenly over all bars. */
  record OverBars() implements DualEntry {}

  /** Not known. */
  record Unplaced() implements DualEntry {}

  /** The entry of so many units. */
  default DualEntry times(Dual size) {
    return this instanceof Along along
        ? new Along(along.from(), along.to(), along.start().times(size), along.end().times(size))
        : this;
  }
}
