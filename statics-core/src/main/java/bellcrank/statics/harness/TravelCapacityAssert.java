package bellcrank.statics.harness;

import bellcrank.statics.strength.TravelCapacity;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** Assertions about what gives first as loads grow, over a whole course. */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class TravelCapacityAssert extends RankedAssert<TravelCapacityAssert, TravelCapacity> {

  TravelCapacityAssert(TravelCapacity actual) {
    super(actual, TravelCapacityAssert.class);
  }

  @Override
  CapacityClaims claims(UnitSystem units) {
    List<Giving> ranked =
        actual.ranked().stream()
            .map(
                worst ->
                    new Giving(
                        worst.crossing(),
                        Optional.of(worst),
                        () -> actual.capacity(worst.drive()).balance(worst.crossing().multiple())))
            .toList();
    return new CapacityClaims(
        actual.course().device(),
        actual.driving(),
        units,
        ranked,
        actual.notChecked(),
        actual.remarks(),
        actual::whyNotHeld);
  }
}
