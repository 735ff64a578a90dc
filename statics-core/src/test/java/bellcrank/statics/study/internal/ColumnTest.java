package bellcrank.statics.study.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers of a figure put together from the sheets of blocks. */
final class ColumnTest {

  private static List<Sheet> sheets() {
    Sheet first = new Sheet(3, 2, 1);
    first.value(0, 5, 0);
    first.noValue(0, "no balance", 1);
    first.value(0, -0.0, 2);
    first.outcome("holds", 0);
    first.outcome("no balance", 1);
    first.outcome("holds", 2);
    Sheet last = new Sheet(2, 2, 1);
    last.value(0, 3, 3);
    last.noValue(0, "no balance", 4);
    last.value(1, 8, 4);
    last.happening("heel slides left", 4);
    last.happens(0);
    last.leavesOpen(0);
    return List.of(first, last);
  }

  @Test
  void numbersAreSortedAndCounted() {
    Column column = Column.of(sheets(), 0);
    assertThat(column.moments().count()).isEqualTo(3);
    assertThat(column.moments().greatestAt()).isZero();
    assertThat(column.ranked(1)).isEqualTo(0.0);
    assertThat(column.ranked(2)).isEqualTo(3);
    assertThat(column.ranked(3)).isEqualTo(5);
    assertThat(column.ranked(0)).isEqualTo(0.0);
    assertThat(column.ranked(99)).isEqualTo(5);
    assertThat(column.below(0)).isZero();
    assertThat(column.below(3)).isEqualTo(1);
    assertThat(column.below(3.5)).isEqualTo(2);
    assertThat(column.below(6)).isEqualTo(3);
  }

  @Test
  void whatHasNoNumberIsCountedWithItsFirstSample() {
    Column column = Column.of(sheets(), 0);
    assertThat(column.missing().entries()).containsExactly(new Tally.Entry("no balance", 2, 1));
    assertThat(column.missing().total()).isEqualTo(2);
    assertThat(Column.of(sheets(), 1).moments().count()).isEqualTo(1);
  }

  @Test
  void talliesAddUpInOrder() {
    Tally all = new Tally();
    sheets().forEach(sheet -> all.addAll(sheet.outcomes()));
    assertThat(all.entries())
        .containsExactly(new Tally.Entry("holds", 2, 0), new Tally.Entry("no balance", 1, 1));
    Sheet last = sheets().get(1);
    assertThat(last.happenings().entries())
        .containsExactly(new Tally.Entry("heel slides left", 1, 4));
    assertThat(last.happened(0)).isEqualTo(1);
    assertThat(last.open(0)).isEqualTo(1);
  }
}
