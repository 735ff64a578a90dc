package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.strength.TravelCapacity;
import org.junit.jupiter.api.Test;

/** What is timed is the right answer: each worst pose is that of a capacity in one pose. */
class CapacityBenchmarkTest {

  @Test
  void everyWorstPoseIsThatOfItsOwnCapacity() {
    CapacityBenchmark benchmark = new CapacityBenchmark();
    TravelCapacity found = benchmark.found();

    assertThat(benchmark.concerns()).isTrue();
    assertThat(found.ranked()).hasSizeGreaterThan(20);
    for (TravelCapacity.Worst worst : found.ranked()) {
      Crossing.Used used = (Crossing.Used) worst.crossing();
      Capacity there = found.capacity(worst.drive());
      double multiple =
          there.ranked().stream()
              .filter(Crossing.Used.class::isInstance)
              .map(Crossing.Used.class::cast)
              .filter(one -> one.stated().part().equals(used.stated().part()))
              .filter(one -> one.stated().what().equals(used.stated().what()))
              .findFirst()
              .orElseThrow()
              .multiple();
      assertThat(worst.crossing().multiple()).isCloseTo(multiple, within(1e-9 * multiple));
    }
  }
}
