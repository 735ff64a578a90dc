package bellcrank.statics.study;

/**
 * Hears how far a long run is and may end it. It is asked in the thread that called the run, never
 * in others.
 */
@FunctionalInterface
public interface Progress {

  /** Lets a run go on to its end. */
  Progress UNWATCHED = (done, all) -> true;

  /**
   * Asked again and again as a run goes on.
   *
   * @param done samples that are finished
   * @param all samples that are wanted
   * @return false to end the run: what is finished is its result then
   */
  boolean goOn(long done, long all);
}
