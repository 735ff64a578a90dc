package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.study.SearchAnswer.Found;
import bellcrank.statics.study.SearchAnswer.Infeasible;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** No place that is tried at random is better than what a search has found. */
class DimensionSearchProperties {

  private static final Figure TENSION = Figure.parse("stay.tension");
  private static final Figure LENGTH = Figure.parse("stay.length");
  private static final Figure HINGE = Figure.parse("heel.x on jib");

  /** A slanted jib with a stay to a mast, and two loads. */
  private static Device jib(Random random) {
    return Device.named("jib")
        .point("heel", 0, 0)
        .point("eye", 1.2, 0.4 + random.nextDouble())
        .point("tip", 2.5, 1)
        .point("mast", -0.2, 2.5)
        .member("jib", "heel", "eye", "tip")
        .pin("heel", "heel", "jib", "ground")
        .strut("stay", End.of("jib", "eye"), End.of("ground", "mast"))
        .force("barrel", "jib", "tip", Vector.of(0, -200 - 800 * random.nextDouble()))
        .force("wind", "jib", "eye", Vector.of(200 * random.nextDouble() - 100, 0))
        .build();
  }

  @Property(tries = 12)
  void nothingTriedIsBetter(@ForAll long seed) {
    Random random = new Random(seed);
    Model model = Model.of(jib(random));
    List<Free> free =
        List.of(
            new Free(Input.x("eye"), 0.5, 2.4),
            new Free(Input.y("mast"), 1.5, 4),
            new Free(Input.x("mast"), -1.5, 0.4));
    double most = 300 + 2500 * random.nextDouble();
    double longest = 1.8 + random.nextDouble();
    List<Goal> goals =
        List.of(
            Goal.atMost(TENSION, new Quantity(most, Dimension.FORCE)),
            Goal.between(
                LENGTH,
                new Quantity(1, Dimension.LENGTH),
                new Quantity(longest, Dimension.LENGTH)));
    SearchAnswer answer = DimensionSearch.of(model, free, goals).greatest(HINGE);
    double found =
        answer instanceof Found is
            ? ((FigureAnswer.Is) is.wanted().orElseThrow().answer()).si()
            : Double.NaN;
    double missed =
        answer instanceof Infeasible none
            ? none.goals().stream().mapToDouble(SearchAnswer.Outcome::missedBy).max().orElseThrow()
            : 0;
    assertThat(answer instanceof Found || missed > 0).isTrue();
    for (int k = 0; k < 3000; k++) {
      List<Double> values = free.stream().map(one -> one.at(random.nextDouble())).toList();
      Model other = Input.put(model, free.stream().map(Free::input).toList(), values);
      double tension = TENSION.of(other).number().orElse(Double.MAX_VALUE);
      double length = LENGTH.of(other).number().orElse(Double.MAX_VALUE);
      if (tension <= most && length >= 1 && length <= longest) {
        assertThat(answer).isInstanceOf(Found.class);
        double hinge = HINGE.of(other).number().orElseThrow();
        assertThat(hinge).isLessThanOrEqualTo(found + 1e-6 * Math.abs(found));
      }
    }
  }
}
