package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.drawing.HistogramDrawing.Bin;
import bellcrank.statics.drawing.HistogramDrawing.Kind;
import bellcrank.statics.drawing.HistogramDrawing.Mark;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Histograms, measured in the picture. */
final class HistogramDrawingTest {

  private static final List<Bin> SOME =
      List.of(
          new Bin(1000, 1250, 3),
          new Bin(1250, 1500, 12),
          new Bin(1500, 1750, 8),
          new Bin(1750, 2000, 0));

  private static HistogramDrawing some() {
    return HistogramDrawing.of("force of the ram", Dimension.FORCE, SOME);
  }

  private static List<Element> groups(Picture picture, String css) {
    return picture.all("g").stream()
        .filter(group -> group.getAttribute("class").equals(css))
        .toList();
  }

  private static List<Double> drawn(Element group) {
    return Picture.numbers(
        ((Element) group.getElementsByTagName("path").item(0)).getAttribute("d"));
  }

  @Test
  void barsAreAsHighAsTheirCountsAndAsWideAsTheirRanges() {
    Picture picture = Picture.of(some().svg()).isWellMade();
    double perSi = picture.number("data-units-per-si");
    double perCount = picture.number("data-units-per-count");
    List<Element> bins = groups(picture, "bin");
    assertThat(bins).hasSize(4);
    double left = drawn(bins.get(0)).get(0);
    for (int k = 0; k < 4; k++) {
      List<Double> box = drawn(bins.get(k));
      Bin bin = SOME.get(k);
      assertThat(Long.parseLong(bins.get(k).getAttribute("data-count"))).isEqualTo(bin.count());
      assertThat(box.get(0) - left).isCloseTo((bin.from() - 1000) * perSi, within(2e-3));
      assertThat(box.get(2) - box.get(0)).isCloseTo(250 * perSi, within(2e-3));
      assertThat(box.get(5) - box.get(1)).isCloseTo(bin.count() * perCount, within(2e-3));
    }
    assertThat(picture.texts())
        .contains("1000 N", "1200 N", "2000 N", "23 values in 4 bars, the highest 12");
    assertThat(picture.text("desc")).contains("23 values from 1000 N to 2000 N.");
  }

  @Test
  void marksStandAtTheirValuesAndAreTold() {
    Picture picture =
        Picture.of(
                some()
                    .with(new Mark(Kind.SHARE, 1100, "5 %", "5 % of the samples lie below"))
                    .with(new Mark(Kind.STATED, 1400, "as stated", "without tolerances"))
                    .with(new Mark(Kind.TARGET, 2400, "most", "not to be exceeded"))
                    .withNote("2 samples have no balance")
                    .svg())
            .isWellMade();
    double perSi = picture.number("data-units-per-si");
    double left = drawn(groups(picture, "bin").get(0)).get(0);
    List<Element> marks = groups(picture, "mark");
    assertThat(marks).hasSize(3);
    for (Element mark : marks) {
      double value = Double.parseDouble(mark.getAttribute("data-value"));
      assertThat(drawn(mark).get(0) - left).isCloseTo((value - 1000) * perSi, within(2e-3));
    }
    assertThat(marks)
        .extracting(mark -> ((Element) mark.getFirstChild()).getAttribute("class"))
        .containsExactly("action", "path-of", "limit-line");
    assertThat(picture.texts())
        .contains("5 %", "as stated", "most")
        .contains("5 %: 5 % of the samples lie below, 1100 N")
        .contains("2 samples have no balance");
    assertThat(picture.text("desc"))
        .contains("most: not to be exceeded, 2400 N.")
        .contains("2 samples have no balance");
  }

  @Test
  void marksInOnePlaceKeepTheirLabelsApart() {
    HistogramDrawing drawing = some();
    for (int k = 0; k < 12; k++) {
      drawing = drawing.with(new Mark(Kind.SHARE, 1500 + k, 10 * k + " %", "a share"));
    }
    Picture.of(drawing.svg()).isWellMade();
  }

  @Test
  void unitsAreChosen() {
    Picture picture = Picture.of(some().withUnits(UnitSystem.US).svg()).isWellMade();
    assertThat(picture.texts()).contains("250 lbf", "300 lbf", "400 lbf");
  }

  @Test
  void plainNumbersAndNarrowRangesAreRead() {
    Picture picture =
        Picture.of(
                HistogramDrawing.of(
                        "factor", Dimension.NUMBER, List.of(new Bin(1.00001, 1.00003, 0)))
                    .svg())
            .isWellMade();
    assertThat(picture.texts()).contains("1.00001", "1.000015", "1.00003");
  }

  @Test
  void namesAreNoMarkup() {
    Picture picture =
        Picture.of(
                HistogramDrawing.of("a < b & c", Dimension.FORCE, SOME)
                    .with(new Mark(Kind.TARGET, 1500, "<most>", "\"&\""))
                    .svg())
            .isWellMade();
    assertThat(picture.text("title")).isEqualTo("a < b & c");
    assertThat(picture.texts()).contains("<most>");
  }

  @Test
  void manyBarsFit() {
    List<Bin> bins = new ArrayList<>();
    for (int k = 0; k < 200; k++) {
      bins.add(new Bin(k, k + 1, (long) (1e6 * Math.exp(-Math.pow((k - 100) / 30.0, 2)))));
    }
    Picture.of(HistogramDrawing.of("many", Dimension.LENGTH, bins).svg()).isWellMade();
  }

  @Test
  void mistakesAreRefused() {
    assertThatThrownBy(() -> HistogramDrawing.of("none", Dimension.FORCE, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least one");
    assertThatThrownBy(
            () ->
                HistogramDrawing.of(
                    "gap", Dimension.FORCE, List.of(new Bin(0, 1, 2), new Bin(1.5, 2, 2))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("bin 2");
    assertThatThrownBy(() -> new Bin(1, 1, 2)).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> new Bin(0, Double.NaN, 2)).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> new Bin(0, 1, -1)).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> new Mark(Kind.SHARE, Double.NaN, "", ""))
        .isInstanceOf(ModelException.class);
  }
}
