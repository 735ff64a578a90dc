package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import java.util.ArrayList;
import java.util.List;

/** The numbers that checks read from a balance; each has a place in {@link CarriedForces}. */
final class Needs {

  record BarOf(String member, Bar bar) {}

  record ForceOf(String connection, String body) {}

  private final List<BarOf> bars = new ArrayList<>();
  private final List<ForceOf> forces = new ArrayList<>();
  private final List<String> tensions = new ArrayList<>();

  int bar(String member, Bar bar) {
    return place(bars, new BarOf(member, bar));
  }

  int force(String connection, String body) {
    return place(forces, new ForceOf(connection, body));
  }

  int tension(String part) {
    return place(tensions, part);
  }

  private static <T> int place(List<T> all, T one) {
    int known = all.indexOf(one);
    if (known >= 0) {
      return known;
    }
    all.add(one);
    return all.size() - 1;
  }

  List<BarOf> bars() {
    return bars;
  }

  List<ForceOf> forces() {
    return forces;
  }

  List<String> tensions() {
    return tensions;
  }
}
