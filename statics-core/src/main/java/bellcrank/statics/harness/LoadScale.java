package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;

/**
 * The size that a zero is held against: that of the largest given load or weight of a strut, and
 * what follows from it and the device's size for other kinds of quantity.
 */
public final class LoadScale {

  private final double force;
  private final double size;
  private final double gravity;

  private LoadScale(double force, double size, double gravity) {
    this.force = force;
    this.size = size;
    this.gravity = gravity;
  }

  /**
   * The scale of the loads in the case of a balance.
   *
   * @param balance the balance
   * @return its scale
   */
  public static LoadScale of(Balance balance) {
    double size = balance.device().size();
    double force = 0;
    for (Load load : balance.device().loads()) {
      if (load instanceof Sought) {
        continue;
      }
      boolean turns = load instanceof Couple || load instanceof TorsionSpring;
      Answer answer = balance.answer(Ask.of(load.name(), turns ? Measure.COUPLE : Measure.SIZE));
      if (answer instanceof Answer.Value value) {
        force = Math.max(force, Math.abs(value.si()) / (turns ? size : 1));
      }
    }
    double gravity = balance.device().gravity().norm();
    for (Connection connection : balance.device().connections()) {
      if (connection instanceof Strut strut) {
        double weight = strut.mass() * gravity * balance.loadCase().factor(strut.name());
        force = Math.max(force, Math.abs(weight));
      }
    }
    return new LoadScale(force, size, gravity);
  }

  /**
   * This scale with a larger force in it.
   *
   * @param other a force in N, 0 or more
   * @return the scale of the larger one of both
   */
  public LoadScale withForce(double other) {
    return new LoadScale(Math.max(force, other), size, gravity);
  }

  /**
   * The size of a quantity of a kind.
   *
   * @param dimension the kind of quantity
   * @return in SI, 0 or more; 1 for a kind that no load tells
   */
  public double of(Dimension dimension) {
    return switch (dimension) {
      case FORCE -> force;
      case MOMENT, MOMENT_PER_ANGLE -> force * size;
      case LENGTH -> size;
      case MASS -> gravity > 0 ? force / gravity : 1;
      case FORCE_PER_LENGTH -> force / size;
      case PRESSURE -> force / (size * size);
      case AREA -> size * size;
      case SECTION_MODULUS -> size * size * size;
      case SECOND_MOMENT -> size * size * size * size;
      case FORCE_PER_VOLUME -> force / (size * size * size);
      case ANGLE, ACCELERATION, NUMBER -> 1;
    };
  }
}
