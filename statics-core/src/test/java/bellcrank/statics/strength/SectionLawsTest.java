package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Laws of cross-sections on random ones. */
class SectionLawsTest {

  private static void close(double value, double expected, double scale) {
    assertThat(value).isCloseTo(expected, within(1e-9 * scale));
  }

  private static void same(AreaMoments one, AreaMoments other, double size) {
    double area = size * size;
    close(one.area(), other.area(), area);
    close(one.firstX(), other.firstX(), area * size);
    close(one.firstY(), other.firstY(), area * size);
    close(one.secondX(), other.secondX(), area * area);
    close(one.secondY(), other.secondY(), area * area);
    close(one.product(), other.product(), area * area);
  }

  @Provide
  Arbitrary<Profile> profiles() {
    Arbitrary<Double> size = Arbitraries.doubles().between(0.05, 0.3);
    Arbitrary<Double> share = Arbitraries.doubles().between(0.02, 0.2);
    return Combinators.combine(Arbitraries.integers().between(0, 6), size, size, share, share)
        .as(SectionLawsTest::profile);
  }

  private static Profile profile(int form, double width, double height, double thin, double root) {
    double least = Math.min(width, height);
    double t = thin * least;
    double r = root * least;
    return switch (form) {
      case 0 -> Profiles.rectangle(width, height);
      case 1 -> Profiles.pipe(height, t);
      case 2 -> Profiles.formedTube(width, height, t);
      case 3 -> Profiles.angle(width, height, t, r);
      case 4 -> Profiles.channel(height, width, t, 1.2 * t, r);
      case 5 -> Profiles.beam(height, width, t, 1.2 * t, r);
      default -> Profiles.tee(height, width, t, 1.2 * t, r);
    };
  }

  /** Corners at growing angles about the middle bound an area that does not cross itself. */
  @Provide
  Arbitrary<List<Double>> radii() {
    return Arbitraries.doubles().between(0.2, 1).list().ofMinSize(3).ofMaxSize(12);
  }

