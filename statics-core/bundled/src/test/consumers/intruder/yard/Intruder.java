package yard;

import bellcrank.statics.equilibrium.internal.Solved;

/** Reaches for what is not exported. */
public final class Intruder {
  private Intruder() {}

  static Class<?> taken() {
    return Solved.class;
  }
}
