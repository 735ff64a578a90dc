package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Between which ends a load may go, and what is made greatest meanwhile. */
class TravelTest {

  private static Travel between(double least, double greatest) {
    return Travel.of(new double[2], new double[] {0, 1}, least, greatest);
  }

  @Test
  void aLineHasTwoEnds() {
    assertThat(between(2, 5).isBounded()).isTrue();
    assertThat(between(2, 5).length()).isEqualTo(3);
    assertThat(between(-5, -2).isBounded()).isTrue();
    assertThat(between(-5, -2).length()).isEqualTo(3);
  }

  @Test
  void whatHasOneEndOrNoneIsNoLine() {
    assertThat(between(Double.NEGATIVE_INFINITY, 5).isBounded()).isFalse();
    assertThat(between(2, Double.POSITIVE_INFINITY).isBounded()).isFalse();
    assertThat(between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY).isBounded()).isFalse();
    assertThat(Travel.fixed(new double[2]).isBounded()).isFalse();
  }

  /** 2·30 N − 5·10 N, three times. */
  @Test
  void aGoalTimesANumberIsThatManyTimesAsLarge() {
    double[] forces = {30, 10};
    Goal goal = Goal.forces(new double[] {2, -5});

    assertThat(goal.times(3).at(forces)).isEqualTo(30);
    assertThat(goal.times(0.25).at(forces)).isEqualTo(2.5);
    assertThat(goal.negative().at(forces)).isEqualTo(-10);
    assertThat(goal.plus(Goal.force(1, 4, 2), 2).at(forces)).isEqualTo(90);
    assertThat(Goal.number(2, 2).times(5).number).isEqualTo(10);
    assertThat(Goal.number(2, 2).plus(Goal.number(3, 2), -4).number).isEqualTo(-10);
  }
}
