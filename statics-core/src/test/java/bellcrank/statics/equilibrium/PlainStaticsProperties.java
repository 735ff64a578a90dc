package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Wrap;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The library and a plain dense assembly with another library say the same. */
class PlainStaticsProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.any();
  }

  @Provide
  Arbitrary<Device> mostlyHeld() {
    return RandomDevices.mostlyHeld();
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void sameAnswers(@ForAll("any") Device device) {
    for (LoadCase loadCase : device.cases()) {
      compare(device, loadCase);
    }
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void sameAnswersWhereMostAreHeld(@ForAll("mostlyHeld") Device device) {
    compare(device, device.cases().get(0));
  }

  static void compare(Device device, LoadCase loadCase) {
    PlainStatics plain = PlainStatics.of(device, loadCase, Pose.DRAWN);
    Assume.that(plain.isClear());
    compare(device, loadCase, plain);
  }

  /** Compares with a second opinion that stands clear of rounding. */
  static void compare(Device device, LoadCase loadCase, PlainStatics plain) {
    Balance balance = Balance.of(device, loadCase, Pose.DRAWN);
    String expected =
        !plain.isBalanced()
            ? "no balance"
            : plain.isHeld() ? "in balance" : "in balance for these loads";
    List<String> broken = clearlyBroken(device, plain);
    if (plain.isBalanced() && !balance.violations().isEmpty()) {
      assertThat(balance.outcome().words()).isEqualTo("conditions broken");
    } else {
      assertThat(balance.outcome().words()).as("outcome").isEqualTo(expected);
    }
    assertThat(balance.violations())
        .extracting(Violation::part)
        .as("what is pulled where it can only push, or pushed where it can only pull")
        .containsAll(broken);
    assertThat(balance.redundancy()).as("redundancy").isEqualTo(plain.redundancy());
    assertThat(balance.freedoms()).as("freedoms").hasSize(plain.freedoms());
    assertThat(balance.mobility().freedoms()).as("mobility").hasSize(plain.mobility());
    List<PlainUnknown> unknowns = plain.unknowns();
    for (int i = 0; i < unknowns.size(); i++) {
      Answer answer = balance.answer(unknowns.get(i).ask());
      String as = unknowns.get(i).ask();
      if (!plain.isBalanced()) {
        unanswered(answer, Answer.Reason.NO_BALANCE, as);
      } else if (plain.isDetermined(i) && !plain.isAllButDetermined(i)) {
        double value = plain.value(i);
        double close = 1e-9 * plain.forceScale() * unknowns.get(i).unit();
        assertThat(answer)
            .as(as)
            .isInstanceOfSatisfying(
                Answer.Value.class,
                number -> assertThat(number.si()).as(as).isCloseTo(value, within(close)));
      } else if (!plain.isAllButDetermined(i)) {
        unanswered(answer, Answer.Reason.UNDETERMINED, as);
      }
    }
  }

  private static void unanswered(Answer answer, Answer.Reason reason, String as) {
    assertThat(answer)
        .as(as)
        .isInstanceOfSatisfying(
            Answer.Unanswered.class, none -> assertThat(none.reason()).isEqualTo(reason));
  }

  /** Parts that carry clearly the wrong sign. */
  private static List<String> clearlyBroken(Device device, PlainStatics plain) {
    List<String> broken = new ArrayList<>();
    if (!plain.isBalanced()) {
      return broken;
    }
    for (int i = 0; i < plain.unknowns().size(); i++) {
      PlainUnknown unknown = plain.unknowns().get(i);
      Connection part = device.connection(unknown.part()).orElse(null);
      boolean tension =
          (part instanceof Line || part instanceof Reeving || part instanceof Wrap)
              && unknown.ask().endsWith("tension");
      boolean normal =
          unknown.ask().endsWith(".normal")
              && (part instanceof Contact
                  || part instanceof ContactBase
                  || (part instanceof Roller roller && roller.sides() == Sides.ONE)
                  || (part instanceof Slot slot && slot.sides() == Sides.ONE));
      if ((tension || normal)
          && plain.isDetermined(i)
          && plain.value(i) < -1e-7 * plain.forceScale()) {
        broken.add(unknown.part());
      }
    }
    return broken;
  }
}
