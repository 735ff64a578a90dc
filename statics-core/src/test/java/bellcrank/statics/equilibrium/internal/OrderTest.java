package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Direction;
import org.junit.jupiter.api.Test;

/** Orders of solution that one can find by hand. */
class OrderTest {

  private static DeviceBuilder beam() {
    return Device.named("beam")
        .point("A", 0, 0)
        .point("B", 2, 0)
        .point("C", 5, 1)
        .member("beam", "A", "B", "C");
  }

  @Test
  void pinAndRollerAreSolvedOneByOne() {
    Order order =
        Drawn.of(
                beam()
                    .pin("pin", "A", "beam", "ground")
                    .roller("roller", "B", "beam", "ground", Direction.UP)
                    .build())
            .order();
    assertThat(order.isSquare()).isTrue();
    assertThat(order.blocks).isEqualTo(3);
    assertThat(order.largestBlock).isEqualTo(1);
  }

  @Test
  void threeRollersOfThreeDirectionsNeedOneEquationOfMomentsOnly() {
    // about the crossing of two lines of action only the third force has a moment; then the other
    // two are left in both equations of forces
    Order order =
        Drawn.of(
                beam()
                    .roller("r1", "A", "beam", "ground", Direction.from(1, 3))
                    .roller("r2", "B", "beam", "ground", Direction.from(-1, 2))
                    .roller("r3", "C", "beam", "ground", Direction.from(2, 1))
                    .build())
            .order();
    assertThat(order.isSquare()).isTrue();
    assertThat(order.blocks).isEqualTo(2);
    assertThat(order.largestBlock).isEqualTo(2);
    assertThat(order.blockStart).containsExactly(0, 1, 3);
  }

  @Test
  void aPropTooManyIsUnderDetermined() {
    Drawn drawn =
        Drawn.of(
            beam()
                .pin("pin", "A", "beam", "ground")
                .roller("roller", "B", "beam", "ground", Direction.UP)
                .roller("prop", "C", "beam", "ground", Direction.UP)
                .build());
    Order order = drawn.order();
    assertThat(order.isSquare()).isFalse();
    // the force along the beam is fixed; three upright ones share two equations
    assertThat(order.columnsOf(Order.UNDER)).containsExactly(1, 2, 3);
    assertThat(order.rowsOf(Order.UNDER)).containsExactly(1, 2);
    assertThat(order.column).containsExactly(0);
    assertThat(order.row).containsExactly(0);
    assertThat(order.rowsOf(Order.OVER)).isEmpty();
  }

  @Test
  void aMissingRollerIsOverDetermined() {
    Order order = Drawn.of(beam().pin("pin", "A", "beam", "ground").build()).order();
    assertThat(order.isSquare()).isFalse();
    assertThat(order.rowsOf(Order.OVER)).containsExactly(2);
    assertThat(order.columnsOf(Order.OVER)).isEmpty();
    assertThat(order.column).hasSize(2);
  }

  @Test
  void aBodyHeldTooMuchBesideALooseOneHasBothParts() {
    Order order =
        Drawn.of(
                beam()
                    .member("loose", "B", "C")
                    .clamp("clamp", "A", "beam", "ground")
                    .roller("prop", "C", "beam", "ground", Direction.UP)
                    .roller("touch", "B", "loose", "ground", Direction.UP)
                    .build())
            .order();
    assertThat(order.rowsOf(Order.OVER)).isNotEmpty();
    assertThat(order.columnsOf(Order.UNDER)).isNotEmpty();
    assertThat(order.rowsOf(Order.OVER).length - order.columnsOf(Order.OVER).length).isEqualTo(2);
    assertThat(order.columnsOf(Order.UNDER).length - order.rowsOf(Order.UNDER).length).isEqualTo(1);
  }

  @Test
  void aTrussIsSolvedJointAfterJoint() {
    DeviceBuilder truss =
        Device.named("truss")
            .point("P0", 0, 0)
            .point("P1", 1, 1.1)
            .joint("P0")
            .joint("P1")
            .strut("s0", End.of("P0", "P0"), End.of("P1", "P1"));
    int joints = 60;
    for (int i = 2; i < joints; i++) {
      String p = "P" + i;
      truss.point(p, i, i % 2 == 0 ? 0 : 1.1).joint(p);
      truss.strut("a" + i, End.of(p, p), End.of("P" + (i - 1), "P" + (i - 1)));
      truss.strut("b" + i, End.of(p, p), End.of("P" + (i - 2), "P" + (i - 2)));
    }
    Order order =
        Drawn.of(
                truss
                    .pin("left", "P0", "P0", "ground")
                    .roller("right", "P58", "P58", "ground", Direction.UP)
                    .build())
            .order();
    assertThat(order.isSquare()).isTrue();
    // both supports are tied together by the whole truss, or it unzips from the free end
    assertThat(order.column).hasSize(2 * joints);
    assertThat(order.blocks).isGreaterThan(joints / 2);
  }
}
