package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The short way to a sample's answers tells what the layers below tell. */
final class StandingTest {

  private static Pin dryPin() {
    return new Pin("heel", "heel", List.of("jib", "ground"), 0.02, 0.2);
  }

  private static Model prop(double width) {
    Device prop =
        Device.named("prop")
            .point("foot", 0, 0)
            .point("head", 0.1, 1)
            .member("prop", "foot", "head")
            .connect(
                new ContactBase("base", "foot", "prop", "ground", Direction.UP, width, 0.5, 0.5))
            .force("load", "prop", "head", Vector.of(20, -400))
            .build();
    return Model.of(prop);
  }

  static Stream<Model> models() {
    List<Model> all = new ArrayList<>();
    all.add(Model.of(StudyYard.press()));
    all.add(Model.of(StudyYard.derrick()));
    for (double friction : new double[] {0, 0.2, 0.374, 0.376, 0.6}) {
      all.add(Model.of(StudyYard.ladder(friction)));
    }
    all.add(Model.of(StudyYard.roughLadder()));
    all.add(Input.friction("wall").put(Model.of(StudyYard.roughLadder()), 0.5));
    all.add(Input.mass("picker").put(Model.of(StudyYard.roughLadder()), 2));
    all.add(Model.of(StudyYard.jib()));
    all.add(Input.size("barrel").put(Model.of(StudyYard.jib()), -100));
    all.add(Model.of(StudyYard.jib(dryPin(), true)));
    all.add(Model.of(StudyYard.jib(dryPin(), false)));
    all.add(Model.of(StudyYard.jib(Pin.smooth("heel", "heel", List.of("jib", "ground")), false)));
    all.add(Model.of(plumb()));
    for (double width : new double[] {0.02, 0.5}) {
      all.add(prop(width));
      all.add(prop(width).with(List.of(foundation())));
    }
    return all.stream();
  }

  /** It swings, but its load hangs below the pin. */
  private static Device plumb() {
    return Device.named("plumb rod")
        .point("nail", 0, 1)
        .point("bob", 0, 0)
        .member("rod", "nail", "bob")
        .pin("nail", "nail", "rod", "ground")
        .weight("bob weight", "rod", "bob", 3)
        .build();
  }

  private static Foundation foundation() {
    return new Foundation(
        "base", 0.3, Optional.of(new Presumptive(20_000, "invented")), 0, Optional.empty());
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyAnswerIsThatOfTheFigureItself(Model model) {
    Standing standing = new Standing(model);
    for (Ask ask : Ask.all(model.device())) {
      if (!ask.text().endsWith("line")
          && !ask.text().equals("outcome")
          && !ask.text().equals("verdict")) {
        Figure figure = Figure.of(ask);
        assertThat(standing.answer(figure)).as(ask.text()).isEqualTo(figure.of(model));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void itStandsAsTheVerdictSays(Model model) {
    LoadCase loadCase = model.device().cases().get(0);
    Standing.State state = new Standing(model).state(loadCase);
    Verdict verdict =
        Limits.of(
                model.device(), loadCase, bellcrank.statics.device.Pose.DRAWN, model.foundations())
            .verdict();
    if (verdict instanceof Verdict.DoesNotHold not) {
      boolean mechanism = not.after() == Verdict.After.MECHANISM;
      assertThat(state.words()).isEqualTo(mechanism ? "no balance" : "does not hold");
      assertThat(state.kind()).isEqualTo(Standing.Kind.GIVES_WAY);
      assertThat(state.events()).isEqualTo(not.how().events());
    } else {
      assertThat(state.words()).isEqualTo(verdict.words());
      assertThat(state.kind()).isEqualTo(Standing.Kind.HOLDS);
    }
  }
}
