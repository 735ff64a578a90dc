package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.RandomDevices;
import bellcrank.statics.equilibrium.Similarity;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.study.internal.BalanceRates;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Exact rates against differences of neighbouring answers, on random devices. */
class SensitivityProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.small();
  }

  @Property(tries = 150)
  void exactRatesAreThoseOfDifferences(
      @ForAll("any") Device device, @ForAll("pick") int inputPick, @ForAll("pick") int askPick) {
    Balance balance = Balance.of(device);
    if (!(balance.outcome() instanceof Outcome.InBalance) || balance.condition() > 1e4) {
      return;
    }
    Model model = Model.of(device);
    List<Input> inputs = AllInputs.of(device);
    List<Ask> asks = new ArrayList<>(Ask.all(device));
    for (Member member : device.members()) {
      for (Bar bar : member.bars()) {
        double length = device.point(bar.start()).distance(device.point(bar.end()));
        for (Measure force : List.of(Measure.NORMAL, Measure.SHEAR, Measure.MOMENT)) {
          Ask ask = Ask.of(member.name(), force);
          asks.add(ask.atDistance(0.37 * length, bar.start(), bar.end()));
          asks.add(ask.atDistance(0.21 * length, bar.end(), bar.start()));
        }
      }
    }
    for (int k = 0; k < 12; k++) {
      Ask ask = asks.get(Math.floorMod(askPick + 31 * k, asks.size()));
      if (Limits.decide(ask) || !(balance.answer(ask) instanceof Answer.Value stated)) {
        continue;
      }
      Input input = inputs.get(Math.floorMod(inputPick + 17 * k, inputs.size()));
      compare(model, input, Figure.of(ask), stated.si());
    }
  }

  private static void compare(Model model, Input input, Figure figure, double stated) {
    Effect effect = new EffectFinder(model, figure).effect(input);
    String what = figure.text() + " by " + input + " of " + model.device();
    if (effect.how() != Effect.How.SOLVED
        || !(effect.change() instanceof Effect.Change.Smooth smooth)) {
      return;
    }
    double step = 0.003 * model.device().size();
    Effect.Change other =
        new Differences(model, figure, input, effect.value(), stated, step).find();
    if (other instanceof Effect.Change.Smooth differences) {
      double size = Math.max(Math.abs(differences.rate()), Math.abs(stated) / 10);
      assertThat(Math.abs(smooth.rate() - differences.rate()) / Math.max(size, 1e-3))
          .as(what + ": " + smooth.rate() + " against " + differences.rate())
          .isLessThan(1e-6);
    }
  }

  /** Seen in a mirror, turned, enlarged and shifted, sizes of forces change as before. */
  @Property(tries = 80)
  void axesAndLengthsDoNotMatter(@ForAll("any") Device device, @ForAll("pick") int pick) {
    Balance balance = Balance.of(device);
    // what counts along the horizontal does not turn
    boolean level =
        device.loads().stream()
            .anyMatch(
                one ->
                    one instanceof SpreadLoad spread && spread.per() == SpreadLoad.Per.HORIZONTAL);
    if (!(balance.outcome() instanceof Outcome.InBalance) || balance.condition() > 1e4 || level) {
      return;
    }
    // of large and nearly dependent forces more than that is rounding
    double forces = BalanceRates.of(device, device.cases().get(0)).scale();
    double rounding = 1e-13 * forces * balance.condition();
    Similarity seen = new Similarity(pick % 2 == 0, 0.7, 2.5, Vector.of(3, -2), 1);
    Device other = seen.of(device);
    List<Input> inputs =
        AllInputs.of(device).stream()
            .filter(one -> one.text().matches("(distance|mass|size|efficiency) of .*"))
            .toList();
    for (Connection connection : device.connections()) {
      Figure figure = Figure.of(Ask.of(connection.name()));
      if (inputs.isEmpty() || figure.of(Model.of(device)).number().isEmpty()) {
        continue;
      }
      Input input = inputs.get(pick % inputs.size());
      Effect here = new EffectFinder(Model.of(device), figure).effect(input);
      Effect there = new EffectFinder(Model.of(other), figure).effect(input);
      if (here.how() == Effect.How.SOLVED && here.rate().isPresent()) {
        double length = input.text().startsWith("distance") ? 2.5 : 1;
        double rate = there.rate().orElseThrow() * length;
        assertThat(rate)
            .as(figure.text() + " by " + input)
            .isCloseTo(
                here.rate().getAsDouble(),
                within(Math.max(rounding, 1e-8 * Math.max(1, 100 * Math.abs(rate)))));
      }
    }
  }

  @Provide
  Arbitrary<Integer> pick() {
    return net.jqwik.api.Arbitraries.integers().between(0, 100_000);
  }
}
