package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.ground.BasePressure.Edge;
import bellcrank.statics.ground.BasePressure.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hand values for a sill of 0.6 m by 2 m under 12 kN, about which N/(BL) is 10 kPa. */
class BasePressureTest {

  private static BasePressure at(double offset) {
    return BasePressure.of(12e3, 12e3 * offset, 0.6, 2);
  }

  @Test
  void aCentralForcePressesEvenly() {
    BasePressure even = at(0);
    assertThat(even.shape()).isEqualTo(Shape.TRAPEZOID);
    assertThat(even.left()).hasValue(10e3);
    assertThat(even.right()).hasValue(10e3);
    assertThat(even.smallest()).hasValue(10e3);
    assertThat(even.largest()).hasValue(10e3);
    assertThat(even.effectivePressure()).hasValue(10e3);
    assertThat(even.offset()).hasValue(0);
    assertThat(even.contactWidth()).isEqualTo(0.6);
    assertThat(even.effectiveWidth()).isEqualTo(0.6);
    assertThat(even.pressedEdge()).isEmpty();
  }

  @Test
  void withinTheKernTheWholeWidthIsPressed() {
    // by hand: e = 0.05, 6e/B = 0.5, so 10 kPa · (1 ± 0.5)
    BasePressure right = at(0.05);
    assertThat(right.shape()).isEqualTo(Shape.TRAPEZOID);
    assertThat(right.kern()).isCloseTo(0.1, within(1e-15));
    assertThat(right.offset().getAsDouble()).isCloseTo(0.05, within(1e-15));
    assertThat(right.left().getAsDouble()).isCloseTo(5e3, within(1e-8));
    assertThat(right.right().getAsDouble()).isCloseTo(15e3, within(1e-8));
    assertThat(right.pressedEdge()).contains(Edge.RIGHT);
    assertThat(right.contactWidth()).isEqualTo(0.6);
    // by hand: B' = 0.6 − 0.1, N/(B'L) = 12 / (0.5 · 2)
    assertThat(right.effectiveWidth()).isCloseTo(0.5, within(1e-15));
    assertThat(right.effectivePressure().getAsDouble()).isCloseTo(12e3, within(1e-8));
  }

  @Test
  void theEdgeOfTheKernBelongsToIt() {
    // by hand: B = 6, e = 1 = B/6; 2 · 12 / (6 · 2)
    BasePressure kern = BasePressure.of(12, 12, 6, 2);
    assertThat(kern.shape()).isEqualTo(Shape.TRAPEZOID);
    assertThat(kern.right()).hasValue(2);
    assertThat(kern.left()).hasValue(0);
    assertThat(kern.contactWidth()).isEqualTo(6);
  }

  @Test
  void aNegativeCouplePressesTheLeft() {
    BasePressure left = at(-0.05);
    assertThat(left.offset().getAsDouble()).isCloseTo(-0.05, within(1e-15));
    assertThat(left.left().getAsDouble()).isCloseTo(15e3, within(1e-8));
    assertThat(left.right().getAsDouble()).isCloseTo(5e3, within(1e-8));
    assertThat(left.pressedEdge()).contains(Edge.LEFT);
  }

  @Test
  void outsideTheKernAPartIsPressed() {
    // by hand: e = 0.2, contact 3 · (0.3 − 0.2) = 0.3, largest 2 · 12 / (0.3 · 2) = 40 kPa
    BasePressure part = at(0.2);
    assertThat(part.shape()).isEqualTo(Shape.TRIANGLE);
    assertThat(part.contactWidth()).isCloseTo(0.3, within(1e-15));
    assertThat(part.largest().getAsDouble()).isCloseTo(40e3, within(1e-7));
    assertThat(part.right()).isEqualTo(part.largest());
    assertThat(part.left()).hasValue(0);
    assertThat(part.smallest()).hasValue(0);
    // by hand: B' = 0.6 − 0.4, N/(B'L) = 12 / (0.2 · 2)
    assertThat(part.effectiveWidth()).isCloseTo(0.2, within(1e-15));
    assertThat(part.effectivePressure().getAsDouble()).isCloseTo(30e3, within(1e-7));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, -0.3, 0.31, 5, -1e20})
  void atTheEdgeAndBeyondNoPressureIsFinite(double offset) {
    BasePressure edge = at(offset);
    assertThat(edge.shape()).isEqualTo(Shape.EDGE);
    assertThat(edge.left()).isEmpty();
    assertThat(edge.right()).isEmpty();
    assertThat(edge.largest()).isEmpty();
    assertThat(edge.smallest()).isEmpty();
    assertThat(edge.effectivePressure()).isEmpty();
    assertThat(edge.contactWidth()).isZero();
    assertThat(edge.effectiveWidth()).isZero();
    assertThat(edge.pressedEdge()).contains(offset > 0 ? Edge.RIGHT : Edge.LEFT);
    assertThat(edge.offset()).isPresent();
  }

  @Test
  void noForceIsNoPressure() {
    BasePressure none = BasePressure.of(0, 0, 0.6, 2);
    assertThat(none.shape()).isEqualTo(Shape.NONE);
    assertThat(none.offset()).isEmpty();
    assertThat(none.left()).hasValue(0);
    assertThat(none.right()).hasValue(0);
    assertThat(none.effectivePressure()).hasValue(0);
    assertThat(none.contactWidth()).isZero();
    assertThat(none.effectiveWidth()).isZero();
    assertThat(none.pressedEdge()).isEmpty();
  }

  @Test
  void aCoupleWithoutAForceIsBeyondTheEdge() {
    BasePressure couple = BasePressure.of(0, -1e-9, 0.6, 2);
    assertThat(couple.shape()).isEqualTo(Shape.EDGE);
    assertThat(couple.offset()).isEmpty();
    assertThat(couple.largest()).isEmpty();
    assertThat(couple.pressedEdge()).contains(Edge.LEFT);
  }

  @Test
  void whatIsTooLargeForANumberIsEmpty() {
    assertThat(BasePressure.of(1e-300, 1e30, 1, 1).offset()).isEmpty();
    BasePressure needle = BasePressure.of(1e30, 0, 1e-200, 1e-200);
    assertThat(needle.shape()).isEqualTo(Shape.TRAPEZOID);
    assertThat(needle.largest()).isEmpty();
    assertThat(needle.smallest()).isEmpty();
    assertThat(needle.effectivePressure()).isEmpty();
  }

  @Test
  void justInsideTheEdgeItIsStillATriangle() {
    BasePressure last = BasePressure.of(1, Math.nextDown(0.5), 1, 1);
    assertThat(last.shape()).isEqualTo(Shape.TRIANGLE);
    assertThat(last.contactWidth()).isPositive();
    assertThat(last.largest().getAsDouble()).isGreaterThan(1e15);
  }

  @Test
  void negativeZeroIsZero() {
    assertThat(BasePressure.of(-0.0, -0.0, 1, 1)).isEqualTo(BasePressure.of(0, 0, 1, 1));
  }
}
