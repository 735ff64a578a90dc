package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.limits.RandomContacts;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Rates of limits against differences of neighbouring limits, on random devices with contacts. */
class LimitSensitivityProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Provide
  Arbitrary<Integer> pick() {
    return Arbitraries.integers().between(0, 100_000);
  }

  @Property(tries = 200)
  void ratesOfLimitsAreThoseOfDifferences(
      @ForAll("any") Device device, @ForAll("pick") int inputPick, @ForAll("pick") int askPick) {
    Model model = Model.of(device);
    List<Input> inputs = AllInputs.of(device);
    List<Ask> asks = asks(device);
    for (int k = 0; k < 4; k++) {
      Figure figure = Figure.of(asks.get(Math.floorMod(askPick + 31 * k, asks.size())));
      Input input = inputs.get(Math.floorMod(inputPick + 17 * k, inputs.size()));
      if (figure.of(model) instanceof FigureAnswer.Is stated) {
        compare(model, input, figure, stated.si());
      }
    }
  }

  private static List<Ask> asks(Device device) {
    List<Ask> all = new ArrayList<>();
    all.add(Ask.parse("greatest multiple(push)"));
    all.add(Ask.parse("least multiple(push)"));
    all.add(Ask.parse("friction factor"));
    for (Connection connection : device.connections()) {
      if (!connection.kind().equals("screw")) {
        all.add(Ask.of(connection.name(), Measure.X).greatest());
        all.add(Ask.of(connection.name(), Measure.Y).least());
      }
    }
    return all;
  }

  private static void compare(Model model, Input input, Figure figure, double stated) {
    Effect effect = new EffectFinder(model, figure).effect(input);
    if (effect.how() != Effect.How.AT_LIMIT) {
      return;
    }
    double below = side(model, input, figure, stated, effect.value(), -1);
    double above = side(model, input, figure, stated, effect.value(), 1);
    double exactBelow =
        effect.change() instanceof Effect.Change.Kinked kinked
            ? kinked.below()
            : effect.rate().orElseThrow();
    double exactAbove =
        effect.change() instanceof Effect.Change.Kinked kinked
            ? kinked.above()
            : effect.rate().orElseThrow();
    String what = figure.text() + " = " + stated + " by " + input + " of " + model.device();
    near(what + " below", exactBelow, below, stated);
    near(what + " above", exactAbove, above, stated);
  }

  /** Two steps that do not agree are no measure. */
  private static double side(
      Model model, Input input, Figure figure, double stated, double value, int sense) {
    double far = quotient(model, input, figure, stated, value, 1e-5 * sense);
    double near = quotient(model, input, figure, stated, value, 2e-6 * sense);
    double size = Math.max(Math.max(1, Math.abs(stated)), Math.abs(near));
    return Math.abs(far - near) < 3e-4 * size ? near : Double.NaN;
  }

  private static double quotient(
      Model model, Input input, Figure figure, double stated, double value, double h) {
    try {
      double once = figure.of(input.put(model, value + h)).number().orElse(Double.NaN);
      double twice = figure.of(input.put(model, value + 2 * h)).number().orElse(Double.NaN);
      // of second order at one side
      return (4 * once - twice - 3 * stated) / (2 * h);
    } catch (bellcrank.statics.device.ModelException cannotBe) {
      return Double.NaN;
    }
  }

  private static void near(String what, double exact, double differences, double stated) {
    if (Double.isNaN(differences)) {
      return;
    }
    double size =
        Math.max(Math.max(Math.abs(exact), Math.abs(differences)), Math.max(1, Math.abs(stated)));
    assertThat(Math.abs(exact - differences) / size)
        .as(what + ": " + exact + " against " + differences)
        .isLessThan(1e-3);
  }
}
