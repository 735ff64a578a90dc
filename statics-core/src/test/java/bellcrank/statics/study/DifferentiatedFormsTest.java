package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rates against closed forms that are differentiated by hand. */
class DifferentiatedFormsTest {

  private static final double CLOSE = 1e-11;

  private static double rate(Device device, String ask, Input input, Effect.How how) {
    Effect effect =
        Sensitivities.of(Model.of(device), Figure.parse(ask), List.of(input)).ranked().get(0);
    assertThat(effect.how()).as(ask + " by " + input + ": " + effect).isEqualTo(how);
    assertThat(effect.change()).isInstanceOf(Effect.Change.Smooth.class);
    return ((Effect.Change.Smooth) effect.change()).rate();
  }

  private static void solved(Device device, String ask, Input input, double wanted) {
    assertThat(rate(device, ask, input, Effect.How.SOLVED))
        .as(ask + " by " + input)
        .isCloseTo(wanted, within(CLOSE * Math.max(1, Math.abs(wanted))));
  }

  private static void limit(Device device, String ask, Input input, double wanted) {
    assertThat(rate(device, ask, input, Effect.How.AT_LIMIT))
        .as(ask + " by " + input)
        .isCloseTo(wanted, within(CLOSE * Math.max(1, Math.abs(wanted))));
  }

