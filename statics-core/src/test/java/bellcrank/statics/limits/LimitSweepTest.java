package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Limits pose after pose. */
class LimitSweepTest {

  private static Pose leaning(double turn) {
    return Pose.DRAWN.with("ladder", Frame.turnAbout(Point.ORIGIN, turn));
  }

  @Test
  void aPickerClimbsAsFarAsNewLimitsSayInEachPose() {
    Limits limits = Limits.of(Yard.ladder(0.35, 0));
    Variation climb = Variation.place("picker", "foot", "top");
    LimitSweep sweep = limits.sweep(climb);

    assertThat(sweep.greatest()).isCloseTo(2.3125, within(1e-9));
    for (double turn : new double[] {0.1, -0.1, 0.3, 0}) {
      sweep.moveTo(leaning(turn));
      double expected = limits.at(leaning(turn)).greatest(climb).orElseThrow();
      assertThat(sweep.greatest()).isCloseTo(expected, within(1e-12 * Math.max(1, expected)));
    }
  }

  @Test
  void whatHoldsHoweverLargeIsInfinite() {
    LimitSweep sweep = Limits.of(Yard.ladder(0.35, 0)).sweep(Variation.of("picker"));

    assertThat(sweep.isTold()).isTrue();
    assertThat(sweep.greatest()).isEqualTo(Double.POSITIVE_INFINITY);
  }

  /** On its edge a chest has other free forces, or none; back as drawn all is as before. */
  @Test
  void aPoseInBetweenLeavesNoTrace() {
    Limits limits = Limits.of(Yard.pushedChest(0.4, 50));
    Variation push = Variation.of("push");
    LimitSweep sweep = limits.sweep(push);
    double drawn = sweep.greatest();
    assertThat(drawn).isCloseTo(limits.greatest(push).orElseThrow(), within(1e-12));

    Pose onEdge = Pose.DRAWN.with("chest", Frame.turnAbout(Point.ORIGIN, Math.PI / 2));
    sweep.moveTo(onEdge);
    assertThat(sweep.isTold()).isEqualTo(limits.at(onEdge).greatest(push).isPresent());

    sweep.moveTo(Pose.DRAWN);
    assertThat(sweep.greatest()).isCloseTo(drawn, within(1e-12 * drawn));
  }

  @Test
  void withoutAGreatestValueAskingForItIsRefused() {
    Device hanging =
        Device.named("crate under a beam")
            .point("left", -1, 0)
            .point("right", 1, 0)
            .member("crate", "left", "right")
            .connect(new Contact("one", "left", "crate", "ground", Direction.DOWN, 0.5, 0.4))
            .connect(new Contact("two", "right", "crate", "ground", Direction.DOWN, 0.5, 0.4))
            .weight("own", "crate", "left", 10)
            .force("push", "crate", "left", Vector.of(5, 0))
            .build();
    LimitSweep sweep = Limits.of(hanging).sweep(Variation.of("push"));

    assertThat(sweep.isTold()).isFalse();
    assertThatThrownBy(sweep::greatest)
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("crate under a beam")
        .hasMessageContaining("isTold()");
  }

  /** Dry pins want a search over branches: the same answers, the long way. */
  @Test
  void aDryPinIsAskedTheLongWay() {
    Device lever = Yard.dryLever(0.2);
    Limits limits = Limits.of(lever);
    Variation load = Variation.of("load");
    LimitSweep sweep = limits.sweep(load);

    for (double turn : new double[] {0, 0.2, -0.3}) {
      Pose pose = Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, turn));
      sweep.moveTo(pose);
      OptionalDouble expected = limits.at(pose).greatest(load);
      assertThat(sweep.isTold()).isEqualTo(expected.isPresent());
      if (expected.isPresent()) {
        assertThat(sweep.greatest()).isEqualTo(expected.getAsDouble());
      }
    }
  }

  @Test
  void whatTheDeviceDoesNotHaveIsRefusedAtOnce() {
    Limits limits = Limits.of(Yard.ladder(0.35, 0));

    assertThatThrownBy(() -> limits.sweep(Variation.of("cart")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("cart");
  }
}
