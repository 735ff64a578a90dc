package bellcrank.examples.report;

import bellcrank.statics.study.InfluenceLine;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Draws influence lines: the answer with the moving load at each place of its way. */
final class InfluenceChart {

  private InfluenceChart() {}

  /** A picture with one chart for each line, one below the other; at least one line. */
  static String svg(String title, List<InfluenceLine> lines, UnitSystem units) {
    ChartSheet sheet = new ChartSheet(title);
    StringBuilder words = new StringBuilder("Answers by the place of the moving load:");
    for (int k = 0; k < lines.size(); k++) {
      InfluenceLine line = lines.get(k);
      Unit along = units.unit(Dimension.LENGTH);
      Unit unit = units.unit(line.dimension());
      XYChart chart =
          sheet.chart(
              ChartSheet.axis("place of the load", along),
              ChartSheet.axis(line.ask().text(), unit));
      List<Double> x = new ArrayList<>();
      List<Double> y = new ArrayList<>();
      for (InfluenceLine.Piece piece : line.pieces()) {
        x.add(along.fromSi(piece.from()));
        y.add(unit.fromSi(line.base() + line.load() * piece.first()));
        x.add(along.fromSi(piece.to()));
        y.add(unit.fromSi(line.base() + line.load() * piece.last()));
      }
      ChartSheet.unevenly(x, y);
      XYSeries series = chart.addSeries(line.ask().text(), x, y);
      series.setMarker(SeriesMarkers.NONE);
      series.setLineColor(sheet.colour(k));
      series.setLineStyle(new BasicStroke(2));
      sheet.add(chart);
      words.append('\n').append(ChartSheet.axis(line.ask().text(), unit));
    }
    return sheet.svg(words.toString());
  }
}
