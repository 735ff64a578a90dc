package bellcrank.examples.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads device files. A file that cannot be read is an answer, not an exception: it comes back with
 * all its problems.
 */
public final class DeviceFileReader {

  private DeviceFileReader() {}

  /**
   * Reads a text.
   *
   * @param text the text of a device file
   * @param fileName name by which problems call the file
   * @return what it holds, or what is wrong with it
   */
  public static ReadResult read(String text, String fileName) {
    Problems problems = new Problems(fileName);
    return result(FileText.screen(text, problems), problems);
  }

  /**
   * Reads bytes, which must be UTF-8.
   *
   * @param bytes the content of a device file
   * @param fileName name by which problems call the file
   * @return what it holds, or what is wrong with it
   */
  public static ReadResult read(byte[] bytes, String fileName) {
    Problems problems = new Problems(fileName);
    return result(FileText.decode(bytes, problems), problems);
  }

  /**
   * Reads a file.
   *
   * @param file path of the file; problems call it by its last part
   * @return what it holds, or what is wrong with it; a file that is not there is a problem as well
   */
  public static ReadResult read(Path file) {
    Path last = file.getFileName();
    String name = last == null ? file.toString() : last.toString();
    try (InputStream in = Files.newInputStream(file)) {
      return read(in.readNBytes(FileText.LARGEST + 1), name);
    } catch (IOException e) {
      Problems problems = new Problems(name);
      problems.add(Mark.START, Fields.TOP, "no readable file", "a device file");
      return new ReadResult.Refused(problems.inOrder());
    }
  }

  private static ReadResult result(Optional<String> text, Problems problems) {
    Optional<Node> root = text.flatMap(plain -> YamlTree.of(plain, problems));
    Optional<DeviceFile> file =
        root.flatMap(node -> new FileReading(new Spot(node, Fields.TOP, problems)).read());
    return file.isPresent() && problems.none()
        ? new ReadResult.Read(file.get())
        : new ReadResult.Refused(problems.inOrder());
  }
}
