package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/**
 * A label in its place.
 *
 * @param label the label
 * @param box the room that it takes
 */
record PlacedLabel(Label label, Room box) {

  /** From this distance on a line leads to what it belongs to. */
  private static final double LEADER = 13;

  boolean hasLeader() {
    return box.nearest(label.anchor()).distance(label.anchor()) > LEADER;
  }

  Point leaderEnd() {
    return box.nearest(label.anchor());
  }

  Element element() {
    Element group =
        Element.group("label " + label.css())
            .with(
                "data-box",
                Figure.of(box.left())
                    + " "
                    + Figure.of(box.top())
                    + " "
                    + Figure.of(box.right())
                    + " "
                    + Figure.of(box.bottom()));
    if (hasLeader()) {
      group.add(Pen.line(label.anchor(), leaderEnd()).element("leader"));
    }
    Point centre = box.centre();
    int count = label.lines().size();
    for (int i = 0; i < count; i++) {
      // letters stand on their line: about a third of their size below its middle
      double y = centre.y() + (i - (count - 1) / 2.0) * TextWidth.LINE + TextWidth.EM * 0.36;
      group.add(Element.of("text").with("x", centre.x()).with("y", y).text(label.lines().get(i)));
    }
    return group;
  }
}
