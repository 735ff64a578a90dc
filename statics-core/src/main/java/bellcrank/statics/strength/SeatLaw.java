package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/** Angle between the push of a chain and the depth of its notch against the greatest that holds. */
record SeatLaw() implements Law<SeatDemand> {

  @Override
  public Optional<String> lacks(SeatDemand demand) {
    return Optional.empty();
  }

  @Override
  public double demanded(SeatDemand demand) {
    return demand.angle();
  }

  @Override
  public double resistance(SeatDemand demand, double factor) {
    return demand.seat().greatestAngle() / factor;
  }

  @Override
  public Dimension dimension() {
    return Dimension.ANGLE;
  }

  @Override
  public String working(SeatDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    ChainSeat seat = demand.seat();
    return "pushes "
        + amounts.angle(demand.angle())
        + " off the depth of the notch, against 90° − "
        + amounts.angle(seat.opening())
        + "/2 + arctan "
        + amounts.number(seat.friction())
        + " = "
        + amounts.angle(resistance(demand, 1))
        + amounts.over(factor);
  }
}
