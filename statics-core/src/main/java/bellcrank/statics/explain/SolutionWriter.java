package bellcrank.statics.explain;

import bellcrank.statics.units.UnitSystem;
import java.util.List;

/**
 * Writes worked solutions. Numbers are written so that each equation can be worked out again from
 * its text and then holds to four digits.
 */
public final class SolutionWriter {

  private final Detail detail;
  private final UnitSystem units;

  private SolutionWriter(Detail detail, UnitSystem units) {
    this.detail = detail;
    this.units = units;
  }

  /**
   * A writer.
   *
   * @param detail how much it writes
   * @param units units of the numbers; moments in equations are in force times length
   * @return the writer
   */
  public static SolutionWriter of(Detail detail, UnitSystem units) {
    return new SolutionWriter(detail, units);
  }

  private List<Passage> pages(WorkedSolution solution) {
    return Pages.of(solution, detail, units);
  }

  /**
   * A solution as plain text.
   *
   * @param solution the solution
   * @return lines with line ends; a line may be long
   */
  public String text(WorkedSolution solution) {
    return TextForm.of(pages(solution));
  }

  /**
   * A solution as Markdown.
   *
   * @param solution the solution
   * @return lines with line ends; formulas are set as code
   */
  public String markdown(WorkedSolution solution) {
    return MarkdownForm.of(pages(solution));
  }

  /**
   * A solution as LaTeX, to be put into a document.
   *
   * @param solution the solution
   * @return lines with line ends; it needs no package but one for UTF-8
   */
  public String latex(WorkedSolution solution) {
    return LatexForm.of(pages(solution));
  }

  /**
   * A solution as HTML, to be put into a page; formulas are MathML.
   *
   * @param solution the solution
   * @return one {@code section} element, well-formed as XML
   */
  public String html(WorkedSolution solution) {
    return HtmlForm.of(pages(solution));
  }
}
