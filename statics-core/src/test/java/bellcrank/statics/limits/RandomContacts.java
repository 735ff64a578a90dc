package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Random small devices with contacts, bases, ropes and pins: blocks on slopes, ladders, stacks,
 * blocks between walls, stayed posts, ropes round posts, levers on stops, and loose pieces held
 * anyhow. Each has one force, named {@code push}, besides its weights. Half of them have rounded
 * numbers, so that supports in one line, parallel ones and forces of zero come up on purpose.
 */
@SuppressWarnings("exports") // public for the tests of explanations, which never leave the build
public final class RandomContacts {

  private RandomContacts() {}

  /** Any of them. */
  public static Arbitrary<Device> any() {
    return devices(Arbitraries.of(ContactScene.Kind.values()), Arbitraries.of(true, false));
  }

  /** Any of them, in general shape. */
  static Arbitrary<Device> general() {
    return devices(Arbitraries.of(ContactScene.Kind.values()), Arbitraries.just(false));
  }

  /** Pieces held anyhow. */
  static Arbitrary<Device> loose() {
    return devices(Arbitraries.just(ContactScene.Kind.ANY), Arbitraries.of(true, false));
  }

  private static Arbitrary<Device> devices(
      Arbitrary<ContactScene.Kind> kind, Arbitrary<Boolean> grid) {
    return Combinators.combine(kind, grid, Arbitraries.integers().between(0, 999).list().ofSize(41))
        .as(
            (what, rounded, numbers) ->
                ContactScene.build(
                    what, rounded, numbers.stream().map(number -> number / 1000.0).toList()));
  }
}
