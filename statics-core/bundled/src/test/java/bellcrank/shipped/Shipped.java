package bellcrank.shipped;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** The jars of this build and those that they need. */
final class Shipped {

  private static final String VERSION = System.getProperty("bellcrank.version", "0.1.0-SNAPSHOT");

  /** The library alone. */
  static final Path CORE = core("");

  /** Its sources. */
  static final Path SOURCES = core("-sources");

  /** Its pages. */
  static final Path JAVADOC = core("-javadoc");

  /** The library and what it needs, in one. */
  static final Path BUNDLED = Path.of("target", "statics-bundled-" + VERSION + ".jar");

  private Shipped() {}

  private static Path core(String classifier) {
    return Path.of("..", "target", "statics-core-" + VERSION + classifier + ".jar");
  }

  /** The libraries that the library alone needs when it runs. */
  static List<Path> libraries() {
    List<Path> found = fromClassPath("ejml-", "hipparchus-");
    if (found.size() != 5) {
      throw new AssertionError("three jars of EJML and two of Hipparchus, not " + found);
    }
    return found;
  }

  /** The libraries that the assertions and suites of the harness build on. */
  static List<Path> librariesOfTests() {
    return fromClassPath(
        "assertj-core-", "junit-jupiter-api-", "junit-platform-commons-", "opentest4j-");
  }

  /** All libraries that any class of the library names. */
  static List<Path> allLibraries() {
    return Stream.concat(libraries().stream(), librariesOfTests().stream()).toList();
  }

  /** Jars of the class path of the tests whose names begin so. */
  static List<Path> fromClassPath(String... beginnings) {
    return Stream.of(System.getProperty("java.class.path", "").split(File.pathSeparator))
        .map(Path::of)
        .filter(jar -> Stream.of(beginnings).anyMatch(jar.getFileName().toString()::startsWith))
        .sorted()
        .toList();
  }

  /** The library alone with all that it needs. */
  static List<Path> coreAndLibraries() {
    return Stream.concat(Stream.of(CORE), libraries().stream()).toList();
  }

  /** Jars as a path for a tool. */
  static String path(List<Path> jars) {
    return jars.stream()
        .map(jar -> jar.toAbsolutePath().normalize().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  /** Names of all files in a jar, in order. */
  static Set<String> names(Path jar) {
    try (JarFile file = new JarFile(jar.toFile())) {
      return file.stream()
          .filter(entry -> !entry.isDirectory())
          .map(ZipEntry::getName)
          .collect(Collectors.toCollection(TreeSet::new));
    } catch (IOException e) {
      throw new UncheckedIOException(jar.toString(), e);
    }
  }

  /** A file of a jar as text. */
  static String text(Path jar, String name) {
    try (JarFile file = new JarFile(jar.toFile())) {
      ZipEntry entry = file.getEntry(name);
      if (entry == null) {
        throw new AssertionError(jar.getFileName() + " has no " + name);
      }
      return new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(jar.toString(), e);
    }
  }

  /** Sees what is in these jars and in the JDK, and nothing of the tests. */
  static URLClassLoader loader(List<Path> jars) {
    URL[] places =
        jars.stream()
            .map(
                jar -> {
                  try {
                    return jar.toUri().toURL();
                  } catch (MalformedURLException e) {
                    throw new UncheckedIOException(e);
                  }
                })
            .toArray(URL[]::new);
    return new URLClassLoader(places, ClassLoader.getPlatformClassLoader());
  }
}
