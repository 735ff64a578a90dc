package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The greatest number alone, where conditions are not linear or the ground gives way by degrees.
 */
class LooseAndSoftTest {

  /** A pin of 50 mm with μ = 0.75, so sin φ = 0.6: the friction circle is 30 mm. */
  private static final double CIRCLE = 0.03;

  private static DeviceBuilder lever() {
    return Yard.named("lever")
        .point("hinge", 0, 0)
        .point("short", -1, 0)
        .point("long", 2, 0)
        .member("lever", "short", "hinge", "long")
        .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), 0.05, 0.75))
        .load(new Force("stone", "lever", "short", Vector.of(0, -1000)))
        .load(new Force("hand", "lever", "long", Vector.of(0, -100)));
  }

  /** 2·P − 1000 = f·(1000 + P) where the stone is about to rise. */
  @Test
  void theGreatestHandOnALeverWithAFrictionCircle() {
    Limits limits = Limits.of(lever().build());
    double most = (1000 + 1000 * CIRCLE) / (2 - CIRCLE) / 100;

    assertThat(limits.greatest(Variation.of("hand")).orElseThrow()).isCloseTo(most, within(1e-8));
    LimitSweep sweep = limits.sweep(Variation.of("hand"));
    assertThat(sweep.greatest()).isCloseTo(most, within(1e-8));
    // turned by 60 degrees all arms are half as long, but for the circle
    sweep.moveTo(Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, Math.PI / 3)));
    assertThat(sweep.greatest())
        .isCloseTo((500 + 1000 * CIRCLE) / (1 - CIRCLE) / 100, within(1e-7));
  }

  /**
   * A stone that friction in the hinge has to hold needs pressing there, and ever so much may be.
   */
  @Test
  void whatPressesAHingeMayGrowWithoutEnd() {
    Device pressed =
        Yard.named("pressed lever")
            .point("hinge", 0, 0)
            .point("short", -1, 0)
            .member("lever", "short", "hinge")
            .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), 0.05, 0.75))
            .load(new Force("stone", "lever", "short", Vector.of(0, -30)))
            .load(new Force("press", "lever", "hinge", Vector.of(0, -100)))
            .build();
    Limits limits = Limits.of(pressed);

    assertThat(limits.greatest(Variation.of("press"))).hasValue(Double.POSITIVE_INFINITY);
    assertThat(limits.sweep(Variation.of("press")).greatest()).isInfinite();
    // 30·1 = 0.03·(30 + 100·n)
    assertThat(limits.greatest(Variation.of("stone")).orElseThrow())
        .isCloseTo(100 * CIRCLE / (1 - CIRCLE) / 30, within(1e-8));
  }

  /** A rope below a weight holds it at no load of a lever elsewhere. */
  @Test
  void whatARopeWouldHaveToPushIsHeldByNoHand() {
    Device device =
        lever()
            .point("sack", 5, 1)
            .point("floor", 5, 0)
            .joint("sack")
            .connect(new Line("rope", End.of("sack", "sack"), End.of("ground", "floor")))
            .load(new Force("own", "sack", "sack", Vector.of(0, -50)))
            .build();

    assertThat(Limits.of(device).greatest(Variation.of("hand"))).isEmpty();
    assertThat(Limits.of(device).sweep(Variation.of("hand")).isTold()).isFalse();
  }

  /**
   * Clay sticks with a·L·(B − 2e) besides 0.1 of 900 N; a push at a height of 0.5 m moves the force
   * off the middle by e = 0.5·H/900. With a = 500 Pa on 0.6 m by 1 m: H = (90 + 300)/(1 + 500/900).
   */
  @Test
  void aChestOnClaySlidesWhereItsForceLeavesTheClayTooLittleWidth() {
    Device chest =
        Yard.chest(0.1)
            .point("low", 0, 0.5)
            .member("handle", "low")
            .clamp("nails", "low", "handle", "chest")
            .load(new Force("push", "handle", "low", Vector.of(100, 0)))
            .build();
    Foundation clay = Foundation.of("floor", 1).withAdhesion(500);
    Limits limits = Limits.of(chest, LoadCase.ALL_LOADS, Pose.DRAWN, List.of(clay));
    double most = 390 / (1 + 500.0 / 900) / 100;

    assertThat(limits.greatest(Variation.of("push")).orElseThrow()).isCloseTo(most, within(1e-7));
    assertThat(limits.sweep(Variation.of("push")).greatest()).isCloseTo(most, within(1e-7));
  }

  /** Rougher posts hold no less: e^(μβ) over eight turns and a half is 10⁸ and more already. */
  @Test
  void aRougherPostHoldsAtLeastAsMuch() {
    Limits capstan = Limits.of(Yard.capstan(0.35, 8));
    double stated = 100 * Math.exp(0.35 * 17 * Math.PI);

    assertThat(pull(capstan)).isCloseTo(stated, within(1e-6 * stated));
    assertThat(pull(capstan.withFriction(1.2))).isGreaterThan(0.999_999 * stated);
    assertThat(pull(Limits.of(Yard.capstan(0.1, 1)).withFriction(2)))
        .isCloseTo(100 * Math.exp(0.2 * 3 * Math.PI), within(1e-6));
  }

  private static double pull(Limits limits) {
    return limits.range("pull").orElseThrow().greatest().orElseThrow();
  }
}
