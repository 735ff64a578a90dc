package bellcrank.statics.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Points, vectors, directions, lines and displacements. */
class GeometryTest {

  private static final double CLOSE = 1e-14;

  @ParameterizedTest
  @CsvSource({
    "0, 1, 0",
    "1, 0, 1",
    "2, -1, 0",
    "3, 0, -1",
    "4, 1, 0",
    "-1, 0, -1",
    "-2, -1, 0",
    "101, 0, 1"
  })
  void quarterTurnsAreExact(int quarters, double x, double y) {
    assertThat(Direction.ofAngle(quarters * Math.PI / 2)).isEqualTo(new Direction(x, y));
    assertThat(Direction.ofAngle(Math.toRadians(90.0 * quarters))).isEqualTo(new Direction(x, y));
  }

  @Test
  void otherAnglesAreNot() {
    Direction thirty = Direction.ofAngle(Math.PI / 6);
    assertThat(thirty.x()).isCloseTo(Math.sqrt(3) / 2, within(CLOSE));
    assertThat(thirty.y()).isCloseTo(0.5, within(CLOSE));
    assertThat(thirty.angle()).isCloseTo(Math.PI / 6, within(CLOSE));
    assertThat(Direction.ofAngle(1e-9).y()).isEqualTo(1e-9);
    assertThat(Direction.ofAngle(Math.PI / 2 - 1e-9).x()).isCloseTo(1e-9, within(1e-15));
  }

  @Test
  void anglesRunFromZeroToAFullTurn() {
    assertThat(Direction.RIGHT.angle()).isZero();
    assertThat(Direction.UP.angle()).isEqualTo(Math.PI / 2);
    assertThat(Direction.LEFT.angle()).isEqualTo(Math.PI);
    assertThat(Direction.DOWN.angle()).isEqualTo(1.5 * Math.PI);
    assertThat(Direction.from(1, -1e-300).angle()).isLessThan(2 * Math.PI).isGreaterThan(6.28);
  }

