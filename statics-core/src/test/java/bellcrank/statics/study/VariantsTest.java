package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.Variants.Cell;
import bellcrank.statics.study.Variants.Compared;
import bellcrank.statics.study.Variants.Mark;
import bellcrank.statics.study.Variants.Variant;
import bellcrank.statics.study.Variants.Wish;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Variants side by side. */
class VariantsTest {

  private static Model mast(double peg, boolean stayed) {
    DeviceBuilder builder =
        Device.named("mast")
            .point("foot", 0, 0)
            .point("head", 0, 3)
            .point("peg", peg, 0)
            .member("mast", "foot", "head")
            .pin("foot", "foot", "mast", "ground")
            .strut("stay", End.of("mast", "head"), End.of("ground", "peg"))
            .force("pull", "mast", "head", Vector.of(300, 0));
    return Model.of(
        stayed ? builder.build() : builder.clamp("stump", "foot", "mast", "ground").build());
  }

  @Test
  void differencesAreMarked() {
    Variants table =
        Variants.of(
            List.of(
                new Variant("near", mast(-3, true)),
                new Variant("nearer", mast(-1.25, true)),
                new Variant("far", mast(-4, true))),
            List.of(
                new Compared(Figure.parse("stay.tension"), Wish.LESS),
                new Compared(Figure.parse("stay.length"), Wish.NEITHER),
                new Compared(Figure.parse("foot.x on mast"), Wish.MORE)));
    assertThat(table.names()).containsExactly("near", "nearer", "far");
    List<Cell> tension = table.rows().get(0).cells();
    assertThat(tension).extracting(Cell::mark).containsExactly(Mark.NONE, Mark.WORST, Mark.BEST);
    assertThat(tension.get(0).differs()).isFalse();
    assertThat(tension.get(0).words()).isEmpty();
    // 300·3.25/1.25 = 780 and 300·√2 = 424.26
    assertThat(tension.get(1).change().orElseThrow())
        .isCloseTo(780 / (300 * Math.sqrt(2)) - 1, within(1e-9));
    assertThat(tension.get(1).words()).contains("+83.8 %");
    assertThat(tension.get(2).words()).contains("−11.6 %");
    assertThat(table.rows().get(1).cells())
        .extracting(Cell::mark)
        .containsExactly(Mark.NONE, Mark.LEAST, Mark.GREATEST);
    assertThat(table.rows().get(2).differs()).isFalse();
    assertThat(table.rows().get(2).cells()).extracting(Cell::mark).containsOnly(Mark.NONE);
  }

  @Test
  void whatHasNoNumberDiffersAndIsNoWorse() {
    Variants table =
        Variants.of(
            List.of(
                new Variant("pinned", mast(-3, true)), new Variant("built in", mast(-3, false))),
            List.of(new Compared(Figure.parse("stay.tension"), Wish.LESS)));
    Variants.Row row = table.rows().get(0);
    assertThat(row.differs()).isTrue();
    assertThat(row.cells()).extracting(Cell::mark).containsOnly(Mark.NONE);
    assertThat(row.cells().get(1).change()).isEmpty();
    assertThat(row.cells().get(1).words()).isEqualTo(Optional.empty());
    assertThat(row.cells().get(1).answer()).isInstanceOf(FigureAnswer.None.class);
  }

  /** A crate that is pulled along the floor: μ·G/P times the pull moves it; behind a bolt none. */
  private static Model crate(double pull, boolean bolted) {
    DeviceBuilder builder =
        Device.named("crate")
            .gravity(Vector.of(0, -10))
            .point("foot", 0, 0)
            .member("crate", "foot")
            .connect(new ContactBase("floor", "foot", "crate", "ground", Direction.UP, 1, 0.4, 0.4))
            .weight("own weight", "crate", "foot", 50)
            .force("pull", "crate", "foot", Vector.of(pull, 0));
    return Model.of((bolted ? builder.clamp("bolt", "foot", "crate", "ground") : builder).build());
  }

  @Test
  void whatHasNoEndIsMoreThanAnyNumber() {
    Figure failure = Figure.firstFailure(Variation.of("pull"));
    List<Variant> variants =
        List.of(
            new Variant("hard pull", crate(100, false)),
            new Variant("soft pull", crate(50, false)),
            new Variant("bolted", crate(100, true)));
    for (Wish wish : Wish.values()) {
      List<Cell> cells =
          Variants.of(variants, List.of(new Compared(failure, wish))).rows().get(0).cells();
      assertThat(cells.get(0).answer().number().orElseThrow()).isCloseTo(2, within(1e-9));
      assertThat(cells.get(2).answer().number()).isEmpty();
      assertThat(cells)
          .extracting(Cell::mark)
          .containsExactly(
              switch (wish) {
                case LESS -> new Mark[] {Mark.BEST, Mark.NONE, Mark.WORST};
                case MORE -> new Mark[] {Mark.WORST, Mark.NONE, Mark.BEST};
                case NEITHER -> new Mark[] {Mark.LEAST, Mark.NONE, Mark.GREATEST};
              });
    }
  }

  @Test
  void mistakes() {
    Variant one = new Variant("one", mast(-3, true));
    assertThatThrownBy(() -> Variants.of(List.of(one), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least two");
    assertThatThrownBy(() -> Variants.of(List.of(one, one), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("differ");
  }
}
