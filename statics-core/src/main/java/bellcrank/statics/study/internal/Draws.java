package bellcrank.statics.study.internal;

/**
 * Numbers drawn at random, the same for the same seed and sample on every machine: SplitMix64
 * (Steele, Lea and Flood, Fast splittable pseudorandom number generators, 2014; constants from
 * memory, held against the generator of the JDK by a test). Each block of samples has a sequence of
 * its own, so it does not matter who works on it and when.
 */
public final class Draws {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final int LOW_BITS = 12;

  private long state;

  private Draws(long state) {
    this.state = state;
  }

  /**
   * A sequence.
   *
   * @param seed any number
   * @return the sequence of that seed
   */
  static Draws of(long seed) {
    return new Draws(seed);
  }

  /**
   * The sequence of a block. Seed and number are mixed, so that neighbouring seeds and blocks have
   * nothing in common.
   *
   * @param seed seed of the run
   * @param block number of the block
   * @return its sequence
   */
  public static Draws of(long seed, long block) {
    return new Draws(mix(mix(seed) + GOLDEN * (2 * block + 1)));
  }

  /** The next 64 bits. */
  long bits() {
    state += GOLDEN;
    return mix(state);
  }

  /**
   * The next number, evenly spread.
   *
   * @return above 0 and below 1, neither end included
   */
  public double share() {
    return ((bits() >>> LOW_BITS) + 0.5) * 0x1p-52;
  }

  /**
   * Leaves numbers out.
   *
   * @param numbers how many, 0 or more
   */
  public void skip(long numbers) {
    state += GOLDEN * numbers;
  }

  private static long mix(long bits) {
    long mixed = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }
}
