package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "m",
        "mm",
        "cm",
        "km",
        "in",
        "ft",
        "yd",
        "rad",
        "deg",
        "turn",
        "N",
        "kN",
        "MN",
        "daN",
        "lbf",
        "ozf",
        "kip",
        "kgf",
        "tf",
        "tonf-US",
        "tonf-UK",
        "kg",
        "g",
        "t",
        "lb",
        "oz",
        "slug",
        "N·m",
        "kN·m",
        "N·mm",
        "N·cm",
        "lbf·ft",
        "lbf·in",
        "kip·ft",
        "kgf·m",
        "N/m",
        "kN/m",
        "N/mm",
        "lbf/ft",
        "lbf/in",
        "kip/ft",
        "Pa",
        "kPa",
        "MPa",
        "GPa",
        "N/mm²",
        "psi",
        "ksi",
        "psf",
        "m/s²",
        "ft/s²",
        "N·m/rad",
        "N·m/deg",
        "lbf·ft/rad",
        "mm²",
        "cm²",
        "m²",
        "in²",
        "ft²",
        "cm³",
        "in³",
        "cm⁴",
        "in⁴",
        "%",
        ""
      })
  void isListedUnderItsOwnSymbol(String symbol) {
    Unit unit = Unit.parse(symbol);
    assertThat(unit.symbol()).isEqualTo(symbol);
    assertThat(Unit.all()).contains(unit);
    assertThat(unit.source()).isNotBlank();
  }

  @ParameterizedTest
  @CsvSource({
    "mm, 0.001",
    "cm, 0.01",
    "km, 1000",
    "kN, 1000",
    "MN, 1e6",
    "daN, 10",
    "g, 0.001",
    "t, 1000",
    "kgf·m, 9.80665",
    "N·mm, 0.001",
    "N·cm, 0.01",
    "kip/ft, 14593.902937206365",
    "N/mm, 1000",
    "kPa, 1000",
    "MPa, 1e6",
    "GPa, 1e9",
    "N/mm², 1e6",
    "ft/s², 0.3048",
    "mm², 1e-6",
    "cm², 1e-4",
    "in², 6.4516e-4",
    "ft², 0.09290304",
    "cm³, 1e-6",
    "in³, 1.6387064e-5",
    "mm⁴, 1e-12",
    "cm⁴, 1e-8",
    "in⁴, 4.162314256e-7",
    "%, 0.01",
    "oz, 0.028349523125",
    "kip, 4448.2216152605",
    "tonf-UK, 9964.01641818352",
    "slug, 14.593902937206364",
    "daN·m, 10",
    "kN/m², 1000"
  })
  void hasTheExactFactor(String symbol, double factor) {
    assertThat(Unit.parse(symbol).factor()).isEqualTo(factor);
  }

  @Test
  void hasTheAnglesOfACircle() {
    assertThat(Unit.parse("deg").factor()).isEqualTo(Math.PI / 180);
    assertThat(Unit.parse("turn").factor()).isEqualTo(2 * Math.PI);
    assertThat(Unit.parse("N·m/deg").factor()).isEqualTo(180 / Math.PI);
  }

  @ParameterizedTest
  @CsvSource({
    "N*m, N·m",
    "N.m, N·m",
    "N m, N·m",
    "N-m, N·m",
    "N⋅m, N·m",
    "N × m, N·m",
    "Nm, N·m",
    "m·N, N·m",
    "kN-m, kN·m",
    "kNm, kN·m",
    "Nmm, N·mm",
    "Ncm, N·cm",
    "ft·lbf, lbf·ft",
    "lbf ft, lbf·ft",
    "in.lbf, lbf·in",
    "ft-lbf, lbf·ft",
    "ft·lbf / rad, lbf·ft/rad",
    "N·m/°, N·m/deg",
    "m/s^2, m/s²",
    "m/s2, m/s²",
    "m·s^-2, m/s²",
    "m·s⁻², m/s²",
    "mm^2, mm²",
    "mm2, mm²",
    "cm3, cm³",
    "cm^4, cm⁴",
    "mm4, mm⁴",
    "in^2·in^2, in⁴",
    "m·m, m²",
    "in·in, in²",
    "N/mm2, N/mm²",
    "°, deg",
    "′, ft",
    "″, in"
  })
  void readsEveryWayOfWriting(String text, String symbol) {
    assertThat(Unit.parse(text)).isEqualTo(Unit.parse(symbol)).isIn(Unit.all());
  }

  @Test
  void readsTheMarksOfFeetAndInches() {
    assertThat(Unit.parse("'")).isEqualTo(Unit.parse("ft"));
    assertThat(Unit.parse("\"")).isEqualTo(Unit.parse("in"));
    assertThat(Unit.parse("''")).isEqualTo(Unit.parse("in"));
  }

  @ParameterizedTest
  @CsvSource({
    "ft·tonf-US, tonf-US·ft, MOMENT", "kg·m/s², kg·m/s², FORCE", "lbf/in^2, lbf/in², PRESSURE",
    "kgf/cm², kgf/cm², PRESSURE", "m³·N/m^2, N·m, MOMENT", "mm/m, mm/m, NUMBER",
    "kg·m^-1·s^-2, kg·m⁻¹·s⁻², PRESSURE", "m^4/m^2, m², AREA",
        "kip·in/rad, kip·in/rad, MOMENT_PER_ANGLE"
  })
  void readsCompoundsThatAreNotListed(String text, String symbol, Dimension dimension) {
    Unit unit = Unit.parse(text, dimension);
    assertThat(unit.symbol()).isEqualTo(symbol);
    assertThat(unit.dimension()).isEqualTo(dimension);
    assertThat(Unit.parse(unit.symbol())).isEqualTo(unit);
  }

  @Test
  void aRatioOfEqualUnitsIsThePlainNumber() {
    assertThat(Unit.parse("N/N")).isEqualTo(Dimension.NUMBER.si());
  }

  @Test
  void namesTheSourceOfEachFactorOfACompound() {
    assertThat(Unit.parse("lbf·ft").source())
        .contains("lbf: ", "4.448222", "ft: ", "not the US survey foot");
  }

  @Test
  void convertsWithoutABinaryTail() {
    assertThat(Unit.parse("%").toSi(35)).isEqualTo(0.35);
    assertThat(Unit.parse("in").toSi(1.5)).isEqualTo(0.0381);
    assertThat(Unit.parse("mm²").fromSi(1e-5)).isEqualTo(10);
    assertThat(Unit.parse("lbf").fromSi(-8.896443230521)).isEqualTo(-2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e308})
  void refusesToConvertOutOfRange(double value) {
    assertThatThrownBy(() -> Unit.parse("kN").toSi(value))
        .isInstanceOf(QuantityException.class)
        .hasMessage(
            value
                + " cannot be converted with the unit kN:"
                + " give a finite number whose converted value is finite as well");
    assertThatThrownBy(() -> Unit.parse("mm²").fromSi(value)).isInstanceOf(QuantityException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAFactorThatCannotConvert(double factor) {
    assertThatThrownBy(() -> new Unit("ell", Dimension.LENGTH, factor, "from memory"))
        .isInstanceOf(QuantityException.class)
        .hasMessage(
            "the factor "
                + factor
                + " of the unit ell cannot convert anything: give a finite factor greater than zero");
  }

  @Test
  void refusesAUnitWithoutSymbolOrSource() {
    assertThatThrownBy(() -> new Unit(" ", Dimension.LENGTH, 1, "from memory"))
        .hasMessage("a unit of length has no symbol: give a symbol");
    assertThatThrownBy(() -> new Unit("ell", Dimension.LENGTH, 1, ""))
        .hasMessage("the unit ell has no source for its factor: name the source");
  }
}
