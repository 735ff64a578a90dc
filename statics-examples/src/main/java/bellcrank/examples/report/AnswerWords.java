package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.units.Dimension;

/** Writes one answer, whatever kind of answer it is. */
final class AnswerWords {

  private AnswerWords() {}

  /** The answer to an ask; what is counted is written as a whole number. */
  static String of(Ask ask, Answer answer, Amounts amounts, int digits) {
    boolean counted = ask.measure() == Measure.FREEDOMS || ask.measure() == Measure.REDUNDANCY;
    return counted && answer instanceof Answer.Value value
        ? Long.toString(Math.round(value.si()))
        : of(answer, amounts, digits);
  }

  static String of(Answer answer, Amounts amounts, int digits) {
    if (answer instanceof Answer.Value value) {
      return amounts.text(value.si(), value.dimension(), digits);
    }
    if (answer instanceof Answer.Words words) {
      return words.text();
    }
    if (answer instanceof Answer.LineOfAction line) {
      double x = line.line().direction().x();
      double y = line.line().direction().y();
      return amounts.force(line.size() * x, line.size() * y)
          + ", along the line through ("
          + amounts.text(line.line().point().x(), Dimension.LENGTH, digits)
          + ", "
          + amounts.text(line.line().point().y(), Dimension.LENGTH, digits)
          + ")";
    }
    return "no answer: " + ((Answer.Unanswered) answer).explanation();
  }
}
