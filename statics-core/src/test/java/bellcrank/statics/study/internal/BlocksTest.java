package bellcrank.statics.study.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks of samples dealt out to threads. */
@Timeout(60)
final class BlocksTest {

  private static final long SAMPLES = 10 * Blocks.SIZE + 7;

  private static Blocks.Work<String> names() {
    return (first, count) -> first + "+" + count;
  }

  private static List<String> wanted(int blocks) {
    return LongStream.range(0, blocks)
        .mapToObj(b -> b * Blocks.SIZE + "+" + (b < 10 ? Blocks.SIZE : 7))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 50})
  void allBlocksComeInOrderWhoeverWorksOnThem(int threads) {
    assertThat(Blocks.run(SAMPLES, threads, BlocksTest::names, done -> true)).isEqualTo(wanted(11));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void whatIsEndedEarlyIsAShorterRun(int threads) {
    List<String> blocks =
        Blocks.run(SAMPLES, threads, BlocksTest::names, done -> done < 3 * Blocks.SIZE);
    assertThat(blocks)
        .hasSizeGreaterThanOrEqualTo(3)
        .isEqualTo(wanted(11).subList(0, blocks.size()));
  }

  @Test
  void theCallingThreadAloneIsToldHowFarItIs() {
    List<Long> told = new ArrayList<>();
    Set<Thread> tellers = new java.util.HashSet<>();
    Blocks.run(
        SAMPLES,
        1,
        BlocksTest::names,
        done -> {
          tellers.add(Thread.currentThread());
          return told.add(done);
        });
    assertThat(tellers).containsExactly(Thread.currentThread());
    assertThat(told).hasSize(11).isSorted().endsWith(SAMPLES);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 3})
  void anInterruptEndsTheRunAndIsKept(int threads) {
    List<String> blocks =
        Blocks.run(
            SAMPLES,
            threads,
            BlocksTest::names,
            done -> {
              Thread.currentThread().interrupt();
              return true;
            });
    assertThat(Thread.interrupted()).isTrue();
    assertThat(blocks).isNotEmpty().isEqualTo(wanted(11).subList(0, blocks.size()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void whatGoesWrongInAThreadIsThrownByTheRun(int threads) {
    AtomicBoolean thrown = new AtomicBoolean();
    assertThatThrownBy(
            () ->
                Blocks.run(
                    SAMPLES,
                    threads,
                    () ->
                        (first, count) -> {
                          if (first == 5L * Blocks.SIZE) {
                            thrown.set(true);
                            throw new IllegalStateException("the fifth block");
                          }
                          return "";
                        },
                    done -> true))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("the fifth block");
    assertThat(thrown).isTrue();
    assertThatThrownBy(
            () ->
                Blocks.run(
                    SAMPLES,
                    threads,
                    () ->
                        (first, count) -> {
                          throw new StackOverflowError("deep");
                        },
                    done -> true))
        .isInstanceOf(StackOverflowError.class);
  }

  @Test
  void noThreadIsLeftOver() {
    Set<Thread> before = Thread.getAllStackTraces().keySet();
    Blocks.run(SAMPLES, 5, BlocksTest::names, done -> true);
    assertThat(
            Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> !before.contains(thread))
                .filter(thread -> thread.getName().startsWith("samples"))
                .collect(Collectors.toSet()))
        .isEmpty();
  }
}
