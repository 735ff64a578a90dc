package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is timed is the right answer: the worst sample is that of a model of its own. */
class SamplingBenchmarkTest {

  @Test
  void allSamplesHoldAndTheWorstIsThatOfItsOwnModel() {
    SamplingBenchmark benchmark = new SamplingBenchmark();
    Figure hand = Figure.parse("hand");
    for (Samples samples : List.of(benchmark.samples(), benchmark.samplesInTwoThreads())) {
      assertThat(samples.done()).isEqualTo(SamplingBenchmark.SAMPLES);
      assertThat(samples.outcomes()).singleElement().matches(one -> one.what().equals("holds"));
      var greatest = samples.figure(hand).greatest().orElseThrow();
      List<Input> inputs = samples.uncertain().stream().map(Uncertain::input).toList();
      Model worst = Input.put(Model.of(SampleDevices.derrick()), inputs, greatest.inputs());
      assertThat(hand.of(worst).number().orElseThrow()).isEqualTo(greatest.si());
    }
    assertThat(benchmark.balance().words()).isEqualTo("in balance");
  }
}
