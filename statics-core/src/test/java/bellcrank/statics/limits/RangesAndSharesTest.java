package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Ranges that are one value or none, and shares of work where the effort is what is known. */
class RangesAndSharesTest {

  private static Range range(double least, double greatest) {
    return new Range(Dimension.FORCE, OptionalDouble.of(least), OptionalDouble.of(greatest), 0);
  }

  @Test
  void endsThatDifferByRoundingAreOneValue() {
    assertThat(range(5, 5).isOne()).isTrue();
    assertThat(range(0, 5e-10).isOne()).isTrue();
    assertThat(range(1e6, 1e6 + 5e-4).isOne()).isTrue();
    assertThat(range(-1e6 - 5e-4, -1e6).isOne()).isTrue();
    assertThat(range(1e6, 1e6 + 2e-3).isOne()).isFalse();
    assertThat(range(-5, 5).isOne()).isFalse();
    assertThat(new Range(Dimension.FORCE, OptionalDouble.of(5), OptionalDouble.empty(), 0).isOne())
        .isFalse();
    assertThat(new Range(Dimension.FORCE, OptionalDouble.empty(), OptionalDouble.of(5), 0).isOne())
        .isFalse();
  }

  @Test
  void whatIsNotDecidedSaysSo() {
    assertThat(new Verdict.NotDecided("too many dry pins").words()).isEqualTo("not decided");
  }

  @Test
  void edgesLieOppositeEachOther() {
    assertThat(SideEdge.LEFT.opposite()).isEqualTo(SideEdge.RIGHT);
    assertThat(SideEdge.RIGHT.opposite()).isEqualTo(SideEdge.LEFT);
  }

  /** Half a turn round a post passes on e^(−μπ) of a pull, whichever of the two forces is known. */
  @Test
  void theShareOfWorkIsTheSameWhereTheEffortIsKnown() {
    Device rope =
        Yard.overPost(0.2, 0)
            .load(new Force("pull", "hand", "hand", Vector.of(0, -150)))
            .sought("barrel", "load", "load", Direction.DOWN)
            .advantage("pull", "barrel")
            .build();
    Efficiency efficiency = Limits.of(rope).efficiency().orElseThrow();
    double share = Math.exp(-0.2 * Math.PI);

    assertThat(number(efficiency.forward())).isCloseTo(share, within(1e-9));
    assertThat(number(efficiency.back())).isCloseTo(share, within(1e-9));
    assertThat(efficiency.frictionless()).isFalse();
    assertThat(number(Limits.of(rope).answer("greatest barrel")))
        .isCloseTo(150 / share, within(1e-6));
    assertThat(number(Limits.of(rope).answer("least barrel"))).isCloseTo(150 * share, within(1e-6));
  }

  @Test
  void anEndTellsHowFarTheTrueOneMayBe() {
    GivingWay none = new GivingWay(List.of(), Optional.empty(), 0);

    assertThat(new Limit.End.At(3, 0.25, () -> none).gap()).isEqualTo(0.25);
  }

  private static double number(Answer answer) {
    assertThat(answer).isInstanceOf(Answer.Value.class);
    return ((Answer.Value) answer).si();
  }
}
