package bellcrank.examples.report;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Draws the curves over the travel as a picture in SVG: one chart below the other for each kind of
 * quantity, the greatest value of each curve marked and told.
 */
public final class TravelChart {

  private final TravelAnswer answer;
  private final String device;
  private final UnitSystem units;

  private TravelChart(TravelAnswer answer, String device, UnitSystem units) {
    this.answer = answer;
    this.device = device;
    this.units = units;
  }

  /**
   * Whether there is anything to draw.
   *
   * @param answer what happens over the travel
   * @return whether some curve has a value
   */
  public static boolean isDrawable(TravelAnswer answer) {
    return answer.curves().stream().anyMatch(curve -> !curve.samples().isEmpty());
  }

  /**
   * Draws the curves.
   *
   * @param answer what happens over the travel, with something to draw
   * @param device name of the device, for the title
   * @param units units of the axes
   * @return the text of an SVG document
   */
  public static String svg(TravelAnswer answer, String device, UnitSystem units) {
    return new TravelChart(answer, device, units).drawn();
  }

  private String drawn() {
    Map<Dimension, List<Curve>> kinds = new LinkedHashMap<>();
    for (Curve curve : answer.curves()) {
      if (!curve.samples().isEmpty()) {
        kinds.computeIfAbsent(curve.dimension(), one -> new ArrayList<>()).add(curve);
      }
    }
    ChartSheet sheet = new ChartSheet(title());
    kinds.forEach((dimension, curves) -> sheet.add(chart(sheet, dimension, curves)));
    return sheet.svg(words());
  }

  private String words() {
    Unit driven = units.unit(answer.plan().dimension());
    StringBuilder words = new StringBuilder("Over the ");
    words.append(ChartSheet.axis(DriveWords.of(answer.plan().drive()), driven)).append(':');
    for (Curve curve : answer.curves()) {
      String axis = ChartSheet.axis(curve.ask().text(), units.unit(curve.dimension()));
      words.append('\n').append(axis);
      curve.greatest().ifPresent(peak -> words.append(", ").append(told(curve, peak)));
    }
    return words.toString();
  }

  private String told(Curve curve, Curve.Sample peak) {
    if (curve.isBoundless(peak)) {
      return "greatest: without bound, near "
          + units.format(peak.drive(), answer.plan().dimension(), Amounts.DIGITS);
    }
    return "greatest: "
        + units.format(peak.value(), curve.dimension(), Amounts.DIGITS)
        + " at "
        + units.format(peak.drive(), answer.plan().dimension(), Amounts.DIGITS)
        + (answer.isOpen(curve, peak) ? ", still rising there" : "");
  }

  private XYChart chart(ChartSheet sheet, Dimension dimension, List<Curve> curves) {
    Unit driven = units.unit(answer.plan().dimension());
    Unit unit = units.unit(dimension);
    String noun = dimension == Dimension.NUMBER ? "ratio" : ReportJson.name(dimension);
    XYChart chart =
        sheet.chart(
            ChartSheet.axis(DriveWords.of(answer.plan().drive()), driven),
            ChartSheet.axis(curves.size() == 1 ? curves.get(0).ask().text() : noun, unit));
    for (int k = 0; k < curves.size(); k++) {
      add(chart, curves.get(k), sheet.colour(k), driven, unit);
    }
    return chart;
  }

  private String title() {
    boolean all = answer.loadCase().equals(LoadCase.ALL_LOADS);
    return device + (all ? "" : ", " + answer.loadCase().name());
  }

  private void add(XYChart chart, Curve curve, Color colour, Unit driven, Unit unit) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (Curve.Sample sample : curve.samples()) {
      x.add(driven.fromSi(sample.drive()));
      y.add(unit.fromSi(sample.value()));
    }
    ChartSheet.unevenly(x, y);
    String name = curve.ask().text();
    XYSeries line = chart.addSeries(name, x, y);
    line.setMarker(SeriesMarkers.NONE);
    line.setLineColor(colour);
    line.setLineStyle(new BasicStroke(2));
    curve
        .greatest()
        .filter(peak -> !curve.isBoundless(peak))
        .ifPresent(
            peak -> {
              XYSeries mark =
                  chart.addSeries(
                      name + ", " + told(curve, peak),
                      List.of(driven.fromSi(peak.drive())),
                      List.of(unit.fromSi(peak.value())));
              mark.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
              mark.setMarker(SeriesMarkers.CIRCLE);
              mark.setMarkerColor(colour);
            });
  }
}
