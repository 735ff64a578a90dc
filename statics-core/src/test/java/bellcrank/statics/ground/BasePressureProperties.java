package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.ground.BasePressure.Shape;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class BasePressureProperties {

  /** The pressure is linear over the pressed width; its force and couple are those put in. */
  @Property
  void thePressureBalancesForceAndCouple(
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 1e6) double normal,
      @ForAll @Scale(6) @DoubleRange(min = -0.4999, max = 0.4999) double share,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 10) double width,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 10) double length) {
    BasePressure pressure = BasePressure.of(normal, normal * share * width, width, length);
    double left = pressure.left().orElseThrow();
    double right = pressure.right().orElseThrow();
    double pressed = pressure.contactWidth();
    double start = share > 0 ? width / 2 - pressed : -width / 2;

    // a rectangle of the left pressure and a triangle that makes it up to the right one
    double even = left * pressed * length;
    double rising = (right - left) / 2 * pressed * length;
    double couple = even * (start + pressed / 2) + rising * (start + pressed * 2 / 3);
    assertThat(even + rising).isCloseTo(normal, within(1e-10 * normal));
    assertThat(couple).isCloseTo(pressure.couple(), within(1e-10 * normal * width));
  }

  @Property
  void trapezoidAndTriangleMeetAtTheEdgeOfTheKern(
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 1e6) double normal,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 10) double width,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 10) double length) {
    double couple = normal * width / 6;
    BasePressure inside = BasePressure.of(normal, couple * (1 - 1e-9), width, length);
    BasePressure outside = BasePressure.of(normal, couple * (1 + 1e-9), width, length);
    assertThat(inside.shape()).isEqualTo(Shape.TRAPEZOID);
    assertThat(outside.shape()).isEqualTo(Shape.TRIANGLE);
    double twice = 2 * normal / (width * length);
    assertThat(inside.largest().orElseThrow()).isCloseTo(twice, within(1e-8 * twice));
    assertThat(outside.largest().orElseThrow()).isCloseTo(twice, within(1e-8 * twice));
    assertThat(inside.smallest().orElseThrow()).isCloseTo(0, within(1e-8 * twice));
    assertThat(outside.contactWidth()).isCloseTo(width, within(1e-8 * width));
  }

  @Property
  void theMirroredCoupleSwapsTheEdges(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1e6) double normal,
      @ForAll @Scale(6) @DoubleRange(min = -1e5, max = 1e5) double couple) {
    BasePressure pressure = BasePressure.of(normal, couple, 0.5, 1.5);
    BasePressure mirrored = BasePressure.of(normal, -couple, 0.5, 1.5);
    assertThat(mirrored.left()).isEqualTo(pressure.right());
    assertThat(mirrored.right()).isEqualTo(pressure.left());
    assertThat(mirrored.shape()).isEqualTo(pressure.shape());
    assertThat(mirrored.effectiveWidth()).isEqualTo(pressure.effectiveWidth());
  }

  /** A power of 2 changes the unit without rounding. */
  @Property
  void theUnitOfLengthDoesNotMatter(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1e3) double normal,
      @ForAll @Scale(6) @DoubleRange(min = -1e3, max = 1e3) double couple) {
    BasePressure pressure = BasePressure.of(normal, couple, 0.7, 1.1);
    BasePressure other = BasePressure.of(normal, couple * 16, 0.7 * 16, 1.1 * 16);
    assertThat(other.shape()).isEqualTo(pressure.shape());
    assertThat(other.contactWidth()).isEqualTo(16 * pressure.contactWidth());
    assertThat(other.largest().orElse(-256) * 256).isEqualTo(pressure.largest().orElse(-256 * 256));
  }

  /** The even pressure on the effective area never passes the edge pressure, nor N/(BL) it. */
  @Property
  void theEffectivePressureLiesBetweenMeanAndLargest(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1e6) double normal,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.4999) double share) {
    BasePressure pressure = BasePressure.of(normal, normal * share, 1, 1);
    double effective = pressure.effectivePressure().orElseThrow();
    assertThat(effective).isGreaterThanOrEqualTo(normal * (1 - 1e-12));
    assertThat(effective).isLessThanOrEqualTo(pressure.largest().orElseThrow() * (1 + 1e-12));
  }
}
