package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Forces against velocities: velocities come from places of neighbouring poses. */
class VirtualWorkProperties {

  @Provide
  Arbitrary<Linkage> linkages() {
    return Arbitraries.oneOf(levers(), sliders(), fourBars());
  }

  @Provide
  Arbitrary<Linkage> levers() {
    return Combinators.combine(
            number(0.2, 2), number(0.1, 1), number(0, 6.2), number(0, 6.2), number(0, 6.2))
        .as(
            (effort, resistance, between, pull, push) ->
                new Linkage.Lever(
                    effort,
                    resistance,
                    between,
                    Direction.ofAngle(pull).times(200),
                    Direction.ofAngle(push)));
  }

  private static Arbitrary<Linkage> sliders() {
    return Combinators.combine(number(0.2, 0.6), number(0.8, 2), number(0, 6.2))
        .as(
            (crank, rod, pull) ->
                new Linkage.SliderCrank(crank, rod, Direction.ofAngle(pull).times(150)));
  }

  private static Arbitrary<Linkage> fourBars() {
    // a crank this short goes all the way round (Grashof)
    return Combinators.combine(
            number(0.2, 0.5), number(1.4, 1.8), number(1.4, 1.8), number(1.5, 1.9), number(0, 6.2))
        .as(
            (crank, coupler, rocker, base, pull) ->
                new Linkage.FourBar(
                    crank, coupler, rocker, base, Direction.ofAngle(pull).times(300)));
  }

  private static Arbitrary<Double> number(double least, double most) {
    return Arbitraries.doubles().between(least, most).ofScale(6);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void theIdealAdvantageIsTheRatioOfDisplacements(
      @ForAll("linkages") Linkage linkage, @ForAll @DoubleRange(min = 0, max = 6.2) double angle) {
    double expected = linkage.velocityRatio(angle);
    Assume.that(Math.abs(expected) > 1e-2 && Math.abs(expected) < 1e2);
    idealIsRatioOfDisplacements(linkage, angle);
  }

  static void idealIsRatioOfDisplacements(Linkage linkage, double angle) {
    double expected = linkage.velocityRatio(angle);
    Balance balance = Balance.of(linkage.at(angle));
    assertThat(balance.advantage().orElseThrow())
        .isInstanceOfSatisfying(
            Advantage.Ratio.class,
            ratio -> {
              double close = 1e-6 * (1 + expected * expected);
              assertThat(ratio.ideal()).isCloseTo(expected, within(close));
              // neither weights nor friction: the forces are in that ratio too
              assertThat(ratio.actual()).isCloseTo(ratio.ideal(), within(1e-9 * close / 1e-6));
            });
    assertThat(balance.mobility().freedoms()).hasSize(1);
    assertThat(balance.freedoms()).isEmpty();
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void aPoseIsTheDeviceDrawnThere(
      @ForAll("linkages") Linkage linkage,
      @ForAll @DoubleRange(min = 0, max = 6.2) double drawn,
      @ForAll @DoubleRange(min = 0, max = 6.2) double angle) {
    double ratio = linkage.velocityRatio(angle);
    Assume.that(Math.abs(ratio) > 1e-2 && Math.abs(ratio) < 1e2);
    poseIsDrawnThere(linkage, drawn, angle);
  }

  static void poseIsDrawnThere(Linkage linkage, double drawn, double angle) {
    Device there = linkage.at(angle);
    Balance direct = Balance.of(there);
    Balance posed = Balance.of(linkage.at(drawn), LoadCase.ALL_LOADS, linkage.pose(drawn, angle));
    List<String> asks = new ArrayList<>(Linkage.asks(there));
    asks.add("ram");
    asks.add("advantage.ideal");
    asks.add("group(" + there.members().get(0).name() + ").x from ground");
    double scale = PlainStatics.of(there).forceScale();
    for (String ask : asks) {
      assertThat(si(posed, ask)).as(ask).isCloseTo(si(direct, ask), within(1e-8 * scale));
    }
    PlainStatics plain =
        PlainStatics.of(linkage.at(drawn), LoadCase.ALL_LOADS, linkage.pose(drawn, angle));
    for (int i = 0; i < plain.unknowns().size(); i++) {
      String ask = plain.unknowns().get(i).ask();
      assertThat(si(posed, ask))
          .as(ask)
          .isCloseTo(plain.value(i), within(1e-8 * scale * plain.unknowns().get(i).unit()));
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void preparedAndBalanceAgreeInEveryPose(
      @ForAll("linkages") Linkage linkage,
      @ForAll @DoubleRange(min = 0, max = 6.2) double drawn,
      @ForAll @DoubleRange(min = 0, max = 6.2) double first,
      @ForAll @DoubleRange(min = 0, max = 6.2) double second) {
    preparedAgrees(linkage, drawn, new double[] {first, second, drawn});
  }

  static void preparedAgrees(Linkage linkage, double drawn, double[] angles) {
    Device device = linkage.at(drawn);
    Prepared prepared = Prepared.of(device);
    assertThat(prepared.isDeterminate()).isTrue();
    Prepared.Buffer buffer = prepared.buffer();
    List<String> asks = new ArrayList<>(Linkage.asks(device));
    asks.add("ram");
    LoadCase doubled = new LoadCase("doubled", java.util.Map.of("hand", 2.0), 1);
    for (double angle : angles) {
      double ratio = linkage.velocityRatio(angle);
      if (Math.abs(ratio) < 1e-2 || Math.abs(ratio) > 1e2) {
        continue;
      }
      Pose pose = angle == drawn ? Pose.DRAWN : linkage.pose(drawn, angle);
      assertThat(buffer.solve(pose, doubled)).isTrue();
      assertThat(buffer.residual()).isLessThan(1e-11);
      Balance balance = Balance.of(device, doubled, pose);
      double scale = PlainStatics.of(device, doubled, pose).forceScale();
      for (String ask : asks) {
        assertThat(buffer.value(prepared.slot(ask)))
            .as(ask)
            .isCloseTo(si(balance, ask), within(1e-9 * scale));
      }
    }
  }

  private static double si(Balance balance, String ask) {
    return balance.number(ask).orElseThrow(() -> new AssertionError(ask + " is not answered"));
  }
}
