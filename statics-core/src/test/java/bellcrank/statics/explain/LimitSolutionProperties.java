package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.RandomContacts;
import bellcrank.statics.limits.Range;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What a solution says of limits is what the limits say, and its printed equations hold. */
class LimitSolutionProperties {

  @Provide
  Arbitrary<Device> contacts() {
    return RandomContacts.any();
  }

  @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
  void theVerdictIsTold(@ForAll("contacts") Device device) {
    Limits limits = Limits.of(device);
    WorkedSolution solution = WorkedSolution.of(limits);
    Verdict verdict = limits.verdict();
    assertThat(solution.steps())
        .filteredOn(Step.Judged.class::isInstance)
        .singleElement()
        .satisfies(
            step -> assertThat(((Step.Judged) step).verdict().words()).isEqualTo(verdict.words()));
    for (Step step : solution.steps()) {
      if (step instanceof Step.Margin margin && verdict instanceof Verdict.Holds) {
        // within the rounding of the limits, which are not sharper than 1e-9 of the loads
        assertThat(Math.abs(margin.frictionForce()))
            .isLessThanOrEqualTo(margin.coefficient() * margin.normalForce() + 1e-5);
      }
    }
    boolean fixed =
        limits.balance().redundancy() == 0
            && !(limits.balance().outcome() instanceof Outcome.NoBalance)
            && limits.balance().condition() < 1e4;
    String text = SolutionWriter.of(Detail.FULL, UnitSystem.SI).text(solution);
    if (fixed) {
      assertThat(PrintedEquations.check(text)).isGreaterThanOrEqualTo(solution.equations().size());
    }
  }

  private static Device lever(double radius, double mu, double arm, double angle, Vector load) {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("grip", arm, 0.1)
        .point("ram", -0.3, 0)
        .member("lever", "ram", "hinge", "grip")
        .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), radius, mu))
        .force("load", "lever", "ram", load)
        .sought("effort", "lever", "grip", Direction.ofAngle(angle))
        .build();
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void dryLeversAreWorkedAtBothEnds(
      @ForAll @DoubleRange(min = 0.01, max = 0.05) double radius,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double mu,
      @ForAll @DoubleRange(min = 0.3, max = 2) double arm,
      @ForAll @DoubleRange(min = -3.1, max = 3.1) double angle,
      @ForAll @DoubleRange(min = -300, max = 300) double x,
      @ForAll @DoubleRange(min = -300, max = 300) double y) {
    double perUnit = arm * Math.sin(angle) - 0.1 * Math.cos(angle);
    Assume.that(Math.abs(perUnit) > 3 * radius && Math.hypot(x, y) > 10);
    Limits limits = Limits.of(lever(radius, mu, arm, angle, Vector.of(x, y)));
    Range range = limits.range("effort").orElseThrow();
    for (boolean greatest : List.of(true, false)) {
      Optional<WorkedSolution> worked =
          WorkedSolution.atLimit(limits, "effort", greatest, List.of(Ask.parse("hinge.size")));
      OptionalDouble end = greatest ? range.greatest() : range.least();
      double found = ((Answer.Value) worked.orElseThrow().results().get(0).answer()).si();
      assertThat(found)
          .isCloseTo(end.orElseThrow(), within(1e-5 * (Math.hypot(x, y) + Math.abs(found))));
      String text = SolutionWriter.of(Detail.FULL, UnitSystem.SI).text(worked.get());
      assertThat(PrintedEquations.check(text)).isPositive();
    }
  }
}
