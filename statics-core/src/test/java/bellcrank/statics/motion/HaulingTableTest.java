package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.units.Dimension;
import org.junit.jupiter.api.Test;

/** The published figures for lines and winches, each with its source. */
class HaulingTableTest {

  /** Source: Wire rope maker's technical note on rope efficiency: 0.98. */
  @Test
  void theEfficiencyOfASheave() {
    CitedValue row = HaulingTable.named("efficiency of a sheave, wire rope");
    assertThat(row.value().low()).isCloseTo(0.98, within(1e-12));
    assertThat(row.value().isSingle()).isTrue();
    assertThat(row.dimension()).isEqualTo(Dimension.NUMBER);
    assertThat(row.basis()).isEqualTo(Basis.PRINTED);
  }

  /** Source: Off-road recovery safety guide: 50 %. */
  @Test
  void theShareOfPullOnAFullDrum() {
    CitedValue row =
        HaulingTable.named("line pull on a full drum, least share of the first layer's");
    assertThat(row.value().low()).isCloseTo(0.5, within(1e-12));
  }

  /** Source: Introduction to Fall Protection, 4th ed., p. 370: 30 lb. */
  @Test
  void theEffortAtACrank() {
    CitedValue row = HaulingTable.named("crank effort for several minutes");
    assertThat(row.value().low()).isCloseTo(30 * 4.4482216152605, within(1e-9));
    assertThat(row.dimension()).isEqualTo(Dimension.FORCE);
    assertThat(row.source()).contains("p. 370");
  }

  @Test
  void anUnknownRowIsAnsweredWithTheNames() {
    assertThat(HaulingTable.rows()).hasSize(3);
    assertThatExceptionOfType(ModelException.class)
        .isThrownBy(() -> HaulingTable.named("sheave"))
        .withMessageContaining("hauling table")
        .withMessageContaining("efficiency of a sheave, wire rope");
  }
}
