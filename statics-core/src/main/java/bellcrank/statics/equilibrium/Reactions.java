package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.internal.ForceSum;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Reads what each connection does to its bodies. */
final class Reactions {

  private final Balance balance;
  private final Device device;
  private final Solved solved;

  Reactions(Balance balance, Solved solved) {
    this.balance = balance;
    this.device = balance.device();
    this.solved = solved;
  }

  List<Reaction> all() {
    List<Reaction> all = new ArrayList<>();
    for (int i = 0; i < device.connections().size(); i++) {
      Connection connection = device.connections().get(i);
      LinkedHashSet<String> bodies = new LinkedHashSet<>(connection.bodies());
      for (String body : bodies) {
        // between two bodies the ground takes the opposite; of more it has a share of its own
        if (!body.equals(Ground.NAME) || bodies.size() > 2) {
          all.add(reaction(i, connection, body));
        }
      }
    }
    return List.copyOf(all);
  }

  private Reaction reaction(int index, Connection connection, String body) {
    int place = connection.bodies().indexOf(body);
    Point drawn = device.point(connection.places().get(place));
    Point at = balance.pose().frame(body).apply(drawn);
    ForceSum sum = new ForceSum(solved, at);
    sum.addConnection(index, device.bodyIndex(body));
    Optional<Answer> none = balance.noForces();
    boolean couple =
        connection instanceof Clamp
            || connection instanceof Guide
            || connection instanceof ContactBase;
    return new Reaction(
        connection.name(),
        connection.kind(),
        body,
        at,
        none.orElseGet(() -> Values.of(sum.fx(), Dimension.FORCE, sum.xDetermined())),
        none.orElseGet(() -> Values.of(sum.fy(), Dimension.FORCE, sum.yDetermined())),
        none.orElseGet(
            () ->
                couple || isRope(connection)
                    ? Values.of(sum.moment(), Dimension.MOMENT, sum.momentDetermined())
                    : new Answer.Value(0, Dimension.MOMENT)),
        couple,
        device.sharing(connection, body));
  }

  /** A rope goes past the middle of a drum, or past other sheaves of the same body. */
  private static boolean isRope(Connection connection) {
    return connection instanceof Reeving || connection instanceof Wrap;
  }
}
