package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** More friction or one more part takes no state away. */
class MoreHoldsMoreProperties {

  private static final double UNLIMITED = Double.POSITIVE_INFINITY;

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void moreFriction(
      @ForAll("any") Device device, @ForAll @DoubleRange(min = 1, max = 3) double factor) {
    wider(device, Seen.rougher(device, factor));
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void oneMoreLine(
      @ForAll("any") Device device,
      @ForAll @DoubleRange(min = -3.1, max = 3.1) double x,
      @ForAll @DoubleRange(min = -3.1, max = 3.1) double y) {
    String body = SecondOpinionProperties.push(device).body();
    String at = SecondOpinionProperties.push(device).at();
    DeviceBuilder builder = Seen.changed(device, one -> one);
    builder.point("anchor", device.point(at).plus(Vector.of(x, y + 4)));
    wider(
        device, builder.line("one more", End.of(body, at), End.of(Ground.NAME, "anchor")).build());
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void oneMoreContact(
      @ForAll("any") Device device,
      @ForAll @DoubleRange(min = -3.1, max = 3.1) double angle,
      @ForAll @DoubleRange(min = 0, max = 1) double mu) {
    String body = SecondOpinionProperties.push(device).body();
    String at = SecondOpinionProperties.push(device).at();
    DeviceBuilder builder = Seen.changed(device, one -> one);
    builder.point("touch", device.point(at).plus(Vector.of(0.013, 0.017)));
    Direction push = Direction.ofAngle(angle);
    wider(
        device,
        builder.connect(new Contact("one more", "touch", body, Ground.NAME, push, mu, mu)).build());
  }

  /** In a piece without weight, all forces grow with the push. */
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void aWeightlessPieceKnowsNoSize(
      @ForAll("any") Device device, @ForAll @DoubleRange(min = -4, max = 4) double tenTo) {
    Device weightless = Seen.changed(device, one -> one).gravity(Vector.ZERO).build();
    Device other = new Seen(false, 0, 1, Vector.ZERO, Math.pow(10, tenTo)).of(weightless);
    assertThat(Limits.of(other).verdict().words())
        .isEqualTo(Limits.of(weightless).verdict().words());
  }

  private static void wider(Device device, Device stronger) {
    Limit before = Limits.of(device).limit(Variation.of("push"));
    Limit after = Limits.of(stronger).limit(Variation.of("push"));
    if (before instanceof Limit.Between old) {
      assertThat(after).isInstanceOf(Limit.Between.class);
      Limit.Between now = (Limit.Between) after;
      double most = value(old.greatest(), UNLIMITED);
      double least = value(old.least(), -UNLIMITED);
      assertThat(value(now.greatest(), UNLIMITED)).isGreaterThanOrEqualTo(most - slack(most));
      assertThat(value(now.least(), -UNLIMITED)).isLessThanOrEqualTo(least + slack(least));
    }
  }

  private static double slack(double value) {
    return Double.isInfinite(value) ? 0 : 1e-7 * Math.max(1, Math.abs(value));
  }

  private static double value(Limit.End end, double unlimited) {
    return end instanceof Limit.End.At at ? at.value() : unlimited;
  }
}
