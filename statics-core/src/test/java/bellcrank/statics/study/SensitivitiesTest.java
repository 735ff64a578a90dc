package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Profiles;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class SensitivitiesTest {

  private static Device press() {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("grip", 1.6, 0)
        .member("lever", "hinge", "ram", "grip")
        .pin("hinge", "hinge", "lever", "ground")
        .force("hand", "lever", "grip", Vector.of(0, -220))
        .sought("ram", "lever", "ram", Direction.UP)
        .build();
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

  private static List<String> words(Device device, String ask, Input... inputs) {
    return Sensitivities.of(Model.of(device), Figure.parse(ask), List.of(inputs)).words();
  }

  @Test
  void theyAreToldFromTheOneThatMattersMost() {
    assertThat(
            words(
                press(),
                "ram",
                Input.y("grip"),
                Input.size("hand"),
                Input.x("grip"),
                Input.direction("hand"),
                Input.x("ram")))
        .containsExactly(
            "1 % more of size of hand raises ram by 1.00 % (14.1 N); this input matters most.",
            "1 mm more of x of ram lowers ram by 0.400 % (5.63 N).",
            "1 mm more of x of grip raises ram by 0.0625 % (0.880 N).",
            "A change of y of grip has no effect on ram.",
            "A change of direction of hand has no effect on ram.");
  }

  @Test
  void theyAreToldInTheUnitsOfTheReader() {
    // 0.1 in moves the ram by 0.00254 m of 0.25 m, and 1408 N are 316.5 lbf
    assertThat(
            Sensitivities.of(
                    Model.of(press()),
                    Figure.parse("ram"),
                    List.of(Input.x("ram"), Input.size("hand")))
                .words(UnitSystem.US))
        .containsExactly(
            "1 % more of size of hand raises ram by 1.00 % (3.17 lbf); this input matters most.",
            "0.1 in more of x of ram lowers ram by 1.02 % (3.22 lbf).");
  }

  /** A share of an angle would depend on where angles are counted from. */
  @Test
  void aDirectionIsToldWithoutAShare() {
    Device bracket = press().toBuilder().force("side", "lever", "grip", Vector.of(-220, 0)).build();
    assertThat(words(bracket, "resultant.direction", Input.size("side")))
        .containsExactly("1 % more of size of side lowers resultant.direction by 0.286 deg.");
  }

  @Test
  void belowZeroSizesAreTold() {
    assertThat(words(press(), "hinge.y", Input.size("hand"), Input.x("ram")))
        .containsExactly(
            "1 % more of size of hand lowers hinge.y by 11.9 N (1.00 % of its size); this input"
                + " matters most.",
            "1 mm more of x of ram raises hinge.y by 5.63 N (0.474 % of its size).");
    Device braked =
        Device.named("braked")
            .point("hinge", 0, 0)
            .point("tip", 2, 0)
            .member("arm", "hinge", "tip")
            .pin("hinge", "hinge", "arm", "ground")
            .load(new Couple("brake", "arm", -12))
            .sought("hold", "arm", "tip", Direction.UP)
            .build();
    assertThat(words(braked, "hold", Input.moment("brake"), Input.turn(List.of("tip"), "hinge")))
        .containsExactly(
            "1 % more of moment of brake raises hold by 1.00 % (0.0600 N); this input matters most.",
            "A change of turn of tip about hinge has no effect on hold.");
  }

  @Test
  void elasticitiesAndRatesAreNumbers() {
    Sensitivities found =
        Sensitivities.of(
            Model.of(press()),
            Figure.parse("ram"),
            List.of(Input.size("hand"), Input.distance("ram", "hinge"), Input.y("ram")));
    assertThat(found.answer()).isEqualTo(new FigureAnswer.Is(1408, Dimension.FORCE));
    Effect first = found.ranked().get(0);
    assertThat(found.elasticity(first).orElseThrow()).isCloseTo(1, within(1e-12));
    Effect second = found.ranked().get(1);
    assertThat(found.elasticity(second).orElseThrow()).isCloseTo(-1, within(1e-12));
    assertThat(found.elasticity(found.ranked().get(2))).isEmpty();
    assertThat(second.how().words()).isEqualTo("through the solved equations");
  }

  @Test
  void whatIsUncertainIsRankedBySpreadToo() {
    Uncertain hand = Uncertain.within(Input.size("hand"), 5);
    Uncertain ram = Uncertain.normal(Input.x("ram"), 0.25, 0.01);
    Sensitivities found =
        Sensitivities.ofUncertain(Model.of(press()), Figure.parse("ram"), List.of(hand, ram));
    assertThat(found.ranked()).extracting(Effect::input).containsExactly(hand.input(), ram.input());
    assertThat(found.rankedBySpread())
        .extracting(Effect::input)
        .containsExactly(ram.input(), hand.input());
    assertThat(found.bySpread(found.rankedBySpread().get(0)).orElseThrow())
        .isCloseTo(56.32, within(1e-9));
    assertThat(found.bySpread(found.ranked().get(0)).orElseThrow()).isCloseTo(32, within(1e-9));
  }

  @Test
  void aTieOfLimitsIsToldForBothSides() {
    assertThat(words(chest(0.25), "greatest multiple(push)", Input.friction("foot")))
        .containsExactly(
            "1 % more of friction of foot leaves greatest multiple(push) as it is, 1 % less lowers"
                + " greatest multiple(push) by 1.00 % (0.0147): different to either side.");
  }

  @Test
  void withoutAnAnswerThereIsNoEffect() {
    Device slack =
        Device.named("post")
            .point("foot", 0, 0)
            .point("top", 0, 2)
            .member("post", "foot", "top")
            .pin("foot", "foot", "post", "ground")
            .force("push", "post", "top", Vector.of(1, 0))
            .build();
    assertThat(words(slack, "foot.x", Input.x("top")))
        .containsExactly(
            "What x of top does to foot.x cannot be told: there is no answer: the device is not in"
                + " balance, so it carries no reactions.");
    assertThat(words(slack, "foot.x", Input.x("top"), Input.size("push")))
        .as("of several inputs without a rate none matters most")
        .hasSize(2)
        .allSatisfy(one -> assertThat(one).endsWith("so it carries no reactions."));
  }

  @Test
  void aBalanceThatDoesNotLastHasNoRate() {
    Device upright =
        Device.named("post")
            .point("foot", 0, 0)
            .point("top", 0, 2)
            .member("post", "foot", "top")
            .pin("foot", "foot", "post", "ground")
            .force("push", "post", "top", Vector.of(0, -10))
            .build();
    Effect effect =
        Sensitivities.of(Model.of(upright), Figure.parse("foot.y"), List.of(Input.x("top")))
            .ranked()
            .get(0);
    assertThat(effect.change()).isInstanceOf(Effect.Change.None.class);
    assertThat(effect.how()).isEqualTo(Effect.How.NOT_FOUND);
    assertThat(
            Sensitivities.of(Model.of(upright), Figure.parse("foot.y"), List.of(Input.y("top")))
                .ranked()
                .get(0)
                .rate()
                .orElseThrow())
        .isZero();
  }

  @Test
  void aCountHasNoRate() {
    assertThat(words(press(), "freedoms", Input.x("ram")))
        .containsExactly(
            "What x of ram does to freedoms cannot be told: a count does not change by a little.");
  }

  @Test
  void whatIsFoundByDifferencesSaysSo() {
    Input own =
        Input.of(
            "share of the hand",
            Dimension.NUMBER,
            model -> Input.size("hand").value(model) / 220,
            (model, value) -> Input.size("hand").put(model, 220 * value));
    assertThat(words(press(), "ram", own))
        .containsExactly(
            "1 % more of share of the hand raises ram by 1.00 % (14.1 N) (found by differences).");
  }

  /** The first failure of a lever in bending grows with its strength, and no force does. */
  @Test
  void strengthMattersForTheFirstFailureOnly() {
    Material steel = MaterialTable.rows().get(0).at(0.01);
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE).with("lever", Profiles.rectangle(0.02, 0.04).section(), steel);
    Model model = Model.of(press()).with(sizing);
    Input yield = Input.strength(Material.Strength.YIELD, "lever");
    Effect none = Sensitivities.of(model, Figure.parse("ram"), List.of(yield)).ranked().get(0);
    assertThat(none.change()).isEqualTo(new Effect.Change.Smooth(0));
    assertThat(none.how()).isEqualTo(Effect.How.SOLVED);
    Sensitivities failure =
        Sensitivities.of(
            model, Figure.firstFailure(Variation.of("hand")), List.of(yield, Input.x("grip")));
    for (Effect effect : failure.ranked()) {
      assertThat(effect.how()).isEqualTo(Effect.How.DIFFERENCES);
    }
    assertThat(failure.elasticity(failure.ranked().get(0)).orElseThrow())
        .isCloseTo(1, within(1e-6));
  }

  @Test
  void withoutASizingTheFirstFailureIsALimit() {
    Sensitivities found =
        Sensitivities.of(
            Model.of(chest(0.2)),
            Figure.firstFailure(Variation.of("push")),
            List.of(Input.friction("foot")));
    Effect effect = found.ranked().get(0);
    assertThat(effect.how()).isEqualTo(Effect.How.AT_LIMIT);
    assertThat(effect.rate().orElseThrow()).isCloseTo(30 * 9.80665 / 50, within(1e-11));
    assertThat(found.words().get(0)).startsWith("1 % more of friction of foot raises multiple of");
  }

  @Test
  void whatTheModelDoesNotHaveIsRefused() {
    Model model = Model.of(press());
    assertThatThrownBy(() -> Sensitivities.of(model, Figure.parse("ram"), List.of(Input.x("rum"))))
        .isInstanceOf(ModelException.class);
    assertThatThrownBy(
            () -> Sensitivities.of(model, Figure.parse("verdict"), List.of(Input.x("ram"))))
        .isInstanceOf(ModelException.class);
  }

  /**
   * By moments about the rest: 100 N on the pin, 1 m before the rest, and 200 N, 0.5 m beyond it,
   * leave nothing for the pin; each metre that the outer load is moved is 200 N·m, so 200 N at 1 m.
   */
  @Test
  void aForceThatIsNoneGrowsWhicheverWayItsCauseChanges() {
    Device plank =
        Device.named("plank")
            .point("pin", 0.1, 0.3)
            .point("rest", 1.1, 0.3)
            .point("out", 1.6, 0.3)
            .member("plank", "pin", "rest", "out")
            .pin("pin", "pin", "plank", "ground")
            .roller("rest", "rest", "plank", "ground", Direction.UP)
            .force("near", "plank", "pin", Vector.of(0, -100))
            .force("far", "plank", "out", Vector.of(0, -200))
            .build();
    Sensitivities effects =
        Sensitivities.of(Model.of(plank), Figure.parse("pin"), List.of(Input.x("out")));
    Effect effect = effects.ranked().get(0);
    assertThat(effect.how()).isEqualTo(Effect.How.SOLVED);
    Effect.Change.Kinked bent = (Effect.Change.Kinked) effect.change();
    assertThat(bent.above()).isCloseTo(200, within(1e-9));
    assertThat(bent.below()).isCloseTo(-200, within(1e-9));
    assertThat(effects.words())
        .containsExactly(
            "1 mm more of x of out raises pin by 0.200 N, 1 mm less raises pin by 0.200 N: different"
                + " to either side.");
  }

  /**
   * Pinned at both ends, a level plank leaves the thrust along it open and fixes what is across:
   * 300·1/4 at the far end, −300·1/4² more for each metre that end is moved out. Once that end is
   * higher, the thrust has a part upwards, and statics no longer fixes it.
   */
  @Test
  void whatIsFixedInThisPoseOnlyHasNoRate() {
    Device plank =
        Device.named("plank between walls")
            .point("near", 0, 0)
            .point("sack", 1, 0)
            .point("far", 4, 0)
            .member("plank", "near", "sack", "far")
            .pin("near", "near", "plank", "ground")
            .pin("far", "far", "plank", "ground")
            .force("load", "plank", "sack", Vector.of(0, -300))
            .build();
    Model model = Model.of(plank);
    Figure across = Figure.parse("far.y on plank");
    Effect out = new EffectFinder(model, across).effect(Input.x("far"));
    assertThat(out.how()).isEqualTo(Effect.How.SOLVED);
    assertThat(out.rate().orElseThrow()).isCloseTo(-300.0 / 16, within(1e-9));
    Effect up = new EffectFinder(model, across).effect(Input.y("far"));
    assertThat(up.change()).isInstanceOf(Effect.Change.None.class);
    assertThat(up.how()).isEqualTo(Effect.How.NOT_FOUND);
  }
}
