package bellcrank.examples;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.ReadResult;
import bellcrank.examples.report.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Gets a device file from the file system, or says why it cannot be had. */
final class InputFile {

  /** More than the reader takes, so that it can tell that a file is too large. */
  private static final int MOST_BYTES = (1 << 20) + 1;

  private InputFile() {}

  /** What the file holds; otherwise empty, and the refusals are longer. */
  static Optional<DeviceFile> read(String name, List<Refusal> refusals) {
    Optional<byte[]> bytes = bytes(name, refusals);
    if (bytes.isEmpty()) {
      return Optional.empty();
    }
    ReadResult result = DeviceFileReader.read(bytes.get(), name);
    if (result instanceof ReadResult.Read read) {
      return Optional.of(read.file());
    }
    ((ReadResult.Refused) result).problems().forEach(one -> refusals.add(Refusal.from(one)));
    return Optional.empty();
  }

  private static Optional<byte[]> bytes(String name, List<Refusal> refusals) {
    try {
      Path path = Path.of(name);
      if (Files.isDirectory(path)) {
        refusals.add(Refusal.of(name, "this is a folder; wanted: a device file"));
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(path)) {
        return Optional.of(in.readNBytes(MOST_BYTES));
      }
    } catch (NoSuchFileException e) {
      refusals.add(Refusal.of(name, "there is no such file; wanted: a device file"));
    } catch (AccessDeniedException e) {
      refusals.add(Refusal.of(name, "this file may not be read; wanted: a readable device file"));
    } catch (InvalidPathException e) {
      refusals.add(Refusal.of(name, "this is no path; wanted: the path of a device file"));
    } catch (IOException e) {
      refusals.add(Refusal.of(name, "this file cannot be read; wanted: a readable device file"));
    }
    return Optional.empty();
  }
}