  private static Shape star(List<Double> radii) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < radii.size(); i++) {
      double angle = 0.3 + 2 * Math.PI * i / radii.size();
      double radius = radii.get(i);
      corners.add(Point.of(0.2 + radius * Math.cos(angle), radius * Math.sin(angle) - 0.1));
    }
    return Shape.polygon(corners);
  }

  /** Cells are counted by a ray that is cast up, which uses none of the formulas. */
  @Property(tries = 20)
  void momentsAgreeWithCountedCells(@ForAll("radii") List<Double> radii) {
    Shape star = star(radii);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < radii.size(); i++) {
      double angle = 0.3 + 2 * Math.PI * i / radii.size();
      corners.add(
          Point.of(0.2 + radii.get(i) * Math.cos(angle), radii.get(i) * Math.sin(angle) - 0.1));
    }
    int cells = 400;
    double side = 3.0 / cells;
    AreaMoments counted = AreaMoments.NONE;
    for (int i = 0; i < cells; i++) {
      for (int j = 0; j < cells; j++) {
        double x = -1.5 + (i + 0.5) * side;
        double y = -1.5 + (j + 0.5) * side;
        if (inside(corners, x, y)) {
          double a = side * side;
          counted = counted.plus(new AreaMoments(a, x * a, y * a, x * x * a, y * y * a, x * y * a));
        }
      }
    }
    AreaMoments exact = star.moments();
    assertThat(counted.area()).isCloseTo(exact.area(), within(0.02));
    assertThat(counted.firstX()).isCloseTo(exact.firstX(), within(0.02));
    assertThat(counted.firstY()).isCloseTo(exact.firstY(), within(0.02));
    assertThat(counted.secondX()).isCloseTo(exact.secondX(), within(0.02));
    assertThat(counted.secondY()).isCloseTo(exact.secondY(), within(0.02));
    assertThat(counted.product()).isCloseTo(exact.product(), within(0.02));
  }

  private static boolean inside(List<Point> corners, double x, double y) {
    boolean inside = false;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      if ((a.x() > x) != (b.x() > x)
          && y < a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** The widths at many levels, by the midpoint rule, are the area; with the level, the rest. */
  @Property(tries = 40)
  void widthsAddUpToTheMoments(@ForAll("profiles") Profile profile) {
    Shape shape = profile.shape();
    Box box = Box.of(shape);
    int strips = 20000;
    double step = box.height() / strips;
    double area = 0;
    double first = 0;
    double second = 0;
    for (int i = 0; i < strips; i++) {
      double y = box.bottom() + (i + 0.5) * step;
      double strip = shape.width(y) * step;
      area += strip;
      first += y * strip;
      second += y * y * strip;
    }
    AreaMoments exact = shape.moments();
    double size = Math.max(box.width(), box.height());
    assertThat(area).isCloseTo(exact.area(), within(1e-4 * size * size));
    assertThat(first).isCloseTo(exact.firstY(), within(1e-4 * Math.pow(size, 3)));
    assertThat(second).isCloseTo(exact.secondY(), within(1e-4 * Math.pow(size, 4)));
  }

  @Property(tries = 100)
  void twoPartsAreTheWhole(
      @ForAll("profiles") Profile profile, @ForAll @DoubleRange(min = -0.2, max = 1.2) double at) {
    Shape shape = profile.shape();
    Box box = Box.of(shape);
    double level = box.bottom() + at * box.height();
    same(shape.above(level).moments().plus(shape.below(level).moments()), shape.moments(), 0.3);
  }

  @Property(tries = 100)
  void movingIsTheParallelAxisTheorem(
      @ForAll("profiles") Profile profile,
      @ForAll @DoubleRange(min = -1, max = 1) double dx,
      @ForAll @DoubleRange(min = -1, max = 1) double dy) {
    Shape moved = profile.shape().moved(dx, dy);
    same(moved.moments(), profile.shape().moments().moved(dx, dy), 1);
    same(moved.moments().aboutCentroid(), profile.shape().moments().aboutCentroid(), 1);
  }

  @Property(tries = 100)
  void turnedTwiceIsItselfUpsideDown(@ForAll("profiles") Profile profile) {
    Section as = profile.section();
    Section turned = profile.turned().section();
    Section twice = profile.turned().turned().section();
    close(turned.inertia(), as.sideInertia(), as.sideInertia());
    close(turned.sideInertia(), as.inertia(), as.inertia());
    close(turned.productOfInertia(), -as.productOfInertia(), as.inertia());
    close(turned.leastInertia(), as.leastInertia(), as.inertia());
    close(twice.top(), as.bottom(), as.bottom());
    close(twice.bottom(), as.top(), as.top());
    close(twice.inertia(), as.inertia(), as.inertia());
    double shear = as.firstMoment() / as.webWidth();
    assertThat(twice.firstMoment() / twice.webWidth()).isCloseTo(shear, within(1e-6 * shear));
    close(twice.productOfInertia(), as.productOfInertia(), as.inertia());
    Section four = profile.turned().turned().turned().turned().section();
    assertThat(four.inertia()).isEqualTo(as.inertia());
    assertThat(four.firstMoment()).isEqualTo(as.firstMoment());
  }

  @Property(tries = 100)
  void theMirrorImageBendsTheOtherWayAskew(@ForAll("profiles") Profile profile) {
    AreaMoments as = profile.shape().moments();
    AreaMoments mirrored = profile.shape().mirrored().moments();
    double size = 0.3;
    same(
        mirrored,
        new AreaMoments(
            as.area(), -as.firstX(), as.firstY(), as.secondX(), as.secondY(), -as.product()),
        size);
  }

  @Property(tries = 100)
  void aHoleReduces(
      @ForAll("profiles") Profile profile,
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double at,
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double share) {
    double height = Box.of(profile.shape()).height();
    Section as = profile.section();
    Section net = profile.withHoleAcross(at * height, share * height).section();
    assertThat(net.area()).isLessThan(as.area());
    assertThat(net.inertia()).isLessThan(as.inertia());
    assertThat(net.sideInertia()).isLessThan(as.sideInertia());
    assertThat(net.top() + net.bottom()).isCloseTo(height, within(1e-9));
  }

  @Property(tries = 100)
  void propertiesGrowWithTheirPowerOfTheSize(
      @ForAll @Size(2) List<@DoubleRange(min = 0.02, max = 0.1) Double> sizes,
      @ForAll @DoubleRange(min = 0.1, max = 9) double k) {
    double h = sizes.get(0);
    double b = sizes.get(1);
    double t = Math.min(h, b) / 9;
    Section one = Profiles.angle(b, h, t, t).section();
    Section scaled = Profiles.angle(k * b, k * h, k * t, k * t).section();
    close(scaled.top(), k * one.top(), k * one.top());
    close(scaled.webWidth(), k * one.webWidth(), k * one.webWidth());
    close(scaled.area(), k * k * one.area(), scaled.area());
    close(scaled.firstMoment(), k * k * k * one.firstMoment(), scaled.firstMoment());
    close(scaled.topModulus(), k * k * k * one.topModulus(), scaled.topModulus());
    close(scaled.inertia(), Math.pow(k, 4) * one.inertia(), scaled.inertia());
    close(scaled.leastInertia(), Math.pow(k, 4) * one.leastInertia(), scaled.inertia());
    close(
        scaled.productOfInertia(),
        Math.pow(k, 4) * one.productOfInertia(),
        Math.abs(scaled.productOfInertia()));
  }

  @Property(tries = 100)
  void noAxisIsWeakerThanTheWeakOne(@ForAll("radii") List<Double> radii) {
    AreaMoments own = star(radii).moments().aboutCentroid();
    Section section = new Profile("star", star(radii), 0.1).section();
    double least = Double.MAX_VALUE;
    double most = 0;
    for (int i = 0; i < 360; i++) {
      double c = Math.cos(Math.PI * i / 360);
      double s = Math.sin(Math.PI * i / 360);
      double about = own.secondY() * c * c + own.secondX() * s * s - 2 * own.product() * c * s;
      least = Math.min(least, about);
      most = Math.max(most, about);
    }
    assertThat(section.leastInertia()).isLessThanOrEqualTo(least + 1e-12);
    assertThat(section.leastInertia()).isCloseTo(least, within(1e-4 * most));
    assertThat(section.greatestInertia()).isGreaterThanOrEqualTo(most - 1e-12);
  }
}
