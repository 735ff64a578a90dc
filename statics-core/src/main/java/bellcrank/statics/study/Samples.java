package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Column;
import bellcrank.statics.study.internal.Sheet;
import bellcrank.statics.study.internal.Tally;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * What came of samples. The same seed gives the same, bit for bit, on any number of threads; a run
 * that was ended early is the same as a shorter run. Immutable.
 */
public final class Samples {

  private final Sampling sampling;
  private final SampleDraw draw;
  private final long wanted;
  private final long done;
  private final List<Sampled> figures;
  private final List<Chance> chances;
  private final Tally outcomes = new Tally();
  private final Tally happenings = new Tally();

  Samples(Sampling sampling, SampleDraw draw, long wanted, List<Sheet> sheets) {
    this.sampling = sampling;
    this.draw = draw;
    this.wanted = wanted;
    for (Sheet sheet : sheets) {
      outcomes.addAll(sheet.outcomes());
      happenings.addAll(sheet.happenings());
    }
    done = outcomes.total();
    List<Sampled> all = new ArrayList<>();
    for (int k = 0; k < sampling.figures().size(); k++) {
      all.add(sampled(sampling.figures().get(k), Column.of(sheets, k)));
    }
    figures = List.copyOf(all);
    List<Chance> found = new ArrayList<>();
    for (int k = 0; k < sampling.happenings().size(); k++) {
      long count = 0;
      long open = 0;
      for (Sheet sheet : sheets) {
        count += sheet.happened(k);
        open += sheet.open(k);
      }
      found.add(new Chance(sampling.happenings().get(k), count, open, done));
    }
    chances = List.copyOf(found);
  }

  private Sampled sampled(Figure figure, Column column) {
    FigureAnswer stated = figure.of(sampling.model());
    Dimension dimension = Dimension.NUMBER;
    if (stated instanceof FigureAnswer.Is is) {
      dimension = is.dimension();
    } else if (column.moments().count() > 0) {
      List<Double> values = draw.of(column.moments().leastAt());
      if (figure.of(model(values)) instanceof FigureAnswer.Is is) {
        dimension = is.dimension();
      }
    }
    return new Sampled(figure, dimension, stated, column, draw::of);
  }

  private Model model(List<Double> values) {
    return Input.put(
        sampling.model(), sampling.uncertain().stream().map(Uncertain::input).toList(), values);
  }

  /**
   * How many samples were wanted.
   *
   * @return 1 or more
   */
  public long wanted() {
    return wanted;
  }

  /**
   * How many samples all that is told here is of.
   *
   * @return 1 or more; fewer than were wanted if the run was ended
   */
  public long done() {
    return done;
  }

  /**
   * Whether the run came to its end.
   *
   * @return false if it was ended early
   */
  public boolean isComplete() {
    return done == wanted;
  }

  /**
   * The seed.
   *
   * @return as given
   */
  public long seed() {
    return draw.seed();
  }

  /**
   * The uncertain numbers.
   *
   * @return in the order in which values of samples are told
   */
  public List<Uncertain> uncertain() {
    return sampling.uncertain();
  }

  /**
   * The uncertain numbers of one sample, to look at it by itself.
   *
   * @param sample its number, 0 up to one less than were done
   * @return their values, SI
   * @throws ModelException if there is no such sample
   */
  public List<Double> inputs(long sample) {
    if (sample < 0 || sample >= done) {
      throw new ModelException("samples", "number", sample, "0 to " + (done - 1));
    }
    return draw.of(sample);
  }

  /**
   * What the figures came to.
   *
   * @return one for each figure of the sampling, in its order
   */
  public List<Sampled> figures() {
    return figures;
  }

  /**
   * What one figure came to.
   *
   * @param figure a figure of the sampling
   * @return its numbers
   * @throws ModelException if the sampling does not ask for it
   */
  public Sampled figure(Figure figure) {
    return figures.stream()
        .filter(one -> one.figure().equals(figure))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    "samples", "figure", figure.text(), "a figure that the sampling asks for"));
  }

  /**
   * The chances of the happenings.
   *
   * @return one for each happening of the sampling, in its order
   */
  public List<Chance> chances() {
    return chances;
  }

  /**
   * How the samples came out. Each sample is counted once: {@code holds}, {@code can hold once
   * seated}, {@code about to give way}, {@code does not hold}, {@code no balance}, {@code not
   * decided}, or that it cannot be built and for what number.
   *
   * @return in the order in which they were met; the counts add up to all samples
   */
  public List<Counted> outcomes() {
    return counted(outcomes);
  }

  /**
   * What happens at the parts of the samples that do not hold, such as {@code heel slides left}. A
   * sample counts for each part at which something happens.
   *
   * @return in the order in which they were met; empty if all hold
   */
  public List<Counted> partsGivingWay() {
    return counted(happenings);
  }

  private List<Counted> counted(Tally tally) {
    return tally.entries().stream()
        .map(one -> new Counted(one.name(), one.count(), draw.of(one.first())))
        .toList();
  }

  /**
   * All of it in plain sentences.
   *
   * @param units units of all values
   * @return sentences with their full stops
   */
  public List<String> words(UnitSystem units) {
    return SampleWords.of(this, units);
  }
}
