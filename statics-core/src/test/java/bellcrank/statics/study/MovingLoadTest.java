package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Side;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.study.InfluenceLine.Extreme;
import bellcrank.statics.study.MovingLoad.Leg;
import bellcrank.statics.study.Train.Wheel;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Loads that move: influence lines against closed forms, and trains of wheels. */
class MovingLoadTest {

  /** A plank of 6 m on two rests, the right end 2 m beyond the second. */
  private static DeviceBuilder plank() {
    return Device.named("plank over the trough")
        .point("heel", 0, 0)
        .point("rest", 6, 0)
        .point("tip", 8, 0)
        .member("plank", "heel", "rest", "tip")
        .pin("heel", "heel", "plank", "ground")
        .roller("rest", "rest", "plank", "ground", Direction.UP)
        .force("barrel", "plank", "rest", Vector.of(0, -2000));
  }

  private static InfluenceLine line(MovingLoad load, String ask) {
    return (InfluenceLine) load.influence(ask);
  }

  private static MovingLoad onPlank() {
    return MovingLoad.of(plank().build(), "barrel", "heel", "tip");
  }

  /** By moments about the other rest; textbook knowledge, from memory. */
  @Test
  void reactionsOfABeam() {
    InfluenceLine heel = line(onPlank(), "heel.y on plank");
    assertThat(heel.unit(0, Side.AFTER)).isCloseTo(1, within(1e-12));
    assertThat(heel.unit(3, Side.AFTER)).isCloseTo(0.5, within(1e-12));
    assertThat(heel.unit(8, Side.BEFORE)).isCloseTo(-2.0 / 6, within(1e-12));
    assertThat(heel.greatest())
        .isEqualTo(new Extreme(heel.greatest().value(), 0, Optional.empty()));
    assertThat(heel.greatest().value()).isCloseTo(2000, within(1e-9));
    assertThat(heel.least().value()).isCloseTo(-2000 / 3.0, within(1e-9));
    assertThat(heel.least().place()).isEqualTo(8);
  }

  /** Moment at the middle of a span L: L/4 there, linear to both rests; from memory. */
  @Test
  void momentAtTheMiddleOfTheSpan() {
    InfluenceLine moment = line(onPlank(), "plank.moment at 3 m of heel–rest");
    assertThat(moment.unit(3, Side.BEFORE)).isCloseTo(6.0 / 4, within(1e-12));
    assertThat(moment.unit(1.5, Side.BEFORE)).isCloseTo(6.0 / 8, within(1e-12));
    assertThat(moment.unit(6, Side.BEFORE)).isCloseTo(0, within(1e-12));
    assertThat(moment.unit(8, Side.BEFORE)).isCloseTo(-1, within(1e-12));
    assertThat(moment.jumpsAt(3)).isFalse();
    assertThat(moment.greatest().place()).isCloseTo(3, within(1e-12));
    assertThat(moment.areaAbove()).isCloseTo(36.0 / 8, within(1e-9));
    assertThat(moment.areaBelow()).isCloseTo(-1, within(1e-9));
  }

  /** Shear at x = 2 m: down to −x/L before the cut, up to 1 − x/L after it; from memory. */
  @Test
  void shearJumpsAtTheCut() {
    InfluenceLine shear = line(onPlank(), "plank.shear at 2 m of heel–rest");
    assertThat(shear.jumpsAt(2)).isTrue();
    assertThat(shear.unit(2, Side.BEFORE)).isCloseTo(-1.0 / 3, within(1e-12));
    assertThat(shear.unit(2, Side.AFTER)).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(shear.greatest()).extracting(Extreme::side).isEqualTo(Optional.of(Side.AFTER));
    assertThat(shear.least().value()).isCloseTo(-2000 / 3.0, within(1e-9));
    assertThat(shear.least().place()).isIn(2.0, 8.0);
  }

