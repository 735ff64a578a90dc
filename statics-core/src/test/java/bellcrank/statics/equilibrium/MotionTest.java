package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What still moves, which way and how fast against one another. */
class MotionTest {

  /** Two gates side by side, 5 m from corner to corner. */
  private static DeviceBuilder gates() {
    return Device.named("two gates")
        .point("a", 0, 0)
        .point("b", 1.5, 0)
        .point("c", 3, 4)
        .point("d", 2, 4)
        .member("left", "a", "b")
        .member("right", "c", "d")
        .pin("left hinge", "a", "left", "ground")
        .pin("right hinge", "c", "right", "ground");
  }

  @Test
  void independentMotionsAreToldOneByOne() {
    List<Freedom> freedoms = Balance.of(gates().build()).freedoms();
    assertThat(freedoms).hasSize(2);
    assertThat(freedoms)
        .extracting(freedom -> freedom.motions().get(0).body())
        .containsExactlyInAnyOrder("left", "right");
    for (Freedom freedom : freedoms) {
      assertThat(freedom.motions()).as("only what moves is listed").hasSize(1);
      assertThat(freedom.critical()).isFalse();
      assertThat(freedom.driven()).isFalse();
      BodyMotion motion = freedom.motions().get(0);
      // the fastest is of speed 1, of a turn its speed at the distance of the size
      assertThat(Math.abs(motion.turning()) * 5).isCloseTo(1, within(1e-9));
      Point hinge = motion.body().equals("left") ? Point.ORIGIN : Point.of(3, 4);
      assertThat(motion.centre().orElseThrow().distance(hinge)).isLessThan(1e-9);
      assertThat(motion.velocityAt(hinge).norm()).isLessThan(1e-9);
      assertThat(motion.velocityAt(hinge.plus(Vector.of(2, 0))).y())
          .isCloseTo(2 * motion.turning(), within(1e-9));
    }
  }

  @Test
  void loadsDriveBothAtOnce() {
    Balance balance =
        Balance.of(
            gates()
                .load(new Couple("push", "left", 3))
                .load(new Couple("pull", "right", -6))
                .build());
    Freedom driven = ((Outcome.NoBalance) balance.outcome()).driven();
    assertThat(driven.driven()).isTrue();
    assertThat(driven.words())
        .isEqualTo("left turns counter-clockwise about a and right turns clockwise about c");
    double left = driven.motions().get(0).turning();
    double right = driven.motions().get(1).turning();
    assertThat(right * 5).isCloseTo(-1, within(1e-9));
    assertThat(left).as("the weaker couple drives less").isCloseTo(-right / 2, within(1e-9));
    // nothing takes up the couples: all of them is left over
    assertThat(balance.residual()).isCloseTo(6.0 / 9, within(1e-12));
  }

