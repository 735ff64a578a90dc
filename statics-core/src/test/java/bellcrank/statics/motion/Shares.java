package bellcrank.statics.motion;

import java.util.List;

/** Random shares from 0 to 1 that are used up one after another. */
final class Shares {

  private final List<Double> shares;
  private int next;

  Shares(List<Double> shares) {
    this.shares = shares;
  }

  double number(double from, double to) {
    return from + (to - from) * shares.get(next++ % shares.size());
  }

  boolean isBelow(double share) {
    return number(0, 1) < share;
  }
}
