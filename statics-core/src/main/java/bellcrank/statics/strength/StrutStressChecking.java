package bellcrank.statics.strength;

/** Axial stress of a strut. */
final class StrutStressChecking extends AxialChecking<BarDemand> {

  static final String WHAT = "axial stress";

  StrutStressChecking(String strut, int tension, Sized sized, Rule<BarDemand> rule) {
    super(strut, WHAT, tension, sized, rule);
  }

  @Override
  BarDemand demand(double pull, double length, Sized strut) {
    return new BarDemand(pull, 0, 0, strut);
  }
}
