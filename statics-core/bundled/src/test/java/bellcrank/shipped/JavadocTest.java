package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pages that come with the library: complete, and every link leads somewhere. */
final class JavadocTest {

  private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"]*)\"");

  private static final Pattern TARGET = Pattern.compile("(?:id|name)=\"([^\"]*)\"");

  private final Set<String> files = Shipped.names(Shipped.JAVADOC);

  private final Map<String, Set<String>> targets = new HashMap<>();

  @Test
  void everyLinkLeadsSomewhere() {
    List<String> dead = new ArrayList<>();
    int links = 0;
    for (String file : files) {
      // the JDK's own page of constants has a link to its module that leads nowhere
      if (file.endsWith(".html") && !file.equals("constant-values.html")) {
        for (String link : found(LINK, file)) {
          links++;
          if (!leadsSomewhere(file, link)) {
            dead.add(file + " -> " + link);
          }
        }
      }
    }
    assertThat(links).isGreaterThan(5000);
    assertThat(dead).isEmpty();
  }

  @Test
  void theMainPagesLeadToTheSigns() {
    for (String page :
        List.of(
            "module-summary.html",
            "bellcrank/statics/device/package-summary.html",
            "bellcrank/statics/device/Device.html",
            "bellcrank/statics/equilibrium/package-summary.html",
            "bellcrank/statics/equilibrium/Balance.html",
            "bellcrank/statics/equilibrium/BarForces.html")) {
      assertThat(found(LINK, "bellcrank.statics/" + page))
          .as(page)
          .anyMatch(link -> link.contains("doc-files/signs.html"));
    }
  }

  private boolean leadsSomewhere(String file, String link) {
    URI uri = URI.create(link.replace(" ", "%20").replace("[", "%5B").replace("]", "%5D"));
    if (uri.isAbsolute()) {
      return List.of("https", "http", "javascript", "data").contains(uri.getScheme());
    }
    URI target = URI.create("/" + file).resolve(uri);
    String path = link.startsWith("#") ? file : target.getPath().substring(1);
    if (!files.contains(path)) {
      return false;
    }
    String fragment = uri.getRawFragment();
    return fragment == null
        || fragment.isEmpty()
        || targets
            .computeIfAbsent(path, one -> new HashSet<>(found(TARGET, one)))
            .contains(URLDecoder.decode(fragment.replace("+", "%2B"), StandardCharsets.UTF_8));
  }

  private static List<String> found(Pattern pattern, String file) {
    return pattern
        .matcher(Shipped.text(Shipped.JAVADOC, file))
        .results()
        .map(one -> one.group(1).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"))
        .toList();
  }
}
