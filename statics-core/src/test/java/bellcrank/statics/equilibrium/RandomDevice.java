package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Turns steps into a valid device; a step that cannot be done is left out. */
final class RandomDevice {

  /** What a step adds. */
  enum Kind {
    MEMBER,
    HELD,
    JOINT,
    RESTRAINT,
    PIN,
    ROPE,
    LOAD,
    SOUGHT,
    CASE
  }

  /**
   * A step.
   *
   * @param kind what it adds
   * @param variant which one of that kind
   * @param first chooses a body
   * @param second chooses a body
   * @param x chooses a place
   * @param y chooses a place
   * @param more chooses a direction or size
   */
  record Step(Kind kind, int variant, int first, int second, int x, int y, int more) {}

  private static final int MOST_MEMBERS = 30;

  private static final List<Reeving.Hauling> HAULINGS = List.of(Reeving.Hauling.values());

  private static final List<Sought.Want> WANTS = List.of(Sought.Want.values());

  private final DeviceBuilder builder = Device.named("random device");
  private final boolean grid;
  private final Map<String, Point> places = new LinkedHashMap<>();
  private final List<String> members = new ArrayList<>();
  private final Map<String, String> joints = new LinkedHashMap<>();
  private final List<String> pins = new ArrayList<>();
  private final Map<String, String> pointOfPin = new LinkedHashMap<>();
  private final List<String> loads = new ArrayList<>();
  private final Map<String, List<Vector>> pushes = new LinkedHashMap<>();
  private int number;

  private RandomDevice(boolean grid) {
    this.grid = grid;
  }

  static Device build(boolean grid, List<Step> steps) {
    RandomDevice device = new RandomDevice(grid);
    device.heldMember(new Step(Kind.HELD, steps.size(), 0, 0, 1, 1, steps.size()));
    steps.forEach(device::step);
    return device.builder.build();
  }

  /** A device of up to eleven steps that depend on the seed alone. */
  static Device of(long seed) {
    return of(seed, 11);
  }

  /** A device of up to so many steps that depend on the seed alone. */
  static Device of(long seed, int most) {
    Random random = new Random(seed);
    List<Kind> kinds = new ArrayList<>(List.of(Kind.values()));
    kinds.addAll(List.of(Kind.MEMBER, Kind.HELD, Kind.HELD, Kind.HELD, Kind.LOAD, Kind.LOAD));
    List<Step> steps = new ArrayList<>();
    for (int i = random.nextInt(most); i >= 0; i--) {
      steps.add(
          new Step(
              kinds.get(random.nextInt(kinds.size())),
              random.nextInt(60),
              random.nextInt(60),
              random.nextInt(60),
              random.nextInt(17) - 8,
              random.nextInt(17) - 8,
              random.nextInt(60)));
    }
    return build(random.nextBoolean(), steps);
  }

  private void step(Step step) {
    number++;
    switch (step.kind()) {
      case MEMBER -> newMember(step, step.variant() % 12);
      case HELD -> heldMember(step);
      case JOINT -> newJoint(step);
      case RESTRAINT -> restraint(step, step.variant(), 0, body(step.first()), body(step.second()));
      case PIN -> pin(step);
      case ROPE -> rope(step);
      case LOAD -> load(step);
      case SOUGHT -> sought(step);
      case CASE -> loadCase(step);
    }
  }

  private String name(String kind) {
    return kind + " " + number;
  }

  /** A body by number; 0 is the ground. */
  private String body(int choice) {
    List<String> bodies = new ArrayList<>(List.of(Ground.NAME));
    bodies.addAll(members);
    bodies.addAll(joints.keySet());
    return bodies.get(choice % bodies.size());
  }

  private String member(int choice) {
    return members.get(choice % members.size());
  }

  /** A point of a body, for a step's place moved by some grid steps. */
  private String point(String body, Step step, int move) {
    String joint = joints.get(body);
    if (joint != null) {
      return joint;
    }
    double x = step.x() + (move * (step.more() % 5 - 2));
    double y = step.y() + (move * (step.more() % 3 - 1)) + (move > 1 ? 1 : 0);
    if (!grid) {
      x += 0.3 * Math.sin(number + 7.0 * move + x);
      y += 0.3 * Math.cos(3.0 * number + move + y);
    }
    String name = "P" + number + "." + places.size();
    return named(name, Point.of(x / 4, y / 4));
  }

  private String named(String name, Point place) {
    for (Map.Entry<String, Point> known : places.entrySet()) {
      if (known.getValue().equals(place)) {
        return known.getKey();
      }
    }
    places.put(name, place);
    builder.point(name, place);
    return name;
  }

