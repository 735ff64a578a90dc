package bellcrank.statics.limits;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns numbers between 0 and 1 into a small device with one-sided and rough parts. */
final class ContactScene {

  /** What is built. */
  enum Kind {
    SLOPE,
    LADDER,
    STACK,
    WALLS,
    POST,
    ROPE,
    LEVER,
    ANY
  }

  private static final String GROUND = Ground.NAME;

  private final DeviceBuilder builder = Device.named("yard piece");
  private final Map<Point, String> places = new HashMap<>();
  private final List<String> held = new ArrayList<>();
  private final boolean grid;
  private final List<Double> numbers;
  private int used;

  private ContactScene(boolean grid, List<Double> numbers) {
    this.grid = grid;
    this.numbers = numbers;
  }

  /**
   * Builds a device.
   *
   * @param kind what it is
   * @param grid whether all numbers are rounded, so that special shapes come up
   * @param numbers choices between 0 and 1
   */
  static Device build(Kind kind, boolean grid, List<Double> numbers) {
    ContactScene scene = new ContactScene(grid, numbers);
    switch (kind) {
      case SLOPE -> scene.slope();
      case LADDER -> scene.ladder();
      case STACK -> scene.stack();
      case WALLS -> scene.walls();
      case POST -> scene.post();
      case ROPE -> scene.rope();
      case LEVER -> scene.lever();
      case ANY -> scene.any();
    }
    return scene.builder.build();
  }

  private double next(double from, double to) {
    double number = numbers.get(used++ % numbers.size());
    double t = grid ? Math.rint(4 * number) / 4 : number;
    return from + t * (to - from);
  }

  private int choose(int count) {
    return Math.min(count - 1, (int) (numbers.get(used++ % numbers.size()) * count));
  }

  private double friction() {
    return choose(4) == 0 ? 0 : next(0.1, 0.9);
  }

  /** Name of a place; the same place has one name. */
  private String at(double x, double y) {
    Point place = Point.of(x, y);
    String known = places.get(place);
    if (known != null) {
      return known;
    }
    String name = "P" + places.size();
    places.put(place, name);
    builder.point(name, place);
    return name;
  }

  private String at(Point point) {
    return at(point.x(), point.y());
  }

  private Direction direction() {
    int[][] straight = {{0, 1}, {1, 0}, {0, -1}, {-1, 0}, {3, 4}, {-4, 3}, {1, 1}, {1, -1}};
    int[] d = straight[choose(straight.length)];
    return grid ? Direction.from(d[0], d[1]) : Direction.ofAngle(next(-Math.PI, Math.PI));
  }

  private void contact(
      String name, String body, String other, String at, Direction push, double mu) {
    builder.connect(new Contact(name, at, body, other, push, mu, mu / 2));
  }

  private void base(String name, String body, String other, String at, Direction push, double w) {
    double mu = friction();
    builder.connect(new ContactBase(name, at, body, other, push, w, mu, mu / 2));
  }

  private void pushed(String body, String at, Direction way) {
    builder.force("push", body, at, way.times(next(0, 200)));
  }

  private void slope() {
    Direction n = Direction.ofAngle(Math.PI / 2 + next(0, 0.9));
    Vector along = PlainParts.tangent(n);
    double half = next(0.1, 0.5);
    double high = next(0.2, 2);
    Point top = Point.ORIGIN.plus(n.times(high));
    builder.member("block", at(0, 0), at(top));
    if (choose(2) == 0) {
      base("foot", "block", GROUND, at(0, 0), n, 2 * half);
    } else {
      double mu = friction();
      contact("near foot", "block", GROUND, at(Point.ORIGIN.plus(along.times(-half))), n, mu);
      contact("far foot", "block", GROUND, at(Point.ORIGIN.plus(along.times(half))), n, mu);
    }
    builder.weight("weight", "block", at(Point.ORIGIN.plus(n.times(high / 2))), next(5, 50));
    pushed("block", at(top), Direction.from(along.times(choose(2) == 0 ? 1 : -1)));
    if (choose(3) == 0) {
      Point tie = top.plus(along.times(-2)).plus(n.times(next(-0.5, 0.5)));
      builder.line("stay", End.of("block", at(top)), End.of(GROUND, at(tie)));
    }
  }

  private void ladder() {
    double x = next(0.5, 3);
    double y = next(1, 4);
    builder.member("ladder", at(0, 0), at(x, y));
    contact("heel", "ladder", GROUND, at(0, 0), Direction.UP, friction());
    if (choose(3) > 0) {
      contact("head", "ladder", GROUND, at(x, y), Direction.LEFT, friction());
    } else {
      builder.connect(
          new Roller("head", at(x, y), "ladder", GROUND, Direction.from(-y, x), Sides.ONE));
    }
    builder.weight("weight", "ladder", at(x / 2, y / 2), next(5, 20));
    double t = next(0, 1);
    pushed("ladder", at(t * x, t * y), choose(2) == 0 ? Direction.DOWN : direction());
    if (choose(3) == 0) {
      builder.line("tie", End.of("ladder", at(x / 4, y / 4)), End.of(GROUND, at(x, next(0, 0.5))));
    }
  }

  private void stack() {
    int count = 2 + choose(2);
    double x = 0;
    double y = 0;
    String below = GROUND;
    for (int i = 0; i < count; i++) {
      String block = "block " + (i + 1);
      double high = next(0.2, 0.8);
      double width = next(0.2, 1);
      x += next(-0.2, 0.2);
      builder.member(block, at(x, y), at(x, y + high));
      base("face " + (i + 1), block, below, at(x, y), Direction.UP, width);
      builder.weight("weight " + (i + 1), block, at(x, y + high / 2), next(5, 50));
      y += high;
      below = block;
    }
    pushed(below, at(x, y), choose(2) == 0 ? Direction.RIGHT : Direction.from(-4, -3));
  }

