package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes JSON into a text; what has no number is written as an object that tells why. */
final class JsonPage {

  /** Something that writes, such as a lambda. */
  interface Writing {
    void write();
  }

  /** Something that writes one element of a list. */
  interface Element<T> {
    void write(T element);
  }

  private interface Step {
    void run() throws IOException;
  }

  private final StringWriter text = new StringWriter();
  private final JsonGenerator out;

  JsonPage() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withRootSeparator("\n");
    DefaultPrettyPrinter pretty = new DefaultPrettyPrinter(separators);
    pretty.indentObjectsWith(indenter);
    pretty.indentArraysWith(indenter);
    try {
      out = new JsonFactory().createGenerator(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    out.setPrettyPrinter(pretty);
  }

  private static void run(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      // a text in memory takes anything
      throw new UncheckedIOException(e);
    }
  }

  /** An object that stands by itself or in a list. */
  void object(Writing fields) {
    run(out::writeStartObject);
    fields.write();
    run(out::writeEndObject);
  }

  void object(String name, Writing fields) {
    run(() -> out.writeFieldName(name));
    object(fields);
  }

  <T> void list(String name, List<T> elements, Element<T> element) {
    run(() -> out.writeArrayFieldStart(name));
    elements.forEach(element::write);
    run(out::writeEndArray);
  }

  void numbers(String name, List<Double> numbers) {
    list(name, numbers, one -> run(() -> out.writeNumber(one)));
  }

  void texts(String name, List<String> texts) {
    list(name, texts, one -> run(() -> out.writeString(one)));
  }

  void text(String name, String value) {
    run(() -> out.writeStringField(name, value));
  }

  /** A text, or null where there is none. */
  void text(String name, Optional<String> value) {
    if (value.isPresent()) {
      text(name, value.get());
    } else {
      nothing(name);
    }
  }

  void whole(String name, int value) {
    run(() -> out.writeNumberField(name, value));
  }

  void truth(String name, boolean value) {
    run(() -> out.writeBooleanField(name, value));
  }

  /** Null: the field does not apply. */
  void nothing(String name) {
    run(() -> out.writeNullField(name));
  }

  /** A number; one that is not finite is told to have no bound. */
  void number(String name, double value) {
    if (Double.isFinite(value)) {
      run(() -> out.writeNumberField(name, value));
    } else {
      unanswered(name, Answer.Reason.UNLIMITED, "it has no bound");
    }
  }

  void unanswered(String name, Answer.Reason reason, String explanation) {
    object(
        name,
        () -> {
          text("unanswered", reason.name().toLowerCase(Locale.ROOT).replace('_', ' '));
          text("explanation", explanation);
        });
  }

  /** An answer of any kind. */
  void answer(String name, Answer answer) {
    if (answer instanceof Answer.Value value) {
      number(name, value.si());
    } else if (answer instanceof Answer.Words words) {
      text(name, words.text());
    } else if (answer instanceof Answer.LineOfAction line) {
      object(
          name,
          () -> {
            point("through", line.line().point());
            number("direction", line.line().direction().angle());
            number("size", line.size());
          });
    } else {
      Answer.Unanswered none = (Answer.Unanswered) answer;
      unanswered(name, none.reason(), none.explanation());
    }
  }

  void point(String name, Point point) {
    pair(name, point.x(), point.y());
  }

  void vector(String name, Vector vector) {
    pair(name, vector.x(), vector.y());
  }

  private void pair(String name, double x, double y) {
    object(
        name,
        () -> {
          number("x", x);
          number("y", y);
        });
  }

  /** The text so far, with a line end. */
  String finish() {
    run(out::close);
    return text.append('\n').toString();
  }
}