  private Direction direction(int choice) {
    int[][] straight = {
      {0, 1}, {1, 0}, {0, -1}, {-1, 0}, {3, 4}, {-4, 3}, {1, 1}, {1, -1}, {5, -12}
    };
    int[] d = straight[choice % straight.length];
    return grid ? Direction.from(d[0], d[1]) : Direction.ofAngle(0.1 + 0.7 * choice);
  }

  /** A member in one of the ways that just hold it unless its shape is special. */
  private void heldMember(Step step) {
    int[] variants = {12, 2, 3, 4, 5, 6};
    // a base without friction would let it slide
    int more = step.more() % 3 == 0 ? step.more() + 1 : step.more();
    newMember(
        new Step(
            step.kind(), step.variant(), step.first(), step.second(), step.x(), step.y(), more),
        variants[step.variant() % variants.length]);
  }

  private void newMember(Step step, int variant) {
    if (members.size() >= MOST_MEMBERS) {
      return;
    }
    String name = name("member");
    String start = point(Ground.NAME, step, 0);
    String end = point(Ground.NAME, step, 1);
    List<Bar> bars = start.equals(end) ? List.of() : List.of(new Bar(start, end));
    builder.member(new Member(name, List.of(start, end), bars, List.of(), 1 + step.more() % 2));
    String one = body(step.first());
    String other = body(step.second());
    members.add(name);
    switch (variant) {
      case 0, 1, 9 -> {
        smoothPin("pin " + number, List.of(name, one), step, 0);
        restraint(step, step.more(), 1, name, other);
      }
      case 2 -> builder.clamp("clamp " + number, point(one, step, 0), name, fixable(one));
      case 3 -> {
        axial(step, 0, step.more(), name, one);
        axial(step, 1, step.more() + 1, name, other);
        axial(step, 2, step.more() + 2, name, one);
      }
      case 4 -> {
        guide(step, name, fixable(one));
        axial(step, 1, step.more(), name, other);
      }
      case 5 -> {
        roller(step, 0, step.more(), name, fixable(one));
        roller(step, 1, step.more() + step.first() % 3, name, fixable(other));
        roller(step, 2, step.more() + 1 + step.second() % 3, name, fixable(one));
      }
      case 6 -> base(step, 0, name, fixable(one));
      case 7 -> {
        smoothPin("pin " + number, List.of(name, one), step, 0);
        smoothPin("pin' " + number, List.of(name, other), step, 1);
      }
      case 8 -> {
        contact(step, 0, name, fixable(one));
        roller(step, 1, step.more(), name, fixable(other));
      }
      case 10 -> smoothPin("pin " + number, List.of(name, one), step, 0);
      case 12 -> {
        smoothPin("pin " + number, List.of(name, one), step, 0);
        axial(step, 1, step.more(), name, other);
      }
      default -> slot(step, 0, name, fixable(one));
    }
  }

  /** A joint cannot turn, so what needs a direction holds on to the ground instead. */
  private String fixable(String body) {
    return joints.containsKey(body) ? Ground.NAME : body;
  }

  private void newJoint(Step step) {
    String name = name("joint");
    String at = point(Ground.NAME, step, 0);
    builder.joint(new Joint(name, at));
    String one = body(step.first());
    String other = body(step.second());
    joints.put(name, at);
    axial(step, 1, step.variant(), name, one);
    axial(step, 2, step.variant() / 2, name, other);
  }

  private void smoothPin(String pin, List<String> bodies, Step step, int move) {
    String joint = bodies.stream().filter(joints::containsKey).findFirst().orElse(Ground.NAME);
    String at = point(joint, step, move);
    if (bodies.stream().filter(joints::containsKey).anyMatch(b -> !at.equals(joints.get(b)))) {
      return;
    }
    builder.connect(Pin.smooth(pin, at, bodies));
    pins.add(pin);
    pointOfPin.put(pin, at);
  }

  private void restraint(Step step, int variant, int move, String body, String other) {
    if (body.equals(other)) {
      return;
    }
    switch (variant % 8) {
      case 0 -> roller(step, move, step.more(), body, fixable(other));
      case 1 -> slot(step, move, body, fixable(other));
      case 2 -> contact(step, move, body, fixable(other));
      case 3 -> {
        if (!joints.containsKey(body) && !body.equals(fixable(other))) {
          builder.clamp(
              "clamp " + move + " " + number, point(body, step, move), fixable(other), body);
        }
      }
      case 4 -> {
        if (!joints.containsKey(body)) {
          base(step, move, body, fixable(other));
        }
      }
      default -> axial(step, move, variant, body, other);
    }
  }

