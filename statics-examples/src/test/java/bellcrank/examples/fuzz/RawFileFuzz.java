package bellcrank.examples.fuzz;

/** For a search led by coverage: bytes that are the file themselves. */
public final class RawFileFuzz {

  private static final Tally TALLY = new Tally();

  private RawFileFuzz() {}

  /** As with changed files. */
  public static void fuzzerInitialize() {
    MutatedFileFuzz.fuzzerInitialize();
  }

  /** One input. */
  public static void fuzzerTestOneInput(byte[] input) {
    MutatedFileFuzz.run(input, TALLY);
  }

  /** At the end. */
  public static void fuzzerTearDown() {
    System.out.print(TALLY.figures());
  }
}
