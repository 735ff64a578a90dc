package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Couples on a screw whose axial force P is not fixed: M = |P|·r·tan(α ± φ), the larger the larger
 * |P| is, pressed or pulled (Engineering Statics: Open and Interactive, section on screws).
 */
class ScrewRangesTest {

  private static final double SLOPE = 0.008 / (2 * Math.PI * 0.02);
  private static final double RAISING = 0.02 * (0.1 + SLOPE) / (1 - SLOPE * 0.1);

  private static Limits jack(double load, Direction stop) {
    return jack(load, stop, 0.1);
  }

  /** A head on a screw with a load in N upwards, and a stop that pushes up or down. */
  private static Limits jack(double load, Direction stop, double friction) {
    Device jack =
        jack(0.008, friction, load)
            .connect(new Roller("stop", "head", "head", "ground", stop, Sides.ONE))
            .build();
    return Limits.of(jack);
  }

  /** A head on a screw of so much lead in m, with a load in N upwards. */
  private static DeviceBuilder jack(double lead, double friction, double load) {
    return Device.named("jack")
        .point("foot", 0, 0)
        .point("head", 0, 1)
        .member("head", "head")
        .connect(new Guide("guide", "head", "head", "ground", Direction.UP))
        .connect(
            new Screw(
                "screw", End.of("head", "head"), End.of("ground", "foot"), lead, 0.02, friction))
        .load(new Force("load", "head", "head", Vector.of(0, load)));
  }

  private static void assertFrom(Limits jack, String ask, double least) {
    Range range = jack.range(ask).orElseThrow();

    assertThat(range.least().orElseThrow()).isCloseTo(least, within(1e-7));
    assertThat(range.greatest()).isEmpty();
  }

  /** A ceiling adds to 1000 N that press; nothing tells how much. */
  @Test
  void pressedAtLeastByItsLoad() {
    assertFrom(jack(-1000, Direction.DOWN), "screw.raising", 1000 * RAISING);
    assertFrom(jack(-1000, Direction.DOWN), "screw.compression", 1000);
  }

  /** A floor adds to 1000 N that pull. */
  @Test
  void pulledAtLeastByItsLoad() {
    assertFrom(jack(1000, Direction.UP), "screw.raising", 1000 * RAISING);
    assertFrom(jack(1000, Direction.UP), "screw.tension", 1000);
  }

  /** A floor may bear 1000 N that press, and nothing is left to be turned against. */
  @Test
  void pressedOrPulledOrNeither() {
    assertFrom(jack(-1000, Direction.UP), "screw.raising", 0);
    assertFrom(jack(1000, Direction.DOWN), "screw.raising", 0);
  }

  /** A thread of μ above tan α is to be lowered, one below is to be held: M = P·r·tan(φ − α). */
  @Test
  void loweringOfWhatLocksItselfAndOfWhatRunsBack() {
    assertFrom(
        jack(-1000, Direction.DOWN),
        "screw.lowering",
        1000 * 0.02 * (0.1 - SLOPE) / (1 + SLOPE * 0.1));
    Range running = jack(-1000, Direction.DOWN, 0.01).range("screw.lowering").orElseThrow();

    assertThat(running.least()).isEmpty();
    assertThat(running.greatest().orElseThrow())
        .isCloseTo(-1000 * 0.02 * (SLOPE - 0.01) / (1 + SLOPE * 0.01), within(1e-7));
  }

  /** tan α = 2 and μ = 0.5 make α + φ a right angle: a crank may push as hard as it likes. */
  @Test
  void aThreadThatJustCannotBeDriven() {
    Device jack =
        jack(2 * Math.PI * 0.02 * 2, 0.5, -1000)
            .load(
                new Sought(
                    "crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
            .build();
    Range crank = Limits.of(jack).range("crank").orElseThrow();

    assertThat(crank.greatest()).isEmpty();
    // P·r·tan(α − φ) with tan(α − φ) = 1.5/2
    assertThat(crank.least().orElseThrow()).isCloseTo(15, within(1e-8));
  }

  /** A thread of tan α · μ above 1 cannot be driven, so no quotient with its couple is told. */
  @Test
  void aQuotientWithACoupleThatIsNone() {
    DeviceBuilder steep =
        jack(0.2, 0.7, -1000)
            .connect(new Roller("stop", "head", "head", "ground", Direction.DOWN, Sides.ONE));
    Limits limits = Limits.of(steep.build());
    String binds = "the thread binds: no couple turns it";

    assertThat(limits.answer("greatest screw.raising per screw.tension"))
        .isEqualTo(new Answer.Unanswered(Answer.Reason.NOT_DEFINED, binds));
    assertThat(limits.answer("greatest screw.tension per screw.raising"))
        .isEqualTo(new Answer.Unanswered(Answer.Reason.NOT_DEFINED, binds));
    assertThat(limits.answer("greatest screw.raising"))
        .isEqualTo(new Answer.Unanswered(Answer.Reason.NOT_DEFINED, binds));
  }
}
