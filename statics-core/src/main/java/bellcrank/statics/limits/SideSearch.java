package bellcrank.statics.limits;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.Travel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/** Looks for the angle or breadth at which a side view just stands. */
final class SideSearch {

  /** No base is looked for that is broader than this many sizes of the side view. */
  private static final double BROADEST = 1e6;

  /** A base narrower than this share of the size counts as none. */
  private static final double NARROWEST = 1e-9;

  /** Width of the last bracket, relative to its upper end. */
  private static final double ACCURACY = 1e-13;

  /** Value of a state that does not stand, where no number measures by how much. */
  private static final double FAILS = -1;

  /** Size of a function value, of order one, that is rounding. */
  private static final double NOTHING = 1e-15;

  private static final int MOST_STEPS = 200;

  /** The first breadth that is tried, as a share of the size. */
  private static final double FIRST_TRY = 1e-3;

  private static final double LAST_DEGREE = 89.99;

  private SideSearch() {}

  /** The multiples at which a device holds; the ends may be infinite. */
  record Span(double least, double greatest) {

    boolean contains(double value) {
      return least <= value && value <= greatest;
    }
  }

  static Optional<Span> span(Device device, LoadCase loadCase, List<String> varied) {
    Admissible admissible = new Admissible(device, loadCase, Pose.DRAWN, List.of());
    Travel travel =
        new Travels(device, loadCase, Pose.DRAWN, admissible.space())
            .of(new Variation.Multiple(varied));
    Goal up = Goal.number(1, admissible.columns());
    Extreme high = admissible.greatest(travel, FrictionLevel.STATED, up).extreme();
    if (high.kind() == Extreme.Kind.NONE || high.kind() == Extreme.Kind.OPEN) {
      return Optional.empty();
    }
    Extreme low = admissible.greatest(travel, FrictionLevel.STATED, up.negative()).extreme();
    return Optional.of(
        new Span(
            low.isFound() ? low.number() : Double.NEGATIVE_INFINITY,
            high.isFound() ? high.number() : Double.POSITIVE_INFINITY));
  }

  /** Whether a device holds as it is. */
  static boolean stands(Device device) {
    Admissible admissible = new Admissible(device, LoadCase.ALL_LOADS, Pose.DRAWN, List.of());
    Goal any = Goal.none(admissible.columns());
    return admissible.greatest(admissible.given(), FrictionLevel.STATED, any).extreme().isFound();
  }

  /** By how much a side view stands: 1 less 1 over the growth it allows; negative if it fails. */
  private static double ease(SideView view) {
    SideDevice.Built built = SideDevice.of(view);
    if (built.effects().isEmpty()) {
      return stands(built.device()) ? 1 : FAILS;
    }
    Span span = span(built.device(), LoadCase.ALL_LOADS, built.effects()).orElse(null);
    if (span == null) {
      return FAILS;
    }
    boolean measured = span.contains(0) && span.greatest() > 0;
    if (measured && span.greatest() < Double.POSITIVE_INFINITY) {
      return 1 - 1 / span.greatest();
    }
    return span.contains(1) ? 1 : FAILS;
  }

  /** The least angle of growing tilt at which it gives way; empty if at none below 90 degrees. */
  static OptionalDouble angle(DoubleFunction<SideView> tilted) {
    DoubleUnaryOperator ease = angle -> ease(tilted.apply(angle));
    double good = 0;
    double atGood = ease.applyAsDouble(0);
    if (atGood < 0) {
      return OptionalDouble.of(0);
    }
    for (int degree = 1; degree <= 90; degree++) {
      double angle = Math.toRadians(Math.min(degree, LAST_DEGREE));
      double there = ease.applyAsDouble(angle);
      if (there < 0) {
        return OptionalDouble.of(crossing(ease, angle, there, good, atGood));
      }
      good = angle;
      atGood = there;
    }
    return OptionalDouble.empty();
  }

  /** The least breadth at which it stands with its sideways effects times a factor. */
  static OptionalDouble breadth(SideView view, double factor) {
    SideDevice.Built built = SideDevice.of(view);
    double size = built.device().size();
    double force =
        new Admissible(built.device(), LoadCase.ALL_LOADS, Pose.DRAWN, List.of()).scale();
    DoubleUnaryOperator spare = b -> spare(view.withBreadth(b), factor, force * size);
    double breadth = size * FIRST_TRY;
    double there = spare.applyAsDouble(breadth);
    double step = there < 0 ? 2 : 0.5;
    while (breadth < BROADEST * size && breadth > NARROWEST * size) {
      double next = breadth * step;
      double atNext = spare.applyAsDouble(next);
      if (there < 0 != atNext < 0) {
        return OptionalDouble.of(
            there < 0
                ? crossing(spare, breadth, there, next, atNext)
                : crossing(spare, next, atNext, breadth, there));
      }
      breadth = next;
      there = atNext;
    }
    return there < 0 ? OptionalDouble.empty() : OptionalDouble.of(0);
  }

  /** The couple to either side, in multiples of a unit, that could be borne besides. */
  private static double spare(SideView view, double factor, double unit) {
    SideDevice.Built built = SideDevice.of(view);
    String extra = "extra couple";
    while (built.device().load(extra).isPresent() || built.device().connection(extra).isPresent()) {
      extra += " more";
    }
    Device device =
        built.device().toBuilder().load(new Couple(extra, SideDevice.BODY, unit)).build();
    Map<String, Double> factors = new HashMap<>();
    built.effects().forEach(name -> factors.put(name, factor));
    return span(device, new LoadCase("grown", factors, 1), List.of(extra))
        .map(span -> Math.min(span.greatest(), -span.least()))
        .orElse(FAILS);
  }

  /** Where a function turns from negative to 0 or more, seen from the latter side. */
  private static double crossing(
      DoubleUnaryOperator function, double bad, double atBad, double good, double atGood) {
    double low = bad;
    double atLow = atBad;
    double high = good;
    double atHigh = atGood;
    for (int k = 0; k < MOST_STEPS; k++) {
      double width = high - low;
      if (Math.abs(width) <= ACCURACY * Math.max(Math.abs(low), Math.abs(high))) {
        break;
      }
      double share = k % 2 == 0 ? atLow / (atLow - atHigh) : 0.5;
      double tried = low + (share > 0 && share < 1 ? share : 0.5) * width;
      double there = function.applyAsDouble(tried);
      if (Math.abs(there) <= NOTHING) {
        return tried;
      }
      if (there < 0) {
        low = tried;
        atLow = there;
      } else {
        high = tried;
        atHigh = there;
      }
    }
    return high;
  }
}
