package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.geometry.Vector;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of tipping and sliding sideways. */
class SideTipProperties {

  private static Arbitrary<Double> between(double least, double greatest) {
    return Arbitraries.doubles().between(least, greatest).ofScale(4);
  }

  private static Arbitrary<SideStay> stay(String name) {
    return Combinators.combine(between(0.5, 3), between(-0.2, 0.2), between(0.5, 3))
        .as((height, offset, anchor) -> new SideStay(name, height, offset, anchor, 0));
  }

  @Provide
  Arbitrary<SideView> views() {
    Arbitrary<SideView> bases =
        Combinators.combine(
                between(0.1, 1), between(0.05, 0.8), between(-0.03, 0.03), between(-0.2, 0.2))
            .as(
                (breadth, friction, offset, lean) ->
                    SideView.of("sill", breadth, friction).withBaseOffset(offset).withLean(lean));
    Arbitrary<SideLoad> weights =
        Combinators.combine(between(0.2, 3), between(-0.3, 0.3), between(100, 2000))
            .as((height, offset, down) -> new SideLoad("barrel", height, offset, down, 0));
    Arbitrary<SideLoad> pulls =
        Combinators.combine(between(0.2, 3), between(20, 300))
            .as((height, side) -> new SideLoad("rope", height, 0, 0, side));
    Arbitrary<SideLink> ties =
        Combinators.combine(between(0.5, 3), between(-0.5, 0.5), between(0, 200))
            .as((height, anchor, pull) -> new SideLink("tie", height, 0, anchor, pull));
    return Combinators.combine(bases, weights, pulls, ties, between(-0.1, 0.1))
        .as(
            (base, weight, pull, tie, slope) ->
                base.withLoad(weight).withLoad(pull).withLink(tie).withSlope(slope));
  }

  @Provide
  Arbitrary<SideStay> stays() {
    return stay("stay");
  }

  /** The greatest multiple of all sideways effects; −∞ if none, ∞ if there is no end. */
  private static double reach(SideView view) {
    return SideTip.of(view).margin() instanceof Limit.Between between
        ? between.greatest() instanceof Limit.End.At at ? at.value() : Double.POSITIVE_INFINITY
        : Double.NEGATIVE_INFINITY;
  }

  /**
   * A stay that pulls along the very edge of the base's cone of friction wedges it with forces that
   * grow without end; there rounding decides, so such views are left out.
   */
  private static void assumeNoWedge(SideView view) {
    Device device = view.device();
    for (Connection connection : device.connections()) {
      if (connection instanceof Line line) {
        Vector pull = device.point(line.first().at()).to(device.point(line.second().at()));
        for (Connection other : device.connections()) {
          if (other instanceof ContactBase base) {
            Vector push = base.push().times(1);
            double slope = Math.abs(push.cross(pull) / push.dot(pull));
            Assume.that(Math.abs(slope - base.friction()) > 0.02);
          }
        }
      }
    }
  }

  private static double slack(double value) {
    return Double.isInfinite(value) ? value : value - 1e-7 * (1 + Math.abs(value));
  }

  private static SideView mirrored(SideView view) {
    SideView other =
        SideView.of(view.base(), view.breadth(), view.friction())
            .withBaseOffset(-view.baseOffset())
            .withLean(-view.lean())
            .withSlope(-view.slope());
    for (SideLoad load : view.loads()) {
      other =
          other.withLoad(
              new SideLoad(load.name(), load.height(), -load.offset(), load.down(), -load.side()));
    }
    for (SideLink link : view.links()) {
      other =
          other.withLink(
              new SideLink(
                  link.name(),
                  link.height(),
                  link.anchorHeight(),
                  -link.anchorOffset(),
                  link.pullPerLength()));
    }
    for (SideStay stay : view.stays()) {
      other =
          other.withStay(
              new SideStay(
                  stay.name(),
                  stay.height(),
                  -stay.offset(),
                  -stay.anchorOffset(),
                  stay.anchorHeight()));
    }
    return other;
  }

  /** The same with all lengths and all forces multiplied. */
  private static SideView scaled(SideView view, double length, double force) {
    SideView other =
        SideView.of(view.base(), length * view.breadth(), view.friction())
            .withBaseOffset(length * view.baseOffset())
            .withLean(view.lean())
            .withSlope(view.slope());
    for (SideLoad load : view.loads()) {
      other =
          other.withLoad(
              new SideLoad(
                  load.name(),
                  length * load.height(),
                  length * load.offset(),
                  force * load.down(),
                  force * load.side()));
    }
    for (SideLink link : view.links()) {
      other =
          other.withLink(
              new SideLink(
                  link.name(),
                  length * link.height(),
                  length * link.anchorHeight(),
                  length * link.anchorOffset(),
                  force / length * link.pullPerLength()));
    }
    for (SideStay stay : view.stays()) {
      other =
          other.withStay(
              new SideStay(
                  stay.name(),
                  length * stay.height(),
                  length * stay.offset(),
                  length * stay.anchorOffset(),
                  length * stay.anchorHeight()));
    }
    return other;
  }

