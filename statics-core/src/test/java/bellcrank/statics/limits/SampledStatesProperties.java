package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/**
 * States found by trying many, by hand-written balance: none lies outside, the ends are reached.
 */
class SampledStatesProperties {

  /** Least and greatest value of each answer among the states that were tried. */
  private final Map<String, double[]> seen = new TreeMap<>();

  private void see(String ask, double value) {
    double[] ends = seen.computeIfAbsent(ask, key -> new double[] {value, value});
    ends[0] = Math.min(ends[0], value);
    ends[1] = Math.max(ends[1], value);
  }

  private void compare(Device device, double scale, double step) {
    Limits limits = Limits.of(device);
    if (seen.isEmpty()) {
      return;
    }
    assertThat(limits.verdict()).isNotInstanceOf(Verdict.DoesNotHold.class);
    seen.forEach(
        (ask, ends) -> {
          Range range = limits.range(ask).orElseThrow();
          double least = range.least().orElseThrow();
          double most = range.greatest().orElseThrow();
          assertThat(ends[0]).as(ask + " least").isBetween(least - 1e-9 * scale, least + step);
          assertThat(ends[1]).as(ask + " most").isBetween(most - step, most + 1e-9 * scale);
        });
  }

  /** Four unknowns, three equations: the friction at the wall is free. */
  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void aLadderOnRoughGroundAtARoughWall(
      @ForAll @DoubleRange(min = 0.5, max = 3) double x,
      @ForAll @DoubleRange(min = 1, max = 4) double y,
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double floor,
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double wall,
      @ForAll @DoubleRange(min = 0, max = 1) double up) {
    seen.clear();
    Device device =
        Device.named("picking ladder")
            .point("heel", 0, 0)
            .point("head", x, y)
            .point("rung", up * x, up * y)
            .member("ladder", "heel", "head")
            .connect(new Contact("heel", "heel", "ladder", Ground.NAME, Direction.UP, floor, floor))
            .connect(new Contact("head", "head", "ladder", Ground.NAME, Direction.LEFT, wall, wall))
            .force("picker", "ladder", "rung", Vector.of(0, -100))
            .build();
    int steps = 4_000;
    for (int i = -steps; i <= steps; i++) {
      double rise = 300.0 * i / steps;
      double push = (100 * up * x - x * rise) / y;
      double under = 100 - rise;
      if (push >= 0
          && under >= 0
          && Math.abs(rise) <= wall * push
          && Math.abs(push) <= floor * under) {
        see("head.normal", push);
        see("head.friction", rise);
        see("heel.normal", under);
        see("heel.friction", push);
      }
    }
    compare(device, 100, 2 * 300.0 / steps * Math.max(1, x / y));
  }

  /** Five unknowns: the tension and the friction at one foot are free. */
  @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
  void aStayedChestOnTwoRoughFeet(
      @ForAll @DoubleRange(min = 0.4, max = 1.5) double wide,
      @ForAll @DoubleRange(min = 0.4, max = 2) double high,
      @ForAll @DoubleRange(min = 0.5, max = 2) double away,
      @ForAll @DoubleRange(min = 0.2, max = 0.9) double mu,
      @ForAll @DoubleRange(min = 0, max = 80) double push) {
    seen.clear();
    Device device =
        Device.named("stayed chest")
            .point("left", 0, 0)
            .point("right", wide, 0)
            .point("top left", 0, high)
            .point("top right", wide, high)
            .point("middle", wide / 2, 0)
            .point("anchor", -away, 0)
            .member("chest", "left", "right", "top right", "top left")
            .connect(new Contact("left", "left", "chest", Ground.NAME, Direction.UP, mu, mu))
            .connect(new Contact("right", "right", "chest", Ground.NAME, Direction.UP, mu, mu))
            .line("stay", End.of("chest", "top left"), End.of(Ground.NAME, "anchor"))
            .force("load", "chest", "middle", Vector.of(0, -100))
            .force("push", "chest", "top right", Vector.of(push, 0))
            .build();
    double length = Math.hypot(away, high);
    double most = (50 * wide + push * high) / high * length / away;
    int steps = 250;
    for (int i = 0; i <= steps; i++) {
      double pull = most * i / steps;
      // about the left foot: the stay pulls to the left at the top
      double right = (50 * wide + push * high - high * pull * away / length) / wide;
      double left = 100 + pull * high / length - right;
      for (int k = -steps; k <= steps && left >= 0 && right >= 0; k++) {
        double leftFriction = mu * left * k / steps;
        double rightFriction = pull * away / length - push - leftFriction;
        if (Math.abs(rightFriction) <= mu * right) {
          see("stay.tension", pull);
          see("left.normal", left);
          see("right.normal", right);
          see("left.friction", leftFriction);
          see("right.friction", rightFriction);
        }
      }
    }
    double step = 3 * most / steps * Math.max(1, high / wide) + 2 * mu * (100 + most) / steps;
    compare(device, 100, step);
  }
}
