package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.RandomDevices;
import bellcrank.statics.limits.RandomContacts;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsCoverage;

/** Free forces found by elimination against those of a rank-revealing factor. */
class SmallChoiceProperties {

  @Provide
  Arbitrary<Device> contacts() {
    return RandomContacts.any();
  }

  @Provide
  Arbitrary<Device> any() {
    return Arbitraries.oneOf(
        RandomContacts.any(), RandomDevices.mostlyHeld(), RandomDevices.medium());
  }

  /** Choices of one device as drawn. */
  private record Both(
      Assembly assembly, Actions actions, Optional<SmallChoice> small, PivotedChoice dense) {

    static Both of(Device device) {
      Assembly assembly = Assembly.withDryPins(device);
      Assume.that(assembly.rows() > 0 && PivotedChoice.shafts(assembly) == 0);
      Placements placements = assembly.placements();
      Actions actions = assembly.actions();
      assembly.evaluate(placements, actions);
      return new Both(
          assembly,
          actions,
          SmallChoice.of(assembly, actions),
          new PivotedChoice(assembly, assembly.rows(), actions));
    }

    /** Largest force or moment, about the middle of the device, that forces leave on a body. */
    double left(double[] forces, double[] load) {
      Wrenches sum = new Wrenches(assembly.bodyCount());
      sum.add(actions, forces);
      double[] right = new double[assembly.rows()];
      sum.rightSide(assembly.memberCount(), new double[2 * assembly.memberCount()], right);
      double largest = 0;
      for (int i = 0; i < right.length; i++) {
        largest = Math.max(largest, Math.abs(right[i] + load[i]));
      }
      return largest;
    }
  }

  /** What declines is left to the factor, so it may; of contacts few do. */
  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void mostDevicesOfContactsAreServed(@ForAll("contacts") Device device) {
    Both both = Both.of(device);
    Assume.that(both.dense.rank() == both.assembly.rows());
    Statistics.label("served").collect(both.small.isPresent());
    Statistics.label("served")
        .coverage((StatisticsCoverage coverage) -> coverage.check(true).percentage(p -> p > 70));
  }

  @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
  void theSameForcesBalanceTheSameLoads(@ForAll("any") Device device) {
    Both both = Both.of(device);
    if (both.small.isEmpty()) {
      return;
    }
    SmallChoice small = both.small.get();
    int rows = both.assembly.rows();
    int columns = both.assembly.columns();
    assertThat(both.dense.rank()).isEqualTo(rows);
    double[][] free = new double[columns - rows][columns];
    small.write(free);
    double[] none = new double[rows];
    for (int which = 0; which < free.length; which++) {
      assertThat(both.left(free[which], none)).isLessThan(1e-12 * ForceSpace.MODERATE);
      for (int other = 0; other < free.length; other++) {
        assertThat(free[which][small.freeColumn(other)]).isEqualTo(other == which ? 1 : 0);
      }
      for (double multiple : free[which]) {
        assertThat(Math.abs(multiple)).isLessThanOrEqualTo(ForceSpace.MODERATE * (1 + 1e-12));
      }
    }
    ForceSpace space = ForceSpace.of(device, Pose.DRAWN);
    double[] load = space.loads(LoadCase.ALL_LOADS, name -> true);
    double size = Math.max(1e-300, space.scale(LoadCase.ALL_LOADS));
    double[] forces = new double[columns];
    double[] turned = load.clone();
    small.turn(turned);
    small.respond(turned, forces);
    double largest = size;
    for (double force : forces) {
      largest = Math.max(largest, Math.abs(force));
    }
    assertThat(both.left(forces, load)).isLessThan(1e-12 * largest);
    likeTheFactor(both.dense, load, forces, free, largest);
  }

  /** The factor's own answer is another of the same forces: the free ones make up for it. */
  private static void likeTheFactor(
      PivotedChoice dense, double[] load, double[] forces, double[][] free, double size) {
    double[][] ofFactor = new double[free.length][forces.length];
    dense.write(ofFactor);
    double[] response = new double[forces.length];
    double[] turned = load.clone();
    dense.turn(turned);
    dense.respond(turned, response);
    for (int j = 0; j < forces.length; j++) {
      double expected = response[j];
      for (int z = 0; z < free.length; z++) {
        expected += forces[dense.freeColumn(z)] * ofFactor[z][j];
      }
      assertThat(forces[j]).isCloseTo(expected, within(1e-7 * size));
    }
  }
}
