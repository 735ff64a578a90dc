package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Side;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Normal force, shear force and bending moment where they can be worked by hand. */
class InternalForcesTest {

  private static final double CLOSE = 1e-9;

  /** A cleaver's board on trestles 4 m apart, both ends 1 m out: A 0, L 1, M 3, R 5, B 6. */
  private static DeviceBuilder board() {
    return Device.named("board on trestles")
        .gravity(Vector.of(0, -10))
        .point("A", 0, 0)
        .point("L", 1, 0)
        .point("M", 3, 0)
        .point("R", 5, 0)
        .point("B", 6, 0)
        .member(new Member("board", List.of(), List.of(new Bar("A", "B")), List.of(), 1))
        .pin("L", "L", "board", "ground")
        .roller("R", "R", "board", "ground", Direction.UP);
  }

  private static BarForces bar(DeviceBuilder builder) {
    return Balance.of(builder.build()).internalForces("board").bars().get(0);
  }

  private static String reason(Balance balance, String ask) {
    return ((Answer.Unanswered) balance.answer(ask)).explanation();
  }

  @Test
  void aLoadInTheMiddleBendsByAQuarterOfForceTimesSpan() {
    BarForces bar = bar(board().force("crate", "board", "M", Vector.of(0, -80)));
    // 80 · 4 / 4, and shear is half the load, up on the left part
    assertThat(bar.moment(3, Side.BEFORE)).isCloseTo(80, within(CLOSE));
    assertThat(bar.shear(2, Side.AFTER)).isCloseTo(40, within(CLOSE));
    assertThat(bar.shear(3, Side.BEFORE)).isCloseTo(40, within(CLOSE));
    assertThat(bar.shear(3, Side.AFTER)).isCloseTo(-40, within(CLOSE));
    assertThat(bar.shear(0.5, Side.AFTER)).isZero();
    assertThat(bar.moment(5.5, Side.AFTER)).isZero();
    assertThat(bar.zeros(InsideForce.SHEAR)).containsExactly(0.0, 1.0, 3.0, 5.0, 6.0);
    assertThat(bar.places()).extracting(Place::at).containsExactly(1.0, 3.0, 5.0);
    assertThat(bar.places().get(1).parts()).containsExactly("crate");
    assertThat(bar.places().get(1).points()).containsExactly("M");
    assertThat(bar.length()).isEqualTo(6);
    assertThat(bar.start()).isEqualTo(Point.of(0, 0));
    assertThat(bar.end()).isEqualTo(Point.of(6, 0));
    assertThat(bar.unresolved()).isEmpty();
  }

  @Test
  void ownWeightIsSpreadOverTheBars() {
    // 6 m of 120 N: 20 N/m; supports 60 N each
    BarForces bar = bar(board().load(new Weight("own", "board", Optional.empty(), 12)));
    assertThat(bar.moment(1, Side.BEFORE)).isCloseTo(-10, within(CLOSE));
    assertThat(bar.moment(3, Side.BEFORE)).isCloseTo(-20 * 9 / 2.0 + 60 * 2, within(CLOSE));
    assertThat(bar.shear(1, Side.BEFORE)).isCloseTo(-20, within(CLOSE));
    assertThat(bar.shear(1, Side.AFTER)).isCloseTo(40, within(CLOSE));
    Extremes moments = bar.extremes(InsideForce.MOMENT);
    assertThat(moments.greatest().value()).isCloseTo(30, within(CLOSE));
    assertThat(moments.greatest().at()).isCloseTo(3, within(CLOSE));
    assertThat(moments.least().at()).isCloseTo(1, within(CLOSE));
    assertThat(moments.largest()).isEqualTo(moments.greatest());
    // −10 s² + 60 (s − 1) = 0
    assertThat(bar.zeros(InsideForce.MOMENT)).hasSize(4);
    assertThat(bar.zeros(InsideForce.MOMENT).get(1)).isCloseTo(3 - Math.sqrt(3), within(CLOSE));
  }

