package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says whether a device stands, and how much it has to spare or lacks. */
final class VerdictWords {

  /** Factors on friction below this are hardly any friction. */
  private static final double HARDLY_ANY = 1e-4;

  /** More friction than this many times the stated one is not to be had. */
  private static final double MANY_TIMES = 10;

  private final LimitsAnswer answer;
  private final Device device;
  private final Amounts amounts;
  private final UnitSystem units;

  private VerdictWords(LimitsAnswer answer, Device device, Amounts amounts, UnitSystem units) {
    this.answer = answer;
    this.device = device;
    this.amounts = amounts;
    this.units = units;
  }

  static String of(LimitsAnswer answer, Device device, Amounts amounts, UnitSystem units) {
    VerdictWords words = new VerdictWords(answer, device, amounts, units);
    return (words.verdict() + " " + words.friction()).strip();
  }

  private String verdict() {
    Verdict verdict = answer.verdict();
    if (verdict instanceof Verdict.Holds) {
      return "Holds" + sought() + spare() + ".";
    }
    if (verdict instanceof Verdict.HoldsOnceSeated seated) {
      return "Can hold once seated"
          + sought()
          + ": only if "
          + Listing.ofNames(seated.parts())
          + (seated.parts().size() == 1 ? " was " : " were ")
          + squeezed(seated.parts())
          + " beforehand. How the parts were put together decides, and statics does not know it.";
    }
    if (verdict instanceof Verdict.Impending impending) {
      return "About to give way, with nothing to spare: "
          + impending.how().words(device, units)
          + ".";
    }
    if (verdict instanceof Verdict.DoesNotHold failing) {
      return "Does not hold: " + how(failing.how()) + "." + remedy(failing);
    }
    return "Not decided: " + ((Verdict.NotDecided) verdict).why() + ".";
  }

  private String how(GivingWay how) {
    return how.events().isEmpty() && how.motion().isEmpty()
        ? "no forces of its parts balance the loads"
        : how.words(device, units);
  }

  /** That it holds only with what is sought. */
  private String sought() {
    List<String> sought = device.sought().stream().map(Sought::name).toList();
    return sought.isEmpty() ? "" : " with " + Listing.ofNames(sought) + " as told below";
  }

  private String squeezed(List<String> parts) {
    long ropes = parts.stream().filter(this::isRope).count();
    if (ropes == 0) {
      return "pressed together";
    }
    return ropes == parts.size() ? "pulled tight" : "pressed together or pulled tight";
  }

  private boolean isRope(String part) {
    Connection connection = device.connection(part).orElse(null);
    return connection instanceof Line
        || connection instanceof Reeving
        || connection instanceof Wrap;
  }

  /** What the first loads that are varied have to spare. */
  private String spare() {
    Optional<NamedLimit> first = loadLimit();
    Optional<Limit.End.At> end = first.flatMap(VerdictWords::greatest);
    Optional<Limit.End.At> low = first.flatMap(VerdictWords::least);
    if (end.isPresent() && low.isPresent()) {
      return ", for "
          + loads(first.get())
          + " from "
          + times(low.get())
          + " to "
          + times(end.get())
          + " times as large";
    }
    return end.isPresent() && LimitWords.isSpare(end.get())
        ? ", and has " + percent(end.get().value() - 1) + " to spare on " + loads(first.get())
        : "";
  }

  private Optional<NamedLimit> loadLimit() {
    return answer.limits().stream()
        .filter(one -> one.variation() instanceof Variation.Multiple)
        .findFirst();
  }

  private static Optional<Limit.End.At> greatest(NamedLimit limit) {
    return limit.limit() instanceof Limit.Between between
            && between.greatest() instanceof Limit.End.At at
        ? Optional.of(at)
        : Optional.empty();
  }

  /** The least end where it is above nothing at all. */
  private static Optional<Limit.End.At> least(NamedLimit limit) {
    return limit.limit() instanceof Limit.Between between
            && between.least() instanceof Limit.End.At at
            && at.value() > LimitWords.NOTHING
        ? Optional.of(at)
        : Optional.empty();
  }

  private String times(Limit.End.At end) {
    return amounts.text(end.value(), Dimension.NUMBER);
  }

  /** How much less load or more friction would do. */
  private String remedy(Verdict.DoesNotHold failing) {
    List<String> remedies = new ArrayList<>();
    Optional<NamedLimit> first = loadLimit();
    Optional<Limit.End.At> end = first.flatMap(VerdictWords::greatest);
    if (end.isPresent() && end.get().value() < 1 && end.get().value() > LimitWords.NOTHING) {
      remedies.add("up to " + times(end.get()) + " times " + loads(first.get()));
    }
    Optional<Limit.End.At> start = first.flatMap(VerdictWords::least);
    if (start.isPresent() && start.get().value() > 1) {
      remedies.add("from " + times(start.get()) + " times " + loads(first.get()) + " on");
    }
    if (answer.friction() instanceof FrictionFactor.Least least
        && least.factor() > 1
        && least.factor() < MANY_TIMES) {
      String factor = amounts.text(least.factor(), Dimension.NUMBER);
      remedies.add("with " + factor + " times the stated friction");
    }
    if (!remedies.isEmpty()) {
      return " It would hold " + String.join(", or ", remedies) + ".";
    }
    return failing.after() == Verdict.After.NEED
        ? " Neither less load nor more friction helps."
        : "";
  }

  private static String loads(NamedLimit limit) {
    return LimitWords.loads(limit);
  }

  /** How much of the friction is needed, where it is more than enough. */
  private String friction() {
    FrictionFactor friction = answer.friction();
    if (!answer.stands() || answer.verdict() instanceof Verdict.Impending) {
      return "";
    }
    if (friction instanceof FrictionFactor.Least least && least.factor() >= HARDLY_ANY) {
      return "Of the stated friction " + percent(least.factor()) + " is enough.";
    }
    if (friction instanceof FrictionFactor.Least
        || friction instanceof FrictionFactor.AnyIsEnough) {
      return "Hardly any friction is enough.";
    }
    boolean certain = answer.verdict() instanceof Verdict.Holds && device.sought().isEmpty();
    return certain && friction instanceof FrictionFactor.NotNeeded ? "It needs no friction." : "";
  }

  private String percent(double share) {
    return amounts.text(share, Unit.parse("%"), 3);
  }
}
