package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.strength.Boom.View;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.Crossing.Certainty;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of what gives first, on random booms with a shoved block. */
class CapacityProperties {

  @Provide
  Arbitrary<Boom> booms() {
    return Boom.any();
  }

  private static Capacity capacity(Boom boom) {
    return Capacity.of(boom.device(), boom.sizing(), Boom.GROWING);
  }

  /** All loads of the case with the growing ones multiplied, without the code under test. */
  private static LoadCase grown(Device device, double multiple) {
    LoadCase stated = device.cases().get(0);
    Map<String, Double> factors = new TreeMap<>(stated.factors());
    factors.merge("cask", multiple, (own, by) -> own * by);
    factors.merge("shove", multiple, (own, by) -> own * by);
    return new LoadCase("grown", factors, stated.dynamic());
  }

  private static Checks at(Boom boom, double multiple) {
    Device device = boom.device();
    return Checks.of(Balance.of(device, grown(device, multiple), Pose.DRAWN), boom.sizing());
  }

  private static Checked find(Checks checks, Checked like) {
    return Tried.checked(checks, like.part(), like.what());
  }

  /**
   * At each multiple a new balance uses up the check that gives there, and no ranked one before.
   */
  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void atItsMultipleACheckIsUsedUp(@ForAll("booms") Boom boom) {
    for (Crossing crossing : capacity(boom).ranked()) {
      if (crossing instanceof Crossing.Used used) {
        double utilisation = find(at(boom, used.multiple()), used.reached()).utilisation();
        if (used.certainty() == Certainty.ALREADY) {
          assertThat(utilisation).isGreaterThanOrEqualTo(1);
        } else if (used.certainty() != Certainty.AT_ONCE) {
          assertThat(utilisation).as(used.reached().what()).isCloseTo(1, within(1e-9));
          assertThat(used.reached().utilisation()).isCloseTo(1, within(1e-9));
        }
        assertThat(used.stated().utilisation())
            .isCloseTo(find(at(boom, 1), used.stated()).utilisation(), within(1e-9));
      }
    }
  }

  /** Brute force: 60 new balances below the first multiple, none of them used up. */
  @Property(tries = 10, edgeCases = EdgeCasesMode.NONE)
  void nothingGivesBeforeTheFirst(@ForAll("booms") Boom boom) {
    Capacity capacity = capacity(boom);
    double first = capacity.first().orElseThrow().multiple();
    Assume.that(first > 0);
    for (int k = 0; k < 60; k++) {
      double multiple = first * k / 60;
      assertThat(at(boom, multiple).checked())
          .allSatisfy(one -> assertThat(one.utilisation()).isLessThan(1));
      assertThat(
              Limits.of(boom.device(), grown(boom.device(), multiple), Pose.DRAWN, List.of())
                  .verdict())
          .isNotInstanceOf(Verdict.DoesNotHold.class);
    }
  }

  /** What never gives is not used up at a hundred multiples up to where the device gives way. */
  @Property(tries = 10, edgeCases = EdgeCasesMode.NONE)
  void whatNeverGivesDoesNot(@ForAll("booms") Boom boom) {
    Capacity capacity = capacity(boom);
    double end =
        capacity.ranked().stream()
            .filter(Crossing.GivesWay.class::isInstance)
            .mapToDouble(Crossing::multiple)
            .findFirst()
            .orElse(1000);
    for (int k = 0; k <= 100; k++) {
      Checks checks = at(boom, end * k / 100);
      for (Checked never : capacity.never()) {
        assertThat(find(checks, never).utilisation()).isLessThan(1 + 1e-9);
      }
    }
  }

  /** If all loads grow, the multiple of a proportional check is one over its utilisation. */
  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void inProportion(@ForAll("booms") Boom boom) {
    Device device = boom.device();
    String[] all = device.loads().stream().map(load -> load.name()).toArray(String[]::new);
    Capacity capacity = Capacity.of(device, boom.sizing(), Variation.of(all));
    Checks stated = at(boom, 1);
    for (Crossing crossing : capacity.ranked()) {
      if (crossing instanceof Crossing.Used used && used.reached().rule().law().isProportional()) {
        assertThat(used.certainty()).isEqualTo(Certainty.PROPORTIONAL);
        double expected = 1 / find(stated, used.stated()).utilisation();
        assertThat(used.multiple()).isCloseTo(expected, within(1e-9 * expected));
      }
    }
    assertThat(capacity.ranked()).isNotEmpty();
  }

