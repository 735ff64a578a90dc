package bellcrank.statics.harness;

import java.nio.file.Path;

/**
 * Reads device files for a {@link DeviceSuite}. The library itself reads no files; an application
 * that does brings this along.
 */
public interface SuiteReader {

  /**
   * Whether a file is a device file, by its name.
   *
   * @param file a file in the folder of the suite, or in a folder below it
   * @return true if it is to be read
   */
  boolean isDeviceFile(Path file);

  /**
   * Reads a device file.
   *
   * @param file the file
   * @return what it expects, or why it cannot be read; a file that is not there cannot be read
   */
  SuiteFile read(Path file);
}
