package bellcrank.statics.study;

import bellcrank.statics.study.ToleranceBox.How;
import bellcrank.statics.study.ToleranceBox.Sense;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Writes the worst case in plain sentences. */
final class BoxWords {

  private BoxWords() {}

  static List<String> of(ToleranceBox box, UnitSystem units) {
    List<String> all = new ArrayList<>();
    String name = box.figure().text();
    if (box.how() == How.NOTHING_FOUND) {
      all.add(name + " has no number at any of " + looks(box) + ".");
    } else {
      FigureAt least = box.least().orElseThrow();
      FigureAt greatest = box.greatest().orElseThrow();
      String stated =
          box.stated() instanceof FigureAnswer.Is is
              ? "; with all numbers as stated it is " + value(is.si(), box, units)
              : "";
      all.add(
          name
              + " lies between "
              + value(least.si(), box, units)
              + " and "
              + value(greatest.si(), box, units)
              + stated
              + ".");
      all.add("It is least with " + inputs(box, least, units) + ".");
      all.add("It is greatest with " + inputs(box, greatest, units) + ".");
      all.add(how(box));
    }
    for (Counted one : box.missing()) {
      all.add(
          "At "
              + SampleWords.number(one.count())
              + " of "
              + looks(box)
              + " it has no number: "
              + one.what()
              + " (for example with "
              + SampleWords.inputs(box.uncertain(), one.example(), units)
              + "); next to such places it may grow without bound.");
    }
    box.outcomes().stream()
        .filter(one -> !one.what().equals("holds") && !one.what().startsWith("cannot"))
        .forEach(
            one ->
                all.add(
                    "At "
                        + SampleWords.number(one.count())
                        + " of "
                        + looks(box)
                        + " the verdict is: "
                        + one.what()
                        + " (for example with "
                        + SampleWords.inputs(box.uncertain(), one.example(), units)
                        + ")."));
    return all;
  }

  private static String how(ToleranceBox box) {
    if (box.how() == How.BOUNDED_SEARCH) {
      return "These ends were searched for with "
          + looks(box)
          + ": they are met, but there may be worse ones.";
    }
    List<String> senses = new ArrayList<>();
    for (Sense sense : Sense.values()) {
      List<String> inputs = new ArrayList<>();
      for (int k = 0; k < box.senses().size(); k++) {
        if (box.senses().get(k) == sense) {
          inputs.add(box.uncertain().get(k).input().text());
        }
      }
      if (!inputs.isEmpty()) {
        senses.add(verb(sense) + String.join(", ", inputs));
      }
    }
    return "Wherever looked ("
        + places(box)
        + ") it "
        + String.join(" and ", senses)
        + ", so both ends lie in corners of the box and are exact there.";
  }

  private static String places(ToleranceBox box) {
    List<String> places = new ArrayList<>();
    if (box.exactPlaces() > 0) {
      places.add(SampleWords.number(box.exactPlaces()) + " places by exact rates");
    }
    if (box.otherPlaces() > 0) {
      places.add(SampleWords.number(box.otherPlaces()) + " places by small steps");
    }
    return String.join(", ", places);
  }

  private static String verb(Sense sense) {
    return switch (sense) {
      case RISES -> "rises with ";
      case FALLS -> "falls with ";
      case BOTH -> "rises and falls with ";
      case NONE -> "does not change with ";
    };
  }

  private static String looks(ToleranceBox box) {
    return SampleWords.number(box.looks()) + " looks";
  }

  private static String value(double si, ToleranceBox box, UnitSystem units) {
    return SampleWords.value(si, box.dimension(), units);
  }

  /** Where an end is; numbers that change nothing are left out, unless all are such. */
  private static String inputs(ToleranceBox box, FigureAt at, UnitSystem units) {
    List<Uncertain> uncertain = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (int k = 0; k < box.uncertain().size(); k++) {
      if (box.how() == How.BOUNDED_SEARCH || box.senses().get(k) != Sense.NONE) {
        uncertain.add(box.uncertain().get(k));
        values.add(at.inputs().get(k));
      }
    }
    return uncertain.isEmpty()
        ? SampleWords.inputs(box.uncertain(), at.inputs(), units)
        : SampleWords.inputs(uncertain, values, units);
  }
}
