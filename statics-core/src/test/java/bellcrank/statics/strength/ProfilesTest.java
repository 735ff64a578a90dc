package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.geometry.Point;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Sections of usual forms against the formulas of any handbook, worked by hand. */
class ProfilesTest {

  private static Offset<Double> about(double value) {
    return within(1e-12 * Math.abs(value));
  }

  private static void close(double value, double expected) {
    assertThat(value).isCloseTo(expected, about(expected));
  }

  @Test
  void aPlank() {
    Section plank = Profiles.rectangle(0.06, 0.2).section();
    assertThat(plank.name()).isEqualTo("rectangle 60 × 200 mm");
    close(plank.area(), 0.012);
    close(plank.top(), 0.1);
    close(plank.bottom(), 0.1);
    // b·h³/12 and b·h²/8
    close(plank.inertia(), 0.06 * 0.008 / 12);
    close(plank.firstMoment(), 0.06 * 0.04 / 8);
    close(plank.webWidth(), 0.06);
    close(plank.sideInertia(), 0.2 * 0.06 * 0.06 * 0.06 / 12);
    close(plank.sideReach(), 0.03);
    close(plank.thickest(), 0.06);
    assertThat(plank.symmetric()).isTrue();
    // 500 kg/m³
    close(plank.massPerLength(500), 6);
  }

  @Test
  void aRoundBar() {
    Section bar = Profiles.round(0.02).section();
    double r = 0.01;
    close(bar.area(), Math.PI * r * r);
    close(bar.inertia(), Math.PI * Math.pow(r, 4) / 4);
    close(bar.sideInertia(), Math.PI * Math.pow(r, 4) / 4);
    // Q = 2/3·r³, so the shear stress is 4/3·V/A
    close(bar.firstMoment(), 2 * Math.pow(r, 3) / 3);
    close(bar.webWidth(), 0.02);
    close(bar.thickest(), 0.02);
    close(bar.gyration(), r / 2);
  }

  @Test
  void aPipe() {
    Section pipe = Profiles.pipe(0.06, 0.005).section();
    close(pipe.area(), Math.PI * (0.03 * 0.03 - 0.025 * 0.025));
    close(pipe.inertia(), Math.PI / 4 * (Math.pow(0.03, 4) - Math.pow(0.025, 4)));
    close(pipe.firstMoment(), 2.0 / 3 * (Math.pow(0.03, 3) - Math.pow(0.025, 3)));
    assertThat(pipe.webWidth()).isCloseTo(0.01, within(1e-12));
    close(pipe.thickest(), 0.005);
  }

  @Test
  void aTubeOfPlates() {
    Section tube = Profiles.tube(0.04, 0.06, 0.003).section();
    assertThat(tube.name()).isEqualTo("tube 40 × 60 × 3 mm");
    close(tube.area(), 0.04 * 0.06 - 0.034 * 0.054);
    close(tube.inertia(), (0.04 * Math.pow(0.06, 3) - 0.034 * Math.pow(0.054, 3)) / 12);
    close(tube.sideInertia(), (0.06 * Math.pow(0.04, 3) - 0.054 * Math.pow(0.034, 3)) / 12);
    close(tube.firstMoment(), 0.04 * 0.03 * 0.015 - 0.034 * 0.027 * 0.0135);
    close(tube.webWidth(), 0.006);
    close(tube.sideReach(), 0.02);
  }

  @Test
  void roundCornersTakeAQuarterOfASquareWithoutItsDisc() {
    double t = 0.003;
    Section formed = Profiles.formedTube(0.04, 0.06, t).section();
    double sharp = 0.04 * 0.06 - 0.034 * 0.054;
    // four corners lose (4 − π)·(2t)² outside and win (4 − π)·t² inside
    close(formed.area(), sharp - (4 - Math.PI) * (4 * t * t - t * t));
    assertThat(formed.inertia()).isLessThan(Profiles.tube(0.04, 0.06, t).section().inertia());
  }

