package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The least factor on friction of devices that lock themselves: just above it the forces have no
 * bound. The closed forms are worked out on the spot.
 */
class NextToSelfLockingTest {

  private static final String GROUND = Ground.NAME;

  private static FrictionFactor.Least least(Device device) {
    FrictionFactor factor = Limits.of(device).frictionFactor();
    assertThat(factor).isInstanceOf(FrictionFactor.Least.class);
    return (FrictionFactor.Least) factor;
  }

  private static void assertLeast(Device device, double exact) {
    assertThat(least(device).factor()).isCloseTo(exact, within(1e-9 * exact));
  }

  private static List<String> events(Device device) {
    return least(device).how().events().stream().map(e -> e.part() + " " + e.kind()).toList();
  }

  private static Contact touch(String name, String body, String other, Direction push, double mu) {
    return new Contact(name, name, body, other, push, mu, mu);
  }

  /** A wedge of a half angle, its tip down in a notch. */
  private static DeviceBuilder notched(double half, double mu) {
    return Device.named("notched wedge")
        .point("left", -0.05, 0)
        .point("right", 0.05, 0)
        .point("head", 0, 0.2)
        .member("wedge", "left", "head", "right")
        .connect(touch("left", "wedge", GROUND, Direction.ofAngle(half), mu))
        .connect(touch("right", "wedge", GROUND, Direction.ofAngle(Math.PI - half), mu));
  }

  private static Device wedge(double half, double mu, double pull) {
    return notched(half, mu).force("pull", "wedge", "head", Vector.of(0, pull)).build();
  }

  /** With N at each face 2·N·(μ·cos α − sin α) = P: it holds from μ = tan α on, whatever P is. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.3, 500",
    "0.2, 0.2, 1",
    "0.3, 0.1, 1e5",
    "0.02, 0.6, 40",
    "0.002, 0.5, 40",
    "0.7, 0.3, 500",
    "1.4, 0.2, 7"
  })
  void aWedgeHoldsFromTheTangentOfItsHalfAngleOn(double half, double mu, double pull) {
    Device wedge = wedge(half, mu, pull);

    assertLeast(wedge, Math.tan(half) / mu);
    assertThat(events(wedge)).containsExactly("left SLIDES", "right SLIDES");
  }

  /** Coefficients are told apart by 1e-12, so a small factor is known to fewer digits. */
  @Test
  void aSlenderWedgeHoldsByVeryLittleFriction() {
    assertThat(least(wedge(1e-5, 0.5, 10)).factor()).isCloseTo(2e-5, within(1e-11));
    assertThat(Limits.of(wedge(1e-7, 0.5, 10)).frictionFactor())
        .isEqualTo(new FrictionFactor.AnyIsEnough());
    assertThat(Limits.of(wedge(0, 0.5, 10)).frictionFactor())
        .isEqualTo(new FrictionFactor.AnyIsEnough());
  }

  /** A sleeve that touches its post above and below, a rope beside the post holding it down. */
  private static Device sleeve(double aside, double mu, double weight) {
    return Device.named("sleeve")
        .point("upper", 0, 0.4)
        .point("lower", 0, 0)
        .point("eye", aside, 0.2)
        .point("ring", aside, -1)
        .member("sleeve", "lower", "upper", "eye")
        .connect(touch("upper", "sleeve", GROUND, Direction.LEFT, mu))
        .connect(touch("lower", "sleeve", GROUND, Direction.RIGHT, mu))
        .connect(new Line("rope", End.of("sleeve", "eye"), End.of(GROUND, "ring")))
        .force("weight", "sleeve", "lower", Vector.of(0, -weight))
        .build();
  }

  /** N·h = T·a and 2·μ·N = T + W, so T·(2·μ·a/h − 1) = W: it jams from μ = h/(2·a) on. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.3, 50", "0.3, 0.3, 1", "0.7, 0.4, 2000", "0.05, 0.5, 50"})
  void aSleeveHeldDownByARopeJams(double aside, double mu, double weight) {
    Device sleeve = sleeve(aside, mu, weight);

    assertLeast(sleeve, 0.4 / (2 * aside * mu));
    assertThat(events(sleeve)).containsExactly("upper SLIDES", "lower SLIDES");
  }

  /** A log between the tips of two jaws that lean on the ground behind them. */
  private static Device tongs(double rise, double mu) {
    double c = Math.cos(rise);
    double s = Math.sin(rise);
    return Device.named("log tongs")
        .point("left heel", -0.2 - c, -s)
        .point("left", -0.2, 0)
        .point("right heel", 0.2 + c, -s)
        .point("right", 0.2, 0)
        .point("middle", 0, 0)
        .member("left jaw", "left heel", "left")
        .member("right jaw", "right heel", "right")
        .member("log", "left", "middle", "right")
        .pin("left heel", "left heel", "left jaw", GROUND)
        .pin("right heel", "right heel", "right jaw", GROUND)
        .connect(touch("left", "log", "left jaw", Direction.RIGHT, mu))
        .connect(touch("right", "log", "right jaw", Direction.LEFT, mu))
        .weight("weight", "log", "middle", 40)
        .build();
  }

