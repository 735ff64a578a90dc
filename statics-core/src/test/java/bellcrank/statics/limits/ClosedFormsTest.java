package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Limits that have a closed form. Formulas: Engineering Statics: Open and Interactive, chapter on
 * friction (blocks on slopes, tipping, wedges, screws, belts, journal bearings); where noted they
 * are derived on the spot.
 */
class ClosedFormsTest {

  private static final String GROUND = Ground.NAME;

  private static ContactBase base(
      String name, String body, String other, Direction push, double width, double mu) {
    return new ContactBase(name, name, body, other, push, width, mu, mu);
  }

  private static Range range(Device device, String ask) {
    return Limits.of(device).range(ask).orElseThrow();
  }

  private static void ends(Device device, String ask, double least, double most, double close) {
    Range range = range(device, ask);
    assertThat(range.least().orElseThrow()).as("least").isCloseTo(least, within(close));
    assertThat(range.greatest().orElseThrow()).as("most").isCloseTo(most, within(close));
  }

  private static List<Event.Kind> kinds(GivingWay how) {
    return how.events().stream().map(Event::kind).toList();
  }

  /** A chest 0.4 m wide and high as given, on a slope. */
  private static Device chest(double slope, double high, double mu) {
    Direction push = Direction.ofAngle(Math.PI / 2 + slope);
    Point middle = Point.ORIGIN.plus(push.times(high / 2));
    return Device.named("chest")
        .point("foot", 0, 0)
        .point("middle", middle)
        .member("chest", "foot", "middle")
        .connect(base("foot", "chest", GROUND, push, 0.4, mu))
        .weight("weight", "chest", "middle", 30)
        .build();
  }

  /** It slides at tan θ = μ, and tips at tan θ = b/h if that comes first. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.5, 0.3", "0.35, 0.5, 0.4", "0.5, 0.7, 0.8", "0.1, 2, 0.15"})
  void aChestOnASlopeSlidesAtTheAngleOfFriction(double slope, double high, double mu) {
    FrictionFactor factor = Limits.of(chest(slope, high, mu)).frictionFactor();
    assertThat(factor).isInstanceOf(FrictionFactor.Least.class);
    FrictionFactor.Least least = (FrictionFactor.Least) factor;
    assertThat(least.factor() * mu).isCloseTo(Math.tan(slope), within(1e-9));
    assertThat(kinds(least.how())).containsExactly(Event.Kind.SLIDES);
    boolean holds = Math.tan(slope) < mu;
    assertThat(Limits.of(chest(slope, high, mu)).verdict())
        .isInstanceOf(holds ? Verdict.Holds.class : Verdict.DoesNotHold.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.6, 1, 1.7})
  void aTallChestOnASlopeTipsHoweverRough(double high) {
    double tips = Math.atan(0.4 / high);
    assertThat(Limits.of(chest(tips - 0.001, high, 5)).verdict()).isInstanceOf(Verdict.Holds.class);
    Device leaning = chest(tips + 0.001, high, 5);
    assertThat(Limits.of(leaning).verdict()).isInstanceOf(Verdict.DoesNotHold.class);
    assertThat(Limits.of(leaning).frictionFactor()).isInstanceOf(FrictionFactor.NotEnough.class);
  }

  /**
   * Even ladder, both ends rough, about to slide at both: N₂ = μ₁N₁, N₁ + μ₂N₂ = W; moments about
   * the foot give y/x = (1 − μ₁μ₂)/(2μ₁).
   */
  @ParameterizedTest
  @CsvSource({"0.3, 0.3", "0.5, 0.2", "0.25, 0.6"})
  void aLadderRoughAtBothEnds(double floor, double wall) {
    double rise = (1 - floor * wall) / (2 * floor);
    Device ladder =
        Device.named("ladder")
            .point("heel", 0, 0)
            .point("head", 1, rise)
            .point("middle", 0.5, rise / 2)
            .member("ladder", "heel", "head")
            .connect(new Contact("heel", "heel", "ladder", GROUND, Direction.UP, floor, floor))
            .connect(new Contact("head", "head", "ladder", GROUND, Direction.LEFT, wall, wall))
            .weight("weight", "ladder", "middle", 12)
            .build();
    FrictionFactor factor = Limits.of(ladder).frictionFactor();
    assertThat(factor).isInstanceOf(FrictionFactor.Least.class);
    assertThat(((FrictionFactor.Least) factor).factor()).isCloseTo(1, within(1e-9));
    assertThat(kinds(((FrictionFactor.Least) factor).how()))
        .containsExactly(Event.Kind.SLIDES, Event.Kind.SLIDES);
  }

