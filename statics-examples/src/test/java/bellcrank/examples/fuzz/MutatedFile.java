package bellcrank.examples.fuzz;

import bellcrank.examples.YamlFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A device file that bytes make: the first choose one of the samples and problems, the others
 * change it, one change after the other, in terms of lines, sections, keys, values and numbers. So
 * a search that only knows bytes changes what matters in a device file, and most of what it makes
 * is still nearly one.
 */
final class MutatedFile {

  private static final String FORMAT = "format: 1\n";
  private static final int MOST_CHANGES = 4;

  private static final Pattern PROSE =
      Pattern.compile(
          "(?m)^(?:#.*\\n|(?:statement|source|licence|note|basis):.*\\n(?:[ \\t].*\\n|\\n)*+)");

  private static final List<String> SAMPLES =
      Stream.concat(YamlFiles.devices().stream(), YamlFiles.problems().stream())
          .map(MutatedFile::text)
          .toList();

  /** The same without sections that are only told, which take time to read and decide nothing. */
  private static final List<String> SHORT =
      SAMPLES.stream().map(text -> PROSE.matcher(text).replaceAll("")).toList();

  private MutatedFile() {}

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The samples and problems as they are. */
  static List<byte[]> samples() {
    return SAMPLES.stream().map(text -> text.getBytes(StandardCharsets.UTF_8)).toList();
  }

  static byte[] of(byte[] bytes) {
    Choices choices = new Choices(bytes);
    String text = sample(choices);
    // a file of another format is refused at once, so this line is seldom changed
    int head = text.startsWith(FORMAT) && choices.below(32) > 0 ? FORMAT.length() : 0;
    String rest = text.substring(head);
    FileChange change = new FileChange(choices, () -> sample(choices));
    for (int i = 0; i < MOST_CHANGES && !choices.isUsedUp(); i++) {
      rest = change.of(rest);
    }
    return (text.substring(0, head) + rest).getBytes(StandardCharsets.UTF_8);
  }

  private static String sample(Choices choices) {
    int which = choices.below(SAMPLES.size());
    return choices.below(4) == 0 ? SAMPLES.get(which) : SHORT.get(which);
  }
}
