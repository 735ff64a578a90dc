package bellcrank.statics.harness;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;

/**
 * Makes a suite of JUnit tests out of a folder of device files, for a method with
 * {@code @TestFactory}: a container for each file, and in it a test for each answer that the file
 * expects.
 *
 * <p>What would let a suite pass without having tested anything is a failing test of its own: a
 * folder that is not there or has no device files, a file that expects nothing, and a file that
 * cannot be read, with all that its reader says.
 */
@SuppressWarnings("exports") // JUnit is not required transitively, see the module
public final class DeviceSuite {

  private DeviceSuite() {}

  /**
   * The suite of a folder and of the folders below it, in the order of their paths.
   *
   * @param folder the folder
   * @param reader reads its device files
   * @return a container for each file, or a failing test if there is none; a file is read when its
   *     container is opened, and a case is solved when its first answer is tested
   */
  public static Stream<DynamicNode> of(Path folder, SuiteReader reader) {
    if (!Files.isDirectory(folder)) {
      return Stream.of(failing("the folder is there", "There is no folder " + folder + "."));
    }
    List<Path> files = files(folder, reader);
    if (files.isEmpty()) {
      return Stream.of(
          failing(
              "the folder has device files",
              "No file in the folder " + folder + " or below it is a device file."));
    }
    return files.stream()
        .map(
            file ->
                DynamicContainer.dynamicContainer(
                    name(folder, file),
                    file.toUri(),
                    Stream.of(file).flatMap(one -> tests(name(folder, one), reader.read(one)))));
  }

  private static List<Path> files(Path folder, SuiteReader reader) {
    try (Stream<Path> below = Files.walk(folder)) {
      return below
          .filter(Files::isRegularFile)
          .filter(reader::isDeviceFile)
          .sorted(Comparator.comparing(file -> name(folder, file)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The way to a file, alike on every machine. */
  private static String name(Path folder, Path file) {
    List<String> parts = new ArrayList<>();
    folder.relativize(file).forEach(part -> parts.add(part.toString()));
    return String.join("/", parts);
  }

  private static Stream<DynamicNode> tests(String name, SuiteFile file) {
    if (file instanceof SuiteFile.Refused refused) {
      return Stream.of(
          failing(
              "can be read", name + " cannot be read:\n" + String.join("\n", refused.problems())));
    }
    SuiteFile.Read readable = (SuiteFile.Read) file;
    if (readable.expectations().isEmpty()) {
      return Stream.of(
          failing(
              "expects answers", name + " expects no answers, so there is nothing to test of it."));
    }
    Map<String, SuiteFile.SolvedCase> solved = new ConcurrentHashMap<>();
    return readable.expectations().stream()
        .map(
            expectation -> {
              ExpectationClaims claims = new ExpectationClaims(expectation, readable.units());
              return DynamicTest.dynamicTest(
                  claims.name(),
                  () ->
                      fail(
                          claims.holds(
                              solved.computeIfAbsent(expectation.loadCase(), readable.cases()))));
            });
  }

  private static DynamicNode failing(String name, String message) {
    return DynamicTest.dynamicTest(name, () -> fail(Optional.of(Message.of(message))));
  }

  private static void fail(Optional<Message> wrong) {
    if (wrong.isPresent()) {
      throw new AssertionError(wrong.get().text());
    }
  }
}
