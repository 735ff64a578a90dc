package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows solved in a kept order give what the dense rows give. */
class DrivenRowsTest {

  private static final int ROPE = 8;

  private final Device derrick =
      Device.named("barrel derrick")
          .point("foot", 0, 0)
          .point("heel", 0, 0.9)
          .point("head", 0, 4.8)
          .point("peg", -3.6, 0)
          .point("tip", 2.7, 3.3)
          .member("pole", "foot", "heel", "head")
          .member("leg", "peg", "head")
          .member("jib", "heel", "tip")
          .pin("foot", "foot", "pole", "ground")
          .pin("peg", "peg", "leg", "ground")
          .pin("head", "head", "leg", "pole")
          .pin("heel", "heel", "jib", "pole")
          .line("rope", End.of("jib", "tip"), End.of("pole", "head"))
          .build();

  @Test
  void correctionsInOrderAreThoseOfTheDenseRows() {
    Closure kept = Closure.of(derrick, List.of(ROPE));
    kept.keepOrder();
    Closure dense = Closure.of(derrick, List.of(ROPE));
    double[] change = new double[kept.speeds()];
    for (int step = 0; step < 20; step++) {
      double[] row = kept.row(ROPE);
      double[] expected = dense.correction(dense.row(ROPE), 0.01);
      kept.correct(row, 0.01, change);
      assertThat(change).containsExactly(expected, within(1e-12));
      assertThat(kept.along(row)).containsExactly(dense.along(row), within(1e-12));
      kept.move(change, 1);
      dense.restore(kept.configuration());
    }
  }

  /** The pole turns about its foot only if the leg lets it: that drive depends on the pins. */
  @Test
  void aDriveThatIsHeldIsLeftToSingularValues() {
    Closure kept = Closure.of(derrick, List.of(ROPE));
    kept.keepOrder();
    double[] row = new double[kept.speeds()];
    row[2] = 1;
    double[] change = new double[kept.speeds()];
    kept.correct(row, 0.1, change);

    assertThat(kept.along(row)).isEmpty();
    assertThat(change).containsExactly(kept.correction(row, 0.1), within(1e-15));
    // the rows serve the rope as before
    kept.correct(kept.row(ROPE), 0.01, change);
    assertThat(change[8]).isNotZero();
  }

  @Test
  void anOrderServesRowsWithNumbersInTheSamePlacesOnly() {
    Assembly assembly = Assembly.of(derrick);
    boolean[] held = new boolean[9];
    java.util.Arrays.fill(held, 0, 8, true);
    double[] jib = {0, 0, 0, 0, 0, 0, 0, 0, 1};
    DrivenRows rows = new DrivenRows(assembly, held, jib, 0);

    assertThat(rows.covers(jib)).isTrue();
    assertThat(rows.covers(new double[9])).isTrue();
    assertThat(rows.covers(new double[] {0, 0, 1, 0, 0, 0, 0, 0, 1})).isFalse();
  }
}
