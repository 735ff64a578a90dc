package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParseTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          15 lbf          | FORCE  | 66.7233242289075
          -3.5kN          | FORCE  | -3500
          − 4 N           | FORCE  | -4
          +5 N            | FORCE  | 5
          .5 N            | FORCE  | 0.5
          4.20e3 N        | FORCE  | 4200
          4.2E-3 N        | FORCE  | 0.0042
          2e+2 N          | FORCE  | 200
          1.8 kgf         | FORCE  | 17.65197
          1/2 in          | LENGTH | 0.0127
          5/2 in          | LENGTH | 0.0635
          1 1/2 in        | LENGTH | 0.0381
          3-1/2 in        | LENGTH | 0.0889
          -3-1/2 in       | LENGTH | -0.0889
          4 ft 2 in       | LENGTH | 1.27
          4ft2in          | LENGTH | 1.27
          4 ft-2 in       | LENGTH | 1.27
          4' 2"           | LENGTH | 1.27
          4'2"            | LENGTH | 1.27
          4'-2"           | LENGTH | 1.27
          4′ 2″           | LENGTH | 1.27
          4'2''           | LENGTH | 1.27
          4 ft 2 1/2 in   | LENGTH | 1.2827
          4'-2-1/2"       | LENGTH | 1.2827
          -4 ft 2 in      | LENGTH | -1.27
          6'              | LENGTH | 1.8288
          2"              | LENGTH | 0.0508
          3 lb 8 oz       | MASS   | 1.587573295
          30 deg          | ANGLE  | 0.5235987755982988
          30°             | ANGLE  | 0.5235987755982988
          0.25 turn       | ANGLE  | 1.5707963267948966
          2.5 kN/m        | FORCE_PER_LENGTH | 2500
          10 in.lbf       | MOMENT | 1.129848290276167
          35 %            | NUMBER | 0.35
          0.35            | NUMBER | 0.35
          1/4             | NUMBER | 0.25
          20 mm/m         | NUMBER | 0.02
          9.81 m/s^2      | ACCELERATION | 9.81
          1.00000000000000011 N | FORCE | 1
          1.00000000000000012 N | FORCE | 1.0000000000000002
          39.370078740157489 in | LENGTH | 1.0000000000000002
          0.1 ft 0.2 in   | LENGTH | 0.03556
          10 mm2          | AREA   | 1e-5
          0 N             | FORCE  | 0
          0e-999 N        | FORCE  | 0
          """)
  void readsWhatPeopleWrite(String text, Dimension wanted, double si) {
    Quantity quantity = Quantity.parse(text, wanted);
    assertThat(quantity.si()).isEqualTo(si);
    assertThat(quantity.dimension()).isEqualTo(wanted);
  }

  @Test
  void readsTheSpacesOfPrintedText() {
    assertThat(Quantity.parse("\u00a015\u202fN\t", Dimension.FORCE).si()).isEqualTo(15);
  }

  @Test
  void aNegativeZeroIsZero() {
    assertThat(Quantity.parse("-0 N", Dimension.FORCE)).isEqualTo(new Quantity(0, Dimension.FORCE));
    assertThat(1 / Quantity.parse("-0 N", Dimension.FORCE).si()).isPositive();
  }

  @Test
  void aBareNumberIsInTheUnitOfTheSystem() {
    assertThat(Quantity.parse("15", Dimension.FORCE, UnitSystem.US).si())
        .isEqualTo(66.7233242289075);
    assertThat(Quantity.parse("-1 1/2", Dimension.LENGTH, UnitSystem.SI).si()).isEqualTo(-1.5);
    assertThat(Quantity.parse("90", Dimension.ANGLE, UnitSystem.SI).si()).isEqualTo(Math.PI / 2);
    assertThat(Quantity.parse("0.35", Dimension.NUMBER, UnitSystem.US).si()).isEqualTo(0.35);
    assertThat(Quantity.parse("15 N", Dimension.FORCE, UnitSystem.US).si()).isEqualTo(15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          15 lbf       | FORCE  | lbf
          -3.5kN       | FORCE  | kN
          15           | FORCE  | lbf
          0            | LENGTH | ft
          1 1/2        | LENGTH | ft
          4 ft 2 in    | LENGTH | in
          -4'-2 1/2"   | LENGTH | in
          6'           | LENGTH | ft
          2"           | LENGTH | in
          3 lb 8 oz    | MASS   | oz
          30°          | ANGLE  | deg
          10 in.lbf    | MOMENT | lbf·in
          2 kip·in     | MOMENT | kip·in
          35 %         | NUMBER | %
          0.35         | NUMBER | ``
          20 mm/m      | NUMBER | mm/m
          """)
  void tellsTheUnitInWhichATextIsWritten(String text, Dimension wanted, String symbol) {
    assertThat(Quantity.unitOf(text, wanted, UnitSystem.US)).isEqualTo(Unit.parse(symbol, wanted));
  }

  @ParameterizedTest
  @ValueSource(strings = {"15 N", "", "1e999", "1e-323 mm", "4 ft 2", "1/0 in", "2 m m"})
  void aTextThatIsNoQuantityHasNoUnit(String text) {
    QuantityException ofUnit =
        catchThrowableOfType(
            QuantityException.class, () -> Quantity.unitOf(text, Dimension.LENGTH, UnitSystem.SI));
    QuantityException ofValue =
        catchThrowableOfType(
            QuantityException.class, () -> Quantity.parse(text, Dimension.LENGTH, UnitSystem.SI));
    assertThat(ofUnit).hasMessage(ofValue.getMessage());
    assertThat(ofUnit.text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          15        | FORCE  | 15 has no unit; a force is wanted: write for example 15 N
          1 1/2     | MOMENT | 1 1/2 has no unit; a moment of force is wanted: write for example 1 1/2 N·m
          15 lb     | FORCE  | lb is a unit of mass; a force is wanted: write lbf
          15 N      | LENGTH | N is a unit of force; a length is wanted: write for example m, mm, ft or in
          4 ft 2 in | FORCE  | ft is a unit of length; a force is wanted: write for example N, kN, kgf or lbf
          3 lb 8 oz | FORCE  | lb is a unit of mass; a force is wanted: write lbf
          15 N      | NUMBER | N is a unit of force; a plain number is wanted: write the number alone or with %
          15 KN     | FORCE  | 'KN' is not a known unit: the nearest known is kN
          ``        | FORCE  | there is no text where a force is wanted: write for example 15 N
          ` `       | NUMBER | there is no text where a plain number is wanted: write for example 0.35 or 35 %
          1,250 N   | FORCE  | '1,250 N' has a comma: write a point as decimal sign and nothing between thousands, for example 1250.5
          1 250 N   | FORCE  | '1 250 N' has a gap in its number: write a point as decimal sign and nothing between thousands, for example 1250.5
          NaN       | FORCE  | 'NaN' does not begin with a number: write for example 15 N
          Infinity N | FORCE | 'Infinity N' does not begin with a number: write for example 15 N
          --5 N     | FORCE  | '--5 N' does not begin with a number: write for example 15 N
          -         | FORCE  | '-' does not begin with a number: write for example 15 N
          3. N      | FORCE  | '3. N' goes on after the number with what is no unit: write for example 15 N
          1/2/3 in  | LENGTH | '1/2/3 in' goes on after the number with what is no unit: write for example 15 m
          1e999 N   | FORCE  | '1e999 N' is too large to be kept: write zero or a size between about 1e-300 and 1e300
          1e307 kN  | FORCE  | '1e307 kN' is too large to be kept: write zero or a size between about 1e-300 and 1e300
          1e-400 N  | FORCE  | '1e-400 N' is too small to be kept: write zero or a size between about 1e-300 and 1e300
          1e-322 mm² | AREA  | '1e-322 mm²' is too small to be kept: write zero or a size between about 1e-300 and 1e300
          1/0 in    | LENGTH | '1/0 in' divides by zero: write a fraction such as 1/2, its lower number not zero
          1 3/3 in  | LENGTH | the fraction behind the whole number in '1 3/3 in' is not below 1: write a proper fraction such as 1 1/2
          1 m 20 cm | LENGTH | '1 m 20 cm' has a second number: only feet with inches (4 ft 2 in) and pounds with ounces (3 lb 8 oz) are added
          4 ft 2    | LENGTH | '4 ft 2' has a second number: only feet with inches (4 ft 2 in) and pounds with ounces (3 lb 8 oz) are added
          4' 2      | LENGTH | '4' 2' has a second number: only feet with inches (4 ft 2 in) and pounds with ounces (3 lb 8 oz) are added
          4 ft -2 in | LENGTH | '4 ft -2 in' has a second number: only feet with inches (4 ft 2 in) and pounds with ounces (3 lb 8 oz) are added
          2 in 4 ft | LENGTH | '2 in 4 ft' has a second number: only feet with inches (4 ft 2 in) and pounds with ounces (3 lb 8 oz) are added
          15 N !    | FORCE  | 'N !' cannot be read as a unit, which has symbols, products and one divisor: write for example N, kN, kgf or lbf
          """)
  void refusesWhatWouldNeedAGuess(String text, Dimension wanted, String message) {
    QuantityException e =
        catchThrowableOfType(QuantityException.class, () -> Quantity.parse(text, wanted));
    assertThat(e).hasMessage(message);
    assertThat(e.text()).isEqualTo(text);
    assertThat(message).endsWith(": " + e.accepted());
  }

  @Test
  void refusesEndlessText() {
    assertThatThrownBy(() -> Quantity.parse("1".repeat(201) + " N", Dimension.FORCE))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("is too long for a force");
    assertThat(Quantity.parse("0".repeat(198) + "5N", Dimension.FORCE).si()).isEqualTo(5);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void aQuantityIsFinite(double si) {
    assertThatThrownBy(() -> new Quantity(si, Dimension.MOMENT))
        .isInstanceOf(QuantityException.class)
        .hasMessage(si + " is no value of a moment of force: give a finite number in SI");
  }
}
