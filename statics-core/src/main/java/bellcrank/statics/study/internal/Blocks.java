package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;

/**
 * Deals out numbered blocks of samples to threads that live no longer than the run. Blocks are
 * taken in order and a block that was taken is finished, so a run that is ended early holds the
 * first blocks of the whole run without a gap: it is the same as a shorter run.
 *
 * @param <B> what comes of a block
 */
public final class Blocks<B> {

  /** Samples in a block; only the last one may have fewer. */
  public static final int SIZE = 256;

  /** Works on blocks, one at a time. */
  @FunctionalInterface
  public interface Work<B> {
    /**
     * Works on one block. What comes of it may depend on nothing but these numbers.
     *
     * @param first number of its first sample, from 0
     * @param count how many samples it has
     * @return what comes of it
     */
    B of(long first, int count);
  }

  /** Decides whether a run goes on. */
  @FunctionalInterface
  public interface GoesOn {
    /**
     * Asked after each block of the calling thread and at the end, in that thread.
     *
     * @param done how many samples are finished
     * @return false to end the run
     */
    boolean after(long done);
  }

  private final long samples;
  private final int count;
  private final GoesOn goesOn;
  private final AtomicReferenceArray<B> finished;

  /** The first block is the calling thread's, so that it is asked at least once. */
  private final AtomicLong next = new AtomicLong(1);

  private final AtomicLong done = new AtomicLong();
  private final List<Throwable> failures = new ArrayList<>();
  private volatile boolean stopped;
  private long told;

  private Blocks(long samples, GoesOn goesOn) {
    this.samples = samples;
    this.goesOn = goesOn;
    count = Math.toIntExact((samples + SIZE - 1) / SIZE);
    finished = new AtomicReferenceArray<>(count);
  }

  /**
   * Works on all blocks. The calling thread works, too. If it is interrupted, the run ends and the
   * thread stays interrupted.
   *
   * @param samples how many samples in all, 1 or more
   * @param threads how many threads work, the calling one among them, 1 or more
   * @param workers makes a worker for each thread
   * @param goesOn decides after each block of the calling thread
   * @param <B> what comes of a block
   * @return what came of the blocks, from the first on without a gap; of all of them unless the run
   *     was ended
   */
  public static <B> List<B> run(
      long samples, int threads, Supplier<Work<B>> workers, GoesOn goesOn) {
    return new Blocks<B>(samples, goesOn).run(threads, workers);
  }

  private List<B> run(int threads, Supplier<Work<B>> workers) {
    Work<B> own = workers.get();
    List<Thread> others = new ArrayList<>();
    for (int k = 1; k < Math.min(threads, count); k++) {
      Work<B> worker = workers.get();
      Thread thread = new Thread(() -> work(worker, false), "samples " + k);
      thread.setDaemon(true);
      others.add(thread);
    }
    others.forEach(Thread::start);
    work(own, true);
    others.forEach(this::awaitEnd);
    if (!stopped && told < done.get()) {
      goesOn.after(done.get());
    }
    return outcome();
  }

  private void work(Work<B> worker, boolean calling) {
    try {
      long block = calling ? 0 : next.getAndIncrement();
      while (block < count) {
        long first = block * SIZE;
        int size = (int) Math.min(SIZE, samples - first);
        finished.set((int) block, worker.of(first, size));
        long all = done.addAndGet(size);
        if (calling) {
          told = all;
          // never set back, since a failure elsewhere may have set it meanwhile
          if (!goesOn.after(all) || Thread.currentThread().isInterrupted()) {
            stopped = true;
          }
        }
        block = stopped ? count : next.getAndIncrement();
      }
    } catch (RuntimeException | Error failure) {
      stopped = true;
      synchronized (failures) {
        failures.add(failure);
      }
    }
  }

  /** A run that is interrupted ends soon, so the others are always waited for. */
  private void awaitEnd(Thread thread) {
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException end) {
        interrupted = true;
        stopped = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private List<B> outcome() {
    synchronized (failures) {
      if (!failures.isEmpty()) {
        Throwable failure = failures.get(0);
        failures.stream().skip(1).forEach(failure::addSuppressed);
        if (failure instanceof Error error) {
          throw error;
        }
        throw (RuntimeException) failure;
      }
    }
    List<B> all = new ArrayList<>();
    long taken = Math.min(next.get(), count);
    for (int block = 0; block < taken; block++) {
      all.add(finished.get(block));
    }
    return all;
  }
}
