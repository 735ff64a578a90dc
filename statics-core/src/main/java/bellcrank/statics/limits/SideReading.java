package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Reaction;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.LinkedHashSet;
import java.util.Optional;

/** Reads the side view of a base from a balance in the plane of the device. */
final class SideReading {

  private final Balance balance;
  private final Device device;
  private final ContactBase base;
  private final String standing;
  private final Point foot;
  private final Direction up;

  SideReading(Balance balance, String base) {
    this.balance = balance;
    device = balance.device();
    if (!(device.connection(base).orElse(null) instanceof ContactBase found)
        || !found.bodies().contains(Ground.NAME)) {
      throw new ModelException(
          device.name(), "base", '"' + base + '"', "the name of a contact base on the ground");
    }
    this.base = found;
    boolean onGround = found.other().equals(Ground.NAME);
    standing = onGround ? found.body() : found.other();
    foot = posed(standing, found.at());
    up = onGround ? found.push() : balance.pose().frame(standing).apply(found.push()).opposite();
  }

  SideView read(double breadth) {
    SideView view = SideView.of(base.name(), breadth, friction());
    for (Load load : device.loads()) {
      view =
          load instanceof Sought sought
              ? withSought(view, sought)
              : load instanceof Spring spring ? withSpring(view, spring) : withGiven(view, load);
    }
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        view = withWeight(view, strut);
      }
      if (connection.bodies().contains(Ground.NAME) && !connection.name().equals(base.name())) {
        view = withSupport(view, connection);
      }
    }
    return view;
  }

  /** What friction is left sideways beside the one along the plane. */
  private double friction() {
    Vector force = ground(base);
    double normal = force.dot(up.times(1));
    if (!(normal > 0) || base.friction() == 0) {
      return 0;
    }
    double used = force.dot(up.perpendicular().times(1)) / normal;
    return Math.sqrt(Math.max(0, base.friction() * base.friction() - used * used));
  }

  private SideView withGiven(SideView view, Load load) {
    SideView changed = view;
    for (SideLoads.Part part : SideLoads.of(balance, load)) {
      changed = changed.withDown(part.name(), height(part.at()), 0, -part.force().dot(up.times(1)));
    }
    return changed;
  }

  private SideView withSought(SideView view, Sought sought) {
    if (sought.at().isEmpty()) {
      return view;
    }
    Point at = posed(sought.body(), sought.at().get());
    if (sought.to().isPresent()) {
      Point end = posed(sought.body(), sought.to().get());
      at = at.plus(at.to(end).times(0.5));
    }
    double lift =
        share(sought.name(), up.x(), balance.answer(Ask.of(sought.name(), Measure.X)))
            + share(sought.name(), up.y(), balance.answer(Ask.of(sought.name(), Measure.Y)));
    return view.withDown(sought.name(), height(at), 0, -lift);
  }

  private SideView withSpring(SideView view, Spring spring) {
    Point first = posed(spring.first().body(), spring.first().at());
    Point second = posed(spring.second().body(), spring.second().at());
    double pull =
        spring.stiffness()
            * (first.distance(second) - spring.freeLength())
            * balance.loadCase().factor(spring.name());
    if (spring.second().body().equals(Ground.NAME)) {
      return withLink(view, spring.name(), first, second, pull);
    }
    return spring.first().body().equals(Ground.NAME)
        ? withLink(view, spring.name(), second, first, pull)
        : view;
  }

  /** Half of a strut's weight at each end; the ground takes what is its own. */
  private SideView withWeight(SideView view, Strut strut) {
    double height = 0;
    int ends = 0;
    for (int k = 0; k < 2; k++) {
      String body = strut.bodies().get(k);
      if (!body.equals(Ground.NAME)) {
        height += height(posed(body, strut.places().get(k)));
        ends++;
      }
    }
    double half = strut.mass() / 2 * balance.loadCase().factor(strut.name());
    double down = -device.gravity().dot(up.times(1)) * half * ends;
    return view.withDown("weight of " + strut.name(), height / ends, 0, down);
  }

  private SideView withSupport(SideView view, Connection connection) {
    if (connection instanceof Line || connection instanceof Strut) {
      int end = connection.bodies().get(0).equals(Ground.NAME) ? 1 : 0;
      Point fixed = posed(connection.bodies().get(end), connection.places().get(end));
      Point anchor = device.point(connection.places().get(1 - end));
      Answer pull = balance.answer(Ask.of(connection.name(), Measure.TENSION));
      return withLink(view, connection.name(), fixed, anchor, value(connection.name(), pull));
    }
    Vector force = ground(connection);
    return view.withSupport(new SideSupport(connection.name(), 0, force.dot(up.times(1))));
  }

  private SideView withLink(SideView view, String name, Point fixed, Point anchor, double pull) {
    return view.withLink(
        new SideLink(name, height(fixed), height(anchor), 0, pull / fixed.distance(anchor)));
  }

  /** Force of the ground on the device through a connection. */
  private Vector ground(Connection connection) {
    boolean two = new LinkedHashSet<>(connection.bodies()).size() == 2;
    Optional<Reaction> found =
        balance.reactions().stream()
            .filter(one -> one.connection().equals(connection.name()))
            .filter(one -> two || one.body().equals(Ground.NAME))
            .findFirst();
    Reaction reaction = found.orElseThrow();
    Vector force =
        Vector.of(value(connection.name(), reaction.x()), value(connection.name(), reaction.y()));
    return two ? force : force.times(-1);
  }

  /** A component's share, asked only where it counts. */
  private static double share(String part, double cosine, Answer answer) {
    return cosine == 0 ? 0 : cosine * value(part, answer);
  }

  private static double value(String part, Answer answer) {
    if (answer instanceof Answer.Value value) {
      return value.si();
    }
    String why =
        answer instanceof Answer.Unanswered none ? "not known: " + none.explanation() : "not known";
    throw new ModelException(
        part, "force", why, "a balance with known forces on the ground, such as with least forces");
  }

  private double height(Point at) {
    return foot.to(at).dot(up.times(1));
  }

  private Point posed(String body, String at) {
    return SideLoads.posed(balance, body, at);
  }
}
