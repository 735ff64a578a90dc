package bellcrank.examples;

import bellcrank.examples.report.Watch;
import java.io.Console;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Tells a person who waits what a run is busy with and how far it is, once the run has taken a
 * while. On a screen it is one line that is written over and wiped at the end; elsewhere a line now
 * and then.
 */
final class ProgressLine implements Watch, AutoCloseable {

  /** Seconds after which one begins to wonder. */
  static final double PATIENCE = 2;

  /** Seconds between lines that stay. */
  static final double PAUSE = 10;

  /** Columns of the line on a screen: one less than 80, so that it never wraps. */
  private static final int COLUMNS = 79;

  private static final int TICKS_A_SECOND = 2;
  private static final double NANO = 1e-9;

  private final PrintWriter err;
  private final boolean screen;
  private final double begun = now();
  private @Nullable ScheduledExecutorService clock;
  private @Nullable Future<?> ticking;
  private String work = "";
  private long done;
  private long all;
  private double told = Double.NEGATIVE_INFINITY;
  private double workBegun;
  private int shown;

  ProgressLine(PrintWriter err, boolean screen) {
    this.err = err;
    this.screen = screen;
  }

  /** Begins to tell by itself. */
  ProgressLine start() {
    ScheduledExecutorService started =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, "progress");
              thread.setDaemon(true);
              return thread;
            });
    long pause = TimeUnit.SECONDS.toMillis(1) / TICKS_A_SECOND;
    ticking = started.scheduleAtFixedRate(() -> tick(now()), pause, pause, TimeUnit.MILLISECONDS);
    clock = started;
    return this;
  }

  /** Whether a person sits before a screen, as far as Java can tell. */
  @SuppressWarnings("SystemConsoleNull") // asked below for what is no screen
  static boolean isScreen() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // later than Java 17 there is a console also where there is no screen
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (NoSuchMethodException | IllegalAccessException | InvocationTargetException e) {
      return true;
    }
  }

  @Override
  public synchronized void at(String work, long done, long all) {
    if (!work.equals(this.work)) {
      workBegun = now();
    }
    this.work = work;
    this.done = done;
    this.all = all;
  }

  /** Wipes the line, since something else is printed now. */
  synchronized void quiet() {
    work = "";
    wipe();
  }

  /** Tells how far it is, if it is time to. */
  synchronized void tick(double now) {
    if (work.isEmpty() || now - begun < PATIENCE || (!screen && now - told < PAUSE)) {
      return;
    }
    told = now;
    String words = words(now - workBegun);
    if (!screen) {
      err.println(words);
    } else {
      String cut = words.length() > COLUMNS ? words.substring(0, COLUMNS) : words;
      wipe();
      err.print(cut);
      shown = cut.length();
    }
    err.flush();
  }

  private String words(double seconds) {
    if (all == 0 || done == 0) {
      return "bellcrank: " + work + (seconds < 1 ? "" : ", " + (long) seconds + " s so far");
    }
    long left = Math.round(seconds * (all - done) / done);
    return String.format(
        Locale.ROOT,
        "bellcrank: %s: %,d of %,d, about %s to go",
        work,
        done,
        all,
        left < 100 ? left + " s" : Math.round(left / 60.0) + " min");
  }

  private void wipe() {
    if (shown > 0) {
      err.print("\r" + " ".repeat(shown) + "\r");
      err.flush();
      shown = 0;
    }
  }

  @Override
  public void close() {
    Future<?> ticks = ticking;
    if (ticks != null) {
      ticks.cancel(false);
    }
    ScheduledExecutorService running = clock;
    if (running != null) {
      running.shutdownNow();
    }
    quiet();
  }

  private static double now() {
    return NANO * System.nanoTime();
  }
}
