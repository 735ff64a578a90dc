package bellcrank.examples.sheet;

import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The templates of the page. Everything they put in is escaped, unless a template says by three
 * braces that it is HTML that another template or a writer of XML has made.
 */
final class Template {

  static final Template PAGE = new Template("page");
  static final Template HEADING = new Template("heading");
  static final Template PARAGRAPH = new Template("paragraph");
  static final Template ENTRIES = new Template("entries");
  static final Template TABLE = new Template("table");
  static final Template PICTURES = new Template("pictures");
  static final Template STEPS = new Template("steps");
  static final Template WRITTEN = new Template("written");
  static final Template VERBATIM = new Template("verbatim");

  private final com.samskivert.mustache.Template compiled;

  private Template(String name) {
    compiled =
        Mustache.compiler()
            .withEscaper(Escapers.HTML)
            .strictSections(true)
            .compile(text(name + ".mustache"));
  }

  /** The text with all that a record holds; a name that the record lacks is an error. */
  String filled(Object view) {
    return compiled.execute(view);
  }

  /** A file beside the templates. */
  static String text(String name) {
    try (InputStream in = Template.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
