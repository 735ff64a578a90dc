package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/** The devices that are measured. Lengths in m, forces in N, masses in kg. */
public final class SampleDevices {

  private static final String GROUND = Ground.NAME;

  private SampleDevices() {}

  /**
   * The sample derrick: a pole with a pin at its foot and a back stay, a jib pinned to the pole
   * with a barrel at its tip, and a hand winch on the pole whose rope runs over a sheave at the
   * pole head to the jib tip. Nine unknowns.
   *
   * @return pole, jib and winch, with the hand force sought
   */
  public static Device derrick() {
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
        .pin("foot pin", "foot", "pole", GROUND)
        .pin("heel pin", "heel", "jib", "pole")
        .pin("axle pin", "axle", "winch", "pole")
        .line("stay", End.of("pole", "head"), End.of(GROUND, "peg"))
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

  /**
   * A cider press lever: hinge, ram and grip on one bar. Three unknowns.
   *
   * @return the lever, with the force of the ram sought
   */
  public static Device pressLever() {
    return Device.named("cider press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("middle", 0.8, 0.05)
        .point("grip", 1.6, 0.1)
        .member("lever", "hinge", "ram", "middle", "grip")
        .pin("hinge pin", "hinge", "lever", GROUND)
        .weight("own weight", "lever", "middle", 6)
        .force("hand", "lever", "grip", Vector.of(0, -220))
        .sought("ram force", "lever", "ram", Direction.UP)
        .build();
  }

  /**
   * A toggle: two links in a slight knee between a wall pin and a sliding block. Six unknowns.
   *
   * @return the links, with the clamping force sought
   */
  public static Device toggle() {
    return Device.named("trough lid toggle")
        .point("wall", 0, 0)
        .point("knee", 0.3, 0.04)
        .point("block", 0.62, 0)
        .member("near link", "wall", "knee")
        .member("far link", "knee", "block")
        .pin("wall pin", "wall", "near link", GROUND)
        .pin("knee pin", "knee", "far link", "near link")
        .roller("track", "block", "far link", GROUND, Direction.UP)
        .force("hand", "near link", "knee", Vector.of(0, -180))
        .sought("clamping", "far link", "block", Direction.LEFT)
        .build();
  }

  /**
   * Three frames of a press-house roof braced to one another in a ring by two struts each and each
   * on one slanting roller, so that no equation can be solved before all others. Nine unknowns.
   *
   * @return the ring, loaded by the weights of the frames and by wind
   */
  public static Device roofRing() {
    DeviceBuilder ring = Device.named("press-house roof ring");
    String[] frames = {"north", "west", "east"};
    for (int k = 0; k < 3; k++) {
      double turn = Math.toRadians(90 + 120 * k);
      corner(ring, frames[k] + " outer", turn, 2.2);
      corner(ring, frames[k] + " inner", turn + 0.2, 0.9);
      corner(ring, frames[k] + " left", turn + 0.45, 1.7);
      corner(ring, frames[k] + " right", turn - 0.55, 1.5);
      ring.member(
          frames[k],
          frames[k] + " left",
          frames[k] + " outer",
          frames[k] + " right",
          frames[k] + " inner");
    }
    for (int k = 0; k < 3; k++) {
      String own = frames[k];
      String next = frames[(k + 1) % 3];
      ring.strut(own + " purlin", End.of(own, own + " left"), End.of(next, next + " right"));
      ring.strut(own + " brace", End.of(own, own + " outer"), End.of(next, next + " inner"));
      ring.roller(
          own + " shoe",
          own + " outer",
          own,
          GROUND,
          Direction.ofAngle(Math.toRadians(90 + 120 * k + 35)));
      ring.weight(own + " weight", own, own + " right", 60);
    }
    return ring.force("wind", "west", "west outer", Vector.of(400, 90)).build();
  }

  private static void corner(DeviceBuilder ring, String name, double angle, double radius) {
    ring.point(name, radius * Math.cos(angle), radius * Math.sin(angle));
  }

  /**
   * A simple truss: a strip of triangles on a pin and a roller, loaded at every upper joint. Each
   * bar is a strut between joints.
   *
   * @param bars number of bars, 3 or more and odd
   * @return the truss
   */
  public static Device simpleTruss(int bars) {
    if (bars < 3 || bars % 2 == 0) {
      throw new IllegalArgumentException("bars must be odd and at least 3, not " + bars);
    }
    int joints = (bars + 3) / 2;
    DeviceBuilder truss = Device.named("simple truss of " + bars + " bars");
    for (int i = 0; i < joints; i++) {
      String joint = "J" + i;
      truss.point(joint, 0.5 * i, i % 2 == 0 ? 0 : 0.8).joint(joint);
    }
    for (int i = 1; i < joints; i++) {
      bar(truss, "D" + i, i - 1, i);
      if (i > 1) {
        bar(truss, "C" + i, i - 2, i);
      }
    }
    // the last lower joint takes the roller, so that both supports are at the foot of the strip
    int last = (joints - 1) / 2 * 2;
    truss.pin("left support", "J0", "J0", GROUND);
    truss.roller("right support", "J" + last, "J" + last, GROUND, Direction.UP);
    for (int i = 1; i < joints; i += 2) {
      truss.force("F" + i, "J" + i, "J" + i, Vector.of(0, -10));
    }
    return truss.build();
  }

  private static void bar(DeviceBuilder truss, String name, int from, int to) {
    truss.strut(name, End.of("J" + from, "J" + from), End.of("J" + to, "J" + to));
  }

  /**
   * A scissor chain: crossed pairs of members, pinned in the middle and to the next pair, standing
   * on two pins and loaded at the top.
   *
   * @param members number of members, 2 or more and even
   * @return the chain
   */
  public static Device scissorChain(int members) {
    if (members < 2 || members % 2 != 0) {
      throw new IllegalArgumentException("members must be even and at least 2, not " + members);
    }
    int stages = members / 2;
    double rise = 0.5;
    DeviceBuilder chain = Device.named("scissor chain of " + members + " members");
    for (int level = 0; level <= stages; level++) {
      chain.point("L" + level, 0, level * rise).point("R" + level, 1, level * rise);
    }
    for (int stage = 0; stage < stages; stage++) {
      int above = stage + 1;
      String up = "up" + stage;
      String down = "down" + stage;
      chain.point("M" + stage, 0.5, (stage + 0.5) * rise);
      chain.member(up, "L" + stage, "M" + stage, "R" + above);
      chain.member(down, "R" + stage, "M" + stage, "L" + above);
      chain.pin("middle" + stage, "M" + stage, up, down);
      chain.pin("left" + stage, "L" + stage, up, stage == 0 ? GROUND : "down" + (stage - 1));
      chain.pin("right" + stage, "R" + stage, down, stage == 0 ? GROUND : "up" + (stage - 1));
    }
    int last = stages - 1;
    return chain
        .force("left load", "down" + last, "L" + stages, Vector.of(0, -120))
        .force("right load", "up" + last, "R" + stages, Vector.of(0, -80))
        .build();
  }
}
