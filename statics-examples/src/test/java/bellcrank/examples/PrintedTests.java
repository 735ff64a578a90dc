package bellcrank.examples;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs a test class that is printed on a page and tells how each test comes out, by name. */
final class PrintedTests {

  private PrintedTests() {}

  static String run(Class<?> type) throws ReflectiveOperationException {
    List<Method> tests =
        Arrays.stream(type.getDeclaredMethods())
            .filter(
                one ->
                    one.isAnnotationPresent(Test.class)
                        || one.isAnnotationPresent(TestFactory.class))
            .sorted(Comparator.comparing(Method::getName))
            .toList();
    Constructor<?> made = type.getDeclaredConstructor();
    StringBuilder told = new StringBuilder();
    for (Method test : tests) {
      test.setAccessible(true);
      told.append(test.getName())
          .append(": ")
          .append(result(test, made.newInstance()))
          .append('\n');
    }
    return told.toString();
  }

  private static String result(Method test, Object instance) throws IllegalAccessException {
    try {
      if (test.invoke(instance) instanceof Stream<?> nodes) {
        runAll(nodes.map(DynamicNode.class::cast));
      }
      return "passes";
    } catch (InvocationTargetException e) {
      return "fails\n" + Objects.requireNonNull(e.getCause()).getMessage();
    } catch (AssertionError e) {
      return "fails\n" + e.getMessage();
    }
  }

  private static void runAll(Stream<? extends DynamicNode> nodes) {
    nodes.forEach(
        node -> {
          if (node instanceof DynamicContainer container) {
            runAll(container.getChildren());
          } else {
            run((DynamicTest) node);
          }
        });
  }

  private static void run(DynamicTest test) {
    try {
      test.getExecutable().execute();
    } catch (AssertionError e) {
      throw e;
    } catch (Throwable e) {
      throw new AssertionError(test.getDisplayName() + ": " + e.getMessage(), e);
    }
  }
}
