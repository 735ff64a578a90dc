package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.ground.AnchorTable;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FrictionRow;
import bellcrank.statics.ground.FrictionTable;
import bellcrank.statics.ground.LadderRules;
import bellcrank.statics.ground.SoilRow;
import bellcrank.statics.ground.SoilTable;
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
                    LadderRules.rows().stream().map(CitedValue::name))
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
  void noLineIsWiderThan80() {
    for (UnitSystem units : List.of(UnitSystem.SI, UnitSystem.US)) {
      assertThat(TablesText.of(units).lines())
          .allMatch(line -> line.codePointCount(0, line.length()) <= 80)
          .allMatch(line -> line.equals(line.stripTrailing()));
    }
  }
}
