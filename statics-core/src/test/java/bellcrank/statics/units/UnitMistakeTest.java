package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitMistakeTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          lb     | FORCE  | lb is a unit of mass; a force is wanted: write lbf
          kg     | FORCE  | kg is a unit of mass; a force is wanted: write kgf
          oz     | FORCE  | oz is a unit of mass; a force is wanted: write ozf
          t      | FORCE  | t is a unit of mass; a force is wanted: write tf
          slug   | FORCE  | slug is a unit of mass; a force is wanted: write for example N, kN, kgf or lbf
          lbf    | MASS   | lbf is a unit of force; a mass is wanted: write lb
          kgf    | MASS   | kgf is a unit of force; a mass is wanted: write kg
          kN     | LENGTH | kN is a unit of force; a length is wanted: write for example m, mm, ft or in
          lb     | LENGTH | lb is a unit of mass; a length is wanted: write for example m, mm, ft or in
          N·m    | FORCE  | N·m is a unit of moment of force; a force is wanted: write for example N, kN, kgf or lbf
          %      | FORCE  | % is a plain number; a force is wanted: write for example N, kN, kgf or lbf
          N      | NUMBER | N is a unit of force; a plain number is wanted: write the number alone or with %
          ''     | ANGLE  | a number without a unit is a plain number; an angle is wanted: write for example deg or rad
          lb/in  | FORCE_PER_LENGTH | 'lb/in' is no unit of a kind of quantity known here: write lbf/in
          ft·lb  | MOMENT | 'ft·lb' is no unit of a kind of quantity known here: write lbf·ft
          kg/cm² | PRESSURE | 'kg/cm²' is no unit of a kind of quantity known here: write kgf/cm²
          ft·lb  | LENGTH | 'ft·lb' is no unit of a kind of quantity known here: write for example m, mm, ft or in
          s      | LENGTH | 's' is no unit of a kind of quantity known here: write for example m, mm, ft or in
          N/m/s  | FORCE  | 'N/m/s' cannot be read as a unit, which has symbols, products and one divisor: write for example N, kN, kgf or lbf
          N/     | FORCE  | 'N/' cannot be read as a unit, which has symbols, products and one divisor: write for example N, kN, kgf or lbf
          N·     | FORCE  | 'N·' cannot be read as a unit, which has symbols, products and one divisor: write for example N, kN, kgf or lbf
          m^5    | LENGTH | 'm^5' cannot be read as a unit, which has symbols, products and one divisor: write for example m, mm, ft or in
          in^2·in^3/m^3 | AREA | 'in^2·in^3/m^3' cannot be read as a unit, which has symbols, products and one divisor: write for example m², mm² or in²
          m22    | AREA   | 'm22' cannot be read as a unit, which has symbols, products and one divisor: write for example m², mm² or in²
          m)     | LENGTH | 'm)' cannot be read as a unit, which has symbols, products and one divisor: write for example m, mm, ft or in
          m m m m m m/m | LENGTH | 'm m m m m m/m' cannot be read as a unit, which has symbols, products and one divisor: write for example m, mm, ft or in
          KN     | FORCE  | 'KN' is not a known unit: the nearest known is kN
          mN     | FORCE  | 'mN' is not a known unit: the nearest known is MN
          lbff   | FORCE  | 'lbff' is not a known unit: the nearest known is lbf
          mpa    | PRESSURE | 'mpa' is not a known unit: the nearest known is MPa
          n      | FORCE  | 'n' is not a known unit: the nearest known is N
          x      | FORCE  | 'x' is not a known unit: write for example N, kN, kgf or lbf
          NM     | MOMENT | 'NM' is not a known unit: the nearest known is N·m
          kf     | FORCE  | 'kf' is not a known unit: the nearest known is kN or kgf or tf
          lbf·fot | MOMENT | 'fot' in 'lbf·fot' is not a known unit: the nearest known is ft
          xyzzy  | FORCE  | 'xyzzy' is not a known unit: write for example N, kN, kgf or lbf
          ton    | FORCE  | ton alone is ambiguous: write tonf-US (2000 lbf), tonf-UK (2240 lbf) or tf (1000 kgf) for a force, t (1000 kg) for a mass
          tonf   | FORCE  | tonf alone is ambiguous: write tonf-US (2000 lbf), tonf-UK (2240 lbf) or tf (1000 kgf) for a force, t (1000 kg) for a mass
          lbs    | FORCE  | 'lbs' is not a known unit: write lbf for a force, lb for a mass
          inches | LENGTH | 'inches' is not a known unit: write in
          """)
  void saysWhatIsWrongAndWhatToWrite(String text, Dimension wanted, String message) {
    QuantityException e = refused(text, wanted);
    assertThat(e).hasMessage(message);
    assertThat(e.text()).isEqualTo(text);
    assertThat(message).endsWith(": " + e.accepted());
  }

  @Test
  void withoutAWantedKindItNamesUsualUnits() {
    QuantityException e = catchThrowableOfType(QuantityException.class, () -> Unit.parse("xyzzy"));
    assertThat(e.accepted())
        .isEqualTo("write for example m, ft, deg, N, lbf, kg, lb, N·m, lbf·ft, N/m, kPa or psi");
  }

  @Test
  void cutsLongTextAndHidesControlCharactersInTheMessageOnly() {
    String text = "\u0007" + "q".repeat(500);
    QuantityException e = refused(text, Dimension.FORCE);
    assertThat(e.text()).isEqualTo(text);
    assertThat(e.getMessage()).startsWith("'\uFFFDqqq").contains("q…'").hasSizeLessThan(250);
    assertThat(refused("q".repeat(60), Dimension.FORCE).getMessage()).doesNotContain("…");
  }

  @Test
  void theSurveyFootIsNoFoot() {
    assertThat(refused("ft-US", Dimension.LENGTH)).hasMessageContaining("'US' in 'ft-US'");
    assertThat(refused("sft", Dimension.LENGTH)).hasMessageContaining("not a known unit");
  }

  private static QuantityException refused(String text, Dimension wanted) {
    return catchThrowableOfType(QuantityException.class, () -> Unit.parse(text, wanted));
  }
}
