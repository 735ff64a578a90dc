package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Labels find room. */
final class LabelPlacerTest {

  @Test
  void manyLabelsOfOnePointDoNotOverlap() {
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      List<String> lines = ForceLabels.lines("a name " + "long ".repeat(i % 9), "123.4 N");
      labels.add(ForceLabels.round(lines, "force-name", Point.ORIGIN, 5));
    }
    List<PlacedLabel> placed = new LabelPlacer(List.of()).place(labels);
    assertThat(placed).hasSize(120);
    for (int i = 0; i < placed.size(); i++) {
      for (int k = 0; k < i; k++) {
        assertThat(placed.get(i).box().overlaps(placed.get(k).box())).isFalse();
      }
    }
    assertThat(placed.get(0).hasLeader()).isFalse();
    assertThat(placed.get(119).hasLeader()).isTrue();
  }

  @Test
  void aLabelKeepsOffAShaftWhereItCan() {
    Arrow arrow = new Arrow(Point.of(0, 0), Point.of(0, 80));
    Obstacle shaft = new Obstacle(arrow.tail(), arrow.tip(), 3);
    Label label = ForceLabels.beside(List.of("stay", "912.4 N"), arrow, arrow.tail());
    PlacedLabel placed = new LabelPlacer(List.of(shaft)).place(List.of(label)).get(0);
    assertThat(placed.box().lengthInside(arrow.tail(), arrow.tip())).isZero();
  }

  @Test
  void longNamesAreBrokenAtBlanksOrAnywhere() {
    assertThat(TextWidth.lines("short")).containsExactly("short");
    assertThat(TextWidth.lines("a picking ladder that leans on boards"))
        .containsExactly("a picking ladder that", "leans on boards");
    assertThat(TextWidth.lines("x".repeat(50)))
        .containsExactly("x".repeat(24), "x".repeat(24), "xx");
    // a character of two units is not torn apart
    assertThat(TextWidth.lines("\uD83C\uDF4E".repeat(25)))
        .containsExactly("\uD83C\uDF4E".repeat(24), "\uD83C\uDF4E");
    // a mark stays with its letter
    assertThat(TextWidth.lines("e\u0301".repeat(30)).get(1)).startsWith("e");
  }

  @Test
  void clippingTellsHowMuchOfALineIsInside() {
    Room box = new Room(0, 0, 10, 10);
    assertThat(box.lengthInside(Point.of(-5, 5), Point.of(15, 5))).isEqualTo(10);
    assertThat(box.lengthInside(Point.of(5, 5), Point.of(5, 25))).isEqualTo(5);
    assertThat(box.lengthInside(Point.of(-5, -1), Point.of(15, -1))).isZero();
    assertThat(box.lengthInside(Point.of(11, 0), Point.of(20, 0))).isZero();
    assertThat(box.lengthInside(Point.of(3, 3), Point.of(3, 3))).isZero();
  }
}
