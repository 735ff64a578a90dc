package bellcrank.examples.harness;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.harness.DeviceSuite;
import bellcrank.statics.harness.SuiteFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every sample device and every published problem comes out as its file expects. */
final class SharedDevicesTest {

  private static final Path SHARED = Path.of("..", "shared");

  @TestFactory
  Stream<DynamicNode> everySampleAnswersAsItExpects() {
    return DeviceSuite.of(SHARED.resolve("devices"), new DeviceFiles());
  }

  @TestFactory
  Stream<DynamicNode> everyPublishedProblemAnswersAsPrinted() {
    return DeviceSuite.of(SHARED.resolve("problems"), new DeviceFiles());
  }

  @Test
  void aFileThatCannotBeReadSaysWhere(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("press.yaml");
    Files.writeString(file, "format: 1\ndevice: press\npoints: {a: [0, zero]}\n");
    assertThat(new DeviceFiles().read(file))
        .isInstanceOfSatisfying(
            SuiteFile.Refused.class,
            refused ->
                assertThat(refused.problems())
                    .isNotEmpty()
                    .allMatch(problem -> problem.startsWith("press.yaml:3:")));
  }

  @Test
  void onlyYamlFilesAreRead() {
    DeviceFiles files = new DeviceFiles();
    assertThat(files.isDeviceFile(Path.of("a.yaml"))).isTrue();
    assertThat(files.isDeviceFile(Path.of("a.yml"))).isTrue();
    assertThat(files.isDeviceFile(Path.of("a.yaml.txt"))).isFalse();
  }
}