  @Test
  void aLoadThatGrowsHasACurveOfThirdDegree() {
    // from 0 at L to 60 N/m at R: total 120, R takes 80, L takes 40; V = 0 at s² = 40·8/60
    BarForces bar =
        bar(
            board()
                .load(
                    new SpreadLoad(
                        "apples",
                        "board",
                        "L",
                        "R",
                        0,
                        60,
                        Optional.of(Direction.DOWN),
                        SpreadLoad.Per.LENGTH)));
    double s = Math.sqrt(40 * 8 / 60.0);
    Peak peak = bar.extremes(InsideForce.MOMENT).greatest();
    assertThat(peak.at()).isCloseTo(1 + s, within(CLOSE));
    assertThat(peak.value()).isCloseTo(40 * s - 15 * s * s * s / 6, within(CLOSE));
    Polynomial moment = bar.pieces().get(1).curve(InsideForce.MOMENT);
    assertThat(moment.origin()).isEqualTo(1);
    assertThat(moment.coefficients().get(3)).isCloseTo(-15 / 6.0, within(CLOSE));
  }

  @Test
  void aCoupleMakesTheMomentJump() {
    DeviceBuilder builder = board().load(new Couple("twist", "board", 60, Optional.of("M")));
    Balance balance = Balance.of(builder.build());
    // R pushes 15 N down on L's other side: L = −15 up … 60 / 4
    BarForces bar = balance.internalForces("board").bars().get(0);
    assertThat(bar.moment(3, Side.BEFORE)).isCloseTo(30, within(CLOSE));
    assertThat(bar.moment(3, Side.AFTER)).isCloseTo(-30, within(CLOSE));
    assertThat(balance.number("board.moment just before 3 m of A–B").orElseThrow())
        .isCloseTo(30, within(CLOSE));
    assertThat(balance.number("board.moment just after 3 m of A–B").orElseThrow())
        .isCloseTo(-30, within(CLOSE));
    assertThat(reason(balance, "board.moment at 3 m of A–B"))
        .isEqualTo("the moment jumps at this place of A–B: ask just before it or just after it");
    assertThat(balance.number("board.shear at 3 m of A–B").orElseThrow())
        .isCloseTo(15, within(CLOSE));
  }

  @Test
  void seenFromTheOtherEndTheOtherSideIsStretched() {
    DeviceBuilder builder =
        board()
            .force("crate", "board", "M", Vector.of(-7, -80))
            .load(new Couple("twist", "board", 60, Optional.of("M")));
    Balance balance = Balance.of(builder.build());
    for (String measure : List.of("normal", "shear", "moment")) {
      double sign = measure.equals("moment") ? -1 : 1;
      double from = balance.number("board." + measure + " at 2 m of A–B").orElseThrow();
      assertThat(balance.number("board." + measure + " at 4 m of B–A").orElseThrow())
          .isCloseTo(sign * from, within(CLOSE));
    }
    assertThat(balance.number("board.moment just after 3 m of B–A").orElseThrow())
        .isCloseTo(
            -balance.number("board.moment just before 3 m of A–B").orElseThrow(), within(CLOSE));
    assertThat(balance.number("board.place of peak moment along B–A").orElseThrow())
        .isCloseTo(
            6 - balance.number("board.place of peak moment along A–B").orElseThrow(),
            within(CLOSE));
  }

