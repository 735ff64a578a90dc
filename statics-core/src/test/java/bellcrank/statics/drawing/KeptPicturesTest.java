package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.equilibrium.Balance;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Three small pictures that were looked at and found good. A picture that changes is to be looked
 * at again: put what the test found in place of the kept file.
 */
final class KeptPicturesTest {

  static Stream<Arguments> pictures() {
    return Stream.of(
        Arguments.of("jib.svg", FreeBodyDrawing.of(Balance.of(Yard.jib())).svg()),
        Arguments.of("jib-polygon.svg", ForcePolygon.of(Balance.of(Yard.jib())).svg()),
        Arguments.of("ladder.svg", DeviceDrawing.of(Yard.ladder()).svg()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pictures")
  void thePictureIsAsItWas(String file, String svg) throws IOException {
    try (InputStream kept =
        Objects.requireNonNull(
            KeptPicturesTest.class.getResourceAsStream("/kept-drawings/" + file), file)) {
      assertThat(svg).isEqualTo(new String(kept.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void drawingAgainGivesTheSame() {
    Balance balance = Balance.of(Yard.tongs());
    assertThat(FreeBodyDrawing.of(balance, List.of("left half")).svg())
        .isEqualTo(FreeBodyDrawing.of(balance, List.of("left half")).svg());
  }
}
