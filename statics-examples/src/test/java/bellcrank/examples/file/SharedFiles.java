package bellcrank.examples.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The device files and the schema that stand in the project's folder {@code shared}. */
final class SharedFiles {

  static final Path FOLDER = Path.of(System.getProperty("bellcrank.shared", "../shared"));

  private SharedFiles() {}

  /** Sample devices and reference problems, in a fixed order. */
  static List<Path> devices() {
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("devices", "problems")) {
      Path start = FOLDER.resolve(folder);
      if (Files.isDirectory(start)) {
        try (Stream<Path> below = Files.walk(start)) {
          below.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(files::add);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
    return files;
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path schema() {
    return FOLDER.resolve("device-file.schema.json");
  }
}
