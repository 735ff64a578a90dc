package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.ground.AnchorTable;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FrictionRow;
import bellcrank.statics.ground.FrictionTable;
import bellcrank.statics.ground.LadderRules;
import bellcrank.statics.ground.SoilRow;
import bellcrank.statics.ground.SoilTable;
import bellcrank.statics.strength.LineRow;
import bellcrank.statics.strength.LineTable;
import bellcrank.statics.strength.MaterialRow;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.strength.RuleOfThumb;
import bellcrank.statics.strength.StressTable;
import bellcrank.statics.strength.WeldTable;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of published figures as text. */
final class TablesTextTest {

  private static final String SI = TablesText.of(UnitSystem.SI);

  @Test
  void everyRowIsThereWithItsSource() {
    String text = SI.replaceAll("\\s+", " ");
    assertThat(
            Stream.of(
                    FrictionTable.rows().stream().map(FrictionRow::name),
                    SoilTable.rows().stream().map(SoilRow::name),
                    AnchorTable.rows().stream().map(CitedValue::name),
                    LadderRules.rows().stream().map(CitedValue::name),
                    MaterialTable.rows().stream().map(MaterialRow::name),
                    MaterialTable.superseded().stream().map(MaterialRow::name),
                    MaterialTable.constants().stream().map(CitedValue::name),
                    LineTable.rows().stream().map(LineRow::name),
                    LineTable.superseded().stream().map(LineRow::name),
                    LineTable.factors().stream().map(CitedValue::name),
                    WeldTable.rows().stream().map(CitedValue::name),
                    StressTable.rows().stream().map(CitedValue::name),
                    StressTable.superseded().stream().map(CitedValue::name))
                .flatMap(names -> names))
        .allSatisfy(name -> assertThat(text).contains(" " + name + ": "));
    FrictionTable.rows().forEach(row -> assertThat(text).contains("Source: " + row.source()));
    SoilTable.rows().forEach(row -> assertThat(text).contains("Source: " + row.source()));
    AnchorTable.rows().forEach(row -> assertThat(text).contains("Source: " + row.source()));
    LadderRules.rows().forEach(row -> assertThat(text).contains("Source: " + row.source()));
  }

  @Test
  void valuesHaveTheirRangeAndUnit() {
    assertThat(SI)
        .contains("\n  timber on timber, dry (handbook): 0.25 to 0.5\n")
        .contains("\n  steel on steel, smooth (CTU Code): 0.2; kinetic 0.15\n")
        .contains("\n  Canadian house plans: firm clay: 75 kPa\n")
        .contains("\n  angle of the load test: 75.5 deg\n")
        .contains("Source: friction tests of the 19th century (from memory)\n");
    assertThat(TablesText.of(UnitSystem.US))
        .contains("\n  deadman 4 ft deep, line 1:3: 2600 psf\n")
        .contains("\n  concentrated load on a fixed ladder: 250 lbf\n");
  }

  @Test
  void strengthsHaveTheirRangeAndUnit() {
    String text = SI.replaceAll("\\s+", " ");
    assertThat(text)
        .contains(
            " S355 (EN 10025-2): up to 16 mm, yield strength 355 MPa, ultimate strength 470 to 630"
                + " MPa; up to 40 mm, ")
        .contains(" 6061-T6 welded zone: yield strength 137.9 MPa, ultimate strength 165.5 MPa, ")
        .contains(" shackle 16 mm (EN 13889): 31870 N; breaking strength 191200 N ")
        .contains(" rope end: wedge socket: 0.75 to 0.95 ")
        .contains(" correlation factor S355: 0.9 ");
    for (RuleOfThumb rule : RuleOfThumb.values()) {
      assertThat(text).contains(" " + rule.formula() + ". " + rule.caution());
    }
    assertThat(TablesText.of(UnitSystem.US))
        .contains("\n  Grade 80 chain 3/8 in: 7100 lbf\n")
        .contains("A36 (ASTM): up to 8 in, yield strength 36 ksi");
  }

  @Test
  void supersededRowsComeLast() {
    String last = SI.substring(SI.indexOf("\nSuperseded\n"));
    LineTable.superseded().forEach(row -> assertThat(last).contains(row.name()));
    LineTable.rows().forEach(row -> assertThat(last).doesNotContain(row.name() + ":"));
  }

  @Test
  void noLineIsWiderThan80() {
    for (UnitSystem units : List.of(UnitSystem.SI, UnitSystem.US)) {
      assertThat(TablesText.of(units).lines())
          .allMatch(line -> line.codePointCount(0, line.length()) <= 80)
          .allMatch(line -> line.equals(line.stripTrailing()));
    }
  }
}
