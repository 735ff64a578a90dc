package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Devices so large that free forces are chosen body by body and motions not by singular values. */
class LargeStackTest {

  /** Crates of 20 kg, each on two feet on the one below, the topmost pushed to the right. */
  private static Device stack(int crates, double push) {
    DeviceBuilder stack = Device.named("tall stack");
    String below = "ground";
    for (int k = 1; k <= crates; k++) {
      String crate = "crate " + k;
      double floor = 0.3 * k;
      String left = crate + " left";
      String right = crate + " right";
      stack
          .point(left, -0.42, floor)
          .point(right, 0.4, floor)
          .point(crate + " middle", 0, floor + 0.14)
          .member(crate, left, right, crate + " middle")
          .connect(new Contact(left, left, crate, below, Direction.UP, 0.5, 0.4))
          .connect(new Contact(right, right, crate, below, Direction.UP, 0.5, 0.4))
          .weight(crate + " weight", crate, crate + " middle", 20);
      below = crate;
    }
    return stack.force("push", below, below + " left", Vector.of(push, 0)).build();
  }

  /** Planks pinned end to end, each on a foot of its own, pushed at the first end. */
  static Device planks(int count) {
    DeviceBuilder row = Device.named("row of planks").point("p0", 0, 0);
    for (int k = 1; k <= count; k++) {
      String plank = "plank " + k;
      row.point("p" + k, 2.0 * k, 0.1 * Math.sin(k))
          .point("f" + k, 2.0 * k - 0.9, -0.2)
          .point("m" + k, 2.0 * k - 1, 0.05)
          .member(plank, "p" + (k - 1), "p" + k, "f" + k, "m" + k)
          .connect(new Contact("foot " + k, "f" + k, plank, "ground", Direction.UP, 0.4, 0.3))
          .weight("weight " + k, plank, "m" + k, 10);
      if (k > 1) {
        row.pin("pin " + k, "p" + (k - 1), "plank " + (k - 1), plank);
      }
    }
    return row.connect(new Contact("end", "p0", "plank 1", "ground", Direction.UP, 0.4, 0.3))
        .force("push", "plank 1", "p0", Vector.of(50, 0))
        .build();
  }

  /** The topmost slides where the push is μ·m·g. */
  @Test
  void theTopmostCrateSlides() {
    double most = 0.5 * 20 * 9.80665;
    Limits limits = Limits.of(stack(70, 50));

    assertThat(limits.greatest(Variation.of("push")).orElseThrow())
        .isCloseTo(most / 50, within(1e-10));
    assertThat(limits.verdict()).isEqualTo(new Verdict.Holds());
    assertThat(limits.sweep(Variation.of("push")).greatest()).isCloseTo(most / 50, within(1e-10));
  }

  @Test
  void aPushTooStrongIsToldWithItsMotion() {
    Device device = stack(60, 120);
    Verdict.DoesNotHold not = (Verdict.DoesNotHold) Limits.of(device).verdict();

    assertThat(not.how().words(device, UnitSystem.SI)).startsWith("crate 60").contains("slides");
    assertThat(not.how().motion().orElseThrow().motions()).hasSize(1);
  }

  /** Crates side by side, the first one pushed: those beside it have no part in what happens. */
  @Test
  void oneOfManyCratesSideBySideSlides() {
    DeviceBuilder row = Device.named("row of crates");
    for (int k = 1; k <= 120; k++) {
      String crate = "crate " + k;
      row.point("left " + k, k - 0.42, 0)
          .point("right " + k, k + 0.4, 0)
          .point("middle " + k, k, 0.14)
          .member(crate, "left " + k, "right " + k, "middle " + k)
          .connect(new Contact("left " + k, "left " + k, crate, "ground", Direction.UP, 0.5, 0.4))
          .connect(new Contact("right " + k, "right " + k, crate, "ground", Direction.UP, 0.5, 0.4))
          .weight("weight " + k, crate, "middle " + k, 20);
    }
    Device device = row.force("push", "crate 1", "left 1", Vector.of(120, 0)).build();
    Verdict.DoesNotHold not = (Verdict.DoesNotHold) Limits.of(device).verdict();

    assertThat(not.how().events())
        .extracting(Event::part, Event::kind)
        .containsExactly(tuple("left 1", Event.Kind.SLIDES), tuple("right 1", Event.Kind.SLIDES));
    assertThat(not.how().motion().orElseThrow().motions()).hasSize(1);
    Limits holding = Limits.of(device).withFriction(1.3);
    assertThat(holding.verdict()).isEqualTo(new Verdict.Holds());
    assertThat(holding.greatest(Variation.of("push")).orElseThrow())
        .isCloseTo(1.3 * 0.5 * 20 * 9.80665 / 120, within(1e-10));
  }

  /** What gives way at the near end is the same however long the row is. */
  @Test
  void aLongRowGivesWayLikeAShorterOne() {
    Variation push = Variation.of("push");
    double some = Limits.of(planks(49)).greatest(push).orElseThrow();
    double more = Limits.of(planks(51)).greatest(push).orElseThrow();
    double many = Limits.of(planks(100)).greatest(push).orElseThrow();
    double most = Limits.of(planks(130)).greatest(push).orElseThrow();

    assertThat(more).isGreaterThan(some);
    assertThat(most).isCloseTo(many, within(1e-9 * many));
    assertThat(List.of(some, more, many)).isSorted();
  }
}
