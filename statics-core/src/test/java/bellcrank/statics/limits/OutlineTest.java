package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.units.Dimension;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Outlines of two forces whose states are made up here. */
class OutlineTest {

  private static final LinearAsks.Form X = form(0);
  private static final LinearAsks.Form Y = form(1);

  private int asked;

  private static LinearAsks.Form form(int column) {
    return new LinearAsks.Form(Goal.force(column, 1, 2), 0, Dimension.FORCE, Optional.empty());
  }

  /** An outline of states of which one is farthest each way. */
  private Outline outline(Function<Vector, Point> farthest) {
    return Outline.of(
        X,
        Y,
        goal -> {
          asked++;
          Vector way = Vector.of(goal.at(new double[] {1, 0}), goal.at(new double[] {0, 1}));
          Point at = farthest.apply(way);
          double[] forces = {at.x(), at.y()};
          return Extreme.found(goal.at(forces), 0, forces, 0);
        });
  }

  @Test
  void aTriangleIsFoundCornerByCorner() {
    List<Point> corners = List.of(Point.of(1, 1), Point.of(4, 1), Point.of(1, 5));
    Outline triangle =
        outline(
            way ->
                corners.stream()
                    .max(Comparator.comparingDouble(one -> Point.ORIGIN.to(one).dot(way)))
                    .orElseThrow());

    assertThat(triangle.isOpen()).isFalse();
    assertThat(triangle.nearest()).isCloseTo(Math.sqrt(2), within(1e-12));
    assertThat(triangle.farthest().orElseThrow()).isCloseTo(Math.sqrt(26), within(1e-12));
    assertThat(triangle.directions().orElseThrow().from())
        .isCloseTo(Math.atan2(1, 4), within(1e-12));
    assertThat(triangle.directions().orElseThrow().to()).isCloseTo(Math.atan2(5, 1), within(1e-12));
    assertThat(asked).isLessThan(20);
  }

  /** However near two corners are, rounding finds one more that seems to stand out between them. */
  @Test
  void anOutlineOfForcesThatAreRoundingComesToAnEnd() {
    Outline rounding =
        outline(way -> Point.ORIGIN.plus(way.times(1e-16 * (1 + 1e-3 * asked) / way.norm())));

    assertThat(asked).isLessThan(2000);
    assertThat(rounding.isOpen()).isFalse();
    assertThat(rounding.farthest().orElseThrow()).isLessThan(1e-15);
    assertThat(rounding.nearest()).isLessThan(1e-15);
  }
}
