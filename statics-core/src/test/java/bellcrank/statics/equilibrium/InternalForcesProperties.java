package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Side;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Vector;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of the forces inside members, on random frames that branch like trees. */
class InternalForcesProperties {

  private static final double TURNS = 6.2;

  private static Balance turned(Device device, LoadCase loadCase, double angle) {
    Frame turn = Frame.turnAbout(device.point("P0"), angle);
    return Balance.of(device, loadCase, Pose.DRAWN.with("frame", turn));
  }

  private static Balance turned(long seed, double angle) {
    Device device = RandomFrame.of(seed);
    return turned(device, device.cases().get(0), angle);
  }

  private static List<BarForces> bars(Balance balance) {
    return balance.internalForces("frame").bars();
  }

  /** A place on a bar that is no end of a piece. */
  private static double inside(BarForces bar, double share) {
    Piece piece = bar.pieces().get((int) (share * bar.pieces().size()));
    return piece.start() + (0.1 + 0.8 * share) * (piece.end() - piece.start());
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void forcesAddedUpByHandOnEitherSideSayTheSame(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -TURNS, max = TURNS) double angle,
      @ForAll @DoubleRange(min = 0, max = 0.99) double share) {
    Balance balance = turned(seed, angle);
    PlainCut plain = new PlainCut(balance);
    for (BarForces bar : bars(balance)) {
      double s = inside(bar, share);
      for (boolean before : new boolean[] {true, false}) {
        List<Double> expected = plain.at(bar.bar(), s, before);
        for (InsideForce force : InsideForce.values()) {
          assertThat(bar.value(force, s, Side.BEFORE))
              .as(force + " at " + s + " of " + bar.bar())
              .isCloseTo(expected.get(force.index()), within(1e-9));
        }
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void theMomentRisesByTheShear(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0, max = 0.99) double share,
      @ForAll @DoubleRange(min = -TURNS, max = TURNS) double angle) {
    for (BarForces bar : bars(turned(seed, angle))) {
      double s = inside(bar, share);
      double step = 1e-4;
      double rise = bar.moment(s + step, Side.AFTER) - bar.moment(s - step, Side.AFTER);
      assertThat(rise / (2 * step)).isCloseTo(bar.shear(s, Side.AFTER), within(1e-6));
      for (Piece piece : bar.pieces()) {
        Polynomial slope = piece.curve(InsideForce.MOMENT).slope();
        double middle = (piece.start() + piece.end()) / 2;
        assertThat(slope.at(middle))
            .isCloseTo(piece.curve(InsideForce.SHEAR).at(middle), within(1e-9));
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void peaksAndZerosAreWhatSamplesShow(@ForAll long seed) {
    for (BarForces bar : bars(turned(seed, 0))) {
      for (InsideForce force : InsideForce.values()) {
        Extremes extremes = bar.extremes(force);
        List<Double> zeros = bar.zeros(force);
        double last = 0;
        for (int i = 0; i <= 500; i++) {
          double s = Math.min(bar.length(), bar.length() * i / 500);
          double value = bar.value(force, s, Side.AFTER);
          assertThat(value)
              .isBetween(extremes.least().value() - 1e-7, extremes.greatest().value() + 1e-7);
          if (i > 0 && value * last < 0 && Math.min(Math.abs(value), Math.abs(last)) > 1e-6) {
            double low = bar.length() * (i - 1) / 500 - 1e-9;
            assertThat(zeros)
                .as("zeros of " + force)
                .anyMatch(zero -> zero >= low && zero <= s + 1e-9);
          }
          last = value;
        }
        for (double zero : zeros) {
          double before = bar.value(force, zero, Side.BEFORE);
          double after = bar.value(force, zero, Side.AFTER);
          assertThat(Math.abs(before) < 1e-6 || Math.abs(after) < 1e-6 || before * after < 0)
              .isTrue();
        }
        Peak most = extremes.greatest();
        assertThat(bar.value(force, most.at(), most.side())).isCloseTo(most.value(), within(1e-9));
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void aFreeEndCarriesNothing(@ForAll long seed) {
    Device device = RandomFrame.of(seed);
    for (BarForces bar : bars(Balance.of(device))) {
      for (boolean start : new boolean[] {true, false}) {
        double s = start ? 0 : bar.length();
        boolean loaded = bar.places().stream().anyMatch(one -> Math.abs(one.at() - s) < 1e-6);
        if (!loaded) {
          for (InsideForce force : InsideForce.values()) {
            assertThat(bar.value(force, s, Side.AFTER)).isCloseTo(0, within(1e-12));
          }
        }
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void whereBarsMeetTheirForcesAndTheLoadsAddUpToNothing(@ForAll long seed) {
    Device bare = RandomFrame.of(seed);
    Balance balance = Balance.of(bare);
    Map<String, Vector> sums = new HashMap<>();
    for (BarForces bar : bars(balance)) {
      for (Side side : Side.values()) {
        String point = side == Side.AFTER ? bar.bar().start() : bar.bar().end();
        double s = side == Side.AFTER ? 0 : bar.length();
        Vector u = bar.start().to(bar.end()).times(1 / bar.length());
        // on the part beyond the start acts the part before it
        double sign = side == Side.AFTER ? 1 : -1;
        Vector force =
            u.times(bar.normal(s, side))
                .plus(Vector.of(u.y(), -u.x()).times(bar.shear(s, side)))
                .times(sign);
        sums.merge(point, force, Vector::plus);
      }
    }
    for (Load load : bare.loads()) {
      if (load instanceof bellcrank.statics.device.Force force) {
        sums.merge(force.at(), force.vector(), Vector::plus);
      }
    }
    sums.merge(
        "P0",
        Vector.of(
            balance.number("pin.x on frame").orElseThrow(),
            balance.number("pin.y on frame").orElseThrow()),
        Vector::plus);
    for (Map.Entry<String, Vector> sum : sums.entrySet()) {
      boolean inside =
          bare.members().get(0).bars().stream().anyMatch(bar -> isInside(bare, bar, sum.getKey()));
      if (!inside) {
        assertThat(sum.getValue().norm()).as(sum.getKey()).isCloseTo(0, within(1e-9));
      }
    }
  }

  private static boolean isInside(Device device, Bar bar, String point) {
    double a = device.point(bar.start()).distance(device.point(point));
    double b = device.point(bar.end()).distance(device.point(point));
    double length = device.point(bar.start()).distance(device.point(bar.end()));
    return a > 1e-6 && b > 1e-6 && a + b - length < 1e-12;
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void loadsTogetherDoWhatTheyDoOneByOne(
      @ForAll long seed,
      @ForAll Random random,
      @ForAll @DoubleRange(min = -3, max = 3) double factor,
      @ForAll @DoubleRange(min = 0, max = 0.99) double share) {
    Device device = RandomFrame.of(seed);
    Map<String, Double> one = new HashMap<>();
    Map<String, Double> other = new HashMap<>();
    Map<String, Double> both = new HashMap<>();
    for (Load load : device.loads()) {
      if (!(load instanceof Sought)) {
        boolean first = random.nextBoolean();
        one.put(load.name(), first ? 1.0 : 0.0);
        other.put(load.name(), first ? 0.0 : 1.0);
        both.put(load.name(), first ? 1.0 : factor);
      }
    }
    List<BarForces> a = bars(turned(device, new LoadCase("a", one, 1), 0.4));
    List<BarForces> b = bars(turned(device, new LoadCase("b", other, 1), 0.4));
    List<BarForces> sum = bars(turned(device, new LoadCase("c", both, 1), 0.4));
    for (int i = 0; i < sum.size(); i++) {
      double s = inside(sum.get(i), share);
      for (InsideForce force : InsideForce.values()) {
        double expected =
            a.get(i).value(force, s, Side.AFTER) + factor * b.get(i).value(force, s, Side.AFTER);
        assertThat(sum.get(i).value(force, s, Side.AFTER)).isCloseTo(expected, within(1e-9));
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void axesUnitsAndMirrorsDoNotMatter(
      @ForAll long seed,
      @ForAll boolean mirror,
      @ForAll @DoubleRange(min = -TURNS, max = TURNS) double angle,
      @ForAll @DoubleRange(min = -2, max = 2) double tenTo,
      @ForAll @DoubleRange(min = 0, max = 0.99) double share) {
    double scale = Math.pow(10, tenTo);
    Similarity change = new Similarity(mirror, angle, scale, Vector.of(3 * scale, -5 * scale), 4.4);
    Device device = RandomFrame.of(seed);
    List<BarForces> before = bars(Balance.of(device));
    List<BarForces> after = bars(Balance.of(change.of(device)));
    for (int i = 0; i < before.size(); i++) {
      double s = inside(before.get(i), share);
      BarForces now = after.get(i);
      // in a mirror left is right
      assertThat(now.normal(s * scale, Side.AFTER))
          .isCloseTo(4.4 * before.get(i).normal(s, Side.AFTER), within(1e-7));
      assertThat(now.shear(s * scale, Side.AFTER))
          .isCloseTo(4.4 * change.sense() * before.get(i).shear(s, Side.AFTER), within(1e-7));
      assertThat(now.moment(s * scale, Side.AFTER))
          .isCloseTo(change.couple() * before.get(i).moment(s, Side.AFTER), within(1e-7 * scale));
    }
  }
}
