package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The notice names each library that the main program needs, with its licence, and no other. */
final class LibraryNoticeTest {

  /** A line of the list that Maven makes of what is needed: licence, then group, name, version. */
  private static final Pattern NEEDED =
      Pattern.compile("\\s+\\(([^)]+)\\) .*\\(([\\w.-]+:[\\w.-]+):[^:]+ - .*\\)");

  /** A line of the notice: group, name, licence. */
  private static final Pattern NAMED = Pattern.compile("\\* ([\\w.-]+:[\\w.-]+), ([^:]+):.*");

  @Test
  void everyLibraryIsNamedWithItsLicence() throws IOException {
    Map<String, String> needed = new TreeMap<>();
    read(Path.of("target", "third-party", "third-party.txt"), NEEDED, 2, 1, needed);
    Map<String, String> named = new TreeMap<>();
    read(Path.of("src", "main", "resources", "META-INF", "NOTICE"), NAMED, 1, 2, named);
    assertThat(needed).hasSizeGreaterThan(10);
    assertThat(named).isEqualTo(needed);
  }

  private static void read(
      Path file, Pattern pattern, int name, int licence, Map<String, String> into)
      throws IOException {
    for (String line : Files.readAllLines(file)) {
      Matcher found = pattern.matcher(line);
      if (found.matches()) {
        into.put(found.group(name), found.group(licence));
      }
    }
  }
}
