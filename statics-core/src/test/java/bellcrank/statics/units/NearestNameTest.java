package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
  private static final List<String> PARTS =
      List.of("hinge", "hanger", "ram", "grip", "rope", "rape");

  @ParameterizedTest
  @CsvSource({
    "hinge, hinge",
    "HINGE, hinge",
    "hing, hinge",
    "hinges, hinge",
    "hunge, hinge",
    "ihnge, hinge",
    "hnige, hinge",
    "hagner, hanger",
    "ra, ram",
    "grpi, grip",
    "arm, ram",
    "hixxer, ''",
    "hxngxr, hanger",
    "rxxm, ''",
    "pulley, ''"
  })
  void isAtMostAThirdOfTheLettersAway(String wrong, String nearest) {
    assertThat(NearestName.of(wrong, PARTS).orElse("")).isEqualTo(nearest);
  }

  @Test
  void isTheFirstOfEquallyNearNames() {
    assertThat(NearestName.of("repe", PARTS)).contains("rope");
    assertThat(NearestName.all("repe", PARTS)).containsExactly("rope", "rape");
    assertThat(NearestName.of("re", List.of("ra", "be"))).contains("ra");
  }

  @Test
  void isNoneWithWhichItHasNoLetterInCommon() {
    assertThat(NearestName.of("r", List.of("a", "b"))).isEmpty();
    assertThat(NearestName.of("r", List.of("ra", "R"))).contains("R");
  }

  @Test
  void prefersTheNearerOfTwoThatAreNear() {
    assertThat(NearestName.of("crossbar", List.of("crosstar2", "crossba"))).contains("crossba");
  }

  @Test
  void isNoneAmongNone() {
    assertThat(NearestName.of("hinge", List.of())).isEmpty();
    assertThat(NearestName.of("", List.of("hinge"))).isEmpty();
  }
}
