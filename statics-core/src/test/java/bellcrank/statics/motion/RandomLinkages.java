package bellcrank.statics.motion;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Linkages of one freedom with random places of their pins. Any places do: lengths are what the
 * drawn pose makes them, so that every loop closes.
 */
final class RandomLinkages {

  private final Shares shares;
  private final DeviceBuilder builder = Device.named("linkage");
  private final List<ToDoubleFunction<Pose>> branches = new ArrayList<>();

  private RandomLinkages(Shares shares) {
    this.shares = shares;
  }

  /** Kinds of linkages. */
  enum Kind {
    FOUR_BAR,
    WATT,
    STEPHENSON,
    SLIDER_CRANK,
    INVERTED_SLIDER_CRANK,
    SCISSORS,
    JIB,
    TACKLE_JIB
  }

  static Arbitrary<DrivenLinkage> all() {
    return of(Kind.values());
  }

  static Arbitrary<DrivenLinkage> of(Kind... kinds) {
    Arbitrary<List<Double>> shares =
        Arbitraries.doubles().between(0, 1).ofScale(5).list().ofSize(48);
    return Combinators.combine(Arbitraries.of(kinds), shares)
        .as((kind, list) -> new RandomLinkages(new Shares(list)).linkage(kind));
  }

  private DrivenLinkage linkage(Kind kind) {
    return switch (kind) {
      case FOUR_BAR, WATT, STEPHENSON -> bars(kind);
      case SLIDER_CRANK -> sliderCrank();
      case INVERTED_SLIDER_CRANK -> inverted();
      case SCISSORS -> scissors();
      case JIB, TACKLE_JIB -> jib(kind);
    };
  }

  private double number(double from, double to) {
    return shares.number(from, to);
  }

  private Point beside(Point from, double least, double most, double angle, double spread) {
    double length = number(least, most);
    return from.plus(Direction.ofAngle(angle + number(-spread, spread)).times(length));
  }

  private DrivenLinkage bars(Kind kind) {
    Point b = beside(Point.ORIGIN, 0.3, 1, 1.6, 0.9);
    Point d = Point.of(number(1.2, 2.4), number(-0.4, 0.4));
    Point c = beside(b, 0.7, 2, 0.2, 0.5);
    Point p = beside(b, 0.3, 1.2, 0.9, 0.6);
    builder
        .point("A", 0, 0)
        .point("B", b)
        .point("C", c)
        .point("D", d)
        .point("P", p)
        .member("crank", "A", "B")
        .member("coupler", "B", "C", "P")
        .pin("a", "A", "crank", "ground")
        .pin("b", "B", "crank", "coupler")
        .pin("c", "C", "coupler", "rocker")
        .pin("d", "D", "rocker", "ground");
    boolean driveRocker = shares.isBelow(0.3);
    branches.add(
        driveRocker
            ? sine("crank", "A", "B", "coupler", "B", "C")
            : sine("coupler", "B", "C", "rocker", "C", "D"));
    String last = "rocker";
    String tip = "C";
    if (kind == Kind.FOUR_BAR) {
      builder.member("rocker", "D", "C");
    } else {
      Point e = kind == Kind.WATT ? beside(d, 0.4, 1.2, 0.7, 0.5) : p;
      Point f = beside(e, 0.6, 1.4, 0.3, 0.6);
      Point g = Point.of(f.x() + number(-0.5, 0.8), f.y() + number(-1.8, -0.6));
      String carrier = kind == Kind.WATT ? "rocker" : "coupler";
      builder
          .point("E", e)
          .point("F", f)
          .point("G", g)
          .member("arm", "E", "F")
          .member("swing", "G", "F")
          .pin("e", "E", carrier, "arm")
          .pin("f", "F", "arm", "swing")
          .pin("g", "G", "swing", "ground");
      if (kind == Kind.WATT) {
        builder.member("rocker", "D", "C", "E");
      } else {
        // the point E lies where P is: the coupler carries both
        builder.member("rocker", "D", "C");
      }
      branches.add(sine("arm", "E", "F", "swing", "F", "G"));
      last = "swing";
      tip = "F";
    }
    loads("coupler", "P", last, tip, "B");
    String driven = driveRocker ? "rocker" : "crank";
    String resisting = kind == Kind.FOUR_BAR ? (driveRocker ? "crank" : "rocker") : "swing";
    return turned(kind.name(), driven, resisting, 2.2);
  }

