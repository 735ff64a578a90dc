package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;

/**
 * Devices with one freedom whose pose is known in closed form for every angle of the driving
 * member. What a point does when the angle changes is found by differentiating places, not by
 * statics.
 */
interface Linkage {

  /** The device as drawn at an angle, with effort {@code hand} and resistance {@code ram}. */
  Device at(double angle);

  /** Where the effort acts. */
  Point effort(double angle);

  /** Where the resistance acts. */
  Point resistance(double angle);

  Vector hand();

  Direction ram();

  /** Displacements of the bodies from their places at one angle to those at another. */
  Pose pose(double drawn, double angle);

  /** Resistance over effort by virtual work: the ratio of the displacements along both forces. */
  default double velocityRatio(double angle) {
    return along(Direction.from(hand()), effort(angle - STEP), effort(angle + STEP))
        / -along(ram(), resistance(angle - STEP), resistance(angle + STEP));
  }

  double STEP = 1e-5;

  private static double along(Direction direction, Point from, Point to) {
    Vector moved = from.to(to);
    return moved.x() * direction.x() + moved.y() * direction.y();
  }

  /** Displacement that takes a segment to another of the same length. */
  static Frame carry(Point a, Point b, Point toA, Point toB) {
    double turn =
        Math.atan2(toB.y() - toA.y(), toB.x() - toA.x()) - Math.atan2(b.y() - a.y(), b.x() - a.x());
    Point turned = Frame.of(Vector.ZERO, turn).apply(a);
    return Frame.of(turned.to(toA), turn);
  }

  private static Point polar(Point centre, double radius, double angle) {
    return Point.of(centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
  }

  /** A lever on a fixed hinge; effort and resistance at any arms and angles. */
  record Lever(double effortArm, double resistanceArm, double between, Vector hand, Direction ram)
      implements Linkage {

    private static final Point HINGE = Point.of(0.4, -0.3);

    @Override
    public Point effort(double angle) {
      return polar(HINGE, effortArm, angle);
    }

    @Override
    public Point resistance(double angle) {
      return polar(HINGE, resistanceArm, angle + between);
    }

    @Override
    public Device at(double angle) {
      return Device.named("lever")
          .point("hinge", HINGE)
          .point("grip", effort(angle))
          .point("toe", resistance(angle))
          .member("lever", "toe", "hinge", "grip")
          .pin("hinge", "hinge", "lever", "ground")
          .force("hand", "lever", "grip", hand)
          .sought("ram", "lever", "toe", ram)
          .advantage("hand", "ram")
          .build();
    }

    @Override
    public Pose pose(double drawn, double angle) {
      return Pose.of(Map.of("lever", Frame.turnAbout(HINGE, angle - drawn)));
    }
  }

  /** A crank that drives a slider along a line through its centre by a rod. */
  record SliderCrank(double crank, double rod, Vector hand) implements Linkage {

    @Override
    public Direction ram() {
      return Direction.LEFT;
    }

    private Point knee(double angle) {
      return polar(Point.ORIGIN, crank, angle);
    }

    @Override
    public Point effort(double angle) {
      return polar(Point.ORIGIN, 1.7 * crank, angle + 0.3);
    }

    @Override
    public Point resistance(double angle) {
      double high = crank * Math.sin(angle);
      return Point.of(crank * Math.cos(angle) + Math.sqrt(rod * rod - high * high), 0);
    }

    @Override
    public Device at(double angle) {
      return Device.named("cider press with crank")
          .point("shaft", Point.ORIGIN)
          .point("knee", knee(angle))
          .point("grip", effort(angle))
          .point("cross", resistance(angle))
          .member("crank", "grip", "shaft", "knee")
          .member("rod", "knee", "cross")
          .member("slider", "cross")
          .pin("shaft", "shaft", "crank", "ground")
          .pin("knee", "knee", "crank", "rod")
          .pin("cross", "cross", "rod", "slider")
          .connect(
              new bellcrank.statics.device.Guide(
                  "bed", "cross", "slider", "ground", Direction.RIGHT))
          .force("hand", "crank", "grip", hand)
          .sought("ram", "slider", "cross", ram())
          .advantage("hand", "ram")
          .build();
    }

    @Override
    public Pose pose(double drawn, double angle) {
      Point cross = resistance(drawn);
      return Pose.of(
          Map.of(
              "crank",
              Frame.turnAbout(Point.ORIGIN, angle - drawn),
              "rod",
              carry(knee(drawn), cross, knee(angle), resistance(angle)),
              "slider",
              Frame.of(cross.to(resistance(angle)), 0)));
    }
  }

  /** Four bars: crank, coupler, rocker; the resistance acts on the rocker beyond its pin. */
  record FourBar(double crank, double coupler, double rocker, double base, Vector hand)
      implements Linkage {

    @Override
    public Direction ram() {
      return Direction.from(-3, 1);
    }

    private Point knee(double angle) {
      return polar(Point.ORIGIN, crank, angle);
    }

    /** The upper crossing of the circles round knee and rocker hinge. */
    private Point head(double angle) {
      Point a = knee(angle);
      Point o = Point.of(base, 0);
      double d = a.distance(o);
      double along = (d * d + coupler * coupler - rocker * rocker) / (2 * d);
      double up = Math.sqrt(coupler * coupler - along * along);
      Direction u = Direction.from(a, o);
      return a.plus(u.times(along)).plus(u.perpendicular().times(up));
    }

    @Override
    public Point effort(double angle) {
      return polar(Point.ORIGIN, 1.3 * crank, angle - 0.4);
    }

    @Override
    public Point resistance(double angle) {
      Vector arm = Point.of(base, 0).to(head(angle));
      return Point.of(base, 0).plus(arm.times(1.25));
    }

    @Override
    public Device at(double angle) {
      return Device.named("log tongs on four bars")
          .point("left", Point.ORIGIN)
          .point("right", Point.of(base, 0))
          .point("knee", knee(angle))
          .point("head", head(angle))
          .point("grip", effort(angle))
          .point("jaw", resistance(angle))
          .member("crank", "grip", "left", "knee")
          .member("coupler", "knee", "head")
          .member("rocker", "right", "head", "jaw")
          .pin("left", "left", "crank", "ground")
          .pin("knee", "knee", "crank", "coupler")
          .pin("head", "head", "coupler", "rocker")
          .pin("right", "right", "rocker", "ground")
          .force("hand", "crank", "grip", hand)
          .sought("ram", "rocker", "jaw", ram())
          .advantage("hand", "ram")
          .build();
    }

    @Override
    public Pose pose(double drawn, double angle) {
      Point right = Point.of(base, 0);
      return Pose.of(
          Map.of(
              "crank",
              Frame.turnAbout(Point.ORIGIN, angle - drawn),
              "coupler",
              carry(knee(drawn), head(drawn), knee(angle), head(angle)),
              "rocker",
              carry(right, head(drawn), right, head(angle))));
    }
  }

  /** Asks whose answers are single unknowns of all three. */
  static List<String> asks(Device device) {
    return device.connections().stream()
        .filter(one -> one.kind().equals("pin"))
        .flatMap(
            pin ->
                java.util.stream.Stream.of(
                    pin.name() + ".x", pin.name() + ".y on " + pin.bodies().get(1)))
        .toList();
  }
}
