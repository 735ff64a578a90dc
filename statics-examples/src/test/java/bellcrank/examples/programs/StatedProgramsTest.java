package bellcrank.examples.programs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The programs about balance print what a hand works out, and draw. */
final class StatedProgramsTest {

  @TempDir private Path folder;

  @Test
  void theHandOnThePoleHasAnEighthOfTheTrough() throws Exception {
    ProgramRun run = ProgramRun.of(OneLever::main, folder);
    double moment = 960 * 0.15;
    run.tells("moment of the trough about the block", moment, "N·m, counter-clockwise");
    run.tells("moment of the hand about the block", moment, "N·m, clockwise");
    run.tells("hand", moment / 1.2, "N, down");
    run.tells("block, on the pole", 960 + moment / 1.2, "N, up");
    run.tells("advantage", 1.2 / 0.15, "");
    assertThat(run.lines()).contains("The pole is in balance.", "   P_hand = 120 N (down on pole)");
    run.drew("device", "free-body");
  }

  @Test
  void theCordOfTheCrankPullsAlongItsLine() throws Exception {
    ProgramRun run = ProgramRun.of(SluiceCrank::main, folder);
    double arm = 0.36 * 4 / 5;
    double pull = 150 * 0.24 / arm;
    double x = -pull * 4 / 5;
    double y = 150 + pull * 3 / 5;
    run.tells("cord", pull, "N");
    run.tells("its moment about the pivot", -150 * 0.24, "N·m");
    run.tells("so its arm is", arm, "m");
    run.tells("pivot on the crank, along x", -x, "N, to the left");
    run.tells("pivot on the crank, along y", y, "N, up");
    run.tells("pivot on the crank, size", Math.hypot(x, y), "N");
    run.tells("pivot on the crank, direction", Math.toDegrees(Math.atan2(y, x)), "deg");
    run.tells("pivot on the ground, along y", y, "N, down");
    assertThat(run.lines()).contains("the polygon of forces closes");
    run.drew("free-body", "polygon");
  }

  @Test
  void theBenchSagsAndHogs() throws Exception {
    ProgramRun run = ProgramRun.of(BarrelBench::main, folder);
    double right = (600 * 3 * 1.5 + 300 * 4) / 3;
    double left = 600 * 3 + 300 - right;
    run.tells("left trestle", left, "N, up");
    run.tells("right trestle", right, "N, up");
    for (int at = 1; at <= 3; at++) {
      String cut = run.after("at " + at + ".000 m");
      int comma = cut.indexOf(", M ");
      ProgramRun.isTold("V at " + at, cut.substring("V ".length(), comma), left - 600 * at, "N");
      double moment = left * at - 300.0 * at * at;
      ProgramRun.isTold("M at " + at, cut.substring(comma + ", M ".length()), moment, "N·m");
    }
    assertThat(run.after("at 0 m")).isEqualTo("V 800.0 N, M 0 N·m");
    assertThat(run.after("at 4.000 m")).isEqualTo("V 300.0 N, M 0 N·m");
    run.tells("sags most, M", left * left / (2 * 600), "N·m");
    run.tells("hogs most, M", -300, "N·m");
    assertThat(run.lines()).contains("  there: 1.333 m", "  there: 3.000 m");
    run.drew("free-body", "inside");
  }

  @Test
  void theHatchIsPushedAlongItsProp() throws Exception {
    ProgramRun run = ProgramRun.of(HatchProp::main, folder);
    // the prop leans 5 to 12; its moment about the hinge is that of the weight
    double prop = 189 * 0.8 / (1.2 * 12 / 13 + 0.9 * 5 / 13);
    double x = prop * 5 / 13;
    double y = 189 - prop * 12 / 13;
    run.tells("prop presses the hatch with", prop, "N");
    run.tells("hinge on the hatch, along x", x, "N, to the right");
    run.tells("hinge on the hatch, along y", y, "N, up");
    // the three lines meet above the middle, on the prop's line
    double meet = 0.9 + (1.2 - 0.8) * 12 / 5;
    run.tells("direction of the hinge's force", Math.toDegrees(Math.atan2(meet, 0.8)), "deg");
    run.tells("floor pushes the prop", prop * 12 / 13, "N, up");
    run.tells("floor rubs on the prop", x, "N, to the left");
    run.tells("share of the friction that is needed", 5.0 / 12 / 0.5, "");
    run.drew("device", "hatch", "prop");
  }

  @Test
  void thePinOfTheTongsBearsHandAndLog() throws Exception {
    ProgramRun run = ProgramRun.of(WoodTongs::main, folder);
    double log = 80 * 0.36 / 0.09;
    run.tells("log", log, "N, pressed together");
    run.tells("crossing on the first arm", 80 + log, "N, up");
    run.tells("crossing on the second arm", 80 + log, "N, down");
    assertThat(run.after("crossing along x")).isEqualTo("0 N");
    assertThat(run.lines()).contains("The tongs are in balance for these loads.");
    run.drew("device", "first-arm", "second-arm");
  }

  @Test
  void theSheaveOfTheJibTakesItsShare() throws Exception {
    ProgramRun run = ProgramRun.of(LoftJib::main, folder);
    int second = run.lines().indexOf("Hoisting over a sheave with an efficiency of 0.9:");
    jib(new ProgramRun(run.lines().subList(0, second), folder), 540);
    jib(new ProgramRun(run.lines().subList(second, run.lines().size()), folder), 540 / 0.9);
    run.drew("device", "jib");
  }

  /** The rope leaves the sheave along the jib, 0.1 m above its line. */
  private static void jib(ProgramRun part, double winch) {
    double tie = (540 * 1.7 - winch * 0.1) / 1.2;
    part.tells("rope at the winch", winch, "N");
    part.tells("rope at the crate", 540, "N");
    part.tells("tie", tie, "N, pulled");
    part.tells("heel on the jib, along x", tie + winch * 4 / 5, "N, to the right");
    part.tells("heel on the jib, along y", 540 + winch * 3 / 5, "N, up");
  }

  @Test
  void theTrussHasTwoBarsWithoutForce() throws Exception {
    ProgramRun run = ProgramRun.of(RoofTruss::main, folder);
    double atA = 4800 * 2.0 / 4; // about B
    double chord = atA / 0.6;
    run.tells("support A", atA, "N, up");
    run.tells("support B", 4800 + 2400 - atA, "N, up");
    run.tells("AE", chord, "N, pressed");
    run.tells("AD", chord * 0.8, "N, pulled");
    run.tells("DB", chord * 0.8, "N, pulled"); // joint D
    // the part with D and E, cut free: moments about A
    run.tells("EB", 4800 * 2 / (4 * 0.6), "N, pressed");
    run.tells("BC", 2400, "N, pressed"); // joint C
    assertThat(run.after("DE")).isEqualTo("0 N");
    assertThat(run.after("EC")).isEqualTo("0 N");
    assertThat(run.lines()).contains("   F_EB = −4000 N (compression)");
    run.drew("device", "polygon-of-joint-B");
  }
}
