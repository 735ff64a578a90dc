package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Lengths, turns and power on drums of any size. */
class DrumProperties {

  private static final Drum DRUM = new Drum(0.05, 0.01, 10);

  @Property(tries = 200)
  void lengthAndTurnsGoThereAndBack(
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double radius,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.03) double rope,
      @ForAll @IntRange(min = 1, max = 40) int side,
      @ForAll @DoubleRange(min = 0, max = 200) double turns) {
    Drum drum = new Drum(radius, rope, side);
    double wound = drum.wound(turns);
    assertThat(drum.turns(wound)).isCloseTo(turns, within(1e-9));
    int layer = drum.layerAt(wound);
    assertThat(wound).isLessThanOrEqualTo(drum.lengthOf(layer));
    if (layer > 1) {
      assertThat(wound).isGreaterThan(drum.lengthOf(layer - 1));
    }
    double sum = 0;
    for (int k = 1; k <= layer; k++) {
      sum += drum.lengthIn(k);
    }
    assertThat(drum.lengthOf(layer)).isCloseTo(sum, within(1e-9 * sum));
  }

  @Property(tries = 200)
  void powerIsTheSameOnEveryLayer(
      @ForAll @IntRange(min = 1, max = 20) int layer,
      @ForAll @DoubleRange(min = 1, max = 1000) double couple,
      @ForAll @DoubleRange(min = 0.1, max = 20) double turning) {
    double power = DRUM.pull(layer, couple) * DRUM.speed(layer, turning);
    assertThat(power).isCloseTo(couple * turning, within(1e-9 * couple * turning));
    assertThat(DRUM.couple(layer, DRUM.pull(layer, couple)))
        .isCloseTo(couple, within(1e-12 * couple));
  }
}
