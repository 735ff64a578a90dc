package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.geometry.Direction;
import org.junit.jupiter.api.Test;

class JitterTest {

  private static Device device() {
    return Device.named("one of each direction")
        .point("A", 0, 0)
        .point("same as A", 0, 0)
        .point("B", 3, 4)
        .member("m", "A", "B")
        .member("n", "A", "B")
        .pin("pin", "A", "m", "n")
        .connect(new Roller("roller", "B", "m", "ground", Direction.UP, Sides.ONE))
        .connect(new Slot("slot", "B", "n", "ground", Direction.RIGHT, Sides.TWO))
        .connect(new Guide("guide", "A", "m", "ground", Direction.RIGHT))
        .connect(new Contact("contact", "A", "n", "ground", Direction.UP, 0.4, 0.3))
        .connect(new ContactBase("base", "B", "m", "ground", Direction.UP, 0.5, 0.4, 0.3))
        .build();
  }

  @Test
  void pointsMoveALittleAndThoseAtOnePlaceTogether() {
    Device before = device();
    Device after = Jitter.of(before);

    assertThat(after.point("A")).isEqualTo(after.point("same as A"));
    for (String name : before.points().keySet()) {
      assertThat(after.point(name).distance(before.point(name)))
          .isGreaterThan(0)
          .isLessThan(0.03 * before.size());
    }
  }

  @Test
  void directionsTurnALittle() {
    Device after = Jitter.of(device());

    assertTurned(((Roller) after.connections().get(1)).push(), Direction.UP);
    assertTurned(((Slot) after.connections().get(2)).along(), Direction.RIGHT);
    assertTurned(((Guide) after.connections().get(3)).along(), Direction.RIGHT);
    assertTurned(((Contact) after.connections().get(4)).push(), Direction.UP);
    assertTurned(((ContactBase) after.connections().get(5)).push(), Direction.UP);
  }

  private static void assertTurned(Direction now, Direction before) {
    double sine = before.x() * now.y() - before.y() * now.x();
    double cosine = before.x() * now.x() + before.y() * now.y();
    assertThat(Math.abs(sine)).isGreaterThan(0).isLessThan(0.0201);
    assertThat(cosine).isPositive();
  }

  @Test
  void allElseStaysAsItWas() {
    Device before = device();
    Device after = Jitter.of(before);

    assertThat(after.members()).isEqualTo(before.members());
    assertThat(after.connections().get(0)).isEqualTo(before.connections().get(0));
    ContactBase base = (ContactBase) after.connections().get(5);
    assertThat(base.width()).isEqualTo(0.5);
    assertThat(base.friction()).isEqualTo(0.4);
    assertThat(base.kineticFriction()).isEqualTo(0.3);
    assertThat(((Roller) after.connections().get(1)).sides()).isEqualTo(Sides.ONE);
  }

  @Test
  void theSameDeviceIsAlwaysChangedAlike() {
    assertThat(Jitter.of(device())).isEqualTo(Jitter.of(device()));
  }
}