  private DrivenLinkage sliderCrank() {
    Point a = beside(Point.ORIGIN, 0.3, 0.8, 1.2, 1);
    Point b = beside(a, 0.7, 2, -0.1, 0.7);
    Direction along = Direction.ofAngle(number(-0.3, 0.3));
    builder
        .point("O", 0, 0)
        .point("A", a)
        .point("B", b)
        .point("P", beside(a, 0.2, 0.7, 0.7, 0.5))
        .member("crank", "O", "A")
        .member("rod", "A", "B", "P")
        .member("slider", "B")
        .pin("o", "O", "crank", "ground")
        .pin("a", "A", "crank", "rod")
        .pin("b", "B", "rod", "slider")
        .connect(new Guide("bed", "B", "slider", "ground", along));
    loads("rod", "P", "slider", "B", "A");
    if (shares.isBelow(0.4)) {
      branches.add(sine("crank", "O", "A", "rod", "A", "B"));
      return slid(Kind.SLIDER_CRANK.name(), "slider", "B", along);
    }
    branches.add(
        pose ->
            DrivenLinkage.cosine(
                PlainMotion.between(builderDevice(), pose, "rod", "A", "B"), along.times(1)));
    return turned(Kind.SLIDER_CRANK.name(), "crank", "rod", 3.5);
  }

  private DrivenLinkage inverted() {
    Point a = beside(Point.ORIGIN, 0.3, 0.8, 0.8, 1.5);
    Point q = Point.of(number(-0.5, 0.5), number(-1.6, -0.9));
    Vector way = q.to(a);
    // a slot beside the hinge of its member, so that it need not point to it
    Point heel = q.plus(way.perpendicular().times(number(-0.2, 0.2)));
    builder
        .point("O", 0, 0)
        .point("A", a)
        .point("Q", q)
        .point("heel", heel)
        .point("T", q.plus(way.times(number(1.2, 1.7))))
        .member("crank", "O", "A")
        .member("rocker", "heel", "Q", "T")
        .pin("o", "O", "crank", "ground")
        .pin("q", "heel", "rocker", "ground")
        .connect(new Slot("slot", "A", "crank", "rocker", Direction.from(way), Sides.TWO));
    loads("crank", "A", "rocker", "T", "O");
    branches.add(
        pose -> {
          Point pin = pose.frame("crank").apply(a);
          Vector along = pose.frame("rocker").apply(q).to(pose.frame("rocker").apply(q.plus(way)));
          return DrivenLinkage.cosine(heel.to(pin), along);
        });
    return turned(Kind.INVERTED_SLIDER_CRANK.name(), "crank", "rocker", 3);
  }

  private DrivenLinkage scissors() {
    int stages = shares.isBelow(0.5) ? 2 : 3;
    double wide = number(0.8, 1.4);
    double high = number(0.4, 0.9);
    for (int i = 0; i <= stages; i++) {
      double y = i * high;
      builder.point("L" + i, i == 0 ? 0 : near(0), y + (i == 0 ? 0 : near(0)));
      builder.point("R" + i, wide + near(0), y + near(0));
      if (i < stages) {
        builder.point("M" + i, wide / 2 + near(0), y + high / 2 + near(0));
      }
    }
    for (int i = 0; i < stages; i++) {
      String up = "up" + i;
      String down = "down" + i;
      builder
          .member(up, "L" + i, "M" + i, "R" + (i + 1))
          .member(down, "R" + i, "M" + i, "L" + (i + 1))
          .pin("m" + i, "M" + i, up, down);
      if (i == 0) {
        builder
            .pin("foot", "L0", up, "ground")
            .connect(new Roller("wheel", "R0", down, "ground", Direction.UP, Sides.TWO));
        branches.add(
            pose ->
                DrivenLinkage.cosine(
                    PlainMotion.between(builderDevice(), pose, "down0", "M0", "R0"),
                    Vector.of(1, 0)));
      } else {
        builder.pin("l" + i, "L" + i, "down" + (i - 1), up);
        builder.pin("r" + i, "R" + i, "up" + (i - 1), down);
        branches.add(sine(up, "L" + i, "M" + i, down, "M" + i, "R" + i));
      }
    }
    int top = stages - 1;
    loads("down" + top, "L" + stages, "up" + top, "R" + stages, "M" + top);
    return turned(Kind.SCISSORS.name(), "up0", "down" + top, 1.2);
  }

