package bellcrank.examples.file;

import java.util.List;
import java.util.Optional;

/** A piece of the file as the readers see it: with the way to it, and where to complain. */
final class Spot {

  /** Between the keys on the way to a place. */
  static final String STEP = " → ";

  private final Node node;
  private final String where;
  private final Problems problems;

  Spot(Node node, String where, Problems problems) {
    this.node = node;
    this.where = where;
    this.problems = problems;
  }

  Mark mark() {
    return node.mark();
  }

  String where() {
    return where;
  }

  Problems problems() {
    return problems;
  }

  boolean isText() {
    return node instanceof Node.Text;
  }

  boolean isItems() {
    return node instanceof Node.Items;
  }

  boolean isFields() {
    return node instanceof Node.Keys;
  }

  /** The scalar's text; anything else and an empty text is refused. */
  Optional<String> text(String wanted) {
    if (node instanceof Node.Text text && !text.text().isBlank()) {
      return Optional.of(text.text());
    }
    return refuse(wanted);
  }

  /** The scalar's text, if it is one. */
  Optional<String> textIfAny() {
    return node instanceof Node.Text text ? Optional.of(text.text()) : Optional.empty();
  }

  /** The items of a sequence, which keep its way; anything else is refused. */
  Optional<List<Spot>> items(String wanted) {
    if (node instanceof Node.Items items) {
      return Optional.of(
          items.items().stream().map(item -> new Spot(item, where, problems)).toList());
    }
    return refuse(wanted);
  }

  /** The items of a sequence, if it is one. */
  List<Spot> itemsIfAny() {
    return isItems() ? items("").orElse(List.of()) : List.of();
  }

  /** The fields of a mapping; anything else is refused. */
  Optional<Fields> fields(String wanted) {
    if (node instanceof Node.Keys keys) {
      return Optional.of(new Fields(this, keys.entries()));
    }
    return refuse(wanted);
  }

  /** Reports that something else was wanted here. */
  <T> Optional<T> refuse(String wanted) {
    return refuse(node.excerpt(), wanted);
  }

  /** Reports in other words what was found here. */
  <T> Optional<T> refuse(String found, String wanted) {
    report(found, wanted);
    return Optional.empty();
  }

  /** Reports that something else was wanted here. */
  void report(String wanted) {
    report(node.excerpt(), wanted);
  }

  /** Reports in other words what was found here. */
  void report(String found, String wanted) {
    if (!(node instanceof Node.Unreadable)) {
      problems.add(node.mark(), where, found, wanted);
    }
  }

  /** Reports a problem of the whole model, unless this place has one already. */
  void reportLate(String found, String wanted) {
    problems.addUnlessReported(node.mark(), where, found, wanted);
  }

  /** The spot of a key below this one. */
  Spot below(Node child, String key) {
    String step = Excerpt.cut(key);
    return new Spot(child, where.equals(Fields.TOP) ? step : where + STEP + step, problems);
  }
}
