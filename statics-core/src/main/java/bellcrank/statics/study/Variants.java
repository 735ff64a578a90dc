package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Several variants of a model side by side: a table of figures, in which what is best and worst and
 * what differs is marked. The first variant is what the others are compared with.
 *
 * @param names names of the variants, the columns
 * @param rows one for each figure
 */
public record Variants(List<String> names, List<Row> rows) {

  /** Share of the larger value within which two are the same. */
  private static final double SAME = 1e-9;

  /** Share of the largest number of the same kind below which a number is zero. */
  private static final double ROUNDING = 1e-12;

  /**
   * Copies the lists.
   *
   * @param names names of the variants, the columns
   * @param rows one for each figure
   */
  public Variants {
    names = List.copyOf(names);
    rows = List.copyOf(rows);
  }

  /**
   * A variant.
   *
   * @param name its name
   * @param model its model
   */
  public record Variant(String name, Model model) {}

  /**
   * A figure that is compared.
   *
   * @param figure the figure
   * @param wish which way it is better
   */
  public record Compared(Figure figure, Wish wish) {}

  /** Which way a figure is better. */
  public enum Wish {
    /** The less, the better. */
    LESS,
    /** The more, the better. */
    MORE,
    /** Neither; least and greatest are marked. */
    NEITHER
  }

  /**
   * A figure of all variants.
   *
   * @param compared the figure, and which way it is better
   * @param dimension what kind of quantity it is; empty if no variant has it
   * @param cells one for each variant
   */
  public record Row(Compared compared, Optional<Dimension> dimension, List<Cell> cells) {

    /**
     * Copies the list.
     *
     * @param compared the figure, and which way it is better
     * @param dimension what kind of quantity it is
     * @param cells one for each variant
     */
    public Row {
      cells = List.copyOf(cells);
    }

    /**
     * Whether the variants differ in this figure.
     *
     * @return true if some cell differs from the first
     */
    public boolean differs() {
      return cells.stream().anyMatch(Cell::differs);
    }
  }

  /**
   * A figure of one variant.
   *
   * @param answer its number, or why there is none
   * @param mark whether it stands out
   * @param differs whether it differs from the first variant by more than rounding
   * @param change by how much it differs from the first variant, as a share of that one's size, 0
   *     if it does not; empty if one of them has no number or the first is zero
   */
  public record Cell(FigureAnswer answer, Mark mark, boolean differs, OptionalDouble change) {

    /**
     * The change in words.
     *
     * @return such as {@code +12.5 %} or {@code −3.0 %}; empty if it does not differ, or by a share
     *     that cannot be told
     */
    public Optional<String> words() {
      if (!differs || change.isEmpty()) {
        return Optional.empty();
      }
      String text = String.format(Locale.ROOT, "%+.1f %%", 100 * change.getAsDouble());
      return Optional.of(text.replace('-', '−'));
    }
  }

  /** Whether a cell stands out in its row. */
  public enum Mark {
    /** It does not, or all that have a number have the same. */
    NONE(""),
    /** The best of the row. */
    BEST("best"),
    /** The worst of the row; a variant without the figure is no worse. */
    WORST("worst"),
    /** The least of the row, where neither way is better. */
    LEAST("least"),
    /** The greatest of the row, where neither way is better. */
    GREATEST("greatest");

    private final String word;

    Mark(String word) {
      this.word = word;
    }

    /**
     * The mark in a word.
     *
     * @return an adjective; empty for none
     */
    public String word() {
      return word;
    }
  }

  /**
   * Compares variants.
   *
   * @param variants the variants, at least two; the first is what the others are compared with
   * @param figures the figures
   * @return the table
   * @throws ModelException if there are fewer than two variants, two have one name, or one lacks
   *     what a figure names
   */
  public static Variants of(List<Variant> variants, List<Compared> figures) {
    List<String> names = variants.stream().map(Variant::name).toList();
    if (variants.size() < 2) {
      throw new ModelException("variants", "variants", names, "at least two");
    }
    if (names.stream().distinct().count() < names.size()) {
      throw new ModelException("variants", "names", names, "names that differ");
    }
    List<List<FigureAnswer>> answers = new ArrayList<>();
    for (Compared one : figures) {
      answers.add(variants.stream().map(v -> one.figure().of(v.model())).toList());
    }
    List<Row> rows = new ArrayList<>();
    for (int k = 0; k < figures.size(); k++) {
      rows.add(row(figures.get(k), answers.get(k), rounding(answers, answers.get(k))));
    }
    return new Variants(names, rows);
  }

