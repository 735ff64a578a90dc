package bellcrank.statics.drawing;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;

/** Small devices that several tests draw. */
final class Yard {

  private Yard() {}

  static Device press() {
    return pressLever().build();
  }

  static DeviceBuilder pressLever() {
    return Device.named("cider press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("grip", 1.6, 0.1)
        .member("lever", "hinge", "ram", "grip")
        .pin("hinge", "hinge", "lever", "ground")
        .force("hand", "lever", "grip", Vector.of(0, -220))
        .sought("ram", "lever", "ram", Direction.UP);
  }

  /** A jib with a stay: three forces. Stay arm 1.2 m: tension 600 · 2 / 1.2 = 1000 N. */
  static Device jib() {
    return Device.named("wall jib")
        .point("heel", 0, 0)
        .point("tip", 2, 0)
        .point("eye", 0, 1.5)
        .member("jib", "heel", "tip")
        .pin("heel", "heel", "jib", "ground")
        .connect(new Line("stay", End.of("jib", "tip"), End.of("ground", "eye")))
        .force("barrel", "jib", "tip", Vector.of(0, -600))
        .build();
  }

  static Device tongs() {
    return Device.named("hinged frame")
        .point("left", 0, 0)
        .point("crown", 1, 1)
        .point("right", 2, 0)
        .member("left half", "left", "crown")
        .member("right half", "crown", "right")
        .pin("left", "left", "left half", "ground")
        .pin("crown", "crown", "left half", "right half")
        .pin("right", "right", "right half", "ground")
        .force("push", "left half", "crown", Vector.of(30, -80))
        .build();
  }

  /** A level plank on three rollers and a pin: one restraint too many. */
  static Device bench() {
    return Device.named("drying bench")
        .point("a", 0, 0)
        .point("b", 1, 0)
        .point("c", 2, 0)
        .member("plank", "a", "b", "c")
        .pin("a", "a", "plank", "ground")
        .connect(new Roller("b", "b", "plank", "ground", Direction.UP, Sides.TWO))
        .connect(new Roller("c", "c", "plank", "ground", Direction.UP, Sides.TWO))
        .force("basket", "plank", "b", Vector.of(0, -90))
        .build();
  }

  static Device ladder() {
    return Device.named("picking ladder")
        .point("foot", 0, 0)
        .point("rung", 0.5, 1.2)
        .point("top", 1.5, 3.6)
        .member("ladder", "foot", "rung", "top")
        .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, 0.5, 0.5))
        .connect(new Contact("boards", "top", "ladder", "ground", Direction.LEFT, 0, 0))
        .force("picker", "ladder", "rung", Vector.of(0, -720))
        .build();
  }
}
