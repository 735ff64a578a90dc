package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Event;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Happening;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a file wants told about its rough numbers.
 *
 * @param figures what is asked, at least one, each once
 * @param samples how many samples are drawn, 0 for none
 * @param seed where drawing starts; the same one gives the same samples
 * @param chances what may happen in a sample: figures above a bound, then below, parts that slip,
 *     parts that tip
 */
public record StudyPlan(List<Figure> figures, int samples, int seed, List<Happening> chances) {

  /** More samples than this take long and are left to a program. */
  public static final int MOST_SAMPLES = 1_000_000;

  /** The word for any part. */
  static final String ANY = "any";

  /**
   * Copies the lists, puts chances in order and checks what a file can say.
   *
   * @param figures what is asked
   * @param samples how many samples are drawn
   * @param seed where drawing starts
   * @param chances what may happen in a sample
   * @throws ModelException if nothing is asked or something twice, there are too many samples, or a
   *     chance is asked without samples, twice, or is of another kind
   */
  public StudyPlan {
    figures = FigureText.each("asks", figures);
    if (samples < 0 || samples > MOST_SAMPLES) {
      throw new ModelException("study", "samples", samples, "0 to " + MOST_SAMPLES);
    }
    if (seed < 0) {
      throw new ModelException("study", "seed", seed, "0 or more");
    }
    List<Happening> sorted = new ArrayList<>();
    for (Chance kind : Chance.values()) {
      chances.stream().filter(one -> Chance.of(one) == kind).forEach(sorted::add);
    }
    chances = List.copyOf(sorted);
    Set<String> seen = new HashSet<>();
    for (Happening one : chances) {
      if (!seen.add(Chance.of(one).key() + Chance.about(one))) {
        throw new ModelException(
            "study", Chance.of(one).key(), '"' + Chance.about(one) + '"', "each once");
      }
    }
    if (samples == 0 && !chances.isEmpty()) {
      throw new ModelException("study", "samples", "none", "samples, since a chance is asked for");
    }
  }

  /** The kinds of chances that a file can ask for, with their keys. */
  enum Chance {
    EXCEEDS("exceeds"),
    FALLS_BELOW("falls below"),
    SLIPS("slips"),
    TIPS("tips");

    private final String key;

    Chance(String key) {
      this.key = key;
    }

    String key() {
      return key;
    }

    static Chance of(Happening happening) {
      if (happening instanceof Happening.Above) {
        return EXCEEDS;
      }
      if (happening instanceof Happening.Below) {
        return FALLS_BELOW;
      }
      if (happening instanceof Happening.AtPart at) {
        if (at.kinds().equals(kinds(Happening.slips()))) {
          return SLIPS;
        }
        if (at.kinds().equals(kinds(Happening.tips()))) {
          return TIPS;
        }
      }
      throw new ModelException(
          "study", "chances", happening, "what exceeds, falls below, slips or tips");
    }

    private static Set<Event.Kind> kinds(Happening one) {
      return ((Happening.AtPart) one).kinds();
    }

    /** What it is asked of. */
    static String about(Happening one) {
      if (one instanceof Happening.Above above) {
        return FigureText.of(above.figure());
      }
      return one instanceof Happening.Below below
          ? FigureText.of(below.figure())
          : part(one).orElse(ANY);
    }

    /** Name of the part, if it is about one. */
    static Optional<String> part(Happening one) {
      return one instanceof Happening.AtPart at ? at.part() : Optional.empty();
    }
  }
}
