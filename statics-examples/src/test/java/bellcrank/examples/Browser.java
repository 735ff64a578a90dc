package bellcrank.examples;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;

/** A browser without a window, for tests of pages. */
final class Browser implements AutoCloseable {

  /** Where this is set, a browser must be there. */
  static final String REQUIRED = "BELLCRANK_BROWSER_REQUIRED";

  private static final Duration WAIT = Duration.ofSeconds(5);

  private static final Pattern REQUEST =
      Pattern.compile("\"method\":\"Network\\.requestWillBeSent\".*?\"url\":\"([^\"]*)\"");

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** A browser that was started; empty if none is installed. */
  static Optional<Browser> start() {
    Optional<Path> program = found(List.of("chromium", "chromium-browser", "google-chrome"));
    Optional<Path> remote = found(List.of("chromedriver"));
    if (program.isEmpty() || remote.isEmpty()) {
      return Optional.empty();
    }
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program.get().toFile());
    // the sandbox is not to be had in containers; the pages are our own
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu");
    options.addArguments("--disable-dev-shm-usage", "--no-first-run");
    options.setCapability(
        "goog:loggingPrefs", Map.of(LogType.BROWSER, "ALL", LogType.PERFORMANCE, "ALL"));
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(remote.get().toFile())
            .usingAnyFreePort()
            .build();
    return Optional.of(new Browser(new ChromeDriver(service, options)));
  }

  private static Optional<Path> found(List<String> names) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return names.stream()
        .flatMap(
            name -> List.of(path.split(File.pathSeparator)).stream().map(in -> Path.of(in, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Opens a page on a light screen as wide as stated, in CSS pixels. */
  void open(Path page, int width) {
    media("", "light");
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    driver.manage().logs().get(LogType.BROWSER);
    driver.manage().logs().get(LogType.PERFORMANCE);
    driver.get(page.toUri().toString());
  }

  /** Sets the medium ("" for the screen) and the scheme of colours. */
  void media(String medium, String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** What an expression of JavaScript is on the page. */
  Object value(String expression) {
    Object value = driver.executeScript("return " + expression);
    return value == null ? "null" : value;
  }

  /**
   * Waits until an expression of JavaScript has a value, since a page is drawn anew a little after
   * a change.
   *
   * @return the value that it has then, or after five seconds
   */
  Object valueOnce(String expression, Object wanted) {
    long end = System.nanoTime() + WAIT.toNanos();
    Object value = value(expression);
    while (!value.equals(wanted) && System.nanoTime() < end) {
      driver.executeAsyncScript("requestAnimationFrame(arguments[0])");
      value = value(expression);
    }
    return value;
  }

  /** What the console has been told since the page was opened. */
  List<String> console() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(Object::toString)
        .toList();
  }

  /** The addresses that were asked for since the page was opened. */
  List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> REQUEST.matcher(entry.getMessage()))
        .filter(Matcher::find)
        .map(found -> found.group(1))
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
