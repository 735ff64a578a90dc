package bellcrank.examples;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** The main program: answers device files on the command line. */
public final class Main {

  /** Everything was answered, and every expectation holds. */
  static final int ANSWERED = 0;

  /** Everything was answered, but an expectation of a file does not hold. */
  static final int EXPECTATION_FAILED = 1;

  /** A file, an ask or the command line is not acceptable. */
  static final int BAD_INPUT = 2;

  private Main() {}

  /**
   * Runs the program and, unless all went well, ends the virtual machine with the exit status.
   *
   * @param arguments the command line; {@code --help} explains it
   */
  public static void main(String[] arguments) {
    // charts are drawn without a screen
    System.setProperty("java.awt.headless", "true");
    int status = run(arguments, utf8(System.out), utf8(System.err));
    if (status != ANSWERED) {
      System.exit(status);
    }
  }

  /** Runs the program with given outputs, and gives back the exit status. */
  static int run(String[] arguments, PrintWriter out, PrintWriter err) {
    CommandLine commandLine = new CommandLine(new Command(out, err));
    commandLine
        .setOut(out)
        .setErr(err)
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setUsageHelpWidth(80)
        // a file may well be called @something
        .setExpandAtFiles(false)
        .setParameterExceptionHandler((mistake, given) -> misused(mistake, err))
        .setExecutionExceptionHandler((fault, command, given) -> failed(fault, err));
    try {
      return commandLine.execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError e) {
      return failed(e, err);
    } finally {
      out.flush();
      err.flush();
    }
  }

  private static int misused(CommandLine.ParameterException mistake, PrintWriter err) {
    err.println("bellcrank: " + mistake.getMessage());
    if (mistake instanceof CommandLine.UnmatchedArgumentException unmatched
        && !unmatched.getSuggestions().isEmpty()) {
      err.println("The nearest is: " + String.join(", ", unmatched.getSuggestions()));
    }
    err.println("bellcrank --help tells how it is used.");
    return BAD_INPUT;
  }

  /** A fault of the program itself; a person is told what it was, without a trace. */
  static int failed(Throwable fault, PrintWriter err) {
    err.println("bellcrank: this is a fault of the program, please report it: " + fault);
    return BAD_INPUT;
  }

  private static PrintWriter utf8(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
  }
}
