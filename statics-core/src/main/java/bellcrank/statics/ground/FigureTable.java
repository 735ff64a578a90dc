package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A table of figures, written as text as a source prints it, whose rows are chosen by their exact
 * name. A wrong name is answered with near ones.
 *
 * <p>A line {@code @source} begins the rows of a source, {@code @note} and {@code @memory} say more
 * of it, any other line is a row with its cells between bars.
 *
 * @param <R> what a row is made into
 */
public final class FigureTable<R> {

  private static final String SOURCE = "@source ";
  private static final String NOTE = "@note ";
  private static final String MEMORY = "@memory";
  private static final int MOST_NAMES = 9;
  private static final int SHORTEST_WORD = 3;

  private final String name;
  private final Map<String, R> rows = new LinkedHashMap<>();

  private FigureTable(String name, String text, Function<FigureLine, R> making) {
    this.name = name;
    String source = "";
    String note = "";
    Basis basis = Basis.PRINTED;
    for (String line : text.split("\n", -1)) {
      if (line.startsWith(SOURCE)) {
        source = line.substring(SOURCE.length());
        note = "";
        basis = Basis.PRINTED;
      } else if (line.startsWith(NOTE)) {
        note = line.substring(NOTE.length());
      } else if (line.equals(MEMORY)) {
        basis = Basis.FROM_MEMORY;
      } else if (!line.isEmpty()) {
        List<String> cells = List.of(line.split(" \\| ", -1));
        FigureLine figures = new FigureLine(cells, source, basis, note);
        rows.put(figures.name(), making.apply(figures));
      }
    }
  }

  /**
   * Reads a table.
   *
   * @param <R> what a row is made into
   * @param name how the table is called in messages
   * @param text its lines
   * @param making makes a row from its line
   * @return the table
   */
  public static <R> FigureTable<R> of(String name, String text, Function<FigureLine, R> making) {
    return new FigureTable<>(name, text, making);
  }

  /**
   * All rows.
   *
   * @return the rows in the order of the text
   */
  public List<R> rows() {
    return List.copyOf(rows.values());
  }

  /**
   * The row of a name.
   *
   * @param wanted the exact name of a row
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public R named(String wanted) {
    R row = rows.get(wanted);
    if (row == null) {
      throw unknown(wanted);
    }
    return row;
  }

  private ModelException unknown(String wanted) {
    List<String> near = near(wanted, rows.keySet());
    List<String> shown = near.subList(0, Math.min(near.size(), MOST_NAMES));
    int others = rows.size() - shown.size();
    String names = '"' + String.join("\", \"", shown) + '"';
    String more = others == 0 ? "" : " or one of the " + others + " other rows";
    return new ModelException(name, "row", '"' + wanted + '"', names + more);
  }

  /** A short word such as "sand" is far from every whole name, so words are looked for too. */
  private static List<String> near(String wanted, Collection<String> known) {
    Optional<String> mistyped = NearestName.of(wanted, known);
    if (mistyped.isPresent()) {
      return List.of(mistyped.get());
    }
    List<String> best = new ArrayList<>();
    int most = 0;
    for (String one : known) {
      int shared = shared(wanted.toLowerCase(Locale.ROOT), one.toLowerCase(Locale.ROOT));
      if (shared > most) {
        best.clear();
        most = shared;
      }
      if (shared == most) {
        best.add(one);
      }
    }
    return best;
  }

  private static int shared(String wanted, String known) {
    int shared = 0;
    for (String word : wanted.split("[^\\p{L}\\p{N}]+", -1)) {
      if (word.length() >= SHORTEST_WORD && known.contains(word)) {
        shared++;
      }
    }
    return shared;
  }
}
