package bellcrank.examples.report;

import bellcrank.statics.device.Side;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.Extremes;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.Peak;
import bellcrank.statics.equilibrium.Piece;
import bellcrank.statics.equilibrium.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The places of a bar at which the forces inside are told: ends, jumps and peaks. */
final class InsideRows {

  /**
   * A place.
   *
   * @param at distance from the bar's start in m
   * @param side on which side of it
   * @param words what is there
   */
  record Row(double at, Side side, String words) {}

  private static final double SAME_PLACE = 1e-9;

  private final BarForces bar;
  private final Amounts amounts;
  private final List<Row> rows = new ArrayList<>();

  private InsideRows(BarForces bar, Amounts amounts) {
    this.bar = bar;
    this.amounts = amounts;
  }

  static List<Row> of(BarForces bar, Amounts amounts) {
    return new InsideRows(bar, amounts).all();
  }

  private List<Row> all() {
    rows.add(new Row(0, Side.AFTER, bar.bar().start()));
    List<Piece> pieces = bar.pieces();
    for (int i = 1; i < pieces.size(); i++) {
      double at = pieces.get(i).start();
      if (jumps(at)) {
        rows.add(new Row(at, Side.BEFORE, ("before " + name(at)).strip()));
        rows.add(new Row(at, Side.AFTER, ("after " + name(at)).strip()));
      }
    }
    rows.add(new Row(bar.length(), Side.BEFORE, bar.bar().end()));
    for (InsideForce force : InsideForce.values()) {
      if (bar.unresolved(force).isEmpty()) {
        Extremes extremes = bar.extremes(force);
        peak(extremes.least(), force, "least");
        peak(extremes.greatest(), force, "greatest");
      }
    }
    rows.sort(Comparator.comparingDouble(Row::at));
    return rows;
  }

  private boolean jumps(double at) {
    for (InsideForce force : InsideForce.values()) {
      if (bar.unresolved(force).isEmpty()) {
        double jump = bar.value(force, at, Side.AFTER) - bar.value(force, at, Side.BEFORE);
        if (!amounts.isZero(jump, force.dimension())) {
          return true;
        }
      }
    }
    return false;
  }

  private String name(double at) {
    for (Place place : bar.places()) {
      if (isSame(place.at(), at) && !place.points().isEmpty()) {
        return place.points().get(0);
      }
    }
    return "";
  }

  private boolean isSame(double one, double other) {
    return Math.abs(one - other) <= SAME_PLACE * bar.length();
  }

  /** A peak that is not told yet. */
  private void peak(Peak peak, InsideForce force, String word) {
    if (rows.stream().noneMatch(row -> isSame(row.at(), peak.at()))) {
      String symbol =
          switch (force) {
            case NORMAL -> "N";
            case SHEAR -> "V";
            case MOMENT -> "M";
          };
      rows.add(new Row(peak.at(), peak.side(), word + " " + symbol));
    }
  }
}
