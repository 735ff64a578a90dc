package bellcrank.examples.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The keys of one mapping with their values. */
final class Fields {

  /** The way to the outermost mapping. */
  static final String TOP = "file";

  private static final Pattern NUMBER = Pattern.compile("[0-9]");

  /** What helps against a comma inside a number, which ends the value there. */
  private static final String DECIMALS =
      "a known key; if this belongs to a number, a point as decimal sign and nothing between"
          + " thousands, as in 1220.5";

  private final Spot whole;
  private final Map<String, Spot> values = new LinkedHashMap<>();
  private final Map<String, Spot> keys = new LinkedHashMap<>();

  /** Keys that unknown ones were probably meant to be: not missed a second time. */
  private final Set<String> meant = new HashSet<>();

  Fields(Spot whole, List<Node.Entry> entries) {
    this.whole = whole;
    for (Node.Entry entry : entries) {
      values.put(entry.key(), whole.below(entry.value(), entry.key()));
      keys.put(entry.key(), whole.below(new Node.Text(entry.mark(), entry.key()), entry.key()));
    }
  }

  Spot whole() {
    return whole;
  }

  boolean has(String key) {
    return values.containsKey(key);
  }

  /** Which of these keys are there. */
  List<String> present(Collection<String> wanted) {
    return values.keySet().stream().filter(wanted::contains).toList();
  }

  /** The entries of a mapping from names. */
  List<Named> named() {
    List<Named> named = new ArrayList<>();
    values.forEach(
        (key, value) -> {
          Spot name = keys.get(key);
          if (name != null) {
            named.add(new Named(key, name, value));
          }
        });
    return named;
  }

  Optional<Spot> find(String key) {
    return Optional.ofNullable(values.get(key));
  }

  /** Whether a key is there with a mapping or is not there at all, under no similar name either. */
  boolean isWhole(String key) {
    return has(key) ? find(key).filter(Spot::isFields).isPresent() : !meant.contains(key);
  }

  /** The value of a key that must be there. */
  Optional<Spot> need(String key, String wanted) {
    Spot value = values.get(key);
    if (value != null) {
      return Optional.of(value);
    }
    return meant.contains(key) ? Optional.empty() : whole.refuse("no key " + key, wanted);
  }

  /** Reports the keys that are not among the allowed ones. */
  void only(Collection<String> allowed) {
    only(allowed, allowed);
  }

  /** Reports the keys that are not allowed; near ones are looked for among more. */
  void only(Collection<String> allowed, Collection<String> similar) {
    keys.forEach(
        (key, spot) -> {
          if (!allowed.contains(key)) {
            Optional<String> near =
                similar.contains(key) ? Optional.empty() : whole.problems().near(key, similar);
            near.ifPresent(meant::add);
            if (NUMBER.matcher(key).lookingAt()) {
              spot.report("the key " + Excerpt.quoted(key), DECIMALS);
              return;
            }
            int colon = key.indexOf(':');
            if (colon > 0 && allowed.contains(key.substring(0, colon))) {
              spot.report(
                  "the key " + Excerpt.quoted(key),
                  "a blank behind the colon of " + Excerpt.quoted(key.substring(0, colon)));
              return;
            }
            spot.report(
                "the key " + Excerpt.quoted(key),
                near.map(one -> "a known key; the nearest is " + Excerpt.quoted(one))
                    .orElse("one of the keys " + String.join(", ", allowed)));
          }
        });
  }
}
