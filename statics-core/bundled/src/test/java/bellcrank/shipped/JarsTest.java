package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleDescriptor.Exports;
import java.lang.module.ModuleDescriptor.Requires;
import java.lang.module.ModuleFinder;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is in the jars. */
final class JarsTest {

  private static final Path JSPECIFY = Shipped.fromClassPath("jspecify-").get(0);

  static Stream<Path> jars() {
    return Stream.of(Shipped.CORE, Shipped.BUNDLED);
  }

  @Test
  void theLibraryAloneHoldsNothingOfOthersAndTheBundleHoldsOthersUnderNamesOfItsOwn() {
    assertThat(classes(Shipped.CORE)).allMatch(name -> name.startsWith("bellcrank/statics/"));
    assertThat(classes(Shipped.BUNDLED))
        .allMatch(name -> name.startsWith("bellcrank/"))
        .containsAll(classes(Shipped.CORE))
        .anyMatch(name -> name.startsWith("bellcrank/bundled/ejml/"))
        .anyMatch(name -> name.startsWith("bellcrank/bundled/hipparchus/"));
  }

  @Test
  void theBundleNeedsNothingButTheJdk() {
    Set<Requires> needed = module(Shipped.BUNDLED).requires();
    assertThat(needed)
        .filteredOn(one -> !one.modifiers().contains(Requires.Modifier.STATIC))
        .extracting(Requires::name)
        .containsExactlyInAnyOrder("java.base", "java.xml");
    assertThat(needed)
        .filteredOn(one -> one.modifiers().equals(Set.of(Requires.Modifier.STATIC)))
        .extracting(Requires::name)
        .containsExactlyInAnyOrder("org.jspecify", "org.assertj.core", "org.junit.jupiter.api");
    assertThat(Run.tool("jdeps", "-verbose:class", Shipped.BUNDLED.toString()).told().lines())
        .filteredOn(line -> line.startsWith(" ") && line.endsWith("not found"))
        .allMatch(line -> line.contains("-> org.jspecify.annotations.") || isOfTheHarness(line));
  }

  /** Only assertions and suites for tests ask for libraries of tests. */
  private static boolean isOfTheHarness(String line) {
    return line.strip().startsWith("bellcrank.statics.harness.")
        && (line.contains("-> org.assertj.core.") || line.contains("-> org.junit.jupiter.api."));
  }

  @Test
  void bothAreTheSameModuleToUsers() {
    ModuleDescriptor core = module(Shipped.CORE);
    ModuleDescriptor bundled = module(Shipped.BUNDLED);
    assertThat(bundled.name()).isEqualTo(core.name()).isEqualTo("bellcrank.statics");
    assertThat(bundled.exports()).isEqualTo(core.exports());
    assertThat(core.isOpen() || bundled.isOpen()).isFalse();
    assertThat(core.exports())
        .extracting(Exports::source)
        .containsExactlyInAnyOrderElementsOf(
            core.packages().stream().filter(name -> !name.endsWith(".internal")).toList());
  }

  /** Kotlin and some other readers know the annotation on packages only, not that on a module. */
  @ParameterizedTest
  @MethodSource("jars")
  void everyPackageSaysThatNothingIsNull(Path jar)
      throws IOException, ReflectiveOperationException {
    try (URLClassLoader loader = Shipped.loader(List.of(jar, JSPECIFY))) {
      for (Exports exported : module(jar).exports()) {
        assertThat(
                Class.forName(exported.source() + ".package-info", false, loader).getAnnotations())
            .as("package-info.java of " + exported.source())
            .extracting(one -> one.annotationType().getName())
            .contains(NullMarked.class.getName());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jars")
  void theLicenceLiesWithin(Path jar) throws IOException {
    assertThat(Shipped.text(jar, "META-INF/LICENSE"))
        .isEqualTo(Files.readString(Path.of("..", "..", "LICENSE")));
  }

  @Test
  void everyClassHasItsSource() {
    Set<String> sources = Shipped.names(Shipped.SOURCES);
    assertThat(sources)
        .contains("module-info.java")
        .filteredOn(name -> !name.endsWith(".java") && !name.startsWith("META-INF/maven/"))
        .containsExactlyInAnyOrder("META-INF/LICENSE", "META-INF/NOTICE", "META-INF/MANIFEST.MF");
    assertThat(classes(Shipped.CORE))
        .allMatch(name -> sources.contains(name.replaceFirst("(\\$.*)?\\.class$", ".java")));
  }

  /** Maven hands on what the list of needs says: nothing but annotations for compilers. */
  @Test
  void theBundleAsksMavenForNoLibraryThatItHolds() throws IOException {
    String pom = Files.readString(Path.of("dependency-reduced-pom.xml"));
    String needs = pom.substring(pom.lastIndexOf("<dependencies>", pom.indexOf("jspecify")));
    assertThat(needs).contains("<artifactId>jspecify</artifactId>");
    assertThat(needs)
        .doesNotContain("<artifactId>statics-core", "<groupId>org.ejml", "<groupId>org.hipparchus");
  }

  private static Set<String> classes(Path jar) {
    return Shipped.names(jar).stream()
        .filter(name -> name.endsWith(".class") && !name.equals("module-info.class"))
        .collect(Collectors.toSet());
  }

  private static ModuleDescriptor module(Path jar) {
    return ModuleFinder.of(jar).findAll().iterator().next().descriptor();
  }
}
