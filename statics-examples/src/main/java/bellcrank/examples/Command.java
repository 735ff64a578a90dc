package bellcrank.examples;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.report.Caution;
import bellcrank.examples.report.CheckLines;
import bellcrank.examples.report.FileAnswer;
import bellcrank.examples.report.Refusal;
import bellcrank.examples.report.ReportJson;
import bellcrank.examples.report.ReportText;
import bellcrank.examples.report.TablesText;
import bellcrank.examples.report.Watch;
import bellcrank.examples.report.WorkedText;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.units.UnitSystem;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the command line asks for, and doing it. */
@CommandLine.Command(
    name = "bellcrank",
    versionProvider = Version.class,
    sortOptions = false,
    synopsisHeading = "Usage: ",
    description = {
      "",
      "Answers device files: plane devices of levers, pins, struts, ropes and loads.",
      "For each file it tells whether the device is in balance, what every connection",
      "carries, how large the sought efforts are, the mechanical advantage, and what",
      "can still move. For a file that says what drives it, it follows the device over",
      "its travel.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "A device file, for example press.yaml (lengths in m, forces in N):",
      "",
      "  format: 1",
      "  device: cider press lever",
      "  points: {hinge: [0, 0], ram: [0.25, 0], grip: [1.6, 0.1]}",
      "  members: {lever: [hinge, ram, grip]}",
      "  connections: {hinge: {pin: hinge, joins: [lever, ground]}}",
      "  loads: {hand: {force: 220, direction: down, member: lever, at: grip}}",
      "  seek: {ram: {want: force, direction: up, member: lever, at: ram}}",
      "  advantage: {effort: hand, resistance: ram}",
      "",
      "Exit status:",
      "  0  answered, and all that the files expect holds",
      "  1  answered, but something that a file expects does not hold",
      "  2  a file or the command line is not acceptable",
      "",
      Caution.TEXT
    })
final class Command implements Callable<Integer> {

  private final PrintWriter out;
  private final PrintWriter err;

