package bellcrank.statics.study;

import java.util.List;

/**
 * Something that was counted, with an example.
 *
 * @param what what it is, in words
 * @param count how often, 1 or more
 * @param example values of the uncertain numbers where it was seen first, in their order, SI
 */
public record Counted(String what, long count, List<Double> example) {

  /**
   * Copies the values.
   *
   * @param what what it is, in words
   * @param count how often, 1 or more
   * @param example values of the uncertain numbers where it was seen first
   */
  public Counted {
    example = List.copyOf(example);
  }
}
