package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** Holds an expectation of a file against the answer that is found. */
record ExpectationClaims(SuiteFile.Expectation expectation, UnitSystem units) {

  /** What is wrong with it in a solved case. */
  Optional<Message> holds(SuiteFile.SolvedCase solved) {
    ExpectedAnswer expected = expectation.answer();
    CheckedAnswer checked =
        expected.check(solved.answers().apply(expected.ask()), solved.balance());
    if (checked.holds()) {
      return Optional.empty();
    }
    Setup.Shown shown = new Setup.Shown(solved.balance(), units, "");
    String sentence =
        expectation.text()
            + " on "
            + solved.balance().device().name()
            + cases(solved.balance().device())
            + " is expected to be "
            + expected()
            + ", but "
            + found(checked, Numbers.of(shown))
            + "."
            + expectation.source().map(text -> " Source of the value: " + text + ".").orElse("");
    return Optional.of(Message.of(sentence).with(shown, bodies(solved.balance().device())));
  }

  /** Name of the test. */
  String name() {
    return expectation.text() + " = " + expected();
  }

  private String cases(Device device) {
    return device.cases().size() > 1 ? " in case " + expectation.loadCase() : "";
  }

  private String expected() {
    if (expectation.answer().value() instanceof ExpectedAnswer.Words words) {
      return words.text();
    }
    ExpectedAnswer.Amount amount = (ExpectedAnswer.Amount) expectation.answer().value();
    return amount.quantity().format(amount.unit(), amount.digits())
        + " to "
        + amount.digits()
        + (amount.digits() == 1 ? " digit" : " digits");
  }

  private String found(CheckedAnswer checked, Numbers numbers) {
    if (checked.found() instanceof Answer.Words words) {
      return "it is " + words.text();
    }
    if (checked.found() instanceof Answer.Unanswered none) {
      return "there is no answer: " + none.explanation();
    }
    if (!(checked.found() instanceof Answer.Value value)) {
      return "it is answered by a line";
    }
    if (!(checked.expected().value() instanceof ExpectedAnswer.Amount amount)
        || amount.quantity().dimension() != value.dimension()) {
      return "it is " + numbers.text(value.si(), value.dimension());
    }
    Unit unit = amount.unit();
    double wanted = amount.quantity().si();
    double off = amount.difference(value.si());
    return "it is "
        + numbers.apartFrom(wanted, value.si(), unit)
        + ": "
        + numbers.gap(off, wanted, unit)
        + (off > 0 ? " above" : " below")
        + " it, where "
        + numbers.brief(checked.allowed(), unit)
        + " is allowed";
  }

  /** An ask in words of the file's own is about no part of the device. */
  private List<String> bodies(Device device) {
    return new ConcernedBodies(device).of(expectation.answer().ask());
  }
}
