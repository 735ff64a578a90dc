package bellcrank.examples.programs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The programs about friction and motion print what a hand works out, and draw. */
final class DecidedProgramsTest {

  @TempDir private Path folder;

  @Test
  void theLadderSlidesAtBothEnds() throws Exception {
    ProgramRun run = ProgramRun.of(OrchardLadder::main, folder);
    // moments about the foot; the wall rubs up or down
    run.tells("  the wall pushes at least", 800 * 0.5 / (2.4 + 0.25), "N");
    run.tells("  and at most", 800 * 0.5 / (2.4 - 0.25), "N");
    // both slide: wall = 0.35 floor, floor + 0.25 wall = 800
    double floor = 800 / (1 + 0.35 * 0.25);
    double place = (0.35 * floor * (2.4 + 0.25) - 100 * 0.5) / 700;
    run.tells("the picker may climb", place * 2.6, "m");
    // k times the friction: 0.35 k × 800 × (2.4 + 0.25 k) = 400 × (1 + 0.0875 k²)
    double k = (-672 + Math.sqrt(672.0 * 672 + 4 * 35 * 400)) / (2 * 35);
    run.tells("  share of the friction that is needed", k, "");
    assertThat(run.after("push of the wall, from balance alone")).isEqualTo("not known");
    assertThat(run.lines()).contains("With all friction, the ladder holds.");
    assertThat(run.after("beyond that"))
        .startsWith("floor slides left, wall slides down: ladder turns clockwise")
        .endsWith("(0 m, 2.400 m)");
    run.drew("device", "one-state");
  }

  @Test
  void theToggleNeedsLessAndLessUpToItsDeadCentre() throws Exception {
    ProgramRun run = ProgramRun.of(ToggleTravel::main, folder);
    assertThat(run.after("up")).isEqualTo("stated limit");
    assertThat(run.after("down")).isEqualTo("dead centre");
    run.tells("  after", 2 * 0.26 - 0.48, "m");
    String[] ways = {"-0.0800", "-0.0400", "0", "0.0200", "0.0300", "0.0350"};
    for (String way : ways) {
      double tangent = tangent(Double.parseDouble(way));
      String told = run.after("plate " + way + " m down");
      int comma = told.indexOf(", advantage ");
      String hand = told.substring("hand ".length(), comma);
      ProgramRun.isTold(way, hand, 2 * 600 * tangent, "N");
      ProgramRun.isTold(
          way, told.substring(comma + ", advantage ".length()), 1 / (2 * tangent), "");
    }
    run.tells("the hand pushes most", 2 * 600 * tangent(-0.1), "N");
    run.tells("  with the plate down by", -0.1, "m");
    run.drew("poses");
  }

  /** Of the angle of each link off the upright, once the plate has gone down. */
  private static double tangent(double way) {
    double upright = (0.48 + way) / 2;
    return Math.sqrt(0.26 * 0.26 - upright * upright) / upright;
  }

  @Test
  void thePressPaysForHolding() throws Exception {
    ProgramRun run = ProgramRun.of(BeamPress::main, folder);
    run.tells("screw", 9000 * 0.5 / 1.5, "N, pressed");
    double lead = Math.atan(0.008 / (2 * Math.PI * 0.018));
    double smooth = 3000 * 0.018 * Math.tan(lead);
    run.tells("couple on a smooth screw", smooth, "N·m");
    // about the hinge, whose friction holds the beam up: 0.5 R + circle (R − S) = 1.5 S
    double circle = 0.025 * Math.sin(Math.atan(0.2));
    double most = 9000 * (0.5 + circle) / (1.5 + circle);
    double friction = Math.atan(0.12);
    double tight = most * 0.018 * Math.tan(lead + friction);
    run.tells("  it is tightened beyond", tight, "N·m");
    run.tells("  it surely comes loose beyond", most * 0.018 * Math.tan(lead - friction), "N·m");
    run.tells("efficiency", smooth / tight, "");
    assertThat(run.lines()).contains("  it is self-locking: it stays when the crank is let go");
    run.drew("device");
  }

  @Test
  void theRamMayGetTooLittle() throws Exception {
    ProgramRun run = ProgramRun.of(RoughPress::main, folder);
    double stated = 200 * 1.6 / 0.25;
    run.tells("  as rough as it is, size of hand moves the ram force by", stated / 10, "N");
    run.tells("  as rough as it is, x of ram moves the ram force by", stated * 0.01 / 0.25, "N");
    run.tells("at worst", 180 * 1.6 / 0.26, "N");
    run.tells("at best", 220 * 1.6 / 0.24, "N");
    // too little where the hand is below 1200 x / 1.6: 180 to 195 N, 187.5 N on average
    String chance = run.after("The ram gets too little");
    double told = Double.parseDouble(chance.substring("in ".length(), chance.indexOf(" %")));
    double byHand = (187.5 - 180) / 40;
    double error = Math.sqrt(byHand * (1 - byHand) / 20_000);
    assertThat(told / 100).isCloseTo(byHand, within(4 * error));
    run.drew("samples");
  }
}
