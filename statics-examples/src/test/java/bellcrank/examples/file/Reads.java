package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import java.util.List;

/** Reads texts in tests. */
final class Reads {

  private Reads() {}

  static DeviceFile file(String text) {
    ReadResult result = DeviceFileReader.read(text, "test.yaml");
    assertThat(sentences(result)).isEmpty();
    return ((ReadResult.Read) result).file();
  }

  static Device device(String text) {
    return file(text).device();
  }

  /** What is wrong with a text, without the file's name. */
  static List<String> problems(String text) {
    return sentences(DeviceFileReader.read(text, "test.yaml")).stream()
        .map(sentence -> sentence.substring("test.yaml:".length()))
        .toList();
  }

  static List<String> sentences(ReadResult result) {
    return result instanceof ReadResult.Refused refused
        ? refused.problems().stream().map(FileProblem::sentence).toList()
        : List.of();
  }
}
