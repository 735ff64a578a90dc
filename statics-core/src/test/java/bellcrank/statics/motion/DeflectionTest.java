package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** The tension of a taut line told from a sideways pull. */
class DeflectionTest {

  @Test
  void inTheMiddleOfTheSpan() {
    // by hand: parts 3-4-5 with half a span of 4 and a deflection of 3: 60 × 5 / 6
    Deflection wide = Deflection.middle(60, 8, 3);
    assertThat(wide.tension()).isCloseTo(50, within(1e-12));
    assertThat(wide.grippedTensions().first()).isCloseTo(50, within(1e-12));
    assertThat(wide.grippedTensions().second()).isCloseTo(50, within(1e-12));
    assertThat(wide.detour()).isCloseTo(2, within(1e-12));
    // a small deflection: nearly F·L / 4d
    assertThat(Deflection.middle(100, 10, 0.1).tension()).isCloseTo(100 * 10 / 0.4, within(0.6));
  }

  @Test
  void besideTheMiddle() {
    // by hand: parts 9-12-15 and 16-12-20, sin α + sin β = 0.8 + 0.6, and a right angle between
    Deflection beside = new Deflection(140, 25, 9, 12);
    assertThat(beside.tension()).isCloseTo(100, within(1e-12));
    assertThat(beside.grippedTensions().first()).isCloseTo(140 * 0.8, within(1e-12));
    assertThat(beside.grippedTensions().second()).isCloseTo(140 * 0.6, within(1e-12));
    assertThat(beside.detour()).isCloseTo(10, within(1e-12));
  }

  @Test
  void theTensionBeforeFromTheStiffness() {
    Deflection wide = Deflection.middle(60, 8, 3);
    assertThat(wide.tensionBefore(0)).hasValue(wide.tension());
    assertThat(wide.tensionBefore(20).orElseThrow()).isCloseTo(10, within(1e-12));
    assertThat(wide.tensionBefore(25)).hasValue(0);
    assertThat(wide.tensionBefore(26)).isEmpty();
  }

  @Test
  void theErrorsOfAHandMeasurement() {
    Deflection measured = Deflection.middle(60, 8, 3);
    Deflection.Estimate one = measured.estimate(new Deflection.Errors(1.2, 0.1, 0.5, 0.03));
    // by hand from T = F·√(16 + 9) / (2·3): T/F = 5/6, ∂T/∂L = F·L / (8·d·p) = 4,
    // ∂T/∂d = −F·(L/2)² / (2·d²·p) = −32/3; the place does not count in the middle
    assertThat(one.fromForce()).isCloseTo(1.0, within(1e-12));
    assertThat(one.fromSpan()).isCloseTo(0.4, within(1e-12));
    assertThat(one.fromPlace()).isCloseTo(0, within(1e-12));
    assertThat(one.fromDeflection()).isCloseTo(0.32, within(1e-12));
    assertThat(one.worstError()).isCloseTo(1.72, within(1e-12));
    assertThat(one.likelyError()).isCloseTo(Math.sqrt(1 + 0.16 + 0.1024), within(1e-12));
    Deflection.Estimate sum = new Deflection.Estimate(100, 1, 2, 4, 10);
    assertThat(sum.likelyError()).isCloseTo(11, within(1e-12));
    assertThat(sum.worstError()).isCloseTo(17, within(1e-12));
  }

  @Test
  void theErrorsOfAMeasurementBesideTheMiddle() {
    Deflection.Estimate one =
        new Deflection(140, 25, 9, 12).estimate(new Deflection.Errors(1.4, 0.7, 0.7, 0.5));
    // by hand: S = 1.4, F/S² = 500/7; ∂S/∂L = −12·16/20³ = −0.024,
    // ∂S/∂a = 12·(16/20³ − 9/15³) = −0.008, ∂S/∂d = 81/15³ + 256/20³ = 0.056
    assertThat(one.tension()).isCloseTo(100, within(1e-12));
    assertThat(one.fromForce()).isCloseTo(1, within(1e-12));
    assertThat(one.fromSpan()).isCloseTo(1.2, within(1e-12));
    assertThat(one.fromPlace()).isCloseTo(0.4, within(1e-12));
    assertThat(one.fromDeflection()).isCloseTo(2, within(1e-12));
  }

  @Test
  void aFaultlessMeasurementHasNoError() {
    Deflection.Estimate one =
        new Deflection(140, 25, 9, 12).estimate(new Deflection.Errors(0, 0, 0, 0));
    assertThat(new Deflection.Errors(-0.0, -0.0, -0.0, -0.0))
        .isEqualTo(new Deflection.Errors(0, 0, 0, 0));
    assertThat(new Deflection.Errors(1e15, 0, 0, 0).force()).isEqualTo(1e15);
    assertThat(one.likelyError()).isZero();
    assertThat(one.worstError()).isZero();
  }

  @Test
  void mistakesAreTold() {
    refused(() -> new Deflection(0, 8, 4, 3), "force");
    refused(() -> new Deflection(60, -8, 4, 3), "span");
    refused(() -> new Deflection(60, 8, 0, 3), "place along the span");
    refused(() -> new Deflection(60, 8, 8, 3), "place along the span");
    refused(() -> new Deflection(60, 8, 4, 0), "deflection");
    refused(() -> Deflection.middle(60, 8, Double.NaN), "deflection");
    refused(() -> Deflection.middle(60, 8, 3).tensionBefore(-1), "stiffness");
    refused(() -> new Deflection.Errors(-1, 0, 0, 0), "error of force");
    refused(() -> new Deflection.Errors(0, -1, 0, 0), "error of span");
    refused(() -> new Deflection.Errors(0, 0, -1, 0), "error of place along the span");
    refused(() -> new Deflection.Errors(0, 0, 0, Double.NaN), "error of deflection");
    Deflection beside = new Deflection(60, 8, 5, 4);
    refused(() -> beside.estimate(new Deflection.Errors(60, 0, 0, 0)), "error of force");
    refused(() -> beside.estimate(new Deflection.Errors(0, 8, 0, 0)), "error of span");
    refused(
        () -> beside.estimate(new Deflection.Errors(0, 0, 3, 0)), "error of place along the span");
    refused(() -> beside.estimate(new Deflection.Errors(0, 0, 0, 4)), "error of deflection");
  }

  private static void refused(ThrowingCallable call, String field) {
    assertThatExceptionOfType(ModelException.class)
        .isThrownBy(call)
        .satisfies(
            mistake -> {
              assertThat(mistake.problems().get(0).part()).isEqualTo("deflection");
              assertThat(mistake.problems().get(0).field()).isEqualTo(field);
            });
  }
}
