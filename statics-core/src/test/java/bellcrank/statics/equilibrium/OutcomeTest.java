package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static bellcrank.statics.equilibrium.Si.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** How the question of balance comes out, in words of physics. */
class OutcomeTest {

  private static DeviceBuilder seesaw() {
    return Device.named("plank on a trestle")
        .point("left", -2, 0)
        .point("middle", 0, 0)
        .point("right", 1, 0)
        .member("plank", "left", "middle", "right")
        .pin("trestle", "middle", "plank", "ground");
  }

  private static DeviceBuilder beam() {
    return Device.named("press-house lintel")
        .point("A", 0, 0)
        .point("B", 2, 0)
        .point("C", 4, 0)
        .member("beam", "A", "B", "C")
        .force("load", "beam", "B", Vector.of(30, -100));
  }

  @Test
  void aBeamOnPinAndRollerIsInBalanceWhateverTheLoads() {
    Balance balance =
        Balance.of(
            beam()
                .pin("pin", "A", "beam", "ground")
                .roller("roller", "C", "beam", "ground", Direction.UP)
                .build());
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalance());
    assertThat(balance.outcome().words()).isEqualTo("in balance");
    assertThat(balance.freedoms()).isEmpty();
    assertThat(balance.undetermined()).isEmpty();
    assertThat(balance.violations()).isEmpty();
    assertThat(balance.redundancy()).isZero();
    assertThat(balance.residual()).isLessThan(1e-15);
    assertThat(balance.condition()).isBetween(1.0, 100.0);
    assertThat(balance.nearCritical()).isEmpty();
    assertThat(number(balance, "pin.x")).isCloseTo(-30, within(1e-12));
    assertThat(number(balance, "roller")).isCloseTo(50, within(1e-12));
  }

  @Test
  void aHeavierLeftSideTurnsThePlankCounterClockwise() {
    Balance balance =
        Balance.of(seesaw().force("child", "plank", "left", Vector.of(0, -200)).build());
    assertThat(balance.outcome())
        .isInstanceOfSatisfying(
            Outcome.NoBalance.class,
            none -> {
              BodyMotion motion = none.driven().motions().get(0);
              assertThat(motion.body()).isEqualTo("plank");
              assertThat(motion.turning()).isPositive();
              assertThat(motion.centre().orElseThrow().distance(balance.device().point("middle")))
                  .isLessThan(1e-9);
              assertThat(motion.velocityAt(balance.device().point("left")).y()).isNegative();
              assertThat(none.driven().words())
                  .isEqualTo("plank turns counter-clockwise about middle");
            });
    assertThat(balance.outcome().words()).isEqualTo("no balance");
  }

  @Test
  void aHeavierRightSideTurnsItClockwise() {
    Balance balance =
        Balance.of(seesaw().force("child", "plank", "right", Vector.of(0, -200)).build());
    assertThat(((Outcome.NoBalance) balance.outcome()).driven().words())
        .isEqualTo("plank turns clockwise about middle");
  }

  @Test
  void withoutBalanceNoReactionIsTold() {
    Balance balance =
        Balance.of(seesaw().force("child", "plank", "left", Vector.of(0, -200)).build());
    assertThat(reason(balance, "trestle.y")).isEqualTo(Answer.Reason.NO_BALANCE);
    assertThat(reason(balance, "group(plank).x")).isEqualTo(Answer.Reason.NO_BALANCE);
    assertThat(balance.reactions().get(0).x()).isInstanceOf(Answer.Unanswered.class);
    assertThat(balance.reactions().get(0).size()).isInstanceOf(Answer.Unanswered.class);
    assertThat(balance.violations()).isEmpty();
    assertThat(balance.nearCritical()).isEmpty();
  }

  @Test
  void loadsThatDoNoWorkOnTheFreeMotionLeaveItInBalanceForJustThem() {
    Balance balance =
        Balance.of(
            seesaw()
                .force("child", "plank", "left", Vector.of(0, -200))
                .force("parent", "plank", "right", Vector.of(0, -400))
                .build());
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalanceForTheseLoads());
    assertThat(balance.outcome().words()).isEqualTo("in balance for these loads");
    assertThat(number(balance, "trestle.y")).isCloseTo(600, within(1e-9));
    assertThat(balance.freedoms()).hasSize(1);
    assertThat(balance.freedoms().get(0).words())
        .startsWith("plank turns ")
        .contains("about middle")
        .endsWith("or the reverse");
    assertThat(balance.freedoms().get(0).critical()).isFalse();
    assertThat(number(balance, "freedoms")).isEqualTo(1);
    assertThat(balance.answer("outcome")).isEqualTo(new Answer.Words("in balance for these loads"));
  }

  @Test
  void withoutLoadsEverythingRestsAndNothingIsCarried() {
    Balance balance = Balance.of(seesaw().build());
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalanceForTheseLoads());
    assertThat(number(balance, "trestle.size")).isZero();
    assertThat(reason(balance, "trestle.direction")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(balance.residual()).isZero();
  }

  @Test
  void aSoughtForceHoldsButIsNoRestraintForMobility() {
    Balance balance =
        Balance.of(
            seesaw()
                .force("child", "plank", "left", Vector.of(0, -200))
                .sought("hand", "plank", "right", Direction.DOWN)
                .build());
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalance());
    assertThat(number(balance, "hand")).isCloseTo(400, within(1e-9));
    assertThat(balance.freedoms()).isEmpty();
    assertThat(balance.mobility().freedoms()).hasSize(1);
    assertThat(balance.mobility().criticalCount()).isZero();
    assertThat(Mobility.of(balance.device()).freedoms()).hasSize(1);
  }

  @Test
  void aSlideIsToldFromATurn() {
    Balance balance =
        Balance.of(
            Device.named("sledge")
                .point("P", 0, 0)
                .member("sledge", "P")
                .connect(new Guide("rail", "P", "sledge", "ground", Direction.RIGHT))
                .force("push", "sledge", "P", Vector.of(-5, -1))
                .build());
    Freedom driven = ((Outcome.NoBalance) balance.outcome()).driven();
    assertThat(driven.words()).isEqualTo("sledge slides left");
    assertThat(driven.motions().get(0).turning()).isZero();
    assertThat(driven.motions().get(0).centre()).isEmpty();
    assertThat(balance.freedoms().get(0).words())
        .startsWith("sledge slides ")
        .endsWith("or the reverse");
  }

  @Test
  void aSlopingSlideTellsItsAngle() {
    Balance balance =
        Balance.of(
            Device.named("sledge on a slope")
                .point("P", 0, 0)
                .member("sledge", "P")
                .connect(new Guide("rail", "P", "sledge", "ground", Direction.from(-4, -3)))
                .force("weight", "sledge", "P", Vector.of(0, -1))
                .build());
    assertThat(((Outcome.NoBalance) balance.outcome()).driven().words())
        .isEqualTo("sledge slides left and down at 36.87° to the level");
  }

  @Test
  void manyMovingBodiesAreListedShortly() {
    DeviceBuilder chain = Device.named("chain").point("P0", 0, 0);
    for (int i = 1; i <= 7; i++) {
      chain.point("P" + i, i, 0).member("link " + i, "P" + (i - 1), "P" + i);
      chain.pin("pin " + i, "P" + (i - 1), i == 1 ? "ground" : "link " + (i - 1), "link " + i);
    }
    chain.roller("end", "P7", "link 7", "ground", Direction.UP);
    chain.roller("side", "P1", "link 1", "ground", Direction.UP);
    chain.force("push", "link 4", "P4", Vector.of(0, 1));
    Balance balance = Balance.of(chain.build());
    assertThat(((Outcome.NoBalance) balance.outcome()).driven().words())
        .contains(", ")
        .contains(" and 2 more bodies move along");
  }

  @Test
  void twoSupportsTooManyLeaveWhatTheyShareUndetermined() {
    Balance balance =
        Balance.of(
            beam()
                .pin("pin", "A", "beam", "ground")
                .roller("roller", "C", "beam", "ground", Direction.UP)
                .roller("prop", "B", "beam", "ground", Direction.UP)
                .build());
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalance());
    assertThat(balance.redundancy()).isEqualTo(1);
    assertThat(number(balance, "redundancy")).isEqualTo(1);
    assertThat(balance.undetermined())
        .extracting(Object::toString)
        .containsExactlyInAnyOrder("pin.y", "roller.normal", "prop.normal");
    assertThat(reason(balance, "pin.y")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(reason(balance, "pin.size")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(reason(balance, "pin.direction")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(number(balance, "pin.x"))
        .as("the part along the beam is fixed")
        .isCloseTo(-30, within(1e-12));
    assertThat(number(balance, "group(beam).y"))
        .as("and so is the sum")
        .isCloseTo(100, within(1e-12));
    Reaction pin = balance.reactions().get(0);
    assertThat(pin.x()).isInstanceOf(Answer.Value.class);
    assertThat(pin.size()).isInstanceOf(Answer.Unanswered.class);
  }

  @Test
  void everyKindOfUnknownHasAName() {
    Balance balance =
        Balance.of(
            beam()
                .clamp("left", "A", "beam", "ground")
                .connect(new Guide("right", "C", "beam", "ground", Direction.RIGHT))
                .connect(Pin.smooth("both", "B", List.of("beam", "ground")))
                .line("rope", End.of("beam", "C"), End.of("ground", "A"))
                .load(
                    new Sought(
                        "hand", Sought.Want.COMPONENTS, "beam", Optional.of("B"), Optional.empty()))
                .build());
    assertThat(balance.undetermined())
        .extracting(Object::toString)
        .containsExactly(
            "left.x",
            "left.y",
            "left.couple",
            "right.normal",
            "right.couple",
            "both.x",
            "both.y",
            "rope.tension",
            "hand");
  }

  @Test
  void unknownsOfRareKindsHaveNamesToo() {
    Device device =
        Device.named("over-tied")
            .point("A", 0, 0)
            .point("B", 2, 0)
            .point("C", 4, 0)
            .point("post", 2, 3)
            .member("left", "A", "B")
            .member("right", "B", "C")
            .pin("three", "B", "left", "right", "ground")
            .clamp("a", "A", "left", "ground")
            .clamp("c", "C", "right", "ground")
            .connect(new Contact("toe", "A", "left", "ground", Direction.UP, 0.3, 0.3))
            .connect(
                new Wrap(
                    "band",
                    Stop.end("left", "A"),
                    new Stop(Stop.Kind.POST, "ground", "post", 0.2, Turn.CLOCKWISE),
                    Stop.end("right", "C"),
                    0.3,
                    0))
            .sought("hand", "left", "A", Direction.UP)
            .build();
    assertThat(Balance.of(device).undetermined())
        .extracting(Object::toString)
        .containsExactly(
            "three.x on left",
            "three.y on left",
            "three.x on right",
            "three.y on right",
            "three.x on ground",
            "three.y on ground",
            "a.x",
            "a.y",
            "a.couple",
            "c.x",
            "c.y",
            "c.couple",
            "toe.normal",
            "toe.friction",
            "band.tension",
            "band.end tension",
            "hand");
  }

  @Test
  void aFixedEffortIsNotAmongWhatIsOpen() {
    Balance balance =
        Balance.of(
            beam()
                .pin("pin", "A", "beam", "ground")
                .roller("roller", "C", "beam", "ground", Direction.UP)
                .roller("prop", "B", "beam", "ground", Direction.UP)
                .point("stone", 9, 9)
                .joint("stone")
                .force("weight", "stone", "stone", Vector.of(1, -2))
                .load(
                    new Sought(
                        "hand",
                        Sought.Want.COMPONENTS,
                        "stone",
                        Optional.of("stone"),
                        Optional.empty()))
                .build());
    assertThat(balance.undetermined())
        .extracting(Object::toString)
        .containsExactlyInAnyOrder("pin.y", "roller.normal", "prop.normal");
    assertThat(number(balance, "hand.y")).isCloseTo(2, within(1e-12));
  }

  @Test
  void frictionInAPinLeavesARange() {
    Balance balance =
        Balance.of(
            beam()
                .connect(new Pin("pin", "A", List.of("beam", "ground"), 0.02, 0.2))
                .roller("roller", "C", "beam", "ground", Direction.UP)
                .build());
    assertThat(balance.outcome())
        .isInstanceOfSatisfying(
            Outcome.NotDecided.class, one -> assertThat(one.parts()).containsExactly("pin"));
    assertThat(balance.outcome().words()).isEqualTo("not decided");
    assertThat(reason(balance, "roller")).isEqualTo(Answer.Reason.NOT_DECIDED);
    assertThat(balance.violations()).isEmpty();
  }

  @Test
  void aCaseChangesTheLoadsOnly() {
    Device device =
        beam()
            .pin("pin", "A", "beam", "ground")
            .roller("roller", "C", "beam", "ground", Direction.UP)
            .loadCase(new LoadCase("calm", Map.of(), 1))
            .loadCase(new LoadCase("gust", Map.of("load", 2.0), 1.5))
            .build();
    assertThat(number(Balance.of(device), "roller")).isCloseTo(50, within(1e-12));
    Balance gust = Balance.of(device, "gust");
    assertThat(number(gust, "roller")).isCloseTo(150, within(1e-12));
    assertThat(gust.loadCase().name()).isEqualTo("gust");
    Assertions.assertThatThrownBy(() -> Balance.of(device, "guts"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("gust");
  }

  /** The reciprocal of so small a number is none. */
  @Test
  void theLeastForceDrivesASeesawAsAnyOtherDoes() {
    Balance balance =
        Balance.of(seesaw().force("feather", "plank", "right", Vector.of(0, -1e-310)).build());
    assertThat(balance.outcome())
        .isInstanceOfSatisfying(
            Outcome.NoBalance.class,
            none -> assertThat(none.driven().motions().get(0).turning()).isNegative());
  }
}