  private static double first(Device device, Sizing sizing) {
    return Capacity.of(device, sizing, Boom.GROWING).first().orElseThrow().multiple();
  }

  /** More strength anywhere never makes the first thing give sooner. */
  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void strengthNeverHarms(
      @ForAll("booms") Boom boom, @ForAll @DoubleRange(min = 1, max = 3) double more) {
    Device device = boom.device();
    Sizing sizing = boom.sizing();
    double before = first(device, sizing) * (1 - 1e-9);
    Material material = boom.material();
    Map<Material.Strength, Double> strengths = new TreeMap<>(material.strengths());
    strengths.replaceAll((kind, value) -> value * more);
    Material better =
        new Material(
            "better",
            material.kind(),
            material.elasticity() * more,
            material.density(),
            strengths,
            "ours");

    assertThat(first(device, sizing.with("boom", boom.section().times(2), material)))
        .isGreaterThanOrEqualTo(before);
    assertThat(first(device, sizing.with("boom", boom.section(), better)))
        .isGreaterThanOrEqualTo(before);
    assertThat(first(device, sizing.with("block", boom.section().times(20), better)))
        .isGreaterThanOrEqualTo(Math.min(before, first(device, sizing)) * (1 - 1e-9));
  }

  /** Neither units nor axes nor the order of parts matter. */
  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void invariance(
      @ForAll("booms") Boom boom,
      @ForAll @DoubleRange(min = -3.2, max = 3.2) double angle,
      @ForAll @DoubleRange(min = 0.2, max = 5) double scale,
      @ForAll boolean reversed) {
    View view = new View(angle, scale, reversed);
    Capacity before = capacity(boom);
    Capacity after = Capacity.of(boom.device(view), boom.sizing(view), Boom.GROWING);

    assertThat(after.ranked()).hasSameSizeAs(before.ranked());
    assertThat(multiples(after).keySet()).isEqualTo(multiples(before).keySet());
    multiples(before)
        .forEach(
            (what, multiple) ->
                assertThat(multiples(after).get(what))
                    .as(what)
                    .isCloseTo(multiple, within(1e-7 * (1e-3 + multiple))));
    assertThat(after.never()).hasSameSizeAs(before.never());
    assertThat(after.notChecked()).containsExactlyInAnyOrderElementsOf(before.notChecked());
  }

  private static Map<String, Double> multiples(Capacity capacity) {
    Map<String, Double> multiples = new TreeMap<>();
    for (Crossing crossing : capacity.ranked()) {
      String name =
          crossing instanceof Crossing.Used used
              ? used.stated().part() + ": " + used.stated().what()
              : "gives way";
      multiples.put(name, crossing.multiple());
    }
    return multiples;
  }

  /** Along each bar 500 places are looked at: none is used more than the one that is told. */
  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void theWorstPlaceIsTheWorst(@ForAll("booms") Boom boom) {
    Balance balance = Balance.of(boom.device());
    Checks checks = Checks.of(balance, boom.sizing());
    Rules rules = Rules.of(boom.method());
    Sized sized = new Sized(boom.section(), boom.material());
    balance
        .internalForces("boom")
        .bars()
        .forEach(
            bar -> {
              for (Check<BarDemand> check :
                  List.of(Check.TOP_FACE, Check.BOTTOM_FACE, Check.SHEAR)) {
                Rule<BarDemand> rule = rules.rule(check).orElseThrow();
                double told =
                    Tried.checked(checks, "boom", BarChecking.what(check, bar.bar())).utilisation();
                for (int k = 0; k <= 500; k++) {
                  double at = bar.length() * k / 500;
                  BarDemand demand =
                      new BarDemand(
                          bar.normal(at, bellcrank.statics.device.Side.BEFORE),
                          bar.shear(at, bellcrank.statics.device.Side.BEFORE),
                          bar.moment(at, bellcrank.statics.device.Side.BEFORE),
                          sized);
                  double here =
                      rule.law().demanded(demand)
                          / rule.law().resistance(demand, rule.factor(boom.material()).value());
                  assertThat(here).isLessThanOrEqualTo(told * (1 + 1e-9) + 1e-12);
                }
              }
            });
  }
}
