package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.RandomDevices;
import bellcrank.statics.equilibrium.Rebuilt;
import bellcrank.statics.units.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The worked solution says what the solver says, for devices of any kind. */
class WorkedSolutionProperties {

  /** Beyond this condition rounding alone parts two ways of solving. */
  private static final double WELL_SHAPED = 1e5;

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.medium();
  }

  @Provide
  Arbitrary<Device> large() {
    return RandomDevices.mostlyHeld();
  }

  @Provide
  Arbitrary<Device> held() {
    return RandomDevices.few();
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void numbersAreThoseOfTheSolver(@ForAll("any") Device device) {
    Balance balance = balanced(device);
    WorkedSolution solution = WorkedSolution.of(balance);
    double scale = scale(balance);
    Set<Ask> open = new HashSet<>(balance.undetermined());
    for (Step.Result result : solution.results()) {
      Answer expected = balance.answer(result.ask());
      assertThat(expected instanceof Answer.Value)
          .as(result.ask().text())
          .isEqualTo(result.answer() instanceof Answer.Value);
      if (expected instanceof Answer.Value one && result.answer() instanceof Answer.Value other) {
        assertThat(other.si())
            .as(result.ask().text())
            .isCloseTo(one.si(), within(1e-8 * balance.condition() * scale));
      }
    }
    if (open.isEmpty()) {
      assertThat(solution.steps()).noneMatch(Step.Open.class::isInstance);
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void everyEquationHolds(@ForAll("any") Device device) {
    Balance balance = balanced(device);
    double scale = scale(balance) * (1 + device.size()) * balance.condition();
    for (Equation equation : WorkedSolution.of(balance).equations()) {
      // forces that statics leaves open may stand in equations in which they cancel together
      if (equation.terms().stream().anyMatch(term -> term.value().isEmpty())) {
        continue;
      }
      assertThat(equation.sum()).as(equation.toString()).isCloseTo(0, within(1e-9 * scale));
    }
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void largeHeldDevicesAreSolvedToo(@ForAll("large") Device device) {
    numbersAreThoseOfTheSolver(device);
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void asksNeedNoMoreThanAllForces(@ForAll("held") Device device) {
    Balance balance = balanced(device);
    int all = WorkedSolution.of(balance).equations().size();
    for (Ask ask : balance.components()) {
      WorkedSolution some = WorkedSolution.of(balance, List.of(ask));
      assertThat(some.equations().size()).as(ask.text()).isLessThanOrEqualTo(all);
      if (balance.answer(ask) instanceof Answer.Value expected) {
        assertThat(((Answer.Value) some.results().get(0).answer()).si())
            .as(ask.text())
            .isCloseTo(expected.si(), within(1e-8 * balance.condition() * scale(balance)));
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void whatIsFoundIsWhatTheSolverFinds(@ForAll("any") Device device) {
    Balance balance = balanced(device);
    for (Step.Found found : WorkedSolution.of(balance).found()) {
      Unknown unknown = found.unknown();
      // a mass or an intensity is found as a force, a two-force member by its pins
      if (unknown.kind() == Unknown.Kind.SOUGHT || unknown.asks().size() > 1) {
        continue;
      }
      Ask ask = unknown.asks().get(0);
      assertThat(found.si())
          .as(ask.text())
          .isCloseTo(
              balance.number(ask.text()).orElseThrow(),
              within(1e-8 * balance.condition() * scale(balance)));
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void orderOfPartsDoesNotMatter(@ForAll("any") Device device, @ForAll Random random) {
    Balance balance = balanced(device);
    WorkedSolution before = WorkedSolution.of(balance);
    WorkedSolution after = WorkedSolution.of(Balance.of(Rebuilt.shuffled(device, random)));
    assertThat(after.equations()).hasSameSizeAs(before.equations());
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void everyPrintedEquationCanBeWorkedOutAgain(@ForAll("held") Device device) {
    Balance balance = balanced(device);
    Assume.that(balance.redundancy() == 0);
    WorkedSolution solution = WorkedSolution.of(balance);
    for (UnitSystem units : List.of(UnitSystem.SI, UnitSystem.US)) {
      String text = SolutionWriter.of(Detail.FULL, units).text(solution);
      assertThat(PrintedEquations.check(text)).isGreaterThanOrEqualTo(solution.equations().size());
    }
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void whatMovesIsToldForWhateverDevice(@ForAll("any") Device device) {
    WorkedSolution solution = WorkedSolution.of(Balance.of(device));
    boolean moves = Balance.of(device).outcome() instanceof Outcome.NoBalance;
    assertThat(solution.steps()).isNotEmpty();
    if (moves) {
      assertThat(solution.steps()).anyMatch(Step.Moves.class::isInstance);
      for (Step step : solution.steps()) {
        if (step instanceof Step.NotMet unmet) {
          assertThat(Math.abs(unmet.equation().sum())).isPositive();
        }
      }
    }
  }

  private static Balance balanced(Device device) {
    Balance balance = Balance.of(device);
    Outcome outcome = balance.outcome();
    Assume.that(
        !(outcome instanceof Outcome.NoBalance) && !(outcome instanceof Outcome.NotDecided));
    Assume.that(balance.condition() < WELL_SHAPED);
    return balance;
  }

  private static double scale(Balance balance) {
    double scale = 1;
    for (Ask ask : balance.components()) {
      if (balance.answer(ask) instanceof Answer.Value value) {
        scale = Math.max(scale, Math.abs(value.si()));
      }
    }
    return scale;
  }
}