  /** A wedge under a guided block: driven in by W(tan(α + φ) + tan φ). */
  @ParameterizedTest
  @CsvSource({"0.1, 0.3", "0.2, 0.2", "0.3, 0.1"})
  void aWedgeLiftsAGuidedBlock(double slope, double mu) {
    double phi = Math.atan(mu);
    Direction up = Direction.ofAngle(Math.PI / 2 + slope);
    Device device =
        Device.named("wedge")
            .point("floor", 0, 0)
            .point("face", 0, 0.1)
            .point("top", 0, 0.4)
            .member("wedge", "floor", "face")
            .member("block", "face", "top")
            .connect(base("floor", "wedge", GROUND, Direction.UP, 5, mu))
            .connect(base("face", "block", "wedge", up, 5, mu))
            .connect(new Guide("guide", "top", "block", GROUND, Direction.UP))
            .force("load", "block", "top", Vector.of(0, -1000))
            .sought("drive", "wedge", "floor", Direction.LEFT)
            .build();
    double in = 1000 * (Math.tan(slope + phi) + mu);
    // drawn out: friction the other way at both faces
    double out = 1000 * (Math.tan(slope - phi) - mu);
    ends(device, "drive", out, in, 1e-6);
  }

  /** Two buckets on guides, a rope over a rail: the ratio of tensions is at most e^(μβ). */
  @ParameterizedTest
  @CsvSource({"0.2, 0", "0.3, 1", "0.15, 3"})
  void aRopeOverARail(double mu, int turns) {
    Stop rail = new Stop(Stop.Kind.POST, GROUND, "rail", 0.1, Turn.CLOCKWISE);
    Device device =
        Device.named("rope over a rail")
            .point("rail", 0, 0)
            .point("one", -0.1, -1)
            .point("other", 0.1, -1)
            .point("low one", -0.1, -2)
            .point("low other", 0.1, -2)
            .member("bucket", "one", "low one")
            .member("counterweight", "other", "low other")
            .connect(new Guide("left guide", "low one", "bucket", GROUND, Direction.UP))
            .connect(new Guide("right guide", "low other", "counterweight", GROUND, Direction.UP))
            .connect(
                new Wrap(
                    "rope",
                    Stop.end("bucket", "one"),
                    rail,
                    Stop.end("counterweight", "other"),
                    mu,
                    turns))
            .force("load", "bucket", "low one", Vector.of(0, -200))
            .sought("hold", "counterweight", "low other", Direction.DOWN)
            .build();
    double ratio = Math.exp(mu * (Math.PI + 2 * Math.PI * turns));
    ends(device, "hold", 200 / ratio, 200 * ratio, 1e-9 * 200 * ratio);
  }

  /** A drawer of length a, pulled at a distance e from its guide, jams if 2μe ≥ a. */
  @ParameterizedTest
  @CsvSource({"0.3, 0.2", "0.4, 0.5", "0.5, 0.15"})
  void aDrawerJams(double mu, double length) {
    double jams = length / (2 * mu);
    for (int side = -1; side <= 1; side += 2) {
      Device drawer =
          Device.named("drawer")
              .point("near", 0, 0)
              .point("far", 0, length)
              .point("knob", jams * (1 + side * 0.001), 0)
              .member("drawer", "near", "far", "knob")
              .connect(new Contact("near", "near", "drawer", GROUND, Direction.LEFT, mu, mu))
              .connect(new Contact("far", "far", "drawer", GROUND, Direction.RIGHT, mu, mu))
              .force("pull", "drawer", "knob", Vector.of(0, 50))
              .build();
      Limit limit = Limits.of(drawer).limit(Variation.of("pull"));
      assertThat(limit).isInstanceOf(Limit.Between.class);
      Limit.End end = ((Limit.Between) limit).greatest();
      if (side > 0) {
        assertThat(end).isInstanceOf(Limit.End.SelfLocking.class);
      } else {
        assertThat(end).isInstanceOf(Limit.End.At.class);
        assertThat(((Limit.End.At) end).value()).isCloseTo(0, within(1e-9));
      }
    }
  }

