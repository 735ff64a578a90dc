package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports as a browser shows them. */
final class ReportInBrowserTest {

  private static final String HOSTILE = "hostile-names";

  /** One of each kind: solved by hand, ranges, curves, no balance, names that look like markup. */
  private static final List<String> DEVICES =
      List.of("barrel-derrick", "stacked-crates", "barrel-luffing", "gate-without-brace", HOSTILE);

  @TempDir private static Path folder;

  private static final Map<String, Path> PAGES = new HashMap<>();
  private static Optional<Browser> browser = Optional.empty();

  @BeforeAll
  static void writeThePages() {
    browser = Browser.start();
    if (browser.isEmpty()) {
      return;
    }
    for (String name : DEVICES) {
      Path device =
          name.equals(HOSTILE)
              ? Path.of("src", "test", "resources", "report-data", name + ".yaml")
              : YamlFiles.device(name);
      Path page = folder.resolve(name + ".html");
      CommandRun run = CommandRun.of(device.toString(), "--report", page.toString());
      assertThat(run.out()).contains("report: " + page);
      PAGES.put(name, page);
    }
  }

  @AfterAll
  static void close() {
    browser.ifPresent(Browser::close);
  }

  private static Browser browser() {
    boolean required = System.getenv(Browser.REQUIRED) != null;
    assertThat(required && browser.isEmpty())
        .as("%s is set, but there is no chromium with its chromedriver", Browser.REQUIRED)
        .isFalse();
    assumeTrue(browser.isPresent(), "no chromium with its chromedriver: reports are not looked at");
    return browser.orElseThrow();
  }

  @Test
  void noPageIsWiderThanItsWindow() {
    for (String name : DEVICES) {
      for (int width : List.of(360, 1280)) {
        browser().open(page(name), width);
        assertThat(browser().value("document.documentElement.scrollWidth"))
            .as(name + " at " + width)
            .isEqualTo(browser().value("document.documentElement.clientWidth"));
      }
    }
  }

  @Test
  void nothingIsFetchedAndNothingComplains() {
    for (String name : DEVICES) {
      browser().open(page(name), 1280);
      assertThat(browser().console()).as(name).isEmpty();
      assertThat(browser().requests()).as(name).containsExactly(page(name).toUri().toString());
      assertThat(browser().value("performance.getEntriesByType('resource').length")).isEqualTo(0L);
    }
  }

  @Test
  void namesThatLookLikeMarkupDoNothing() {
    browser().open(page(HOSTILE), 1280);
    assertThat(browser().value("document.title"))
        .isEqualTo("<script>document.title = 'taken'</script><img src=x onerror=alert(1)>");
    assertThat(browser().value("document.querySelectorAll('script,img,iframe,object').length"))
        .isEqualTo(0L);
    assertThat(browser().value("getComputedStyle(document.body).display")).isEqualTo("block");
    assertThat(browser().value("document.querySelectorAll('main > section').length"))
        .isEqualTo(browser().value("document.querySelectorAll('nav li').length"));
  }

  @Test
  void itIsReadableInLightAndInDark() {
    browser().open(page("barrel-luffing"), 1280);
    assertThat(ink()).isEqualTo("rgb(27, 31, 35)");
    assertThat(paper()).isEqualTo("rgb(255, 255, 255)");
    assertThat(browser().value("getComputedStyle(document.querySelector('svg text')).fill"))
        .isEqualTo("rgb(26, 26, 26)");
    browser().media("", "dark");
    assertThat(ink()).isEqualTo("rgb(232, 234, 236)");
    assertThat(paper()).isEqualTo("rgb(21, 24, 27)");
    assertThat(browser().value("getComputedStyle(document.querySelector('svg text')).fill"))
        .isEqualTo("rgb(240, 240, 240)");
    assertThat(browser().value("getComputedStyle(document.querySelector('.chart')).filter"))
        .asString()
        .contains("invert");
  }

  private static Object ink() {
    return browser().value("getComputedStyle(document.querySelector('main p')).color");
  }

  private static Object paper() {
    return browser().value("getComputedStyle(document.documentElement).backgroundColor");
  }

  @Test
  void stylesOfPicturesStayInThePictures() {
    browser().open(page("barrel-derrick"), 1280);
    // the pictures have a class of this name, in which texts are bold
    assertThat(browser().value("getComputedStyle(document.querySelector('math')).fill"))
        .isEqualTo("rgb(0, 0, 0)");
    assertThat(
            browser()
                .value("getComputedStyle(document.querySelector('svg .title text')).fontWeight"))
        .isEqualTo("600");
  }

  @Test
  void stepsAreOpenOnScreenAndCannotBeClosedOnPaper() {
    browser().open(page("barrel-derrick"), 1280);
    String hidden =
        "[...document.querySelectorAll('details > p, details > pre')]"
            + ".filter(p => !p.checkVisibility({contentVisibilityAuto: true})).length";
    assertThat(browser().value("document.querySelectorAll('details').length"))
        .isEqualTo(browser().value("document.querySelectorAll('details[open]').length"));
    assertThat(browser().value(hidden)).isEqualTo(0L);
    browser().value("document.querySelectorAll('details').forEach(one => one.open = false)");
    assertThat(browser().value(hidden)).isNotEqualTo(0L);
    browser().media("print", "light");
    assertThat(browser().valueOnce(hidden, 0L)).isEqualTo(0L);
  }

  private static Path page(String name) {
    browser();
    return PAGES.getOrDefault(name, folder);
  }
}
