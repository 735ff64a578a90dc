package bellcrank.statics.harness;

import java.util.ArrayList;
import java.util.List;

/** A message of a failed assertion: a sentence, and the free body that shows why. */
record Message(String sentence, List<String> lines) {

  Message {
    lines = List.copyOf(lines);
  }

  static Message of(String sentence) {
    return new Message(sentence, List.of());
  }

  /** With the free body of some bodies, or of the whole device if none is named. */
  Message with(Setup.Shown shown, List<String> bodies) {
    return and(FreeBodyTable.of(shown, bodies));
  }

  /** With further lines below. */
  Message and(List<String> more) {
    List<String> all = new ArrayList<>(lines);
    all.addAll(more);
    return new Message(sentence, all);
  }

  String text() {
    return lines.isEmpty() ? sentence : sentence + "\n" + String.join("\n", lines);
  }
}
