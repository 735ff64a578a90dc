package bellcrank.statics.drawing;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.Reaction;
import java.util.List;
import java.util.Optional;

/** Reads what acts on a free body from a balance. */
final class FreeBodyReader {

  private final Balance balance;
  private final Device device;
  private final List<String> bodies;
  private final boolean whole;

  FreeBodyReader(Balance balance, List<String> bodies, boolean whole) {
    this.balance = balance;
    device = balance.device();
    this.bodies = bodies;
    this.whole = whole;
  }

  FreeBody read() {
    Cut cut = new Cut(device, bodies, whole);
    Places places = new Places(device, balance.pose());
    Collected found = new Collected();
    LoadReader loads = new LoadReader(places, balance.loadCase(), cut, found);
    loads.readWithSprings();
    boolean reactions = !(balance.outcome() instanceof Outcome.NoBalance);
    Optional<Known> known = reactions ? Optional.of(new Known(balance)) : Optional.empty();
    new SoughtReader(known, places, cut, found).read();
    if (reactions) {
      ConnectionReader reader = new ConnectionReader(new Known(balance), places, cut, found);
      for (Connection connection : device.connections()) {
        reader.read(connection);
      }
    }
    return new FreeBody(
        device,
        balance.pose(),
        bodies,
        whole,
        found.forces,
        found.spreads,
        found.couples,
        found.openForces,
        found.openCouples,
        reactions,
        scale(places));
  }

  /** The largest force that occurs anywhere in the device. */
  private double scale(Places places) {
    Collected all = new Collected();
    Cut everything = new Cut(device, FreeBody.names(device), true);
    new LoadReader(places, balance.loadCase(), everything, all).readWithSprings();
    double largest = 0;
    for (ActingForce force : all.forces) {
      largest = Math.max(largest, force.size());
    }
    for (SpreadForce spread : all.spreads) {
      largest = Math.max(largest, spread.total().norm());
    }
    for (ActingCouple couple : all.couples) {
      largest = Math.max(largest, Math.abs(couple.moment()) / device.size());
    }
    for (Reaction reaction : balance.reactions()) {
      largest = Math.max(largest, number(reaction.size()));
      largest = Math.max(largest, number(reaction.couple()) / device.size());
    }
    return largest;
  }

  private static double number(Answer answer) {
    return answer instanceof Answer.Value value ? Math.abs(value.si()) : 0;
  }
}
