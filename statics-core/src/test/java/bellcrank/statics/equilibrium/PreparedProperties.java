package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Prepared solving against the plain dense assembly. */
class PreparedProperties {

  @Provide
  Arbitrary<Device> mostlyHeld() {
    return RandomDevices.mostlyHeld();
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void asDrawnItSaysWhatTheBalanceSays(@ForAll("mostlyHeld") Device device) {
    PlainStatics plain = PlainStatics.of(device);
    Assume.that(plain.isClear() && plain.isHeld() && plain.redundancy() == 0);
    Prepared prepared = Prepared.of(device);
    assertThat(prepared.isDeterminate()).isTrue();
    Prepared.Buffer buffer = prepared.buffer();
    assertThat(buffer.solve(Pose.DRAWN, LoadCase.ALL_LOADS)).isTrue();
    List<PlainUnknown> unknowns = plain.unknowns();
    for (int i = 0; i < unknowns.size(); i++) {
      assertThat(buffer.value(prepared.slot(unknowns.get(i).ask())))
          .as(unknowns.get(i).ask())
          .isCloseTo(plain.value(i), within(1e-9 * plain.forceScale() * unknowns.get(i).unit()));
    }
  }
}
