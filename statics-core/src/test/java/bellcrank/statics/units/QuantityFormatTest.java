package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityFormatTest {

  @ParameterizedTest
  @CsvSource({
    "1600, N, 4, 1600 N",
    "1600, N, 6, 1600.00 N",
    "12345.6, N, 3, 12300 N",
    "-12345.6, N, 3, -12300 N",
    "0.25, N, 3, 0.250 N",
    "999.96, N, 4, 1000 N",
    "2.5, N, 1, 3 N",
    "-2.5, N, 1, -3 N",
    "0, N, 3, 0 N",
    "-0.0, N, 3, 0 N",
    "0.0001, N, 3, 0.000100 N",
    "0.00009996, N, 3, 0.000100 N",
    "0.00009994, N, 3, 9.99e-5 N",
    "9994999, N, 3, 9990000 N",
    "9995000, N, 3, 1.00e7 N",
    "123456789, N, 3, 1.23e8 N",
    "-123456789, N, 1, -1e8 N",
    "123456789, kN, 3, 123000 kN",
    "66.7233242289075, lbf, 3, 15.0 lbf",
    "1e308, daN, 3, 1.00e307 daN",
    "4.9e-324, MN, 2, 4.9e-330 MN"
  })
  void roundsToSignificantDigits(double si, String unit, int digits, String text) {
    assertThat(new Quantity(si, Dimension.FORCE).format(Unit.parse(unit), digits)).isEqualTo(text);
  }

  @Test
  void writesOneSpaceBeforeEverySymbolAndNoneForThePlainNumber() {
    Quantity share = new Quantity(0.35, Dimension.NUMBER);
    assertThat(share.format(Unit.parse("%"), 2)).isEqualTo("35 %");
    assertThat(share.format(Dimension.NUMBER.si(), 2)).isEqualTo("0.35");
    assertThat(new Quantity(Math.PI / 6, Dimension.ANGLE).format(Unit.parse("°"), 4))
        .isEqualTo("30.00 deg");
  }

  @Test
  void roundsATypedHalfAsAHalf() {
    Unit lbf = Unit.parse("lbf");
    for (int whole = 1000; whole < 2000; whole++) {
      String typed = whole + ".5 lbf";
      assertThat(Quantity.parse(typed, Dimension.FORCE).format(lbf, 4))
          .isEqualTo((whole + 1) + " lbf");
    }
  }

  @Test
  void takesNoNoticeOfTheLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(new Quantity(1234.5, Dimension.FORCE).format(Unit.parse("N"), 5))
          .isEqualTo("1234.5 N");
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(Quantity.parse("1234.5 in", Dimension.LENGTH).si()).isEqualTo(31.3563);
      assertThat(NearestName.of("PIN", List.of("pin"))).contains("pin");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void refusesAUnitOfAnotherKind() {
    assertThatThrownBy(() -> new Quantity(1, Dimension.FORCE).format(Unit.parse("kg"), 3))
        .isInstanceOf(QuantityException.class)
        .hasMessage("kg is a unit of mass; a force is wanted: write kgf");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 16})
  void refusesDigitsThatADoubleDoesNotHold(int digits) {
    assertThatThrownBy(() -> new Quantity(1, Dimension.FORCE).format(Unit.parse("N"), digits))
        .isInstanceOf(QuantityException.class)
        .hasMessage(digits + " significant digits cannot be written: give 1 to 15");
  }
}
