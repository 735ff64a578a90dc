package bellcrank.statics.drawing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What forces are called in a picture; where one name acts on several bodies, these are told. */
final class Symbols {

  private final Map<String, Set<String>> bodies = new HashMap<>();

  Symbols(FreeBody body, List<ActingForce> forces) {
    forces.forEach(force -> add(force.symbol(), force.on()));
    body.openForces().forEach(force -> add(force.symbol(), force.on()));
  }

  private void add(String symbol, String on) {
    bodies.computeIfAbsent(symbol, key -> new HashSet<>()).add(on);
  }

  String of(ActingForce force) {
    return name(force.symbol(), force.on());
  }

  String of(OpenForce force) {
    return name(force.symbol(), force.on());
  }

  private String name(String symbol, String on) {
    return bodies.getOrDefault(symbol, Set.of()).size() > 1 ? symbol + " on " + on : symbol;
  }
}
