package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceDraft;
import bellcrank.statics.device.End;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What is found gives the target; what gave the target is found. */
class FindProperties {

  /** A jib with a stay; its rope end is moved along a line. */
  private static DoubleFunction<Device> jib(double reach, double slant) {
    Device device =
        Device.named("barrel derrick")
            .point("foot", 0, 0)
            .point("head", reach, 2)
            .point("mast", 0, 3)
            .member("jib", "foot", "head")
            .pin("foot", "foot", "jib", "ground")
            .line("stay", End.of("jib", "head"), End.of("ground", "mast"))
            .force("barrel", "jib", "head", Vector.of(0, -900))
            .build();
    return Unknown.pointAlong(device, "mast", Direction.ofAngle(slant));
  }

  @Property(tries = 80)
  void whatGaveTheTargetIsFound(
      @ForAll @DoubleRange(min = 0.5, max = 4) @Scale(6) double reach,
      @ForAll @DoubleRange(min = 0, max = 3) @Scale(6) double slant,
      @ForAll @DoubleRange(min = -0.9, max = 0.9) @Scale(6) double moved) {
    DoubleFunction<Device> family = jib(reach, slant);
    double target = Balance.of(family.apply(moved)).number("stay.tension").orElseThrow();
    Find found = Find.of(family, -1, 1, "stay.tension", target);
    List<Double> values = ((Find.At) found).values();
    // near a least value of the tension the place is less sharp than the tension
    assertThat(values).anyMatch(value -> Math.abs(value - moved) < 1e-5);
    for (double value : values) {
      assertThat(Balance.of(family.apply(value)).number("stay.tension").orElseThrow())
          .isCloseTo(target, within(1e-7));
    }
  }

  @Property(tries = 80)
  void itDoesNotMatterWhereTheDeviceStands(
      @ForAll @DoubleRange(min = 0.5, max = 4) @Scale(6) double reach,
      @ForAll @DoubleRange(min = -20, max = 20) @Scale(6) double aside) {
    DoubleFunction<Device> family = jib(reach, 1.2);
    DoubleFunction<Device> shifted =
        value -> {
          Device device = family.apply(value);
          DeviceDraft draft = DeviceDraft.of(device);
          shift(device, aside).forEach(draft::point);
          return draft.build();
        };
    Find here = Find.of(family, -1, 1, "stay.tension", 1500);
    Find there = Find.of(shifted, -1, 1, "stay.tension", 1500);
    assertThat(there.getClass()).isEqualTo(here.getClass());
    if (here instanceof Find.At a && there instanceof Find.At b) {
      assertThat(b.values()).hasSameSizeAs(a.values());
      for (int k = 0; k < a.values().size(); k++) {
        assertThat(b.values().get(k)).isCloseTo(a.values().get(k), within(1e-9));
      }
    }
  }

  private static Map<String, Point> shift(Device device, double aside) {
    Map<String, Point> moved = new TreeMap<>();
    device.points().forEach((name, at) -> moved.put(name, at.plus(Vector.of(aside, -aside / 2))));
    return moved;
  }
}
