package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes in which programs are degenerate: they end, with the right verdict. */
class SpecialShapesTest {

  private static final String GROUND = Ground.NAME;

  private static Contact smooth(String name, String body, Direction push) {
    return new Contact(name, name, body, GROUND, push, 0, 0);
  }

  private static Contact rough(String name, String body, Direction push) {
    return new Contact(name, name, body, GROUND, push, 0.5, 0.5);
  }

  private static DeviceBuilder plank() {
    return Device.named("plank")
        .point("a", 0, 0)
        .point("b", 1, 0)
        .point("c", 2, 0)
        .member("plank", "a", "b", "c");
  }

  private static void range(Device device, String ask, double least, double most) {
    Range range = Limits.of(device).range(ask).orElseThrow();
    assertThat(range.least().orElseThrow()).as(ask).isCloseTo(least, within(1e-9));
    assertThat(range.greatest().orElseThrow()).as(ask).isCloseTo(most, within(1e-9));
  }

  /** One support more than needed: the middle one carries between none and all of the load. */
  @Test
  void threeParallelContacts() {
    Device device =
        plank()
            .connect(smooth("a", "plank", Direction.UP))
            .connect(smooth("b", "plank", Direction.UP))
            .connect(smooth("c", "plank", Direction.UP))
            .force("load", "plank", "b", Vector.of(0, -100))
            .build();
    assertThat(Limits.of(device).verdict().words()).isEqualTo("holds");
    range(device, "b.normal", 0, 100);
    range(device, "a.normal", 0, 50);
    range(device, "c.normal", 0, 50);
  }

  /** What holds twice at the same place shares one force in any way. */
  @ParameterizedTest
  @ValueSource(ints = {2, 5, 9})
  void coincidentContacts(int count) {
    DeviceBuilder builder = plank().connect(rough("c", "plank", Direction.UP));
    for (int i = 0; i < count; i++) {
      builder.connect(new Contact("foot " + i, "a", "plank", GROUND, Direction.UP, 0.5, 0.5));
    }
    Device device = builder.force("load", "plank", "b", Vector.of(0, -100)).build();
    assertThat(Limits.of(device).verdict().words()).isEqualTo("holds");
    range(device, "foot 0.normal", 0, 50);
    assertThat(Limits.of(device).limit(Variation.of("load"))).isInstanceOf(Limit.Between.class);
    assertThat(Limits.of(device).states()).hasSize(count + 1);
  }

  /** Two lines in line with one another, pulled against each other: any tension is locked in. */
  @Test
  void collinearLines() {
    Device device =
        plank()
            .point("left", -1, 0)
            .point("right", 3, 0)
            .line("first", End.of("plank", "a"), End.of(GROUND, "left"))
            .line("second", End.of("plank", "c"), End.of(GROUND, "right"))
            .force("pull", "plank", "b", Vector.of(30, 0))
            .build();
    Range first = Limits.of(device).range("first.tension").orElseThrow();
    assertThat(first.least().orElseThrow()).isCloseTo(30, within(1e-9));
    assertThat(first.greatest()).isEmpty();
    Limit limit = Limits.of(device).limit(Variation.of("pull"));
    assertThat(((Limit.Between) limit).greatest()).isInstanceOf(Limit.End.Unlimited.class);
    assertThat(((Limit.Between) limit).least()).isInstanceOf(Limit.End.Unlimited.class);
  }

  /** Without any load, nothing needs to be carried; what can be locked in has no bound. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void noLoads(boolean squeezed) {
    DeviceBuilder builder =
        plank()
            .connect(rough("a", "plank", Direction.RIGHT))
            .connect(rough("b", "plank", Direction.UP));
    Device device =
        (squeezed ? builder.connect(rough("c", "plank", Direction.LEFT)) : builder)
            .force("push", "plank", "b", Vector.ZERO)
            .build();
    assertThat(Limits.of(device).verdict()).isNotInstanceOf(Verdict.DoesNotHold.class);
    Range range = Limits.of(device).range("a.normal").orElseThrow();
    assertThat(range.least().orElseThrow()).isCloseTo(0, within(1e-9));
    assertThat(range.greatest().isPresent()).isEqualTo(!squeezed);
    Limit limit = Limits.of(device).limit(Variation.of("push"));
    assertThat(((Limit.Between) limit).greatest()).isInstanceOf(Limit.End.Unlimited.class);
  }

  /** A tower of equal blocks, each face with the same friction: pushed at the top, one slides. */
  @ParameterizedTest
  @ValueSource(ints = {2, 6, 12})
  void aTowerOfEqualBlocks(int count) {
    DeviceBuilder builder = Device.named("tower");
    String below = GROUND;
    for (int i = 0; i < count; i++) {
      String block = "block " + i;
      builder.point("p" + i, 0, 0.1 * i).point("m" + i, 0, 0.1 * i + 0.05);
      builder.member(block, "p" + i, "m" + i);
      builder.connect(
          new ContactBase("face " + i, "p" + i, block, below, Direction.UP, 9, 0.4, 0.4));
      builder.weight("weight " + i, block, "m" + i, 10);
      below = block;
    }
    Device device =
        builder.force("push", below, "m" + (count - 1), Vector.of(10 * 9.80665, 0)).build();
    Limit.Between between = (Limit.Between) Limits.of(device).limit(Variation.of("push"));
    assertThat(between.greatest()).isInstanceOf(Limit.End.At.class);
    Limit.End.At at = (Limit.End.At) between.greatest();
    assertThat(at.value()).isCloseTo(0.4, within(1e-9));
    assertThat(at.how().events()).extracting(Event::part).containsExactly("face " + (count - 1));
    assertThat(at.how().motion()).isPresent();
  }

  /** Exactly at the limit, in every direction: about to give way, not beyond. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void exactlyAtTheLimit(int eighth) {
    Direction up = Direction.ofAngle(Math.PI / 4 * eighth);
    Vector along = up.perpendicular().times(50);
    Device device =
        Device.named("crate")
            .point("foot", 0, 0)
            .point("lid", 0.1, 0.1)
            .member("crate", "foot", "lid")
            .connect(new ContactBase("foot", "foot", "crate", GROUND, up, 1, 0.5, 0.5))
            .force("load", "crate", "foot", up.times(-100))
            .force("push", "crate", "foot", along)
            .build();
    assertThat(Limits.of(device).verdict().words()).isEqualTo("about to give way");
    Limit.Between between = (Limit.Between) Limits.of(device).limit(Variation.of("push"));
    assertThat(((Limit.End.At) between.greatest()).value()).isCloseTo(1, within(1e-9));
    assertThat(((Limit.End.At) between.least()).value()).isCloseTo(-1, within(1e-9));
  }

  /** Loads of very different sizes, in devices of very different sizes. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 1e-3, 1, 1e4, 1e9})
  void anySizeOfLoad(double size) {
    Device device =
        plank()
            .connect(rough("a", "plank", Direction.UP))
            .connect(rough("c", "plank", Direction.UP))
            .force("load", "plank", "b", Vector.of(0, -size))
            .force("push", "plank", "b", Vector.of(size / 4, 0))
            .build();
    assertThat(Limits.of(device).verdict().words()).isEqualTo("holds");
    Limit.Between between = (Limit.Between) Limits.of(device).limit(Variation.of("push"));
    assertThat(((Limit.End.At) between.greatest()).value()).isCloseTo(2, within(1e-9));
    assertThat(Limits.of(device).states())
        .extracting(PartState::state)
        .isEqualTo(List.of(PartState.State.CARRIES, PartState.State.CARRIES));
  }
}
