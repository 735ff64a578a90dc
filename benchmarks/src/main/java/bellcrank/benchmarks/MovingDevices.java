package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;

/** The devices whose motion is measured. Lengths in m, forces in N, masses in kg. */
public final class MovingDevices {

  private static final String GROUND = Ground.NAME;

  private MovingDevices() {}

  /**
   * A derrick whose jib is luffed by its rope: a pole held by a stiff back leg, and a jib pinned to
   * the pole with a barrel at its tip. When the rope is let go one motion of the three members is
   * free.
   *
   * @return pole, back leg, jib and {@code luffing rope}
   */
  public static Device luffingDerrick() {
    return Device.named("barrel derrick with a back leg")
        .point("foot", 0, 0)
        .point("heel", 0, 0.9)
        .point("head", 0, 4.8)
        .point("peg", -3.6, 0)
        .point("tip", 2.7, 3.3)
        .member("pole", "foot", "heel", "head")
        .member("leg", "peg", "head")
        .member("jib", "heel", "tip")
        .pin("foot pin", "foot", "pole", GROUND)
        .pin("peg pin", "peg", "leg", GROUND)
        .pin("head pin", "head", "leg", "pole")
        .pin("heel pin", "heel", "jib", "pole")
        .line("luffing rope", End.of("jib", "tip"), End.of("pole", "head"))
        .weight("barrel", "jib", "tip", 240)
        .build();
  }

  /**
   * A scissor chain that rises and falls: crossed pairs of links of 2 m at 45°, pinned in the
   * middle and to the next pair; its left foot is pinned, its right foot slides on the ground.
   *
   * @param links number of links, 2 or more and even
   * @return the chain, lowest link {@code up0}
   */
  public static Device slidingChain(int links) {
    if (links < 2 || links % 2 != 0) {
      throw new IllegalArgumentException("links must be even and at least 2, not " + links);
    }
    int stages = links / 2;
    double side = Math.sqrt(2);
    DeviceBuilder chain = Device.named("sliding scissor chain of " + links + " links");
    for (int level = 0; level <= stages; level++) {
      chain.point("L" + level, 0, level * side).point("R" + level, side, level * side);
    }
    for (int stage = 0; stage < stages; stage++) {
      int above = stage + 1;
      String up = "up" + stage;
      String down = "down" + stage;
      chain.point("M" + stage, side / 2, (stage + 0.5) * side);
      chain.member(up, "L" + stage, "M" + stage, "R" + above);
      chain.member(down, "R" + stage, "M" + stage, "L" + above);
      chain.pin("middle" + stage, "M" + stage, up, down);
      if (stage > 0) {
        chain.pin("left" + stage, "L" + stage, up, "down" + (stage - 1));
        chain.pin("right" + stage, "R" + stage, down, "up" + (stage - 1));
      }
    }
    return chain
        .pin("left0", "L0", "up0", GROUND)
        .connect(new Roller("right0", "R0", "down0", GROUND, Direction.UP, Sides.TWO))
        .force("load", "up" + (stages - 1), "R" + stages, Vector.of(0, -80))
        .build();
  }
}
