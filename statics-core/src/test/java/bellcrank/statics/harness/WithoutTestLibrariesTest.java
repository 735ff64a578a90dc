package bellcrank.statics.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who uses the library and writes no tests with it needs neither AssertJ nor JUnit. */
final class WithoutTestLibrariesTest {

  private static final String MODULE =
      """
      module user {
        requires bellcrank.statics;
      }
      """;

  private static final String PROGRAM =
      """
      package user;

      import bellcrank.statics.device.Device;
      import bellcrank.statics.equilibrium.Balance;
      import bellcrank.statics.geometry.Vector;
      import bellcrank.statics.harness.LoadScale;
      import bellcrank.statics.units.Dimension;

      public final class Main {
        public static void main(String[] args) {
          Balance balance =
              Balance.of(
                  Device.named("bar")
                      .point("a", 0, 0)
                      .point("b", 1, 0)
                      .member("bar", "a", "b")
                      .clamp("root", "a", "bar", "ground")
                      .force("bucket", "bar", "b", Vector.of(0, -50))
                      .build());
          System.out.println(balance.outcome().words());
          System.out.println(LoadScale.of(balance).of(Dimension.FORCE));
          load("bellcrank.statics.harness.ExpectedAnswer");
          load("bellcrank.statics.harness.CheckedAnswer");
          load("bellcrank.statics.harness.SuiteReader");
          load("bellcrank.statics.harness.SuiteFile$Read");
          load("bellcrank.statics.harness.DeviceAssert");
          load("bellcrank.statics.harness.DeviceSuite");
        }

        private static void load(String name) {
          try {
            int methods = Class.forName(name).getDeclaredMethods().length;
            System.out.println(methods > 0 ? "there" : "empty");
          } catch (ReflectiveOperationException | LinkageError e) {
            System.out.println(e.getMessage().replaceFirst("^([a-z]+/[a-z]+).*", "$1"));
          }
        }
      }
      """;

  /** The library and its run-time libraries, and nothing else. */
  private static String modulePath() {
    return Stream.of(
            Setup.class,
            DMatrixRMaj.class,
            CommonOps_DDRM.class,
            CommonOps_DSCC.class,
            FastMath.class,
            MaxEval.class)
        .map(WithoutTestLibrariesTest::place)
        .distinct()
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static String place(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI()).toString();
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aModuleOfAUserIsCompiledAndRunWithoutThem(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path module = Files.writeString(folder.resolve("module-info.java"), MODULE);
    Path program = Files.writeString(folder.resolve("Main.java"), PROGRAM);
    Path classes = folder.resolve("classes");
    StringWriter said = new StringWriter();
    PrintWriter messages = new PrintWriter(said);
    int status =
        ToolProvider.findFirst("javac")
            .orElseThrow()
            .run(
                messages,
                messages,
                "-encoding",
                "UTF-8",
                "-p",
                modulePath(),
                "-d",
                classes.toString(),
                module.toString(),
                program.toString());
    assertThat(status).as(said.toString()).isZero();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-p",
                modulePath() + File.pathSeparator + classes,
                "-m",
                "user/user.Main")
            .redirectErrorStream(true)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(printed).isZero();
    // all is there but the assertions, which want AssertJ, and the factory, which wants JUnit
    assertThat(printed.lines())
        .containsExactly(
            "in balance", "50.0", "there", "there", "there", "there", "org/assertj", "org/junit");
  }
}
