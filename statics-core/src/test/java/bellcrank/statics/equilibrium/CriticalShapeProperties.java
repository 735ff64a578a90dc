package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** A critical shape stays one wherever it is drawn, although rounding spoils its coordinates. */
class CriticalShapeProperties {

  private static DeviceBuilder plate() {
    return Device.named("lid")
        .point("A", 0, 0)
        .point("B", 1, 0)
        .point("C", 2.1, 0)
        .point("D", 1.2, 0.9)
        .member("lid", "A", "B", "C")
        .force("wind", "lid", "A", Vector.of(6, -10))
        .load(new Couple("twist", "lid", 7));
  }

  private static Device critical(int shape) {
    return switch (shape) {
      case 0 ->
          plate()
              .roller("r1", "A", "lid", "ground", Direction.UP)
              .roller("r2", "B", "lid", "ground", Direction.UP)
              .roller("r3", "C", "lid", "ground", Direction.DOWN)
              .build();
      case 1 ->
          plate()
              .point("a", -1.2, -0.9)
              .point("b", 1 - 0.2 / 3, -0.3)
              .point("c", 2.1 + 0.9, -0.9)
              .strut("s1", End.of("lid", "A"), End.of("ground", "a"))
              .strut("s2", End.of("lid", "B"), End.of("ground", "b"))
              .strut("s3", End.of("lid", "C"), End.of("ground", "c"))
              .build();
      case 2 ->
          plate()
              .member("other", "B", "C")
              .pin("p1", "A", "lid", "ground")
              .pin("p2", "B", "lid", "other")
              .pin("p3", "C", "other", "ground")
              .build();
      default ->
          plate()
              .pin("p1", "A", "lid", "ground")
              .roller("r1", "C", "lid", "ground", Direction.RIGHT)
              .build();
    };
  }

  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
  void itIsFoundAtAnyPlaceAndSize(
      @ForAll @IntRange(max = 3) int shape,
      @ForAll @DoubleRange(min = 0, max = 6.3) double turn,
      @ForAll @DoubleRange(min = -3, max = 4) double sizeTenTo,
      @ForAll @DoubleRange(min = 0, max = 6) double distanceTenTo,
      @ForAll @DoubleRange(min = 0, max = 6.3) double towards) {
    Device drawn = critical(shape);
    double size = Math.pow(10, sizeTenTo);
    double distance = Math.pow(10, distanceTenTo);
    // beyond this the drawn digits themselves leave the shape open
    double farthest = Math.min(distance, 1e6 * size);
    Vector shift = Direction.ofAngle(towards).times(farthest);
    Balance balance = Balance.of(new Similarity(false, turn, size, shift, 1).of(drawn));
    assertThat(balance.outcome()).isInstanceOf(Outcome.NoBalance.class);
    assertThat(balance.redundancy()).isEqualTo(1);
    assertThat(balance.freedoms()).hasSize(1);
    assertThat(balance.freedoms().get(0).critical()).isTrue();
  }
}
