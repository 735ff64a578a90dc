package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.CourseEnd;
import bellcrank.statics.motion.Curve;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The samples that move, against closed forms worked by hand over the whole travel. */
class TravelSamplesTest {

  private static final double CLOSE = 1e-8;

  private static TravelAnswer answer(String sample) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(sample));
    assertThat(FileAnswer.of(sample, file, Optional.empty(), List.of()).holds()).isTrue();
    return TravelAnswer.of(file, file.device().cases().get(0)).orElseThrow();
  }

  private static int column(TravelAnswer answer, String ask) {
    List<String> asks = answer.curves().stream().map(one -> one.ask().text()).toList();
    assertThat(asks).contains(ask);
    return asks.indexOf(ask);
  }

  /** In all rows where there is a value; there is one in all but a few. */
  private static void follows(
      TravelAnswer answer, String ask, int without, DoubleUnaryOperator form) {
    int column = column(answer, ask);
    int values = 0;
    for (TravelAnswer.Row row : answer.rows()) {
      if (row.answers().get(column) instanceof Answer.Value value) {
        double wanted = form.applyAsDouble(row.drive());
        assertThat(value.si())
            .as(ask + " at " + row.drive())
            .isCloseTo(wanted, within(CLOSE * Math.max(1, Math.abs(wanted))));
        values++;
      }
    }
    assertThat(values).isEqualTo(answer.rows().size() - without);
  }

  private static CourseEnd begins(TravelAnswer answer) {
    return ((Course) answer.travel()).least();
  }

  private static CourseEnd ends(TravelAnswer answer) {
    return ((Course) answer.travel()).greatest();
  }

  @Test
  void theLuffingRopeCarriesAsMuchAsItIsLong() {
    TravelAnswer answer = answer("barrel-luffing");
    follows(answer, "rope.tension", 0, d -> 110 * (5 + d));
    follows(answer, "rope.length", 0, d -> 5 + d);
    follows(answer, "point(tip).y", 0, d -> (61 - (5 + d) * (5 + d)) / 12);
    follows(answer, "advantage.ideal", 0, d -> 6 / (5 + d));
    follows(answer, "advantage", 0, d -> 600 / 110.0 / (5 + d));
    // the jib lies level, its tip furthest out, where the rope is √61 long
    Curve.Sample out = answer.curves().get(column(answer, "point(tip).x")).greatest().orElseThrow();
    assertThat(out.value()).isCloseTo(5, within(1e-9));
    assertThat(out.drive()).isCloseTo(Math.sqrt(61) - 5, within(1e-4));
  }

  @Test
  void aTogglePressNeedsLessAndLessUntilItsDeadCentre() {
    TravelAnswer answer = answer("press-toggle-closing");
    assertThat(ends(answer).why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(ends(answer).drive()).isCloseTo(0.2, within(1e-9));
    DoubleUnaryOperator tan = s -> Math.sqrt(Math.max(0, 1 / (0.8 + s) / (0.8 + s) - 1));
    int column = column(answer, "hand");
    for (TravelAnswer.Row row : answer.rows()) {
      double hand = ((Answer.Value) row.answers().get(column)).si();
      // at the dead centre the hand's force falls with an infinite slope
      double room = row.drive() > 0.199 ? 0.1 : 1e-5;
      assertThat(hand).isCloseTo(2000 * tan.applyAsDouble(row.drive()), within(room));
    }
    follows(answer, "advantage", 1, s -> 1 / (2 * tan.applyAsDouble(s)));
    Curve advantage = answer.curves().get(column(answer, "advantage"));
    assertThat(answer.isOpen(advantage, advantage.greatest().orElseThrow())).isTrue();
    assertThat(answer.isOpen(advantage, advantage.least().orElseThrow())).isFalse();
  }

  @Test
  void tongsCloseUntilTheyTouchAndOpenUntilTheirChainsAreInLine() {
    TravelAnswer answer = answer("tongs-closing");
    double drawn = Math.atan2(3, 4);
    assertThat(begins(answer).why()).isEqualTo(CourseEnd.Why.MEETS);
    assertThat(begins(answer).drive()).isCloseTo(Math.asin(0.25) - drawn, within(1e-9));
    assertThat(ends(answer).why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(ends(answer).drive()).isCloseTo(Math.asin(0.75) - drawn, within(1e-9));
    follows(answer, "point(right tip).x", 0, d -> 0.4 * Math.sin(drawn + d));
    int column = column(answer, "pull");
    for (TravelAnswer.Row row : answer.rows()) {
      double a = drawn + row.drive();
      double chain = Math.tan(Math.asin(Math.min(1, 4 / 3.0 * Math.sin(a))));
      double pull = ((Answer.Value) row.answers().get(column)).si();
      double room = row.drive() > 0.2 ? 0.1 : 1e-6;
      assertThat(pull).isCloseTo(1000 / (Math.tan(a) + chain), within(room));
    }
  }

  @Test
  void aScissorJackPullsHarderTheFlatterItLies() {
    TravelAnswer answer = answer("scissor-jack");
    DoubleUnaryOperator half = d -> 0.2 + d / 2;
    DoubleUnaryOperator height = d -> Math.sqrt(0.0625 - Math.pow(half.applyAsDouble(d), 2));
    follows(
        answer, "screw.tension", 0, d -> 3000 * half.applyAsDouble(d) / height.applyAsDouble(d));
    follows(answer, "screw.length", 0, d -> 0.4 + d);
    follows(answer, "point(top).y", 0, d -> 2 * height.applyAsDouble(d));
    follows(answer, "upper left.compression", 0, d -> 375 / height.applyAsDouble(d));
  }

  @Test
  void aCounterweightBalancesTheLidHalfWayUp() {
    TravelAnswer answer = answer("trough-lid-counterweight");
    follows(answer, "hand", 0, a -> 15 - 22.5 * Math.tan(a));
    follows(answer, "hinge.y", 0, a -> 195 + 22.5 * Math.tan(a));
    // a body that can only turn about a pin is balanced where its centre is highest or lowest
    Curve.Sample top = answer.curves().get(column(answer, "centre.y")).greatest().orElseThrow();
    assertThat(top.drive()).isCloseTo(Math.atan(2 / 3.0), within(1e-6));
  }
}
