package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.KN;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.whyNot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
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
      sizing = sizing.with(new PinJoint("bolt " + k, 20 * MM, 2, STEEL, List.of(link, ground), MM));
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
   * there, it has 600/cos 30° = 692.8 N along it and nothing across. A lap of 100 mm whose middle
   * is 100 mm along the lever from its pin is not twisted then: 6.928 N/mm.
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
    assertThat(remarks(Optional.of(new Limit.Between(load, some, some)))).isEmpty();
    assertThat(remarks(Optional.empty())).isEmpty();
  }

  private static String said(Limit limit) {
    return remarks(Optional.of(limit)).get(0);
  }

  private static List<String> remarks(Optional<Limit> limit) {
    Holding holding = Holding.inSomePoses();
    holding.add(limit);
    return holding.remarks();
  }

  /**
   * A boom hung level on a chain at 45° from its head: the chain pulls by √2 times what is there.
   */
  private static DeviceBuilder boom() {
    return Device.named("boom")
        .point("hinge", 0, 0)
        .point("head", 2, 0)
        .point("hook", 0, 2)
        .member("boom", "hinge", "head")
        .pin("hinge", "hinge", "boom", "ground")
        .line("chain", new End("boom", "head"), new End("ground", "hook"))
        .force("dead", "boom", "head", Vector.of(0, -300))
        .force("cask", "boom", "head", Vector.of(0, -1000));
  }

  /** What hangs there anyway stays as the cask grows: √2·(300 + m·1000) N up to 2000 N. */
  @Test
  void onlyTheDrivingLoadGrowsInALine() {
    Sizing sizing = Sizing.of(Method.ALLOWABLE).with(Rating.of("chain", 2000, "tag"));
    Capacity capacity = Capacity.of(boom().build(), sizing, Variation.of("cask"));

    assertThat(capacity.first().orElseThrow().multiple())
        .isCloseTo((2000 / Math.sqrt(2) - 300) / 1000, within(1e-9));
  }

  /** The hinge is pushed by 300 N + m·1000 N: bearing at 20 mm · 10 mm reaches 423/2 MPa. */
  @Test
  void onlyTheDrivingLoadGrowsInAPin() {
    Plate plate = new Plate("boom", 1, 10 * MM, 21 * MM, 300 * MM, 600 * MM, STEEL);
    PinJoint bolt = new PinJoint("hinge", 20 * MM, 2, STEEL, List.of(plate), MM);
    Capacity capacity =
        Capacity.of(boom().build(), Sizing.of(Method.ALLOWABLE).with(bolt), Variation.of("cask"));

    assertThat(
            capacity.ranked().stream()
                .filter(Crossing.Used.class::isInstance)
                .map(Crossing.Used.class::cast)
                .filter(one -> one.stated().what().startsWith("bearing"))
                .mapToDouble(Crossing.Used::multiple))
        .singleElement()
        .satisfies(m -> assertThat(m).isCloseTo(200 * 211.5 / 1000 - 0.3, within(1e-6)));
  }

  /** A reduction that leaves all is none; one that leaves nothing is a mistake. */
  @Test
  void allMayBeLeftButNotNothing() {
    Rating whole =
        Rating.of("chain", 2000, "tag").with(new Rating.Reduction("a new hook", 1, "ours"));
    Checks checks = Checks.of(Balance.of(boom().build()), Sizing.of(Method.ALLOWABLE).with(whole));

    assertThat(checks.checked().get(0).resistance()).isEqualTo(2000);
    assertThatThrownBy(() -> new Rating.Reduction("a torn link", 0, "ours"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("above 0 and at most 1");
  }

  /** Pinned at both ends its thrust is a matter of stiffness: seams there are not checked. */
  @Test
  void whatStaticsLeavesOpenIsNotChecked() {
    Device beam =
        Device.named("beam")
            .point("left", 0, 0)
            .point("right", 1, 0)
            .member("beam", "left", "right")
            .pin("left", "left", "beam", "ground")
            .pin("right", "right", "beam", "ground")
            .force("push", "beam", "left", Vector.of(600, 0))
            .build();
    FilletWeld lap =
        new FilletWeld(
            "lap",
            "left",
            Optional.empty(),
            Optional.of("beam"),
            Plane.IN_PLANE,
            4 * MM,
            List.of(seam(-25, 20, 25, 20), seam(-25, -20, 25, -20)),
            STEEL,
            Optional.of(490 * MPA));
    ChainSeat seat = new ChainSeat("notch", "left", "beam", Direction.UP, 1, 0);
    Checks checks = Checks.of(Balance.of(beam), Sizing.of(Method.ALLOWABLE).with(lap).with(seat));

    assertThat(checks.checked()).isEmpty();
    assertThat(whyNot(checks, "left", "lap")).startsWith("statics alone does not fix it");
    assertThat(whyNot(checks, "left", "notch: seat in the notch"))
        .startsWith("statics alone does not fix it");
  }

  /** A square with corners of radius r lacks (4 − π)·r²; so do a tube's hole and a T's flanks. */
  @Test
  void cornersMayBeAlmostAsRoundAsTheirSidesAreLong() {
    double square = 50 * 50 - (4 - Math.PI) * 24.9 * 24.9;
    assertThat(Profiles.tube(60 * MM, 60 * MM, 5 * MM, 30 * MM, 24.9 * MM).section().area())
        .isCloseTo((Math.PI * 30 * 30 - square) * 1e-6, within(1e-12));
    assertThatThrownBy(() -> Profiles.tube(60 * MM, 60 * MM, 5 * MM, 30 * MM, 25.1 * MM))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("half of what is free inside");
    assertThatThrownBy(() -> Profiles.tee(100 * MM, 50 * MM, 6 * MM, 8 * MM, 22.1 * MM))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("root radius");
    double filled = (1 - Math.PI / 4) * 21 * 21 * 1e-6;
    assertThat(Profiles.tee(100 * MM, 50 * MM, 6 * MM, 8 * MM, 21 * MM).section().area())
        .isCloseTo((50 * 8 + 92 * 6) * 1e-6 + 2 * filled, within(1e-12));
  }
}
