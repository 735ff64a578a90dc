package bellcrank.examples.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON strictly into maps, lists, texts, numbers, truth values and {@link #NULL}. */
final class JsonTree {

  static final Object NULL = "(null)";

  private JsonTree() {}

  static Object parse(String json) {
    JsonFactory factory =
        JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    try (JsonParser parser = factory.createParser(json)) {
      Object tree = value(parser, parser.nextToken());
      if (parser.nextToken() != null) {
        throw new AssertionError("there is more than one value");
      }
      return tree;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Object value(JsonParser parser, JsonToken token) throws IOException {
    return switch (token) {
      case START_OBJECT -> {
        Map<String, Object> map = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          map.put(parser.currentName(), value(parser, parser.nextToken()));
        }
        yield map;
      }
      case START_ARRAY -> {
        List<Object> list = new ArrayList<>();
        for (JsonToken next = parser.nextToken();
            next != JsonToken.END_ARRAY;
            next = parser.nextToken()) {
          list.add(value(parser, next));
        }
        yield list;
      }
      case VALUE_NUMBER_FLOAT, VALUE_NUMBER_INT -> parser.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> NULL;
      default -> parser.getText();
    };
  }
}
