package bellcrank.statics.equilibrium;

import java.util.List;

/** How the question of balance comes out. */
public sealed interface Outcome {

  /**
   * The outcome in a few words: {@code in balance}, {@code in balance for these loads}, {@code
   * conditions broken}, {@code no balance} or {@code not decided}.
   *
   * @return the words
   */
  String words();

  /** Held in balance, whatever the size and direction of the loads. */
  record InBalance() implements Outcome {
    @Override
    public String words() {
      return "in balance";
    }
  }

  /** In balance, but on a free motion on which just these loads do no work. */
  record InBalanceForTheseLoads() implements Outcome {
    @Override
    public String words() {
      return "in balance for these loads";
    }
  }

  /**
   * The forces can be in balance only if some parts give more than they can: the device does not
   * rest as it is stated. Its forces are those that such a balance would need.
   *
   * @param violations what is needed and what can be given, at least one
   */
  record ConditionsBroken(List<Violation> violations) implements Outcome {

    /**
     * Copies the list.
     *
     * @param violations what is needed and what can be given, at least one
     */
    public ConditionsBroken {
      violations = List.copyOf(violations);
    }

    @Override
    public String words() {
      return "conditions broken";
    }
  }

  /**
   * Not in balance: the device starts to move and carries no reactions that statics could tell.
   *
   * @param driven the motion into which the loads drive it
   */
  record NoBalance(Freedom driven) implements Outcome {
    @Override
    public String words() {
      return "no balance";
    }
  }

  /**
   * Not decided by equilibrium alone, since some parts carry anything within a range.
   *
   * @param parts names of these parts
   */
  record NotDecided(List<String> parts) implements Outcome {

    /**
     * Copies the names.
     *
     * @param parts names of these parts
     */
    public NotDecided {
      parts = List.copyOf(parts);
    }

    @Override
    public String words() {
      return "not decided";
    }
  }
}