  private static void same(double one, double other) {
    if (Double.isInfinite(other)) {
      assertThat(one).isEqualTo(other);
    } else {
      assertThat(one).isCloseTo(other, within(1e-7 * (1 + Math.abs(other))));
    }
  }

  @Property(tries = 200)
  void aBroaderBaseNeverTipsSooner(
      @ForAll("views") SideView view, @ForAll @DoubleRange(min = 1, max = 4) double times) {
    assertThat(reach(view.withBreadth(times * view.breadth())))
        .isGreaterThanOrEqualTo(slack(reach(view)));
  }

  @Property(tries = 200)
  void aStayNeverLowersTheLimit(@ForAll("views") SideView view, @ForAll("stays") SideStay stay) {
    assumeNoWedge(view.withStay(stay));
    assertThat(reach(view.withStay(stay))).isGreaterThanOrEqualTo(slack(reach(view)));
  }

  @Property(tries = 200)
  void theMirroredDeviceDoesTheMirrored(
      @ForAll("views") SideView bare, @ForAll("stays") SideStay stay) {
    SideView view = bare.withStay(stay);
    assumeNoWedge(view);
    SideTip tip = SideTip.of(view);
    SideTip other = SideTip.of(mirrored(view));
    same(reach(other.view()), reach(view));
    assertThat(other.verdict().words()).isEqualTo(tip.verdict().words());
    assertThat(other.tippingEdge()).isEqualTo(tip.tippingEdge().map(SideEdge::opposite));
    assertThat(other.slidesFirst()).isEqualTo(tip.slidesFirst());
    same(other.breadthNeeded(1).orElse(-1), tip.breadthNeeded(1).orElse(-1));
  }

  @Property(tries = 100)
  void theUnitsOfLengthAndForceDoNotMatter(
      @ForAll("views") SideView bare,
      @ForAll("stays") SideStay stay,
      @ForAll @DoubleRange(min = 0.01, max = 100) double length,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double force) {
    SideView view = bare.withStay(stay);
    assumeNoWedge(view);
    SideView other = scaled(view, length, force);
    same(reach(other), reach(view));
    assertThat(SideTip.of(other).tippingEdge()).isEqualTo(SideTip.of(view).tippingEdge());
    same(
        SideTip.of(other).breadthNeeded(1).orElse(-length) / length,
        SideTip.of(view).breadthNeeded(1).orElse(-1));
  }

  @Property(tries = 200)
  void theBreadthNeededIsTheOneAtWhichItJustStands(
      @ForAll("views") SideView bare, @ForAll("stays") SideStay stay) {
    SideView view = bare.withStay(stay);
    assumeNoWedge(view);
    double needed = SideTip.of(view).breadthNeeded(1).orElse(0);
    // a base is told from a narrower one in sizes of the device, not in its own breadths
    double bit = 1e-6 * view.device().size();
    if (needed > 2 * bit) {
      // where only a squeeze between stay and base holds it, its forces have no end at that breadth
      Verdict nearby = Limits.of(view.withBreadth(needed * 1.001).device()).verdict();
      Assume.that(!(nearby instanceof Verdict.HoldsOnceSeated));
      assertThat(SideSearch.stands(view.withBreadth(needed + bit).device())).isTrue();
      assertThat(SideSearch.stands(view.withBreadth(needed - bit).device())).isFalse();
    }
  }

  /** Without stays: moments about the edges and the sideways force against μN, by hand. */
  @Property(tries = 300)
  void freeStandingItFollowsMomentsAboutTheEdges(@ForAll("views") SideView view) {
    double lean = view.lean();
    double slope = view.slope();
    double normal = 0;
    double level = 0;
    double moment = 0;
    double steady = 0;
    for (SideLoad load : view.loads()) {
      double z = load.height() * Math.sin(lean) + load.offset() * Math.cos(lean);
      double y = load.height() * Math.cos(lean) - load.offset() * Math.sin(lean);
      double along = load.down() * Math.sin(slope) + load.side() * Math.cos(slope);
      double square = load.down() * Math.cos(slope) - load.side() * Math.sin(slope);
      normal += square;
      steady += square;
      level += along;
      moment += z * square + y * along;
    }
    for (SideLink link : view.links()) {
      double q = link.pullPerLength() * Math.cos(lean) * Math.cos(slope);
      double across = q * (link.anchorOffset() - link.height() * Math.sin(lean));
      double square = q * link.height() * Math.cos(lean);
      normal += square;
      level += across;
      // taken at its end on the device, not at its anchor
      moment += link.height() * Math.sin(lean) * square + link.height() * Math.cos(lean) * across;
    }
    assertThat(steady).isPositive();
    double right = view.baseOffset() + view.breadth() / 2;
    double left = view.baseOffset() - view.breadth() / 2;
    double tight =
        Math.min(
            Math.min(right - moment / normal, moment / normal - left),
            view.friction() - Math.abs(level) / normal);
    if (Math.abs(tight) > 1e-6) {
      assertThat(SideSearch.stands(view.device())).isEqualTo(tight > 0);
      assertThat(SideTip.of(view).verdict() instanceof Verdict.DoesNotHold).isEqualTo(tight < 0);
    }
  }
}
