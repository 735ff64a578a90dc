package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Direction;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which forces of small devices are free, and where elimination leaves that to a factor. */
class SmallChoiceTest {

  private static Optional<SmallChoice> chosen(Device device) {
    Assembly assembly = Assembly.withDryPins(device);
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    return SmallChoice.of(assembly, actions);
  }

  private static Contact contact(String at, String body, String other, double degrees, double mu) {
    Direction push = Direction.ofAngle(Math.toRadians(degrees));
    return new Contact(at + " contact", at, body, other, push, mu, mu);
  }

  /** Smooth contacts whose lines meet in one point, but for how far the third is beside it. */
  private static Device wedged(double beside) {
    return Device.named("wedged block")
        .point("left", 0, 0)
        .point("right", 1, 0)
        .point("top", 0.5 + beside, 1)
        .member("block", "left", "right", "top")
        .connect(contact("left", "block", "ground", 45, 0))
        .connect(contact("right", "block", "ground", 135, 0))
        .connect(contact("top", "block", "ground", -90, 0))
        .build();
  }

  /** Crates one upon the other, each on two rough feet. */
  private static Device stack(int crates) {
    DeviceBuilder stack = Device.named("stack");
    String below = "ground";
    for (int k = 1; k <= crates; k++) {
      String crate = "crate " + k;
      stack
          .point(crate + " left", -0.4, 0.3 * k)
          .point(crate + " right", 0.35, 0.3 * k)
          .member(crate, crate + " left", crate + " right")
          .connect(contact(crate + " left", crate, below, 88, 0.4))
          .connect(contact(crate + " right", crate, below, 93, 0.4))
          .weight(crate + " weight", crate, crate + " left", 10);
      below = crate;
    }
    return stack.build();
  }

  /**
   * Three levers in a row, each pushing the next one's short arm with its long one, between two
   * posts: the post at one end carries more than the one at the other, by the arms' ratio cubed.
   */
  private static Device levers(double left, double right) {
    DeviceBuilder levers = Device.named("levers").point("first foot", -left, -1);
    for (int k = 0; k < 3; k++) {
      double x = k * (left + right);
      String lever = "lever " + k;
      levers
          .point(lever + " left", x - left, k)
          .point(lever + " pin", x, k)
          .point(lever + " right", x + right, k)
          .member(lever, lever + " left", lever + " pin", lever + " right")
          .pin("pin " + k, lever + " pin", lever, "ground");
      String below = k == 0 ? "ground" : "lever " + (k - 1);
      String foot = k == 0 ? "first foot" : below + " right";
      levers.strut("post " + k, End.of(below, foot), End.of(lever, lever + " left"));
    }
    return levers
        .point("last foot", 3 * right + 2 * left, 4)
        .strut("post 3", End.of("lever 2", "lever 2 right"), End.of("ground", "last foot"))
        .build();
  }

  /**
   * The largest force is free, so that the others are shares of it: with arms of 0.2 m and 1 m a
   * pin beside a post that carries 1 carries 1.2.
   */
  @ParameterizedTest
  @CsvSource({"0.2, 1", "1, 0.2"})
  void leversGiveSmallForcesByTheLargestOne(double left, double right) {
    double[][] free = new double[1][10];
    chosen(levers(left, right)).orElseThrow().write(free);
    double[] posts = new double[4];
    for (int k = 0; k < 4; k++) {
      posts[k] = Math.abs(free[0][k < 3 ? 3 * k + 2 : 9]);
    }
    Arrays.sort(posts);

    assertThat(posts)
        .containsExactly(new double[] {1 / 150.0, 1 / 30.0, 1 / 6.0, 5 / 6.0}, within(1e-14));
  }

  /** Columns: normal and tangential at the left foot, then at the right one, for each crate. */
  @Test
  void eachCrateLeavesOneForceOfItsOwnFeetFree() {
    SmallChoice choice = chosen(stack(3)).orElseThrow();
    double[][] free = new double[3][12];
    choice.write(free);

    for (int crate = 0; crate < 3; crate++) {
      assertThat(choice.freeColumn(crate) / 4).isEqualTo(crate);
      for (int column = 0; column < 12; column++) {
        if (column / 4 != crate) {
          assertThat(free[crate][column]).isCloseTo(0, within(1e-15));
        }
      }
    }
  }

  @Test
  void bodiesThatAreHeldPoorlyAreLeftToAFactor() {
    assertThat(chosen(wedged(0.3))).isPresent();
    assertThat(chosen(wedged(1e-3))).isEmpty();
    assertThat(chosen(wedged(0))).isEmpty();
  }

  @Test
  void aBodyWithFewerForcesThanEquationsIsLeftToAFactor() {
    Device loose =
        Device.named("loose")
            .point("foot", 0, 0)
            .point("top", 0, 1)
            .member("post", "foot", "top")
            .connect(contact("foot", "post", "ground", 90, 0.4))
            .build();

    assertThat(chosen(loose)).isEmpty();
  }

  /** Four unknowns for each crate. */
  @Test
  void moreThanSixtyFourUnknownsAreLeftToAFactor() {
    assertThat(chosen(stack(16))).isPresent();
    assertThat(chosen(stack(17))).isEmpty();
  }
}
