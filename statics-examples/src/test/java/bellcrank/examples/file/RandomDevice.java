package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
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
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
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
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Bearing;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.FrictionTable;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.SoilTable;
import bellcrank.statics.ground.Undrained;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideStay;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** Makes device files with everything in them that a device can have, under hostile names. */
final class RandomDevice {

  private static final List<String> HOSTILE =
      List.of(
          "y",
          "n",
          "on",
          "off",
          "no",
          "null",
          "~",
          "true",
          "1e3",
          "0x1F",
          "1:20",
          "2020-01-01",
          "<b>",
          "a: b",
          "a #b",
          "#",
          "- x",
          "?",
          "[a]",
          "{b}",
          "&c",
          "*d",
          "!e",
          "|",
          ">",
          "%f",
          "@g",
          "`h",
          "'i'",
          "it's",
          "a\\b",
          "A–B",
          "grüße",
          "支点",
          "\uD83D\uDE00",
          "a, b",
          "<<",
          "=",
          ".inf",
          "up",
          "1",
          "-1",
          "1/2 in",
          "---",
          "a.x",
          "x on y",
          "group",
          "outcome",
          "per",
          "a  b",
          "\u00A0x",
          "x weight",
          "to its left",
          "\uE000",
          "none",
          "...",
          "12 kg");

  private final Random random;
  private final Set<String> bodies = new HashSet<>(Set.of(Ground.NAME));
  private final Set<String> parts = new HashSet<>();
  private final List<String> points = new ArrayList<>();
  private final List<String> members = new ArrayList<>();
  private final Map<String, String> joints = new LinkedHashMap<>();
  private final Set<String> supports = new HashSet<>();
  private final List<String> screws = new ArrayList<>();
  private final List<String> movable = new ArrayList<>();
  private final List<String> given = new ArrayList<>();
  private final List<TableFriction> tables = new ArrayList<>();
  private DeviceBuilder device = Device.named("unnamed");

  private RandomDevice(long seed) {
    random = new Random(seed);
  }

  static DeviceFile file(long seed) {
    return new RandomDevice(seed).file();
  }

  private DeviceFile file() {
    UnitSystem units = units();
    device = Device.named(pick(HOSTILE).strip());
    if (chance(2)) {
      device.gravity(
          pick(
              List.of(
                  Vector.ZERO,
                  Vector.of(0, -9.81),
                  Vector.of(number(), number()),
                  Direction.ofAngle(number()).times(9.81))));
    }
    points();
    bodies();
    connections();
    loads();
    cases();
    Device built = device.build();
    DeviceFile file =
        new DeviceFile(
            built,
            about(),
            units,
            asks(built),
            expectations(built),
            limits(),
            foundations(built),
            side(built),
            tables,
            travel(built));
    return random.nextBoolean() ? file : new RandomSizing(random, built).in(file);
  }

  private Optional<TravelPlan> travel(Device built) {
    List<String> known = members.stream().filter(name -> built.body(name).isPresent()).toList();
    if (known.isEmpty() || chance(3)) {
      return Optional.empty();
    }
    String member = pick(known);
    List<String> own = points.stream().filter(p -> built.bodiesAt(p).contains(member)).toList();
    Drive drive =
        own.isEmpty() || chance(2)
            ? Drive.turn(member)
            : Drive.slide(member, pick(own), Direction.ofAngle(number()));
    List<String> edge = two(points);
    List<Meeting> meetings =
        own.isEmpty() || chance(2) || built.point(edge.get(0)).equals(built.point(edge.get(1)))
            ? List.of()
            : List.of(new Meeting(member, pick(own), Ground.NAME, edge.get(0), edge.get(1)));
    int steps = 1 + random.nextInt(20);
    return Optional.of(new TravelPlan(drive, -none(), size(), steps, meetings, List.of()));
  }

