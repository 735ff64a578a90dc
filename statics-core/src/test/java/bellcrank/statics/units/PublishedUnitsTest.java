package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Every factor against its published value, to half a unit of the last printed digit. Where a
 * source errs, the row has the right value as well, and the printed one must be seen to be wrong.
 */
class PublishedUnitsTest {

  @ParameterizedTest(name = "{0}: {2} = {3}")
  @CsvFileSource(resources = "/reference-data/units.csv", numLinesToSkip = 1)
  void agreesWithThePublishedFactor(ArgumentsAccessor row) {
    Dimension dimension = Dimension.valueOf(row.getString(1));
    double given = si(row.getString(2), dimension);
    String printed = row.getString(3);
    String checked = row.getString(5);
    if (checked == null) {
      assertThat(given)
          .isCloseTo(
              si(printed, dimension), within(halfUnit(printed, row.getInteger(4), dimension)));
    } else {
      int digits = new BigDecimal(number(checked)).precision();
      assertThat(given)
          .isCloseTo(si(checked, dimension), within(halfUnit(checked, digits, dimension)));
      assertThat(given)
          .as("the printed value is wrong or rounded")
          .isNotEqualTo(si(printed, dimension));
    }
  }

  private static double si(String text, Dimension dimension) {
    List<String> parts = List.of(text.split(" per ", 2));
    double first = Quantity.parse(parts.get(0), dimension).si();
    return parts.size() == 1 ? first : first / Quantity.parse(parts.get(1), Dimension.LENGTH).si();
  }

  private static String number(String text) {
    return text.substring(0, text.indexOf(' '));
  }

  /** Half a unit of the last of the digits, in SI, plus the rounding of a double. */
  private static double halfUnit(String text, int digits, Dimension dimension) {
    BigDecimal value = new BigDecimal(number(text));
    int exponent = value.precision() - value.scale() - 1;
    double unit = si(text, dimension) / value.doubleValue();
    return 0.5 * Math.pow(10, exponent - digits + 1) * unit;
  }
}
