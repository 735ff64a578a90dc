package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import java.util.OptionalDouble;

/**
 * Rates by differences of neighbouring answers, extrapolated to steps of nothing (L. F. Richardson,
 * 1911; the choice of the best step as in C. J. F. Ridders, Advances in Engineering Software 4,
 * 1982).
 */
final class Differences {

  private static final int STEPS = 12;
  private static final double SHRINK = 1.6;

  /** Relative difference of the rates on both sides above which there is a kink. */
  private static final double KINK = 1e-4;

  private final Model model;
  private final Figure figure;
  private final Input input;
  private final double value;
  private final double stated;
  private final double step;

  Differences(Model model, Figure figure, Input input, double value, double stated, double step) {
    this.model = model;
    this.figure = figure;
    this.input = input;
    this.value = value;
    this.stated = stated;
    this.step = step;
  }

  Effect.Change find() {
    OptionalDouble above = oneSided(1);
    OptionalDouble below = oneSided(-1);
    if (above.isEmpty() && below.isEmpty()) {
      return new Effect.Change.None("there is no answer for values next to the stated one");
    }
    if (above.isEmpty() || below.isEmpty()) {
      double rate = (above.isPresent() ? above : below).getAsDouble();
      return new Effect.Change.OneSided(rate, above.isPresent());
    }
    double up = above.getAsDouble();
    double down = below.getAsDouble();
    double size = Math.max(Math.max(Math.abs(up), Math.abs(down)), Math.abs(stated) * 1e-7 / step);
    if (Math.abs(up - down) > KINK * size) {
      return new Effect.Change.Kinked(down, up);
    }
    OptionalDouble central = central();
    return new Effect.Change.Smooth(central.orElse((up + down) / 2));
  }

  private OptionalDouble at(double other) {
    try {
      return figure.of(input.put(model, other)).number();
    } catch (ModelException cannotBe) {
      return OptionalDouble.empty();
    }
  }

  /** Quotients to one side, extrapolated in powers of the step. */
  private OptionalDouble oneSided(int sense) {
    return extrapolated(
        h -> {
          OptionalDouble other = at(value + sense * h);
          return other.isEmpty()
              ? other
              : OptionalDouble.of((other.getAsDouble() - stated) / (sense * h));
        },
        SHRINK);
  }

  /** Quotients across the stated value, extrapolated in even powers of the step. */
  private OptionalDouble central() {
    return extrapolated(
        h -> {
          OptionalDouble above = at(value + h);
          OptionalDouble below = at(value - h);
          return above.isEmpty() || below.isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of((above.getAsDouble() - below.getAsDouble()) / (2 * h));
        },
        SHRINK * SHRINK);
  }

  private interface Quotient {
    OptionalDouble of(double step);
  }

  private OptionalDouble extrapolated(Quotient quotient, double power) {
    double[] last = new double[STEPS];
    double best = Double.NaN;
    double error = Double.POSITIVE_INFINITY;
    double h = step;
    int row = 0;
    for (int k = 0; k < STEPS; k++, h /= SHRINK) {
      OptionalDouble found = quotient.of(h);
      if (found.isEmpty()) {
        // too far off; start again nearer
        row = 0;
        continue;
      }
      double[] now = new double[STEPS];
      now[0] = found.getAsDouble();
      if (row == 0 && Double.isNaN(best)) {
        best = now[0];
      }
      double factor = 1;
      for (int j = 1; j <= row; j++) {
        factor *= power;
        now[j] = (now[j - 1] * factor - last[j - 1]) / (factor - 1);
        double guess = Math.max(Math.abs(now[j] - now[j - 1]), Math.abs(now[j] - last[j - 1]));
        if (guess <= error) {
          error = guess;
          best = now[j];
        }
      }
      last = now;
      row++;
    }
    return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
  }
}
