package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.drawing.CapacityDrawing.Bar;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Checks;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Bars of what is used, measured in the picture. */
final class CapacityDrawingTest {

  private static final List<Bar> SOME =
      List.of(
          new Bar("stay", "working load limit", 1.3, ""),
          new Bar("jib", "column", 0.6, "gives at 1.667 times the load"),
          new Bar("heel", "shear of the pin", 0, ""));

  private static List<Element> bars(Picture picture) {
    return picture.all("g").stream().filter(group -> group.hasAttribute("data-part")).toList();
  }

  private static List<Double> drawn(Element bar) {
    return Picture.numbers(((Element) bar.getElementsByTagName("path").item(0)).getAttribute("d"));
  }

  private static double length(Element bar) {
    List<Double> x = drawn(bar);
    return x.get(2) - x.get(0);
  }

  @Test
  void barsAreAsLongAsWhatIsUsed() {
    Picture picture = Picture.of(CapacityDrawing.of("loft jib", SOME).svg()).isWellMade();
    double whole = picture.number("data-units-per-whole");
    assertThat(bars(picture)).hasSize(3);
    for (int i = 0; i < 3; i++) {
      Element bar = bars(picture).get(i);
      assertThat(bar.getAttribute("data-part")).isEqualTo(SOME.get(i).part());
      assertThat(bar.getAttribute("data-check")).isEqualTo(SOME.get(i).what());
      assertThat(Double.parseDouble(bar.getAttribute("data-utilisation")))
          .isEqualTo(SOME.get(i).utilisation());
      assertThat(length(bar)).isCloseTo(whole * SOME.get(i).utilisation(), within(2e-3));
    }
    Element limit =
        picture.all("path").stream()
            .filter(path -> path.getAttribute("class").equals("limit-line"))
            .findFirst()
            .orElseThrow();
    double start = drawn(bars(picture).get(0)).get(0);
    List<Double> line = Picture.numbers(limit.getAttribute("d"));
    assertThat(line.get(0) - start).isCloseTo(whole, within(2e-3));
    assertThat(line.get(0)).isEqualTo(line.get(2));
  }

  @Test
  void beyondTheLimitIsToldWithoutColour() {
    Picture picture = Picture.of(CapacityDrawing.of("loft jib", SOME).svg());
    assertThat(bars(picture))
        .extracting(bar -> bar.getAttribute("class"))
        .containsExactly("used over", "used", "used");
    assertThat(bars(picture).get(0).getElementsByTagName("path").getLength()).isEqualTo(2);
    assertThat(bars(picture).get(1).getElementsByTagName("path").getLength()).isEqualTo(1);
    assertThat(picture.texts())
        .contains("stay: working load limit – 130.0 %, beyond the limit")
        .contains("dashed and hatched: beyond the limit");
    assertThat(picture.text("title")).isEqualTo("loft jib");
    assertThat(picture.text("desc"))
        .contains("jib: column: 60.0 %, gives at 1.667 times the load.")
        .contains("stay: working load limit: 130.0 %, beyond the limit.");
  }

  @Test
  void barsThatWouldLeaveThePictureAreTorn() {
    List<Bar> far =
        List.of(
            new Bar("chain", "working load limit", Double.POSITIVE_INFINITY, ""),
            new Bar("stay", "working load limit", 40, ""),
            new Bar("jib", "column", 0.5, ""));
    Picture picture = Picture.of(CapacityDrawing.of("far", far).svg()).isWellMade();
    double whole = picture.number("data-units-per-whole");
    assertThat(bars(picture))
        .extracting(bar -> bar.getAttribute("data-torn"))
        .containsExactly("true", "true", "");
    assertThat(bars(picture).get(0).hasAttribute("data-utilisation")).isFalse();
    assertThat(length(bars(picture).get(1))).isCloseTo(2 * whole, within(2e-3));
    assertThat(picture.texts()).anyMatch(text -> text.contains("4000.0 %"));
  }

  @Test
  void smallBarsLeaveTheLimitInThePicture() {
    Picture picture =
        Picture.of(CapacityDrawing.of("light", List.of(new Bar("a", "b", 0.01, ""))).svg())
            .isWellMade();
    assertThat(picture.texts()).contains("0 %", "50 %", "100 %").doesNotContain("150 %");
  }

  @Test
  void checksAndCapacityOfADeviceAreDrawn() {
    Device jib = Yard.jib();
    // the stay carries 1000 N
    Sizing sizing = Sizing.of(Method.ALLOWABLE).with(Rating.of("stay", 2500, "invented"));
    Checks checks = Checks.of(Balance.of(jib), sizing);
    CapacityDrawing stated = CapacityDrawing.of("wall jib", checks);
    assertThat(stated.bars()).hasSize(1);
    assertThat(stated.bars().get(0).utilisation()).isCloseTo(0.4, within(1e-12));
    Picture.of(stated.svg()).isWellMade();
    Capacity capacity = Capacity.of(jib, sizing, new Variation.Multiple(List.of("barrel")));
    CapacityDrawing growing = CapacityDrawing.of("wall jib", capacity);
    assertThat(growing.bars())
        .extracting(Bar::note)
        .containsExactly("gives at 2.500 times the load");
    assertThat(growing.bars().get(0).utilisation()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void whatIsNotCheckedIsTold() {
    NotChecked open = new NotChecked("winch", "section", "it has no section");
    Picture picture =
        Picture.of(CapacityDrawing.of("jib", SOME).withNotChecked(List.of(open)).svg())
            .isWellMade();
    assertThat(picture.texts()).contains("not checked: winch, section: it has no section");
    assertThat(picture.text("desc")).contains("not checked: winch");
  }

  @Test
  void mistakesAreRefused() {
    assertThatThrownBy(() -> CapacityDrawing.of("nothing", List.of()))
        .isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> new Bar("jib", "column", -0.1, "")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> new Bar("jib", "column", Double.NaN, ""))
        .isInstanceOf(ModelException.class);
  }
}
