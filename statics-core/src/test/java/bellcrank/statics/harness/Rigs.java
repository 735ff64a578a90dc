package bellcrank.statics.harness;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Profiles;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import java.util.List;
import java.util.Map;

/** Small devices of the yard, to be asserted about. */
final class Rigs {

  private Rigs() {}

  /** A press lever 0.25 m : 1.6 m; the ram pushes back with 1408 N when the hand pushes 220 N. */
  static Device press() {
    return pressBuilder().build();
  }

  static DeviceBuilder pressBuilder() {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("grip", 1.6, 0.1)
        .member("lever", "hinge", "ram", "grip")
        .pin("hinge", "hinge", "lever", "ground")
        .force("hand", "lever", "grip", Vector.of(0, -220))
        .sought("ram", "lever", "ram", Direction.UP)
        .advantage("hand", "ram");
  }

  /** The same with a light hand as a second case. */
  static Device pressInTwoCases() {
    return pressBuilder()
        .loadCase(new LoadCase("full", Map.of(), 1))
        .loadCase(new LoadCase("light", Map.of("hand", 0.5), 1))
        .build();
  }

  /** A four-sided gate without a brace. */
  static Device gate() {
    return Device.named("gate without brace")
        .point("top hinge", 0, 1.2)
        .point("low hinge", 0, 0.2)
        .point("top end", 2.4, 1.2)
        .point("low end", 2.4, 0.2)
        .member("top rail", "top hinge", "top end")
        .member("low rail", "low hinge", "low end")
        .member("upright", "top end", "low end")
        .pin("top hinge", "top hinge", "top rail", "ground")
        .pin("low hinge", "low hinge", "low rail", "ground")
        .pin("top end", "top end", "upright", "top rail")
        .pin("low end", "low end", "upright", "low rail")
        .force("weight", "upright", "top end", Vector.of(0, -100))
        .build();
  }

