package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Drive;
import java.util.Optional;

/**
 * What is wanted of a model: a number that can be found for every model alike. The case is named,
 * not given, since its factors may be numbers that are studied.
 */
public sealed interface Figure {

  /**
   * The answer to an ask, as drawn. Where parts of the device are one-sided or rough, or the ask is
   * about them, limits answer, else the balance does.
   *
   * @param ask what is asked; a case that it names comes before the other
   * @param loadCase name of the case; empty for the first
   */
  record OfAsk(Ask ask, Optional<String> loadCase) implements Figure {}

  /**
   * The multiple of the driving loads at which the first check reaches its limit or the device
   * gives way as they grow; without a sizing only the latter counts. It is 0 where the device does
   * not hold even without them. A device that holds only with some of them is looked at from there
   * on.
   *
   * @param driving the loads that grow
   * @param loadCase name of the case; empty for the first
   */
  record FirstFailure(Variation.Multiple driving, Optional<String> loadCase) implements Figure {}

  /**
   * How far a device with one freedom can go: greatest less least value of its drive.
   *
   * @param drive what drives it
   * @param least least value looked at, at most 0: rad or m from the drawn pose
   * @param greatest greatest value looked at, at least 0
   * @param loadCase name of the case under which lines go slack and contacts lift; empty for the
   *     first
   */
  record Stroke(Drive drive, double least, double greatest, Optional<String> loadCase)
      implements Figure {}

  /**
   * The answer to an ask under its own case, or else the first.
   *
   * @param ask what is asked
   * @return the figure
   */
  static Figure of(Ask ask) {
    return new OfAsk(ask, Optional.empty());
  }

  /**
   * The answer to an ask under a case.
   *
   * @param ask what is asked; a case that it names comes before the other
   * @param loadCase name of the case
   * @return the figure
   */
  static Figure of(Ask ask, String loadCase) {
    return new OfAsk(ask, Optional.of(loadCase));
  }

  /**
   * The answer to an ask.
   *
   * @param ask text of the ask
   * @return the figure
   * @throws bellcrank.statics.device.ModelException if the text is no ask
   */
  static Figure parse(String ask) {
    return of(Ask.parse(ask));
  }

  /**
   * The multiple at which the device first fails, under its first case.
   *
   * @param driving the loads that grow
   * @return the figure
   */
  static Figure firstFailure(Variation.Multiple driving) {
    return new FirstFailure(driving, Optional.empty());
  }

  /**
   * What it comes to for a model.
   *
   * @param model the model
   * @return the number, or why there is none
   * @throws bellcrank.statics.device.ModelException if it names what the model does not have, or
   *     the ask is not answered by a number
   */
  default FigureAnswer of(Model model) {
    return new FigureFinder(model).answer(this);
  }

  /**
   * Name of the case that it is about.
   *
   * @param device the device
   * @return the case that the ask names, else the one stated beside it, else the first
   * @throws bellcrank.statics.device.ModelException if there is no such case
   */
  default LoadCase loadCase(Device device) {
    return FigureFinder.loadCase(this, device);
  }

  /**
   * The figure in words, as a text without units.
   *
   * @return of an ask its text, which can be read again
   */
  default String text() {
    return FigureFinder.text(this);
  }
}