  @Test
  void anAngleBucklesAboutItsWeakAxis() {
    // legs 50 mm, 5 mm thick: A = 50·5 + 45·5 = 475 mm²
    Section angle = Profiles.angle(0.05, 0.05, 0.005).section();
    close(angle.area(), 475e-6);
    // centroid (250·2.5 + 225·27.5)/475 = 14.342 mm from the back
    double c = (250 * 2.5 + 225 * 27.5) / 475;
    assertThat(angle.bottom()).isCloseTo(c * 1e-3, within(1e-12));
    assertThat(angle.top()).isCloseTo((50 - c) * 1e-3, within(1e-12));
    double i =
        50 * Math.pow(5, 3) / 12
            + 250 * Math.pow(c - 2.5, 2)
            + 5 * Math.pow(45, 3) / 12
            + 225 * Math.pow(27.5 - c, 2);
    double product = 250 * (25 - c) * (2.5 - c) + 225 * (2.5 - c) * (27.5 - c);
    close(angle.inertia() * 1e12, i);
    close(angle.productOfInertia() * 1e12, product);
    assertThat(angle.symmetric()).isFalse();
    // an equal angle has its axes at 45°: I ± product
    close(angle.leastInertia() * 1e12, i - Math.abs(product));
    close(angle.greatestInertia() * 1e12, i + Math.abs(product));
    close(angle.leastGyration(), Math.sqrt(angle.leastInertia() / angle.area()));
    assertThat(angle.leastGyration()).isLessThan(0.7 * angle.gyration());
  }

  @Test
  void aRootRadiusFillsTheCorner() {
    double filled = (1 - Math.PI / 4) * 0.006 * 0.006;
    close(
        Profiles.angle(0.05, 0.06, 0.005, 0.006).section().area(),
        Profiles.angle(0.05, 0.06, 0.005).section().area() + filled);
    close(
        Profiles.channel(0.1, 0.05, 0.006, 0.008, 0.006).section().area(),
        Profiles.channel(0.1, 0.05, 0.006, 0.008, 0).section().area() + 2 * filled);
    close(
        Profiles.beam(0.1, 0.05, 0.006, 0.008, 0.006).section().area(),
        Profiles.beam(0.1, 0.05, 0.006, 0.008, 0).section().area() + 4 * filled);
    close(
        Profiles.tee(0.1, 0.05, 0.006, 0.008, 0.006).section().area(),
        Profiles.tee(0.1, 0.05, 0.006, 0.008, 0).section().area() + 2 * filled);
  }

  @Test
  void aChannelIsAnIWhoseWebHasMovedAside() {
    Section channel = Profiles.channel(0.1, 0.05, 0.006, 0.0085, 0).section();
    Section beam = Profiles.beam(0.1, 0.05, 0.006, 0.0085, 0).section();
    close(channel.area(), beam.area());
    close(channel.inertia(), beam.inertia());
    close(channel.firstMoment(), beam.firstMoment());
    close(channel.webWidth(), 0.006);
    assertThat(channel.symmetric()).isTrue();
    assertThat(channel.sideInertia()).isNotEqualTo(beam.sideInertia());
    close(channel.thickest(), 0.0085);
  }

  @Test
  void aTeeHasItsCentroidNearTheFlange() {
    // stem 10 × 40 mm, flange 50 × 10 mm on top: y = (400·20 + 500·45)/900
    Section tee = Profiles.tee(0.05, 0.05, 0.01, 0.01, 0).section();
    double y = (400 * 20 + 500 * 45) / 900.0;
    close(tee.bottom() * 1e3, y);
    close(tee.top() * 1e3, 50 - y);
    // below the centroid there is only stem: Q = 10·y²/2
    close(tee.firstMoment() * 1e9, 10 * y * y / 2);
    close(tee.webWidth(), 0.01);
    Section hanging = Profiles.tee(0.05, 0.05, 0.01, 0.01, 0).upsideDown().section();
    close(hanging.top(), tee.bottom());
    close(hanging.inertia(), tee.inertia());
    assertThat(hanging.name()).endsWith("upside down");
  }

  @Test
  void aPlankLaidFlat() {
    Section flat = Profiles.rectangle(0.06, 0.2).turned().section();
    Section laid = Profiles.rectangle(0.2, 0.06).section();
    close(flat.inertia(), laid.inertia());
    close(flat.sideInertia(), laid.sideInertia());
    close(flat.firstMoment(), laid.firstMoment());
    close(flat.webWidth(), laid.webWidth());
    assertThat(flat.name()).isEqualTo("rectangle 60 × 200 mm turned");
  }

