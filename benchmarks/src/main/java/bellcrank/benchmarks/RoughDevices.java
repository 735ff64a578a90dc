package bellcrank.benchmarks;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Ground;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;

/** Devices of rough contacts whose limits are measured. Lengths in m, forces in N, masses in kg. */
public final class RoughDevices {

  private static final String GROUND = Ground.NAME;

  /** Friction under each crate, lowest first. */
  private static final double[] UNDER_CRATES = {0.5, 0.55, 0.45, 0.6, 0.4};

  /** Masses of the crates with what is in them, lowest first. */
  private static final double[] CRATES = {22, 26, 19, 24, 30};

  /** Slopes under the left feet, rising to the right, in degrees; lowest crate first. */
  private static final double[] LEFT_SLOPES = {3, -2, 4, -1.5, 2};

  /** The same under the right feet. */
  private static final double[] RIGHT_SLOPES = {5, -5, 2.5, 2, 2};

  private RoughDevices() {}

  /**
   * A picking ladder on a rough floor against a rough wall, with a picker high up. Two contacts,
   * four unknown forces, one of them free.
   *
   * @return the ladder
   */
  public static Device ladder() {
    return Device.named("picking ladder")
        .point("foot", 0, 0)
        .point("middle", 1.5, 2)
        .point("rung", 2.4, 3.2)
        .point("top", 3, 4)
        .member("ladder", "foot", "middle", "rung", "top")
        .connect(new Contact("floor", "foot", "ladder", GROUND, Direction.UP, 0.45, 0.4))
        .connect(new Contact("wall", "top", "ladder", GROUND, Direction.LEFT, 0.2, 0.15))
        .weight("own weight", "ladder", "middle", 20)
        .weight("picker", "ladder", "rung", 60)
        .build();
  }

  /**
   * Five crates of apples one upon the other, each packed a little askew, pushed to the right at
   * the topmost. Each stands on two rough feet: ten contacts, twenty unknown forces, five of them
   * free.
   *
   * @return the stack
   */
  public static Device crateStack() {
    DeviceBuilder stack = Device.named("stack of crates");
    String below = GROUND;
    for (int k = 0; k < CRATES.length; k++) {
      String crate = "crate " + (k + 1);
      double floor = 0.3 * k;
      double slope = Math.tan(Math.toRadians(LEFT_SLOPES[k]));
      double toLeft = -0.42 + 0.02 * k;
      double toRight = 0.4 - 0.03 * k;
      String left = crate + " left";
      String right = crate + " right";
      String middle = crate + " middle";
      stack
          .point(left, toLeft, floor + toLeft * slope)
          .point(right, toRight, floor + toRight * slope)
          .point(middle, 0.01 * k, floor + 0.14)
          .member(crate, left, right, middle)
          .connect(foot(left, crate, below, LEFT_SLOPES[k], UNDER_CRATES[k]))
          .connect(foot(right, crate, below, RIGHT_SLOPES[k], UNDER_CRATES[k]))
          .weight(crate + " weight", crate, middle, CRATES[k]);
      below = crate;
    }
    return stack.force("push", below, below + " middle", Vector.of(50, 0)).build();
  }

  private static Contact foot(
      String at, String crate, String below, double slope, double friction) {
    Direction push = Direction.ofAngle(Math.toRadians(90 + slope));
    return new Contact(at + " foot", at, crate, below, push, friction, 0.8 * friction);
  }
}