  @Test
  void peaksAreToldOfABarOrOfAllBars() {
    Device device =
        Device.named("bell crank")
            .point("hub", 0, 0)
            .point("long", 2, 0)
            .point("short", 0, 0.5)
            .member("crank", "long", "hub", "short")
            .pin("hub", "hub", "crank", "ground")
            .force("pull", "crank", "long", Vector.of(0, -100))
            .sought("rod", "crank", "short", Direction.RIGHT)
            .build();
    Balance balance = Balance.of(device);
    // clockwise 200 N·m; the rod pulls to the left by 400 N
    assertThat(balance.number("rod").orElseThrow()).isCloseTo(-400, within(CLOSE));
    // long arm drawn from right to left: hogging stretches its right-hand side, the upper one
    assertThat(balance.number("crank.peak moment along long–hub").orElseThrow())
        .isCloseTo(200, within(CLOSE));
    assertThat(balance.number("crank.moment at 2 m of long–hub").orElseThrow())
        .isCloseTo(200, within(CLOSE));
    assertThat(balance.number("crank.place of peak moment along long–hub").orElseThrow())
        .isCloseTo(2, within(CLOSE));
    assertThat(balance.number("crank.moment at 0 m of hub–short").orElseThrow())
        .isCloseTo(200, within(CLOSE));
    assertThat(Math.abs(balance.number("crank.peak shear").orElseThrow()))
        .isCloseTo(400, within(CLOSE));
    assertThat(balance.number("crank.peak normal").orElseThrow()).isZero();
    assertThat(Ask.all(device)).contains(Ask.parse("crank.peak moment"));
  }

  /** A post with an arm to the right inside its height, and the force on its tip. */
  @Test
  void anArmThatMeetsThePostInsideABarLoadsOnlyWhatIsBelow() {
    Device device =
        Device.named("post with arm")
            .point("foot", 0, 0)
            .point("knee", 0, 2)
            .point("top", 0, 3)
            .point("tip", 1.5, 2)
            .member(
                new Member(
                    "post",
                    List.of(),
                    List.of(new Bar("foot", "top"), new Bar("knee", "tip")),
                    List.of(),
                    2))
            .clamp("foot", "foot", "post", "ground")
            .force("basket", "post", "tip", Vector.of(0, -200))
            .build();
    Balance balance = Balance.of(device);
    BarForces post = balance.internalForces("post").bar("foot", "top").orElseThrow();
    // the basket stretches the left side of the post: negative for a bar drawn upwards
    assertThat(post.moment(1, Side.AFTER)).isCloseTo(-300, within(CLOSE));
    assertThat(post.normal(1, Side.AFTER)).isCloseTo(-200, within(CLOSE));
    assertThat(post.moment(2, Side.AFTER)).isZero();
    assertThat(post.normal(2.5, Side.AFTER)).isZero();
    assertThat(post.places().get(1).joins()).isTrue();
    assertThat(post.places().get(1).points()).containsExactly("knee");
    assertThat(balance.number("post.moment at 0 m of knee–tip").orElseThrow())
        .isCloseTo(-300, within(CLOSE));
    assertThat(balance.number("post.moment at 0 m of knee–tip each").orElseThrow())
        .isCloseTo(-150, within(CLOSE));
    assertThat(balance.internalForces("post").bar("top", "foot")).isEmpty();
  }

