package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.RandomDevice.Kind;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;

/**
 * Random devices of up to 30 members. A device is built from a list of steps, so that shrinking
 * leaves out steps and makes numbers smaller. Places lie on a coarse grid half of the time: points
 * in one line, parallel rollers and crossing lines of action come up on purpose.
 */
@SuppressWarnings("exports") // public for the tests of the internals, which never leave the build
public final class RandomDevices {

  private RandomDevices() {}

  /** Any kind of part: just held, moving and redundant devices. */
  public static Arbitrary<Device> any() {
    return devices(all(2), 40, grid());
  }

  /** Devices whose members are mostly held when they are added; few extra parts. */
  public static Arbitrary<Device> mostlyHeld() {
    return devices(
        List.of(Tuple.of(6, Kind.HELD), Tuple.of(1, Kind.JOINT), Tuple.of(4, Kind.LOAD)),
        40,
        Arbitraries.just(false));
  }

  /** Small devices of any kind. */
  public static Arbitrary<Device> small() {
    return devices(all(1), 9, grid());
  }

  /** Devices of up to a dozen members of any kind. */
  public static Arbitrary<Device> medium() {
    return devices(all(1), 20, grid());
  }

  /** Devices of few members that are mostly just held. */
  public static Arbitrary<Device> few() {
    return devices(
        List.of(Tuple.of(5, Kind.HELD), Tuple.of(2, Kind.JOINT), Tuple.of(4, Kind.LOAD)),
        5,
        grid());
  }

  private static Arbitrary<Boolean> grid() {
    return Arbitraries.of(true, false);
  }

  private static List<Tuple2<Integer, Kind>> all(int others) {
    List<Tuple2<Integer, Kind>> kinds = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      int often = kind == Kind.MEMBER || kind == Kind.HELD || kind == Kind.LOAD ? 5 : others;
      kinds.add(Tuple.of(often, kind));
    }
    return kinds;
  }

  private static Arbitrary<Device> devices(
      List<Tuple2<Integer, Kind>> kinds, int most, Arbitrary<Boolean> grid) {
    Arbitrary<List<RandomDevice.Step>> steps =
        step(Arbitraries.frequency(kinds))
            .list()
            .ofMinSize(1)
            .ofMaxSize(most)
            .withSizeDistribution(RandomDistribution.uniform());
    return Combinators.combine(grid, steps).as(RandomDevice::build);
  }

  private static Arbitrary<RandomDevice.Step> step(Arbitrary<Kind> kinds) {
    Arbitrary<Integer> number = Arbitraries.integers().between(0, 59).shrinkTowards(0);
    Arbitrary<Integer> place = Arbitraries.integers().between(-8, 8).shrinkTowards(0);
    return Combinators.combine(kinds, number, number, number, place, place, number)
        .as(RandomDevice.Step::new);
  }
}
