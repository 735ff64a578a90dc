package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;

/**
 * Finds efficiencies: the range of the effort, as a multiple of the one that would do the same work
 * as the resistance. At its upper end the effort is about to overcome the resistance, at its lower
 * end it is about to be driven back.
 */
final class EfficiencyFinder {

  private final Limits limits;
  private final Balance balance;
  private final Device device;
  private final EffortAndResistance pair;

  /** Ends of the range of the effort in such multiples; infinite where there is no end. */
  private record Multiples(double least, double greatest, double gap) {

    /** The range of the inverse, of which a part below zero has no end. */
    Multiples inverse() {
      return new Multiples(
          greatest > 0 ? 1 / greatest : Double.NEGATIVE_INFINITY,
          least > 0 ? 1 / least : Double.POSITIVE_INFINITY,
          least > 0 ? gap / (least * least) : 0);
    }
  }

  /** The range, or why there is none. */
  private record Found(Multiples multiples, Answer refusal) {

    static Found of(double one, double other, double gap) {
      Multiples sorted = new Multiples(Math.min(one, other), Math.max(one, other), gap);
      return new Found(sorted, new Answer.Words("found"));
    }

    static Found none(Answer refusal) {
      return new Found(new Multiples(0, 0, 0), refusal);
    }

    boolean isRefused() {
      return refusal instanceof Answer.Unanswered;
    }
  }

  EfficiencyFinder(Limits limits, Balance balance, EffortAndResistance pair) {
    this.limits = limits;
    this.balance = balance;
    this.device = balance.device();
    this.pair = pair;
  }

  Efficiency find() {
    boolean smooth = device.connections().stream().noneMatch(EfficiencyFinder::isLossy);
    Answer equal = equalWork();
    if (!(equal instanceof Answer.Value ideal)) {
      return new Efficiency(equal, equal, 0, smooth);
    }
    Found found = multiples(ideal.si());
    if (found.isRefused()) {
      return new Efficiency(found.refusal(), found.refusal(), 0, smooth);
    }
    Multiples effort = found.multiples();
    double highest = effort.greatest();
    double gap = highest > 0 ? Math.max(effort.gap(), effort.gap() / (highest * highest)) : 0;
    return new Efficiency(forward(highest), back(effort.least()), gap, smooth);
  }

  /** Where friction forbids all motion, the contacts slide. */
  private Answer equalWork() {
    Answer stuck = balance.ratioOfEqualWork();
    if (stuck instanceof Answer.Value) {
      return stuck;
    }
    Device smooth = SmoothDevice.of(device);
    return Balance.of(smooth, balance.loadCase(), balance.pose()).ratioOfEqualWork();
  }

  private static boolean isLossy(Object connection) {
    return (connection instanceof Pin pin && pin.friction() > 0 && pin.radius() > 0)
        || (connection instanceof Contact contact && contact.friction() > 0)
        || (connection instanceof ContactBase base && base.friction() > 0)
        || (connection instanceof Wrap wrap && wrap.friction() > 0)
        || (connection instanceof Screw screw && screw.friction() > 0)
        || (connection instanceof Reeving rope && rope.efficiency() < 1);
  }

  private boolean hauls(Reeving.Hauling way) {
    return device.connections().stream()
        .anyMatch(
            one -> one instanceof Reeving rope && rope.efficiency() < 1 && rope.hauling() == way);
  }

  private Answer forward(double greatest) {
    if (hauls(Reeving.Hauling.LOWERING)) {
      return notDefined("a rope with losses is stated as lowering");
    }
    if (Double.isInfinite(greatest)) {
      return notDefined("no effort is enough: the device locks itself against it");
    }
    return greatest > 0
        ? number(1 / greatest)
        : notDefined("other loads overcome the resistance without any effort");
  }

  private Answer back(double least) {
    if (hauls(Reeving.Hauling.RAISING)) {
      return notDefined("a rope with losses is stated as raising");
    }
    return Double.isInfinite(least)
        ? notDefined("nothing drives the effort back: the device locks itself")
        : number(least);
  }

  private static Answer number(double value) {
    return new Answer.Value(value, Dimension.NUMBER);
  }

  private static Answer notDefined(String why) {
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why);
  }

  private boolean isGiven(String name) {
    return device.load(name).filter(load -> !(load instanceof Sought)).isPresent();
  }

  private Found multiples(double ideal) {
    boolean effort = isGiven(pair.effort());
    boolean resistance = isGiven(pair.resistance());
    if (!effort && !resistance) {
      return range(Ask.of(pair.effort()).per(Ask.of(pair.resistance())), ideal);
    }
    if (effort && resistance) {
      return varied(ideal);
    }
    String known = effort ? pair.effort() : pair.resistance();
    if (!(balance.answer(Ask.of(known)) instanceof Answer.Value value) || value.si() == 0) {
      return Found.none(notDefined(known + " is zero"));
    }
    if (resistance) {
      return range(Ask.of(pair.effort()), ideal / value.si());
    }
    // the resistance that an effort can overcome or be driven back by
    Found overcome = range(Ask.of(pair.resistance()), 1 / (ideal * value.si()));
    return overcome.isRefused()
        ? overcome
        : new Found(overcome.multiples().inverse(), overcome.refusal());
  }

  private Found range(Ask ask, double factor) {
    AskRange.Outcome outcome = limits.ranged(ask);
    Range range = outcome.range().orElse(null);
    if (range == null) {
      return Found.none(outcome.answer());
    }
    return Found.of(
        factor * range.least().orElse(Double.NEGATIVE_INFINITY),
        factor * range.greatest().orElse(Double.POSITIVE_INFINITY),
        Math.abs(factor) * range.gap());
  }

  /** Where both are given, the effort is varied by a multiple. */
  private Found varied(double ideal) {
    if (!(balance.answer(Ask.of(pair.effort())) instanceof Answer.Value effort)
        || !(balance.answer(Ask.of(pair.resistance())) instanceof Answer.Value resistance)
        || effort.si() == 0
        || resistance.si() == 0) {
      return Found.none(notDefined("effort or resistance is zero"));
    }
    Limit limit = limits.limit(Variation.of(pair.effort()));
    if (limit instanceof Limit.NotDecided open) {
      return Found.none(new Answer.Unanswered(Answer.Reason.NOT_DECIDED, open.why()));
    }
    if (!(limit instanceof Limit.Between between)) {
      return Found.none(
          new Answer.Unanswered(
              Answer.Reason.NO_BALANCE, "the device holds with no size of the effort"));
    }
    if (between.least() instanceof Limit.End.Open open) {
      return Found.none(new Answer.Unanswered(Answer.Reason.NOT_DECIDED, open.why()));
    }
    if (between.greatest() instanceof Limit.End.Open open) {
      return Found.none(new Answer.Unanswered(Answer.Reason.NOT_DECIDED, open.why()));
    }
    double factor = effort.si() * ideal / resistance.si();
    double least = end(between.least(), Double.NEGATIVE_INFINITY);
    double greatest = end(between.greatest(), Double.POSITIVE_INFINITY);
    double gap = Math.max(gap(between.least()), gap(between.greatest()));
    return Found.of(factor * least, factor * greatest, Math.abs(factor) * gap);
  }

  private static double gap(Limit.End end) {
    return end instanceof Limit.End.At at ? at.gap() : 0;
  }

  private static double end(Limit.End end, double otherwise) {
    return end instanceof Limit.End.At at ? at.value() : otherwise;
  }
}
