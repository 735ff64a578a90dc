package bellcrank.statics.study.internal;

/** What the samples of one block answered. Written by one thread, then only read. */
public final class Sheet {

  private final double[][] values;
  private final int[] filled;
  private final Moments[] moments;
  private final Tally[] missing;
  private final Tally outcomes = new Tally();
  private final Tally happenings = new Tally();
  private final long[] happened;
  private final long[] open;

  /**
   * An empty sheet.
   *
   * @param samples how many samples the block has
   * @param figures how many figures are asked of each
   * @param events how many events are looked for in each
   */
  public Sheet(int samples, int figures, int events) {
    values = new double[figures][samples];
    filled = new int[figures];
    moments = new Moments[figures];
    missing = new Tally[figures];
    for (int figure = 0; figure < figures; figure++) {
      moments[figure] = new Moments();
      missing[figure] = new Tally();
    }
    happened = new long[events];
    open = new long[events];
  }

  /**
   * Notes the number of a figure.
   *
   * @param figure which
   * @param value the number, finite
   * @param sample number of the sample
   */
  public void value(int figure, double value, long sample) {
    // a negative zero would sort below zero
    double plain = value + 0.0;
    values[figure][filled[figure]++] = plain;
    moments[figure].add(plain, sample);
  }

  /**
   * Notes that a figure has no number.
   *
   * @param figure which
   * @param why the reason
   * @param sample number of the sample
   */
  public void noValue(int figure, String why, long sample) {
    missing[figure].add(why, sample);
  }

  /**
   * Notes how a sample came out, once for each sample.
   *
   * @param name the outcome
   * @param sample number of the sample
   */
  public void outcome(String name, long sample) {
    outcomes.add(name, sample);
  }

  /**
   * Notes what gives way in a sample, once for each part.
   *
   * @param name what happens
   * @param sample number of the sample
   */
  public void happening(String name, long sample) {
    happenings.add(name, sample);
  }

  /**
   * Notes that an event happens in a sample.
   *
   * @param event which
   */
  public void happens(int event) {
    happened[event]++;
  }

  /**
   * Notes that a sample leaves open whether an event happens.
   *
   * @param event which
   */
  public void leavesOpen(int event) {
    open[event]++;
  }

  Moments moments(int figure) {
    return moments[figure];
  }

  Tally missing(int figure) {
    return missing[figure];
  }

  /** Copies the numbers of a figure; returns up to where the goal is filled then. */
  int copy(int figure, double[] goal, int from) {
    System.arraycopy(values[figure], 0, goal, from, filled[figure]);
    return from + filled[figure];
  }

  /**
   * How the samples came out.
   *
   * @return counts
   */
  public Tally outcomes() {
    return outcomes;
  }

  /**
   * What gave way.
   *
   * @return counts
   */
  public Tally happenings() {
    return happenings;
  }

  /**
   * In how many samples an event happens.
   *
   * @param event which
   * @return count
   */
  public long happened(int event) {
    return happened[event];
  }

  /**
   * In how many samples it is open whether an event happens.
   *
   * @param event which
   * @return count
   */
  public long open(int event) {
    return open[event];
  }
}
