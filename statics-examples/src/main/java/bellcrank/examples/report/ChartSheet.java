package bellcrank.examples.report;

import bellcrank.statics.units.Unit;
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
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.style.Styler;

/** Charts one below the other as a picture in SVG. */
final class ChartSheet {

  private static final int WIDTH = 800;
  private static final int HEIGHT = 420;

  /** Pixels between marks across, so that numbers of several digits keep apart. */
  private static final int TICK_SPACING = 110;

  /** Colours that stay apart also for most people who see colours differently. */
  private static final List<Color> COLOURS =
      List.of(
          new Color(0, 114, 178),
          new Color(213, 94, 0),
          new Color(0, 158, 115),
          new Color(204, 121, 167),
          new Color(86, 180, 233),
          new Color(0, 0, 0));

  private final String title;
  private final VectorGraphics2D graphics = new VectorGraphics2D();
  private final AffineTransform origin = graphics.getTransform();
  private int top;

  ChartSheet(String title) {
    this.title = title;
  }

  Color colour(int number) {
    return COLOURS.get(number % COLOURS.size());
  }

  static String axis(String words, Unit unit) {
    return unit.symbol().isEmpty() ? words : words + " (" + unit.symbol() + ")";
  }

  /**
   * Adds a point on the first piece of a curve that goes on: at even steps the library would number
   * the steps instead of round values.
   */
  static void unevenly(List<Double> x, List<Double> y) {
    for (int i = 1; i < x.size(); i++) {
      double step = x.get(i) - x.get(i - 1);
      if (step != 0) {
        x.add(i, x.get(i - 1) + step / Math.E);
        y.add(i, y.get(i - 1) + (y.get(i) - y.get(i - 1)) / Math.E);
        return;
      }
    }
  }

  /** A chart in the style of the sheet; the first one has the title. */
  XYChart chart(String across, String up) {
    XYChart chart =
        new XYChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(top == 0 ? title : "")
            .xAxisTitle(across)
            .yAxisTitle(up)
            .build();
    chart.getStyler().setLegendPosition(Styler.LegendPosition.OutsideS);
    chart.getStyler().setLegendLayout(Styler.LegendLayout.Vertical);
    chart.getStyler().setLocale(Locale.ROOT);
    chart.getStyler().setChartBackgroundColor(Color.WHITE);
    chart.getStyler().setDecimalPattern("0.######");
    chart.getStyler().setXAxisTickMarkSpacingHint(TICK_SPACING);
    // a dashed grid would be written dash by dash, and make most of the picture
    chart.getStyler().setPlotGridLinesStroke(new BasicStroke(0.5f));
    return chart;
  }

  /** Draws a chart below those that are there. */
  void add(XYChart chart) {
    graphics.setTransform(origin);
    graphics.translate(0, top);
    chart.paint(graphics, WIDTH, HEIGHT);
    top += HEIGHT;
  }

  /**
   * The picture with a title and a description, since the library draws words as shapes.
   *
   * @param words the description
   */
  String svg(String words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new SVGProcessor()
          .getDocument(graphics.getCommands(), new PageSize(0, 0, WIDTH, top))
          .writeTo(out);
    } catch (IOException e) {
      // a text in memory takes anything
      throw new UncheckedIOException(e);
    }
    String svg = out.toString(StandardCharsets.UTF_8);
    int doctype = svg.indexOf("<!DOCTYPE");
    int start = svg.indexOf("<svg");
    int root = svg.indexOf('>', start) + 1;
    String described = "\n  <title>" + text(title) + "</title>\n  <desc>" + text(words) + "</desc>";
    // a reader of XML might fetch the document type from the network
    return svg.substring(0, doctype) + svg.substring(start, root) + described + svg.substring(root);
  }

  private static String text(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