  private Optional<SideStatement> side(Device built) {
    List<String> bases =
        built.connections().stream()
            .filter(one -> one instanceof ContactBase && one.bodies().contains(Ground.NAME))
            .map(Connection::name)
            .toList();
    if (bases.isEmpty() || chance(4)) {
      return Optional.empty();
    }
    String base = pick(bases);
    List<String> forces = SideForces.of(built, base);
    Set<String> names = new HashSet<>(forces);
    names.add(base);
    Map<String, Double> offsets = new LinkedHashMap<>();
    List<String> leaveOut = new ArrayList<>();
    for (String force : forces) {
      if (chance(3)) {
        offsets.put(force, number());
      } else if (chance(4)) {
        leaveOut.add(force);
      }
    }
    List<SideLoad> loads = new ArrayList<>();
    List<SideStay> stays = new ArrayList<>();
    while (chance(2)) {
      loads.add(new SideLoad(fresh(names), number(), none(), none(), none()));
      stays.add(new SideStay(fresh(names), number(), none(), number(), none()));
    }
    return Optional.of(
        new SideStatement(
            base,
            size(),
            chance(2) ? OptionalDouble.of(none()) : OptionalDouble.empty(),
            none(),
            chance(2) ? 0 : slope(),
            chance(2) ? 0 : -slope(),
            offsets,
            loads,
            stays,
            leaveOut));
  }

  private List<Foundation> foundations(Device built) {
    List<Foundation> foundations = new ArrayList<>();
    for (Connection connection : built.connections()) {
      if (connection instanceof ContactBase && chance(2)) {
        Optional<Cleat> cleat =
            chance(2) ? Optional.empty() : Optional.of(new Cleat(size(), slope(), none(), none()));
        foundations.add(new Foundation(connection.name(), size(), bearing(), none(), cleat));
      }
    }
    return foundations;
  }

