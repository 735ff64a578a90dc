package bellcrank.statics.limits;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The results of a {@link SideTip} in plain words. */
public final class SideTipWords {

  private static final int DIGITS = 3;

  private final SideTip tip;
  private final UnitSystem units;

  private SideTipWords(SideTip tip, UnitSystem units) {
    this.tip = tip;
    this.units = units;
  }

  /**
   * The words of a side tip.
   *
   * @param tip the side tip
   * @param units units of what is told
   * @return its words
   */
  public static SideTipWords of(SideTip tip, UnitSystem units) {
    return new SideTipWords(tip, units);
  }

  /**
   * Whether it stands.
   *
   * @return such as {@code sideways it holds}
   */
  public String verdict() {
    Verdict verdict = tip.verdict();
    String words = "sideways it " + (verdict instanceof Verdict.Impending ? "is " : "");
    if (verdict instanceof Verdict.DoesNotHold not) {
      return words + verdict.words() + ": " + how(not.how());
    }
    return verdict instanceof Verdict.Impending impending
        ? words + verdict.words() + ": " + how(impending.how())
        : words + verdict.words();
  }

  /**
   * How far all sideways effects may grow.
   *
   * @return a sentence without full stop
   */
  public String margin() {
    return multiples("all sideways effects together", tip.margin());
  }

  /**
   * How far one level force may grow.
   *
   * @param load name of a load with a level force
   * @return a sentence without full stop
   * @throws ModelException if there is no such load or it has no level force
   */
  public String margin(String load) {
    Limit margin = tip.margin(load);
    OptionalDouble greatest = tip.greatestForce(load);
    String size =
        greatest.isPresent()
            ? ", which is "
                + units.format(Math.abs(greatest.getAsDouble()), Dimension.FORCE, DIGITS)
                + (greatest.getAsDouble() < 0 ? " to the left" : " to the right")
            : "";
    return multiples("the level force of " + load, margin) + size;
  }

  private String multiples(String what, Limit limit) {
    if (!(limit instanceof Limit.Between between)) {
      return limit instanceof Limit.NotDecided open
          ? "how far " + what + " may grow is not decided: " + open.why()
          : "it stands at no multiple of " + what;
    }
    if (between.greatest() instanceof Limit.End.At at) {
      String times = units.format(at.value(), Dimension.NUMBER, DIGITS).strip();
      return at.value() < 0
          ? "it would stand at " + times + " times " + what + ", acting the other way"
          : what + " may be " + times + " times what is stated until " + how(at.how());
    }
    return what + " may grow without limit";
  }

  /**
   * How far the device may lean to one side.
   *
   * @param towards the side
   * @return a sentence without full stop
   */
  public String lean(SideEdge towards) {
    return reach(
        "leaning to the " + towards.word() + " on its flat base", tip.greatestLean(towards));
  }

  /**
   * How far the ground may fall to one side.
   *
   * @param towards the side
   * @return a sentence without full stop
   */
  public String slope(SideEdge towards) {
    return reach("on ground that falls to the " + towards.word(), tip.greatestSlope(towards));
  }

  private String reach(String what, SideReach reach) {
    if (reach instanceof SideReach.At at) {
      return what
          + " it gives way at "
          + units.format(at.angle(), Dimension.ANGLE, DIGITS)
          + ": "
          + how(at.how());
    }
    return reach instanceof SideReach.Never
        ? what + " it does not stand at any angle, not at 0 either"
        : what + " it stands at any angle";
  }

  /**
   * The breadth of base that would be needed.
   *
   * @param factor multiple of all sideways effects, 0 or more
   * @return a sentence without full stop
   * @throws ModelException if the factor is negative or not finite
   */
  public String breadth(double factor) {
    OptionalDouble needed = tip.breadthNeeded(factor);
    String effects =
        factor == 1
            ? "the stated sideways effects"
            : units.format(factor, Dimension.NUMBER, DIGITS).strip()
                + " times the stated sideways effects";
    if (needed.isEmpty()) {
      return "no breadth of the base would do for " + effects + ": it slides or is lifted";
    }
    return needed.getAsDouble() == 0
        ? "for " + effects + " a base of any breadth would do"
        : "for "
            + effects
            + " the base has to be at least "
            + units.format(needed.getAsDouble(), Dimension.LENGTH, DIGITS)
            + " broad";
  }

  /**
   * What this estimate does not know.
   *
   * @return a sentence without full stop
   */
  public String caution() {
    return "an estimate for rigid parts and static loads: swinging, gusts, soft ground and bent"
        + " parts are not in it";
  }

  /**
   * All results, the caution last.
   *
   * @return sentences without full stop
   */
  public List<String> all() {
    List<String> all = new ArrayList<>(List.of(verdict(), margin()));
    for (SideLoad load : tip.view().loads()) {
      if (load.side() != 0) {
        all.add(margin(load.name()));
      }
    }
    for (SideEdge edge : SideEdge.values()) {
      all.add(lean(edge));
      all.add(slope(edge));
    }
    all.add(breadth(1));
    all.add(caution());
    return List.copyOf(all);
  }

  private String how(GivingWay how) {
    return how.words(tip.device(), units);
  }
}
