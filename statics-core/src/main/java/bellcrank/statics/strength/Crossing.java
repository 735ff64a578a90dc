package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
import bellcrank.statics.strength.CheckResult.Checked;

/** What happens at some multiple of the driving loads. */
public sealed interface Crossing {

  /**
   * The multiple at which it happens.
   *
   * @return 0 or more
   */
  double multiple();

  /**
   * A check reaches its limit.
   *
   * @param multiple multiple of the driving loads
   * @param certainty how sure it is that it does not happen earlier
   * @param stated the check under the loads as they are stated
   * @param reached the check at that multiple
   */
  record Used(double multiple, Certainty certainty, Checked stated, Checked reached)
      implements Crossing {}

  /**
   * The device slips, tips, lifts, sinks or goes slack.
   *
   * @param at the limit, with what gives way and what moves; at a value below 0 the device does not
   *     hold even without the driving loads
   */
  record GivesWay(Limit.End.At at) implements Crossing {
    @Override
    public double multiple() {
      return Math.max(0, at.value());
    }
  }

  /** How sure it is that a check does not reach its limit at a lesser multiple. */
  enum Certainty {
    /** All forces grow in proportion to the driving loads, and so does what is demanded. */
    PROPORTIONAL("all forces grow in proportion to it"),
    /** Other loads act as well; the first crossing was looked for in steps. */
    BRACKETED("looked for in steps, since other loads act as well"),
    /** The limit does not depend on how large the loads are, only on their directions. */
    AT_ONCE("however small it is"),
    /** The limit is reached by the other loads alone. */
    ALREADY("reached without it");

    private final String words;

    Certainty(String words) {
      this.words = words;
    }

    /**
     * The certainty in words.
     *
     * @return a clause
     */
    public String words() {
      return words;
    }
  }
}
