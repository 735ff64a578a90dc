package bellcrank.statics.equilibrium;

import java.util.List;

/** How the question of balance comes out. */
public sealed interface Outcome {

  /**
   * The outcome in a few words: {@code in balance}, {@code in balance for these loads}, {@code no
   * balance} or {@code not decided}.
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
