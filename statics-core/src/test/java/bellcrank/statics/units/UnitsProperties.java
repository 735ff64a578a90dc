package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.Supplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class UnitsProperties {

  @Property
  void whatIsWrittenIsReadBackToTheDigitsWritten(
      @ForAll("listed") Unit unit,
      @ForAll @DoubleRange(min = -1e9, max = 1e9) double si,
      @ForAll @IntRange(min = 1, max = 15) int digits) {
    Quantity quantity = new Quantity(si, unit.dimension());
    String text = quantity.format(unit, digits);
    Quantity read = Quantity.parse(text, unit.dimension());
    // half a unit of the last digit, and half of the fifteenth: the binary tail is cut off first
    double allowed = Math.abs(si) * (0.5 * Math.pow(10, 1.0 - digits) + 0.5e-14 + 1e-15);
    assertThat(read.si()).isCloseTo(si, within(allowed));
    assertThat(read.format(unit, digits)).isEqualTo(text);
  }

  @Property
  void seventeenDigitsStateEveryValueInEveryUnit(
      @ForAll("listed") Unit unit, @ForAll @DoubleRange(min = -1e30, max = 1e30) double si) {
    BigDecimal factor = BigDecimal.valueOf(unit.factor());
    BigDecimal number = new BigDecimal(si).divide(factor, new MathContext(17));
    String text = number + " " + unit.symbol();
    assertThat(Quantity.parse(text, unit.dimension()).si()).as(text).isEqualTo(si + 0.0);
  }

  @Property
  void conversionThereAndBackKeepsTheValue(
      @ForAll("listed") Unit unit, @ForAll @DoubleRange(min = -1e12, max = 1e12) double value) {
    double back = unit.fromSi(unit.toSi(value));
    // value and SI value are each rounded twice, to a double and to decimal digits
    assertThat(back).isCloseTo(value, within(4 * Math.ulp(value)));
  }

  @Property
  void aLeadingMinusTurnsAllParts(
      @ForAll @IntRange(max = 99) int feet,
      @ForAll @IntRange(max = 11) int inches,
      @ForAll @IntRange(max = 15) int sixteenths) {
    String text = feet + " ft " + inches + " " + sixteenths + "/16 in";
    double size = (feet * 12 + inches + sixteenths / 16.0) * 0.0254;
    Quantity positive = Quantity.parse(text, Dimension.LENGTH);
    assertThat(positive.si()).isCloseTo(size, within(2 * Math.ulp(size)));
    assertThat(Quantity.parse("-" + text, Dimension.LENGTH).si() + positive.si()).isZero();
  }

  @Property
  void everyCompoundIsReadBackFromItsSymbol(@ForAll("compounds") String text) {
    Unit unit;
    try {
      unit = Unit.parse(text);
    } catch (QuantityException e) {
      assertThat(e.text()).isEqualTo(text);
      return;
    }
    assertThat(unit.factor()).isFinite().isPositive();
    assertThat(Unit.parse(unit.symbol(), unit.dimension())).isEqualTo(unit);
  }

  @Property
  void anyTextIsAFiniteQuantityOrRefused(@ForAll String text, @ForAll Dimension wanted) {
    finiteOrRefused(text, () -> Quantity.parse(text, wanted).si());
    finiteOrRefused(text, () -> Quantity.parse(text, wanted, UnitSystem.US).si());
    finiteOrRefused(text, () -> Unit.parse(text).factor());
  }

  @Property(tries = 5000)
  void anyLikelyTextIsAFiniteQuantityOrRefused(
      @ForAll("likely") String text, @ForAll Dimension wanted) {
    finiteOrRefused(text, () -> Quantity.parse(text, wanted).si());
    finiteOrRefused(text, () -> Quantity.parse(text, wanted, UnitSystem.US).si());
    finiteOrRefused(text, () -> Unit.parse(text, wanted).factor());
  }

  private static void finiteOrRefused(String text, Supplier<Double> parse) {
    try {
      assertThat(parse.get()).isFinite();
    } catch (QuantityException e) {
      assertThat(e.text()).isEqualTo(text);
      assertThat(e.accepted()).isNotBlank();
      assertThat(e.getMessage()).endsWith(": " + e.accepted());
    }
  }

  @Provide
  Arbitrary<Unit> listed() {
    return Arbitraries.of(Unit.all());
  }

  @Provide
  Arbitrary<String> compounds() {
    Arbitrary<String> exponent = Arbitraries.of("", "", "", "²", "^-1", "^3", "⁻²");
    Arbitrary<String> factor =
        Arbitraries.of("m", "in", "N", "lbf", "kgf", "tonf-US", "kg", "lb", "Pa", "s", "deg", "°")
            .flatMap(symbol -> exponent.map(power -> symbol + power));
    return factor
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .flatMap(
            parts ->
                Arbitraries.of("·", " ", "-", "*", ".", "/").map(sign -> String.join(sign, parts)));
  }

  @Provide
  Arbitrary<String> likely() {
    return Arbitraries.of(
            "1",
            "2",
            "0",
            "99",
            "1/2",
            "1e400",
            "1e-400",
            "e",
            ".",
            ",",
            "-",
            "−",
            "+",
            " ",
            "/",
            "·",
            "^2",
            "²",
            "⁻¹",
            "N",
            "m",
            "ft",
            "in",
            "lb",
            "oz",
            "lbf",
            "%",
            "°",
            "'",
            "\"",
            "s",
            "½",
            "٣",
            "kN",
            "NaN",
            "Infinity",
            "\ud800",
            "\u00a0")
        .list()
        .ofMaxSize(9)
        .map(parts -> String.join("", parts));
  }
}
