package bellcrank.examples.file;

import bellcrank.statics.limits.Variation;
import java.util.List;

/** Writes limits. */
final class LimitText {

  private LimitText() {}

  static String written(Variation variation) {
    if (variation instanceof Variation.Place place) {
      return new Flow()
          .text("move", place.load())
          .text("from", place.from())
          .text("to", place.to())
          .written();
    }
    List<String> loads = ((Variation.Multiple) variation).loads();
    if (loads.isEmpty()) {
      return new Flow().text("vary", LimitsReader.ALL).written();
    }
    boolean one = loads.size() == 1 && !loads.get(0).equals(LimitsReader.ALL);
    return (one ? new Flow().text("vary", loads.get(0)) : new Flow().texts("vary", loads))
        .written();
  }
}
