package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What parts give, and which of them are at their limit, from the conditions up. */
class WhatPartsGiveTest {

  private static States states(Device device, Map<String, GroundCap> ground) {
    ForceSpace space = ForceSpace.of(device, Pose.DRAWN);
    PartBounds parts =
        PartBounds.of(device, space.assembly(), LoadCase.ALL_LOADS, FrictionLevel.STATED, ground);
    Travel loads = Travel.fixed(space.loads(LoadCase.ALL_LOADS, name -> true));
    return States.of(space, parts, loads, space.scale(LoadCase.ALL_LOADS));
  }

  /** 10 kN on a base of 0.4 m by 1 m: 25 kPa, and no less, bear it. */
  @Test
  void groundThatBearsNothingLetsNothingStandOnIt() {
    for (double pressure : new double[] {0, 24_999, 25_001}) {
      Device post =
          Device.named("post")
              .point("base", 0, 0)
              .member("post", "base")
              .connect(
                  new ContactBase("base", "base", "post", "ground", Direction.UP, 0.4, 0.5, 0.4))
              .force("down", "post", "base", Vector.of(0, -10_000))
              .build();
      States states = states(post, Map.of("base", new GroundCap(1, pressure, 0)));

      assertThat(states.greatest(Goal.none(states.columns())).kind())
          .isEqualTo(pressure > 25_000 ? Extreme.Kind.FOUND : Extreme.Kind.NONE);
    }
  }

  /**
   * 10 N between two walls of μ = 0.5 are held by two pushes of 10 N at the least, and then both
   * walls bear all the friction they can. The two friction forces add up to 10 N in any state.
   */
  @Test
  void whereTheSumOfAllForcesIsLeastBothWallsAreAboutToSlip() {
    Device book =
        Device.named("book")
            .point("left", 0, 0)
            .point("right", 0.1, 0)
            .point("middle", 0.05, 0)
            .member("book", "left", "middle", "right")
            .connect(new Contact("left", "left", "book", "ground", Direction.RIGHT, 0.5, 0.5))
            .connect(new Contact("right", "right", "book", "ground", Direction.LEFT, 0.5, 0.5))
            .force("own", "book", "middle", Vector.of(0, -10))
            .build();
    States states = states(book, Map.of());
    Extreme any = states.greatest(Goal.none(4));
    double[] least = new double[4];
    for (int column = 0; column < 4; column += 2) {
      least[column] = -1;
      least[column + 1] = -Math.signum(any.forces[column + 1]);
    }
    Goal goal = Goal.forces(least);
    Extreme extreme = states.greatest(goal);

    assertThat(extreme.value()).isCloseTo(-10 - 10 - 10, within(1e-9));
    List<Bound> atLimit = AtLimit.of(states, goal, extreme);
    assertThat(atLimit).filteredOn(bound -> bound.slidesAt(0)).hasSize(1);
    assertThat(atLimit).filteredOn(bound -> bound.slidesAt(1)).hasSize(1);
    assertThat(AtLimit.of(states, Goal.none(4), any)).isEmpty();
  }
}
