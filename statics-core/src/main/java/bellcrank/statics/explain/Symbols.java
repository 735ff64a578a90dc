package bellcrank.statics.explain;

import java.util.HashSet;
import java.util.Set;

/** Hands out symbols, no text of one twice. */
final class Symbols {

  private final Set<String> taken = new HashSet<>();

  Symbol of(String main, String index) {
    Symbol wanted = Symbol.from(main, index);
    Symbol free = wanted;
    for (int more = 2; !taken.add(free.text()); more++) {
      free = new Symbol(wanted.main(), wanted.index() + more);
    }
    return free;
  }
}
