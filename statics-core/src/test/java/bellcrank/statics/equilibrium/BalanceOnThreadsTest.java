package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.SameBits;
import bellcrank.statics.SameBits.Question;
import bellcrank.statics.SameBits.Seen;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Devices, balances and prepared devices that many threads share answer as one thread does. */
class BalanceOnThreadsTest {

  private static final int DEVICES = 80;

  private static void answers(Balance balance, Seen seen) {
    for (Ask ask : Ask.all(balance.device())) {
      Answer answer = balance.answer(ask);
      if (answer instanceof Answer.Value value) {
        seen.number(value.si());
      } else {
        seen.words(answer);
      }
    }
    seen.words(balance.outcome());
    seen.number(balance.residual());
    seen.number(balance.condition());
  }

  @Test
  void balancesOfSharedDevices() {
    List<Question<List<Device>>> questions = new ArrayList<>();
    for (int i = 0; i < DEVICES; i++) {
      int number = i;
      questions.add((devices, seen) -> answers(Balance.of(devices.get(number)), seen));
    }
    SameBits.hold(BalanceOnThreadsTest::devices, questions);
  }

  @Test
  void sharedBalances() {
    List<Question<List<Balance>>> questions = new ArrayList<>();
    for (int i = 0; i < DEVICES; i++) {
      int number = i;
      questions.add((balances, seen) -> answers(balances.get(number), seen));
    }
    SameBits.hold(() -> devices().stream().map(Balance::of).toList(), questions);
  }

  private static List<Device> devices() {
    List<Device> devices = new ArrayList<>();
    for (int i = 0; i < DEVICES; i++) {
      devices.add(RandomDevice.of(50_000 + i));
    }
    return devices;
  }

  @Test
  void buffersOfSharedPreparedDevices() {
    List<Device> devices =
        devices().stream().filter(device -> Prepared.of(device).isDeterminate()).toList();
    assertThat(devices).hasSizeGreaterThan(DEVICES / 10);
    List<Question<List<Prepared>>> questions = new ArrayList<>();
    for (int i = 0; i < devices.size(); i++) {
      int number = i;
      Device device = devices.get(i);
      List<String> asks =
          PlainStatics.of(device).unknowns().stream().map(PlainUnknown::ask).toList();
      questions.add(
          (prepared, seen) -> {
            Prepared shared = prepared.get(number);
            Prepared.Buffer buffer = shared.buffer();
            for (LoadCase loadCase : device.cases()) {
              // twice, so that what is kept from the time before is in it
              for (int again = 0; again < 2 && buffer.solve(Pose.DRAWN, loadCase); again++) {
                asks.forEach(ask -> seen.number(buffer.value(shared.slot(ask))));
                seen.number(buffer.residual());
              }
            }
          });
    }
    SameBits.hold(() -> devices.stream().map(Prepared::of).toList(), questions);
  }
}
