package bellcrank.statics.harness;

import bellcrank.statics.strength.Capacity;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** Assertions about what gives first as loads grow, in one pose. */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class CapacityAssert extends RankedAssert<CapacityAssert, Capacity> {

  CapacityAssert(Capacity actual) {
    super(actual, CapacityAssert.class);
  }

  @Override
  CapacityClaims claims(UnitSystem units) {
    return claims(actual, units);
  }

  static CapacityClaims claims(Capacity capacity, UnitSystem units) {
    List<Giving> ranked =
        capacity.ranked().stream()
            .map(one -> new Giving(one, Optional.empty(), () -> capacity.balance(one.multiple())))
            .toList();
    return new CapacityClaims(
        capacity.balance(1).device(),
        capacity.driving(),
        units,
        ranked,
        capacity.notChecked(),
        capacity.remarks(),
        capacity::whyNotHeld);
  }
}
