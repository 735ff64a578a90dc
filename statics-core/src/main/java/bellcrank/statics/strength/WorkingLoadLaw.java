package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/** Force in a leg against what is left of its working load limit. */
record WorkingLoadLaw() implements Law<RatingDemand> {

  @Override
  public Optional<String> lacks(RatingDemand demand) {
    return Optional.empty();
  }

  @Override
  public double demanded(RatingDemand demand) {
    return demand.perLeg();
  }

  @Override
  public double resistance(RatingDemand demand, double factor) {
    return demand.rating().reducedLimit() / factor;
  }

  @Override
  public boolean isProportional() {
    return true;
  }

  @Override
  public Dimension dimension() {
    return Dimension.FORCE;
  }

  @Override
  public String working(RatingDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    Rating rating = demand.rating();
    StringBuilder text = new StringBuilder();
    if (rating.legs() > 1 || rating.legAngle() > 0) {
      text.append("F/(n·cos α) = ")
          .append(amounts.force(demand.force()))
          .append(" / (")
          .append(rating.legs())
          .append(" × cos ")
          .append(amounts.angle(rating.legAngle()))
          .append(") = ");
    }
    text.append(amounts.force(demand.perLeg()))
        .append(" against ")
        .append(amounts.force(rating.limit()));
    for (Rating.Reduction reduction : rating.reductions()) {
      text.append(" × ")
          .append(amounts.number(reduction.share()))
          .append(" (")
          .append(reduction.why())
          .append(')');
    }
    text.append(amounts.over(factor));
    if (!rating.reductions().isEmpty() || factor != 1) {
      text.append(" = ").append(amounts.force(resistance(demand, factor)));
    }
    return text.toString();
  }
}