  /** A beam on three rests with a hinge: beyond it the load hangs on the next beam. */
  @Test
  void overAHinge() {
    Device walkway =
        Device.named("walkway")
            .point("a", 0, 0)
            .point("b", 4, 0)
            .point("hinge", 5, 0)
            .point("c", 8, 0)
            .member("long", "a", "b", "hinge")
            .member("short", "hinge", "c")
            .pin("a", "a", "long", "ground")
            .roller("b", "b", "long", "ground", Direction.UP)
            .pin("hinge", "hinge", "long", "short")
            .roller("c", "c", "short", "ground", Direction.UP)
            .force("cart", "long", "a", Vector.of(0, -500))
            .build();
    MovingLoad cart =
        MovingLoad.of(
            walkway,
            walkway.cases().get(0),
            Pose.DRAWN,
            "cart",
            List.of(new Leg("long", "a", "hinge"), new Leg("short", "hinge", "c")));
    InfluenceLine rest = line(cart, "b.normal");
    assertThat(rest.unit(4, Side.AFTER)).isCloseTo(1, within(1e-12));
    assertThat(rest.unit(5, Side.AFTER)).isCloseTo(1.25, within(1e-12));
    assertThat(rest.jumpsAt(5)).isFalse();
    assertThat(rest.unit(6.5, Side.AFTER)).isCloseTo(0.625, within(1e-12));
    assertThat(rest.greatest().place()).isEqualTo(5);
    InfluenceLine far = line(cart, "c.normal");
    assertThat(far.unit(2, Side.AFTER)).isZero();
    assertThat(far.unit(8, Side.BEFORE)).isCloseTo(1, within(1e-12));
  }

  /** What other loads do is in the answer, not in the line. */
  @Test
  void otherLoadsAreTheBase() {
    Device device = plank().force("sack", "plank", "tip", Vector.of(0, -300)).build();
    InfluenceLine heel = line(MovingLoad.of(device, "barrel", "heel", "tip"), "heel.y on plank");
    assertThat(heel.base()).isCloseTo(-100, within(1e-9));
    assertThat(heel.value(3, Side.AFTER)).isCloseTo(900, within(1e-9));
    MovingLoad load = MovingLoad.of(device, "barrel", "heel", "tip");
    assertThat(load.balance(3).number("heel.y on plank").orElseThrow())
        .isCloseTo(900, within(1e-9));
  }

  /** A crooked member: the branch carries the load only while it is on it. */
  @Test
  void aLoadOnOneBranch() {
    Device post =
        Device.named("post with two arms")
            .point("foot", 0, 0)
            .point("head", 0, 3)
            .point("left", -1, 3)
            .point("right", 2, 3)
            .member(
                new bellcrank.statics.device.Member(
                    "post",
                    List.of(),
                    List.of(
                        new bellcrank.statics.device.Bar("foot", "head"),
                        new bellcrank.statics.device.Bar("left", "head"),
                        new bellcrank.statics.device.Bar("head", "right")),
                    List.of(),
                    1))
            .clamp("foot", "foot", "post", "ground")
            .force("bucket", "post", "left", Vector.of(0, -100))
            .build();
    MovingLoad bucket = MovingLoad.of(post, "bucket", "left", "right");
    InfluenceLine arm = line(bucket, "post.moment at 0.5 m of head–right");
    assertThat(arm.unit(1, Side.AFTER)).isCloseTo(0, within(1e-12));
    assertThat(arm.unit(1.5, Side.AFTER)).isCloseTo(0, within(1e-12));
    assertThat(arm.unit(3, Side.BEFORE)).isCloseTo(-1.5, within(1e-12));
    InfluenceLine foot = line(bucket, "post.moment at 0 m of foot–head");
    assertThat(Math.abs(foot.unit(3, Side.BEFORE))).isCloseTo(2, within(1e-12));
  }

  @Test
  void whatHasNoLineSaysWhy() {
    Device stiff = plank().roller("third", "tip", "plank", "ground", Direction.UP).build();
    MovingLoad load = MovingLoad.of(stiff, "barrel", "heel", "tip");
    assertThat(load.influence("heel.y on plank"))
        .isInstanceOfSatisfying(
            Influence.None.class,
            none -> assertThat(none.why().reason()).isEqualTo(Answer.Reason.UNDETERMINED));
    Device pulled = plank().force("wind", "plank", "tip", Vector.of(400, 0)).build();
    assertThat(MovingLoad.of(pulled, "barrel", "heel", "tip").influence("heel.size on plank"))
        .isInstanceOfSatisfying(
            Influence.None.class,
            none -> assertThat(none.why().explanation()).contains("no sum of forces"));
  }

