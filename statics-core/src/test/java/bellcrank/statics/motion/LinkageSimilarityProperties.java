package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Rebuilt;
import bellcrank.statics.equilibrium.Similarity;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The same linkage seen in a mirror, turned, enlarged or listed in another order goes the same. */
class LinkageSimilarityProperties {

  @Provide
  Arbitrary<DrivenLinkage> linkages() {
    return RandomLinkages.all();
  }

  @Provide
  Arbitrary<Similarity> similarities() {
    Arbitrary<Double> share = Arbitraries.doubles().between(-1, 1).ofScale(4);
    return Combinators.combine(Arbitraries.of(true, false), share, share, share, share, share)
        .as(
            (mirror, turn, scale, x, y, force) ->
                new Similarity(
                    mirror,
                    3 * turn,
                    Math.pow(50, scale),
                    Vector.of(5 * x, 5 * y),
                    Math.pow(20, force)));
  }

  private static Course course(Travel travel) {
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  private static Course drawn(DrivenLinkage linkage) {
    // a loop drawn flat is a dead centre or a change point, or so near one that rounding decides
    for (ToDoubleFunction<Pose> branch : linkage.branches()) {
      Assume.that(Math.abs(branch.applyAsDouble(Pose.DRAWN)) > 0.02);
    }
    Course course = course(linkage.travel());
    Assume.that(course.greatest().drive() - course.least().drive() > 0.1);
    return course;
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void aSimilarLinkageGoesAlike(
      @ForAll("linkages") DrivenLinkage linkage, @ForAll("similarities") Similarity similarity) {
    Course course = drawn(linkage);
    Drive drive = linkage.drive();
    double factor = similarity.scale();
    double force = similarity.force();
    if (drive instanceof Drive.Turn) {
      factor = similarity.sense();
      force = similarity.couple();
    } else if (drive instanceof Drive.Slide slide) {
      drive = Drive.slide(slide.body(), slide.point(), similarity.of(slide.along()));
    }
    Course other =
        course(
            Travel.of(
                similarity.of(linkage.device()),
                drive,
                Math.min(factor * linkage.least(), factor * linkage.greatest()),
                Math.max(factor * linkage.least(), factor * linkage.greatest())));
    alike(linkage, course, other, factor, force, similarity);
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void theOrderOfPartsDoesNotMatter(@ForAll("linkages") DrivenLinkage linkage, @ForAll long order) {
    Course course = drawn(linkage);
    Device shuffled = Rebuilt.shuffled(linkage.device(), new Random(order));
    Course other =
        course(Travel.of(shuffled, linkage.drive(), linkage.least(), linkage.greatest()));
    alike(linkage, course, other, 1, 1, Similarity.NONE);
  }

  private static void alike(
      DrivenLinkage linkage,
      Course course,
      Course other,
      double factor,
      double force,
      Similarity similarity) {
    double range = course.greatest().drive() - course.least().drive();
    same(course.greatest(), factor > 0 ? other.greatest() : other.least(), factor, range);
    same(course.least(), factor > 0 ? other.least() : other.greatest(), factor, range);
    assertThat(other.changePoints()).hasSameSizeAs(course.changePoints());
    double close = 1e-10 * similarity.scale() * course.device().size();
    for (double share : new double[] {0.05, 0.3, 0.55, 0.8, 0.95}) {
      double at = course.least().drive() + share * range;
      for (Member member : course.device().members()) {
        for (String point : List.copyOf(course.device().points().keySet())) {
          Point here = similarity.of(course.place(at, member.name(), point));
          Point there = other.place(at * factor, member.name(), point);
          assertThat(there.distance(here)).isLessThan(close);
        }
      }
    }
    List<Curve.Sample> curve = course.curve(linkage.effort()).samples();
    List<Curve.Sample> alike = other.curve(linkage.effort()).samples();
    // at a dead centre the effort is past all bounds, so the samples there are left out
    Assume.that(curve.size() == 101 && alike.size() == 101);
    double largest = 1;
    for (int k = 5; k <= 95; k++) {
      largest = Math.max(largest, Math.abs(curve.get(k).value()));
    }
    for (int k = 5; k <= 95; k++) {
      double value = alike.get(factor > 0 ? k : 100 - k).value() / force;
      assertThat(value).isCloseTo(curve.get(k).value(), within(1e-8 * largest));
    }
  }

  private static void same(CourseEnd one, CourseEnd other, double factor, double range) {
    assertThat(other.why()).isEqualTo(one.why());
    assertThat(other.part()).isEqualTo(one.part());
    assertThat(other.drive() / factor).isCloseTo(one.drive(), within(1e-8 * range));
  }
}
