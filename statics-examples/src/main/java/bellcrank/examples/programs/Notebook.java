package bellcrank.examples.programs;

import bellcrank.examples.OwnDrawing;
import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.explain.SolutionWriter;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.OptionalDouble;

/** What a program tells and draws, so that the programs themselves are about statics only. */
final class Notebook {

  private static final int DIGITS = 4;

  // units and minus signs are not in every terminal's own set of characters
  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Path folder;

  private Notebook(Path folder) {
    this.folder = folder;
  }

  /**
   * Opens a notebook.
   *
   * @param name name of the folder for pictures if none is given
   * @param arguments of the program: a folder for pictures, or nothing
   */
  static Notebook of(String name, String... arguments) {
    if (arguments.length > 1) {
      throw new IllegalArgumentException(
          "arguments: " + arguments.length + "; wanted: one folder for the pictures, or none");
    }
    return new Notebook(
        arguments.length == 1 ? Path.of(arguments[0]) : Path.of("target", "pictures", name));
  }

  void write(String line) {
    out.println(line);
  }

  /** Writes a value with its sign and unit. */
  void value(String what, double si, Dimension kind) {
    write(what + ": " + UnitSystem.SI.format(si, kind, DIGITS));
  }

  /** Writes a value that may be missing, and then says so. */
  void value(String what, OptionalDouble si, Dimension kind) {
    si.ifPresentOrElse(value -> value(what, value, kind), () -> write(what + ": not known"));
  }

  /** Writes a size, and in words what its sign means. */
  void value(String what, OptionalDouble si, Dimension kind, String positive, String negative) {
    si.ifPresentOrElse(
        value -> {
          String size = UnitSystem.SI.format(Math.abs(value), kind, DIGITS);
          // nothing has no sense
          String sense = value > 0 ? ", " + positive : value < 0 ? ", " + negative : "";
          write(what + ": " + size + sense);
        },
        () -> write(what + ": not known"));
  }

  /** Writes how the asks are worked out by hand; without asks, everything is. */
  void working(Balance balance, Detail detail, String... asks) {
    WorkedSolution solution =
        asks.length == 0
            ? WorkedSolution.of(balance)
            : WorkedSolution.of(balance, Arrays.stream(asks).map(Ask::parse).toList());
    write("");
    out.print(SolutionWriter.of(detail, UnitSystem.SI).text(solution));
  }

  /**
   * Draws a picture.
   *
   * @param name of the file, without its ending
   * @param svg the picture
   * @throws IOException if it cannot be written, or a file that is no drawing is in the way
   */
  void draw(String name, String svg) throws IOException {
    Path file = folder.resolve(name + ".svg");
    if (!OwnDrawing.mayTake(file)) {
      throw new FileAlreadyExistsException(
          file.toString(), null, "this is no drawing and is left as it is; wanted: a free place");
    }
    Files.createDirectories(folder);
    Files.writeString(file, OwnDrawing.marked(svg));
    write("drawn: " + file);
  }
}
