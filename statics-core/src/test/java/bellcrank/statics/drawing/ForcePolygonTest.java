package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Forces tip to tail. */
final class ForcePolygonTest {

  @Test
  void theForcesOfABalanceClose() {
    ForcePolygon polygon = ForcePolygon.of(Balance.of(Yard.jib()), List.of("jib"));
    assertThat(polygon.closes()).isTrue();
    Picture picture = Picture.of(polygon.svg()).isWellMade().isToScale();
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("barrel", "stay", "heel");
    Vector sum =
        picture.forces().stream().map(Picture.Shown::drawn).reduce(Vector.ZERO, Vector::plus);
    assertThat(sum.norm()).isLessThan(1e-2);
    assertThat(picture.text("desc")).contains("The polygon closes.");
  }

  @Test
  void parallelForcesLieBesideOneAnother() {
    Picture picture =
        Picture.of(ForcePolygon.of(Balance.of(Yard.press())).svg()).isWellMade().isToScale();
    assertThat(picture.forces()).hasSize(3);
  }

  @Test
  void openForcesLeaveAGap() {
    ForcePolygon polygon = ForcePolygon.of(Balance.of(Yard.bench()));
    assertThat(polygon.closes()).isFalse();
    Picture picture = Picture.of(polygon.svg()).isWellMade();
    assertThat(picture.texts()).contains("not closed", "?");
    assertThat(picture.text("desc")).contains("The polygon does not close.");
  }

  @Test
  void componentsAndSpreadLoadsAreSides() {
    ForcePolygon polygon =
        ForcePolygon.of(Balance.of(Yard.tongs())).with(DrawingOptions.USUAL.withComponents());
    assertThat(polygon.freeBody().whole()).isTrue();
    assertThat(Picture.of(polygon.svg()).isWellMade().isToScale().forces()).hasSize(5);
  }

  @Test
  void nothingIsAPolygonToo() {
    Device loose = Device.named("loose").point("a", 0, 0).member("stone", "a").build();
    Picture picture = Picture.of(ForcePolygon.of(Balance.of(loose)).svg()).isWellMade();
    assertThat(picture.forces()).isEmpty();
  }
}
