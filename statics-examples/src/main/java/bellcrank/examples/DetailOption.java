package bellcrank.examples;

import bellcrank.statics.explain.Detail;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the value of {@code --working}. */
final class DetailOption implements ITypeConverter<Detail> {

  @Override
  public Detail convert(String value) {
    return switch (value) {
      case "answer" -> Detail.ANSWER;
      case "outline" -> Detail.OUTLINE;
      case "full" -> Detail.FULL;
      default ->
          throw new TypeConversionException(
              "found \"" + value + "\"; wanted: answer, outline or full");
    };
  }
}
