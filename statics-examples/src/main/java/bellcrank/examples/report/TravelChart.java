package bellcrank.examples.report;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.svg.SVGProcessor;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Draws the curves over the travel as a picture in SVG: one chart below the other for each kind of
 * quantity, the greatest value of each curve marked and told.
 */
public final class TravelChart {

  private static final int WIDTH = 800;
  private static final int HEIGHT = 420;

  /** Colours that stay apart also for most people who see colours differently. */
  private static final List<Color> COLOURS =
      List.of(
          new Color(0, 114, 178),
          new Color(213, 94, 0),
          new Color(0, 158, 115),
          new Color(204, 121, 167),
          new Color(86, 180, 233),
          new Color(0, 0, 0));

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
    VectorGraphics2D graphics = new VectorGraphics2D();
    AffineTransform origin = graphics.getTransform();
    int top = 0;
    for (Map.Entry<Dimension, List<Curve>> kind : kinds.entrySet()) {
      graphics.setTransform(origin);
      graphics.translate(0, top);
      chart(kind.getKey(), kind.getValue(), top == 0).paint(graphics, WIDTH, HEIGHT);
      top += HEIGHT;
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new SVGProcessor()
          .getDocument(graphics.getCommands(), new PageSize(0, 0, WIDTH, top))
          .writeTo(out);
    } catch (IOException e) {
      // a text in memory takes anything
      throw new UncheckedIOException(e);
    }
    return described(out.toString(StandardCharsets.UTF_8));
  }

  /** The picture with a title and a description, since the library draws words as shapes. */
  private String described(String svg) {
    int doctype = svg.indexOf("<!DOCTYPE");
    int start = svg.indexOf("<svg");
    int root = svg.indexOf('>', start) + 1;
    StringBuilder words = new StringBuilder();
    words.append("\n  <title>").append(text(title())).append("</title>\n  <desc>");
    Unit driven = units.unit(answer.plan().dimension());
    words.append(text("Over the " + axis(DriveWords.of(answer.plan().drive()), driven) + ":"));
    for (Curve curve : answer.curves()) {
      words.append('\n').append(text(axis(curve.ask().text(), units.unit(curve.dimension()))));
      curve.greatest().ifPresent(peak -> words.append(", ").append(text(told(curve, peak))));
    }
    words.append("</desc>");
    // a reader of XML might fetch the document type from the network
    return svg.substring(0, doctype) + svg.substring(start, root) + words + svg.substring(root);
  }

  private static String text(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private String told(Curve curve, Curve.Sample peak) {
    return "greatest: "
        + units.format(peak.value(), curve.dimension(), Amounts.DIGITS)
        + " at "
        + units.format(peak.drive(), answer.plan().dimension(), Amounts.DIGITS)
        + (answer.isOpen(curve, peak) ? ", still rising there" : "");
  }

  private XYChart chart(Dimension dimension, List<Curve> curves, boolean first) {
    Unit driven = units.unit(answer.plan().dimension());
    Unit unit = units.unit(dimension);
    String noun = dimension == Dimension.NUMBER ? "ratio" : ReportJson.name(dimension);
    XYChart chart =
        new XYChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(first ? title() : "")
            .xAxisTitle(axis(DriveWords.of(answer.plan().drive()), driven))
            .yAxisTitle(axis(curves.size() == 1 ? curves.get(0).ask().text() : noun, unit))
            .build();
    chart.getStyler().setLegendPosition(Styler.LegendPosition.OutsideS);
    chart.getStyler().setLegendLayout(Styler.LegendLayout.Vertical);
    chart.getStyler().setLocale(Locale.ROOT);
    chart.getStyler().setChartBackgroundColor(Color.WHITE);
    chart.getStyler().setDecimalPattern("0.######");
    for (int k = 0; k < curves.size(); k++) {
      add(chart, curves.get(k), COLOURS.get(k % COLOURS.size()), driven, unit);
    }
    return chart;
  }

  private String title() {
    boolean all = answer.loadCase().equals(LoadCase.ALL_LOADS);
    return device + (all ? "" : ", " + answer.loadCase().name());
  }

  private static String axis(String words, Unit unit) {
    return unit.symbol().isEmpty() ? words : words + " (" + unit.symbol() + ")";
  }

  /**
   * Adds a point on the line between the first two: at even steps the library would number the
   * steps instead of round values.
   */
  private static void unevenly(List<Double> values) {
    if (values.size() > 1) {
      values.add(1, values.get(0) + (values.get(1) - values.get(0)) / Math.E);
    }
  }

  private void add(XYChart chart, Curve curve, Color colour, Unit driven, Unit unit) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (Curve.Sample sample : curve.samples()) {
      x.add(driven.fromSi(sample.drive()));
      y.add(unit.fromSi(sample.value()));
    }
    unevenly(x);
    unevenly(y);
    String name = curve.ask().text();
    XYSeries line = chart.addSeries(name, x, y);
    line.setMarker(SeriesMarkers.NONE);
    line.setLineColor(colour);
    line.setLineStyle(new BasicStroke(2));
    curve
        .greatest()
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