  @Test
  void aPinHoleAtMidHeight() {
    Section lever = Profiles.rectangle(0.012, 0.08).withHoleAcross(0.04, 0.02).section();
    close(lever.area(), 0.012 * 0.06);
    assertThat(lever.inertia())
        .isCloseTo(0.012 * (Math.pow(0.08, 3) - Math.pow(0.02, 3)) / 12, within(1e-18));
    // no material at the centroid: what is beyond the edge of the hole, 12 × 30 mm at 25 mm
    assertThat(lever.firstMoment()).isCloseTo(0.012 * 0.03 * 0.025, within(1e-15));
    close(lever.webWidth(), 0.012);
    assertThat(lever.name()).isEqualTo("rectangle 12 × 80 mm with hole");
  }

  @Test
  void holesInAFlangeMoveTheCentroid() {
    Profile beam = Profiles.beam(0.1, 0.1, 0.006, 0.01, 0.012);
    Profile one = beam.withHoleUpright(0.02, 0.012, 0, 0.01);
    Section net = one.withHoleUpright(0.08, 0.012, 0, 0.01).section();
    Section gross = beam.section();
    close(net.area(), gross.area() - 2 * 0.012 * 0.01);
    assertThat(net.bottom()).isGreaterThan(gross.bottom());
    assertThat(net.bottom() + net.top()).isCloseTo(0.1, within(1e-12));
    assertThat(net.symmetric()).isTrue();
    assertThat(one.section().symmetric()).isFalse();
  }

  @Test
  void aNotchLowersTheTop() {
    Section rail = Profiles.rectangle(0.05, 0.1).notchedFromAbove(0.03).section();
    Section low = Profiles.rectangle(0.05, 0.07).section();
    close(rail.area(), low.area());
    close(rail.top(), low.top());
    assertThat(rail.inertia()).isCloseTo(low.inertia(), about(low.inertia()));
    Section below = Profiles.rectangle(0.05, 0.1).notchedFromBelow(0.03).section();
    assertThat(below.inertia()).isCloseTo(low.inertia(), about(low.inertia()));
    // a hole at the very edge is a notch as well
    Section open = Profiles.rectangle(0.05, 0.1).withHoleAcross(0.085, 0.03).section();
    assertThat(open.top() + open.bottom()).isCloseTo(0.07, within(1e-12));
  }

  @Test
  void severalJoinedOrNot() {
    Profile plank = Profiles.rectangle(0.02, 0.1);
    Section joined = plank.sideBySide(2, 0.03).section();
    Section loose = plank.section().times(2);
    close(joined.area(), loose.area());
    close(joined.inertia(), loose.inertia());
    close(joined.webWidth(), loose.webWidth());
    close(joined.firstMoment(), loose.firstMoment());
    close(joined.sideReach(), 0.035);
    close(loose.sideReach(), 0.01);
    // 2·(b³h/12 + bh·25²)
    close(joined.sideInertia() * 1e12, 2 * (100 * 8000 / 12.0 + 2000 * 625));
    close(loose.sideInertia(), 2 * plank.section().sideInertia());
    assertThat(loose.name()).isEqualTo("2 × rectangle 20 × 100 mm");
    assertThat(joined.name()).isEqualTo(loose.name());
  }

  @Test
  void twoAnglesBackToBackBendStraight() {
    Profile angle = Profiles.angle(0.05, 0.06, 0.006);
    Section pair = angle.backToBack(0.01).section();
    close(pair.area(), 2 * angle.section().area());
    assertThat(pair.inertia()).isCloseTo(2 * angle.section().inertia(), about(pair.inertia()));
    assertThat(pair.symmetric()).isTrue();
    close(pair.sideReach(), 0.055);
  }

  @Test
  void anyShapeMakesAProfile() {
    // ridge beam of a roof: a square on its corner
    Shape square =
        Shape.polygon(
            List.of(Point.of(0, -0.1), Point.of(0.1, 0), Point.of(0, 0.1), Point.of(-0.1, 0)));
    Section ridge = new Profile("square on edge", square, 0.14).named("ridge").section();
    assertThat(ridge.name()).isEqualTo("ridge");
    // a⁴/12 with a² = 0.02
    close(ridge.inertia(), 0.02 * 0.02 / 12);
    close(ridge.top(), 0.1);
  }

  @Test
  void cornersMayBeGivenEitherWayRound() {
    List<Point> corners = List.of(Point.of(0, 0), Point.of(0, 0.1), Point.of(0.1, 0));
    close(Shape.polygon(corners).moments().area(), 0.005);
  }
}
