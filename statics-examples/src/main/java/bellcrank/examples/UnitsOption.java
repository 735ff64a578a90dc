package bellcrank.examples;

import bellcrank.statics.units.UnitSystem;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the value of {@code --units}. */
final class UnitsOption implements ITypeConverter<UnitSystem> {

  @Override
  public UnitSystem convert(String value) {
    return switch (value) {
      case "si" -> UnitSystem.SI;
      case "us" -> UnitSystem.US;
      default -> throw new TypeConversionException("found \"" + value + "\"; wanted: si or us");
    };
  }
}
