package bellcrank.examples.report;

import java.util.ArrayList;
import java.util.List;

/**
 * How a report was made.
 *
 * @param version version of the program
 * @param command the command that made it, without folders
 */
public record Making(String version, String command) {

  /**
   * The command in which each argument stands as a person would type it. Folders are left out,
   * since a report is handed on to others.
   *
   * @param version version of the program
   * @param arguments options and their values, file names last
   * @return how it was made
   */
  public static Making of(String version, List<String> arguments) {
    List<String> words = new ArrayList<>(List.of("bellcrank"));
    arguments.forEach(one -> words.add(typed(one)));
    return new Making(version, String.join(" ", words));
  }

  private static String typed(String argument) {
    boolean plain = argument.matches("[\\p{L}\\p{N}_.,:=+-]+");
    return plain ? argument : "'" + argument.replace("'", "'\\''") + "'";
  }
}
