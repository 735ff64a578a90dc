package bellcrank.statics.ground;

import java.util.List;

/** One ground for each rule. */
final class Grounds {

  static final List<Bearing> ALL =
      List.of(
          new Presumptive(80e3, "soil report"),
          new Drained(0.5, 2e3, 18e3, 5e3),
          new Undrained(30e3, 5e3));

  private Grounds() {}
}
