package bellcrank.examples.report;

/** Hears what a long run is busy with, so that whoever waits can be told. */
@FunctionalInterface
public interface Watch {

  /** Hears nothing. */
  Watch NONE = (work, done, all) -> {};

  /**
   * Told when a piece of work begins, and again as it goes on.
   *
   * @param work what is worked out, in words
   * @param done how much of it is done
   * @param all how much there is to do; 0 if that is not known
   */
  void at(String work, long done, long all);

  /**
   * Told when a piece of work begins whose length is not known.
   *
   * @param work what is worked out, in words
   */
  default void at(String work) {
    at(work, 0, 0);
  }
}
