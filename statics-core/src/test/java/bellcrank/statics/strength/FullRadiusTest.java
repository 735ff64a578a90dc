package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Radii and holes that are just as large as they may be, in millimetres that no double keeps. */
class FullRadiusTest {

  /** What a rounded corner leaves out of its square, for a radius of one. */
  private static final double CORNER = 1 - Math.PI / 4;

  private static double mm(int count) {
    return count / 1000.0;
  }

  private static void area(Profile profile, double expected) {
    assertThat(profile.section().area())
        .as(profile.name())
        .isCloseTo(expected, within(1e-11 * expected));
  }

  private static double area(Profile profile) {
    return profile.section().area();
  }

  @Test
  void aSquareTubeWithFullRadiiIsAPipe() {
    Section tube = Profiles.tube(0.06, 0.06, 0.005, 0.03, 0.025).section();
    Section pipe = Profiles.pipe(0.06, 0.005).section();

    assertThat(tube.area()).isCloseTo(pipe.area(), within(1e-12 * pipe.area()));
    assertThat(tube.inertia()).isCloseTo(pipe.inertia(), within(1e-12 * pipe.inertia()));
    assertThat(tube.sideInertia()).isCloseTo(pipe.sideInertia(), within(1e-12 * pipe.inertia()));
    assertThat(tube.firstMoment()).isCloseTo(pipe.firstMoment(), within(1e-12));
    assertThat(tube.webWidth()).isCloseTo(pipe.webWidth(), within(1e-9));
  }

  @Test
  void anyTubeMayBeRoundedInFull() {
    for (int half = 10; half <= 60; half++) {
      for (int wall = 1; wall < half; wall++) {
        Profile tube =
            Profiles.tube(mm(2 * half), mm(2 * half + 20), mm(wall), mm(half), mm(half - wall));
        double straight = 2 * mm(wall) * mm(20);
        area(tube, Math.PI * mm(half) * mm(half) - pi(half - wall) + straight);
      }
    }
  }

  private static double pi(int radius) {
    return Math.PI * mm(radius) * mm(radius);
  }

  @Test
  void aWallMayBeAQuarterOfTheWidth() {
    // 3 · 0.1 is a little more than 0.3
    area(
        Profiles.formedTube(1.2, 1.4, 3 * 0.1), 1.2 * 1.4 - 0.6 * 0.8 - 4 * CORNER * (0.36 - 0.09));
  }

  @Test
  void rootsMayTakeAllThatIsFreeBesideThem() {
    for (int thick = 1; thick <= 12; thick++) {
      for (int root = 1; root <= 40; root++) {
        double t = mm(thick);
        double r = mm(root);
        double filled = CORNER * r * r;
        double leg = mm(thick + root);
        area(Profiles.angle(leg, leg, t, r), area(Profiles.angle(leg, leg, t)) + filled);
        double deep = mm(2 * (thick + root));
        area(
            Profiles.channel(deep, leg, t, t, r),
            area(Profiles.channel(deep, leg, t, t, 0)) + 2 * filled);
        double wide = mm(thick + 2 * root);
        area(
            Profiles.beam(deep, wide, t, t, r),
            area(Profiles.beam(deep, wide, t, t, 0)) + 4 * filled);
        area(Profiles.tee(leg, wide, t, t, r), area(Profiles.tee(leg, wide, t, t, 0)) + 2 * filled);
      }
    }
  }

  @Test
  void aHoleMayReachFromAnyHeightToTheTopAndTouchAnEdge() {
    List<Supplier<Profile>> made = new ArrayList<>();
    for (int from = 0; from < 60; from++) {
      double start = mm(from);
      made.add(
          () -> Profiles.rectangle(0.03, 0.06).withHoleUpright(0.0153, 0.006, start, 0.1 * 3 / 5));
    }
    for (int hole = 1; hole < 30; hole++) {
      double size = mm(hole);
      double high = mm(60) - mm(hole) / 2;
      made.add(() -> Profiles.rectangle(0.03, 0.06).withHoleAcross(high, size));
      made.add(() -> Profiles.rectangle(0.06, 0.03).withHoleUpright(high, size, 0, 0.03));
    }
    assertThat(made).allSatisfy(one -> assertThat(one.get().section().area()).isPositive());
  }

  @Test
  void whatIsMoreThanRoundingIsStillTooLarge() {
    assertThatThrownBy(() -> Profiles.tube(0.06, 0.06, 0.005, 0.03, 0.025 * (1 + 2e-9)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("inner radius is 0.025");
    assertThatThrownBy(() -> Profiles.formedTube(0.06, 0.06, 0.015 * (1 + 2e-9)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("wall is 0.015");
    assertThatThrownBy(() -> Profiles.rectangle(0.03, 0.06).withHoleAcross(0.0550001, 0.01))
        .hasMessageContaining("hole height is 0.0550001");
  }
}
