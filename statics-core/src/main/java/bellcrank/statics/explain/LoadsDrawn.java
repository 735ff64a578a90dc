package bellcrank.statics.explain;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The given loads of a device in a pose and case; spread loads as their resultants. */
final class LoadsDrawn {

  private final Device device;
  private final Pose pose;
  private final LoadCase loadCase;
  private final Bodies bodies;
  private final Symbols symbols;
  private final List<KnownLoad> loads = new ArrayList<>();

  private LoadsDrawn(Balance balance, Bodies bodies, Symbols symbols) {
    device = balance.device();
    pose = balance.pose();
    loadCase = balance.loadCase();
    this.bodies = bodies;
    this.symbols = symbols;
  }

  static List<KnownLoad> of(Balance balance, Bodies bodies, Symbols symbols) {
    LoadsDrawn drawn = new LoadsDrawn(balance, bodies, symbols);
    drawn.device.loads().stream().sorted(Comparator.comparing(Load::name)).forEach(drawn::draw);
    drawn.device.connections().stream()
        .sorted(Comparator.comparing(Connection::name))
        .forEach(drawn::ownWeight);
    return List.copyOf(drawn.loads);
  }

  private void draw(Load load) {
    String name = load.name();
    double factor = loadCase.factor(name);
    if (load instanceof Force force) {
      Point at = bodies.placeUnderLoad(force.body(), force.at());
      add("F", name, bodies.underLoad(force.body()), at, force.vector().times(factor), 0);
    } else if (load instanceof Weight weight) {
      Point at =
          weight.at().isPresent()
              ? bodies.placeUnderLoad(weight.body(), weight.at().get())
              : middle(weight.body());
      Vector pull = device.gravity().times(weight.mass() * factor);
      add("W", name, bodies.underLoad(weight.body()), at, pull, 0);
    } else if (load instanceof Couple couple) {
      // a couple on a screw turns it about its own axis: it is outside, but in the screw's law
      int body = bodies.number(couple.member());
      add("M", name, body, device.middle(), Vector.ZERO, factor * couple.moment());
    } else if (load instanceof SpreadLoad spread) {
      spread(spread, factor);
    } else if (load instanceof Spring spring) {
      spring(spring, factor);
    } else if (load instanceof TorsionSpring spring) {
      double turned =
          spring.turned() + pose.frame(spring.body()).turn() - pose.frame(spring.other()).turn();
      double couple = -factor * spring.stiffness() * turned;
      Point at = device.middle();
      add(
          new KnownLoad(
              name,
              symbols.of("M", name),
              new Link(
                  bodies.number(spring.body()),
                  bodies.number(spring.other()),
                  at,
                  at,
                  Vector.ZERO,
                  couple)));
    }
  }

  private Point middle(String member) {
    Member known = (Member) device.body(member).orElseThrow();
    return pose.frame(member).apply(device.middleOfBars(known));
  }

  private void add(String main, String name, int body, Point at, Vector force, double couple) {
    Link link = new Link(body, Picture.OUTSIDE, at, at, force, couple);
    add(new KnownLoad(name, symbols.of(main, name), link));
  }

  private void add(KnownLoad load) {
    if (load.size() != 0) {
      loads.add(load);
    }
  }

  private void spread(SpreadLoad spread, double factor) {
    Point drawnA = device.point(spread.from());
    Point drawnB = device.point(spread.to());
    double length =
        spread.per() == SpreadLoad.Per.HORIZONTAL
            ? Math.abs(drawnB.x() - drawnA.x())
            : drawnA.distance(drawnB);
    double total = factor * (spread.start() + spread.end()) / 2 * length;
    double difference = factor * (spread.end() - spread.start()) * length;
    Point a = bodies.place(spread.member(), spread.from());
    Point b = bodies.place(spread.member(), spread.to());
    Vector way = a.to(b);
    Direction along = spread.direction().orElseGet(() -> Direction.from(way.perpendicular()));
    Point middle = a.plus(way.times(0.5));
    int body = bodies.number(spread.member());
    if (total == 0) {
      double couple = difference / 12 * way.cross(along.times(1));
      add("M", spread.name(), body, middle, Vector.ZERO, couple);
    } else {
      // the resultant goes through the centre of the trapezoid
      Point at = middle.plus(way.times(difference / (12 * total)));
      add("F", spread.name(), body, at, along.times(total), 0);
    }
  }

  private void spring(Spring spring, double factor) {
    Point a = bodies.place(spring.first().body(), spring.first().at());
    Point b = bodies.place(spring.second().body(), spring.second().at());
    double length = a.distance(b);
    if (length == 0) {
      return;
    }
    double tension = factor * spring.stiffness() * (length - spring.freeLength());
    add(
        new KnownLoad(
            spring.name(),
            symbols.of("F", spring.name()),
            new Link(
                bodies.number(spring.first().body()),
                bodies.number(spring.second().body()),
                a,
                b,
                a.to(b).times(tension / length),
                0)));
  }

  /** A strut's own weight, half at each end. */
  private void ownWeight(Connection connection) {
    if (connection instanceof Strut strut && strut.mass() > 0) {
      Vector half = device.gravity().times(strut.mass() / 2 * loadCase.factor(strut.name()));
      for (End end : List.of(strut.first(), strut.second())) {
        Point at = bodies.place(end.body(), end.at());
        String index = strut.name() + " half";
        Link link = new Link(bodies.number(end.body()), Picture.OUTSIDE, at, at, half, 0);
        add(new KnownLoad("half weight of " + strut.name(), symbols.of("W", index), link));
      }
    }
  }
}
