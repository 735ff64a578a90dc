package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.Span;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;
import java.util.stream.Collectors;

/** Published figures for lines and winches. They are for looking up; nothing here applies them. */
public final class HaulingTable {

  private static final List<CitedValue> ROWS =
      List.of(
          row(
              "efficiency of a sheave, wire rope",
              "0.98",
              Dimension.NUMBER,
              "Wire rope maker's technical note on rope efficiency",
              "Bending of the rope and bearing together. Losses of 2 to 10 % per sheave are met:"
                  + " common practice, no source."),
          row(
              "line pull on a full drum, least share of the first layer's",
              "50 %",
              Dimension.NUMBER,
              "Off-road recovery safety guide (after army driver manuals)",
              "The pull that is printed on a winch is that of the bare drum."),
          row(
              "crank effort for several minutes",
              "30 lbf",
              Dimension.FORCE,
              "Introduction to Fall Protection, 4th ed., p. 370",
              "Arm of 12 in, hoist geared 5 to 1."));

  private HaulingTable() {}

  private static CitedValue row(
      String name, String value, Dimension dimension, String source, String note) {
    double si = Quantity.parse(value, dimension).si();
    return new CitedValue(name, Span.of(si), dimension, source, Basis.PRINTED, note);
  }

  /**
   * All rows.
   *
   * @return the rows
   */
  public static List<CitedValue> rows() {
    return ROWS;
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code efficiency of a sheave, wire rope}
   * @return the row
   * @throws ModelException if there is none of that name; it says the names
   */
  public static CitedValue named(String name) {
    return ROWS.stream()
        .filter(row -> row.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    "hauling table",
                    "row",
                    '"' + name + '"',
                    ROWS.stream().map(CitedValue::name).collect(Collectors.joining("; "))));
  }
}
