package bellcrank.examples.file;

import java.util.List;

/** What came of reading a device file. */
public sealed interface ReadResult permits ReadResult.Read, ReadResult.Refused {

  /**
   * The file could be read.
   *
   * @param file what it holds
   */
  record Read(DeviceFile file) implements ReadResult {}

  /**
   * The file could not be read.
   *
   * @param problems all problems found, at least one, in the order of the file
   */
  record Refused(List<FileProblem> problems) implements ReadResult {

    /**
     * Copies the list.
     *
     * @param problems all problems found
     */
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