  /** Parallel forces on a dry pin: Q·(b ∓ ρ) = W·(a ± ρ). */
  @ParameterizedTest
  @CsvSource({"0.02, 0.3, 0.25, 1.5", "0.05, 0.2, 0.4, 0.9"})
  void aLeverOnADryPin(double radius, double mu, double a, double b) {
    Device lever =
        Device.named("lever")
            .point("load end", -a, 0)
            .point("hinge", 0, 0)
            .point("grip", b, 0)
            .member("lever", "load end", "hinge", "grip")
            .connect(new Pin("hinge", "hinge", List.of("lever", GROUND), radius, mu))
            .force("load", "lever", "load end", Vector.of(0, -600))
            .sought("effort", "lever", "grip", Direction.DOWN)
            .build();
    double circle = radius * Math.sin(Math.atan(mu));
    double close = 1e-6 + range(lever, "effort").gap();
    ends(
        lever,
        "effort",
        600 * (a - circle) / (b + circle),
        600 * (a + circle) / (b - circle),
        close);
  }

  /** Square thread: raised by W·r·tan(φ + α), let down by W·r·tan(φ − α). */
  @ParameterizedTest
  @CsvSource({"0.006, 0.012, 0.15", "0.02, 0.012, 0.1", "0.01, 0.02, 0.0795"})
  void aSquareThread(double lead, double radius, double mu) {
    DeviceBuilder builder =
        Device.named("screw press")
            .point("nut", 0, 0)
            .point("head", 0, 1)
            .point("top", 0, 1.2)
            .member("platen", "head", "top")
            .connect(new Guide("guide", "top", "platen", GROUND, Direction.UP))
            .connect(
                new Screw(
                    "screw", End.of(GROUND, "nut"), End.of("platen", "head"), lead, radius, mu))
            .force("load", "platen", "top", Vector.of(0, -5000));
    Device press =
        builder
            .load(
                new Sought("turn", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
            .build();
    double slope = Math.atan(lead / (2 * Math.PI * radius));
    double phi = Math.atan(mu);
    Range range = range(press, "turn");
    assertThat(range.greatest().orElseThrow())
        .isCloseTo(5000 * radius * Math.tan(slope + phi), within(1e-9 * 5000));
    assertThat(range.least().orElseThrow())
        .isCloseTo(5000 * radius * Math.tan(slope - phi), within(1e-9 * 5000));
    assertThat(range.least().orElseThrow() <= 0)
        .as("locks itself")
        .isEqualTo(mu >= Math.tan(slope));
  }

  /** Pressure q on the effective width: N = q·L·(B − 2e), so that N·(R − N) = 2·|M|·R/B. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.03, -0.08, 0.15})
  void aBaseSinks(double off) {
    Device prop =
        Device.named("prop")
            .point("foot", 0, 0)
            .point("head", off, 1)
            .member("prop", "foot", "head")
            .connect(base("foot", "prop", GROUND, Direction.UP, 0.4, 0.5))
            .force("load", "prop", "head", Vector.of(0, -1000))
            .build();
    Foundation soil =
        Foundation.of("foot", 0.5).withBearing(new Presumptive(100_000, "invented for this check"));
    Limits limits = Limits.of(prop, LoadCase.ALL_LOADS, Pose.DRAWN, List.of(soil));
    Limit limit = limits.limit(Variation.of("load"));
    assertThat(limit).isInstanceOf(Limit.Between.class);
    Limit.End end = ((Limit.Between) limit).greatest();
    assertThat(end).isInstanceOf(Limit.End.At.class);
    Limit.End.At at = (Limit.End.At) end;
    double all = 100_000 * 0.5 * 0.4;
    double normal = at.value() * 1000;
    double moment = normal * Math.abs(off);
    assertThat(normal * (all - normal)).isCloseTo(2 * moment * all / 0.4, within(1e-7 * all * all));
    assertThat(normal).isCloseTo(all * (1 - 2 * Math.abs(off) / 0.4), within(1e-6 * all));
    assertThat(kinds(at.how())).containsExactly(Event.Kind.SINKS);
  }
}
