package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Freedom;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** The motion with which a piece gives way is one that its parts let happen. */
class FailureMotionProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Provide
  Arbitrary<Device> general() {
    return RandomContacts.general();
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void whatMovesIsFreeTo(@ForAll("any") Device device) {
    check(device);
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void whatMovesIsFreeToInGeneralShape(@ForAll("general") Device device) {
    check(device);
  }

  private static void check(Device device) {
    if (Limits.of(device).limit(Variation.of("push")) instanceof Limit.Between between) {
      end(device, between.greatest(), 1);
      end(device, between.least(), -1);
    }
  }

  private static void end(Device device, Limit.End end, int sign) {
    if (!(end instanceof Limit.End.At at)) {
      return;
    }
    Optional<Freedom> motion = at.how().motion();
    Statistics.label("a motion at the limit").collect(motion.isPresent());
    if (motion.isPresent()) {
      MotionCheck check = new MotionCheck(device, motion.get().motions(), at.value(), sign);
      Set<String> expected = check.run(at.value());
      Set<String> told = new TreeSet<>();
      at.how().events().forEach(event -> told.add(event.kind() + " " + event.part()));
      assertThat(told).as(at.how().toString()).containsAll(expected);
    }
  }
}