  @Test
  void whatNothingTakesUpIsTheResidual() {
    Device device =
        Device.named("falling stone")
            .point("P", 0, 0)
            .joint("P")
            .force("weight", "P", "P", Vector.of(0, -7))
            .build();
    assertThat(Balance.of(device).residual()).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0, slides right",
    "-1, 0, slides left",
    "0, 1, slides up",
    "0, -1, slides down",
    "3, 4, slides right and up at 53.13° to the level",
    "-3, 4, slides left and up at 53.13° to the level",
    "4, -3, slides right and down at 36.87° to the level"
  })
  void aSlideTellsItsDirection(double x, double y, String words) {
    Device device =
        Device.named("sledge")
            .point("P", 0, 0)
            .member("sledge", "P")
            .connect(new Guide("rail", "P", "sledge", "ground", Direction.from(x, y)))
            .force("push", "sledge", "P", Vector.of(x, y))
            .build();
    Freedom driven = ((Outcome.NoBalance) Balance.of(device).outcome()).driven();
    assertThat(driven.words()).isEqualTo("sledge " + words);
    Vector velocity = driven.motions().get(0).velocity();
    assertThat(Math.max(Math.abs(velocity.x()), Math.abs(velocity.y()))).isCloseTo(1, within(1e-9));
  }

  @Test
  void aCentreWithoutANameIsToldByItsPlace() {
    Device device =
        Device.named("swing")
            .point("A", -1, 0)
            .point("B", 1, 0)
            .point("left", -2, 1)
            .point("right", 2, 1)
            .member("seat", "A", "B")
            .strut("s1", End.of("seat", "A"), End.of("ground", "left"))
            .strut("s2", End.of("seat", "B"), End.of("ground", "right"))
            .force("push", "seat", "A", Vector.of(5, 0))
            .build();
    Balance balance = Balance.of(device);
    Freedom driven = ((Outcome.NoBalance) balance.outcome()).driven();
    assertThat(driven.words()).isEqualTo("seat turns clockwise about a point at (0 m, -1.000 m)");
    assertThat(driven.motions().get(0).centre().orElseThrow().distance(Point.of(0, -1)))
        .isLessThan(1e-9);
    assertThat(driven.words(device, UnitSystem.US)).contains("a point at (0 ft, -3.281 ft)");
  }

  private static Freedom chain(int links) {
    DeviceBuilder chain = Device.named("chain").point("P0", 0, 0);
    for (int i = 1; i <= links; i++) {
      chain.point("P" + i, i, 0).member("link" + i, "P" + (i - 1), "P" + i);
      if (i > 1) {
        chain.clamp("clamp" + i, "P" + (i - 1), "link" + (i - 1), "link" + i);
      }
    }
    chain.connect(new Guide("rail", "P0", "link1", "ground", Direction.RIGHT));
    return Balance.of(chain.build()).freedoms().get(0);
  }

  @Test
  void fewBodiesAreAllListed() {
    assertThat(chain(1).words()).matches("link1 slides (right|left), or the reverse");
    assertThat(chain(2).words()).matches("link1 and link2 slide (right|left), or the reverse");
    assertThat(chain(3).words()).matches("link1, link2 and link3 slide (right|left), or the .*");
    assertThat(chain(5).words()).startsWith("link1, link2, link3, link4 and link5 slide ");
  }

  @Test
  void manyBodiesAreCounted() {
    assertThat(chain(6).words())
        .matches("link1, link2, link3, link4 and 2 more bodies slide (right|left), or the reverse");
    assertThat(chain(6).motions()).hasSize(6);
  }

  @Test
  void jointsAndLoadedPinsMoveToo() {
    Device device =
        Device.named("two props without a foot")
            .point("L", -3, 0)
            .point("R", 3, 0)
            .point("H", 0, 4)
            .point("K", 0, 6)
            .member("left", "L", "H")
            .member("right", "R", "H")
            .joint("K")
            .pin("foot", "L", "left", "ground")
            .pin("head", "H", "left", "right")
            .roller("rail", "R", "right", "ground", Direction.UP)
            .strut("one", End.of("K", "K"), End.of("left", "H"))
            .strut("two", End.of("K", "K"), End.of("left", "L"))
            .force("load", "head", "H", Vector.of(0, -80))
            .build();
    Freedom driven = ((Outcome.NoBalance) Balance.of(device).outcome()).driven();
    assertThat(driven.motions())
        .extracting(BodyMotion::body)
        .containsExactly("left", "right", "K", "head");
    BodyMotion left = driven.motions().get(0);
    BodyMotion knot = driven.motions().get(2);
    BodyMotion head = driven.motions().get(3);
    assertThat(left.turning()).as("it falls to the right").isNegative();
    assertThat(head.turning()).isZero();
    assertThat(head.reference().distance(Point.of(0, 4))).isLessThan(1e-9);
    assertThat(knot.reference().distance(Point.of(0, 6))).isLessThan(1e-9);
    // all three are fixed to the left prop
    assertThat(left.velocityAt(Point.of(0, 4)).minus(head.velocity()).norm()).isLessThan(1e-9);
    assertThat(left.velocityAt(Point.of(0, 6)).minus(knot.velocity()).norm()).isLessThan(1e-9);
    assertThat(driven.words()).contains("K moves right and down").contains("head slides right");
  }

  @Test
  void aCriticalShapeWithinALargeDeviceIsFoundToo() {
    DeviceBuilder large = Device.named("row of frames with a toggle");
    for (int i = 0; i < 6; i++) {
      large
          .point("a" + i, 3.1 * i, 0)
          .point("b" + i, 3.1 * i + 1, 0.7)
          .member("frame" + i, "a" + i, "b" + i)
          .pin(
              "pin" + i,
              i == 0 ? "a0" : "b" + (i - 1),
              "frame" + i,
              i == 0 ? "ground" : "frame" + (i - 1))
          .roller("roller" + i, "a" + i, "frame" + i, "ground", Direction.from(1, 2 + i));
    }
    DeviceBuilder toggle =
        large
            .point("x", 0, 5)
            .point("y", 1, 5)
            .point("z", 3, 5)
            .member("one", "x", "y")
            .member("two", "y", "z")
            .pin("px", "x", "one", "ground")
            .pin("py", "y", "one", "two")
            .pin("pz", "z", "two", "ground")
            .force("push", "one", "y", Vector.of(0, -10));
    Balance balance = Balance.of(toggle.build());
    assertThat(balance.outcome()).isInstanceOf(Outcome.NoBalance.class);
    assertThat(balance.redundancy()).isEqualTo(2);
    assertThat(balance.freedoms()).hasSize(2);
    assertThat(balance.freedoms())
        .anySatisfy(
            freedom ->
                assertThat(freedom.motions())
                    .extracting(BodyMotion::body)
                    .containsExactly("one", "two"));
  }

  @Test
  void aLooseBodyBesideALeverLeavesItsAdvantage() {
    Device device =
        Device.named("lever and a loose stone")
            .point("hinge", 0, 0)
            .point("toe", -0.5, 0)
            .point("grip", 2, 0)
            .point("stone", 9, 9)
            .member("stone", "stone")
            .member("lever", "toe", "hinge", "grip")
            .member("other stone", "stone")
            .pin("hinge", "hinge", "lever", "ground")
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .sought("ram", "lever", "toe", Direction.DOWN)
            .advantage("hand", "ram")
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalanceForTheseLoads());
    assertThat(balance.mobility().freedoms()).hasSize(7);
    assertThat(balance.advantage().orElseThrow())
        .isInstanceOfSatisfying(
            Advantage.Ratio.class,
            ratio -> {
              assertThat(ratio.ideal()).isCloseTo(4, within(1e-9));
              assertThat(ratio.actual()).isCloseTo(4, within(1e-9));
            });
  }
}