  /** A ladder of 4.8 at 12 on a rough floor; the boards carry what statics leaves open. */
  static Device ladder(double floor) {
    return Device.named("picking ladder")
        .point("foot", 0, 0)
        .point("middle", 0.75, 1.8)
        .point("rung", 1, 2.4)
        .point("top", 1.5, 3.6)
        .member("ladder", "foot", "top")
        .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, floor, floor))
        .connect(new Contact("boards", "top", "ladder", "ground", Direction.LEFT, 0.2, 0.2))
        .force("own weight", "ladder", "middle", Vector.of(0, -120))
        .force("picker", "ladder", "rung", Vector.of(0, -720))
        .build();
  }

  /** A chest 0.6 m wide of 900 N, pushed to the right at 1.2 m height; it tips at 225 N. */
  static Device chest(double friction, double push) {
    return Device.named("chest")
        .point("base", 0, 0)
        .point("middle", 0, 0.9)
        .point("side", -0.3, 1.2)
        .member("chest", "base", "middle", "side")
        .connect(
            new ContactBase(
                "floor", "base", "chest", "ground", Direction.UP, 0.6, friction, friction))
        .force("own", "chest", "middle", Vector.of(0, -900))
        .force("push", "chest", "side", Vector.of(push, 0))
        .build();
  }

  /** A rope of 600 N once and a half round a post, let down by hand. */
  static Device capstan() {
    return Device.named("cellar rope")
        .point("post", 0, 0)
        .point("cask", -0.1, -1)
        .point("hand", 0.1, -1)
        .joint("cask")
        .joint("hand")
        .connect(
            new Wrap(
                "rope",
                Stop.end("cask", "cask"),
                new Stop(Stop.Kind.POST, "ground", "post", 0.1, Turn.CLOCKWISE),
                Stop.end("hand", "hand"),
                0.25,
                1))
        .force("barrel", "cask", "cask", Vector.of(0, -600))
        .sought("pull", "hand", "hand", Direction.DOWN)
        .build();
  }

  /** A jib of 5 m on a mast of 6 m, held by a rope that carries 110 N for each metre of it. */
  static Device jib() {
    return Device.named("luffing jib")
        .point("heel", 0, 0)
        .point("head", 0, 6)
        .point("tip", 4, 3)
        .member("jib", "heel", "tip")
        .pin("heel", "heel", "jib", "ground")
        .connect(new Line("rope", End.of("jib", "tip"), End.of("ground", "head")))
        .force("barrel", "jib", "tip", Vector.of(0, -660))
        .advantage("rope", "barrel")
        .build();
  }

  /** A jib whose rope would have to push. */
  static Device jibOnAProp() {
    return Device.named("jib on a rope from below")
        .point("heel", 0, 0)
        .point("foot", 0, -6)
        .point("tip", 4, 3)
        .member("jib", "heel", "tip")
        .pin("heel", "heel", "jib", "ground")
        .connect(new Line("rope", End.of("jib", "tip"), End.of("ground", "foot")))
        .force("barrel", "jib", "tip", Vector.of(0, -660))
        .force("gust", "jib", "heel", Vector.of(10, 0))
        .build();
  }

  /** A bench on two pins, between which it may be wedged. */
  static Device bench() {
    return Device.named("barrel bench")
        .point("left", 0, 0)
        .point("middle", 1, 0)
        .point("right", 3, 0)
        .member("beam", "left", "right")
        .pin("left", "left", "beam", "ground")
        .pin("right", "right", "beam", "ground")
        .force("barrel", "beam", "middle", Vector.of(0, -900))
        .build();
  }

  /** A lever on a pin that rubs. */
  static Device dryLever() {
    return Device.named("dry lever")
        .point("hinge", 0, 0)
        .point("short", -1, 0)
        .point("long", 2, 0)
        .member("lever", "short", "hinge", "long")
        .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), 0.03, 0.2))
        .force("load", "lever", "short", Vector.of(0, -1000))
        .sought("hand", "lever", "long", Direction.DOWN)
        .build();
  }

  /** A beam on a wall and a timber prop. */
  static Device roof() {
    return Device.named("press-house roof")
        .point("wall", 0, 2.4)
        .point("top", 3, 2.4)
        .point("ground", 3, 0)
        .member("beam", "wall", "top")
        .pin("wall", "wall", "beam", "ground")
        .connect(new Strut("prop", End.of("beam", "top"), End.of("ground", "ground"), 0))
        .force("snow", "beam", "top", Vector.of(0, -3000))
        .build();
  }

  /** The prop 60 mm square in timber; the beam has no section. */
  static Sizing roofSizing() {
    return Sizing.of(Method.ALLOWABLE)
        .with(
            "prop",
            Profiles.rectangle(0.06, 0.06).section(),
            MaterialTable.named("softwood C24 (EN 338)").at(0.06))
        .with(ColumnEnds.pinned("prop"));
  }

  /** A rope of 1100 N. */
  static Sizing jibSizing() {
    return Sizing.of(Method.ALLOWABLE)
        .with(new Rating("rope", "rope", 1100, "common practice, no source", 1, 0, List.of()));
  }

  /** Two crates of 300 N; the upper one is pushed, and the lower one slides first, at 120 N. */
  static Device crates() {
    return Device.named("stacked crates")
        .point("floor", 0, 0)
        .point("low", 0, 0.2)
        .point("between", 0, 0.4)
        .point("high", 0, 0.6)
        .member("lower", "floor", "low", "between")
        .member("upper", "between", "high")
        .connect(new ContactBase("floor", "floor", "lower", "ground", Direction.UP, 0.8, 0.2, 0.2))
        .connect(
            new ContactBase("between", "between", "upper", "lower", Direction.UP, 0.8, 0.5, 0.5))
        .force("lower crate", "lower", "low", Vector.of(0, -300))
        .force("upper crate", "upper", "high", Vector.of(0, -300))
        .force("push", "upper", "high", Vector.of(80, 0))
        .build();
  }

  /** An arm that nothing holds. */
  static Device loose() {
    return Device.named("loose arm")
        .point("hinge", 0, 0)
        .point("end", 1, 0)
        .member("arm", "hinge", "end")
        .pin("hinge", "hinge", "arm", "ground")
        .force("bucket", "arm", "end", Vector.of(0, -50))
        .build();
  }

  /** The same, held level by a hand at its end. */
  static Device swing() {
    return loose().toBuilder().sought("hand", "arm", "end", Direction.UP).build();
  }

  /** A book of 10 N between two rough walls. */
  static Device wedged() {
    return Device.named("book")
        .point("left", 0, 0)
        .point("right", 0.1, 0)
        .point("middle", 0.05, 0)
        .member("book", "left", "middle", "right")
        .connect(new Contact("left", "left", "book", "ground", Direction.RIGHT, 0.5, 0.4))
        .connect(new Contact("right", "right", "book", "ground", Direction.LEFT, 0.5, 0.4))
        .force("own", "book", "middle", Vector.of(0, -10))
        .build();
  }

  /** What the chest stands on, rated for more than it ever carries. */
  static Sizing chestSizing() {
    return Sizing.of(Method.ALLOWABLE)
        .with(new Rating("skid", "floor", 5000, "common practice, no source", 1, 0, List.of()));
  }
}
