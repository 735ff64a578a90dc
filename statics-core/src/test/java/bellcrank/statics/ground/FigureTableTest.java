package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import org.junit.jupiter.api.Test;

/** How a table is read from its text, with figures of an invented orchard. */
class FigureTableTest {

  private static final String FIGURES =
      """
      @source notes of the press house
      @note for oak
      lid | FORCE | 2 kN to 3 kN
      @memory
      trough | LENGTH | 1.5 m | - | 40 kPa
      @source notes of the orchard
      ladder | NUMBER | 4
      """;

  private static final Dimension PRESSURE = Dimension.PRESSURE;

  private static FigureTable<FigureLine> lines() {
    return FigureTable.of("notes", FIGURES, line -> line);
  }

  @Test
  void aRowHasTheSourceAndNoteAboveIt() {
    FigureTable<CitedValue> notes = FigureTable.of("notes", FIGURES, FigureLine::cited);
    String house = "notes of the press house";
    assertThat(notes.rows())
        .containsExactly(
            new CitedValue(
                "lid", Span.of(2000, 3000), Dimension.FORCE, house, Basis.PRINTED, "for oak"),
            new CitedValue(
                "trough", Span.of(1.5), Dimension.LENGTH, house, Basis.FROM_MEMORY, "for oak"),
            new CitedValue(
                "ladder", Span.of(4), Dimension.NUMBER, "notes of the orchard", Basis.PRINTED, ""));
    assertThat(notes.named("lid")).isSameAs(notes.rows().get(0));
  }

  @Test
  void aCellMayBeEmptyOrMissing() {
    FigureLine trough = lines().named("trough");
    assertThat(trough.name()).isEqualTo("trough");
    assertThat(trough.ifGiven(3, PRESSURE)).isEmpty();
    assertThat(trough.ifGiven(4, PRESSURE)).contains(Span.of(40e3));
    assertThat(trough.ifGiven(5, PRESSURE)).isEmpty();
    assertThat(trough.ifGiven(6, PRESSURE)).isEmpty();
  }

  @Test
  void theOnlyRowNearIsSaidAlone() {
    FigureTable<String> one = FigureTable.of("notes", "lid | 1", FigureLine::name);
    assertThatThrownBy(() -> one.named("lod"))
        .isInstanceOf(ModelException.class)
        .hasMessage("notes: row is \"lod\"; wanted: \"lid\"");
  }

  @Test
  void theNamesThatShareMostWordsAreSaid() {
    String text = "old oak lid\nold ash lid\nnew oak trough\nan elm";
    FigureTable<String> names = FigureTable.of("notes", text, FigureLine::name);
    assertThatThrownBy(() -> names.named("OAK of the LID"))
        .hasMessage(
            "notes: row is \"OAK of the LID\"; wanted: \"old oak lid\" or one of the 3 other rows");
    assertThatThrownBy(() -> names.named("some small oak"))
        .hasMessage(
            "notes: row is \"some small oak\"; wanted: \"old oak lid\", \"new oak trough\" or one"
                + " of the 2 other rows");
    // words of one or two letters say nothing
    assertThatThrownBy(() -> names.named("an, an, an"))
        .hasMessageContaining(
            "wanted: \"old oak lid\", \"old ash lid\", \"new oak trough\", \"an elm\"")
        .hasMessageEndingWith("\"an elm\"");
  }
}
