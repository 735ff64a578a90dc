package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says how far loads and places may be varied, and what happens there. */
final class LimitWords {

  /** Multiples of loads up to this are none at all but for rounding. */
  static final double NOTHING = 1e-9;

  /** Multiples from this on are not told as a share as well. */
  private static final double MANY_TIMES = 10;

  /** What goes with a load that may be however large. */
  private static final String STRENGTH = " (strength is not looked at)";

  /** Loads beyond this number are not told one by one. */
  private static final int MOST_LOADS = 3;

  private final Balance balance;
  private final Amounts amounts;
  private final UnitSystem units;

  private LimitWords(Balance balance, Amounts amounts, UnitSystem units) {
    this.balance = balance;
    this.amounts = amounts;
    this.units = units;
  }

  static void write(
      Page page, List<NamedLimit> limits, Balance balance, Amounts amounts, UnitSystem units) {
    boolean sought = !balance.device().sought().isEmpty();
    List<NamedLimit> told = limits.stream().filter(one -> one.isTold(sought)).toList();
    if (!told.isEmpty()) {
      page.heading("How far it can go");
      LimitWords words = new LimitWords(balance, amounts, units);
      told.forEach(limit -> words.write(page, limit));
    }
  }

  /** What is multiplied. */
  static String loads(NamedLimit limit) {
    boolean all = ((Variation.Multiple) limit.variation()).loads().isEmpty();
    return all && limit.loads().size() > 1
        ? "all loads but weights"
        : Listing.ofNames(limit.loads());
  }

  /** Whether a load may grow by a share that is worth telling. */
  static boolean isSpare(Limit.End.At end) {
    return end.value() > 1 + NOTHING && end.value() < MANY_TIMES;
  }

  private void write(Page page, NamedLimit limit) {
    String head = limit.name().map(name -> name + ", ").orElse("") + what(limit) + ": ";
    if (limit.limit() instanceof Limit.Never) {
      boolean place = limit.variation() instanceof Variation.Place;
      page.item(head + (place ? "holds at no place" : "holds at no size"));
    } else if (limit.limit() instanceof Limit.NotDecided open) {
      page.item(head + "not decided, " + open.why());
    } else {
      Limit.Between between = (Limit.Between) limit.limit();
      page.item(
          head
              + greatest(limit, between.greatest(), between.least())
              + least(limit, between.least()));
      how(between.greatest())
          .filter(
              how -> !isNothing(between.greatest()) || limit.variation() instanceof Variation.Place)
          .ifPresent(how -> page.subitem("beyond that: " + words(how)));
      if (isTold(limit, between.least())) {
        how(between.least()).ifPresent(how -> page.subitem("below that: " + words(how)));
      }
    }
  }

  /** Without any load all parts are at their limits at once, which says nothing. */
  private static boolean isNothing(Limit.End end) {
    return end instanceof Limit.End.At at && Math.abs(at.value()) <= NOTHING;
  }

  private String words(GivingWay how) {
    return how.words(balance.device(), units);
  }

  private static String what(NamedLimit limit) {
    return limit.variation() instanceof Variation.Place place
        ? Listing.quoted(place.load()) + " from " + place.from() + " towards " + place.to()
        : loads(limit);
  }

  private String greatest(NamedLimit limit, Limit.End end, Limit.End least) {
    if (end instanceof Limit.End.SelfLocking) {
      return "however large, since it locks itself" + STRENGTH;
    }
    if (end instanceof Limit.End.Unlimited) {
      return "no limit, however large" + STRENGTH;
    }
    if (end instanceof Limit.End.EndOfLine line) {
      return "all the way, " + length(line.value());
    }
    Limit.End.At at = (Limit.End.At) end;
    if (limit.variation() instanceof Variation.Place) {
      return "up to " + length(at.value()) + within(at.gap(), Dimension.LENGTH);
    }
    if (isNothing(at)) {
      return "not even a little";
    }
    String spare =
        isSpare(at) && !isTold(limit, least) ? ", " + percent(at.value() - 1) + " to spare" : "";
    return "up to " + multiple(limit, at) + spare;
  }

  private String least(NamedLimit limit, Limit.End end) {
    if (isTold(limit, end) && end instanceof Limit.End.At at) {
      return "; at least "
          + (limit.variation() instanceof Variation.Place
              ? length(at.value()) + within(at.gap(), Dimension.LENGTH)
              : multiple(limit, at));
    }
    return "";
  }

  /** The least end is told for a place, or where nothing at all would be too little. */
  private static boolean isTold(NamedLimit limit, Limit.End end) {
    return end instanceof Limit.End.At at
        && (limit.variation() instanceof Variation.Place || at.value() > NOTHING);
  }

  private static Optional<GivingWay> how(Limit.End end) {
    return end instanceof Limit.End.At at ? Optional.of(at.how()) : Optional.empty();
  }

  private String multiple(NamedLimit limit, Limit.End.At at) {
    String times = amounts.text(at.value(), Dimension.NUMBER) + " times";
    List<String> sizes = new ArrayList<>();
    for (String name : limit.loads()) {
      size(name).ifPresent(size -> sizes.add(size(name, size, at.value(), limit)));
    }
    boolean told = sizes.size() == limit.loads().size() && sizes.size() <= MOST_LOADS;
    return times
        + (told ? " (" + String.join(", ", sizes) + ")" : "")
        + within(at.gap(), Dimension.NUMBER);
  }

  private String size(String name, Answer.Value size, double times, NamedLimit limit) {
    String text = amounts.text(size.si() * times, size.dimension());
    return limit.loads().size() == 1 ? text : name + " " + text;
  }

  /** Size of a load in this case. */
  private Optional<Answer.Value> size(String name) {
    Device device = balance.device();
    Load load = device.load(name).orElse(null);
    boolean turns = load instanceof Couple || load instanceof TorsionSpring;
    return balance.answer(Ask.of(name, turns ? Measure.COUPLE : Measure.SIZE))
            instanceof Answer.Value value
        ? Optional.of(value)
        : Optional.empty();
  }

  private String within(double gap, Dimension dimension) {
    return gap > 1e-6 ? " (perhaps up to " + amounts.text(gap, dimension, 2) + " more)" : "";
  }

  private String length(double value) {
    return amounts.text(value, Dimension.LENGTH);
  }

  private String percent(double share) {
    return amounts.text(share, Unit.parse("%"), 3);
  }
}
