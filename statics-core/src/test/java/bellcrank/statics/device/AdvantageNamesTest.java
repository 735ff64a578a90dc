package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that a mechanical advantage may state, and what is said of others. */
class AdvantageNamesTest {

  private static final String KINDS =
      "a force, weight, couple on a member, sought force of given direction, sought couple,"
          + " sought mass, strut, line, reeving or screw";

  /** A press with one part of each kind that matters. */
  private static DeviceBuilder press() {
    return Device.named("press")
        .point("heel", 0, 0)
        .point("ram", 1, 0)
        .point("grip", 4, 1)
        .member("lever", "heel", "ram", "grip")
        .pin("hinge", "heel", "lever", "ground")
        .roller("rest", "ram", "lever", "ground", Direction.UP)
        .strut("prop", End.of("lever", "ram"), End.of("ground", "heel"))
        .line("stay", End.of("lever", "grip"), End.of("ground", "heel"))
        .connect(
            new Reeving(
                "hoist",
                List.of(Stop.end("ground", "heel"), Stop.end("lever", "grip")),
                1,
                Reeving.Hauling.IDEAL))
        .connect(
            new Screw("jack", End.of("lever", "grip"), End.of("ground", "heel"), 0.01, 0.02, 0.1))
        .force("hand", "lever", "grip", Vector.of(0, -100))
        .weight("basket", "lever", "grip", 20)
        .load(new Couple("crank", "lever", 5))
        .load(
            new SpreadLoad(
                "sacks", "lever", "heel", "ram", 1, 1, Optional.empty(), SpreadLoad.Per.LENGTH))
        .load(new Spring("coil", End.of("lever", "grip"), End.of("ground", "heel"), 100, 1))
        .load(new TorsionSpring("hair", "lever", "ground", 2, 0.1))
        .sought("cheese", "lever", "ram", Direction.UP)
        .load(
            new Sought(
                "push", Sought.Want.COMPONENTS, "lever", Optional.of("grip"), Optional.empty()))
        .load(new Sought("wrench", Sought.Want.COUPLE, "lever", Optional.empty(), Optional.empty()))
        .load(
            new Sought("ballast", Sought.Want.MASS, "lever", Optional.of("grip"), Optional.empty()))
        .load(
            new Sought(
                "bedding",
                Sought.Want.INTENSITY,
                "lever",
                Optional.of("heel"),
                Optional.of(Direction.UP),
                Optional.of("ram")));
  }

  private static List<Problem> problems(DeviceBuilder device) {
    return catchThrowableOfType(ModelException.class, device::build).problems();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"hand", "basket", "crank", "wrench", "ballast", "prop", "stay", "hoist", "jack"})
  void whatCanWorkIsTaken(String name) {
    assertThatCode(() -> press().advantage(name, "cheese").build()).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(strings = {"hinge", "rest", "sacks", "coil", "hair", "push", "bedding"})
  void aPartOfAnotherKindIsToldWhichKindsAreTaken(String name) {
    String wanted = "another kind of part than \"" + name + "\" is: " + KINDS;
    assertThat(problems(press().advantage(name, "cheese")))
        .containsExactly(new Problem("advantage", "effort", '"' + name + '"', wanted));
    assertThat(problems(press().advantage("hand", name)))
        .containsExactly(new Problem("advantage", "resistance", '"' + name + '"', wanted));
  }

  @ParameterizedTest
  @CsvSource({"hund, hand", "chese, cheese", "joist, hoist"})
  void anUnknownNameIsToldTheNearestThatIsTaken(String name, String near) {
    assertThat(problems(press().advantage(name, "wrench")))
        .containsExactly(
            new Problem(
                "advantage",
                "effort",
                '"' + name + '"',
                KINDS + "; the name of a part; the nearest is \"" + near + '"'));
  }

  @Test
  void aPartOfAnotherKindIsNotTheNearest() {
    // the pin is a letter away, but could not be taken either
    assertThat(problems(press().advantage("hings", "wrench")).get(0).wanted())
        .startsWith(KINDS + "; the name of a part: ballast, basket, cheese, crank, hand");
    assertThat(
            problems(
                    Device.named("bare")
                        .point("heel", 0, 0)
                        .member("lever", "heel")
                        .pin("hinge", "heel", "lever", "ground")
                        .advantage("lever", "hinge"))
                .get(0)
                .wanted())
        .isEqualTo(KINDS + "; the name of a part (there is none)");
  }
}
