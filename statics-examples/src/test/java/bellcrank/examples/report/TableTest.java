package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TableTest {

  private static Table table() {
    return new Table()
        .column("part", Table.Kind.WORDS)
        .column("force", Table.Kind.NUMBERS)
        .column("what it does", Table.Kind.WORDS);
  }

  @Test
  void columnsAreAsWideAsTheirWidestCell() {
    Table table = table();
    table.row(List.of("stay", "12.34", "pulls"));
    table.row(List.of("long prop", "1", "pushes"));
    assertThat(table.lines(40))
        .containsExactly(
            "part       force  what it does",
            "stay       12.34  pulls       ",
            "long prop      1  pushes      ");
  }

  @Test
  void theWidestWordsAreBrokenWhereThereIsNoRoom() {
    Table table = table();
    table.row(List.of("the long prop of the gate", "12.34", "pushes"));
    assertThat(table.lines(32))
        .containsExactly(
            "part         force  what it does",
            "the long     12.34  pushes      ",
            "prop of the                     ",
            "gate                            ");
  }

  @Test
  void noWordIsCutWhileOtherColumnsCanBeNarrowed() {
    Table table = new Table().column("answer", Table.Kind.WORDS).column("tall", Table.Kind.WORDS);
    table.row(List.of("topping.tension", "1164 N, −7.7 %, best"));
    assertThat(table.lines(28))
        .containsExactly(
            "answer           tall       ",
            "topping.tension  1164 N,    ",
            "                 −7.7 %,    ",
            "                 best       ");
  }

  @Test
  void aNumberKeepsItsUnit() {
    assertThat(Wrapping.lines("between 0.00 % and 12.5 kN·m at 3 m of it", 13))
        .containsExactly("between", "0.00 % and", "12.5 kN·m at", "3 m of it");
    assertThat(Wrapping.lines("in 100 made of 12 kinds", 8))
        .containsExactly("in 100", "made of", "12 kinds");
  }

  @Test
  void wordsThatAreTooLongAreCut() {
    Table table = table();
    table.row(List.of("Klappladenwindenseil", "12.34", "pushes"));
    assertThat(table.lines(28))
        .containsExactly(
            "part          force  what it",
            "                     does   ",
            "Klappladenwi  12.34  pushes ",
            "ndenseil                    ");
  }

  @Test
  void numbersAreNeverBroken() {
    Table table = new Table().column("x", Table.Kind.NUMBERS).column("y", Table.Kind.NUMBERS);
    table.row(List.of("-1.234e-100", "-1.234e-100"));
    assertThat(table.lines(10))
        .containsExactly("          x            y", "-1.234e-100  -1.234e-100");
  }

  @Test
  void charactersCountAsTheyAreRead() {
    assertThat(Wrapping.length("🍎–m²")).isEqualTo(4);
    assertThat(Wrapping.lines("🍎🍎🍎🍎🍎", 2)).containsExactly("🍎🍎", "🍎🍎", "🍎");
  }

  @Test
  void paragraphsAreFilledAndBlanksTakenOnce() {
    assertThat(Wrapping.lines("  one two\n three ", 8)).containsExactly("one two", "three");
    assertThat(Wrapping.lines("one abcdefghij k", 4))
        .containsExactly("one", "abcd", "efgh", "ij k");
    assertThat(Wrapping.lines("of 12\u00A0N", 6)).containsExactly("of", "12 N");
    assertThat(Wrapping.lines("", 8)).containsExactly("");
  }

  @Test
  void aPageSetsItsEntriesIn() {
    Page page = new Page();
    page.title("a device", '=');
    page.heading("a heading");
    page.item("an item that is longer than one line of the page can be, as it has many words");
    page.subitem(
        "an entry below it that is longer than one line of the page, as it has many words");
    assertThat(page)
        .hasToString(
            """
            a device
            ========

            a heading
              an item that is longer than one line of the page can be, as it has many
                words
                - an entry below it that is longer than one line of the page, as it has many
                  words
            """);
  }
}