  private double near(double value) {
    return value + number(-0.08, 0.08);
  }

  private DrivenLinkage jib(Kind kind) {
    Point tip = beside(Point.ORIGIN, 1.5, 2.5, 0.6, 0.4);
    Point head = Point.of(number(-0.6, 0.2), number(2.2, 3.2));
    Point winch = Point.of(number(-2.5, -1.2), number(-0.3, 0.5));
    List<Stop> stops = new ArrayList<>();
    stops.add(Stop.end("ground", "winch"));
    stops.add(Stop.sheave("ground", "head", number(0.03, 0.2), Turn.CLOCKWISE));
    if (kind == Kind.JIB) {
      stops.add(Stop.end("jib", "tip"));
    } else {
      stops.add(Stop.sheave("jib", "tip", number(0.03, 0.15), Turn.CLOCKWISE));
      stops.add(Stop.end("ground", "anchor"));
    }
    builder
        .point("heel", 0, 0)
        .point("tip", tip)
        .point("head", head)
        .point("winch", winch)
        .point("anchor", Point.of(head.x(), head.y() - number(0.5, 0.9)))
        .point("P", Point.of(tip.x() / 2, tip.y() / 2 + number(-0.2, 0.2)))
        .member("jib", "heel", "P", "tip")
        .pin("heel", "heel", "jib", "ground")
        .connect(new Reeving("rope", stops, 1, Reeving.Hauling.IDEAL))
        .weight("barrel", "jib", "tip", number(100, 300));
    loads("jib", "P", "jib", "tip", "heel");
    // the arm of the rope about the heel is zero at a dead centre
    branches.add(pose -> PlainRope.of(builderDevice(), pose, stops).arm("jib", Point.ORIGIN));
    builder.advantage("rope", "push");
    return new DrivenLinkage(
        kind.name(),
        builderDevice(),
        Drive.length("rope"),
        -number(0.3, 1.5),
        number(0.3, 1.5),
        "rope.tension",
        branches);
  }

  /** Turned by a couple on one member against a couple on another. */
  private DrivenLinkage turned(String kind, String member, String resisting, double most) {
    builder
        .load(new Sought("effort", Sought.Want.COUPLE, member, Optional.empty(), Optional.empty()))
        .load(new Couple("brake", resisting, number(5, 50)))
        .advantage("effort", "brake");
    return new DrivenLinkage(
        kind,
        builderDevice(),
        Drive.turn(member),
        -number(0.2, most),
        number(0.2, most),
        "effort",
        branches);
  }

  private DrivenLinkage slid(String kind, String body, String point, Direction along) {
    builder.sought("effort", body, point, along).advantage("effort", "push");
    return new DrivenLinkage(
        kind,
        builderDevice(),
        Drive.slide(body, point, along),
        -number(0.2, 1),
        number(0.2, 1),
        "effort",
        branches);
  }

  private Optional<Device> built = Optional.empty();

  /** The device, once all parts are there. */
  private Device builderDevice() {
    Device device = built.orElseGet(builder::build);
    built = Optional.of(device);
    return device;
  }

  private void loads(String first, String at, String second, String tip, String from) {
    RandomLoads.add(builder, shares, first, at, second, tip, from);
  }

  private ToDoubleFunction<Pose> sine(
      String one, String from, String to, String other, String start, String end) {
    return pose ->
        DrivenLinkage.sine(
            PlainMotion.between(builderDevice(), pose, one, from, to),
            PlainMotion.between(builderDevice(), pose, other, start, end));
  }
}