  private Optional<Bearing> bearing() {
    return switch (random.nextInt(6)) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(new Drained(slope(), none(), none(), none()));
      case 2 -> Optional.of(new Undrained(size(), none()));
      case 3 -> Optional.of(pick(SoilTable.rows()).lowest());
      case 4 -> Optional.of(new Presumptive(size(), GroundReader.STATED));
      default -> Optional.of(new Presumptive(size(), "t" + pick(HOSTILE).strip()));
    };
  }

  private double slope() {
    return 0.01 + random.nextDouble();
  }

  private double none() {
    return chance(2) ? 0 : size();
  }

  private Map<String, Variation> limits() {
    Map<String, Variation> limits = new LinkedHashMap<>();
    Set<String> names = new HashSet<>();
    List<String> several = given.stream().filter(load -> chance(3)).toList();
    if (chance(2)) {
      limits.put(fresh(names), Variation.ofAppliedLoads());
      limits.put(fresh(names), Variation.of(pick(given)));
      limits.put(fresh(names), new Variation.Multiple(several));
    }
    movable.forEach(
        load -> {
          List<String> ends = two(points);
          limits.put(fresh(names), Variation.place(load, ends.get(0), ends.get(1)));
        });
    return limits;
  }

  private UnitSystem units() {
    UnitSystem units =
        UnitSystem.from(
            Unit.parse(pick(List.of("m", "mm", "in", "ft", "km"))),
            Unit.parse(pick(List.of("N", "kN", "lbf", "kip", "kgf"))));
    List<String> others =
        List.of("rad", "turn", "kg", "lb", "slug", "kN·m", "lbf·in", "kN/m", "psi", "ft/s²", "cm²");
    for (int i = 0; i < 3; i++) {
      units = chance(2) ? units.with(Unit.parse(pick(others))) : units;
    }
    return pick(List.of(units, units, UnitSystem.SI, UnitSystem.US));
  }

  /** Points far enough apart that ropes have straight parts between small sheaves. */
  private void points() {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < 7; i++) {
      String name = fresh(names);
      points.add(name);
      device.point(name, Point.of(10 * i + random.nextDouble(), number()));
    }
  }

  private void bodies() {
    for (int i = 0; i < 3; i++) {
      String name = fresh(bodies);
      List<Bar> bars = new ArrayList<>();
      for (int k = random.nextInt(3); k > 0; k--) {
        List<String> ends = two(points);
        bars.add(new Bar(ends.get(0), ends.get(1)));
      }
      if (chance(2)) {
        bars = new ArrayList<>(Member.of("m", points.subList(i, i + 3)).bars());
      }
      List<String> own = chance(2) ? List.of() : two(points);
      // two places enclose nothing that a random push of a contact could face away from
      List<String> outline = chance(3) ? points.subList(0, 2) : List.of();
      device.member(new Member(name, own, bars, outline, chance(3) ? 2 : 1));
      members.add(name);
      if (chance(2) && parts.add(name + " weight")) {
        Optional<String> at =
            bars.isEmpty() || chance(2) ? Optional.of(pick(points)) : Optional.empty();
        device.load(new Weight(name + " weight", name, at, size()));
        given.add(name + " weight");
      }
    }
    for (int i = 0; i < 3; i++) {
      String point = pick(points);
      String name = chance(2) && bodies.add(point) ? point : fresh(bodies);
      joints.put(name, point);
      device.joint(new Joint(name, point));
    }
  }

  private void connections() {
    List<String> jointNames = List.copyOf(joints.keySet());
    for (int i = 0; i < jointNames.size(); i++) {
      End first = joint(jointNames.get(i));
      End second = joint(jointNames.get((i + 1) % jointNames.size()));
      String name = first.at() + "–" + second.at();
      if (!first.at().equals(second.at()) && name.length() < 80 && parts.add(name)) {
        device.connect(new Strut(name, first, second, chance(5) ? size() : 0));
      }
    }
    for (int kind = 0; kind < 12; kind++) {
      for (int i = 0; i < 2; i++) {
        Connection connection = connection(kind);
        device.connect(connection);
        if (connection instanceof Screw && !bodies.contains(connection.name())) {
          screws.add(connection.name());
        }
        device.count(connection.name(), chance(4) ? 1 + random.nextInt(5) : 1);
      }
    }
  }

  private End joint(String name) {
    return End.of(name, joints.getOrDefault(name, ""));
  }

  private Connection connection(int kind) {
    String name = fresh(parts);
    String at = pick(points);
    List<String> two = two(withGround());
    // two supports of one side at one place might contradict one another
    while (!supports.add(at + two.stream().sorted().toList())) {
      at = pick(points);
      two = two(withGround());
    }
    return connection(kind, name, at, two);
  }

  private Connection connection(int kind, String name, String at, List<String> two) {
    List<String> ends = two(points);
    End first = End.of(two.get(0), ends.get(0));
    End second = End.of(two.get(1), ends.get(1));
    double friction = Math.abs(number());
    if (kind >= 8 && chance(3)) {
      TableFriction.Take take = pick(List.of(TableFriction.Take.values()));
      TableFriction taken =
          new TableFriction(name, pick(FrictionTable.rows()).name(), Optional.of(take));
      tables.add(taken);
      friction = taken.value();
    }
    double kinetic = chance(2) ? friction : friction * random.nextDouble();
    Sides sides = pick(List.of(Sides.ONE, Sides.TWO));
    return switch (kind) {
      case 0 -> new Pin(name, at, chance(2) ? two : withGround(), size(), chance(2) ? friction : 0);
      case 1 -> new Clamp(name, at, two.get(0), two.get(1));
      case 2 -> new Roller(name, at, two.get(0), two.get(1), direction(), sides);
      case 3 -> new Slot(name, at, two.get(0), two.get(1), direction(), sides);
      case 4 -> new Guide(name, at, two.get(0), two.get(1), direction());
      case 5 -> new Strut(name, first, second, chance(2) ? size() : 0);
      case 6 -> new Line(name, first, second);
      case 7 -> reeving(name, two);
      case 8 ->
          new Wrap(
              name,
              Stop.end(two.get(0), points.get(0)),
              round(Stop.Kind.POST, two.get(1), points.get(1)),
              Stop.end(two.get(0), points.get(2)),
              friction,
              random.nextInt(3));
      case 9 -> new Screw(name, first, second, size(), size(), friction);
      case 10 -> new Contact(name, at, two.get(0), two.get(1), direction(), friction, kinetic);
      default ->
          new ContactBase(name, at, two.get(0), two.get(1), direction(), size(), friction, kinetic);
    };
  }

  private Reeving reeving(String name, List<String> two) {
    List<Stop> stops = new ArrayList<>();
    stops.add(
        chance(2)
            ? Stop.end(two.get(0), points.get(0))
            : round(Stop.Kind.DRUM, two.get(0), points.get(0)));
    for (int i = 1; i <= random.nextInt(3); i++) {
      stops.add(
          chance(2)
              ? Stop.sheave(two.get(1), points.get(i), 0, turn())
              : round(Stop.Kind.SHEAVE, two.get(1), points.get(i)));
    }
    stops.add(Stop.end(two.get(1), points.get(5)));
    return new Reeving(
        name,
        stops,
        chance(2) ? 1 : 1 - random.nextDouble(),
        pick(List.of(Reeving.Hauling.values())));
  }

  private Stop round(Stop.Kind kind, String body, String at) {
    return new Stop(kind, body, at, 0.001 + random.nextDouble(), turn());
  }

  private Turn turn() {
    return pick(List.of(Turn.values()));
  }

  private void loads() {
    for (int kind = 0; kind < 6; kind++) {
      for (int i = 0; i < 2; i++) {
        Load load = load(kind);
        device.load(load);
        given.add(load.name());
        boolean force = load instanceof Force one && members.contains(one.body());
        boolean weight = load instanceof Weight one && members.contains(one.body());
        if (force || weight) {
          movable.add(load.name());
        }
      }
    }
    screws.forEach(screw -> device.load(new Couple(fresh(parts), screw, number())));
    for (Sought.Want want : Sought.Want.values()) {
      device.load(sought(want));
    }
    screws.forEach(
        screw ->
            device.load(
                new Sought(
                    fresh(parts), Sought.Want.COUPLE, screw, Optional.empty(), Optional.empty())));
    device.advantage(given.get(given.size() - 1), given.get(given.size() - 2));
  }

  private Sought sought(Sought.Want want) {
    boolean onMember = want == Sought.Want.COUPLE || want == Sought.Want.INTENSITY || chance(2);
    String body = onMember ? pick(members) : pick(List.copyOf(joints.keySet()));
    String at = joints.getOrDefault(body, points.get(0));
    return new Sought(
        fresh(parts),
        want,
        body,
        want == Sought.Want.COUPLE && chance(2) ? Optional.empty() : Optional.of(at),
        want == Sought.Want.FORCE || want == Sought.Want.INTENSITY
            ? Optional.of(direction())
            : Optional.empty(),
        want == Sought.Want.INTENSITY ? Optional.of(points.get(3)) : Optional.empty());
  }

  private Load load(int kind) {
    String name = fresh(parts);
    String body = chance(2) ? pick(members) : pick(List.copyOf(joints.keySet()));
    String at = joints.getOrDefault(body, pick(points));
    List<String> two = two(withGround());
    List<String> ends = two(points);
    double start = number();
    return switch (kind) {
      case 0 ->
          new SpreadLoad(
              name,
              pick(members),
              ends.get(0),
              ends.get(1),
              start,
              chance(2) ? start : number(),
              chance(2) ? Optional.empty() : Optional.of(direction()),
              pick(List.of(SpreadLoad.Per.values())));
      case 1 -> new Weight(name, body, Optional.of(at), size());
      case 2 ->
          new Spring(
              name,
              End.of(two.get(0), ends.get(0)),
              End.of(two.get(1), ends.get(1)),
              size(),
              size());
      case 3 -> {
        List<String> turned = two(members);
        yield new TorsionSpring(name, turned.get(0), turned.get(1), size(), number());
      }
      case 4 ->
          chance(2)
              ? new Couple(name, pick(members), number())
              : new Couple(name, pick(members), number(), Optional.of(points.get(1)));
      default -> new Force(name, body, at, vector());
    };
  }

  private Vector vector() {
    return switch (random.nextInt(4)) {
      case 0 -> Vector.of(number(), number());
      case 1 -> direction().times(number());
      case 2 -> Vector.of(0, number());
      default -> Vector.ZERO;
    };
  }

  private void cases() {
    if (chance(2)) {
      return;
    }
    Set<String> names = new HashSet<>();
    for (int i = 0; i < 2; i++) {
      Map<String, Double> factors = new LinkedHashMap<>();
      for (int k = random.nextInt(3); k > 0; k--) {
        factors.put(pick(given), number());
      }
      device.loadCase(new LoadCase(fresh(names), factors, chance(2) ? 1 : size()));
    }
  }

  private About about() {
    return new About(text(), text(), text(), text(), text());
  }

  private Optional<String> text() {
    return chance(2) ? Optional.empty() : Optional.of("t" + pick(HOSTILE) + "\n" + pick(HOSTILE));
  }

  private List<Ask> asks(Device built) {
    List<Ask> asks = new ArrayList<>();
    for (Ask ask : Ask.all(built)) {
      boolean number =
          ask.measure() != Measure.LINE
              && !(ask.subject() instanceof Subject.Whole)
              && !Limits.decide(ask);
      if (chance(10)) {
        asks.add(number && chance(3) ? ask.greatest() : ask);
      }
    }
    if (chance(2)) {
      asks.add(Ask.of(new Subject.Multiple(List.of(pick(given))), Measure.VALUE).least());
    }
    return asks;
  }

  private List<Expectation> expectations(Device built) {
    PartNames kinds = new PartNames();
    built.loads().forEach(kinds::add);
    List<Expectation> expectations = new ArrayList<>();
    for (Ask ask : asks(built)) {
      Optional<Dimension> dimension = AskDimension.of(ask, kinds);
      expectations.add(
          new Expectation(
              ask,
              dimension
                  .<Expected>map(one -> new Expected.Amount(new Quantity(number(), one), unit(one)))
                  .orElseGet(() -> new Expected.Words(pick(HOSTILE).strip())),
              dimension.isPresent() ? 1 + random.nextInt(15) : 0,
              text(),
              text(),
              text()));
    }
    return expectations;
  }

  private Unit unit(Dimension dimension) {
    return pick(Unit.all().stream().filter(unit -> unit.dimension() == dimension).toList());
  }

  private Direction direction() {
    return switch (random.nextInt(5)) {
      case 0 -> pick(List.of(Direction.UP, Direction.DOWN, Direction.LEFT, Direction.RIGHT));
      case 1 -> Direction.ofAngle(Math.toRadians(random.nextInt(360)));
      case 2 -> Direction.from(1 + random.nextInt(12), random.nextInt(12) - 6);
      case 3 -> {
        double angle = random.nextDouble() * 7;
        yield new Direction(StrictMath.cos(angle), Math.nextUp(StrictMath.sin(angle)));
      }
      default -> Direction.ofAngle(random.nextDouble() * 7);
    };
  }

  private double size() {
    return Math.max(Math.abs(number()), 1e-6);
  }

  /** A number of any look: whole, decimal, full of digits, tiny or large. */
  private double number() {
    return switch (random.nextInt(6)) {
      case 0 -> random.nextInt(2000) - 1000;
      case 1 -> (random.nextInt(20_000) - 10_000) / 1000.0;
      case 2 -> random.nextGaussian() * 1e-9;
      case 3 -> random.nextGaussian() * 1e7;
      case 4 -> (random.nextInt(2000) - 1000) * 0.3048;
      default -> random.nextGaussian();
    };
  }

  private List<String> withGround() {
    List<String> all = new ArrayList<>(members);
    all.add(Ground.NAME);
    return all;
  }

  private List<String> two(List<String> from) {
    int first = random.nextInt(from.size());
    int second = (first + 1 + random.nextInt(from.size() - 1)) % from.size();
    return List.of(from.get(first), from.get(second));
  }

  private String fresh(Set<String> taken) {
    String name = pick(HOSTILE);
    while (!taken.add(name)) {
      name = pick(HOSTILE) + random.nextInt(1000);
    }
    return name;
  }

  private boolean chance(int oneIn) {
    return random.nextInt(oneIn) == 0;
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
