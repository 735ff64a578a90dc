package bellcrank.examples.report;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import java.util.List;
import java.util.Optional;

/** Reports on small devices. */
final class SmallReport {

  private SmallReport() {}

  /** On a device file without its first line. */
  static String of(String text) {
    DeviceFile file = YamlFiles.parse("format: 1\n" + text);
    return ReportText.of(
        FileAnswer.of("test.yaml", file, Optional.empty(), List.of()), file.units());
  }

  /** A lever of 1 m from a over m to b, and what else is said. */
  static String lever(String more) {
    return of(
        """
        device: lever
        points: {a: [0, 0], m: [0.5, 0], b: [1, 0], c: [1, 1]}
        members: {lever: [a, m, b]}
        """
            + more);
  }
}
