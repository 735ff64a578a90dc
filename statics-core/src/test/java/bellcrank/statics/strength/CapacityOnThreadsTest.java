package bellcrank.statics.strength;

import bellcrank.statics.SameBits;
import bellcrank.statics.SameBits.Question;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What gives first, found by many threads on devices and sizings that they share. */
class CapacityOnThreadsTest {

  private static final int BOOMS = 8;

  /** What threads share of one boom. */
  private record Shared(Device device, Sizing sizing, Capacity capacity) {}

  private static Boom boom(int number) {
    double share = (number + 0.5) / BOOMS;
    return new Boom(
        List.of(0.2 + 0.6 * share, 0.3 + 0.3 * share, 0.2),
        0.3 * share,
        500 + 100 * number,
        List.of(20.0, 15.0 * number),
        number);
  }

  private static List<Shared> booms() {
    List<Shared> booms = new ArrayList<>();
    for (int i = 0; i < BOOMS; i++) {
      Boom boom = boom(i);
      Device device = boom.device();
      Sizing sizing = boom.sizing();
      booms.add(new Shared(device, sizing, Capacity.of(device, sizing, Boom.GROWING)));
    }
    return booms;
  }

  @Test
  void sharedBooms() {
    List<Question<List<Shared>>> questions = new ArrayList<>();
    for (int i = 0; i < BOOMS; i++) {
      int number = i;
      questions.add(
          (booms, seen) -> {
            Shared one = booms.get(number);
            Capacity capacity = Capacity.of(one.device(), one.sizing(), Boom.GROWING);
            capacity.ranked().forEach(crossing -> seen.number(crossing.multiple()));
            seen.words(capacity.ranked());
            seen.words(capacity.never());
          });
      questions.add(
          (booms, seen) -> {
            Shared one = booms.get(number);
            for (Ask ask : Ask.all(one.device())) {
              seen.words(one.capacity().at(ask, 1.5));
            }
          });
    }
    SameBits.hold(CapacityOnThreadsTest::booms, questions);
  }
}
