package bellcrank.examples.report;

import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.InternalForces;
import bellcrank.statics.equilibrium.Peak;
import bellcrank.statics.equilibrium.Piece;
import bellcrank.statics.equilibrium.Polynomial;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Draws the forces inside a member as a picture in SVG: one chart each for normal force, shear
 * force and bending moment, bar after bar along the same axis, with the largest value of each
 * marked. Jumps are drawn upright.
 */
public final class InsideChart {

  private static final int STEPS = 40;

  private final InternalForces forces;
  private final String title;
  private final UnitSystem units;

  private InsideChart(InternalForces forces, String title, UnitSystem units) {
    this.forces = forces;
    this.title = title;
    this.units = units;
  }

  /**
   * Whether there is anything to draw.
   *
   * @param forces the forces inside a member
   * @return whether something is told of some bar
   */
  public static boolean isDrawable(InternalForces forces) {
    return forces.bars().stream().anyMatch(bar -> bar.unresolved().isEmpty());
  }

  /**
   * Draws the forces.
   *
   * @param forces the forces inside a member, with something to draw
   * @param title words above the picture
   * @param units units of the axes
   * @return the text of an SVG document
   */
  public static String svg(InternalForces forces, String title, UnitSystem units) {
    return new InsideChart(forces, title, units).drawn();
  }

  private String drawn() {
    ChartSheet sheet = new ChartSheet(title);
    StringBuilder words = new StringBuilder("Along the bars:");
    for (InsideForce force : InsideForce.values()) {
      chart(sheet, force, words);
    }
    return sheet.svg(words.toString());
  }

  private void chart(ChartSheet sheet, InsideForce force, StringBuilder words) {
    Unit metres = units.unit(Dimension.LENGTH);
    Unit unit = units.unit(force.dimension());
    XYChart chart =
        sheet.chart(
            ChartSheet.axis("along the bars", metres), ChartSheet.axis(force.words(), unit));
    double from = 0;
    int colour = 0;
    for (BarForces bar : forces.bars()) {
      if (bar.unresolved(force).isEmpty()) {
        String name = bar.bar().start() + "–" + bar.bar().end();
        Color own = sheet.colour(colour++);
        line(chart, bar, force, from, name, own);
        Peak peak = bar.extremes(force).largest();
        String told = name + ": " + told(force, peak);
        words.append('\n').append(force.words()).append(" of ").append(told);
        mark(chart, told, metres.fromSi(from + peak.at()), unit.fromSi(peak.value()), own);
      }
      from += bar.length();
    }
    if (colour > 0) {
      sheet.add(chart);
    }
  }

  private String told(InsideForce force, Peak peak) {
    return units.format(peak.value(), force.dimension(), Amounts.DIGITS)
        + " at "
        + units.format(peak.at(), Dimension.LENGTH, Amounts.DIGITS);
  }

  private void line(
      XYChart chart, BarForces bar, InsideForce force, double from, String name, Color colour) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    Unit metres = units.unit(Dimension.LENGTH);
    Unit unit = units.unit(force.dimension());
    // to the axis at both ends, as a diagram is closed
    x.add(metres.fromSi(from));
    y.add(0.0);
    for (Piece piece : bar.pieces()) {
      Polynomial curve = piece.curve(force);
      for (int i = 0; i <= STEPS; i++) {
        double at =
            i == STEPS ? piece.end() : piece.start() + (piece.end() - piece.start()) * i / STEPS;
        x.add(metres.fromSi(from + at));
        y.add(unit.fromSi(curve.at(at)));
      }
    }
    x.add(metres.fromSi(from + bar.length()));
    y.add(0.0);
    ChartSheet.unevenly(x, y);
    XYSeries line = chart.addSeries(name, x, y);
    line.setMarker(SeriesMarkers.NONE);
    line.setLineColor(colour);
    line.setLineStyle(new BasicStroke(2));
  }

  private static void mark(XYChart chart, String name, double x, double y, Color colour) {
    XYSeries mark = chart.addSeries(name, List.of(x), List.of(y));
    mark.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
    mark.setMarker(SeriesMarkers.CIRCLE);
    mark.setMarkerColor(colour);
  }
}
