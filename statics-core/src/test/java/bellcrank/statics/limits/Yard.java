package bellcrank.statics.limits;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;

/** Small devices of the yard with numbers that can be worked by hand; gravity 10 m/s² down. */
final class Yard {

  private Yard() {}

  static DeviceBuilder named(String name) {
    return Device.named(name).gravity(Vector.of(0, -10));
  }

  static Weight weight(String name, String body, String at, double mass) {
    return new Weight(name, body, Optional.of(at), mass);
  }

  /** 5 m ladder at 3 : 4, its weight of 100 N at the middle, a picker of 800 N 1 m up. */
  static Device ladder(double floor, double wall) {
    return named("picking ladder")
        .point("foot", 0, 0)
        .point("rung", 0.6, 0.8)
        .point("middle", 1.5, 2)
        .point("top", 3, 4)
        .member("ladder", "foot", "rung", "middle", "top")
        .connect(new Contact("foot", "foot", "ladder", "ground", Direction.UP, floor, floor))
        .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, wall, wall))
        .load(weight("own", "ladder", "middle", 10))
        .load(weight("picker", "ladder", "rung", 80))
        .build();
  }

  /** A chest 0.6 m wide of 900 N, pushed to the right at 1.2 m height. */
  static DeviceBuilder chest(double friction) {
    return named("chest")
        .point("base", 0, 0)
        .point("middle", 0, 0.9)
        .point("hand", -0.3, 1.2)
        .member("chest", "base", "middle", "hand")
        .connect(
            new ContactBase(
                "floor", "base", "chest", "ground", Direction.UP, 0.6, friction, friction))
        .load(weight("own", "chest", "middle", 90));
  }

  static Device pushedChest(double friction, double push) {
    return chest(friction).load(new Force("push", "chest", "hand", Vector.of(push, 0))).build();
  }

  /** A book of 10 N between two rough walls. */
  static Device bookBetweenWalls() {
    return named("book")
        .point("left", 0, 0)
        .point("right", 0.1, 0)
        .point("middle", 0.05, 0)
        .member("book", "left", "middle", "right")
        .connect(new Contact("left", "left", "book", "ground", Direction.RIGHT, 0.5, 0.4))
        .connect(new Contact("right", "right", "book", "ground", Direction.LEFT, 0.5, 0.4))
        .load(weight("own", "book", "middle", 1))
        .build();
  }

  /** A rope from a load of 100 N over a post, half a turn and more whole ones. */
  static Device capstan(double friction, int turns) {
    return overPost(friction, turns)
        .load(new Force("barrel", "load", "load", Vector.of(0, -100)))
        .sought("pull", "hand", "hand", Direction.DOWN)
        .build();
  }

  /** A cart on two wheels that only push, free to roll. */
  static DeviceBuilder cart() {
    return named("cart")
        .point("front", 1, 0)
        .point("back", -1, 0)
        .member("cart", "back", "front")
        .connect(new Roller("front", "front", "cart", "ground", Direction.UP, Sides.ONE))
        .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE));
  }

  /** A rope that hangs down on both sides of a post, half a turn and more whole ones, unloaded. */
  static DeviceBuilder overPost(double friction, int turns) {
    return named("capstan")
        .point("post", 0, 0)
        .point("load", -0.1, -1)
        .point("hand", 0.1, -1)
        .joint("load")
        .joint("hand")
        .connect(
            new Wrap(
                "rope",
                Stop.end("load", "load"),
                new Stop(Stop.Kind.POST, "ground", "post", 0.1, Turn.CLOCKWISE),
                Stop.end("hand", "hand"),
                friction,
                turns));
  }

  /** A lever 1 m : 2 m on a pin of 30 mm radius with friction, 1000 N at its short arm. */
  static Device dryLever(double friction) {
    return named("dry lever")
        .point("hinge", 0, 0)
        .point("short", -1, 0)
        .point("long", 2, 0)
        .member("lever", "short", "hinge", "long")
        .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), 0.03, friction))
        .load(new Force("load", "lever", "short", Vector.of(0, -1000)))
        .sought("hand", "lever", "long", Direction.DOWN)
        .build();
  }

  /** A screw jack under 10 kN, in a guide: mean radius 20 mm, lead 8 mm. */
  static DeviceBuilder jack(double friction) {
    return named("screw jack")
        .point("foot", 0, 0)
        .point("head", 0, 1)
        .member("head", "head")
        .connect(new Guide("guide", "head", "head", "ground", Direction.UP))
        .connect(
            new Screw(
                "screw", End.of("head", "head"), End.of("ground", "foot"), 0.008, 0.02, friction))
        .load(new Force("load", "head", "head", Vector.of(0, -10_000)));
  }

  /** A post 1 m high on a base 0.4 m wide, 10 kN down and a force to the right on its top. */
  static Device post(double side) {
    return named("post")
        .point("base", 0, 0)
        .point("top", 0, 1)
        .member("post", "base", "top")
        .connect(new ContactBase("base", "base", "post", "ground", Direction.UP, 0.4, 0.5, 0.4))
        .load(new Force("down", "post", "top", Vector.of(0, -10_000)))
        .load(new Force("side", "post", "top", Vector.of(side, 0)))
        .build();
  }
}
