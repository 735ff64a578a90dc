package bellcrank.statics.study;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/** Small devices whose answers can be written down. */
final class StudyYard {

  private StudyYard() {}

  /** Ram force is (220 · 1.6 + 6 · g · 0.8) / 0.25 as stated. */
  static Device press() {
    return Device.named("cider press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("middle", 0.8, 0.05)
        .point("grip", 1.6, 0.1)
        .member("lever", "hinge", "ram", "middle", "grip")
        .pin("hinge", "hinge", "lever", Ground.NAME)
        .weight("own weight", "lever", "middle", 6)
        .force("hand", "lever", "grip", Vector.of(0, -220))
        .sought("ram", "lever", "ram", Direction.UP)
        .build();
  }

  /** A ladder on a rough floor against a smooth wall, 3 along and 4 up, the picker half way up. */
  static Device ladder() {
    return ladder(0.45);
  }

  static Device ladder(double friction) {
    return Device.named("picking ladder")
        .point("foot", 0, 0)
        .point("rung", 1.5, 2)
        .point("top", 3, 4)
        .member("ladder", "foot", "rung", "top")
        .connect(
            new Contact("floor", "foot", "ladder", Ground.NAME, Direction.UP, friction, friction))
        .connect(new Contact("wall", "top", "ladder", Ground.NAME, Direction.LEFT, 0, 0))
        .force("picker", "ladder", "rung", Vector.of(0, -720))
        .build();
  }

  /** Two rough contacts: one force more than statics fixes. */
  static Device roughLadder() {
    return Device.named("rough ladder")
        .point("foot", 0, 0)
        .point("rung", 2.4, 3.2)
        .point("top", 3, 4)
        .member("ladder", "foot", "rung", "top")
        .connect(new Contact("floor", "foot", "ladder", Ground.NAME, Direction.UP, 0.45, 0.4))
        .connect(new Contact("wall", "top", "ladder", Ground.NAME, Direction.LEFT, 0.2, 0.15))
        .weight("picker", "ladder", "rung", 60)
        .force("push", "ladder", "rung", Vector.of(20, 0))
        .build();
  }

  /** A jib on a pin that is held by a stay; the load is lifted by a hand that may lift it all. */
  static Device jib() {
    return jib(Pin.smooth("heel", "heel", List.of("jib", Ground.NAME)), true);
  }

  static Device jib(Pin heel, boolean stay) {
    DeviceBuilder jib =
        Device.named("wall jib")
            .point("heel", 0, 0)
            .point("tip", 2, 0)
            .point("eye", 0, 1.5)
            .member("jib", "heel", "tip")
            .connect(heel)
            .force("barrel", "jib", "tip", Vector.of(0, -600));
    if (stay) {
      jib.connect(new Line("stay", End.of("jib", "tip"), End.of(Ground.NAME, "eye")));
    }
    return jib.build();
  }

  /** Pole, jib and hand winch: nine unknown forces. */
  static Device derrick() {
    return Device.named("barrel derrick")
        .point("foot", 0, 0)
        .point("heel", 0, 0.9)
        .point("axle", -0.15, 1.1)
        .point("grip", -0.15, 0.75)
        .point("head", 0, 4.8)
        .point("peg", -3.6, 0)
        .point("tip", 2.7, 3.3)
        .member("pole", "foot", "heel", "axle", "head")
        .member("jib", "heel", "tip")
        .member("winch", "axle", "grip")
        .pin("foot pin", "foot", "pole", Ground.NAME)
        .pin("heel pin", "heel", "jib", "pole")
        .pin("axle pin", "axle", "winch", "pole")
        .line("stay", End.of("pole", "head"), End.of(Ground.NAME, "peg"))
        .connect(
            new Reeving(
                "luffing rope",
                List.of(
                    Stop.drum("winch", "axle", 0.06, Turn.CLOCKWISE),
                    Stop.sheave("pole", "head", 0.07, Turn.CLOCKWISE),
                    Stop.end("jib", "tip")),
                1,
                Reeving.Hauling.IDEAL))
        .weight("barrel", "jib", "tip", 240)
        .sought("hand", "winch", "grip", Direction.RIGHT)
        .build();
  }
}
