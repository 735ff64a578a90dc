package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

final class ProgressLineTest {

  private static final double NANO = 1e-9;

  private final StringWriter told = new StringWriter();
  private final double begun = NANO * System.nanoTime();

  private ProgressLine line(boolean screen) {
    return new ProgressLine(new PrintWriter(told), screen);
  }

  @Test
  void aShortRunTellsNothing() {
    try (ProgressLine line = line(true)) {
      line.at("samples");
      line.tick(begun + 1.9);
    }
    assertThat(told.toString()).isEmpty();
  }

  @Test
  void aLongRunTellsWhatItDoes() {
    try (ProgressLine line = line(false)) {
      line.at("search short lever");
      line.tick(begun + 7.5);
      // not each time it could
      line.tick(begun + 8);
      line.at("samples", 2_500, 10_000);
      line.tick(begun + 20.1);
      line.quiet();
      line.tick(begun + 40);
    }
    assertThat(told.toString().lines())
        .containsExactly(
            "bellcrank: search short lever, 7 s so far",
            "bellcrank: samples: 2,500 of 10,000, about 60 s to go");
  }

  @Test
  void aLongTimeToGoIsToldInMinutes() {
    try (ProgressLine line = line(false)) {
      line.at("samples", 1_000, 11_000);
      line.tick(begun + 18.1);
    }
    assertThat(told.toString().strip())
        .isEqualTo("bellcrank: samples: 1,000 of 11,000, about 3 min to go");
  }

  @Test
  void onAScreenTheLineIsWrittenOverAndWiped() {
    try (ProgressLine line = line(true)) {
      line.at("variants");
      line.tick(begun + 2.5);
      line.at("x".repeat(200));
      line.tick(begun + 3);
    }
    String first = "bellcrank: variants, 2 s so far";
    String second = "bellcrank: " + "x".repeat(68);
    assertThat(told.toString())
        .isEqualTo(
            first
                + '\r'
                + " ".repeat(first.length())
                + '\r'
                + second
                + '\r'
                + " ".repeat(79)
                + '\r');
  }

  @Test
  void aRunThatIsQuickIsTheSameWithIt() {
    String file = YamlFiles.device("cider-press-lever").toString();
    CommandRun plain = CommandRun.of(file);
    CommandRun watched = CommandRun.of("--progress", file);
    CommandRun hidden = CommandRun.of("--no-progress", file);
    assertThat(watched.out()).isEqualTo(plain.out()).isEqualTo(hidden.out());
    assertThat(watched.err()).isEmpty();
  }
}
