package bellcrank.examples.report;

import bellcrank.examples.file.TableFriction;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.FrictionRow;
import bellcrank.statics.ground.Span;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;

/** Says what a file takes from a table, and where the table has it from. */
final class TakenWords {

  private static final int DIGITS = 6;

  private TakenWords() {}

  static String of(TableFriction taken) {
    FrictionRow row = taken.tableRow();
    Span span = row.staticFriction();
    String end =
        span.isSingle()
            ? ""
            : ", the "
                + (taken.value() == span.low() ? "lowest" : "highest")
                + " of "
                + number(span.low())
                + " to "
                + number(span.high());
    return "friction of "
        + taken.part()
        + ": "
        + number(taken.value())
        + end
        + ", from "
        + row.source()
        + ": "
        + row.name()
        + (row.basis() == Basis.FROM_MEMORY ? " (from memory)" : "")
        + (row.note().isEmpty() ? "" : ". " + row.note());
  }

  /** A number with the digits that the table has. */
  static String number(double value) {
    String text = UnitSystem.SI.format(value, Dimension.NUMBER, DIGITS).strip();
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }
}
