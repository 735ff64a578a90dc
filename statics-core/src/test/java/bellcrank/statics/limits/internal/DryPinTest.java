package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.limits.internal.Branch.Choice;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A journal with a friction circle of 12 mm: a force of 100 N bears couples up to 1.2 N·m to either
 * side, wherever it points (Engineering Statics: Open and Interactive, section on journal
 * bearings).
 */
class DryPinTest {

  private static final double FULL = 2 * Math.PI;

  private final DryPin pin = new DryPin(0, 0, 1, 2, 0.012);

  /** A force of 100 N under an angle, and a couple. */
  private static double[] force(double angle, double couple) {
    return new double[] {100 * Math.cos(angle), 100 * Math.sin(angle), couple};
  }

  private static double worst(List<Bound> bounds, double[] forces) {
    return bounds.stream().mapToDouble(b -> b.sum(forces) - b.limit).max().orElseThrow();
  }

  /** Of friction alone, of a couple to either side. */
  private static double worstFriction(List<Bound> bounds, double angle, double couple) {
    List<Bound> friction = bounds.stream().filter(b -> b.kind == Bound.Kind.PIN).toList();
    assertThat(friction).hasSize(2);
    return Math.max(worst(friction, force(angle, couple)), worst(friction, force(angle, -couple)));
  }

  @Test
  void whatIsLetThroughIsExactAtTheEdgesOfASectorAndNotTooLittleBetween() {
    for (double from : new double[] {0.3, 1.2, 2, 3, 4, 5}) {
      List<Bound> bounds = pin.outer(new Choice(from, from + 0.8));

      assertThat(worstFriction(bounds, from, 1.2)).isCloseTo(0, within(1e-12));
      assertThat(worstFriction(bounds, from + 0.8, 1.2)).isCloseTo(0, within(1e-12));
      for (double share = 0.1; share < 0.95; share += 0.1) {
        assertThat(worst(bounds, force(from + 0.8 * share, 1.2))).isNegative();
      }
      assertThat(worst(bounds, force(from - 0.1, 0))).isPositive();
      assertThat(worst(bounds, force(from + 0.9, 0))).isPositive();
    }
  }

  @Test
  void whatIsSurelyPossibleIsExactAtTheForceItIsCloseTo() {
    for (double near : new double[] {0.5, 2.5, 4.5}) {
      List<Bound> bounds = pin.inner(new Choice(near - 0.4, near + 0.4), force(near, 0));

      assertThat(worstFriction(bounds, near, 1.2)).isCloseTo(0, within(1e-12));
      for (double off = -0.4; off <= 0.4; off += 0.1) {
        assertThat(worstFriction(bounds, near + off, 1.2)).isGreaterThan(-1e-12);
      }
    }
  }

  @Test
  void quartersGoOnceRound() {
    List<Choice> quarters = pin.split(pin.whole(), new double[0]);

    assertThat(quarters).hasSize(4);
    for (Choice quarter : quarters) {
      assertThat(quarter.to() - quarter.from()).isCloseTo(FULL / 4, within(1e-12));
    }
    for (double angle = 0.1; angle < FULL; angle += 0.25) {
      double[] force = force(angle, 0);
      assertThat(quarters.stream().filter(q -> worst(pin.outer(q), force) <= 0)).hasSize(1);
    }
  }

  /** However often the angles of the sector have gone round. */
  @Test
  void aSectorIsDividedWhereTheForcePoints() {
    for (double turns = -FULL; turns <= FULL; turns += FULL) {
      Choice sector = new Choice(turns - 0.7, turns + 0.8);
      List<Choice> parts = pin.split(sector, force(0.1, 2));

      assertThat(parts.get(0)).isEqualTo(new Choice(sector.from(), parts.get(1).from()));
      assertThat(parts.get(1).from()).isCloseTo(turns + 0.1, within(1e-12));
      assertThat(parts.get(1).to()).isEqualTo(sector.to());
    }
  }

  @Test
  void aSectorIsHalvedWhereTheForceIsAtItsEdgeOrUnknown() {
    Choice sector = new Choice(1, 2);

    for (double[] forces : List.of(new double[0], force(1.001, 2), force(1.999, 2), force(4, 2))) {
      assertThat(pin.split(sector, forces)).containsExactly(new Choice(1, 1.5), new Choice(1.5, 2));
    }
  }

  @Test
  void theSideOfALimitIsThatOfTheCouple() {
    assertThat(pin.atLimit(force(1, 1.2), 1e-9)).extracting(b -> b.side).containsExactly(1);
    assertThat(pin.atLimit(force(1, -1.2), 1e-9)).extracting(b -> b.side).containsExactly(-1);
    assertThat(pin.atLimit(force(1, 1.19), 1e-9)).isEmpty();
  }
}
