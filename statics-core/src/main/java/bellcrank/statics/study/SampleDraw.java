package bellcrank.statics.study;

import bellcrank.statics.study.internal.Blocks;
import bellcrank.statics.study.internal.Draws;
import java.util.ArrayList;
import java.util.List;

/** Draws the uncertain numbers of any sample again. Immutable. */
final class SampleDraw {

  private final List<Uncertain> uncertain;
  private final List<Double> stated;
  private final long seed;

  SampleDraw(Model model, List<Uncertain> uncertain, long seed) {
    this.uncertain = uncertain;
    this.seed = seed;
    stated = uncertain.stream().map(one -> one.input().value(model)).toList();
  }

  long seed() {
    return seed;
  }

  /** The sequence from which a block of samples is drawn, one after the other. */
  Draws block(long first) {
    return Draws.of(seed, first / Blocks.SIZE);
  }

  List<Double> next(Draws draws) {
    List<Double> values = new ArrayList<>(stated.size());
    for (int k = 0; k < uncertain.size(); k++) {
      values.add(uncertain.get(k).spread().quantile(draws.share(), stated.get(k)));
    }
    return values;
  }

  /** The numbers of one sample. */
  List<Double> of(long sample) {
    Draws draws = block(sample);
    draws.skip(sample % Blocks.SIZE * uncertain.size());
    return next(draws);
  }
}
