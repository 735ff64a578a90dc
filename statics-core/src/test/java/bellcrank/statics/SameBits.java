package bellcrank.statics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * The same questions asked of one object by one thread, and of another, equal one by many threads
 * at once, each of them in another order. All answers must be the same, to the last bit.
 */
public final class SameBits {

  private static final int THREADS = 8;
  private static final long SECONDS = 60;

  /** Asks a shared object. */
  @FunctionalInterface
  public interface Question<S> {

    /**
     * Asks.
     *
     * @param shared what all threads share
     * @param seen where the answers go
     */
    void ask(S shared, Seen seen);
  }

  /** Answers, numbers as their bits. */
  public static final class Seen {

    private final List<Object> all = new ArrayList<>();

    /** A number. */
    public void number(double number) {
      all.add(Double.doubleToLongBits(number));
    }

    /** Records and words; different finite numbers in them are written differently. */
    public void words(Object answer) {
      // how an object without words of its own is called differs each time
      all.add(answer.toString().replaceAll("@[0-9a-f]+", ""));
    }
  }

  private SameBits() {}

  /** Compares. */
  public static <S> void hold(Supplier<S> maker, List<Question<S>> questions) {
    S own = maker.get();
    List<List<Object>> expected = new ArrayList<>();
    questions.forEach(question -> expected.add(answers(own, question)));
    S shared = maker.get();
    CyclicBarrier start = new CyclicBarrier(THREADS);
    List<Callable<List<List<Object>>>> tasks = new ArrayList<>();
    for (int thread = 0; thread < THREADS; thread++) {
      int first = thread * questions.size() / THREADS;
      tasks.add(
          () -> {
            start.await(SECONDS, TimeUnit.SECONDS);
            return turned(shared, questions, first);
          });
    }
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      for (Future<List<List<Object>>> one : pool.invokeAll(tasks, SECONDS, TimeUnit.SECONDS)) {
        same(one.get(), expected);
      }
    } catch (InterruptedException | ExecutionException e) {
      throw new AssertionError(e);
    } finally {
      pool.shutdownNow();
    }
  }

  /** Tells the first difference alone: all answers would fill pages. */
  private static void same(List<List<Object>> found, List<List<Object>> expected) {
    for (int question = 0; question < expected.size(); question++) {
      List<Object> one = found.get(question);
      List<Object> other = expected.get(question);
      assertThat(one).as("answers to question " + question).hasSameSizeAs(other);
      for (int i = 0; i < other.size(); i++) {
        assertThat(one.get(i))
            .as("answer " + i + " to question " + question)
            .isEqualTo(other.get(i));
      }
    }
  }

  /** Asks all from one on, and gives the answers in the order of the questions. */
  private static <S> List<List<Object>> turned(S shared, List<Question<S>> questions, int first) {
    List<List<Object>> answers = new ArrayList<>(Collections.nCopies(questions.size(), List.of()));
    for (int i = 0; i < questions.size(); i++) {
      int at = (first + i) % questions.size();
      answers.set(at, answers(shared, questions.get(at)));
    }
    return answers;
  }

  private static <S> List<Object> answers(S shared, Question<S> question) {
    Seen seen = new Seen();
    question.ask(shared, seen);
    return seen.all;
  }
}
