package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnchorTableTest {

  /**
   * Source: TM 5-5420-278-10, WP 0035, Table 9; psf of the face for lines of 1:1, 1:2, 1:3, 1:4.
   * The public text of it runs the depth and the first column together, as 3950 for 3 ft and 950.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 950, 1300, 1450, 1500",
    "4, 1750, 2200, 2600, 2700",
    "5, 2800, 3600, 4000, 4100",
    "6, 3800, 5100, 5800, 6000",
    "7, 5100, 7000, 8000, 8400"
  })
  void deadmanInLoam(int feet, double one, double two, double three, double four) {
    assertPressure(feet, 1, one);
    assertPressure(feet, 2, two);
    assertPressure(feet, 3, three);
    assertPressure(feet, 4, four);
  }

  private static void assertPressure(int feet, int run, double psf) {
    CitedValue row = AnchorTable.named("deadman " + feet + " ft deep, line 1:" + run);
    assertThat(row.dimension()).isEqualTo(Dimension.PRESSURE);
    assertThat(row.value().isSingle()).isTrue();
    double expected = psf * 47.880259;
    assertThat(row.value().low()).isCloseTo(expected, Si.relative(expected, 1e-8));
    assertThat(row.source()).startsWith("TM 5-5420-278-10");
  }

  @Test
  void deadmanInOtherGround() {
    CitedValue hard = AnchorTable.named("deadman factor in hardpan or rock");
    assertThat(hard.value()).isEqualTo(Span.of(5));
    assertThat(hard.dimension()).isEqualTo(Dimension.NUMBER);
    assertThat(AnchorTable.named("deadman factor in wet fine soil").value())
        .isEqualTo(Span.of(0.5));
  }

  /** Source: Australian Emergency Manual: Disaster Rescue, 8.3; 350 kg a picket. */
  @Test
  void steelPicket() {
    CitedValue picket = AnchorTable.named("steel picket 1.5 m by 25 mm in good ground");
    assertThat(picket.dimension()).isEqualTo(Dimension.FORCE);
    assertThat(picket.value().low()).isCloseTo(350 * 9.80665, within(1e-9));
  }

  @Test
  void namesAreUnique() {
    assertThat(AnchorTable.rows()).hasSize(23).extracting(CitedValue::name).doesNotHaveDuplicates();
  }

  @Test
  void aWrongDepthIsAnsweredWithTheNearestRows() {
    assertThatThrownBy(() -> AnchorTable.named("deadman 9 ft deep, line 1:4"))
        .isInstanceOf(ModelException.class)
        .hasMessageStartingWith("anchor table: row is")
        .hasMessageContaining("ft deep, line 1:4\"");
  }
}