  @Test
  void aRingIsNotToldButItsArmsAre() {
    Device device =
        Device.named("braced bracket")
            .point("O", 0, 0)
            .point("P", 1, 0)
            .point("Q", 0, 1)
            .point("tip", 2, 0)
            .member(
                new Member(
                    "bracket",
                    List.of(),
                    List.of(
                        new Bar("O", "P"),
                        new Bar("P", "Q"),
                        new Bar("Q", "O"),
                        new Bar("P", "tip")),
                    List.of(),
                    1))
            .clamp("O", "O", "bracket", "ground")
            .force("pail", "bracket", "tip", Vector.of(0, -50))
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.number("bracket.moment at 0 m of P–tip").orElseThrow())
        .isCloseTo(-50, within(CLOSE));
    Answer.Unanswered none = (Answer.Unanswered) balance.answer("bracket.shear at 0 m of O–P");
    assertThat(none.reason()).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(none.explanation())
        .isEqualTo(
            "bar O–P is part of a closed ring within bracket, in which statics alone does not tell"
                + " the forces");
    BarForces ring = balance.internalForces("bracket").bars().get(0);
    assertThat(ring.unresolved()).hasValue(none.explanation());
    assertThatThrownBy(() -> ring.moment(0.5, Side.AFTER))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("O–P: moment is not told; wanted: one that is; here bar O–P");
    assertThat(reason(balance, "bracket.peak moment")).contains("closed ring");
  }

  @Test
  void whatEntersBesideTheBarsIsNamed() {
    Balance beside =
        Balance.of(
            board()
                .point("hook", 3, -0.2)
                .force("pail", "board", "hook", Vector.of(0, -50))
                .build());
    assertThat(reason(beside, "board.moment at 2 m of A–B"))
        .isEqualTo(
            "pail acts on board at hook, which is on none of its bars: how its force gets into them"
                + " is not stated");
    Balance nowhere = Balance.of(board().load(new Couple("twist", "board", 60)).build());
    assertThat(reason(nowhere, "board.peak shear"))
        .isEqualTo("twist is a couple on board whose place is not stated");
    // in a case in which it is nothing it does not matter
    Balance without =
        Balance.of(
            board()
                .load(new Couple("twist", "board", 60))
                .loadCase(new LoadCase("still", java.util.Map.of("twist", 0.0), 1))
                .build());
    assertThat(without.number("board.peak shear")).hasValue(0);
    Balance partly =
        Balance.of(
            board()
                .point("out", 7, 0)
                .load(
                    new SpreadLoad(
                        "sacks",
                        "board",
                        "M",
                        "out",
                        5,
                        5,
                        Optional.of(Direction.DOWN),
                        SpreadLoad.Per.LENGTH))
                .build());
    assertThat(reason(partly, "board.peak shear"))
        .startsWith("sacks is spread from M to out, which is not all on bars of board");
  }

  @Test
  void setsOfBarsThatAreNotJoinedAreToldOnlyIfOneIsLoaded() {
    DeviceBuilder builder =
        Device.named("plate with two edges")
            .point("A", 0, 0)
            .point("B", 2, 0)
            .point("C", 0, 1)
            .point("D", 2, 1)
            .member(
                new Member(
                    "plate",
                    List.of(),
                    List.of(new Bar("A", "B"), new Bar("C", "D")),
                    List.of(),
                    1))
            .clamp("A", "A", "plate", "ground");
    Balance one =
        Balance.of(builder.build().toBuilder().force("f", "plate", "B", Vector.of(0, -3)).build());
    assertThat(one.number("plate.moment at 0 m of A–B").orElseThrow()).isCloseTo(-6, within(CLOSE));
    assertThat(one.number("plate.peak moment along C–D")).hasValue(0);
    Balance other =
        Balance.of(builder.build().toBuilder().force("f", "plate", "D", Vector.of(0, -3)).build());
    assertThat(reason(other, "plate.peak moment"))
        .startsWith("not all bars of plate are joined, and more than one set of them is loaded");
  }

  @Test
  void undeterminedForcesLeaveOnlyWhatDependsOnThem() {
    // two pins leave the normal force open, not the bending
    Balance pins = Balance.of(board().pin("B", "B", "board", "ground").build().toBuilder().build());
    assertThat(((Answer.Unanswered) pins.answer("board.moment at 3 m of A–B")).reason())
        .isEqualTo(Answer.Reason.UNDETERMINED);
    Device twoPins =
        Device.named("beam between walls")
            .point("A", 0, 0)
            .point("M", 1, 0)
            .point("B", 2, 0)
            .member("beam", "A", "M", "B")
            .pin("A", "A", "beam", "ground")
            .pin("B", "B", "beam", "ground")
            .force("f", "beam", "M", Vector.of(3, -8))
            .build();
    Balance balance = Balance.of(twoPins);
    assertThat(balance.number("beam.moment at 1 m of A–M").orElseThrow())
        .isCloseTo(4, within(CLOSE));
    assertThat(((Answer.Unanswered) balance.answer("beam.normal at 1 m of A–M")).reason())
        .isEqualTo(Answer.Reason.UNDETERMINED);
    BarForces bar = balance.internalForces("beam").bars().get(0);
    assertThat(bar.unresolved()).isEmpty();
    assertThat(bar.unresolved(InsideForce.NORMAL)).isPresent();
    assertThat(bar.unresolved(InsideForce.SHEAR)).isEmpty();
  }

  @Test
  void withoutBalanceNothingIsTold() {
    Device device =
        Device.named("loose board")
            .point("A", 0, 0)
            .point("B", 1, 0)
            .member("board", "A", "B")
            .force("f", "board", "B", Vector.of(0, -1))
            .build();
    Balance balance = Balance.of(device);
    assertThat(((Answer.Unanswered) balance.answer("board.peak shear")).reason())
        .isEqualTo(Answer.Reason.NO_BALANCE);
    assertThat(balance.internalForces("board").bars().get(0).unresolved())
        .hasValue("the device is not in balance, so it carries no reactions");
    assertThatThrownBy(() -> balance.internalForces("bord"))
        .isInstanceOf(ModelException.class)
        .hasMessage("loose board: member is \"bord\"; wanted: one of: board");
  }

  @Test
  void aSheaveHandsItsForcesOnAtItsCentre() {
    // a rope from the ground below round a sheave at the tip to a winch drum at the left
    DeviceBuilder builder =
        Device.named("jib")
            .point("heel", 0, 0)
            .point("tip", 2, 0)
            .point("below", 2.1, -3)
            .point("back", 0, 0.1)
            .member("jib", "heel", "tip")
            .clamp("heel", "heel", "jib", "ground");
    for (double efficiency : new double[] {1, 0.5}) {
      Device device =
          builder.build().toBuilder()
              .connect(
                  new Reeving(
                      "rope",
                      List.of(
                          Stop.end("ground", "back"),
                          Stop.sheave("jib", "tip", 0.1, Turn.CLOCKWISE),
                          Stop.end("load", "below")),
                      efficiency,
                      Reeving.Hauling.RAISING))
              .joint(new bellcrank.statics.device.Joint("load", "below"))
              .roller("side", "below", "load", "ground", Direction.RIGHT)
              .force("log", "load", "below", Vector.of(0, -100))
              .build();
      Balance balance = Balance.of(device);
      double tension = 100 / efficiency;
      BarForces bar = balance.internalForces("jib").bars().get(0);
      assertThat(bar.normal(1, Side.AFTER)).isCloseTo(-tension, within(CLOSE));
      assertThat(bar.shear(1, Side.AFTER)).isCloseTo(100, within(CLOSE));
      // losses turn the sheave's pin: 0.1 m times the difference of both tensions
      assertThat(bar.moment(2, Side.BEFORE)).isCloseTo(0.1 * (tension - 100), within(CLOSE));
    }
  }

  @Test
  void aSliderEntersWhereItIsInThePose() {
    Device device =
        Device.named("rocker")
            .point("O", 0, 0)
            .point("P", 1, 0)
            .point("end", 3, 0)
            .point("low", 1, -1)
            .member("rocker", "O", "end")
            .member("block", "P", "low")
            .pin("O", "O", "rocker", "ground")
            .connect(new Slot("slot", "P", "block", "rocker", Direction.RIGHT, Sides.TWO))
            .connect(
                new bellcrank.statics.device.Guide(
                    "guide", "P", "block", "ground", Direction.RIGHT))
            .force("f", "rocker", "end", Vector.of(0, -10))
            .sought("hold", "block", "low", Direction.RIGHT)
            .build();
    Pose moved = Pose.DRAWN.with("block", Frame.of(Vector.of(1, 0), 0));
    Balance balance = Balance.of(device, device.cases().get(0), moved);
    BarForces bar = balance.internalForces("rocker").bars().get(0);
    assertThat(bar.moment(2, Side.BEFORE)).isCloseTo(-10, within(CLOSE));
    assertThat(bar.places()).extracting(Place::at).contains(2.0);
    assertThat(bar.moment(1, Side.AFTER)).isCloseTo(-5, within(CLOSE));
    assertThat(Balance.of(device).internalForces("rocker").bars().get(0).moment(1, Side.BEFORE))
        .isCloseTo(-20, within(CLOSE));
    Pose off = Pose.DRAWN.with("block", Frame.of(Vector.of(2.5, 0), 0));
    assertThat(reason(Balance.of(device, device.cases().get(0), off), "rocker.peak moment"))
        .startsWith("slot slides on rocker at a place that is on none of its bars");
  }

  @Test
  void aSoughtIntensityAndCouplePressAlongTheBar() {
    Device device =
        Device.named("sill on earth")
            .point("A", 0, 0)
            .point("M", 1, 0)
            .point("B", 2, 0)
            .member("sill", "A", "M", "B")
            .force("post", "sill", "M", Vector.of(0, -40))
            .load(
                new Sought(
                    "earth",
                    Sought.Want.INTENSITY,
                    "sill",
                    Optional.of("A"),
                    Optional.of(Direction.UP),
                    Optional.of("B")))
            .load(
                new Sought("turn", Sought.Want.COUPLE, "sill", Optional.of("A"), Optional.empty()))
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.number("sill.moment at 1 m of A–M").orElseThrow())
        .isCloseTo(10, within(CLOSE));
    assertThat(balance.number("sill.shear at 0.5 m of M–B").orElseThrow())
        .isCloseTo(-10, within(CLOSE));
  }

  @Test
  void aTorsionSpringSitsAtThePinBetweenItsBodies() {
    Device device =
        Device.named("lid with a spring")
            .point("hinge", 0, 0)
            .point("edge", 2, 0)
            .member("lid", "hinge", "edge")
            .pin("hinge", "hinge", "lid", "ground")
            .load(new TorsionSpring("spring", "lid", "ground", 10, -2))
            .sought("hold", "lid", "edge", Direction.UP)
            .build();
    // the spring turns by 20 N·m counter-clockwise, the hand holds down 10 N
    Balance balance = Balance.of(device);
    assertThat(balance.number("lid.moment at 0 m of hinge–edge").orElseThrow())
        .isCloseTo(-20, within(CLOSE));
  }

  @Test
  void placesBeyondTheBarAreRefused() {
    BarForces bar = bar(board().force("crate", "board", "M", Vector.of(0, -80)));
    assertThatThrownBy(() -> bar.moment(6.1, Side.BEFORE))
        .isInstanceOf(ModelException.class)
        .hasMessage("A–B: place in m is 6.1; wanted: 0 to 6.0, the bar's length");
    assertThatThrownBy(() -> bar.moment(-0.1, Side.BEFORE)).isInstanceOf(ModelException.class);
    assertThat(bar.moment(6, Side.AFTER)).isZero();
    assertThat(bar.moment(0, Side.BEFORE)).isZero();
  }

  /** A peg of 4 m on a mast of 6000 km: the ends of the peg are one place beside the mast. */
  @Test
  void aBarTooShortBesideItsDeviceIsToldToBeSo() {
    Device device =
        Device.named("mast with a peg")
            .point("foot", 0, 0)
            .point("peg", 4, 0)
            .point("top", 0, 6e6)
            .member(
                new Member(
                    "mast",
                    List.of(),
                    List.of(new Bar("foot", "peg"), new Bar("foot", "top")),
                    List.of(),
                    1))
            .clamp("earth", "foot", "mast", "ground")
            .force("barrel", "mast", "top", Vector.of(0, -60))
            .build();
    Balance balance = Balance.of(device);
    assertThat(reason(balance, "mast.peak normal"))
        .isEqualTo(
            "bar foot–peg of mast is too short beside the whole device to tell its ends apart");
    BarForces peg = balance.internalForces("mast").bars().get(0);
    assertThat(peg.length()).isEqualTo(4);
    assertThat(peg.places()).isEmpty();
    assertThat(peg.unresolved()).isPresent();
    BarForces mast = balance.internalForces("mast").bars().get(1);
    assertThat(mast.normal(3e6, Side.AFTER)).isCloseTo(-60, within(CLOSE));
  }
}
