package bellcrank.examples.harness;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.FileProblem;
import bellcrank.examples.file.ReadResult;
import bellcrank.examples.file.StrengthAsk;
import bellcrank.examples.report.CaseSolution;
import bellcrank.examples.report.ExpectationCheck;
import bellcrank.statics.harness.SuiteFile;
import bellcrank.statics.harness.SuiteReader;
import java.nio.file.Path;

/** Reads YAML device files for a suite of tests: what stands below {@code expect} is tested. */
public final class DeviceFiles implements SuiteReader {

  /** A reader. */
  public DeviceFiles() {}

  @Override
  public boolean isDeviceFile(Path file) {
    String name = file.toString();
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  @Override
  public SuiteFile read(Path file) {
    ReadResult result = DeviceFileReader.read(file);
    return result instanceof ReadResult.Refused refused
        ? new SuiteFile.Refused(refused.problems().stream().map(FileProblem::sentence).toList())
        : readable(((ReadResult.Read) result).file());
  }

  private static SuiteFile readable(DeviceFile file) {
    return new SuiteFile.Read(
        file.device().name(),
        file.units(),
        file.expectations().stream().map(one -> expectation(file, one)).toList(),
        name -> solved(CaseSolution.of(file, name)));
  }

  private static SuiteFile.Expectation expectation(DeviceFile file, Expectation one) {
    return new SuiteFile.Expectation(
        StrengthAsk.text(one.ask()),
        ExpectationCheck.caseName(file, one),
        one.answer(),
        one.source().or(() -> file.about().source()));
  }

  private static SuiteFile.SolvedCase solved(CaseSolution solution) {
    return new SuiteFile.SolvedCase(solution.balance(), solution::answer);
  }
}
