package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Fills the key of a picture with arrows: what they mean and how long they are. */
record KeyRows(Key key, Amount amount) {

  private static final double SIGN = 40;

  /** A row for each origin that occurs. */
  void origins(Set<Origin> origins, boolean open, boolean motion) {
    boolean load = false;
    for (Origin origin : Origin.values()) {
      // weights look like other loads
      boolean same = origin == Origin.WEIGHT && load;
      if (origins.contains(origin) && !same) {
        load |= origin == Origin.LOAD;
        arrow("force " + Head.css(origin), Head.of(origin), words(origin, origins));
      }
    }
    if (open) {
      arrow("force open connection", Head.HOLLOW, "size not known: statics alone does not fix it");
    }
    if (motion) {
      arrow("motion", Head.OPEN, "how it starts to move");
    }
  }

  private static String words(Origin origin, Set<Origin> origins) {
    return origin == Origin.LOAD && origins.contains(Origin.WEIGHT)
        ? "given load or weight"
        : origin.words();
  }

  private void arrow(String css, Head head, String words) {
    Arrow arrow = new Arrow(Point.of(0, 0), Point.of(SIGN, 0));
    key.row(SIGN, List.of(arrow.element(css, head)), words);
  }

  /** The scale: a bar for a round force, two if lengths are no proportion. */
  void scale(ArrowRule rule, double greatest) {
    rule.tell(key);
    key.note(List.of(rule.words(amount)));
    double round = amount.roundForce(greatest);
    bar(rule, round);
    if (!rule.isLinear() && rule.least() * 2 < round) {
      double small = amount.roundForce(rule.least());
      bar(rule, small < rule.least() ? 10 * small : small);
    }
  }

  private void bar(ArrowRule rule, double force) {
    double length = rule.length(force);
    List<Element> sign = new ArrayList<>();
    sign.add(Pen.line(Point.of(0, 0), Point.of(length, 0)).element("tick"));
    for (double x : new double[] {0, length}) {
      sign.add(Pen.line(Point.of(x, -5), Point.of(x, 5)).element("tick"));
    }
    key.row(length, sign, amount.roundText(force));
    key.measure("data-bar-force", Double.toString(force));
  }
}
