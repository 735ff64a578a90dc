package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.KN;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.checked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.FilletWeld.Plane;
import bellcrank.statics.strength.FilletWeld.Seam;
import bellcrank.statics.strength.PinJoint.Plate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each part is checked with its own forces, in its own directions. */
class SeveralPartsTest {

  private static final double[] PULLS = {2 * KN, 6 * KN, 4 * KN};

  /** Three links side by side, each pulled straight along by its own force. */
  private static Device links() {
    DeviceBuilder device = Device.named("links");
    for (int k = 0; k < PULLS.length; k++) {
      String name = "link " + k;
      device
          .point("eye " + k, 0, k)
          .point("end " + k, 1, k)
          .member(name, "eye " + k, "end " + k)
          .pin("bolt " + k, "eye " + k, name, "ground")
          .roller("rest " + k, "end " + k, name, "ground", Direction.UP)
          .force("pull " + k, name, "end " + k, Vector.of(PULLS[k], 0));
    }
    return device.build();
  }

  /** N/A over 800 mm²: 2.5, 7.5 and 5 MPa, at top and bottom. */
  @Test
  void eachBarHasItsOwnForces() {
    Sizing sizing = Sizing.of(Method.ALLOWABLE);
    for (int k = 0; k < PULLS.length; k++) {
      sizing = sizing.with("link " + k, BAR, STEEL);
    }
    Checks checks = Checks.of(Balance.of(links()), sizing);

    for (int k = 0; k < PULLS.length; k++) {
      String part = "link " + k;
      double[] stresses =
          checks.checked().stream()
              .filter(one -> one.part().equals(part) && one.demand() > 0)
              .mapToDouble(CheckResult.Checked::demand)
              .toArray();
      assertThat(stresses).as(part).isNotEmpty();
      for (double stress : stresses) {
        assertThat(stress).as(part).isCloseTo(PULLS[k] / 800 * MPA, within(1.0));
      }
    }
  }

  /** Bolts of 20 mm in double shear: F/(2·314.16 mm²). */
  @Test
  void eachPinHasItsOwnForce() {
    Sizing sizing = Sizing.of(Method.ALLOWABLE);
    for (int k = 0; k < PULLS.length; k++) {
      Plate link = new Plate("link " + k, 1, 10 * MM, 21 * MM, 30 * MM, 60 * MM, STEEL);
      Plate ground = new Plate("ground", 2, 6 * MM, 21 * MM, 30 * MM, 60 * MM, STEEL);
      sizing =
          sizing.with(new PinJoint("bolt " + k, 20 * MM, 2, STEEL, List.of(link, ground), MM));
    }
    Checks checks = Checks.of(Balance.of(links()), sizing);

    for (int k = 0; k < PULLS.length; k++) {
      assertThat(checked(checks, "bolt " + k, "shear of the pin").demand() / MPA)
          .isCloseTo(PULLS[k] / (2 * Math.PI * 100), within(1e-6));
      assertThat(checked(checks, "bolt " + k, "bearing in the plate of link " + k).demand() / MPA)
          .isCloseTo(PULLS[k] / (10 * 20), within(1e-6));
    }
  }

  /** Kegs hung straight down: each rope bears its own. */
  @Test
  void eachLineHasItsOwnTension() {
    DeviceBuilder device = Device.named("kegs");
    Sizing sizing = Sizing.of(Method.ALLOWABLE);
    for (int k = 0; k < PULLS.length; k++) {
      device
          .point("keg " + k, k, 0)
          .point("hook " + k, k, 1)
          .joint("keg " + k)
          .line("rope " + k, new End("keg " + k, "keg " + k), new End("ground", "hook " + k))
          .force("own " + k, "keg " + k, "keg " + k, Vector.of(0, -PULLS[k]));
      sizing = sizing.with(Rating.of("rope " + k, 8 * KN, "tag of the rope"));
    }
    Checks checks = Checks.of(Balance.of(device.build()), sizing);

    for (int k = 0; k < PULLS.length; k++) {
      assertThat(checked(checks, "rope " + k, "working load limit").demand())
          .isCloseTo(PULLS[k], within(1e-6));
    }
  }

  /**
   * A lever that leans by 30°, drawn level: pulled by 600 N to the right at its end and held up
   * there, it has 600/cos 30° = 692.8 N along it and nothing across. A lap of 100 mm whose middle is
   * 100 mm along the lever from its pin is not twisted then: 6.928 N/mm.
   */
  @Test
  void aWeldIsLoadedInTheDirectionsOfItsBody() {
    Device lever =
        Device.named("lever")
            .point("hinge", 0, 0)
            .point("end", 1, 0)
            .member("lever", "hinge", "end")
            .pin("hinge", "hinge", "lever", "ground")
            .roller("rest", "end", "lever", "ground", Direction.UP)
            .force("load", "lever", "end", Vector.of(600, -500))
            .build();
    double lean = Math.PI / 6;
    Pose leaning = Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, lean));
    FilletWeld lap =
        new FilletWeld(
            "lap",
            "hinge",
            Optional.empty(),
            Optional.of("lever"),
            Plane.IN_PLANE,
            4 * MM,
            List.of(seam(75, 20, 125, 20), seam(75, -20, 125, -20)),
            STEEL,
            Optional.of(490 * MPA));
    Checks checks =
        Checks.of(
            Balance.of(lever, LoadCase.ALL_LOADS, leaning), Sizing.of(Method.ALLOWABLE).with(lap));

    assertThat(checked(checks, "hinge", "lap").demand() * 4 * MM / 1000)
        .isCloseTo(6 / Math.cos(lean), within(1e-6));
  }

  private static Seam seam(double x1, double y1, double x2, double y2) {
    return new Seam(x1 * MM, y1 * MM, x2 * MM, y2 * MM);
  }

  /** Where a device does not hold in every pose, all its checks say so. */
  @Test
  void whatIsSaidOfADeviceThatDoesNotHold() {
    Variation load = Variation.of("load");
    Limit.End some = new Limit.End.EndOfLine(0);
    Limit.End open = new Limit.End.Open("too many pins");

    assertThat(said(new Limit.Never(load)))
        .isEqualTo(
            "in some poses the device does not hold at any multiple; the checks are of its balance"
                + " alone");
    assertThat(said(new Limit.NotDecided(load, "too many pins")))
        .isEqualTo("in some poses how far the device holds is not decided: too many pins");
    assertThat(said(new Limit.Between(load, some, open)))
        .isEqualTo("in some poses how far the device holds is not decided: too many pins");
    assertThat(Holding.remarkOfSome(Optional.of(new Limit.Between(load, some, some)))).isEmpty();
    assertThat(Holding.remarkOfSome(Optional.empty())).isEmpty();
  }

  private static String said(Limit limit) {
    return Holding.remarkOfSome(Optional.of(limit)).orElseThrow();
  }
}
