package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.SOFTWOOD;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.arm;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.whyNot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Rules are data: each can be read, replaced and given another factor, and results show it. */
class RulesTest {

  private static final String TOP = "stress at the top face of foot–tip";

  private static Checks checks(Material material, Rules rules) {
    Sizing sizing = Sizing.of(rules.method()).with("arm", BAR, material);
    return Checks.of(Balance.of(arm().build()), sizing, rules);
  }

  @Test
  void bothMethodsHaveARuleForEachCheckWithItsSource() {
    for (Method method : Method.values()) {
      Rules rules = Rules.of(method);
      assertThat(rules.method()).isEqualTo(method);
      assertThat(rules.all()).extracting(Rule::check).isEqualTo(Check.all());
      assertThat(rules.all())
          .allSatisfy(
              rule -> {
                assertThat(rule.method()).isEqualTo(method);
                assertThat(rule.source()).isNotBlank();
                assertThat(rule.formula()).contains("≤");
                assertThat(rule.factor().meaning()).isNotBlank();
              });
      assertThat(method.words()).contains(": ");
    }
    assertThat(Check.all()).extracting(Check::name).doesNotHaveDuplicates();
    assertThat(Check.WELD.fedWith()).isEqualTo(WeldDemand.class);
    assertThat(Check.WELD).hasToString("fillet weld");
  }

  /** 235/2 MPa instead of 235/1.67, and the reason stands in the source. */
  @Test
  void anotherFactor() {
    Rule<BarDemand> own =
        Rules.allowable()
            .rule(Check.TOP_FACE)
            .orElseThrow()
            .with(new Factor(2, "own safety factor"), "old iron");
    Checked top = checked(checks(STEEL, Rules.allowable().with(own)), "arm", TOP);

    assertThat(top.resistance()).isCloseTo(117.5 * MPA, within(1e-3));
    assertThat(top.margin()).isEqualTo("strength divided by 2: own safety factor");
    assertThat(top.rule().source()).endsWith("; factor: old iron");
    assertThat(top.rule()).isEqualTo(own);
    assertThat(
            checked(
                    checks(STEEL, Rules.allowable().with(own)),
                    "arm",
                    "stress at the bottom face of foot–tip")
                .factor()
                .value())
        .as("other checks keep theirs")
        .isEqualTo(1.67);
  }

  @Test
  void anotherFactorCountsForTimberToo() {
    Rule<BarDemand> stated = Rules.resistance().rule(Check.TOP_FACE).orElseThrow();
    Rule<BarDemand> own = stated.with(new Factor(1.5, "own"), "dry");
    assertThat(checked(checks(SOFTWOOD, Rules.resistance().with(own)), "arm", TOP).resistance())
        .isCloseTo(16 * MPA, within(1e-3));

    Rule<BarDemand> shortLoads = stated.withTimber(new Factor(1.3 / 0.9, "for short loads"));
    Rules rules = Rules.resistance().with(shortLoads);
    assertThat(checked(checks(SOFTWOOD, rules), "arm", TOP).resistance())
        .isCloseTo(24 * 0.9 / 1.3 * MPA, within(1e-3));
    assertThat(checked(checks(STEEL, rules), "arm", TOP).resistance())
        .isCloseTo(235 * MPA, within(1e-3));
  }

  /** A law of one's own, on the first moment alone. */
  @Test
  void anotherLaw() {
    Law<BarDemand> ofMoment =
        new Law<>() {
          @Override
          public Optional<String> lacks(BarDemand demand) {
            return Optional.empty();
          }

          @Override
          public double demanded(BarDemand demand) {
            return Math.abs(demand.moment());
          }

          @Override
          public double resistance(BarDemand demand, double factor) {
            return 1000 / factor;
          }

          @Override
          public Dimension dimension() {
            return Dimension.MOMENT;
          }

          @Override
          public String working(BarDemand demand, double factor, UnitSystem units) {
            return "M against 1000 N·m";
          }
        };
    Rule<BarDemand> own =
        new Rule<>(
            Check.TOP_FACE,
            Method.ALLOWABLE,
            "M ≤ 1000 N·m/n",
            new Factor(1, "none"),
            "ours",
            ofMoment);
    Checked top = checked(checks(STEEL, Rules.allowable().with(own)), "arm", TOP);

    assertThat(top.demand()).isCloseTo(500, within(1e-9));
    assertThat(top.utilisation()).isCloseTo(0.5, within(1e-12));
    assertThat(top.dimension()).isEqualTo(Dimension.MOMENT);
    assertThat(top.working(UnitSystem.SI)).isEqualTo("M against 1000 N·m");
  }

  @Test
  void aRuleThatIsLeftOutIsTold() {
    Rules rules = Rules.resistance().without(Check.TOP_FACE);
    assertThat(rules.rule(Check.TOP_FACE)).isEmpty();
    assertThat(rules.all()).hasSize(Check.all().size() - 1);
    assertThat(whyNot(checks(STEEL, rules), "arm", TOP)).isEqualTo("the rules have none for it");
  }

  @Test
  void methodsAreNeverMixed() {
    Rule<BarDemand> other = Rules.resistance().rule(Check.SHEAR).orElseThrow();
    assertThatThrownBy(() -> Rules.allowable().with(other))
        .isInstanceOf(ModelException.class)
        .hasMessage("shear: method is RESISTANCE; wanted: the method of the set, ALLOWABLE");
    assertThatThrownBy(
            () ->
                Checks.of(
                    Balance.of(arm().build()),
                    Sizing.of(Method.ALLOWABLE),
                    Rules.none(Method.RESISTANCE)))
        .isInstanceOf(ModelException.class)
        .hasMessage("sizing: method is ALLOWABLE; wanted: that of the rules, RESISTANCE");
  }

  @Test
  void aFactorIsANumberAboveZero() {
    assertThatThrownBy(() -> new Factor(0, "own factor"))
        .isInstanceOf(ModelException.class)
        .hasMessage("own factor: factor is 0.0; wanted: a number above 0");
  }

  /** What stands in the loads is told, so that nothing is covered twice or not at all. */
  @Test
  void factorsOfTheLoadsAreTold() {
    LoadCase plain = LoadCase.ALL_LOADS;
    LoadCase gust = new LoadCase("gust", Map.of("load", 1.5), 1.2);

    assertThat(loads(Method.ALLOWABLE, plain))
        .isEqualTo("loads as they are stated, no load factors");
    assertThat(loads(Method.RESISTANCE, plain))
        .isEqualTo(
            "loads as they are stated, no load factors; design resistances want loads with load"
                + " factors; the case has none, so nothing is left for larger loads");
    assertThat(loads(Method.RESISTANCE, gust))
        .isEqualTo(
            "load factors of the case \"gust\": load × 1.5; dynamic factor 1.2 of the case \"gust\""
                + " on all given loads");
    assertThat(loads(Method.ALLOWABLE, gust))
        .endsWith(
            "the safety factors of allowable stresses cover the loads too; load factors come on top"
                + " of them");
  }

  private static String loads(Method method, LoadCase loadCase) {
    Balance balance = Balance.of(arm().build(), loadCase, bellcrank.statics.device.Pose.DRAWN);
    Checks checks = Checks.of(balance, Sizing.of(method).with("arm", BAR, STEEL));
    double top = checked(checks, "arm", TOP).demand();
    double grown = loadCase.factor("load");
    assertThat(top).isCloseTo(96.25 * MPA * grown, within(1e-3));
    return String.join("; ", checks.loads());
  }
}
