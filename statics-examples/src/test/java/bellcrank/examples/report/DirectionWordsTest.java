package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DirectionWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 0 | right",
        "-1 | 0 | left",
        "0 | 1 | up",
        "0 | -1 | down",
        "1 | 2 | right and up, 63.4°",
        "-1 | 2 | left and up, 63.4°",
        "3 | -4 | right and down, 53.1°",
        "-1 | -1 | left and down, 45.0°",
        "1e-300 | 1 | up",
        "1 | 0.0008 | right",
        "1 | 0.0009 | right and up, 0.1°",
        "-0.0008 | -1 | down",
        "-0.0009 | -1 | left and down, 89.9°"
      })
  void aForcePoints(double x, double y, String words) {
    assertThat(DirectionWords.of(x, y)).isEqualTo(words);
  }

  @Test
  void aCoupleTurns() {
    assertThat(DirectionWords.turning(2)).isEqualTo("counter-clockwise");
    assertThat(DirectionWords.turning(-2)).isEqualTo("clockwise");
  }

  @Test
  void theUsersLanguageDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(DirectionWords.of(1, 2)).endsWith("63.4°");
    } finally {
      Locale.setDefault(before);
    }
  }
}