  private void roller(Step step, int move, int direction, String body, String other) {
    if (body.equals(other)) {
      return;
    }
    String at = point(body, step, move);
    Direction push = direction(direction);
    Sides sides = step.more() % 3 == 0 ? Sides.ONE : Sides.TWO;
    if (sides == Sides.TWO || fits(at, body, other, push)) {
      builder.connect(new Roller("roller " + move + " " + number, at, body, other, push, sides));
    }
  }

  private void slot(Step step, int move, String body, String other) {
    if (body.equals(other)) {
      return;
    }
    String at = point(body, step, move);
    Direction along = direction(step.more());
    Sides sides = step.more() % 4 == 0 ? Sides.ONE : Sides.TWO;
    if (sides == Sides.TWO || fits(at, body, other, along.perpendicular())) {
      builder.connect(new Slot("slot " + move + " " + number, at, body, other, along, sides));
    }
  }

  /** Whether no support of one side is there that pushes the other way: no device has both. */
  private boolean fits(String at, String body, String other, Direction push) {
    double sign = body.compareTo(other) < 0 ? 1 : -1;
    String pair = sign > 0 ? at + body + other : at + other + body;
    Vector onFirst = push.times(sign);
    List<Vector> before = pushes.computeIfAbsent(pair, key -> new ArrayList<>());
    if (before.stream().anyMatch(one -> one.plus(onFirst).norm() < 1e-6)) {
      return false;
    }
    before.add(onFirst);
    return true;
  }

  private void guide(Step step, String body, String other) {
    builder.connect(
        new Guide("guide " + number, point(body, step, 0), body, other, direction(step.more())));
  }

  private void contact(Step step, int move, String body, String other) {
    if (body.equals(other)) {
      return;
    }
    double friction = step.more() % 2 * 0.4;
    String at = point(body, step, move);
    Direction push = direction(step.more());
    if (fits(at, body, other, push)) {
      builder.connect(
          new Contact(
              "contact " + move + " " + number, at, body, other, push, friction, friction / 2));
    }
  }

  private void base(Step step, int move, String body, String other) {
    if (body.equals(other)) {
      return;
    }
    String at = point(body, step, move);
    Direction push = direction(step.more());
    double friction = step.more() % 3 == 0 ? 0 : 0.5;
    if (fits(at, body, other, push)) {
      builder.connect(
          new ContactBase("base " + move + " " + number, at, body, other, push, 0.25, friction, 0));
    }
  }

  private void axial(Step step, int move, int variant, String body, String other) {
    if (body.equals(other)) {
      return;
    }
    End first = End.of(body, point(body, step, move));
    End second = End.of(other, point(other, step, move + 2 + variant % 4));
    if (first.at().equals(second.at())) {
      return;
    }
    String end = " " + move + " " + number;
    builder.connect(
        switch (variant % 4) {
          case 0 -> new Line("line" + end, first, second);
          case 1 -> new Screw("screw" + end, first, second, 0.005, 0.01, 0.15);
          default -> new Strut("strut" + end, first, second, variant % 3);
        });
  }

  private void pin(Step step) {
    List<String> bodies = new ArrayList<>();
    for (int i = 0; i < 2 + step.variant() % 3; i++) {
      String body = body(i % 2 == 0 ? step.first() + i : step.second() + 2 * i);
      if (!bodies.contains(body)) {
        bodies.add(body);
      }
    }
    if (bodies.size() > 1) {
      smoothPin("pin " + number, bodies, step, 0);
    }
  }

  private void rope(Step step) {
    double radius = step.more() % 4 * 0.02;
    Turn turn = step.more() % 2 == 0 ? Turn.CLOCKWISE : Turn.COUNTER_CLOCKWISE;
    Turn back = step.variant() % 2 == 0 ? Turn.CLOCKWISE : Turn.COUNTER_CLOCKWISE;
    String one = body(step.first());
    String other = body(step.second());
    String third = body(step.first() + step.variant());
    List<Stop> stops = new ArrayList<>();
    if (step.variant() % 3 == 0) {
      String drum = fixable(one);
      stops.add(Stop.drum(drum, point(drum, step, 0), 0.05, turn));
    } else {
      stops.add(Stop.end(one, point(one, step, 0)));
    }
    stops.add(Stop.sheave(other, point(other, step, 1), radius, turn));
    if (step.variant() % 5 > 2) {
      stops.add(Stop.sheave(third, point(third, step, 2), radius, back));
    }
    stops.add(Stop.end(body(step.more()), point(body(step.more()), step, 4)));
    for (int i = 1; i < stops.size(); i++) {
      Point p = places.get(stops.get(i - 1).at());
      Point q = places.get(stops.get(i).at());
      if (p == null || q == null || p.distance(q) < 0.2) {
        return;
      }
    }
    if (stops.stream().map(Stop::body).distinct().count() < 2) {
      return;
    }
    if (step.variant() % 7 == 6
        && stops.size() == 3
        && stops.get(0).kind() == Stop.Kind.END
        && !joints.containsKey(other)) {
      Stop post = new Stop(Stop.Kind.POST, other, stops.get(1).at(), 0.05, turn);
      builder.connect(
          new Wrap("wrap " + number, stops.get(0), post, stops.get(2), 0.3, step.more() % 3));
      return;
    }
    // a joint cannot take the couple of a sheave with losses
    boolean onJoint = radius > 0 && stops.stream().anyMatch(s -> joints.containsKey(s.body()));
    Reeving.Hauling hauling = HAULINGS.get(onJoint ? 0 : step.more() % 3);
    builder.connect(new Reeving("reeving " + number, stops, 0.9, hauling));
  }

