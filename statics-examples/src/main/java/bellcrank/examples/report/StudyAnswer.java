package bellcrank.examples.report;

import bellcrank.examples.file.CombinationsPlan;
import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.MovingPlan;
import bellcrank.examples.file.SearchPlan;
import bellcrank.examples.file.Studies;
import bellcrank.examples.file.StudyPlan;
import bellcrank.statics.device.Ask;
import bellcrank.statics.study.Combinations.Combination;
import bellcrank.statics.study.Envelope;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Happening;
import bellcrank.statics.study.Influence;
import bellcrank.statics.study.InfluenceLine;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.MovingLoad;
import bellcrank.statics.study.Progress;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Sampling;
import bellcrank.statics.study.Sensitivities;
import bellcrank.statics.study.Spread;
import bellcrank.statics.study.ToleranceBox;
import bellcrank.statics.study.Train;
import bellcrank.statics.study.Uncertain;
import bellcrank.statics.study.Variants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the studies of a file come to. Each is worked out when it is first asked for, since samples
 * and worst cases take longer than all else.
 */
public final class StudyAnswer {

  private final DeviceFile file;
  private final Studies studies;
  private final Watch watch;
  private final Once<List<Rough>> rough = new Once<>(this::findRough);
  private final Once<Optional<Samples>> samples = new Once<>(this::draw);
  private final Once<List<SearchFound>> searches = new Once<>(this::search);
  private final Once<Optional<Variants>> variants = new Once<>(this::compare);
  private final Once<Optional<Combined>> combined = new Once<>(this::combine);
  private final Once<List<Moved>> moved = new Once<>(this::move);

  private StudyAnswer(DeviceFile file, Watch watch) {
    this.file = file;
    this.watch = watch;
    studies = file.inquiries().studies();
  }

  /**
   * What rough numbers do to a figure.
   *
   * @param figure the figure
   * @param effects what each number does to it
   * @param box its worst case; empty if no rough number has bounds
   */
  record Rough(Figure figure, Sensitivities effects, Optional<ToleranceBox> box) {}

  /**
   * Extremes over combinations.
   *
   * @param plan what is asked
   * @param all the combinations
   * @param envelope the extremes
   */
  record Combined(CombinationsPlan plan, List<Combination> all, Envelope envelope) {

    Combined {
      all = List.copyOf(all);
    }
  }

  /**
   * What a moving load does.
   *
   * @param plan what is asked
   * @param load the load on its way
   * @param influences what it does to each answer
   */
  record Moved(MovingPlan plan, MovingLoad load, List<Influence> influences) {

    Moved {
      influences = List.copyOf(influences);
    }

    /** What goes the way: the stated train, or the load alone. */
    Train train() {
      return plan.train().orElseGet(() -> Train.of(1, load.size(), 0));
    }

    /** Where an answer is least, and then where it is greatest. */
    List<Train.Passage> extremes(InfluenceLine line) {
      return List.of(train().least(line), train().greatest(line));
    }
  }

  /**
   * The studies of a file.
   *
   * @param file the file
   * @param watch hears what is worked out
   * @return what they come to; empty if nothing is studied
   */
  static Optional<StudyAnswer> of(DeviceFile file, Watch watch) {
    return file.inquiries().studies().isEmpty()
        ? Optional.empty()
        : Optional.of(new StudyAnswer(file, watch));
  }

  Studies studies() {
    return studies;
  }

  Model model() {
    return file.model();
  }

  /** Figures of rough numbers, in order. */
  List<Rough> rough() {
    return rough.get();
  }

  /** Rough numbers that have no bounds. */
  List<Uncertain> unbounded() {
    return studies.rough().stream().filter(one -> one.spread() instanceof Spread.Normal).toList();
  }

  private List<Rough> findRough() {
    List<Uncertain> bounded = new ArrayList<>(studies.rough());
    bounded.removeAll(unbounded());
    List<Rough> all = new ArrayList<>();
    for (Figure figure : studies.study().map(StudyPlan::figures).orElse(List.of())) {
      watch.at("worst case of " + figure.text());
      Optional<ToleranceBox> box =
          bounded.isEmpty()
              ? Optional.empty()
              : Optional.of(ToleranceBox.of(model(), bounded, figure));
      all.add(new Rough(figure, Sensitivities.ofUncertain(model(), figure, studies.rough()), box));
    }
    return List.copyOf(all);
  }

  /** The samples, if some are wanted. */
  Optional<Samples> samples() {
    return samples.get();
  }

  private Optional<Samples> draw() {
    return studies
        .study()
        .filter(plan -> plan.samples() > 0)
        .map(
            plan -> {
              Sampling sampling = Sampling.of(model(), studies.rough(), plan.figures());
              for (Happening chance : plan.chances()) {
                sampling = sampling.with(chance);
              }
              // the same on any number of threads
              int threads = Runtime.getRuntime().availableProcessors();
              return sampling
                  .with(Happening.givesWay())
                  .run(plan.samples(), plan.seed(), threads, progress());
            });
  }

  private Progress progress() {
    watch.at("samples");
    return (done, all) -> {
      watch.at("samples", done, all);
      return true;
    };
  }

  /** What was found for each search. */
  List<SearchFound> searches() {
    return searches.get();
  }

  private List<SearchFound> search() {
    List<SearchFound> found = new ArrayList<>();
    for (SearchPlan plan : studies.searches()) {
      watch.at("search " + plan.name());
      found.add(SearchFound.of(plan, model()));
    }
    return List.copyOf(found);
  }

  /** The variants side by side. */
  Optional<Variants> variants() {
    return variants.get();
  }

  private Optional<Variants> compare() {
    watch.at("variants");
    return studies.variants().map(plan -> plan.table(model()));
  }

  /** Extremes over combinations. */
  Optional<Combined> combined() {
    return combined.get();
  }

  private Optional<Combined> combine() {
    watch.at("combinations of loads");
    return studies
        .combinations()
        .map(
            plan ->
                new Combined(plan, plan.of(file.device()), plan.envelope(model(), file.travel())));
  }

  /** What moving loads do. */
  List<Moved> moved() {
    return moved.get();
  }

  private List<Moved> move() {
    watch.at("moving loads");
    List<Moved> all = new ArrayList<>();
    for (MovingPlan plan : studies.moving()) {
      MovingLoad load = plan.of(file.device());
      List<Influence> influences = new ArrayList<>();
      for (Ask ask : plan.asks()) {
        influences.add(load.influence(ask));
      }
      all.add(new Moved(plan, load, influences));
    }
    return List.copyOf(all);
  }

  /** How many searches are expected to find something. */
  long expectations() {
    return studies.searches().stream().filter(one -> one.expected().isPresent()).count();
  }

  /** Whether all searches find what is expected. */
  boolean holds() {
    return expectations() == 0 || searches().stream().allMatch(SearchFound::holds);
  }
}
