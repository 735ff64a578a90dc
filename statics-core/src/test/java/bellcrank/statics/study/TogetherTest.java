package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One number of several parts. */
class TogetherTest {

  private static final double GRAVITY = 9.80665;

  /** A trestle of two legs of 3 along and 4 up, a pin at its top, on two rough feet. */
  private static Device trestle(double left, double right) {
    return Device.named("trestle")
        .point("left", -3, 0)
        .point("top", 0, 4)
        .point("right", 3, 0)
        .member("left leg", "left", "top")
        .member("right leg", "right", "top")
        .pin("top", "top", "left leg", "right leg")
        .connect(new Contact("heel", "left", "left leg", "ground", Direction.UP, left, left))
        .connect(new Contact("toe", "right", "right leg", "ground", Direction.UP, right, right))
        .weight("basket", "left leg", "top", 80)
        .build();
  }

  /** A beam on two rests with a cask of 50 kg in each third, 1 m and 2 m from its left end. */
  private static Device beam() {
    return Device.named("beam")
        .point("wall", 0, 0)
        .point("near", 1, 0)
        .point("far", 2, 0)
        .point("post", 3, 0)
        .member("beam", "wall", "near", "far", "post")
        .pin("wall", "wall", "beam", "ground")
        .roller("post", "post", "beam", "ground", Direction.UP)
        .weight("near cask", "beam", "near", 50)
        .weight("far cask", "beam", "far", 50)
        .force("left hand", "beam", "near", Vector.of(0, 30))
        .force("right hand", "beam", "far", Vector.of(0, 30))
        .build();
  }

