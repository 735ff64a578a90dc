package bellcrank.statics.limits;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.equilibrium.internal.LoadGroup;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.LoadNumbers;
import bellcrank.statics.limits.internal.PartBounds;
import bellcrank.statics.limits.internal.Travel;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Goes through many poses and tells in each the greatest value of a variation, as {@link
 * Limits#greatest} would there. Where all conditions are linear and loads are multiplied, it
 * allocates nothing beside what the library of linear programs does; elsewhere the answers are the
 * same, but slower. It changes as it moves and is for one thread at a time.
 *
 * <pre>{@code
 * LimitSweep sweep = Limits.of(ladder).sweep(Variation.of("picker"));
 * for (Pose pose : poses) {
 *   sweep.moveTo(pose);
 *   double most = sweep.isTold() ? sweep.greatest() : 0;
 * }
 * }</pre>
 */
public final class LimitSweep {

  private final Limits limits;
  private final Variation variation;
  private final Optional<Run> run;
  private boolean told;
  private double greatest;

  LimitSweep(
      Limits limits, Variation variation, Pose pose, Admissible admissible, FrictionLevel level) {
    this.limits = limits;
    this.variation = variation;
    new Travels(limits.device(), limits.loadCase(), pose, admissible.space()).of(variation);
    run =
        admissible
            .linear(level)
            .map(parts -> new Run(limits, variation, admissible.space().at(pose), parts));
    find(pose);
  }

  /**
   * Goes to another pose.
   *
   * @param pose where the bodies are; it must fit the connections
   */
  public void moveTo(Pose pose) {
    Run linear = run.orElse(null);
    if (linear != null) {
      linear.moveTo(pose);
    }
    find(pose);
  }

  private void find(Pose pose) {
    Run linear = run.orElse(null);
    if (linear != null) {
      told = linear.find(pose);
      greatest = linear.sheet.number();
    } else {
      OptionalDouble found = limits.at(pose).greatest(variation);
      told = found.isPresent();
      greatest = found.orElse(0);
    }
  }

  /**
   * Whether there is a greatest value here.
   *
   * @return false if the device holds at no value of what is varied, or that was not decided
   */
  public boolean isTold() {
    return told;
  }

  /**
   * The greatest value here.
   *
   * @return a multiple, or a distance in m; infinite if it holds however large
   * @throws ModelException if there is none here
   */
  public double greatest() {
    if (!told) {
      throw new ModelException(
          limits.device().name(),
          "pose",
          "one without a greatest value",
          "a pose in which isTold() is true");
    }
    return greatest;
  }

  /** Forces, loads and a sheet for programs, moved from pose to pose. */
  private static final class Run {

    private final Limits limits;
    private final Variation variation;
    private final ForceSpace space;
    private final LoadNumbers numbers;
    private final LoadNumbers.Sheet sheet;
    private final LoadGroup fixed;
    private final LoadGroup varied;

    Run(Limits limits, Variation variation, ForceSpace space, PartBounds parts) {
      this.limits = limits;
      this.variation = variation;
      this.space = space;
      numbers = LoadNumbers.of(space, parts);
      sheet = new LoadNumbers.Sheet(numbers);
      Set<String> names =
          variation instanceof Variation.Multiple multiple
              ? multiple.varied(limits.device())
              : Set.of();
      fixed = space.group(limits.loadCase(), name -> !names.contains(name));
      varied = space.group(limits.loadCase(), names::contains);
    }

    void moveTo(Pose pose) {
      space.moveTo(pose);
      numbers.moved();
    }

    boolean find(Pose pose) {
      double[] staying = fixed.rightSide();
      double[] varying = varied.rightSide();
      double least = Double.NEGATIVE_INFINITY;
      double most = Double.POSITIVE_INFINITY;
      if (variation instanceof Variation.Place) {
        Travel travel = new Travels(limits.device(), limits.loadCase(), pose, space).of(variation);
        staying = travel.fixed();
        varying = travel.varied();
        least = travel.least();
        most = travel.greatest();
      }
      double size = fixed.scale() + varied.scale();
      return sheet.find(staying, varying, least, most, size > 0 ? size : 1, 1);
    }
  }
}
