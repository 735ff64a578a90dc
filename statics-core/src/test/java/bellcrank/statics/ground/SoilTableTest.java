package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoilTableTest {

  private static final double PSF_IN_PASCALS = 47.880259;

  /** Source: IBC 2012 Table 1806.2, as reprinted in a geotechnical handbook; psf and psf per ft. */
  @ParameterizedTest
  @CsvSource({
    "'IBC 2012: sedimentary and foliated rock', 4000, 400, 0.35, 0",
    "'IBC 2012: sandy gravel and gravel', 3000, 200, 0.35, 0",
    "'IBC 2012: sand, silty or clayey sand and gravel', 2000, 150, 0.25, 0",
    "'IBC 2012: clay, sandy or silty clay, silt', 1500, 100, 0, 130"
  })
  void rowsOfTheBuildingCode(
      String name, double pressure, double perFoot, double friction, double cohesion) {
    SoilRow row = SoilTable.named(name);
    double pascals = pressure * PSF_IN_PASCALS;
    assertThat(row.presumptive().pressure()).isCloseTo(pascals, Si.relative(pascals, 1e-8));
    double lateral = perFoot * PSF_IN_PASCALS / 0.3048;
    assertThat(row.lateral().orElseThrow().low()).isCloseTo(lateral, Si.relative(lateral, 1e-8));
    assertThat(row.friction().map(Span::low).orElse(0.0)).isEqualTo(friction);
    assertThat(row.cohesion().map(Span::high).orElse(0.0))
        .isCloseTo(cohesion * PSF_IN_PASCALS, within(1e-4));
    assertThat(row.friction().isPresent()).isNotEqualTo(row.cohesion().isPresent());
    assertThat(row.source()).contains("IBC 2012, Table 1806.2");
    assertThat(row.basis()).isEqualTo(Basis.PRINTED);
  }

  /** Source: table of allowable bearing pressures on Canadian house plans; kPa. */
  @ParameterizedTest
  @CsvSource({
    "dense sand or gravel, 150",
    "loose sand or gravel, 50",
    "dense silt, 100",
    "stiff clay, 150",
    "firm clay, 75",
    "soft clay, 40",
    "till, 200",
    "clay shale, 300",
    "sound rock, 500"
  })
  void rowsOfTheHousePlans(String kind, double kilopascals) {
    SoilRow row = SoilTable.named("Canadian house plans: " + kind);
    assertThat(row.presumptive().pressure()).isEqualTo(kilopascals * 1000);
    assertThat(row.lateral()).isEmpty();
    assertThat(row.friction()).isEmpty();
    assertThat(row.cohesion()).isEmpty();
    assertThat(row.source()).contains("house plans");
  }

  /** The building code has about 96 kPa on sand and 72 kPa on clay, with no density grade. */
  @Test
  void theTablesDiffer() {
    double sand = row("IBC 2012: sand, silty or clayey sand and gravel").pressure();
    double clay = row("IBC 2012: clay, sandy or silty clay, silt").pressure();
    assertThat(sand).isCloseTo(96e3, within(500.0));
    assertThat(clay).isCloseTo(72e3, within(500.0));
    assertThat(sand / row("Canadian house plans: loose sand or gravel").pressure())
        .isGreaterThan(1.9);
  }

  private static Presumptive row(String name) {
    return SoilTable.named(name).presumptive();
  }

  @Test
  void namesAreUniqueAndEveryRowIsFound() {
    assertThat(SoilTable.rows()).hasSize(13).extracting(SoilRow::name).doesNotHaveDuplicates();
    assertThat(SoilTable.rows()).allSatisfy(r -> assertThat(SoilTable.named(r.name())).isSameAs(r));
  }

  @Test
  void aBearingCitesItsRow() {
    assertThat(row("Canadian house plans: till").source())
        .isEqualTo(
            "table of allowable bearing pressures on Canadian house plans, edition not stated:"
                + " Canadian house plans: till");
  }

  @Test
  void aRangeWantsAChoice() {
    SoilRow terrace =
        new SoilRow(
            "vineyard terrace",
            Span.of(60e3, 90e3),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "soil report of the press house",
            Basis.PRINTED,
            "");
    assertThat(terrace.lowest().pressure()).isEqualTo(60e3);
    assertThat(terrace.highest().pressure()).isEqualTo(90e3);
    assertThat(terrace.highest().source())
        .isEqualTo("soil report of the press house: vineyard terrace");
    assertThatThrownBy(terrace::presumptive)
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "vineyard terrace: pressure is 60000.0 to 90000.0 Pa; wanted: a choice: the lowest or"
                + " the highest of the range");
  }

  @Test
  void aMistypedNameIsAnsweredWithTheNearestOne() {
    assertThatThrownBy(() -> SoilTable.named("Canadian house plan: firm clay"))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "soil table: row is \"Canadian house plan: firm clay\"; wanted: \"Canadian house plans:"
                + " firm clay\" or one of the 12 other rows");
  }

  @Test
  void aShortNameIsAnsweredWithTheRowsThatHaveItsWords() {
    assertThatThrownBy(() -> SoilTable.named("IBC Sand"))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "soil table: row is \"IBC Sand\"; wanted: \"IBC 2012: sandy gravel and gravel\","
                + " \"IBC 2012: sand, silty or clayey sand and gravel\","
                + " \"IBC 2012: clay, sandy or silty clay, silt\" or one of the 10 other rows");
  }

  @Test
  void aStrangeNameIsAnsweredWithSomeRows() {
    assertThatThrownBy(() -> SoilTable.named(""))
        .isInstanceOf(ModelException.class)
        .hasMessageStartingWith("soil table: row is \"\"; wanted: \"IBC 2012: sedimentary")
        .hasMessageEndingWith(" or one of the 4 other rows");
  }
}
