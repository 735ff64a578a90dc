package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.ReadResult;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The sample devices and reference problems in the project's folder {@code shared}. */
public final class YamlFiles {

  private static final Path SHARED = Path.of("..", "shared");

  private YamlFiles() {}

  /** Sample devices in order. */
  public static List<Path> devices() {
    return below(SHARED.resolve("devices"));
  }

  /** Reference problems in order. */
  public static List<Path> problems() {
    return below(SHARED.resolve("problems"));
  }

  /** A sample device. */
  public static Path device(String name) {
    return SHARED.resolve("devices").resolve(name + ".yaml");
  }

  /** The page that describes the JSON. */
  public static Path jsonPage() {
    return SHARED.resolve("answer-json.md");
  }

  /** What a text holds; it must be readable. */
  public static DeviceFile parse(String text) {
    return accepted(DeviceFileReader.read(text, "test.yaml"));
  }

  /** What a file holds; it must be readable. */
  public static DeviceFile read(Path file) {
    return accepted(DeviceFileReader.read(file));
  }

  private static DeviceFile accepted(ReadResult result) {
    assertThat(result).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) result).file();
  }

  private static List<Path> below(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
