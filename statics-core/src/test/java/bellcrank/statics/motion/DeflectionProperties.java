package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Deflections of any shape against devices and against small differences. */
class DeflectionProperties {

  /** The hook as a joint on two lines, or as a sheave that a guide keeps from running along. */
  @Property(tries = 60)
  void asTheBalanceOfADeviceTells(
      @ForAll @DoubleRange(min = 1, max = 500) double force,
      @ForAll @DoubleRange(min = 0.5, max = 9.5) double at,
      @ForAll @DoubleRange(min = 0.05, max = 3) double deflection) {
    Deflection measured = new Deflection(force, 10, at, deflection);
    Balance gripped =
        Balance.of(
            Device.named("stay with a hook")
                .point("left", 0, 0)
                .point("right", 10, 0)
                .point("hook", at, -deflection)
                .joint("hook")
                .line("first", End.of("hook", "hook"), End.of("ground", "left"))
                .line("second", End.of("hook", "hook"), End.of("ground", "right"))
                .force("pull", "hook", "hook", Vector.of(0, -force))
                .build());
    Deflection.PartTensions tensions = measured.grippedTensions();
    assertThat(gripped.number("first.tension").orElseThrow())
        .isCloseTo(tensions.first(), within(1e-9 * tensions.first()));
    assertThat(gripped.number("second.tension").orElseThrow())
        .isCloseTo(tensions.second(), within(1e-9 * tensions.second()));
    Balance running =
        Balance.of(
            Device.named("stay with a running hook")
                .point("left", 0, 0)
                .point("right", 10, 0)
                .point("hook", at, -deflection)
                .joint("hook")
                .connect(
                    new Reeving(
                        "stay",
                        List.of(
                            Stop.end("ground", "left"),
                            Stop.sheave("hook", "hook", 0, Turn.COUNTER_CLOCKWISE),
                            Stop.end("ground", "right")),
                        1,
                        Reeving.Hauling.IDEAL))
                .connect(new Roller("guide", "hook", "hook", "ground", Direction.RIGHT, Sides.TWO))
                .force("pull", "hook", "hook", Vector.of(0, -force))
                .build());
    assertThat(running.number("stay.tension").orElseThrow())
        .isCloseTo(measured.tension(), within(1e-9 * measured.tension()));
  }

  @Property(tries = 200)
  void whatEachErrorAddsIsTheSlope(
      @ForAll @DoubleRange(min = 10, max = 500) double force,
      @ForAll @DoubleRange(min = 1, max = 9) double at,
      @ForAll @DoubleRange(min = 0.1, max = 3) double deflection) {
    Deflection measured = new Deflection(force, 10, at, deflection);
    Deflection.Estimate one = measured.estimate(new Deflection.Errors(2e-3, 3e-3, 4e-3, 5e-3));
    double h = 1e-6;
    double byForce = slope(force + h, 10, at, deflection, force - h, 10, at, deflection);
    double bySpan = slope(force, 10 + h, at, deflection, force, 10 - h, at, deflection);
    double byPlace = slope(force, 10, at + h, deflection, force, 10, at - h, deflection);
    double byDeflection = slope(force, 10, at, deflection + h, force, 10, at, deflection - h);
    double room = 1e-6 * measured.tension();
    assertThat(one.tension()).isEqualTo(measured.tension());
    assertThat(one.fromForce()).isCloseTo(2e-3 * Math.abs(byForce), within(room));
    assertThat(one.fromSpan()).isCloseTo(3e-3 * Math.abs(bySpan), within(room));
    assertThat(one.fromPlace()).isCloseTo(4e-3 * Math.abs(byPlace), within(room));
    assertThat(one.fromDeflection()).isCloseTo(5e-3 * Math.abs(byDeflection), within(room));
  }

  private static double slope(
      double f1, double l1, double a1, double d1, double f2, double l2, double a2, double d2) {
    return (new Deflection(f1, l1, a1, d1).tension() - new Deflection(f2, l2, a2, d2).tension())
        / 2e-6;
  }
}
