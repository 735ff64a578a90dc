package bellcrank.statics.study.internal;

/** What a search has found: the best place that keeps all goals, else the one that misses least. */
public final class Best {

  private final double[] place;
  private final boolean keeps;
  private final boolean[] kept;
  private final boolean[] used;
  private final int looks;
  private final boolean cut;

  Best(double[] place, boolean keeps, boolean[] kept, boolean[] used, int looks, boolean cut) {
    this.place = place.clone();
    this.keeps = keeps;
    this.kept = kept.clone();
    this.used = used.clone();
    this.looks = looks;
    this.cut = cut;
  }

  /** Whether there was any place at which all was seen. */
  public boolean isThere() {
    return place.length > 0;
  }

  /** The place, in shares of the ranges; empty if nothing was seen anywhere. */
  public double[] place() {
    return place.clone();
  }

  /** Whether all goals are kept there. */
  public boolean keeps() {
    return keeps;
  }

  /** Whether a goal is kept there. */
  public boolean isKept(int goal) {
    return kept[goal];
  }

  /** Whether a goal has no room there. */
  public boolean isUsedUp(int goal) {
    return used[goal];
  }

  /** How often it looked. */
  public int looks() {
    return looks;
  }

  /** Whether it ended because it had looked as often as it may. */
  public boolean isCutShort() {
    return cut;
  }
}
