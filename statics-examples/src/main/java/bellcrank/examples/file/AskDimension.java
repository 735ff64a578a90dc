package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.units.Dimension;
import java.util.Optional;

/** Tells in what kind of quantity an ask is answered. */
final class AskDimension {

  private AskDimension() {}

  /** The kind; empty if the answer is words. */
  static Optional<Dimension> of(Ask ask, PartNames parts) {
    if (ask.subject() instanceof Subject.Ratio ratio) {
      return Optional.of(ratio(of(ratio.numerator(), parts), of(ratio.denominator(), parts)));
    }
    if (ask.subject() instanceof Subject.Extreme extreme) {
      return of(extreme.of(), parts);
    }
    if (ask.subject() instanceof Subject.Advantage || ask.subject() instanceof Subject.Multiple) {
      return Optional.of(Dimension.NUMBER);
    }
    boolean place =
        ask.subject() instanceof Subject.Centre || ask.subject() instanceof Subject.Spot;
    return switch (ask.measure()) {
      case VALUE -> Optional.of(natural(ask, parts));
      case X, Y -> Optional.of(place ? Dimension.LENGTH : Dimension.FORCE);
      case SIZE,
          NORMAL,
          FRICTION,
          TENSION,
          END_TENSION,
          COMPRESSION,
          SHEAR,
          PEAK_NORMAL,
          PEAK_SHEAR ->
          Optional.of(Dimension.FORCE);
      case DIRECTION -> Optional.of(Dimension.ANGLE);
      case COUPLE, MOMENT, PEAK_MOMENT, RAISING, LOWERING -> Optional.of(Dimension.MOMENT);
      case LENGTH,
          OFFSET,
          DISTANCE,
          ARM,
          PLACE_OF_PEAK_NORMAL,
          PLACE_OF_PEAK_SHEAR,
          PLACE_OF_PEAK_MOMENT ->
          Optional.of(Dimension.LENGTH);
      case MASS -> Optional.of(Dimension.MASS);
      case RATIO_OF_TENSIONS,
          IDEAL,
          ACTUAL,
          EFFICIENCY,
          RETURN_EFFICIENCY,
          FREEDOMS,
          REDUNDANCY,
          FRICTION_FACTOR ->
          Optional.of(Dimension.NUMBER);
      case LINE, OUTCOME, VERDICT -> Optional.empty();
    };
  }

  private static Dimension natural(Ask ask, PartNames parts) {
    Optional<Load> load =
        ask.subject() instanceof Subject.Part part ? parts.load(part.name()) : Optional.empty();
    if (load.isPresent() && load.get() instanceof Sought sought) {
      return switch (sought.want()) {
        case FORCE, COMPONENTS -> Dimension.FORCE;
        case COUPLE -> Dimension.MOMENT;
        case MASS -> Dimension.MASS;
        case INTENSITY -> Dimension.FORCE_PER_LENGTH;
      };
    }
    boolean turns =
        load.filter(one -> one instanceof Couple || one instanceof TorsionSpring).isPresent();
    return turns ? Dimension.MOMENT : Dimension.FORCE;
  }

  private static Dimension ratio(Optional<Dimension> above, Optional<Dimension> below) {
    if (above.equals(Optional.of(Dimension.MOMENT)) && below.equals(Optional.of(Dimension.FORCE))) {
      return Dimension.LENGTH;
    }
    if (above.equals(Optional.of(Dimension.FORCE)) && below.equals(Optional.of(Dimension.LENGTH))) {
      return Dimension.FORCE_PER_LENGTH;
    }
    return Dimension.NUMBER;
  }
}
