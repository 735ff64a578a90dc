package bellcrank.statics.drawing;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.BasePressure;
import bellcrank.statics.ground.Foundation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the pressures under the bases of a free body that were cut. */
record PressureReader(Balance balance, FreeBody body, List<Foundation> ground) {

  /** Share of the width below which a strip is an edge but for rounding. */
  private static final double ROUNDING = 1e-6;

  /** Those whose normal force and offset are known; without balance there are none. */
  List<BaseStrip> read() {
    List<BaseStrip> strips = new ArrayList<>();
    if (body.reactions()) {
      for (Connection connection : body.device().connections()) {
        if (connection instanceof ContactBase base
            && body.bodies().contains(base.body()) != body.bodies().contains(base.other())) {
          strip(base).ifPresent(strips::add);
        }
      }
    }
    return strips;
  }

  private Optional<BaseStrip> strip(ContactBase base) {
    Known known = new Known(balance);
    OptionalDouble normal = known.value(base.name(), Measure.NORMAL);
    OptionalDouble offset = known.value(base.name(), Measure.OFFSET);
    if (normal.isEmpty()
        || offset.isEmpty()
        || normal.getAsDouble() < 0
        || body.isZero(normal.getAsDouble())
        || Math.abs(offset.getAsDouble()) > base.width() * (0.5 + ROUNDING)) {
      // beyond its edges a base has no pressure that could balance it
      return Optional.empty();
    }
    OptionalDouble length =
        ground.stream()
            .filter(one -> one.base().equals(base.name()))
            .mapToDouble(Foundation::length)
            .findFirst();
    double push = normal.getAsDouble();
    return Optional.of(
        strip(
            base,
            BasePressure.of(push, push * offset.getAsDouble(), base.width(), length.orElse(1)),
            length));
  }

  private BaseStrip strip(ContactBase base, BasePressure pressure, OptionalDouble length) {
    Direction up = body.pose().frame(base.other()).apply(base.push());
    Direction toTheRight = up.perpendicular().opposite();
    Point middle = new Places(body.device(), body.pose()).of(base.body(), base.at());
    Vector half = toTheRight.times(base.width() / 2);
    boolean first = body.bodies().contains(base.body());
    Vector push = up.times(first ? 1 : -1);
    // from the edge that is pressed more over the width that is pressed
    double side = Math.signum(pressure.couple());
    Point edge = middle.plus(half.times(side));
    double pressed = pressure.contactWidth();
    if (pressed < ROUNDING * base.width() || pressure.largest().isEmpty()) {
      return new BaseStrip(base, pressure, length, push, Optional.empty(), edge);
    }
    Point from = side == 0 ? middle.plus(half) : edge;
    Point to = from.plus(toTheRight.times(side < 0 ? pressed : -pressed));
    double out = length.orElse(1);
    SpreadForce spread =
        new SpreadForce(
            base.name(),
            first ? base.body() : base.other(),
            Origin.CONNECTION,
            from,
            to,
            push.times(pressure.largest().getAsDouble() * out),
            push.times(pressure.smallest().orElse(0) * out),
            pressed);
    return new BaseStrip(base, pressure, length, push, Optional.of(spread), edge);
  }
}