  /** A press lever: the ram carries F·L/a. */
  @Test
  void lever() {
    Device lever =
        Device.named("press lever")
            .point("hinge", 0, 0)
            .point("ram", 0.25, 0)
            .point("grip", 1.6, 0)
            .member("lever", "hinge", "ram", "grip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("hand", "lever", "grip", Vector.of(0, -220))
            .sought("ram", "lever", "ram", Direction.UP)
            .build();
    double f = 220;
    double l = 1.6;
    double a = 0.25;
    solved(lever, "ram", Input.size("hand"), l / a);
    solved(lever, "ram", Input.x("grip"), f / a);
    solved(lever, "ram", Input.x("ram"), -f * l / (a * a));
    solved(lever, "ram", Input.distance("ram", "hinge"), -f * l / (a * a));
    solved(lever, "ram", Input.y("grip"), 0);
    // turned by t the hand's arm is L·cos t, the ram's stays a
    solved(lever, "ram", Input.turn(List.of("grip"), "hinge"), 0);
    // a push that leans by t past the downward: moment L·F·cos t
    solved(lever, "ram", Input.direction("hand"), 0);
    solved(lever, "hinge.x", Input.direction("hand"), -f);
    // a ram that leans by t: R·a·cos t, hinge.x = R·sin t
    solved(lever, "hinge.x", Input.direction("ram"), f * l / a);
    solved(lever, "hinge.y", Input.x("ram"), f * l / (a * a));
    solved(lever, "hinge", Input.x("ram"), -f * l / (a * a));
    solved(lever, "hinge.moment about grip", Input.x("grip"), f * (2 * l / a - 1));
  }

  /** A boom from the mast's foot at angle t, held by a level stay: stay = W·cot t. */
  @ParameterizedTest
  @CsvSource({"0.6", "0.9", "1.2"})
  void derrick(double t) {
    double l = 3;
    Device derrick =
        Device.named("derrick")
            .point("foot", 0, 0)
            .point("head", l * Math.cos(t), l * Math.sin(t))
            .point("top", 0, l * Math.sin(t))
            .member("boom", "foot", "head")
            .pin("foot", "foot", "boom", "ground")
            .line("stay", End.of("boom", "head"), End.of("ground", "top"))
            .weight("barrel", "boom", "head", 80)
            .build();
    double w = 80 * 9.80665;
    double sin = Math.sin(t);
    double cos = Math.cos(t);
    solved(derrick, "stay.tension", Input.mass("barrel"), 9.80665 * cos / sin);
    solved(derrick, "stay.tension", Input.gravity(), 80 * cos / sin);
    solved(derrick, "stay.tension", Input.x("head"), w / (l * sin));
    // with the top at height h: T·(sin b·x + …); by moments T·h·x/√(x² + (h − y)²) = W·x
    double x = l * cos;
    double h = l * sin;
    solved(derrick, "stay.tension", Input.y("top"), -w * x / (h * h));
    solved(derrick, "stay.length", Input.x("head"), 1);
    // on a slope s gravity has a part W·sin s to the left, at the arm h
    solved(derrick, "stay.tension", Input.slope(), -w);
    solved(derrick, "foot.y", Input.mass("barrel"), 9.80665);
  }

  /** A ladder on a smooth wall: μ needed = x/(y·L)·…, here cot t · share of the way up. */
  @ParameterizedTest
  @CsvSource({"1.0, 0.5", "1.2, 0.7", "0.9, 0.3"})
  void ladder(double t, double share) {
    double l = 4;
    double mu = 0.35;
    Point top = Point.of(l * Math.cos(t), l * Math.sin(t));
    Device ladder =
        Device.named("ladder")
            .point("foot", 0, 0)
            .point("top", top)
            .point("picker", share * top.x(), share * top.y())
            .member("ladder", "foot", "picker", "top")
            .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, mu, mu))
            .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, 0, 0))
            .weight("picker", "ladder", "picker", 75)
            .build();
    // the wall pushes W·xp/h, the floor holds μ·W: factor k = xp/(h·μ)
    double xp = share * top.x();
    double h = top.y();
    limit(ladder, "friction factor", Input.friction("floor"), -xp / (h * mu * mu));
    limit(ladder, "friction factor", Input.x("picker"), 1 / (h * mu));
    limit(ladder, "friction factor", Input.y("top"), -xp / (h * h * mu));
    limit(ladder, "friction factor", Input.mass("picker"), 0);
    // from the foot along the ladder the picker gets as far as s with s·cos t = μ·h
    limit(
        ladder,
        "greatest distance(picker) along foot–top",
        Input.friction("floor"),
        mu * h > top.x() ? 0 : h / Math.cos(t));
  }

  /** Round a post the greatest pull is W·e^(μβ). */
  @Test
  void wrap() {
    double mu = 0.3;
    double beta = Math.PI / 2;
    Device snub =
        Device.named("snub")
            .point("hook", -2, 0.05)
            .point("post", 0, 0)
            .point("hang", 0.05, -1)
            .point("guide", 0.05, -2)
            .joint("hang")
            .joint("hook")
            .connect(
                new Wrap(
                    "rope",
                    Stop.end("hook", "hook"),
                    new Stop(Stop.Kind.POST, "ground", "post", 0.05, Turn.CLOCKWISE),
                    Stop.end("hang", "hang"),
                    mu,
                    0))
            .weight("pail", "hang", "hang", 10)
            .sought("pull", "hook", "hook", Direction.LEFT)
            .build();
    double w = 98.0665;
    double most = w * Math.exp(mu * beta);
    double least = w * Math.exp(-mu * beta);
    limit(snub, "greatest pull", Input.mass("pail"), 9.80665 * Math.exp(mu * beta));
    limit(snub, "greatest pull", Input.friction("rope"), beta * most);
    limit(snub, "least pull", Input.friction("rope"), -beta * least);
  }

  /** A screw jack: raising F·r·tan(α + φ), lowering F·r·tan(φ − α). */
  @Test
  void screw() {
    double lead = 0.006;
    double r = 0.012;
    double mu = 0.15;
    DeviceBuilder builder =
        Device.named("jack")
            .point("foot", 0, 0)
            .point("head", 0, 0.3)
            .joint("head")
            .connect(
                new bellcrank.statics.device.Slot(
                    "guide",
                    "head",
                    "head",
                    "ground",
                    Direction.UP,
                    bellcrank.statics.device.Sides.TWO))
            .connect(
                new Screw("screw", End.of("head", "head"), End.of("ground", "foot"), lead, r, mu))
            .weight("load", "head", "head", 200);
    Device jack = builder.build();
    double f = 200 * 9.80665;
    double slope = lead / (2 * Math.PI * r);
    double below = 1 - mu * slope;
    // d tan(α + φ)/dμ = (1 + tan²α)/(1 − μ·tan α)²
    solved(
        jack,
        "screw.raising",
        Input.friction("screw"),
        f * r * (1 + slope * slope) / (below * below));
    double bySlope = f * r * (1 + mu * mu) / (below * below);
    solved(jack, "screw.raising", Input.lead("screw"), bySlope / (2 * Math.PI * r));
    double tangent = (mu + slope) / below;
    solved(jack, "screw.raising", Input.meanRadius("screw"), f * tangent - bySlope * slope / r);
    solved(
        jack, "screw.lowering", Input.mass("load"), 9.80665 * r * (mu - slope) / (1 + mu * slope));
    Device turned =
        builder
            .load(
                new Sought(
                    "crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
            .build();
    limit(
        turned,
        "greatest crank",
        Input.friction("screw"),
        f * r * (1 + slope * slope) / (below * below));
    limit(turned, "greatest crank", Input.mass("load"), 9.80665 * r * tangent);
  }

  /** A block on the level slides at P = μ·W and tips at P = W·b/(2·h). */
  @Test
  void whatTipsAndWhatSlides() {
    Device chest = chest(0.2);
    double w = 30 * 9.80665;
    limit(chest, "greatest multiple(push)", Input.friction("foot"), w / 50);
    limit(chest, "greatest multiple(push)", Input.width("foot"), 0);
    limit(chest, "greatest multiple(push)", Input.size("push"), -0.2 * w / 2500);
    Device tall = chest(0.9);
    limit(tall, "greatest multiple(push)", Input.friction("foot"), 0);
    limit(tall, "greatest multiple(push)", Input.width("foot"), w / 2 / 0.8 / 50);
    limit(tall, "greatest multiple(push)", Input.y("push"), -w * 0.4 / 2 / 0.64 / 50);
  }

  /** Where both come at once the one decides below, the other above. */
  @Test
  void atATieTheRatesToEitherSideDiffer() {
    Device chest = chest(0.25);
    double w = 30 * 9.80665;
    Effect effect =
        Sensitivities.of(
                Model.of(chest),
                Figure.parse("greatest multiple(push)"),
                List.of(Input.friction("foot")))
            .ranked()
            .get(0);
    assertThat(effect.how()).isEqualTo(Effect.How.AT_LIMIT);
    Effect.Change.Kinked kinked = (Effect.Change.Kinked) effect.change();
    assertThat(kinked.below()).isCloseTo(w / 50, within(1e-7));
    assertThat(kinked.above()).isCloseTo(0, within(1e-7));
  }

  private static Device chest(double mu) {
    return Device.named("chest")
        .point("foot", 0, 0)
        .point("push", 0, 0.8)
        .member("chest", "foot", "push")
        .connect(new ContactBase("foot", "foot", "chest", "ground", Direction.UP, 0.4, mu, mu))
        .weight("weight", "chest", "push", 30)
        .force("push", "chest", "push", Vector.of(50, 0))
        .build();
  }

  /** A crank on a dry pin: the hand holds and lifts W·a ± r·sin φ·R, R = W + P. */
  @Test
  void dryPin() {
    double r = 0.02;
    double mu = 0.2;
    double a = 0.3;
    double l = 0.5;
    Device beam =
        Device.named("beam")
            .point("pivot", 0, 0)
            .point("pail", -a, 0)
            .point("hand", l, 0)
            .member("beam", "pail", "pivot", "hand")
            .connect(new Pin("pivot", "pivot", List.of("beam", "ground"), r, mu))
            .weight("pail", "beam", "pail", 10)
            .sought("hand", "beam", "hand", Direction.DOWN)
            .build();
    double w = 98.0665;
    double circle = r * mu / Math.sqrt(1 + mu * mu);
    // P·l = W·a + ρ·(W + P)
    double most = w * (a + circle) / (l - circle);
    double byCircle = (w + most) / (l - circle);
    limit(beam, "greatest hand", Input.radius("pivot"), byCircle * circle / r);
    limit(
        beam, "greatest hand", Input.friction("pivot"), byCircle * r * Math.pow(1 + mu * mu, -1.5));
    limit(beam, "greatest hand", Input.x("hand"), -most / (l - circle));
    limit(beam, "greatest hand", Input.mass("pail"), 9.80665 * (a + circle) / (l - circle));
  }

  /** A hoist over one sheave that loses a share: the hand pulls W/η. */
  @Test
  void tackle() {
    double eta = 0.96;
    Device hoist =
        Device.named("hoist")
            .point("load", 0.1, 0)
            .point("sheave", 0, 3)
            .point("hand", -0.1, 1)
            .joint("load")
            .joint("hand")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("hand", "hand"),
                        Stop.sheave("ground", "sheave", 0.1, Turn.CLOCKWISE),
                        Stop.end("load", "load")),
                    eta,
                    Reeving.Hauling.RAISING))
            .weight("load", "load", "load", 10)
            .sought("hand", "hand", "hand", Direction.DOWN)
            .build();
    double w = 98.0665;
    solved(hoist, "hand", Input.mass("load"), 9.80665 / eta);
    solved(hoist, "hand", Input.efficiency("rope"), -w / (eta * eta));
    solved(hoist, "rope.end tension", Input.efficiency("rope"), 0);
    // half a turn on the sheave, and both straight parts upright
    solved(hoist, "rope.length", Input.y("sheave"), 2);
    solved(hoist, "rope.length", Input.radius("rope", "sheave"), Math.PI);
  }
}
