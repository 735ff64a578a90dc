package bellcrank.statics.study;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Blocks;
import bellcrank.statics.study.internal.Sheet;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * What follows from numbers that are not known well, found by trying: each sample draws all
 * uncertain numbers independently of one another, builds the model with them, and asks it.
 * Immutable and safe for several threads.
 *
 * <p>The same seed gives the same samples, bit for bit, on any number of threads. No sample is left
 * out: one that cannot be built, has no balance or leaves a figure open is counted as such.
 */
public final class Sampling {

  /** Numbers that are kept at most, samples times figures: 16 bytes each while they are sorted. */
  public static final long MOST_NUMBERS = 10_000_000;

  private final Model model;
  private final List<Uncertain> uncertain;
  private final List<Figure> figures;
  private final List<Happening> happenings;
  private final Optional<String> loadCase;

  private Sampling(
      Model model,
      List<Uncertain> uncertain,
      List<Figure> figures,
      List<Happening> happenings,
      Optional<String> loadCase) {
    this.model = model;
    this.uncertain = List.copyOf(uncertain);
    this.figures = List.copyOf(figures);
    this.happenings = List.copyOf(happenings);
    this.loadCase = loadCase;
  }

  /**
   * Prepares samples of a model.
   *
   * @param model the model
   * @param uncertain its uncertain numbers, at least one, each once; no two of them depend on one
   *     another
   * @param figures what is wanted of each sample; may be none if chances alone are wanted
   * @return the sampling, of no happenings yet
   * @throws ModelException naming the input, if there is none, one is there twice, one changes
   *     another or the model does not have it; or if a figure names what the model does not have or
   *     is no number
   */
  public static Sampling of(Model model, List<Uncertain> uncertain, List<Figure> figures) {
    UncertainCheck.check(model, uncertain);
    figures.forEach(figure -> figure.of(model));
    return new Sampling(model, uncertain, distinct(figures), List.of(), Optional.empty());
  }

  private static List<Figure> distinct(List<Figure> figures) {
    return new ArrayList<>(new LinkedHashSet<>(figures));
  }

  /**
   * This sampling with one more happening whose chance is wanted. A figure that it is about is
   * asked of each sample, too.
   *
   * @param happening what may happen
   * @return a copy
   * @throws ModelException if it names what the model does not have, or its bound is another kind
   *     of quantity than its figure
   */
  public Sampling with(Happening happening) {
    List<Figure> more = new ArrayList<>(figures);
    if (happening instanceof Happening.Above above) {
      more.add(bounded(above.figure(), above.bound()));
    } else if (happening instanceof Happening.Below below) {
      more.add(bounded(below.figure(), below.bound()));
    } else if (happening instanceof Happening.AtPart at) {
      at.part().ifPresent(this::checkPart);
    }
    List<Happening> all = new ArrayList<>(happenings);
    all.add(happening);
    return new Sampling(model, uncertain, distinct(more), all, loadCase);
  }

  private Figure bounded(Figure figure, Quantity bound) {
    if (figure.of(model) instanceof FigureAnswer.Is is) {
      checkBound(figure, is, bound);
    }
    return figure;
  }

  static void checkBound(Figure figure, FigureAnswer.Is is, Quantity bound) {
    if (is.dimension() != bound.dimension()) {
      throw new ModelException(
          figure.text(), "bound", bound.dimension().noun(), is.dimension().noun());
    }
  }

  private void checkPart(String wanted) {
    if (model.device().connection(wanted).isEmpty()) {
      List<String> names = model.device().connections().stream().map(Connection::name).toList();
      throw MissingName.of(model.device().name(), "part", wanted, "a connection", names);
    }
  }

  /**
   * This sampling with the case under which it is judged whether the device holds. Figures keep
   * their own cases.
   *
   * @param name name of the case; without this, that of the first figure, or else the first case
   * @return a copy
   * @throws ModelException if there is no such case
   */
  public Sampling judgedIn(String name) {
    model.device().loadCase(name);
    return new Sampling(model, uncertain, figures, happenings, Optional.of(name));
  }

  /**
   * Draws samples in the calling thread.
   *
   * @param samples how many, 1 or more
   * @param seed any number; the same one gives the same samples
   * @return what came of them
   * @throws ModelException if the number of samples is not acceptable
   */
  public Samples run(long samples, long seed) {
    return run(samples, seed, 1, Progress.UNWATCHED);
  }

  /**
   * Draws samples in several threads. They live no longer than this call; the calling thread is one
   * of them. If it is interrupted, the run ends as if the progress had said so, and the thread
   * stays interrupted.
   *
   * @param samples how many, 1 or more; times the number of figures at most {@link #MOST_NUMBERS}
   * @param seed any number; the same one gives the same samples
   * @param threads how many threads work, 1 or more
   * @param progress hears how far the run is, and may end it
   * @return what came of them; of the first ones, if the run was ended
   * @throws ModelException if the number of samples or threads is not acceptable
   */
  public Samples run(long samples, long seed, int threads, Progress progress) {
    long most = MOST_NUMBERS / Math.max(1, figures.size());
    if (samples < 1 || samples > most) {
      throw new ModelException(
          model.device().name(),
          "samples",
          samples,
          "1 to " + most + " with " + figures.size() + " figures");
    }
    if (threads < 1) {
      throw new ModelException(model.device().name(), "threads", threads, "1 or more");
    }
    SampleDraw draw = new SampleDraw(model, uncertain, seed);
    List<Sheet> sheets =
        Blocks.run(
            samples,
            threads,
            () -> new SampleWork(this, draw)::of,
            done -> progress.goOn(done, samples));
    return new Samples(this, draw, samples, sheets);
  }

  /**
   * The model.
   *
   * @return as stated
   */
  public Model model() {
    return model;
  }

  /**
   * The uncertain numbers.
   *
   * @return in the order in which values of samples are told
   */
  public List<Uncertain> uncertain() {
    return uncertain;
  }

  /**
   * What is asked of each sample.
   *
   * @return figures that were given and those of happenings, each once
   */
  public List<Figure> figures() {
    return figures;
  }

  /**
   * The happenings whose chances are wanted.
   *
   * @return in the order in which they were put in
   */
  public List<Happening> happenings() {
    return happenings;
  }

  /** Name of the case under which samples are judged. */
  LoadCase judgedIn(Model sample) {
    return loadCase
        .map(sample.device()::loadCase)
        .orElseGet(
            () ->
                figures.isEmpty()
                    ? sample.device().cases().get(0)
                    : figures.get(0).loadCase(sample.device()));
  }
}