  private void load(Step step) {
    String name = name("load");
    String body = body(step.first());
    if (body.equals(Ground.NAME)) {
      body = member(step.first());
    }
    double size = 10.0 * (1 + step.more());
    String member = member(step.first());
    loads.add(name);
    switch (step.variant() % 9) {
      case 0, 1 ->
          builder.force(name, body, point(body, step, 0), direction(step.second()).times(size));
      case 2 -> builder.load(new Couple(name, member, size - 300));
      case 3 -> builder.load(new Weight(name, body, Optional.of(point(body, step, 0)), size / 10));
      case 4 -> {
        String from = point(member, step, 0);
        String to = point(member, step, 3);
        if (!from.equals(to)) {
          Optional<Direction> direction =
              step.more() % 3 == 0 ? Optional.empty() : Optional.of(direction(step.more()));
          builder.load(
              new SpreadLoad(
                  name,
                  member,
                  from,
                  to,
                  size,
                  -size / 2 + 40,
                  direction,
                  step.more() % 2 == 0 || isUpright(from, to)
                      ? SpreadLoad.Per.LENGTH
                      : SpreadLoad.Per.HORIZONTAL));
        } else {
          loads.remove(name);
        }
      }
      case 5 -> {
        String other = body(step.second());
        End first = End.of(body, point(body, step, 0));
        End second = End.of(other, point(other, step, 2));
        if (!body.equals(other) && !first.at().equals(second.at())) {
          builder.load(new Spring(name, first, second, size * 5, 0.4));
        } else {
          loads.remove(name);
        }
      }
      case 6 -> {
        String other = fixable(body(step.second()));
        if (!member.equals(other)) {
          builder.load(new TorsionSpring(name, member, other, size, 0.3));
        } else {
          loads.remove(name);
        }
      }
      case 7 -> {
        if (pins.isEmpty()) {
          loads.remove(name);
          return;
        }
        String pin = pins.get(step.second() % pins.size());
        Vector force = direction(step.more()).times(size);
        builder.load(new Force(name, pin, pointOfPin.getOrDefault(pin, pin), force));
      }
      default -> {
        String second = point(member, step, 0);
        builder.load(new Weight(name, member, Optional.of(second), size / 20));
      }
    }
  }

  private boolean isUpright(String from, String to) {
    Point a = places.getOrDefault(from, Point.ORIGIN);
    Point b = places.getOrDefault(to, Point.ORIGIN);
    return Math.abs(a.x() - b.x()) < 0.1;
  }

  private void sought(Step step) {
    String name = name("sought");
    String body = body(step.first());
    if (body.equals(Ground.NAME)) {
      body = member(step.second());
    }
    String at = point(body, step, 0);
    Sought.Want want = WANTS.get(step.variant() % 5);
    switch (want) {
      case FORCE -> builder.sought(name, body, at, direction(step.more()));
      case COUPLE ->
          builder.load(
              new Sought(name, want, member(step.first()), Optional.empty(), Optional.empty()));
      case INTENSITY -> {
        String member = member(step.first());
        String from = point(member, step, 0);
        String to = point(member, step, 3);
        if (!from.equals(to)) {
          builder.load(
              new Sought(
                  name,
                  want,
                  member,
                  Optional.of(from),
                  Optional.of(direction(step.more())),
                  Optional.of(to)));
        }
      }
      default -> builder.load(new Sought(name, want, body, Optional.of(at), Optional.empty()));
    }
  }

  private void loadCase(Step step) {
    Map<String, Double> factors = new LinkedHashMap<>();
    for (int i = 0; i < loads.size(); i++) {
      if ((i + step.variant()) % 2 == 0) {
        factors.put(loads.get(i), (step.more() + i) % 5 - 1.5);
      }
    }
    builder.loadCase(new LoadCase(name("case"), factors, step.variant() % 2 == 0 ? 1 : 1.3));
  }
}