  @Test
  void itIsPutIntoAllOfThem() {
    Model model = Model.of(trestle(0.8, 0.8));
    Input both = Input.parse("friction of [heel, toe]");
    assertThat(both.value(model)).isEqualTo(0.8);
    assertThat(both.dimension()).isEqualTo(Dimension.NUMBER);
    Model other = both.put(model, 0.6);
    assertThat(Input.friction("heel").value(other)).isEqualTo(0.6);
    assertThat(Input.friction("toe").value(other)).isEqualTo(0.6);
    assertThat(Input.together(List.of(Input.friction("heel"), Input.friction("toe"))))
        .isEqualTo(both)
        .hasToString("friction of [heel, toe]");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mass of [near cask, far cask]",
        "size of [left hand, right hand]",
        "direction of [left hand, right hand]",
        "y of [near, far, \"in, at\"]",
        "yield strength of [beam, post]",
      })
  void theTextIsReadAgain(String text) {
    assertThat(Input.parse(text).text()).isEqualTo(text);
    assertThat(Input.parse(Input.parse(text).text())).isEqualTo(Input.parse(text));
  }

  @Test
  void ofOneItIsThatOne() {
    assertThat(Input.parse("friction of [heel]")).isEqualTo(Input.friction("heel"));
    assertThat(Input.together(List.of(Input.gravity()))).isEqualTo(Input.gravity());
  }

  /** A trestle holds from a friction of 3/4 on at both feet, whichever of them is the smoother. */
  @Test
  void samplesDrawItOnce() {
    Model model = Model.of(trestle(0.8, 0.8));
    Input heel = Input.friction("heel");
    Input toe = Input.friction("toe");
    double half = 0.5;
    Uncertain both = Uncertain.uniform(Input.together(List.of(heel, toe)), 0.65, 0.85);
    Chance together =
        Sampling.of(model, List.of(both), List.of())
            .with(Happening.givesWay())
            .run(4000, 1)
            .chances()
            .get(0);
    assertThat(together.share()).isCloseTo(half, within(0.03));
    List<Uncertain> apart =
        List.of(Uncertain.uniform(heel, 0.65, 0.85), Uncertain.uniform(toe, 0.65, 0.85));
    Chance either =
        Sampling.of(model, apart, List.of())
            .with(Happening.givesWay())
            .run(4000, 1)
            .chances()
            .get(0);
    assertThat(either.share()).isCloseTo(1 - half * half, within(0.03));
  }

  @Test
  void ratesAreThoseOfAllOfThem() {
    Model model = Model.of(beam());
    Figure post = Figure.parse("post");
    Input casks = Input.parse("mass of [near cask, far cask]");
    Effect effect = Sensitivities.of(model, post, List.of(casks)).ranked().get(0);
    assertThat(effect.how()).isEqualTo(Effect.How.SOLVED);
    // a third of one and two thirds of the other
    assertThat(effect.rate().orElseThrow()).isCloseTo(GRAVITY, within(1e-12));
    Input hands = Input.parse("size of [left hand, right hand]");
    assertThat(Sensitivities.of(model, post, List.of(hands)).ranked().get(0).rate().orElseThrow())
        .isCloseTo(-1, within(1e-12));
    assertThat(Sensitivities.of(model, post, List.of(Input.parse("y of [near, far]"))).words())
        .containsExactly("A change of y of [near, far] has no effect on post.");
    ToleranceBox box = ToleranceBox.of(model, List.of(Uncertain.within(casks, 5)), post);
    assertThat(box.how()).isEqualTo(ToleranceBox.How.MONOTONE);
    assertThat(box.greatest().orElseThrow().si()).isCloseTo(55 * GRAVITY - 30, within(1e-9));
  }

  @Test
  void aCoordinateIsMovedByAMillimetre() {
    Model model = Model.of(beam());
    Input level = Input.parse("y of [wall, near, far, post]");
    Sensitivities effects =
        Sensitivities.of(model, Figure.parse("post"), List.of(level, Input.x("post")));
    assertThat(effects.words().get(0)).startsWith("1 mm more of x of post lowers");
  }

  @Test
  void itMustBeStatedAlike() {
    Model model = Model.of(trestle(0.8, 0.5));
    assertThatThrownBy(() -> Input.parse("friction of [heel, toe]").value(model))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "friction of [heel, toe]: value is 0.8 at the first, another at friction of toe; wanted:"
                + " one number that is stated alike at each of them");
    assertThatThrownBy(() -> Input.parse("friction of [heel, tow]").value(model))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("the nearest is \"toe\"");
    Model alike = Model.of(trestle(0.8, 0.8));
    List<Uncertain> overlapping =
        List.of(
            Uncertain.within(Input.friction("heel"), 0.1),
            Uncertain.within(Input.parse("friction of [heel, toe]"), 0.1));
    assertThatThrownBy(() -> Sampling.of(alike, overlapping, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("friction of heel: value is");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "friction of []",
        "friction of [heel, ]",
        "friction of [heel, heel]",
        "friction of [heel, toe",
        "distance of [left, right] from top",
        "factor of [basket, hand] in storm",
        "turn of [[left, right]] about top",
      })
  void whatIsNoSuchTextIsRefused(String text) {
    assertThatThrownBy(() -> Input.parse(text)).isInstanceOf(ModelException.class);
  }

  @Test
  void numbersOfDifferentKindsDoNotGoTogether() {
    Input friction = Input.friction("heel");
    for (Input other : List.of(Input.width("toe"), Input.gravity(), friction)) {
      assertThatThrownBy(() -> Input.together(List.of(friction, other)))
          .isInstanceOf(ModelException.class)
          .hasMessageContaining("friction of heel");
    }
    List<Input> reaches = List.of(Input.distance("a", "b"), Input.distance("c", "b"));
    assertThatThrownBy(() -> Input.together(reaches)).isInstanceOf(ModelException.class);
    List<Input> own =
        List.of(
            friction,
            Input.of("friction of mine", Dimension.NUMBER, model -> 1, (model, value) -> model));
    assertThatThrownBy(() -> Input.together(own)).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> Input.together(List.of())).isInstanceOf(ModelException.class);
  }
}
