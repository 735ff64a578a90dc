package bellcrank.examples.report;

import bellcrank.examples.file.WinchPlan;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.motion.Drum;
import bellcrank.statics.motion.HandWinch;
import bellcrank.statics.motion.Handle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a winch does on a line of the device.
 *
 * @param pull pull in the line in N; empty if it is not told, or the line would have to push
 * @param why it is not told; empty text if it is
 * @param layers the layers of the drum
 * @param haul what hauling in the stated length takes by hand, with the same pull all the way
 */
record WinchAnswer(
    OptionalDouble pull, String why, List<Layer> layers, Optional<HandWinch.Haul> haul) {

  /**
   * A layer of the drum.
   *
   * @param number 1 on the bare drum
   * @param radius mean radius in m
   * @param holds line on the drum up to this layer in m
   * @param perCycle line for a turn or stroke in m
   * @param force the hand's force for the pull, or the pull that the winch has there, in N
   */
  record Layer(int number, double radius, double holds, double perCycle, OptionalDouble force) {}

  static WinchAnswer of(WinchPlan plan, CaseSolution solution) {
    Answer answer = solution.answer(plan.hauls());
    boolean pulls = answer instanceof Answer.Value value && value.si() >= 0;
    OptionalDouble pull =
        pulls ? OptionalDouble.of(((Answer.Value) answer).si()) : OptionalDouble.empty();
    String why =
        answer instanceof Answer.Unanswered none
            ? none.explanation()
            : pulls ? "" : "it is negative, and a line can only pull";
    List<Layer> layers = new ArrayList<>();
    for (int k = 1; k <= plan.layers(); k++) {
      layers.add(layer(plan, k, pull));
    }
    Optional<HandWinch.Haul> haul =
        plan.hand().isPresent() && plan.length().isPresent() && pull.isPresent()
            ? Optional.of(
                plan.hand()
                    .get()
                    .haul(pull.getAsDouble(), plan.wound(), plan.length().orElseThrow()))
            : Optional.empty();
    return new WinchAnswer(pull, why, List.copyOf(layers), haul);
  }

  private static Layer layer(WinchPlan plan, int number, OptionalDouble pull) {
    Drum drum = plan.drum();
    double perCycle =
        plan.hand()
            .map(hand -> hand.lengthPerCycle(number))
            .orElse(2 * Math.PI * drum.radius(number));
    OptionalDouble force = OptionalDouble.empty();
    if (plan.firstPull().isPresent()) {
      force = OptionalDouble.of(drum.pullFromFirst(number, plan.firstPull().get()));
    } else if (pull.isPresent()) {
      double hand = plan.hand().orElseThrow().handForce(number, pull.getAsDouble());
      force = OptionalDouble.of(hand);
    }
    return new Layer(number, drum.radius(number), drum.lengthOf(number), perCycle, force);
  }

  /** The last layer on which a stated pull is enough; 0 if none. */
  int lastStrongLayer() {
    int last = 0;
    for (Layer layer : layers) {
      if (layer.force().orElse(0) >= pull.orElse(Double.POSITIVE_INFINITY)) {
        last = layer.number();
      }
    }
    return last;
  }

  /** What one cycle of a handle is called. */
  static String cycle(Handle handle) {
    return handle instanceof Handle.Lever ? "stroke" : "turn";
  }
}
