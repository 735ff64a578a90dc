package bellcrank.statics.study.internal;

/** What is seen from a place in a box, its coordinates shares of their ranges from 0 to 1. */
@FunctionalInterface
public interface View {

  /** Looks from a place; it must not be changed. */
  Sight from(double[] place);
}
