package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.HtmlText;
import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.units.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Reports of all samples: what they say, and that they need nothing but themselves. */
final class ReportSheetTest {

  private static final int MOST_BYTES = 1_000_000;

  private static final Making MAKING =
      Making.of("1.0", List.of("--report", "sheet.html", "device.yaml"));

  private static final Path HOSTILE =
      Path.of("src", "test", "resources", "report-data", "hostile-names.yaml");

  static Stream<Path> files() {
    return Stream.concat(YamlFiles.devices().stream(), Stream.of(HOSTILE));
  }

  private static FileAnswer answer(Path path) {
    DeviceFile file = YamlFiles.read(path);
    return FileAnswer.of("device.yaml", file, Optional.empty(), List.of());
  }

  @ParameterizedTest
  @MethodSource("files")
  void itIsWellFormedSmallAndAlone(Path path) {
    FileAnswer answer = answer(path);
    String html = ReportSheet.html(answer, answer.file().units(), MAKING);
    assertThat(html.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(MOST_BYTES);
    HtmlText page = HtmlText.of(html);
    assertThat(page.elements("script", "img", "iframe", "object", "link", "base", "form"))
        .isEmpty();
    for (Element element : page.all()) {
      for (String name : HtmlText.attributes(element)) {
        assertThat(name).doesNotStartWith("on");
        if (name.endsWith("href") || name.equals("src")) {
          assertThat(element.getAttribute(name)).startsWith("#");
        }
      }
    }
    assertThat(page.css()).doesNotContain("url(", "@import");
    ids(page);
    headings(page);
    for (Element head : page.elements("th")) {
      assertThat(head.getAttribute("scope")).isIn("col", "row");
    }
    assertThat(page.elements("caption")).hasSameSizeAs(page.elements("table"));
    for (Element picture : page.elements("svg")) {
      assertThat(HtmlText.children(picture, "title")).hasSize(1);
    }
    assertThat(page.text(page.root())).doesNotContain("NaN", "Infinity");
  }

  private static void ids(HtmlText page) {
    List<String> ids = new ArrayList<>();
    List<String> links = new ArrayList<>();
    for (Element element : page.all()) {
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
      if (element.hasAttribute("href")) {
        links.add(element.getAttribute("href").substring(1));
      }
      if (element.hasAttribute("aria-labelledby")) {
        links.addAll(List.of(element.getAttribute("aria-labelledby").split(" ", -1)));
      }
    }
    assertThat(ids).doesNotHaveDuplicates().containsAll(new HashSet<>(links));
  }

  private static void headings(HtmlText page) {
    int last = 0;
    for (Element heading : page.elements("h1", "h2", "h3", "h4")) {
      int level = heading.getTagName().charAt(1) - '0';
      assertThat(level).as(heading.getTextContent()).isBetween(1, last + 1);
      last = level;
    }
    assertThat(page.elements("h1")).hasSize(1);
  }

  @ParameterizedTest
  @MethodSource("files")
  void itSaysAllThatTheTextAnswerSays(Path path) {
    FileAnswer answer = answer(path);
    for (UnitSystem units : List.of(answer.file().units(), UnitSystem.US)) {
      HtmlText page = HtmlText.of(ReportSheet.html(answer, units, MAKING));
      List<String> sentences = page.texts("h1", "h2", "h3", "p", "li", "span");
      List<String> rows = page.texts("tr");
      for (PageBlock block : ReportText.page(answer, units).blocks()) {
        if (block instanceof PageBlock.Grid grid) {
          for (List<String> cells : grid.table().rows()) {
            assertThat(rows).contains(HtmlText.plain(String.join(" ", cells)));
          }
        } else {
          String words = HtmlText.plain(words(block));
          assertThat(sentences).anyMatch(one -> one.contains(words));
        }
      }
    }
  }

  private static String words(PageBlock block) {
    if (block instanceof PageBlock.Title title) {
      return title.words();
    }
    if (block instanceof PageBlock.Heading heading) {
      return heading.words();
    }
    if (block instanceof PageBlock.Paragraph paragraph) {
      return paragraph.words();
    }
    if (block instanceof PageBlock.Item item) {
      return item.words();
    }
    return block instanceof PageBlock.Subitem item ? item.words() : "";
  }

  @Test
  void namesAndTextsThatLookLikeMarkupStayText() {
    FileAnswer answer = answer(HOSTILE);
    HtmlText page = HtmlText.of(ReportSheet.html(answer, UnitSystem.SI, MAKING));
    assertThat(page.texts("h1"))
        .containsExactly("<script>document.title = 'taken'</script><img src=x onerror=alert(1)>");
    assertThat(page.texts("p"))
        .anyMatch(one -> one.startsWith("\"><img onerror=alert(2) src=http://other.invalid/a>"))
        .anyMatch(one -> one.contains("{{title}} ]]> <!-- &amp;"));
    assertThat(page.texts("th")).contains("'><svg onload=alert(5)>", "مفصل الرافعة");
  }

  @Test
  void theSameInputMakesTheSameBytes() {
    Path path = YamlFiles.device("barrel-luffing");
    String first = ReportSheet.html(answer(path), UnitSystem.SI, MAKING);
    assertThat(ReportSheet.html(answer(path), UnitSystem.SI, MAKING)).isEqualTo(first);
  }

  @Test
  void theInputIsToldInWords() {
    FileAnswer answer = answer(YamlFiles.device("barrel-derrick"));
    HtmlText page = HtmlText.of(ReportSheet.html(answer, UnitSystem.SI, MAKING));
    assertThat(page.texts("tr"))
        .contains(
            "handle 0.08 1.44",
            "pole bars foot – heel – axle – head",
            "heel pin heel jib, pole without friction",
            "rope reeving axle – head – tip winch, pole, jib drum at axle, radius 0.05 m,"
                + " clockwise; sheave at head, clockwise; end at tip",
            "pole weight weight 240 N down, mass 24.4732 kg on pole, spread over its bars",
            "hand sought: force, left and down, 53.1° on winch at handle");
    assertThat(page.texts("h2"))
        .containsExactly(
            "1 Statement",
            "2 Input as understood",
            "3 The device",
            "4 Outcome",
            "5 Free bodies",
            "6 Forces of the connections",
            "7 Worked by hand",
            "8 Forces inside the members",
            "9 Motion, restraint and advantage",
            "10 Further answers",
            "11 Compared with expected values",
            "12 Assumptions",
            "13 Cautions",
            "14 Sources",
            "15 How this was made");
    assertThat(page.texts("figcaption")).contains("Figure 5. Free body of jib.");
    assertThat(page.texts("summary"))
        .contains(
            "1. Cut jib free. Moments about heel: heelx and heely have no arm there, so only Trope"
                + " is unknown.");
  }

  @Test
  void theCautionIsSaidOnce() {
    FileAnswer answer = answer(YamlFiles.device("wall-jib"));
    String html = ReportSheet.html(answer, UnitSystem.SI, MAKING);
    assertThat(html.split("Stay out of the line of pull", -1)).hasSize(2);
  }

  @Test
  void theCommandIsToldAsOneWouldTypeIt() {
    assertThat(Making.of("1", List.of("--ask", "hinge.x on lever", "it's.yaml")).command())
        .isEqualTo("bellcrank --ask 'hinge.x on lever' 'it'\\''s.yaml'");
  }
}
