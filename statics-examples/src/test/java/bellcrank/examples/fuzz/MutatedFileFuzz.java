package bellcrank.examples.fuzz;

/** For a search led by coverage: bytes that say how a sample is changed. */
public final class MutatedFileFuzz {

  private static final int WARMING_UP = 60;

  private static final Tally TALLY = new Tally();

  private MutatedFileFuzz() {}

  /** Reads and answers some samples first: to load classes takes longer than any input does. */
  public static void fuzzerInitialize() {
    MutatedFile.samples().stream().limit(WARMING_UP).forEach(AnsweredFile::of);
  }

  /** One input. */
  public static void fuzzerTestOneInput(byte[] input) {
    run(MutatedFile.of(input), TALLY);
  }

  static void run(byte[] file, Tally tally) {
    long begin = System.nanoTime();
    String kind = AnsweredFile.of(file);
    tally.add(kind, System.nanoTime() - begin);
  }

  /** At the end. */
  public static void fuzzerTearDown() {
    System.out.print(TALLY.figures());
  }
}
