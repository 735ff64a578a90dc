package bellcrank.statics.harness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DeviceSuiteTest {

  /** Counts how often a case is solved. */
  private final List<String> solved = new ArrayList<>();

  /** A reader to whom the name of a file says all. */
  private final SuiteReader byName =
      new SuiteReader() {
        @Override
        public boolean isDeviceFile(Path file) {
          return file.toString().endsWith(".device");
        }

        @Override
        public SuiteFile read(Path file) {
          String name = String.valueOf(file.getFileName());
          if (name.startsWith("broken")) {
            return new SuiteFile.Refused(
                List.of(name + ":3:1: points: found nothing", name + ":7:5: loads: found nothing"));
          }
          Device press = Rigs.pressInTwoCases();
          return new SuiteFile.Read(
              press.name(),
              UnitSystem.SI,
              name.startsWith("idle")
                  ? List.of()
                  : List.of(
                      expected("ram", "full", "1408 N", 4),
                      expected("ram in light", "light", "0.70 kN", 2),
                      expected("hinge.y", "full", "-1100 N", 4)),
              loadCase -> solved(press, loadCase));
        }
      };

  private SuiteFile.SolvedCase solved(Device device, String loadCase) {
    solved.add(loadCase);
    Balance balance = Balance.of(device, loadCase);
    return new SuiteFile.SolvedCase(balance, balance::answer);
  }

  private static SuiteFile.Expectation expected(
      String ask, String loadCase, String value, int digits) {
    Unit unit = Quantity.unitOf(value, Dimension.FORCE, UnitSystem.SI);
    return new SuiteFile.Expectation(
        ask,
        loadCase,
        new ExpectedAnswer(
            Ask.parse(ask),
            new ExpectedAnswer.Amount(Quantity.parse(value, Dimension.FORCE), unit, digits)),
        Optional.of("by hand"));
  }

  /** Each test by name with what came of it. */
  private List<String> run(Path folder) {
    List<String> told = new ArrayList<>();
    DeviceSuite.of(folder, byName).forEach(node -> run(node, "", told));
    return told;
  }

  private static void run(DynamicNode node, String above, List<String> told) {
    if (node instanceof DynamicContainer container) {
      container
          .getChildren()
          .forEach(child -> run(child, above + container.getDisplayName() + " > ", told));
    } else {
      Throwable thrown = catchThrowable(() -> ((DynamicTest) node).getExecutable().execute());
      String result = thrown == null ? "passes" : thrown.getMessage();
      told.add(above + node.getDisplayName() + ": " + result);
    }
  }

  @Test
  void aFileIsAContainerAndAnExpectationATest(@TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("shed"));
    Files.writeString(folder.resolve("shed").resolve("press.device"), "");
    Files.writeString(folder.resolve("notes.txt"), "");
    assertThat(run(folder))
        .containsExactly(
            "shed/press.device > ram = 1408 N to 4 digits: passes",
            "shed/press.device > ram in light = 0.70 kN to 2 digits: passes",
            """
            shed/press.device > hinge.y = -1100 N to 4 digits: hinge.y on press lever in case full \
            is expected to be -1100 N to 4 digits, but it is -1188 N: 88 N (8 %) below it, where \
            0.5 N is allowed. Source of the value: by hand.
            Free body of lever:
              force         size     direction  x    y         at
              hand          220.0 N  down       0 N  -220.0 N  grip
              ram           1408 N   up         0 N  1408 N    ram
              hinge         1188 N   down       0 N  -1188 N   hinge
              all together  0 N                 0 N  0 N""");
    assertThat(solved).containsExactly("full", "light");
  }

  @Test
  void aFileThatCannotBeReadFailsWithAllThatTheReaderSays(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("broken.device"), "");
    assertThat(run(folder))
        .containsExactly(
            """
            broken.device > can be read: broken.device cannot be read:
            broken.device:3:1: points: found nothing
            broken.device:7:5: loads: found nothing""");
  }

  @Test
  void aFileThatExpectsNothingFails(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("idle.device"), "");
    assertThat(run(folder))
        .containsExactly(
            "idle.device > expects answers: idle.device expects no answers, so there is nothing to"
                + " test of it.");
  }

  @Test
  void aFolderWithoutDeviceFilesFails(@TempDir Path folder) {
    assertThat(run(folder))
        .containsExactly(
            "the folder has device files: No file in the folder "
                + folder
                + " or below it is a device file.");
  }

  @Test
  void aFolderThatIsNotThereFails(@TempDir Path folder) {
    Path none = folder.resolve("none");
    assertThat(run(none)).containsExactly("the folder is there: There is no folder " + none + ".");
  }

  @Test
  void filesComeInTheOrderOfTheirPaths(@TempDir Path folder) throws IOException {
    for (String name : List.of("b.device", "a.device", "c.device")) {
      Files.writeString(folder.resolve(name), "");
    }
    assertThat(DeviceSuite.of(folder, byName).map(DynamicNode::getDisplayName))
        .containsExactly("a.device", "b.device", "c.device");
    assertThat(solved).as("nothing is solved before it is tested").isEmpty();
  }
}
