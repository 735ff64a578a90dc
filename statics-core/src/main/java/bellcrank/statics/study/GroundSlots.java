package bellcrank.statics.study;

import bellcrank.statics.ground.Bearing;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.Undrained;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Numbers of the ground under a base. */
final class GroundSlots {

  static final List<Slot<?>> LENGTH =
      List.of(
          Slot.of(
              Foundation.class,
              Foundation::length,
              (f, v) -> new Foundation(f.base(), v, f.bearing(), f.adhesion(), f.cleat())));

  static final List<Slot<?>> ADHESION =
      List.of(Slot.of(Foundation.class, Foundation::adhesion, (f, v) -> f.withAdhesion(v)));

  static final List<Slot<?>> BEARING =
      List.of(
          bearing(
              Presumptive.class, Presumptive::pressure, (p, v) -> new Presumptive(v, p.source())));

  static final List<Slot<?>> STRENGTH =
      List.of(
          bearing(
              Undrained.class, Undrained::strength, (u, v) -> new Undrained(v, u.overburden())));

  static final List<Slot<?>> FRICTION_ANGLE =
      List.of(
          bearing(
              Drained.class,
              Drained::frictionAngle,
              (d, v) -> new Drained(v, d.cohesion(), d.weight(), d.overburden())));

  static final List<Slot<?>> COHESION =
      List.of(
          bearing(
              Drained.class,
              Drained::cohesion,
              (d, v) -> new Drained(d.frictionAngle(), v, d.weight(), d.overburden())));

  static final List<Slot<?>> UNIT_WEIGHT =
      List.of(
          bearing(
              Drained.class,
              Drained::weight,
              (d, v) -> new Drained(d.frictionAngle(), d.cohesion(), v, d.overburden())));

  static final List<Slot<?>> OVERBURDEN =
      List.of(
          bearing(
              Drained.class,
              Drained::overburden,
              (d, v) -> new Drained(d.frictionAngle(), d.cohesion(), d.weight(), v)),
          bearing(
              Undrained.class, Undrained::overburden, (u, v) -> new Undrained(u.strength(), v)));

  static final List<Slot<?>> CLEAT_DEPTH =
      List.of(
          new Slot<>(
              Foundation.class,
              f -> f.cleat().map(Cleat::depth),
              (f, v) -> {
                Cleat c = f.cleat().orElseThrow();
                return f.withCleat(new Cleat(v, c.frictionAngle(), c.cohesion(), c.weight()));
              }));

  private GroundSlots() {}

  private static <B extends Bearing> Slot<Foundation> bearing(
      Class<B> kind, Function<B, Double> get, BiFunction<B, Double, B> with) {
    return new Slot<>(
        Foundation.class,
        f -> f.bearing().filter(kind::isInstance).map(kind::cast).map(get),
        (f, v) -> f.withBearing(with.apply(kind.cast(f.bearing().orElseThrow()), v)));
  }
}