  @Test
  void directionsHaveNeighbours() {
    assertThat(Direction.RIGHT.perpendicular()).isEqualTo(Direction.UP);
    assertThat(Direction.UP.perpendicular()).isEqualTo(Direction.LEFT);
    assertThat(Direction.UP.opposite()).isEqualTo(Direction.DOWN);
    assertThat(Direction.from(3, -4)).isEqualTo(new Direction(0.6, -0.8));
    assertThat(Direction.from(Vector.of(0, -7))).isEqualTo(Direction.DOWN);
    assertThat(Direction.from(Point.of(1, 1), Point.of(-4, 1))).isEqualTo(Direction.LEFT);
    assertThat(Direction.from(3, 4).times(10)).isEqualTo(Vector.of(6, 8));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-320, 1e-300, 1e-9, 1, 1e9, 1e300})
  void aDirectionIsAUnitVectorHoweverLongTheVector(double size) {
    Direction d = Direction.from(size, size);
    assertThat(Math.hypot(d.x(), d.y())).isCloseTo(1, within(CLOSE));
    assertThat(d.x()).isCloseTo(Math.sqrt(0.5), within(1e-3));
  }

  @Test
  void whatHasNoDirectionIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Direction.from(0, 0))
        .withMessage(
            "direction: expected a vector of finite length other than zero, got (0.0, 0.0)");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Direction.from(Double.MAX_VALUE, Double.MAX_VALUE))
        .withMessageContaining("finite length");
    assertThatIllegalArgumentException().isThrownBy(() -> Direction.from(Double.NaN, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Direction(0.6, 0.7))
        .withMessageContaining("components of a unit vector");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Direction.ofAngle(Double.NaN))
        .withMessage("angle: expected a finite number, got NaN");
  }

  @Test
  void coordinatesAreFinite() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Point.of(Double.NaN, 0))
        .withMessage("x: expected a finite number, got NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Point.of(0, Double.POSITIVE_INFINITY))
        .withMessage("y: expected a finite number, got Infinity");
    assertThatIllegalArgumentException().isThrownBy(() -> Vector.of(Double.NaN, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Vector.of(0, Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Frame.of(Vector.ZERO, Double.NEGATIVE_INFINITY))
        .withMessage("turn: expected a finite number, got -Infinity");
  }

  @Test
  void aNegativeZeroIsZero() {
    assertThat(Point.of(-0.0, -0.0)).isEqualTo(Point.ORIGIN);
    assertThat(Vector.of(-0.0, -0.0)).isEqualTo(Vector.ZERO);
    assertThat(new Direction(-0.0, 1)).isEqualTo(Direction.UP);
    assertThat(Frame.of(Vector.ZERO, -0.0)).isEqualTo(Frame.IDENTITY);
  }

  @Test
  void pointsAndVectorsAddUp() {
    Point p = Point.of(1, 2);
    Point q = Point.of(4, 6);
    assertThat(p.to(q)).isEqualTo(Vector.of(3, 4));
    assertThat(p.plus(Vector.of(3, 4))).isEqualTo(q);
    assertThat(p.distance(q)).isEqualTo(5);
    Vector v = Vector.of(3, 4);
    Vector w = Vector.of(-1, 2);
    assertThat(v.plus(w)).isEqualTo(Vector.of(2, 6));
    assertThat(v.minus(w)).isEqualTo(Vector.of(4, 2));
    assertThat(v.times(-2)).isEqualTo(Vector.of(-6, -8));
    assertThat(v.dot(w)).isEqualTo(5);
    assertThat(v.cross(w)).as("moment of w with arm v").isEqualTo(10);
    assertThat(v.norm()).isEqualTo(5);
    assertThat(v.perpendicular()).isEqualTo(Vector.of(-4, 3));
  }

  @Test
  void anArmIsPositiveIfTheForceTurnsCounterClockwise() {
    Line2 line = Line2.of(Point.of(3, 7), Direction.UP);
    assertThat(line.arm(Point.ORIGIN)).isEqualTo(3);
    assertThat(line.arm(Point.of(5, -2))).isEqualTo(-2);
    assertThat(Line2.of(Point.of(3, 7), Direction.DOWN).arm(Point.ORIGIN)).isEqualTo(-3);
    assertThat(line.arm(Point.of(3, 100))).isZero();
  }

  @Test
  void linesCrossUnlessParallel() {
    Line2 upright = Line2.of(Point.of(3, 7), Direction.UP);
    Line2 sloping = Line2.of(Point.of(0, 1), Direction.from(1, 1));
    assertThat(upright.crossing(sloping))
        .hasValueSatisfying(p -> assertThat(p.distance(Point.of(3, 4))).isLessThan(CLOSE));
    assertThat(sloping.crossing(upright))
        .hasValueSatisfying(p -> assertThat(p.distance(Point.of(3, 4))).isLessThan(CLOSE));
    assertThat(upright.crossing(Line2.of(Point.ORIGIN, Direction.DOWN))).isEmpty();
    assertThat(sloping.crossing(Line2.of(Point.ORIGIN, Direction.from(-7, -7)))).isEmpty();
    assertThat(upright.crossing(upright)).isEmpty();
  }

  @Test
  void aFrameTurnsThenShifts() {
    Frame frame = Frame.of(Vector.of(10, 20), Math.PI / 2);
    assertThat(frame.apply(Point.of(1, 0)).distance(Point.of(10, 21))).isLessThan(CLOSE);
    assertThat(frame.apply(Direction.RIGHT).angle()).isCloseTo(Math.PI / 2, within(CLOSE));
    assertThat(Frame.IDENTITY.apply(Point.of(3, -4))).isEqualTo(Point.of(3, -4));
    assertThat(Frame.IDENTITY.apply(Direction.DOWN)).isEqualTo(Direction.DOWN);
  }

  @Test
  void aTurnAboutAPointLeavesIt() {
    Point centre = Point.of(2, -5);
    Frame frame = Frame.turnAbout(centre, 1.1);
    assertThat(frame.apply(centre).distance(centre)).isLessThan(1e-14);
    Point moved = frame.apply(Point.of(3, -5));
    assertThat(moved.x()).isCloseTo(2 + Math.cos(1.1), within(CLOSE));
    assertThat(moved.y()).isCloseTo(-5 + Math.sin(1.1), within(CLOSE));
  }

  @Test
  void displacementsFollowOneAnother() {
    Frame first = Frame.turnAbout(Point.of(1, 2), 0.4);
    Frame second = Frame.of(Vector.of(-3, 1), -1.3);
    Point p = Point.of(0.7, -0.2);
    assertThat(first.then(second).apply(p).distance(second.apply(first.apply(p))))
        .isLessThan(1e-14);
    assertThat(first.then(second).turn()).isCloseTo(-0.9, within(CLOSE));
    assertThat(Frame.IDENTITY.then(first)).isEqualTo(first);
  }
}
