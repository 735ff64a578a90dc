package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Programs that were written for the last version still fit. */
final class ApiTest {

  /** What the last version promised. */
  private static final Path LAST = Path.of("src", "test", "api", "0.1.0.txt");

  @Test
  void nothingThatTheLastVersionPromisedIsLost() throws IOException, ReflectiveOperationException {
    Api now = Api.of(Shipped.CORE, Shipped.allLibraries());
    if ("write".equals(System.getProperty("bellcrank.api"))) {
      Files.write(LAST, now.lines());
    }
    Api last = Api.parse(Files.readAllLines(LAST));
    assertThat(last.facts()).hasSizeGreaterThan(200);
    assertThat(last.lost(now))
        .as(
            "Programs of users that were written for the last version may not compile or run any"
                + " more. If that is meant, say so under Changes in README.md and take what is"
                + " there now as what is promised, as DEVELOPERS.md tells under What is shipped.")
        .isEmpty();
  }

  @Test
  void bothJarsPromiseTheSame() throws ReflectiveOperationException {
    List<String> bundled = Api.of(Shipped.BUNDLED, Shipped.librariesOfTests()).lines();
    assertThat(bundled).isEqualTo(Api.of(Shipped.CORE, Shipped.allLibraries()).lines());
  }
}
