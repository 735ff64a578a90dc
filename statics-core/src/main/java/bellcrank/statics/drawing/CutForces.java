package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns numbers of connections into forces and couples, known or open. */
record CutForces(Collected found) {

  void axes(Spot spot, OptionalDouble x, OptionalDouble y) {
    resolved(spot, Resolution.AXES, x, y);
  }

  /** A force of two components; one force if both are known. */
  void resolved(Spot spot, Resolution resolution, OptionalDouble first, OptionalDouble second) {
    if (first.isPresent() && second.isPresent()) {
      Vector vector =
          resolution
              .first()
              .times(first.getAsDouble())
              .plus(resolution.second().times(second.getAsDouble()));
      add(spot, spot.part(), vector, Optional.of(resolution));
    } else {
      String name = spot.part() + ".";
      single(spot, name + resolution.firstName(), resolution.first(), first);
      single(spot, name + resolution.secondName(), resolution.second(), second);
    }
  }

  /** A force along a given line. */
  void single(Spot spot, String symbol, Direction along, OptionalDouble size) {
    if (size.isPresent()) {
      add(spot, symbol, along.times(size.getAsDouble()), Optional.empty());
    } else {
      found.openForces.add(
          new OpenForce(spot.part(), symbol, spot.on(), Origin.CONNECTION, spot.at(), along));
    }
  }

  private void add(Spot spot, String symbol, Vector vector, Optional<Resolution> resolution) {
    found.forces.add(
        new ActingForce(
            spot.part(), symbol, spot.on(), Origin.CONNECTION, spot.at(), vector, resolution));
  }

  void couple(Spot spot, OptionalDouble moment) {
    if (moment.isPresent()) {
      found.couples.add(
          new ActingCouple(
              spot.part(), spot.on(), Origin.CONNECTION, spot.at(), moment.getAsDouble()));
    } else {
      found.openCouples.add(new OpenCouple(spot.part(), spot.on(), Origin.CONNECTION, spot.at()));
    }
  }
}
