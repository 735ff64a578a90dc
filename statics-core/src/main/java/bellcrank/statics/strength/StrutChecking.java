package bellcrank.statics.strength;

/** Buckling of a strut; its length is that of the pose. */
final class StrutChecking extends AxialChecking<ColumnDemand> {

  private final ColumnEnds ends;

  StrutChecking(ColumnEnds ends, int tension, Sized sized, Rule<ColumnDemand> rule) {
    super(ends.part(), rule.check().name(), tension, sized, rule);
    this.ends = ends;
  }

  @Override
  ColumnDemand demand(double pull, double length, Sized strut) {
    return new ColumnDemand(Math.max(0, -pull), 0, length, ends, strut);
  }
}
