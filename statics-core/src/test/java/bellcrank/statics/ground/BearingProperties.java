package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class BearingProperties {

  @Provide
  Arbitrary<Bearing> grounds() {
    return Arbitraries.of(Grounds.ALL);
  }

  @Property
  void resistanceFallsAsTheForceMovesOutwards(
      @ForAll("grounds") Bearing ground,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.6) double first,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.6) double second,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 5) double length) {
    double near = Math.min(first, second);
    double far = Math.max(first, second);
    double most = ground.resistance(new BaseLoad(10e3, 1e3, 10e3 * near, 1, length));
    double least = ground.resistance(new BaseLoad(10e3, 1e3, 10e3 * far, 1, length));
    assertThat(least).isBetween(0.0, most * (1 + 1e-12));
  }

  @Property
  void resistanceFallsWithTheTangentialForce(
      @ForAll("grounds") Bearing ground,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30e3) double first,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30e3) double second,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 5) double length) {
    double less = Math.min(first, second);
    double more = Math.max(first, second);
    double most = ground.resistance(new BaseLoad(10e3, less, 500, 1, length));
    double least = ground.resistance(new BaseLoad(10e3, more, 500, 1, length));
    assertThat(least).isBetween(0.0, most * (1 + 1e-12));
  }

  @Property
  void theMirroredLoadFindsTheSameResistance(
      @ForAll("grounds") Bearing ground,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30e3) double normal,
      @ForAll @Scale(6) @DoubleRange(min = -10e3, max = 10e3) double tangential,
      @ForAll @Scale(6) @DoubleRange(min = -10e3, max = 10e3) double couple) {
    BaseLoad load = new BaseLoad(normal, tangential, couple, 0.8, 1.3);
    BaseLoad mirrored = new BaseLoad(normal, -tangential, -couple, 0.8, 1.3);
    assertThat(ground.resistance(mirrored)).isEqualTo(ground.resistance(load));
    assertThat(ground.utilisation(mirrored)).isEqualTo(ground.utilisation(load));
  }

  /** The formulas of the Annex as they are printed, in the case that it draws: B' below L'. */
  @Property
  void drainedGroundFollowsTheAnnexAsPrinted(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.9) double angle,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 50e3) double cohesion,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.3) double offset,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double slope) {
    double normal = 40e3;
    double tangential = slope * normal * Math.tan(angle);
    double across = 1 - 2 * offset;
    double ratio = across / 1.5;
    double area = across * 1.5;
    double tan = Math.tan(angle);
    double nQ = Math.exp(Math.PI * tan) * Math.pow(Math.tan(Math.PI / 4 + angle / 2), 2);
    double nC = (nQ - 1) / tan;
    double nGamma = 2 * (nQ - 1) * tan;
    double m = (2 + ratio) / (1 + ratio);
    double left = 1 - tangential / (normal + area * cohesion / tan);
    double iQ = Math.pow(left, m);
    double iC = iQ - (1 - iQ) / (nC * tan);
    double sQ = 1 + ratio * Math.sin(angle);
    double sC = (sQ * nQ - 1) / (nQ - 1);
    double expected =
        area
            * (cohesion * nC * sC * Math.max(0, iC)
                + 7e3 * nQ * sQ * iQ
                + 0.5 * 17e3 * across * nGamma * (1 - 0.3 * ratio) * Math.pow(left, m + 1));

    Drained ground = new Drained(angle, cohesion, 17e3, 7e3);
    double found = ground.resistance(new BaseLoad(normal, tangential, normal * offset, 1, 1.5));
    assertThat(found).isCloseTo(expected, within(1e-9 * expected));
  }

  /** Lengths times 2, unit weights halved, forces times 4: the same pressures, so times 4. */
  @Property
  void theUnitOfLengthDoesNotMatter(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20e3) double tangential,
      @ForAll @Scale(6) @DoubleRange(min = -8e3, max = 8e3) double couple) {
    BaseLoad load = new BaseLoad(20e3, tangential, couple, 0.8, 1.3);
    BaseLoad doubled = new BaseLoad(80e3, tangential * 4, couple * 8, 1.6, 2.6);
    double here = new Drained(0.5, 2e3, 18e3, 5e3).resistance(load);
    double there = new Drained(0.5, 2e3, 9e3, 5e3).resistance(doubled);
    assertThat(there).isCloseTo(4 * here, within(1e-12 * (1 + here)));
    Undrained clay = new Undrained(30e3, 5e3);
    double wet = clay.resistance(load);
    assertThat(clay.resistance(doubled)).isCloseTo(4 * wet, within(1e-12 * (1 + wet)));
  }
}
