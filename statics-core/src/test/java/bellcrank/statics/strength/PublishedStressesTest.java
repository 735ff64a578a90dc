package bellcrank.statics.strength;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Published stresses, changes of length, welds, pins and columns, to half a unit of the last digit
 * that can be met. Where a source errs, the row has the right value as well.
 */
class PublishedStressesTest {

  private static final Map<String, Double> UNITS =
      Map.ofEntries(
          entry("1", 1.0),
          entry("m", 1.0),
          entry("cm", 1e-2),
          entry("mm", 1e-3),
          entry("um", 1e-6),
          entry("N", 1.0),
          entry("kg", 1.0),
          entry("Pa", 1.0),
          entry("kPa", 1e3),
          entry("in", PublishedJoints.IN),
          entry("kip", PublishedJoints.KIP),
          entry("kip/in", PublishedJoints.KIP / PublishedJoints.IN));

  @ParameterizedTest(name = "{0}: {1} = {2} {3}")
  @CsvFileSource(resources = "/reference-data/stresses.csv", numLinesToSkip = 1)
  void agreesWithThePublishedValue(ArgumentsAccessor row) {
    Map<String, DoubleSupplier> known = known(row.getString(0));
    double unit = Objects.requireNonNull(UNITS.get(row.getString(3)));
    double value = Objects.requireNonNull(known.get(row.getString(1))).getAsDouble() / unit;
    String printed = row.getString(2);
    String checked = row.getString(5);
    BigDecimal right = new BigDecimal(checked == null ? printed : checked);
    int exponent = right.precision() - right.scale() - 1;
    double half = 0.5 * Math.pow(10, exponent - row.getInteger(4) + 1);
    assertThat(value).isCloseTo(right.doubleValue(), within(half));
    if (checked != null) {
      double wrong = Double.parseDouble(printed);
      assertThat(Math.abs(value - wrong)).as("the printed value is wrong").isGreaterThan(half);
    }
  }

  private static Map<String, DoubleSupplier> known(String id) {
    return switch (id) {
      case "cp-5.4" -> PublishedRods.bone();
      case "cp-5.5" -> PublishedRods.nail();
      case "cp-5.p29" -> PublishedRods.twoBones();
      case "cp-5.p35" -> PublishedRods.pipe(2.10e11);
      case "cp-5.p37", "up-12.p51" -> PublishedRods.disc();
      case "cp-5.p39" -> PublishedRods.pencil();
      case "up-12.7" -> PublishedRods.pillar();
      case "up-12.8" -> PublishedRods.platform();
      case "up-12.p47" -> PublishedRods.climber();
      case "up-12.p55" -> PublishedRods.pipe(2.0e11);
      case "up-12.p58" -> PublishedRods.hanger();
      case "up-12.p59" -> PublishedRods.wire();
      case "up-12.p63" -> PublishedRods.tightrope();
      case "st-weld-j1" -> PublishedJoints.lengthwise();
      case "st-weld-sixteenth" -> PublishedJoints.sixteenth();
      case "st-weld-directional" -> PublishedJoints.directions();
      case "st-pin-j7" -> PublishedJoints.americanPin();
      case "st-pin-ec3-coeffs" -> PublishedJoints.europeanPin();
      case "st-bolt-2005" -> PublishedJoints.bolts();
      case "st-buck-ec3-alpha" -> PublishedJoints.curves();
      case "st-buck-ec3-lambda1" -> PublishedJoints.eulerAtYield();
      case "st-buck-transition" -> PublishedJoints.transition();
      default -> throw new AssertionError(id + " is not worked out");
    };
  }
}