  /** What is rounding in a row: a share of the largest number of its kind in the whole table. */
  private static double rounding(List<List<FigureAnswer>> table, List<FigureAnswer> row) {
    Optional<Dimension> kind = kind(row);
    double largest = 0;
    for (List<FigureAnswer> other : table) {
      for (FigureAnswer one : kind(other).equals(kind) ? other : List.<FigureAnswer>of()) {
        largest = Math.max(largest, Math.abs(one.number().orElse(0)));
      }
    }
    return ROUNDING * largest;
  }

  private static Optional<Dimension> kind(List<FigureAnswer> row) {
    for (FigureAnswer answer : row) {
      if (answer instanceof FigureAnswer.Is is) {
        return Optional.of(is.dimension());
      }
    }
    return Optional.empty();
  }

  private static Row row(Compared compared, List<FigureAnswer> answers, double rounding) {
    List<FigureAnswer> rounded = answers.stream().map(one -> rounded(one, rounding)).toList();
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (FigureAnswer answer : rounded) {
      OptionalDouble place = place(answer);
      if (place.isPresent()) {
        least = Math.min(least, place.getAsDouble());
        greatest = Math.max(greatest, place.getAsDouble());
      }
    }
    List<Cell> cells = new ArrayList<>();
    for (FigureAnswer answer : rounded) {
      Mark mark = mark(compared.wish(), place(answer), least, greatest);
      cells.add(cell(rounded.get(0), answer, mark));
    }
    return new Row(compared, kind(answers), cells);
  }

  /** What rounding has left of zero is zero. */
  private static FigureAnswer rounded(FigureAnswer answer, double rounding) {
    return answer instanceof FigureAnswer.Is is && Math.abs(is.si()) <= rounding
        ? new FigureAnswer.Is(0, is.dimension())
        : answer;
  }

  /** Where an answer stands among the others: what has no end is above all. */
  private static OptionalDouble place(FigureAnswer answer) {
    return answer.isUnlimited() ? OptionalDouble.of(Double.POSITIVE_INFINITY) : answer.number();
  }

  private static Mark mark(Wish wish, OptionalDouble place, double least, double greatest) {
    if (place.isEmpty() || isSame(least, greatest)) {
      return Mark.NONE;
    }
    if (isSame(place.getAsDouble(), least)) {
      return wish == Wish.NEITHER ? Mark.LEAST : wish == Wish.LESS ? Mark.BEST : Mark.WORST;
    }
    if (isSame(place.getAsDouble(), greatest)) {
      return wish == Wish.NEITHER ? Mark.GREATEST : wish == Wish.MORE ? Mark.BEST : Mark.WORST;
    }
    return Mark.NONE;
  }

  private static boolean isSame(double a, double b) {
    double larger = Math.max(Math.abs(a), Math.abs(b));
    // what has no end is the same as nothing else
    return a == b || (larger < Double.POSITIVE_INFINITY && Math.abs(a - b) <= SAME * larger);
  }

  private static Cell cell(FigureAnswer first, FigureAnswer answer, Mark mark) {
    OptionalDouble from = first.number();
    OptionalDouble to = answer.number();
    if (from.isEmpty() || to.isEmpty()) {
      boolean differs = from.isPresent() != to.isPresent() || !place(first).equals(place(answer));
      return new Cell(answer, mark, differs, OptionalDouble.empty());
    }
    double one = from.getAsDouble();
    double other = to.getAsDouble();
    if (isSame(one, other)) {
      return new Cell(answer, mark, false, OptionalDouble.of(0));
    }
    return new Cell(
        answer,
        mark,
        true,
        one == 0 ? OptionalDouble.empty() : OptionalDouble.of((other - one) / Math.abs(one)));
  }
}
