package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.UnitSystem;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.Test;

/** The four forms of a solution, and names that mean something in them. */
class WritersTest {

  private static final List<String> NAMES =
      List.of("a<b>&'c'", "50%_#{x}$^~\\", "*bold*`code`[link](x)|", "1st");

  private static Device lever(String name) {
    return Device.named("lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("grip", 1.6, 0)
        .member(name, "hinge", "ram", "grip")
        .pin("hinge", "hinge", name, "ground")
        .force("hand " + name, name, "grip", Vector.of(0, -220))
        .sought("ram", name, "ram", Direction.UP)
        .build();
  }

  private static WorkedSolution solution(String name) {
    return WorkedSolution.of(Balance.of(lever(name)));
  }

  private static SolutionWriter full() {
    return SolutionWriter.of(Detail.FULL, UnitSystem.SI);
  }

  @Test
  void htmlIsWellFormedWhateverTheNames() throws XMLStreamException {
    for (String name : NAMES) {
      String html = full().html(solution(name));
      Set<String> elements = new HashSet<>();
      StringBuilder text = new StringBuilder();
      XMLStreamReader reader =
          XMLInputFactory.newDefaultFactory().createXMLStreamReader(new StringReader(html));
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamReader.START_ELEMENT) {
          elements.add(reader.getLocalName());
        } else if (event == XMLStreamReader.CHARACTERS) {
          text.append(reader.getText());
        }
      }
      assertThat(elements).contains("section", "math", "msub", "mi", "mn", "mo", "li");
      assertThat(text).contains("Cut " + name + " free.");
    }
  }

  @Test
  void latexEscapesWhatMeansSomething() {
    String latex = full().latex(solution(NAMES.get(1)));
    assertThat(latex)
        .contains(
            "Cut 50\\%\\_\\#\\{x\\}\\$\\textasciicircum{}\\textasciitilde{}\\textbackslash{} free.")
        .contains("\\[ 0.25\\,\\mathrm{m} \\cdot P_{\\mathrm{ram}} - 1.6\\,\\mathrm{m} \\cdot")
        .contains("\\mathrm{hinge}_{\\mathrm{y}}")
        .contains("\\begin{itemize}");
    assertThat(latex.split("begin\\{itemize", -1)).hasSameSizeAs(latex.split("end\\{itemize", -1));
  }

  @Test
  void markdownEscapesWhatMeansSomething() {
    assertThat(full().markdown(solution(NAMES.get(2))))
        .contains("Cut \\*bold\\*\\`code\\`\\[link\\](x)\\| free.")
        .contains("> `P_ram = 1408 N` (up on ")
        .contains("### Answers");
  }

  @Test
  void symbolsAreWordsAndNeverTheSame() {
    assertThat(Symbol.from("1st", "x").text()).isEqualTo("R1st_x");
    assertThat(Symbol.from("a b", "").text()).isEqualTo("a_b");
    Symbols symbols = new Symbols();
    assertThat(symbols.of("F", "a b").text()).isEqualTo("F_a_b");
    assertThat(symbols.of("F", "a_b").text()).isEqualTo("F_a_b2");
  }

  @Test
  void detailGrows() {
    WorkedSolution solution = solution("lever");
    String answer = SolutionWriter.of(Detail.ANSWER, UnitSystem.SI).text(solution);
    String outline = SolutionWriter.of(Detail.OUTLINE, UnitSystem.SI).text(solution);
    assertThat(answer).startsWith("Answers\n").contains("ram: 1408 N").doesNotContain("Cut");
    assertThat(outline)
        .contains("Cut lever free. Moments about hinge: P_ram = 1408 N (up on lever).")
        .doesNotContain(" = 0\n");
    assertThat(full().text(solution)).contains("Symbols\n").contains(" = 0\n");
  }

  @Test
  void momentsAreInForceTimesLengthOfTheUnits() {
    Device shelf =
        Device.named("shelf")
            .point("wall", 0, 0)
            .point("end", 0.3048, 0)
            .member("shelf", "wall", "end")
            .clamp("wall", "wall", "shelf", "ground")
            .force("load", "shelf", "end", Vector.of(0, -4.4482216152605))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(shelf));
    assertThat(SolutionWriter.of(Detail.FULL, UnitSystem.US).text(solution))
        .contains("M_wall − 1 ft · 1 lbf = 0")
        .contains("M_wall = 1 lbf·ft (counter-clockwise on shelf)");
  }

  @Test
  void veryLargeAndSmallNumbersHavePowersOfTen() {
    Device big =
        Device.named("big")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .joint("a")
            .joint("b")
            .pin("a", "a", "a", "ground")
            .pin("b", "b", "b", "ground")
            .force("large", "a", "a", Vector.of(-2.5e9, 0))
            .force("small", "b", "b", Vector.of(0, -2e-7))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(big));
    assertThat(full().text(solution)).contains("2.5e9 N").contains("2e-7 N");
    assertThat(full().latex(solution)).contains("2.5 \\times 10^{9}");
    assertThat(full().html(solution)).contains("<msup><mn>10</mn><mn>9</mn></msup>");
  }
}