  private void walls() {
    double wide = next(0.3, 1.5);
    double lean = next(-0.4, 0.4);
    builder.member("block", at(0, 0), at(wide, 0));
    contact("near", "block", GROUND, at(0, 0), Direction.ofAngle(lean), friction());
    Direction right = Direction.ofAngle(Math.PI - next(-0.4, 0.4));
    contact("far", "block", GROUND, at(wide, next(-0.3, 0.3)), right, friction());
    if (choose(2) == 0) {
      contact("third", "block", GROUND, at(0, next(0.25, 1)), Direction.ofAngle(lean), friction());
    }
    builder.weight("weight", "block", at(wide / 2, 0), choose(3) == 0 ? 0 : next(1, 20));
    pushed("block", at(wide * next(0, 1), next(-0.5, 0.5)), direction());
  }

  private void post() {
    double high = next(1, 3);
    builder.member("post", at(0, 0), at(0, high));
    switch (choose(3)) {
      case 0 -> builder.pin("foot", at(0, 0), "post", GROUND);
      case 1 -> base("foot", "post", GROUND, at(0, 0), Direction.UP, next(0.1, 0.4));
      default -> contact("foot", "post", GROUND, at(0, 0), Direction.UP, friction());
    }
    builder.line("main stay", End.of("post", at(0, high)), End.of(GROUND, at(-next(0.5, 2), 0)));
    double low = high * next(0.5, 1);
    if (choose(2) == 0) {
      builder.line("back stay", End.of("post", at(0, low)), End.of(GROUND, at(next(0.5, 2), 0)));
    }
    builder.weight("weight", "post", at(0, high / 2), next(0, 30));
    pushed("post", at(0, high * next(0.25, 1)), direction());
  }

  private void rope() {
    double high = next(0.2, 0.8);
    builder.member("sledge", at(0, 0), at(0, high));
    base("runner", "sledge", GROUND, at(0, 0), Direction.UP, next(0.5, 1));
    builder.weight("weight", "sledge", at(0, high / 2), next(10, 60));
    builder.member("treadle", at(4, -1), at(3, -1));
    builder.pin("hinge", at(4, -1), "treadle", GROUND);
    Stop first = Stop.end("sledge", at(0, high * next(0.25, 1)));
    Stop post = new Stop(Stop.Kind.POST, GROUND, at(2, next(0.25, 1)), 0.1, Turn.CLOCKWISE);
    Stop last = Stop.end("treadle", at(3, -1));
    builder.connect(new Wrap("rope", first, post, last, friction(), choose(2)));
    pushed("treadle", at(3, -1), Direction.DOWN);
  }

  /** A lever that presses a block against the ground, while something pushes the block. */
  private void lever() {
    double length = next(1, 3);
    double t = next(0.25, 0.75);
    double x = t * length;
    builder.member("lever", at(0, 1), at(length, 1));
    builder.pin("hinge", at(0, 1), "lever", GROUND);
    builder.weight("weight", "lever", at(length * next(0.5, 1), 1), next(0, 40));
    builder.member("block", at(x, 0), at(x, 1));
    base("foot", "block", GROUND, at(x, 0), Direction.UP, next(0.1, 0.8));
    contact("bite", "block", "lever", at(x, 1), Direction.DOWN, friction());
    pushed("block", at(x, next(0.25, 0.75)), direction());
    if (choose(3) == 0) {
      builder.line("tail", End.of("block", at(x, 0.5)), End.of(GROUND, at(x - 1, 0.25)));
    }
  }

  private void any() {
    int members = 1 + choose(2);
    String before = GROUND;
    for (int i = 0; i < members; i++) {
      String member = "piece " + (i + 1);
      double x = next(-1, 1);
      double y = next(-1, 1) + 3 * i;
      builder.member(member, at(x, y), at(x + 1, y));
      for (int k = 2 + choose(3); k >= 0; k--) {
        part("part " + (i + 1) + "." + k, member, choose(3) == 0 ? before : GROUND, x, y);
      }
      builder.weight("weight " + (i + 1), member, at(x + 0.5, y), choose(3) == 0 ? 0 : next(1, 9));
      if (i == members - 1) {
        pushed(member, at(x + next(0, 1), y + next(-1, 1)), direction());
      }
      before = member;
    }
  }

  private void part(String name, String body, String other, double x, double y) {
    Point place = Point.of(x + next(0, 1), y + next(-1, 1));
    if (held.contains(body + place)) {
      return;
    }
    held.add(body + place);
    String at = at(place);
    switch (choose(8)) {
      case 0 -> builder.connect(new Roller(name, at, body, other, direction(), Sides.ONE));
      case 1, 2 ->
          builder.line(
              name,
              End.of(body, at),
              End.of(other, at(place.plus(direction().times(next(0.5, 1.5))))));
      case 3 -> base(name, body, other, at, direction(), next(0.1, 0.6));
      case 4 -> builder.connect(Pin.smooth(name, at, List.of(body, other)));
      case 5 ->
          builder.connect(
              new Strut(
                  name, End.of(body, at), End.of(other, at(place.plus(direction().times(1)))), 0));
      default -> contact(name, body, other, at, direction(), friction());
    }
  }
}
