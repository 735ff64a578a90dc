package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * What happens to a device over its travel as comma-separated values (RFC 4180): a head with the
 * units, then a row for each place of the way. A cell without an answer is empty.
 */
public final class TravelCsv {

  private static final MathContext DIGITS = new MathContext(10);
  private static final String LINE_END = "\r\n";

  private TravelCsv() {}

  /**
   * Writes the table.
   *
   * @param answer what happens over the travel
   * @param units units of the values
   * @return lines with line ends; the head alone if the device cannot be driven
   */
  public static String of(TravelAnswer answer, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    List<String> heads = new ArrayList<>();
    Dimension drive = answer.plan().dimension();
    heads.add(head(DriveWords.of(answer.plan().drive()), units.unit(drive)));
    for (Curve curve : answer.curves()) {
      heads.add(head(curve.ask().text(), units.unit(curve.dimension())));
    }
    line(text, heads);
    for (TravelAnswer.Row row : answer.rows()) {
      List<String> cells = new ArrayList<>();
      cells.add(number(row.drive(), units.unit(drive)));
      for (Answer one : row.answers()) {
        cells.add(
            one instanceof Answer.Value value
                ? number(value.si(), units.unit(value.dimension()))
                : "");
      }
      line(text, cells);
    }
    return text.toString();
  }

  /** The head of a column. */
  static String head(String words, Unit unit) {
    return unit.symbol().isEmpty() ? words : words + " (" + unit.symbol() + ")";
  }

  /** A number of a unit. */
  static String number(double si, Unit unit) {
    BigDecimal rounded = new BigDecimal(unit.fromSi(si)).round(DIGITS).stripTrailingZeros();
    boolean plain = Math.abs(rounded.precision() - rounded.scale()) < DIGITS.getPrecision();
    return rounded.signum() == 0 ? "0" : plain ? rounded.toPlainString() : rounded.toString();
  }

  /** Adds a line. */
  static void line(StringBuilder text, List<String> cells) {
    text.append(String.join(",", cells.stream().map(TravelCsv::cell).toList())).append(LINE_END);
  }

  private static String cell(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
