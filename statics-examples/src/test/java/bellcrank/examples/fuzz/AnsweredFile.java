package bellcrank.examples.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.FileProblem;
import bellcrank.examples.file.ReadResult;
import bellcrank.examples.report.FileAnswer;
import bellcrank.examples.report.ReportText;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Bytes taken as a device file: refused with clear problems, or read and then answered. */
final class AnsweredFile {

  /** Devices with more parts than this are balanced, but their limits are not looked for. */
  private static final int SMALL = 25;

  /** One of so many files that are read is answered with the whole page. */
  private static final int WHOLE = 16;

  /** So many of those are asked for all that their device can be asked. */
  private static final int ALL_ASKS = 4;

  private static final String EXCEPTION = "Exception";
  private static final Pattern NO_NUMBER = Pattern.compile("\\b(?:NaN|Infinity)\\b");

  private AnsweredFile() {}

  /** What became of it, in a few words. */
  static String of(byte[] bytes) {
    ReadResult result = DeviceFileReader.read(bytes, "mutated.yaml");
    if (result instanceof ReadResult.Refused refused) {
      assertThat(refused.problems()).isNotEmpty();
      refused.problems().forEach(problem -> check(problem, hasSuchWords(bytes)));
      String where = refused.problems().get(0).where();
      return "refused in " + SectionName.of(where);
    }
    DeviceFile file = ((ReadResult.Read) result).file();
    Device device = file.device();
    int chance = Math.floorMod(Arrays.hashCode(bytes), WHOLE);
    for (LoadCase loadCase : device.cases()) {
      balance(file, loadCase, chance < ALL_ASKS);
    }
    if (device.members().size() + device.connections().size() > SMALL) {
      return "read and balanced";
    }
    for (LoadCase loadCase : device.cases()) {
      if (Limits.concern(device)) {
        limits(file, loadCase);
      }
    }
    if (chance == 0) {
      FileAnswer answer = FileAnswer.of("mutated.yaml", file, Optional.empty(), List.of());
      String page = ReportText.of(answer, file.units());
      if (!hasSuchWords(bytes)) {
        noBareNumber(page);
      }
      return "read and answered with the whole page";
    }
    return Limits.concern(device) ? "read, balanced and decided" : "read and balanced";
  }

  /** Whether words that an answer must not have stand in the file itself, which may be quoted. */
  private static boolean hasSuchWords(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    return text.contains(EXCEPTION) || NO_NUMBER.matcher(text).find();
  }

  private static void check(FileProblem problem, boolean quoted) {
    String sentence = problem.sentence();
    if (problem.line() < 1
        || problem.column() < 1
        || problem.found().isBlank()
        || problem.wanted().isBlank()
        || sentence.lines().count() != 1
        || (!quoted && sentence.contains(EXCEPTION))) {
      throw new AssertionError("no clear problem: " + sentence);
    }
  }

  private static void balance(DeviceFile file, LoadCase loadCase, boolean all) {
    Balance balance = Balance.of(file.device(), loadCase, Pose.DRAWN);
    String words =
        balance.outcome().words()
            + balance.reactions()
            + balance.freedoms()
            + balance.violations()
            + balance.residual();
    noBareNumber(words);
    for (Ask ask : all ? Ask.all(file.device()) : file.asks()) {
      noBareNumber(balance.answer(ask).toString());
    }
  }

  private static void limits(DeviceFile file, LoadCase loadCase) {
    Limits limits = Limits.of(file.device(), loadCase, Pose.DRAWN, file.foundations());
    noBareNumber(limits.verdict().toString());
    noBareNumber(limits.states().toString());
  }

  private static void noBareNumber(String words) {
    if (NO_NUMBER.matcher(words).find()) {
      throw new AssertionError("an answer that is no number: " + words);
    }
  }

  /** The section of a file in which a problem is. */
  private static final class SectionName {

    private static final List<String> SECTIONS =
        List.of(
            "points",
            "members",
            "truss",
            "connections",
            "loads",
            "seek",
            "cases",
            "ask",
            "expect",
            "limits",
            "units",
            "gravity",
            "ground",
            "drive",
            "travel",
            "sizing",
            "driving",
            "find",
            "side view",
            "rough",
            "study",
            "search",
            "variants",
            "combinations",
            "moving loads");

    static String of(String where) {
      String low = where.toLowerCase(Locale.ROOT);
      return SECTIONS.stream().filter(low::startsWith).findFirst().orElse("the file as a whole");
    }
  }
}