  /** A jaw pushes along itself, so T/N = tan θ: the forces are large but not without bound. */
  @ParameterizedTest
  @CsvSource({"0.4, 0.3", "0.1, 0.3", "0.02, 0.6", "0.003, 0.2", "0.0002, 0.0003"})
  void tongsHoldFromTheTangentOfTheirAngleOn(double rise, double mu) {
    assertLeast(tongs(rise, mu), Math.tan(rise) / mu);
    assertThat(events(tongs(rise, mu))).containsExactly("left SLIDES", "right SLIDES");
  }

  /**
   * A lever whose weight is held by a rope over a fixed post, one end to either side of its pin.
   */
  private static Device brake(double loaded, double slack, double mu) {
    return Device.named("band brake")
        .point("pivot", 0, 0)
        .point("loaded", loaded, 0)
        .point("slack", -slack, 0)
        .point("post", (loaded - slack) / 2, 1)
        .point("tip", 2, 0)
        .member("lever", "slack", "pivot", "loaded", "tip")
        .pin("pivot", "pivot", "lever", GROUND)
        .connect(
            new Wrap(
                "band",
                Stop.end("lever", "slack"),
                new Stop(Stop.Kind.POST, GROUND, "post", (loaded + slack) / 2, Turn.CLOCKWISE),
                Stop.end("lever", "loaded"),
                mu,
                0))
        .force("weight", "lever", "tip", Vector.of(0, -60))
        .build();
  }

  /** T₂·a = T₁·b + W·l with T₂ ≤ e^(μπ)·T₁: it locks from μ = ln(b/a)/π on. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.15, 0.2", "0.1, 0.4, 0.3", "0.2, 0.21, 0.5"})
  void aDifferentialBandBrakeLocks(double loaded, double slack, double mu) {
    Device brake = brake(loaded, slack, mu);

    assertLeast(brake, Math.log(slack / loaded) / (mu * Math.PI));
    assertThat(events(brake)).containsExactly("band SLIPS_ROUND");
  }

  /** What stands beside it, held by other friction, counts where it needs more. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.3})
  void whatLocksAndWhatOnlyRestsAreToldApart(double slope) {
    double c = Math.cos(slope);
    double s = Math.sin(slope);
    Direction up = Direction.ofAngle(Math.PI / 2 + slope);
    Device both =
        notched(0.2, 0.5)
            .force("pull", "wedge", "head", Vector.of(0, 300))
            .point("lower", 3, 0)
            .point("upper", 3 + c, s)
            .point("middle", 3 + 0.5 * c - 0.1 * s, 0.5 * s + 0.1 * c)
            .member("crate", "lower", "middle", "upper")
            .connect(touch("lower", "crate", GROUND, up, 0.5))
            .connect(touch("upper", "crate", GROUND, up, 0.5))
            .weight("weight", "crate", "middle", 50)
            .build();

    assertLeast(both, Math.tan(Math.max(0.2, slope)) / 0.5);
    assertThat(events(both))
        .containsExactly(
            slope < 0.2
                ? new String[] {"left SLIDES", "right SLIDES"}
                : new String[] {"lower SLIDES", "upper SLIDES"});
  }

  /** A dry pin that has no part in it leaves the factor as it is. */
  @Test
  void aDryPinBesideAWedge() {
    Device device =
        notched(0.2, 0.5)
            .point("eye", 0, 0.5)
            .member("link", "head", "eye")
            .connect(new Pin("pin", "head", List.of("wedge", "link"), 0.01, 0.2))
            .force("pull", "link", "eye", Vector.of(0, 300))
            .build();

    assertLeast(device, Math.tan(0.2) / 0.5);
  }
}
