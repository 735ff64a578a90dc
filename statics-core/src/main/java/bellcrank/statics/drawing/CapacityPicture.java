package bellcrank.statics.drawing;

import bellcrank.statics.drawing.CapacityDrawing.Bar;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts the picture of bars of utilisation together. */
final class CapacityPicture {

  private static final double WIDTH = 400;
  private static final double THICK = 14;
  private static final double ROW = TextWidth.LINE + THICK + 14;

  /** Bars beyond this share end in a torn edge. */
  private static final double MOST = 2;

  /** The limit is never at the very border. */
  private static final double LEAST = 1.15;

  private static final int LONGEST_NOTE = 68;

  private final String heading;
  private final List<Bar> bars;
  private final List<String> notes;
  private final double shown;
  private final double whole;
  private final Scene scene = new Scene();

  CapacityPicture(String heading, List<Bar> bars, List<String> notes) {
    this.heading = heading;
    this.bars = bars;
    this.notes = notes;
    double greatest = bars.stream().mapToDouble(Bar::utilisation).max().orElse(0);
    shown = Math.max(LEAST, Math.min(MOST, greatest));
    whole = WIDTH / shown;
  }

  String svg() {
    List<String> words = new ArrayList<>();
    words.add("How much is used of what each part can bear; the limit is at 100 %.");
    for (int row = 0; row < bars.size(); row++) {
      Bar bar = bars.get(row);
      draw(bar, row * ROW);
      words.add(name(bar) + ": " + told(bar) + ".");
    }
    axis(bars.size() * ROW);
    words.addAll(notes);
    Key key = new Key();
    key.measure("data-units-per-whole", Double.toString(whole));
    key.row(
        30,
        List.of(Pen.line(Point.of(15, -8), Point.of(15, 8)).element("limit-line")),
        "the limit: all is used");
    if (bars.stream().anyMatch(CapacityPicture::isOver)) {
      key.row(
          30,
          List.of(
              Element.group("over")
                  .add(box(0, -6, 30, 12).element("bar"))
                  .add(hatch(0, 30, -6, 12).element("bar-hatch"))),
          "dashed and hatched: beyond the limit");
    }
    notes.forEach(note -> key.note(TextWidth.lines(note, LONGEST_NOTE)));
    return new Sheet(scene, heading, words, key).svg();
  }

  private static boolean isOver(Bar bar) {
    return bar.utilisation() > 1;
  }

  private static String name(Bar bar) {
    return bar.part() + ": " + bar.what();
  }

  private static String told(Bar bar) {
    double used = bar.utilisation();
    String share =
        Double.isInfinite(used)
            ? "without bound"
            : String.format(Locale.ROOT, "%.1f %%", 100 * used);
    return share
        + (isOver(bar) ? ", beyond the limit" : "")
        + (bar.note().isEmpty() ? "" : ", " + bar.note());
  }

  private void draw(Bar bar, double top) {
    double y = top + TextWidth.LINE + 2;
    boolean torn = bar.utilisation() > shown;
    double length = whole * Math.min(shown, bar.utilisation());
    Pen shape = torn ? torn(y, length) : box(0, y, length, THICK);
    Element group =
        Element.group(isOver(bar) ? "used over" : "used")
            .with("data-part", bar.part())
            .with("data-check", bar.what());
    if (Double.isFinite(bar.utilisation())) {
      group.with("data-utilisation", Double.toString(bar.utilisation()));
    }
    if (torn) {
      group.with("data-torn", "true");
    }
    group.add(shape.element("bar"));
    if (isOver(bar)) {
      group.add(hatch(whole, length, y, THICK).element("bar-hatch"));
    }
    scene.add(Layer.BODY, group, shape.box());
    String text = name(bar) + " – " + told(bar);
    Room room = new Room(0, top, TextWidth.of(text), top + TextWidth.LINE);
    scene.add(
        Layer.FORCE,
        Element.group("label bar-name left")
            .with("data-box", Sheet.box(room.left(), room.top(), room.right(), room.bottom()))
            .add(
                Element.of("text")
                    .with("x", 0)
                    .with("y", top + TextWidth.LINE / 2 + TextWidth.EM * 0.36)
                    .text(text)),
        room);
  }

  private static Pen box(double left, double top, double width, double height) {
    return Pen.from(Point.of(left, top))
        .to(Point.of(left + width, top))
        .to(Point.of(left + width, top + height))
        .to(Point.of(left, top + height))
        .close();
  }

  /** A bar whose end is torn off, since it goes on beyond the picture. */
  private static Pen torn(double top, double length) {
    return Pen.from(Point.of(0, top))
        .to(Point.of(length, top))
        .to(Point.of(length - 6, top + THICK / 3))
        .to(Point.of(length, top + 2 * THICK / 3))
        .to(Point.of(length - 6, top + THICK))
        .to(Point.of(0, top + THICK))
        .close();
  }

  /** Strokes that lean to the right, within a box. */
  private static Pen hatch(double left, double right, double top, double height) {
    Pen pen = Pen.from(Point.of(left, top));
    for (double x = left; x < right; x += 7) {
      double rise = Math.min(height, right - x);
      pen.move(Point.of(x, top + height)).to(Point.of(x + rise, top + height - rise));
    }
    return pen;
  }

  /** The limit from top to bottom, and light lines at its quarters. */
  private void axis(double bottom) {
    for (int quarter = 0; quarter * 0.25 <= shown; quarter++) {
      double x = whole * quarter * 0.25;
      boolean limit = quarter == 4;
      scene.draw(
          limit ? Layer.CONSTRUCTION : Layer.GHOST,
          limit ? "limit-line" : "axis-line",
          Pen.line(Point.of(x, TextWidth.LINE - 4), Point.of(x, bottom)));
      if (quarter % 2 == 0) {
        scene.label(
            new Label(
                List.of(25 * quarter + " %"),
                "measure",
                Point.of(x, bottom),
                List.of(new Label.Try(Point.of(x, bottom), Vector.of(0, 1), 3))));
      }
    }
  }
}
