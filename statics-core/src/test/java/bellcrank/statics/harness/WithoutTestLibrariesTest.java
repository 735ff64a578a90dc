package bellcrank.statics.harness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.module.Configuration;
import java.lang.module.ModuleFinder;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who uses the library and writes no tests with it needs neither AssertJ nor JUnit. */
final class WithoutTestLibrariesTest {

  private static final String MODULE = "bellcrank.statics";

  /** The module with its run-time libraries and nothing else, in a layer of its own. */
  private static ModuleLayer layer() {
    Path[] places =
        Stream.of(
                Setup.class,
                org.ejml.data.DMatrixRMaj.class,
                org.ejml.dense.row.CommonOps_DDRM.class,
                org.ejml.sparse.csc.CommonOps_DSCC.class,
                org.hipparchus.util.FastMath.class,
                org.hipparchus.optim.MaxEval.class)
            .map(WithoutTestLibrariesTest::place)
            .distinct()
            .toArray(Path[]::new);
    Configuration resolved =
        Configuration.empty()
            .resolve(
                ModuleFinder.compose(ModuleFinder.of(places), ModuleFinder.ofSystem()),
                ModuleFinder.of(),
                Set.of(MODULE));
    return resolved.modules().stream()
            .anyMatch(one -> one.name().contains("assertj") || one.name().contains("junit"))
        ? ModuleLayer.empty()
        : ModuleLayer.boot()
            .defineModulesWithOneLoader(
                ModuleLayer.boot()
                    .configuration()
                    .resolve(ModuleFinder.of(places), ModuleFinder.of(), Set.of(MODULE)),
                ClassLoader.getPlatformClassLoader());
  }

  private static Path place(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  private static Class<?> type(ModuleLayer layer, String name) throws ClassNotFoundException {
    return layer.findLoader(MODULE).loadClass(MODULE + "." + name);
  }

  @Test
  void aDeviceIsSolvedWithoutThem() throws Exception {
    ModuleLayer layer = layer();
    Object builder =
        type(layer, "device.Device").getMethod("named", String.class).invoke(null, "bar");
    Class<?> building = type(layer, "device.DeviceBuilder");
    Method point = building.getMethod("point", String.class, double.class, double.class);
    point.invoke(builder, "a", 0.0, 0.0);
    point.invoke(builder, "b", 1.0, 0.0);
    building
        .getMethod("member", String.class, String[].class)
        .invoke(builder, "bar", new String[] {"a", "b"});
    building
        .getMethod("clamp", String.class, String.class, String.class, String.class)
        .invoke(builder, "root", "a", "bar", "ground");
    Object device = building.getMethod("build").invoke(builder);
    Object balance =
        type(layer, "equilibrium.Balance")
            .getMethod("of", type(layer, "device.Device"))
            .invoke(null, device);
    Object outcome = balance.getClass().getMethod("outcome").invoke(balance);
    assertThat(outcome).hasToString("InBalance[]");
    // what an application needs of the harness to say what it expects does without them, too
    Object scale =
        type(layer, "harness.LoadScale")
            .getMethod("of", type(layer, "equilibrium.Balance"))
            .invoke(null, balance);
    assertThat(scale).isNotNull();
    for (String name : List.of("ExpectedAnswer", "CheckedAnswer", "SuiteReader", "SuiteFile")) {
      assertThat(type(layer, "harness." + name).getMethods()).as(name).isNotEmpty();
    }
  }

  @Test
  void onlyTheAssertionsAndTheFactoryWantThem() throws Exception {
    ModuleLayer layer = layer();
    assertThatThrownBy(() -> type(layer, "harness.DeviceAssert"))
        .isInstanceOf(NoClassDefFoundError.class)
        .hasMessageContaining("org/assertj");
    assertThatThrownBy(() -> type(layer, "harness.DeviceSuite").getMethods())
        .isInstanceOf(NoClassDefFoundError.class)
        .hasMessageContaining("org/junit");
  }
}
