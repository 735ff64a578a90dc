package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DimensionTest {

  @ParameterizedTest
  @CsvSource({
    "LENGTH, a length, m",
    "ANGLE, an angle, rad",
    "FORCE, a force, N",
    "MASS, a mass, kg",
    "MOMENT, a moment of force, N·m",
    "FORCE_PER_LENGTH, a force per length, N/m",
    "PRESSURE, a pressure, Pa",
    "ACCELERATION, an acceleration, m/s²",
    "MOMENT_PER_ANGLE, a moment per angle, N·m/rad",
    "AREA, an area, m²",
    "SECTION_MODULUS, a section modulus, m³",
    "SECOND_MOMENT, a second moment of area, m⁴",
    "FORCE_PER_VOLUME, a force per volume, N/m³",
    "NUMBER, a plain number, ''"
  })
  void hasANounAndAnSiUnit(Dimension dimension, String noun, String symbol) {
    assertThat(dimension.noun()).isEqualTo(noun);
    assertThat(dimension.si().symbol()).isEqualTo(symbol);
    assertThat(dimension.si().factor()).isEqualTo(1);
    assertThat(dimension.si().dimension()).isEqualTo(dimension);
  }

  @ParameterizedTest
  @EnumSource
  void itsExampleIsOneOfItsUnits(Dimension dimension) {
    assertThat(Unit.parse(dimension.example(), dimension).dimension()).isEqualTo(dimension);
  }
}
