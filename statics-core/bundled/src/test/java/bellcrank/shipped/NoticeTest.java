package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The notices name each library that is needed, with its licence, and no other. */
final class NoticeTest {

  /** A line of the list that Maven makes of what is needed: licence, then group, name, version. */
  private static final Pattern NEEDED =
      Pattern.compile("\\s+\\(([^)]+)\\) .*\\(([\\w.-]+:[\\w.-]+):[^:]+ - .*\\)");

  /** A line of a notice: group, name, licence. */
  private static final Pattern NAMED = Pattern.compile("\\* ([\\w.-]+:[\\w.-]+), ([^:]+):.*");

  static Stream<Path> jars() {
    return Stream.of(Shipped.CORE, Shipped.BUNDLED);
  }

  @ParameterizedTest
  @MethodSource("jars")
  void everyLibraryIsNamedWithItsLicence(Path jar) throws IOException {
    Map<String, String> needed = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of("target", "third-party", "third-party.txt"))) {
      Matcher found = NEEDED.matcher(line);
      if (found.matches()) {
        needed.put(found.group(2), found.group(1));
      }
    }
    Map<String, String> named = new TreeMap<>();
    Shipped.text(jar, "META-INF/NOTICE")
        .lines()
        .map(NAMED::matcher)
        .filter(Matcher::matches)
        .forEach(line -> named.put(line.group(1), line.group(2)));
    assertThat(needed).hasSizeGreaterThan(4);
    assertThat(named).as("META-INF/NOTICE of " + jar.getFileName()).isEqualTo(needed);
  }

  @Test
  void theBundleHandsOnTheNoticesAndLicencesOfWhatItHolds() {
    Path hipparchus = Shipped.fromClassPath("hipparchus-core-").get(0);
    String notice = Shipped.text(hipparchus, "META-INF/NOTICE.txt");
    assertThat(Shipped.text(Shipped.BUNDLED, "META-INF/NOTICE")).contains(notice.strip());
    assertThat(Shipped.text(Shipped.BUNDLED, "META-INF/hipparchus/NOTICE.txt")).isEqualTo(notice);
    assertThat(Shipped.text(Shipped.BUNDLED, "META-INF/hipparchus/LICENSE.txt"))
        .isEqualTo(Shipped.text(hipparchus, "META-INF/LICENSE.txt"))
        .contains("SciPy", "Minpack");
    for (Path library : Shipped.libraries()) {
      if (!library.equals(hipparchus)) {
        assertThat(Shipped.names(library))
            .filteredOn(name -> name.matches("(?i).*(notice|licen[cs]e).*"))
            .as(library.getFileName() + " brings no words of its own")
            .allMatch(
                name ->
                    Shipped.names(hipparchus).contains(name)
                        && Shipped.text(library, name).equals(Shipped.text(hipparchus, name)));
      }
    }
  }
}
