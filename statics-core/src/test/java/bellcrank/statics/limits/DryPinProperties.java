package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/**
 * A lever on one dry pin, in closed form: the force F of the pin passes no farther from its middle
 * than the radius ρ of the friction circle, so the effort Q lies between the roots of (m + Q·k)² =
 * ρ²·|W + Q·d|², m being the moment of the load W about the pin and k that of a unit effort along
 * d.
 */
class DryPinProperties {

  private static Device lever(double radius, double mu, double arm, double angle, Vector load) {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("grip", arm, 0.1)
        .point("ram", -0.3, 0)
        .member("lever", "ram", "hinge", "grip")
        .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), radius, mu))
        .force("load", "lever", "ram", load)
        .sought("effort", "lever", "grip", Direction.ofAngle(angle))
        .build();
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void theTrueEndLiesWithinTheGap(
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double radius,
      @ForAll @DoubleRange(min = 0.05, max = 1) double mu,
      @ForAll @DoubleRange(min = 0.2, max = 2) double arm,
      @ForAll @DoubleRange(min = -3.1, max = 3.1) double angle,
      @ForAll @DoubleRange(min = -300, max = 300) double x,
      @ForAll @DoubleRange(min = -300, max = 300) double y) {
    double circle = radius * Math.sin(Math.atan(mu));
    double perUnit = arm * Math.sin(angle) - 0.1 * Math.cos(angle);
    double moment = -0.3 * y;
    double along = x * Math.cos(angle) + y * Math.sin(angle);
    // about the pin: an effort that passes near it locks the lever, however large
    Assume.that(Math.abs(perUnit) > 1.2 * circle && Math.hypot(x, y) > 1);
    double a = perUnit * perUnit - circle * circle;
    double b = moment * perUnit - circle * circle * along;
    double c = moment * moment - circle * circle * (x * x + y * y);
    double root = Math.sqrt(Math.max(0, b * b - a * c));
    Range range =
        Limits.of(lever(radius, mu, arm, angle, Vector.of(x, y))).range("effort").orElseThrow();
    double size = Math.hypot(x, y) + Math.abs(b / a) + root / a;
    assertThat(range.gap()).isBetween(0.0, 1e-6 * size);
    double most = range.greatest().orElseThrow();
    double least = range.least().orElseThrow();
    double slack = 1e-8 * size;
    assertThat((root - b) / a).isBetween(most - slack, most + range.gap() + slack);
    assertThat((-root - b) / a).isBetween(least - range.gap() - slack, least + slack);
  }

  /** The same by trying: every direction of the pin's force, the couple at its full value. */
  @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
  void noDirectionOfThePinsForceGivesMore(
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double radius,
      @ForAll @DoubleRange(min = 0.1, max = 1) double mu,
      @ForAll @DoubleRange(min = 0.3, max = 2) double arm,
      @ForAll @DoubleRange(min = 0.6, max = 2.5) double angle) {
    double circle = radius * Math.sin(Math.atan(mu));
    Vector load = Vector.of(20, -100);
    double perUnit = arm * Math.sin(angle) - 0.1 * Math.cos(angle);
    Assume.that(Math.abs(perUnit) > 1.2 * circle);
    Direction d = Direction.ofAngle(angle);
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (int i = -50_000; i <= 50_000; i++) {
      double effort = i * 0.004;
      double couple = 0.3 * 100 + effort * perUnit;
      if (Math.abs(couple) <= circle * load.plus(d.times(effort)).norm()) {
        most = Math.max(most, effort);
        least = Math.min(least, effort);
      }
    }
    Assume.that(most >= least && most < 199 && least > -199);
    Range range = Limits.of(lever(radius, mu, arm, angle, load)).range("effort").orElseThrow();
    assertThat(range.greatest().orElseThrow()).isCloseTo(most, within(0.0041 + range.gap()));
    assertThat(range.least().orElseThrow()).isCloseTo(least, within(0.0041 + range.gap()));
  }
}
