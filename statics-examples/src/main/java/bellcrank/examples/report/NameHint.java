package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Subject;

/** Tells how to ask for a part whose name is a word of asks, such as a pin called centre. */
final class NameHint {

  private NameHint() {}

  /** The hint, with a semicolon before it; nothing if there is no such part. */
  static String of(Ask ask, Device device) {
    String word = word(ask);
    if (word.isEmpty() || (device.connection(word).isEmpty() && device.load(word).isEmpty())) {
      return "";
    }
    boolean single = ask.subject() instanceof Subject.Whole;
    Measure measure = single || ask.measure() == Measure.ACTUAL ? Measure.VALUE : ask.measure();
    return "; for the part of that name write " + Ask.of(word, measure).text();
  }

  private static String word(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Centre centre && centre.bodies().isEmpty()) {
      return "centre";
    }
    if (subject instanceof Subject.Resultant resultant && resultant.loads().isEmpty()) {
      return "resultant";
    }
    if (subject instanceof Subject.Advantage) {
      return "advantage";
    }
    return subject instanceof Subject.Whole ? ask.measure().word() : "";
  }
}
