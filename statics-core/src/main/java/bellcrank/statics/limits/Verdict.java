package bellcrank.statics.limits;

import java.util.List;

/** Whether a device stands under its loads, with all one-sided and rough parts decided. */
public sealed interface Verdict {

  /**
   * The verdict in a few words: {@code holds}, {@code can hold once seated}, {@code about to give
   * way}, {@code does not hold} or {@code not decided}.
   *
   * @return the words
   */
  String words();

  /** It holds, whatever of the possible states it is in. */
  record Holds() implements Verdict {
    @Override
    public String words() {
      return "holds";
    }
  }

  /**
   * It can hold, if some parts were pressed or pulled together before: without that squeeze they
   * would not. Whether it does depends on how the parts were seated, which statics does not know.
   *
   * @param parts names of the parts that must be squeezed
   */
  record HoldsOnceSeated(List<String> parts) implements Verdict {

    /**
     * Copies the names.
     *
     * @param parts names of the parts that must be squeezed
     */
    public HoldsOnceSeated {
      parts = List.copyOf(parts);
    }

    @Override
    public String words() {
      return "can hold once seated";
    }
  }

  /**
   * Impending motion: it holds, but nothing is to spare.
   *
   * @param how how it is about to give way
   */
  record Impending(GivingWay how) implements Verdict {
    @Override
    public String words() {
      return "about to give way";
    }
  }

  /**
   * It does not hold.
   *
   * @param how what gives way, in the sense of {@code after}
   * @param after what was changed until it just gives way
   */
  record DoesNotHold(GivingWay how, After after) implements Verdict {
    @Override
    public String words() {
      return "does not hold";
    }
  }

  /** From which state that just holds the way of failing is told. */
  enum After {
    /** The loads other than weights grew from nothing to the stated ones. */
    LOADS,
    /** Friction fell from enough to the stated one. */
    FRICTION,
    /** Of no state: the parts that would have to give more than they can, least at each. */
    NEED,
    /** No force of the parts could hold these loads: a mechanism that they drive. */
    MECHANISM
  }

  /**
   * The search ended without a decision, which may happen with many dry pins; or what would be
   * lacking is so little that it cannot be told from rounding.
   *
   * @param why what was tried
   */
  record NotDecided(String why) implements Verdict {
    @Override
    public String words() {
      return "not decided";
    }
  }
}
