package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.strength.Material.Strength;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A share that a law says at once is what its parts say. */
class LawSharesTest {

  private static final List<Law<BarDemand>> LAWS =
      List.of(new FaceLaw(true), new FaceLaw(false), new ShearLaw(0.6));

  /** Steel, timber with strengths of its own, and others of which something is not stated. */
  private static final List<Map<Strength, Double>> STRENGTHS =
      List.of(
          Map.of(Strength.YIELD, 235e6),
          Map.of(
              Strength.BENDING,
              24e6,
              Strength.TENSION,
              14e6,
              Strength.COMPRESSION,
              21e6,
              Strength.SHEAR,
              4e6),
          Map.of(Strength.BENDING, 24e6, Strength.TENSION, 14e6),
          Map.of(Strength.SHEAR, 4e6),
          Map.of());

  @ParameterizedTest
  @ValueSource(doubles = {-3000, 0, 2000})
  void whatIsUsedIsDemandOverResistance(double normal) {
    for (Law<BarDemand> law : LAWS) {
      for (Map<Strength, Double> strengths : STRENGTHS) {
        Sized sized = new Sized(Tried.BAR, Tried.steel("tried", strengths));
        BarDemand demand = new BarDemand(normal, 400, -150, sized);
        double used = law.used(demand, 1.5);
        if (law.lacks(demand).isPresent()) {
          assertThat(used).isInfinite();
        } else {
          double parts = law.demanded(demand) / law.resistance(demand, 1.5);
          assertThat(used).isCloseTo(parts, within(1e-15 * parts));
        }
      }
    }
  }

  /** Compression and bending grow together; nearer to Euler's load the share grows faster. */
  @Test
  void aColumnWithBendingIsUsedEverMore() {
    Law<ColumnDemand> law = new ColumnAndBendingLaw(new ColumnLaw(new ColumnCurve.Perry()));
    assertThat(law.isGrowing()).isTrue();
    assertThat(law.isProportional()).isFalse();
    Sized sized = new Sized(Tried.BAR, Tried.STEEL);
    ColumnEnds ends = ColumnEnds.pinned("boom", "heel", "tip");
    double last = 0;
    for (int k = 1; k <= 100; k++) {
      double used = law.used(new ColumnDemand(2000 * k, 20 * k, 2, ends, sized), 1.1);
      assertThat(used).isGreaterThan(last);
      last = used;
    }
  }
}
