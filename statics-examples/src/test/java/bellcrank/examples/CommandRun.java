package bellcrank.examples;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the main program.
 *
 * @param status exit status
 * @param out what it printed
 * @param err what it complained of
 */
public record CommandRun(int status, String out, String err) {

  public static CommandRun of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(arguments, new PrintWriter(out), new PrintWriter(err));
    return new CommandRun(
        status,
        out.toString().replace(System.lineSeparator(), "\n"),
        err.toString().replace(System.lineSeparator(), "\n"));
  }
}
