package bellcrank.shipped;

import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What programs of users may build on: for each public type of an exported package, the facts that
 * they can rely on. A change keeps such programs going if no fact is lost.
 *
 * @param facts by the name of the type
 */
record Api(Map<String, Set<String>> facts) {

  private static final String INDENT = "  ";

  /**
   * Reads the module in a jar.
   *
   * @param jar of the module
   * @param needed jars that it needs
   */
  static Api of(Path jar, List<Path> needed) throws ReflectiveOperationException {
    ModuleDescriptor module = ModuleFinder.of(jar).findAll().iterator().next().descriptor();
    Set<String> exported =
        module.exports().stream().map(ModuleDescriptor.Exports::source).collect(Collectors.toSet());
    List<Path> jars = new ArrayList<>(List.of(jar));
    jars.addAll(needed);
    ClassLoader loader = Shipped.loader(jars);
    Map<String, Set<String>> facts = new TreeMap<>();
    for (String file : Shipped.names(jar)) {
      if (!file.endsWith(".class") || file.endsWith("-info.class")) {
        continue;
      }
      Class<?> type =
          Class.forName(file.replace('/', '.').replaceFirst("\\.class$", ""), false, loader);
      if (exported.contains(type.getPackageName()) && Visible.isSeen(type)) {
        facts.put(type.getName(), TypeFacts.of(type));
      }
    }
    return new Api(facts);
  }

  /** Reads the lines that {@link #lines} wrote. */
  static Api parse(List<String> lines) {
    Map<String, Set<String>> facts = new TreeMap<>();
    Set<String> ofType = new TreeSet<>();
    for (String line : lines) {
      if (line.startsWith(INDENT)) {
        ofType.add(line.strip());
      } else if (!line.isBlank()) {
        ofType = new TreeSet<>();
        facts.put(line, ofType);
      }
    }
    return new Api(facts);
  }

  /** A line for each type and, indented below it, for each fact. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    facts.forEach(
        (type, ofType) -> {
          lines.add(type);
          ofType.forEach(fact -> lines.add(INDENT + fact));
        });
    return lines;
  }

  /** What programs may have relied on and is here no more, each with what stands in its place. */
  List<String> lost(Api now) {
    List<String> lost = new ArrayList<>();
    facts.forEach(
        (type, ofType) -> {
          Set<String> there = now.facts.get(type);
          if (there == null) {
            lost.add(type + " is gone");
            return;
          }
          for (String fact : ofType) {
            if (!there.contains(fact)) {
              lost.add(type + " had: " + fact + instead(fact, there, ofType));
            }
          }
        });
    return lost;
  }

  private static String instead(String fact, Set<String> there, Set<String> before) {
    String name = key(fact);
    String found =
        there.stream()
            .filter(other -> key(other).equals(name) && !before.contains(other))
            .collect(Collectors.joining("; "));
    return found.isEmpty() ? "" : "; has now: " + found;
  }

  /** The name of a method, or the first word. */
  private static String key(String fact) {
    int open = fact.indexOf('(');
    if (open < 0) {
      return fact.substring(0, (fact + " ").indexOf(' '));
    }
    String before = fact.substring(0, open).stripTrailing();
    return before.substring(before.lastIndexOf(' ') + 1);
  }
}
