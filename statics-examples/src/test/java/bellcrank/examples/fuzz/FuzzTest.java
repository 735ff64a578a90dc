package bellcrank.examples.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The fuzz targets with bytes of chance, the same in every run. A profile of the build gives the
 * same targets to a search that coverage leads.
 */
class FuzzTest {

  private static final int FILES = 2_000;
  private static final int QUANTITIES = 50_000;
  private static final int LONGEST_BYTES = 16;

  /** A bound for a busy machine; most inputs take a thousandth of a second. */
  private static final double LONGEST_SECONDS = 30;

  @Test
  void changedFilesAreRefusedOrAnswered() {
    Random random = new Random(7);
    Tally tally = new Tally();
    for (int i = 0; i < FILES; i++) {
      byte[] file = MutatedFile.of(bytes(random));
      try {
        MutatedFileFuzz.run(file, tally);
      } catch (RuntimeException | AssertionError | StackOverflowError e) {
        throw new AssertionError(new String(file, StandardCharsets.UTF_8), e);
      }
    }
    assertThat(tally.longestSeconds()).isLessThan(LONGEST_SECONDS);
    // both kinds of answer must have been met, else the changes are too weak or too strong
    assertThat(tally.of("read, balanced and decided")).isGreaterThan(FILES / 20);
    assertThat(tally.of("refused in connections")).isGreaterThan(FILES / 20);
  }

  @Test
  void textsOfQuantitiesAreRefusedOrRead() {
    Random random = new Random(8);
    Tally tally = new Tally();
    for (int i = 0; i < QUANTITIES; i++) {
      QuantityFuzz.run(bytes(random), tally);
    }
    assertThat(tally.longestSeconds()).isLessThan(LONGEST_SECONDS);
    assertThat(tally.of("read and written again")).isGreaterThan(QUANTITIES / 100);
    assertThat(tally.of("refused")).isGreaterThan(QUANTITIES / 2);
  }

  private static byte[] bytes(Random random) {
    byte[] bytes = new byte[2 + random.nextInt(LONGEST_BYTES)];
    random.nextBytes(bytes);
    return bytes;
  }
}
