package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which changes of a type are told as lost, on pairs of a type before and after. */
final class TypeFactsTest {

  /** A rule that users write. */
  interface Rule {
    double limit();

    /** The same with one more to be written. */
    interface WithMore {
      double limit();

      double margin();
    }

    /** The same with one more that comes written. */
    interface WithDefault {
      double limit();

      default double margin() {
        return 1;
      }
    }
  }

  /** A value. */
  public record Load(String name, double size) {

    static final List<Load> NONE = List.of();

    /** A value with one more part. */
    public record WithPlace(String name, double size, double place) {}

    /** A value with one more way to ask. */
    public record WithHalf(String name, double size) {
      public double half() {
        return size / 2;
      }
    }
  }

  /** A kind. */
  enum Kind {
    ROPE,
    STRUT;

    /** With one more. */
    enum WithMore {
      ROPE,
      SPRING,
      STRUT
    }

    /** With one less. */
    enum WithLess {
      ROPE
    }
  }

  /** A class that users may extend. */
  public static class Base {
    public String told(String... names) {
      return String.join("", names);
    }

    protected void drawn() {}

    /** The same, closed. */
    static final class Closed {
      public String told(String... names) {
        return String.join("", names);
      }
    }

    /** The same with an answer that may be nothing, to an argument that may be nothing. */
    public static class Lax {
      public @Nullable String told(String... names) {
        return names.length == 0 ? null : names[0];
      }

      protected void drawn() {}
    }
  }

  @Test
  void whatUsersWriteMayGrowOnlyByWhatComesWritten() {
    assertThat(lost(Rule.class, Rule.WithMore.class))
        .containsExactly(
            "T had: extended by writing: double limit(); has now: "
                + "extended by writing: double limit(); double margin()");
    assertThat(lost(Rule.class, Rule.WithDefault.class)).isEmpty();
    assertThat(lost(Rule.WithDefault.class, Rule.class)).hasSize(2);
  }

  @Test
  void aValueMayGrowByQuestionsAndNotByParts() {
    assertThat(lost(Load.class, Load.WithHalf.class)).isEmpty();
    assertThat(lost(Load.class, Load.WithPlace.class))
        .containsExactlyInAnyOrder(
            "T had: new (String, double); has now: new (String, double, double)",
            "T had: taken apart: (String name, double size); has now: "
                + "taken apart: (String name, double size, double place)");
  }

  @Test
  void aKindMayComeAndNotGo() {
    assertThat(lost(Kind.class, Kind.WithLess.class)).hasSize(1);
    assertThat(lost(Kind.class, Kind.WithLess.class).get(0)).contains("STRUT");
  }

  @Test
  void aClassMayNotCloseAndItsAnswersNotBecomeNothing() {
    assertThat(lost(Base.class, Base.Closed.class))
        .anyMatch(line -> line.startsWith("T had: may be extended"))
        .anyMatch(line -> line.startsWith("T had: void drawn()"));
    assertThat(lost(Base.class, Base.Lax.class))
        .anyMatch(
            line -> line.contains("told(String...); has now: ") && line.contains("@Nullable"));
    assertThat(lost(Base.class, Base.class)).isEmpty();
  }

  @Test
  void aTypeThatIsGoneIsTold() {
    assertThat(new Api(Map.of("T", TypeFacts.of(Base.class))).lost(new Api(Map.of())))
        .containsExactly("T is gone");
  }

  private static List<String> lost(Class<?> before, Class<?> after) {
    return named(before).lost(named(after));
  }

  private static Api named(Class<?> type) {
    return new Api(
        Map.of(
            "T",
            TypeFacts.of(type).stream()
                .map(fact -> fact.replace(type.getName(), "T"))
                .collect(Collectors.toSet())));
  }
}
