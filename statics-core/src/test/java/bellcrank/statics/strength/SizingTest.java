package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.SOFTWOOD;
import static bellcrank.statics.strength.Tried.STEEL;
import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Bar;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A sizing is a value. */
class SizingTest {

  private static final Bar HALF = new Bar("a", "b");
  private static final Section POST = Profiles.round(60 * MM).section();

  @Test
  void aBarMayDifferFromItsMember() {
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE).with("lever", BAR, STEEL).with("lever", HALF, POST, SOFTWOOD);

    assertThat(sizing.sized("lever")).contains(new Sized(BAR, STEEL));
    assertThat(sizing.sized("lever", HALF)).contains(new Sized(POST, SOFTWOOD));
    assertThat(sizing.sized("lever", new Bar("b", "c"))).contains(new Sized(BAR, STEEL));
    assertThat(sizing.sized("other", HALF)).isEmpty();
    assertThat(sizing.parts()).containsExactly("lever");
    assertThat(sizing.bars()).isEqualTo(Map.of("lever", List.of(HALF)));
    assertThat(sizing.method()).isEqualTo(Method.ALLOWABLE);
  }

  @Test
  void statedAgainReplaces() {
    Sizing once =
        Sizing.of(Method.ALLOWABLE).with("lever", BAR, STEEL).with("lever", HALF, BAR, STEEL);
    Sizing again = once.with("lever", POST, STEEL).with("lever", HALF, POST, STEEL);

    assertThat(again.sized("lever")).contains(new Sized(POST, STEEL));
    assertThat(again.sized("lever", HALF)).contains(new Sized(POST, STEEL));
    assertThat(once.sized("lever")).as("a copy was made").contains(new Sized(BAR, STEEL));
  }

  @Test
  void equalIfAllIsEqual() {
    Rating rating = Rating.of("chain", 100, "tag");
    Sizing one = Sizing.of(Method.ALLOWABLE).with("lever", BAR, STEEL).with(rating);
    Sizing same = Sizing.of(Method.ALLOWABLE).with("lever", BAR, STEEL).with(rating);

    assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(one.details()).containsExactly(rating);
    assertThat(one)
        .isNotEqualTo(Sizing.of(Method.RESISTANCE).with("lever", BAR, STEEL).with(rating))
        .isNotEqualTo(one.with(rating))
        .isNotEqualTo(one.with("other", BAR, STEEL))
        .isNotEqualTo(one.with("lever", HALF, BAR, STEEL))
        .isNotEqualTo("a sizing");
  }
}
