package bellcrank.examples.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells by its keys which kind of part a mapping states. */
final class KindOf {

  private KindOf() {}

  /** The one kind whose first key is there; anything else is reported, and so are other keys. */
  static Optional<String> part(Fields fields, String noun, Map<String, Set<String>> kinds) {
    List<String> present = fields.present(kinds.keySet());
    if (present.size() == 1) {
      String kind = present.get(0);
      fields.only(kinds.getOrDefault(kind, Set.of()));
      return Optional.of(kind);
    }
    if (present.size() > 1) {
      return fields
          .whole()
          .refuse(String.join(" and ", present), "one kind of " + noun + " at a time");
    }
    Set<String> all = FileKeys.all(kinds);
    boolean misspelt = fields.named().stream().anyMatch(named -> !all.contains(named.text()));
    fields.only(all);
    return misspelt
        ? Optional.empty()
        : fields
            .whole()
            .refuse("no kind of " + noun, "one of the keys " + String.join(", ", kinds.keySet()));
  }
}
