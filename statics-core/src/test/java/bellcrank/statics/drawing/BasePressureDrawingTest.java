package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Pressures under bases, measured in the pictures. Values by hand. */
final class BasePressureDrawingTest {

  private static final double WIDTH = 0.4;

  /** A crate of 540 N on a base, pushed at a height of 0.9 m. */
  private static Device crate(double push) {
    return Device.named("apple crate")
        .point("floor", 0, 0)
        .point("edge", -0.2, 0.9)
        .member("crate", "floor", "edge")
        .connect(new ContactBase("floor", "floor", "crate", "ground", Direction.UP, WIDTH, 1, 1))
        .force("weight", "crate", "floor", Vector.of(0, -540))
        .force("lean", "crate", "edge", Vector.of(push, 0))
        .build();
  }

  /** Area of a polygon, in units of the sheet, and its centroid. */
  private record Measured(double area, Point centroid) {
    static Measured of(List<Double> path) {
      double twice = 0;
      double x = 0;
      double y = 0;
      int corners = path.size() / 2;
      for (int i = 0; i < corners; i++) {
        int k = (i + 1) % corners;
        double cross =
            path.get(2 * i) * path.get(2 * k + 1) - path.get(2 * k) * path.get(2 * i + 1);
        twice += cross;
        x += (path.get(2 * i) + path.get(2 * k)) * cross;
        y += (path.get(2 * i + 1) + path.get(2 * k + 1)) * cross;
      }
      return new Measured(Math.abs(twice) / 2, Point.of(x / (3 * twice), y / (3 * twice)));
    }
  }

  private static List<Element> pressures(Picture picture) {
    return picture.all("g").stream().filter(group -> group.hasAttribute("data-pressure")).toList();
  }

  private static List<Double> path(List<Element> among, String css) {
    return Picture.numbers(
        among.stream()
            .filter(path -> path.getAttribute("class").equals(css))
            .findFirst()
            .orElseThrow()
            .getAttribute("d"));
  }

  @ParameterizedTest
  @CsvSource({
    "0, trapezoid, 1350",
    // e = 0.05 m: 540 / 0.4 · (1 + 6 · 0.05 / 0.4)
    "30, trapezoid, 2362.5",
    "-30, trapezoid, 2362.5",
    // e = 1/12 m: 2 · 540 / (3 · (0.2 − 1/12))
    "50, triangle, 3085.714286",
    "-50, triangle, 3085.714286"
  })
  void theStripHasTheNormalForceAsAreaAndItsOffsetAsCentroid(
      double push, String shape, double greatest) {
    Picture picture = Picture.of(FreeBodyDrawing.of(Balance.of(crate(push))).svg()).isWellMade();
    assertThat(pressures(picture)).hasSize(1);
    Element strip = pressures(picture).get(0);
    assertThat(strip.getAttribute("data-shape")).isEqualTo(shape);
    assertThat(Double.parseDouble(strip.getAttribute("data-greatest")))
        .isCloseTo(greatest, within(1e-5));
    List<Double> foot = path(picture.all("path"), "ground-line");
    Point start = Point.of(foot.get(0), foot.get(1));
    Point end = Point.of(foot.get(2), foot.get(3));
    double scale = start.distance(end) / WIDTH;
    Measured measured = Measured.of(path(picture.all("path"), "area"));
    double force = measured.area() / scale / picture.number("data-units-per-newton-per-metre");
    assertThat(force).isCloseTo(540, within(0.1));
    double offset = (measured.centroid().x() - (start.x() + end.x()) / 2) / scale;
    assertThat(offset).isCloseTo(push * 0.9 / 540, within(1e-4));
    // the ground is below
    assertThat(measured.centroid().y()).isGreaterThan(start.y());
    assertThat(picture.text("desc")).contains("Pressure under floor: a " + shape);
  }

  @Test
  void theForceIsStillTheOneArrow() {
    Picture picture = Picture.of(FreeBodyDrawing.of(Balance.of(crate(50))).svg()).isToScale();
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("floor", "weight", "lean");
  }

  @Test
  void theGreatestValueIsAPressureWhereTheLengthIsKnown() {
    FreeBodyDrawing drawing = FreeBodyDrawing.of(Balance.of(crate(30)));
    assertThat(Picture.of(drawing.svg()).texts()).contains("up to 2363 N/m");
    Picture known =
        Picture.of(drawing.withGround(List.of(Foundation.of("floor", 0.5))).svg()).isWellMade();
    assertThat(known.texts()).contains("up to 4725 Pa");
    assertThat(known.text("desc")).contains("up to 4725 Pa");
  }

  @ParameterizedTest
  @CsvSource({"120, 0.2", "-120, -0.2"})
  void aForceOnTheEdgeIsAnEdgeLoad(double push, double edge) {
    Picture picture = Picture.of(FreeBodyDrawing.of(Balance.of(crate(push))).svg()).isWellMade();
    Element load = pressures(picture).get(0);
    assertThat(load.getAttribute("data-shape")).isEqualTo("edge");
    assertThat(Double.parseDouble(load.getAttribute("data-x"))).isCloseTo(edge, within(1e-9));
    assertThat(Double.parseDouble(load.getAttribute("data-normal"))).isCloseTo(540, within(1e-9));
    List<Double> wedge = path(picture.all("path"), "wedge");
    List<Double> foot = path(picture.all("path"), "ground-line");
    assertThat(wedge.get(0))
        .isCloseTo(
            edge > 0 ? Math.max(foot.get(0), foot.get(2)) : Math.min(foot.get(0), foot.get(2)),
            within(2e-3));
    assertThat(picture.texts()).contains("on the edge");
  }

  @Test
  void theOtherBodyIsPressedFromItsOwnSide() {
    Device stack =
        Device.named("two crates")
            .point("floor", 0, 0)
            .point("seat", 0, 0.5)
            .point("top", 0, 1)
            .member("low", "floor", "seat")
            .member("high", "seat", "top")
            .connect(new ContactBase("floor", "floor", "low", "ground", Direction.UP, 0.6, 1, 1))
            .connect(new ContactBase("seat", "seat", "high", "low", Direction.UP, 0.4, 1, 1))
            .force("weight", "high", "top", Vector.of(30, -300))
            .build();
    Picture low =
        Picture.of(FreeBodyDrawing.of(Balance.of(stack), List.of("low")).svg()).isWellMade();
    assertThat(pressures(low)).hasSize(2);
    Element seat =
        pressures(low).stream()
            .filter(one -> one.getAttribute("data-pressure").equals("seat"))
            .findFirst()
            .orElseThrow();
    Element area = (Element) seat.getElementsByTagName("path").item(0);
    List<Double> corners = Picture.numbers(area.getAttribute("d"));
    // it lies above the low crate
    assertThat(Measured.of(corners).centroid().y()).isLessThan(corners.get(1));
    Picture both = Picture.of(FreeBodyDrawing.of(Balance.of(stack)).svg()).isWellMade();
    assertThat(pressures(both)).hasSize(1);
  }

  @Test
  void nothingIsPressedWithoutBalanceOrForce() {
    Device tipping = crate(200);
    assertThat(pressures(Picture.of(FreeBodyDrawing.of(Balance.of(tipping)).svg()))).isEmpty();
  }

  @Test
  void groundUnderNoBaseIsRefused() {
    FreeBodyDrawing drawing = FreeBodyDrawing.of(Balance.of(crate(30)));
    List<Foundation> elsewhere = List.of(Foundation.of("wall", 0.5));
    assertThatThrownBy(() -> drawing.withGround(elsewhere))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("contact base");
  }
}