  @Spec private @Nullable CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Device files, in YAML.")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--case",
      paramLabel = "NAME",
      description = "Answer only this case of loads; all cases otherwise.")
  private @Nullable String loadCase;

  @Option(
      names = "--ask",
      paramLabel = "TEXT",
      description =
          "Answer a further ask, such as \"hinge.x on lever\" or \"ram per hand\". "
              + "May be given several times.")
  private List<String> asks = new ArrayList<>();

  @Option(
      names = "--units",
      paramLabel = "SYSTEM",
      converter = UnitsOption.class,
      description = "si (m, N) or us (ft, lbf); the units of each file otherwise.")
  private @Nullable UnitSystem units;

  @Option(
      names = "--working",
      paramLabel = "LEVEL",
      converter = DetailOption.class,
      description =
          "Show how it is worked out by hand: answer, outline or full. With --ask, "
              + "only what was asked there is worked out.")
  private @Nullable Detail working;

  @Option(
      names = "--check",
      description = "Only tell whether what the files expect holds, in one line a file.")
  private boolean check;

  @Option(names = "--json", description = "Print the answers as JSON, in SI units.")
  private boolean json;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description =
          "Write the table over the travel as comma-separated values. Needs one "
              + "device file with a drive, and --case if it has several cases. Of a file "
              + "without a drive, the percentiles of its samples, or its influence lines.")
  private @Nullable String csv;

  @Option(
      names = "--svg",
      paramLabel = "FILE",
      description = "Draw the curves over the travel as a picture in SVG; needs the same.")
  private @Nullable String svg;

  @Option(
      names = "--draw",
      paramLabel = "FOLDER",
      description =
          "Draw the device with its travel, every body cut free with all its forces, "
              + "the force polygons, and what is used of each part as pictures in SVG. The "
              + "folder is made if it is not there.")
  private @Nullable String drawings;

  @Option(
      names = "--inside",
      paramLabel = "FOLDER",
      description =
          "Draw normal force, shear force and bending moment inside each member as "
              + "a picture in SVG in a folder. Needs one device file, and --case if it has "
              + "several cases.")
  private @Nullable String inside;

  @Option(
      names = "--report",
      paramLabel = "FILE",
      description =
          "Write all of it as one page of HTML that can be handed on, with drawings "
              + "and curves. Needs one device file.")
  private @Nullable String report;

  @Option(
      names = "--progress",
      negatable = true,
      description =
          "Tell on standard error how far a run is that takes longer than two "
              + "seconds. On a screen this is told anyway, unless --no-progress is given.")
  private @Nullable Boolean progress;

  @Option(
      names = "--tables",
      help = true,
      description = "Print the tables of friction, soil, anchors, ladders, materials and lines.")
  private boolean tables;

  @SuppressWarnings("unused") // its presence is what counts
  @Option(names = "--help", usageHelp = true, description = "Print this page.")
  private boolean help;

  @SuppressWarnings("unused") // its presence is what counts
  @Option(names = "--version", versionHelp = true, description = "Print the version.")
  private boolean version;

  Command(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    if (tables) {
      out.print(TablesText.of(units == null ? UnitSystem.SI : units));
      return Main.ANSWERED;
    }
    refuseUnfit();
    boolean screen = ProgressLine.isScreen();
    boolean told = progress == null ? screen : progress;
    try (ProgressLine line = new ProgressLine(err, screen)) {
      return answer(told ? line.start() : line);
    }
  }

  private int answer(ProgressLine line) {
    List<Ask> further = parseAsks();
    List<FileAnswer> answers = new ArrayList<>();
    List<Refusal> refusals = new ArrayList<>();
    for (String file : files) {
      InputFile.read(file, refusals)
          .flatMap(read -> answer(file, read, further, refusals, line))
          .ifPresent(answers::add);
    }
    print(answers, refusals, further, line);
    if (!answers.isEmpty()) {
      new TravelFiles(Optional.ofNullable(csv), Optional.ofNullable(svg))
          .write(answers.get(0), Optional.ofNullable(units), refusals);
      if (inside != null) {
        InsideFiles.write(inside, answers.get(0), Optional.ofNullable(units), refusals);
      }
    }
    draw(answers, refusals, line);
    report(answers, further, refusals, line);
    line.quiet();
    refusals.forEach(refusal -> err.println(refusal.sentence()));
    if (!refusals.isEmpty()) {
      return Main.BAD_INPUT;
    }
    return answers.stream().allMatch(FileAnswer::holds) ? Main.ANSWERED : Main.EXPECTATION_FAILED;
  }

  private void draw(List<FileAnswer> answers, List<Refusal> refusals, ProgressLine line) {
    if (drawings == null) {
      return;
    }
    line.at("pictures");
    DrawingFiles files = new DrawingFiles(drawings);
    for (FileAnswer answer : answers) {
      List<String> written =
          files.write(answer, units == null ? answer.file().units() : units, refusals);
      line.quiet();
      if (!json) {
        written.forEach(out::println);
      }
    }
  }

  private void report(
      List<FileAnswer> answers, List<Ask> further, List<Refusal> refusals, ProgressLine line) {
    if (report == null || answers.isEmpty()) {
      return;
    }
    line.at("report");
    boolean written =
        ReportFile.of(report, Optional.ofNullable(loadCase), further, Optional.ofNullable(units))
            .write(answers.get(0), refusals);
    line.quiet();
    if (written && !json) {
      out.println("report: " + report);
    }
  }

  private void refuseUnfit() {
    if (check && json) {
      throw misuse("--check and --json do not go together: --json tells what holds as well");
    }
    if (check && !asks.isEmpty()) {
      throw misuse("--check and --ask do not go together: --check answers no asks");
    }
    if (check && working != null) {
      throw misuse("--check and --working do not go together: --check prints one line a file");
    }
    if ((csv != null || svg != null) && files.size() > 1) {
      throw misuse("--csv and --svg take one device file");
    }
    if (inside != null && files.size() > 1) {
      throw misuse("--inside takes one device file");
    }
    if (report != null && files.size() > 1) {
      throw misuse("--report takes one device file");
    }
    if (json && units != null) {
      throw misuse("--json and --units do not go together: --json is in SI units");
    }
  }

  private ParameterException misuse(String message) {
    CommandSpec known = spec;
    if (known == null) {
      throw new IllegalStateException("the command was not run by its command line");
    }
    return new ParameterException(known.commandLine(), message);
  }

  private List<Ask> parseAsks() {
    List<Ask> parsed = new ArrayList<>();
    List<String> mistakes = new ArrayList<>();
    for (String text : asks) {
      try {
        parsed.add(Ask.parse(text));
      } catch (ModelException e) {
        mistakes.addAll(AskProblems.sentences(e));
      }
    }
    if (!mistakes.isEmpty()) {
      // the first line gets the program's name where it is printed
      throw misuse(String.join("\nbellcrank: ", mistakes));
    }
    return parsed;
  }

  private Optional<FileAnswer> answer(
      String name, DeviceFile file, List<Ask> further, List<Refusal> refusals, Watch watch) {
    try {
      return Optional.of(FileAnswer.of(name, file, Optional.ofNullable(loadCase), further, watch));
    } catch (ModelException e) {
      AskProblems.sentences(e).forEach(sentence -> refusals.add(Refusal.of(name, sentence)));
      return Optional.empty();
    }
  }

  private void print(
      List<FileAnswer> answers, List<Refusal> refusals, List<Ask> further, ProgressLine line) {
    Optional<Detail> detail = Optional.ofNullable(working);
    if (json) {
      String text = ReportJson.of(answers, refusals, detail.map(level -> further));
      line.quiet();
      out.print(text);
      return;
    }
    for (FileAnswer answer : answers) {
      UnitSystem chosen = units == null ? answer.file().units() : units;
      line.at("answer to " + answer.name());
      StringBuilder text = new StringBuilder();
      text.append(check ? CheckLines.of(answer, chosen) : ReportText.of(answer, chosen) + "\n");
      detail.ifPresent(level -> text.append(WorkedText.of(answer, further, level, chosen)));
      line.quiet();
      out.print(text);
    }
    if (!check && !answers.isEmpty()) {
      out.print(Caution.lines());
    }
  }
}
