package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes what came of samples in plain sentences. */
final class SampleWords {

  static final int DIGITS = 4;

  /** Fewer than this are told with bounds of the chance, since its error is not even both ways. */
  private static final long FEW = 20;

  private static final BigDecimal ALL = BigDecimal.valueOf(100);

  private static final int MOST_DIGITS = 12;

  private SampleWords() {}

  static List<String> of(Samples samples, UnitSystem units) {
    List<String> all = new ArrayList<>();
    String drawn = number(samples.done()) + " samples with seed " + samples.seed();
    all.add(
        samples.isComplete()
            ? drawn + "."
            : drawn
                + "; the run was ended before all "
                + number(samples.wanted())
                + " were drawn, and all that follows is of these.");
    samples.figures().forEach(one -> figure(one, samples, units, all));
    samples.chances().forEach(one -> all.add(capital(chance(one, units)) + "."));
    outcomes(samples, units, all);
    return all;
  }

  private static void figure(
      Sampled one, Samples samples, UnitSystem units, List<String> sentences) {
    Dimension dimension = one.dimension();
    String name = one.figure().text();
    if (one.count() > 0) {
      String low = value(one.least().orElseThrow().si(), dimension, units);
      String high = value(one.greatest().orElseThrow().si(), dimension, units);
      if (low.equals(high)) {
        boolean all = one.count() == samples.done();
        sentences.add(
            name + " is " + low + (all ? " in all samples." : " wherever it has a number."));
      } else {
        sentences.add(name + " lies between " + shares(one, units) + stated(one, units) + ".");
        sentences.add(
            "The least value met of "
                + name
                + " is "
                + low
                + ", the greatest "
                + high
                + " with "
                + inputs(samples.uncertain(), one.greatest().orElseThrow().inputs(), units)
                + ".");
      }
    }
    for (Counted missing : one.missing()) {
      sentences.add(
          "In "
              + times(missing.count(), samples.done())
              + " "
              + name
              + " has no number: "
              + missing.what()
              + " (for example with "
              + inputs(samples.uncertain(), missing.example(), units)
              + ").");
    }
  }

  private static String shares(Sampled one, UnitSystem units) {
    return share(one, 0.05, units)
        + " (5 %) and "
        + share(one, 0.95, units)
        + " (95 %), at "
        + share(one, 0.5, units)
        + " in the middle (50 %)";
  }

  private static String share(Sampled one, double share, UnitSystem units) {
    return value(one.percentile(share).orElseThrow().si(), one.dimension(), units);
  }

  private static String stated(Sampled one, UnitSystem units) {
    return one.stated() instanceof FigureAnswer.Is is
        ? "; with all numbers as stated it is " + value(is.si(), one.dimension(), units)
        : "";
  }

  private static void outcomes(Samples samples, UnitSystem units, List<String> all) {
    for (Counted one : samples.outcomes()) {
      String text = capital(one.what()) + ": " + times(one.count(), samples.done());
      boolean whole = one.count() == samples.done();
      all.add(
          whole
              ? text + "."
              : text
                  + " (for example with "
                  + inputs(samples.uncertain(), one.example(), units)
                  + ").");
    }
    for (Counted one : samples.partsGivingWay()) {
      all.add(one.what() + ": " + times(one.count(), samples.done()) + ".");
    }
  }

  static String chance(Chance chance, UnitSystem units) {
    String happens = chance.what().words(units);
    String open =
        chance.open() == 0
            ? ""
            : "; " + times(chance.open(), chance.samples()) + " leave that open";
    if (chance.count() >= FEW && chance.samples() - chance.count() - chance.open() >= FEW) {
      Chance decided = new Chance(chance.what(), chance.count(), 0, chance.samples());
      double half = (decided.greatest() - decided.least()) / 2;
      int decimals = decimals(100 * half);
      return "in "
          + percent(chance.share(), decimals)
          + " ± "
          + percent(half, decimals)
          + " of the samples "
          + happens
          + open;
    }
    double off =
        chance.count() < FEW ? chance.greatest() - chance.share() : chance.share() - chance.least();
    int decimals = decimals(100 * off);
    return "in "
        + number(chance.count())
        + " of "
        + number(chance.samples())
        + " samples "
        + happens
        + open
        + ", so its chance lies between "
        + percent(chance.least(), decimals)
        + " and "
        + percent(chance.greatest(), decimals)
        + " (95 % sure)";
  }

  /** Decimals that show one or two digits of a number. */
  private static int decimals(double size) {
    if (!(size > 0)) {
      return 0;
    }
    double power = Math.floor(Math.log10(size));
    boolean small = size < 2 * Math.pow(10, power);
    return (int) Math.max(0, Math.min(12, -power + (small ? 1 : 0)));
  }

  private static String percent(double share, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f %%", 100 * share);
  }

  /** How many of all samples, and what share that is. */
  static String times(long count, long all) {
    if (count == all) {
      return "all " + number(all);
    }
    return number(count) + " of " + number(all) + " (" + share(100.0 * count / all) + " %)";
  }

  /** Three digits, or as many as tell it from all. */
  private static String share(double percent) {
    int digits = 3;
    BigDecimal told = rounded(percent, digits);
    while (told.compareTo(ALL) >= 0 && digits < MOST_DIGITS) {
      told = rounded(percent, ++digits);
    }
    return told.toPlainString();
  }

  private static BigDecimal rounded(double percent, int digits) {
    return new BigDecimal(String.format(Locale.ROOT, "%." + digits + "g", percent));
  }

  static String number(long count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  static String value(double si, Dimension dimension, UnitSystem units) {
    return units.format(si, dimension, DIGITS);
  }

  static String inputs(List<Uncertain> uncertain, List<Double> values, UnitSystem units) {
    List<String> all = new ArrayList<>();
    for (int k = 0; k < values.size(); k++) {
      Input input = uncertain.get(k).input();
      all.add(input.text() + " at " + value(values.get(k), input.dimension(), units));
    }
    return String.join(", ", all);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
