package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.equilibrium.RandomDevices;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The quick way through a small system against the long one. */
class SmallSystemProperties {

  @Provide
  Arbitrary<Device> few() {
    return RandomDevices.few();
  }

  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
  void atOneGoAndInOrderGiveTheSame(@ForAll("few") Device device) {
    Drawn drawn = Drawn.of(device);
    Assembly assembly = drawn.assembly();
    Assume.that(SmallSystem.fits(assembly));
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    Wrenches loads = new Wrenches(assembly.bodyCount());
    assembly.load(placements, LoadCase.ALL_LOADS, loads);
    Optional<LinearSolution> small = SmallSystem.solve(assembly, actions, loads);
    double[] centre = new double[2 * assembly.memberCount()];
    MomentCentres.choose(assembly, actions, centre);
    double[] b = new double[assembly.rows()];
    loads.rightSide(assembly.memberCount(), centre, b);
    LinearSolution inOrder =
        LinearAnalysis.solve(
            drawn.equations(), b, loads.scale, assembly.scale().zero(), assembly.columns());
    if (small.isEmpty()) {
      assertThat(inOrder.motions().isEmpty() && inOrder.condition() < 1e8)
          .as("what is left to the long way is singular or nearly so")
          .isFalse();
      return;
    }
    assertThat(inOrder.balanced()).isTrue();
    assertThat(inOrder.motions()).isEmpty();
    assertThat(small.get().motions()).isEmpty();
    assertThat(small.get().selfStresses()).isEmpty();
    assertThat(small.get().balanced()).isTrue();
    double largest = loads.scale;
    for (double value : inOrder.x()) {
      largest = Math.max(largest, Math.abs(value));
    }
    double close = largest * 1e-15 * small.get().condition() + 1e-12 * largest;
    for (int j = 0; j < inOrder.x().length; j++) {
      assertThat(small.get().x()[j]).isCloseTo(inOrder.x()[j], within(close));
    }
    // both estimate the same number with moments about different points
    double ratio = small.get().condition() / inOrder.condition();
    assertThat(ratio).isBetween(1e-4, 1e4);
  }
}
