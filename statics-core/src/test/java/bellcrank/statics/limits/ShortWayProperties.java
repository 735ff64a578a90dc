package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** The greatest value alone, which is found the short way, is that of the whole limit. */
class ShortWayProperties {

  private static final Variation PUSH = Variation.of("push");

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void bothWaysFindTheSame(@ForAll("any") Device device) {
    Limits limits = Limits.of(device);
    same(limits.greatest(PUSH), limits.limit(PUSH));
    same(limits.greatest(PUSH), limits.limit(PUSH));
  }

  /** Everything is turned together, and the loads are not: another problem on kept conditions. */
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void keptConditionsServeOtherPoses(@ForAll("any") Device device) {
    Limits drawn = Limits.of(device);
    for (double turn : new double[] {0.03, -0.2}) {
      Pose pose = turned(device, turn);
      Limits anew = Limits.of(device, device.cases().get(0), pose, List.of());
      Limits there = drawn.at(pose);
      same(there.greatest(PUSH), anew.limit(PUSH));
      assertThat(there.verdict().words()).isEqualTo(anew.verdict().words());
    }
    same(drawn.greatest(PUSH), Limits.of(device).limit(PUSH));
  }

  private static Pose turned(Device device, double turn) {
    Map<String, Frame> frames = new HashMap<>();
    device
        .members()
        .forEach(member -> frames.put(member.name(), Frame.turnAbout(Point.ORIGIN, turn)));
    return Pose.of(frames);
  }

  private static void same(OptionalDouble number, Limit limit) {
    boolean found =
        limit instanceof Limit.Between between && between.greatest() instanceof Limit.End.At;
    Statistics.label("there is a greatest push").collect(found);
    boolean endless =
        limit instanceof Limit.Between between
            && (between.greatest() instanceof Limit.End.Unlimited
                || between.greatest() instanceof Limit.End.SelfLocking);
    assertThat(number.isPresent()).isEqualTo(found || endless);
    if (endless) {
      assertThat(number).hasValue(Double.POSITIVE_INFINITY);
    }
    if (limit instanceof Limit.Between between && between.greatest() instanceof Limit.End.At at) {
      double size = Math.max(1, Math.abs(at.value()));
      assertThat(number.orElseThrow()).isCloseTo(at.value(), within(1e-9 * size));
    }
  }
}
