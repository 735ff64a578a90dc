package bellcrank.statics.drawing;

import bellcrank.statics.drawing.HistogramDrawing.Bin;
import bellcrank.statics.drawing.HistogramDrawing.Kind;
import bellcrank.statics.drawing.HistogramDrawing.Mark;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts the picture of a histogram together. */
final class HistogramPicture {

  private static final double WIDTH = 420;
  private static final double HEIGHT = 200;

  /** Lines stand out above the highest bar. */
  private static final double OVER = 12;

  private static final double TICK = 5;
  private static final int LONGEST_NOTE = 68;
  private static final int DIGITS = 4;

  private final String heading;
  private final Dimension dimension;
  private final List<Bin> bins;
  private final List<Mark> marks;
  private final List<String> notes;
  private final UnitSystem units;
  private final double from;
  private final double perSi;
  private final double perCount;
  private final long total;
  private final Scene scene = new Scene();

  HistogramPicture(
      String heading,
      Dimension dimension,
      List<Bin> bins,
      List<Mark> marks,
      List<String> notes,
      UnitSystem units) {
    this.heading = heading;
    this.dimension = dimension;
    this.bins = bins;
    this.marks = marks;
    this.notes = notes;
    this.units = units;
    double low = bins.get(0).from();
    double high = bins.get(bins.size() - 1).to();
    for (Mark mark : marks) {
      low = Math.min(low, mark.value());
      high = Math.max(high, mark.value());
    }
    from = low;
    perSi = WIDTH / (high - low);
    long most = bins.stream().mapToLong(Bin::count).max().orElse(0);
    perCount = HEIGHT / Math.max(1, most);
    total = bins.stream().mapToLong(Bin::count).sum();
  }

  String svg() {
    List<String> words = new ArrayList<>();
    words.add(
        String.format(
            Locale.ROOT,
            "%,d values from %s to %s.",
            total,
            text(bins.get(0).from()),
            text(bins.get(bins.size() - 1).to())));
    bins.forEach(this::bar);
    axis();
    Key key = new Key();
    key.measure("data-units-per-si", Double.toString(perSi));
    key.measure("data-units-per-count", Double.toString(perCount));
    key.row(
        30,
        List.of(box(0, -6, 30, 12).element("bar")),
        String.format(
            Locale.ROOT,
            "%,d values in %d bars, the highest %,d",
            total,
            bins.size(),
            Math.round(HEIGHT / perCount)));
    for (Mark mark : marks) {
      mark(mark);
      String sentence = mark.label() + ": " + mark.words() + ", " + text(mark.value());
      words.add(sentence + ".");
      keyRows(key, mark, sentence);
    }
    words.addAll(notes);
    notes.forEach(note -> key.note(TextWidth.lines(note, LONGEST_NOTE)));
    return new Sheet(scene, heading, words, key).svg();
  }

  private static void keyRows(Key key, Mark mark, String sentence) {
    List<String> lines = TextWidth.lines(sentence, LONGEST_NOTE);
    key.row(
        30,
        List.of(Pen.line(Point.of(15, -8), Point.of(15, 8)).element(css(mark.kind()))),
        lines.get(0));
    key.note(lines.subList(1, lines.size()));
  }

  private String text(double si) {
    return units.format(si, dimension, DIGITS);
  }

  private double across(double si) {
    return (si - from) * perSi;
  }

  private void bar(Bin bin) {
    double height = bin.count() * perCount;
    double left = across(bin.from());
    Pen shape = box(left, HEIGHT - height, across(bin.to()) - left, height);
    scene.add(
        Layer.BODY,
        Element.group("bin")
            .with("data-from", Double.toString(bin.from()))
            .with("data-to", Double.toString(bin.to()))
            .with("data-count", Long.toString(bin.count()))
            .add(shape.element("bar")),
        shape.box());
  }

  private static Pen box(double left, double top, double width, double height) {
    return Pen.from(Point.of(left, top))
        .to(Point.of(left + width, top))
        .to(Point.of(left + width, top + height))
        .to(Point.of(left, top + height))
        .close();
  }

  /** The ground line with ticks at round values. */
  private void axis() {
    scene.draw(
        Layer.CONSTRUCTION, "measure", Pen.line(Point.of(0, HEIGHT), Point.of(WIDTH, HEIGHT)));
    double unit = units.unit(dimension).toSi(1);
    for (BigDecimal tick : RoundTicks.between(from / unit, (from + WIDTH / perSi) / unit)) {
      double x = across(tick.doubleValue() * unit);
      Point foot = Point.of(x, HEIGHT + TICK);
      scene.draw(Layer.CONSTRUCTION, "measure", Pen.line(Point.of(x, HEIGHT), foot));
      scene.label(
          new Label(
              List.of(tick(tick)),
              "measure",
              foot,
              List.of(new Label.Try(foot, Vector.of(0, 1), 3))));
    }
  }

  /** A round value with as many decimals as the ticks need. */
  private String tick(BigDecimal rounded) {
    String symbol = units.unit(dimension).symbol();
    String number = rounded.toPlainString();
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  private void mark(Mark mark) {
    double x = across(mark.value());
    Point top = Point.of(x, -OVER);
    Pen line = Pen.line(Point.of(x, HEIGHT), top);
    scene.add(
        Layer.FORCE,
        Element.group("mark")
            .with("data-mark", mark.label())
            .with("data-value", Double.toString(mark.value()))
            .add(line.element(css(mark.kind()))),
        line.box());
    scene.block(Point.of(x, HEIGHT), top, 1);
    // lines near to one another have their labels in rows
    List<Label.Try> rows = new ArrayList<>();
    for (int row = 0; row < marks.size(); row++) {
      rows.add(new Label.Try(top, Vector.of(0, -1), 3 + 1.4 * TextWidth.LINE * row));
    }
    scene.label(new Label(List.of(mark.label()), "measure", top, rows));
  }

  private static String css(Kind kind) {
    return switch (kind) {
      case SHARE -> "action";
      case TARGET -> "limit-line";
      case STATED -> "path-of";
    };
  }
}
