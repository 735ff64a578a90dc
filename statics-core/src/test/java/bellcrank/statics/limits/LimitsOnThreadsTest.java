package bellcrank.statics.limits;

import bellcrank.statics.SameBits;
import bellcrank.statics.SameBits.Question;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Limits that many threads share answer as one thread does. */
class LimitsOnThreadsTest {

  private static final int DEVICES = 24;
  private static final int RANGES = 4;

  private static List<Device> devices() {
    List<Device> devices = new ArrayList<>();
    ContactScene.Kind[] kinds = ContactScene.Kind.values();
    Random random = new Random(3);
    for (int i = 0; i < DEVICES; i++) {
      List<Double> numbers = random.doubles(41).boxed().toList();
      devices.add(ContactScene.build(kinds[i % kinds.length], i % 3 == 0, numbers));
    }
    devices.add(Yard.dryLever(0.3));
    devices.add(Yard.capstan(0.3, 1));
    devices.add(Yard.jack(0.15).build());
    return devices;
  }

  @Test
  void sharedLimits() {
    List<Device> devices = devices();
    List<Question<List<Limits>>> questions = new ArrayList<>();
    for (int i = 0; i < devices.size(); i++) {
      int number = i;
      List<Ask> asks = Ask.all(devices.get(i));
      questions.add((all, seen) -> seen.words(all.get(number).verdict()));
      questions.add((all, seen) -> seen.words(all.get(number).states()));
      questions.add((all, seen) -> seen.words(all.get(number).frictionFactor()));
      questions.add(
          (all, seen) ->
              asks.stream().limit(RANGES).forEach(ask -> seen.words(all.get(number).range(ask))));
      if (devices.get(i).loads().stream().anyMatch(load -> load.name().equals("push"))) {
        questions.add(
            (all, seen) -> all.get(number).greatest(Variation.of("push")).ifPresent(seen::number));
      }
    }
    SameBits.hold(() -> devices().stream().map(Limits::of).toList(), questions);
  }

  /**
   * So many equations that free forces are chosen body by body and all follow block after block.
   */
  @Test
  void sharedLimitsOfALongRow() {
    Variation push = Variation.of("push");
    List<Question<Limits>> questions = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      questions.add((limits, seen) -> limits.greatest(push).ifPresent(seen::number));
      questions.add((limits, seen) -> seen.words(limits.range("foot 7.normal")));
    }
    SameBits.hold(() -> Limits.of(LargeStackTest.planks(60)), questions);
  }
}
