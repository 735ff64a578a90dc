package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What came of reading a file for a {@link DeviceSuite}. */
public sealed interface SuiteFile {

  /**
   * A file that could be read.
   *
   * @param device name of the device
   * @param units units of the messages
   * @param expectations what it expects, in order; none if it expects nothing
   * @param cases solves a case of the device by its name; asked once for each case at most
   */
  record Read(
      String device,
      UnitSystem units,
      List<Expectation> expectations,
      Function<String, SolvedCase> cases)
      implements SuiteFile {

    /**
     * Copies the list.
     *
     * @param device name of the device
     * @param units units of the messages
     * @param expectations what it expects, in order
     * @param cases solves a case of the device by its name
     */
    public Read {
      expectations = List.copyOf(expectations);
    }
  }

  /**
   * A file that could not be read.
   *
   * @param problems what is wrong with it, each a sentence that says where, such as by line and
   *     column; at least one
   */
  record Refused(List<String> problems) implements SuiteFile {

    /**
     * Copies the list.
     *
     * @param problems what is wrong with it
     */
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * An expected answer of a file.
   *
   * @param text the ask as the file writes it
   * @param loadCase name of the case in which it is expected
   * @param answer what is expected
   * @param source where the value comes from, if the file says so
   */
  record Expectation(
      String text, String loadCase, ExpectedAnswer answer, Optional<String> source) {}

  /**
   * A device solved in one case.
   *
   * @param balance its balance
   * @param answers answers an ask; an {@code in case} of it is that of this case
   */
  record SolvedCase(Balance balance, Function<Ask, Answer> answers) {}
}
