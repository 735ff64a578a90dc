package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.NearestName;
import java.util.Collection;

/** What to say where a device has nothing of a name. */
final class MissingName {

  /** No more names than this are listed. */
  private static final int LISTED = 12;

  private MissingName() {}

  /** A mistake in a name; the message tells the nearest one, or else all that there are. */
  static ModelException of(
      String part, String field, String name, String kind, Collection<String> known) {
    String wanted = "the name of " + kind;
    String which =
        known.isEmpty()
            ? " (there is none)"
            : NearestName.of(name, known)
                .map(near -> "; the nearest is \"" + near + '"')
                .orElseGet(() -> listed(known));
    return new ModelException(part, field, '"' + name + '"', wanted + which);
  }

  private static String listed(Collection<String> known) {
    return ": "
        + String.join(", ", known.stream().sorted().limit(LISTED).toList())
        + (known.size() > LISTED ? ", …" : "");
  }
}
