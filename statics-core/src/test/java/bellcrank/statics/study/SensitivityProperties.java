package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.RandomDevices;
import bellcrank.statics.limits.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;

/** Exact rates against differences of neighbouring answers, on random devices. */
class SensitivityProperties {

  private static final Map<String, Integer> SEEN = new TreeMap<>();

  @AfterContainer
  static void all() {
    System.out.println(SEEN);
  }

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.small();
  }

  @Property(tries = 500)
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
    count(effect, figure);
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

  private static void count(Effect effect, Figure figure) {
    Measure measure = ((Figure.OfAsk) figure).ask().measure();
    SEEN.merge(effect.how() + " " + (effect.how() == Effect.How.SOLVED ? "" : measure), 1, Integer::sum);
  }

  @Provide
  Arbitrary<Integer> pick() {
    return net.jqwik.api.Arbitraries.integers().between(0, 100_000);
  }
}