  /** Two wheels, 800 N and 200 N, 2 m apart: the heavy one at the middle, the other at L/12. */
  @Test
  void trainOfTwoWheels() {
    MovingLoad load = MovingLoad.of(plank().build(), "barrel", "heel", "rest");
    InfluenceLine moment = line(load, "plank.moment at 3 m of heel–rest");
    Train cart = new Train(List.of(new Wheel(800, 0), new Wheel(200, 2)));
    Train.Passage passage = cart.greatest(moment);
    assertThat(passage.at().value()).isCloseTo(800 * 1.5 + 200 * 0.5, within(1e-9));
    assertThat(passage.wheels()).containsExactly(3.0, 1.0);
    assertThat(cart.turned().greatest(moment).wheels()).containsExactly(5.0, 3.0);
    assertThat(cart.value(moment, 7, Side.AFTER)).isCloseTo(200 * 0.5, within(1e-9));
    assertThat(cart.least(moment).at().value()).isCloseTo(0, within(1e-9));
  }

  /**
   * Equal wheels at the shear's jump: just after it for the greatest, just before for the least.
   */
  @Test
  void trainAtAJump() {
    MovingLoad load = MovingLoad.of(plank().build(), "barrel", "heel", "rest");
    InfluenceLine shear = line(load, "plank.shear at 2 m of heel–rest");
    Train cart = Train.of(2, 600, 1);
    // leading wheel past the cut at 3 m, the other just past it: 1/2 and 2/3
    Train.Passage greatest = cart.greatest(shear);
    assertThat(greatest.at().value()).isCloseTo(600 * (0.5 + 2.0 / 3), within(1e-9));
    assertThat(greatest.at().side()).contains(Side.AFTER);
    assertThat(greatest.wheels()).containsExactly(3.0, 2.0);
    Train.Passage least = cart.least(shear);
    assertThat(least.at().value()).isCloseTo(-600 * (1.0 / 3 + 1.0 / 6), within(1e-9));
    assertThat(least.at().side()).contains(Side.BEFORE);
  }

  @Test
  void mistakesNameTheirPart() {
    Device device = plank().build();
    assertThatThrownBy(() -> MovingLoad.of(device, "barel", "heel", "tip"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("barel");
    assertThatThrownBy(() -> MovingLoad.of(device, "barrel", "heel", "heel"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("apart");
    assertThatThrownBy(() -> onPlank().balance(8.1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("0 to 8.0");
    assertThatThrownBy(() -> new Train(List.of(new Wheel(5, 1))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("0 for the leading wheel");
    assertThatThrownBy(() -> new Train(List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least one");
  }

  /** Between the rests nothing acts beyond the second one; further out the arm is the moment. */
  @Test
  void whereAnAnswerIsNothingButRoundingItIsStraight() {
    Device device =
        Device.named("beam over the cellar")
            .point("wall", 0, 0)
            .point("post", 3, 0)
            .point("end", 8, 0)
            .member("beam", "wall", "post", "end")
            .pin("wall", "wall", "beam", "ground")
            .roller("post", "post", "beam", "ground", Direction.UP)
            .force("cart", "beam", "post", Vector.of(0, -900))
            .build();
    MovingLoad load = MovingLoad.of(device, "cart", "wall", "end");
    InfluenceLine moment = line(load, "beam.moment at 3 m of wall–post");
    assertThat(moment.unit(1.1, Side.BEFORE)).isCloseTo(0, within(1e-12));
    assertThat(moment.unit(7, Side.BEFORE)).isCloseTo(-4, within(1e-12));
    assertThat(moment.pieces().size()).isLessThan(4);
  }

  /** An even answer of zero all along, of which balances tell rounding. */
  @Test
  void anAnswerThatIsZeroAllAlongIsALine() {
    Device device =
        Device.named("leaning plank")
            .point("heel", 0.1, 0.3)
            .point("rest", 5.7, 3.1)
            .member("plank", "heel", "rest")
            .pin("heel", "heel", "plank", "ground")
            .roller("rest", "rest", "plank", "ground", Direction.UP)
            .force("barrel", "plank", "rest", Vector.of(0, -700))
            .build();
    InfluenceLine push = line(MovingLoad.of(device, "barrel", "heel", "rest"), "heel.x on plank");
    assertThat(push.greatest().value()).isCloseTo(0, within(1e-9));
    assertThat(push.pieces().size()).isLessThan(4);
  }
}
