package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.prop;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.ColumnEnds.Curve;
import bellcrank.statics.strength.FilletWeld.Cut;
import bellcrank.statics.strength.FilletWeld.Plane;
import bellcrank.statics.strength.FilletWeld.Seam;
import bellcrank.statics.strength.PinJoint.Plate;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Every mistake in a sizing has its words. */
class SizingMistakesTest {

  private static final Sizing EMPTY = Sizing.of(Method.ALLOWABLE);

  private static void refused(ThrowingCallable made, String message) {
    assertThatThrownBy(made).isInstanceOf(ModelException.class).hasMessage(message);
  }

  private static void refused(Sizing sizing, String message) {
    refused(() -> Checks.of(Balance.of(prop(1).build()), sizing), message);
  }

  private static FilletWeld weld(Optional<Cut> cut, Optional<String> body, Seam... seams) {
    return new FilletWeld(
        "seam",
        cut.isPresent() ? "lever" : "hinge",
        cut,
        body,
        Plane.ACROSS,
        4 * MM,
        List.of(seams),
        STEEL,
        Optional.empty());
  }

  private static final Seam[] SEAMS = {new Seam(0, 0.02, 0.02, 0.02), new Seam(0, 0, 0.02, 0)};

  private static Plate plate(String body) {
    return new Plate(body, 1, 10 * MM, 21 * MM, 30 * MM, 60 * MM, STEEL);
  }

  private static PinJoint joint(String pin, Plate... plates) {
    return new PinJoint(pin, 20 * MM, 1, STEEL, List.of(plates), 0);
  }

  @Test
  void partsAndBarsThatTheDeviceLacks() {
    refused(
        EMPTY.with("levr", BAR, STEEL),
        "sizing: part is \"levr\"; wanted: a member or strut of the device (lever, prop); the"
            + " nearest is \"lever\"");
    refused(
        EMPTY.with("prp", new Bar("a", "b"), BAR, STEEL),
        "sizing: member is \"prp\"; wanted: a member of the device (lever)");
    refused(
        EMPTY.with("lever", new Bar("end", "hinge"), BAR, STEEL),
        "lever: bar is \"end–hinge\"; wanted: one of its bars (hinge–end)");
  }

  @Test
  void columns() {
    refused(
        EMPTY.with(ColumnEnds.pinned("lever")),
        "lever: column is without ends; wanted: a strut, or a member with both ends");
    refused(
        EMPTY.with(ColumnEnds.pinned("prop", "end", "floor")),
        "column: member is \"prop\"; wanted: a member of the device (lever)");
    refused(
        EMPTY.with(ColumnEnds.pinned("prob")),
        "column: part is \"prob\"; wanted: a member or strut of the device (lever, prop); the"
            + " nearest is \"prop\"");
    refused(
        EMPTY.with(ColumnEnds.pinned("lever", "hinge", "ende")),
        "lever: column is \"ende\"; wanted: a point of the device (hinge, end, floor); the nearest"
            + " is \"end\"");
    refused(
        EMPTY.with(ColumnEnds.pinned("lever", "end", "floor")),
        "lever: column is end to floor; wanted: a straight stretch with bars on it");
    refused(
        EMPTY.with(ColumnEnds.pinned("lever", "end", "end")),
        "lever: column is end to end; wanted: a straight stretch with bars on it");
    refused(
        () ->
            new ColumnEnds(
                "lever", Optional.of("hinge"), Optional.empty(), 1, 1, Curve.C, "pinned"),
        "lever: column is one point; wanted: both ends, or none for a strut");
    refused(
        () -> new ColumnEnds("prop", Optional.empty(), Optional.empty(), 0, 1, Curve.C, "pinned"),
        "prop: effective length factor in the plane is 0.0; wanted: a number above 0");
    refused(
        () ->
            new ColumnEnds(
                "prop", Optional.empty(), Optional.empty(), 1, Double.NaN, Curve.C, "pinned"),
        "prop: effective length factor out of the plane is NaN; wanted: a number above 0");
  }

  @Test
  void pins() {
    refused(
        EMPTY.with(joint("hing")),
        "pin joint: pin is \"hing\"; wanted: a pin of the device (hinge); the nearest is \"hinge\"");
    refused(
        EMPTY.with(joint("hinge", plate("prop"))),
        "hinge: body is \"prop\"; wanted: a body of hinge (lever, ground)");
    refused(
        () -> new PinJoint("hinge", 0, 1, STEEL, List.of(), 0),
        "hinge: diameter is 0.0; wanted: a number above 0");
    refused(
        () -> new PinJoint("hinge", 0.02, 3, STEEL, List.of(), 0),
        "hinge: shear planes is 3; wanted: 1 or 2");
    refused(
        () -> new PinJoint("hinge", 0.02, 1, STEEL, List.of(), -1),
        "hinge: gap is -1.0; wanted: 0 or more");
    refused(
        () -> new PinJoint("hinge", 0.03, 1, STEEL, List.of(plate("lever")), 0),
        "hinge: hole in lever is 0.021; wanted: the diameter of the pin or more");
    refused(
        () -> new Plate("lever", 0, 0.01, 0.021, 0.03, 0.06, STEEL),
        "plate of lever: count is 0; wanted: a whole number of 1 or more");
    refused(
        () -> new Plate("lever", 1, 0, 0.021, 0.03, 0.06, STEEL),
        "plate of lever: thickness is 0.0; wanted: a number above 0");
    refused(
        () -> new Plate("lever", 1, 0.01, -0.021, 0.03, 0.06, STEEL),
        "plate of lever: hole is -0.021; wanted: a number above 0");
    refused(
        () -> new Plate("lever", 1, 0.01, 0.02, 0.01, 0.06, STEEL),
        "plate of lever: end is 0.01; wanted: more than half the hole, 0.01 m");
    refused(
        () -> new Plate("lever", 1, 0.01, 0.02, 0.03, 0.02, STEEL),
        "plate of lever: width is 0.02; wanted: more than the hole, 0.02 m");
  }

  @Test
  void welds() {
    Optional<Cut> cut = Optional.of(new Cut("hinge", "end", 1.5));
    refused(
        EMPTY.with(weld(cut, Optional.empty(), SEAMS)),
        "seam: distance is 1.5; wanted: 0 to 1.0 m");
    refused(
        EMPTY.with(weld(Optional.of(new Cut("end", "hinge", 0)), Optional.empty(), SEAMS)),
        "lever: bar is \"end–hinge\"; wanted: one of its bars (hinge–end)");
    refused(
        EMPTY.with(weld(Optional.empty(), Optional.of("prop"), SEAMS)),
        "seam: body is \"prop\"; wanted: a body of hinge (lever, ground)");
    refused(
        () -> weld(cut, Optional.of("lever"), SEAMS),
        "seam: carries is both; wanted: a cut of a bar or a connection");
    refused(
        () -> weld(Optional.empty(), Optional.empty(), SEAMS),
        "seam: carries is neither; wanted: a cut of a bar or a connection");
    refused(() -> weld(cut, Optional.empty()), "seam: lines is none; wanted: at least one seam");
    refused(
        () -> weld(cut, Optional.empty(), SEAMS[0]),
        "seam: lines is all at one height; wanted: seams at several heights, which can carry a"
            + " moment");
    refused(() -> new Seam(1, 1, 1, 1), "weld: length is 0.0; wanted: two different points");
    refused(() -> new Cut("a", "b", -1), "cut: distance is -1.0; wanted: 0 or more");
    refused(
        () ->
            new FilletWeld(
                "seam",
                "lever",
                cut,
                Optional.empty(),
                Plane.ACROSS,
                0,
                List.of(SEAMS),
                STEEL,
                Optional.empty()),
        "seam: throat is 0.0; wanted: a number above 0");
    refused(
        () ->
            new FilletWeld(
                "seam",
                "lever",
                cut,
                Optional.empty(),
                Plane.ACROSS,
                0.004,
                List.of(SEAMS),
                STEEL,
                Optional.of(0.0)),
        "seam: electrode is 0.0; wanted: a number above 0");
  }

  @Test
  void ratingsAndSeats() {
    refused(
        EMPTY.with(Rating.of("lever", 100, "tag")),
        "lever: part is \"lever\"; wanted: a connection of the device (hinge, prop)");
    refused(
        () -> Rating.of("prop", 0, "tag"),
        "prop: working load limit is 0.0; wanted: a number above 0");
    refused(
        () -> new Rating("sling", "prop", 1, "tag", 0, 0, List.of()),
        "sling: legs is 0; wanted: a whole number of 1 or more");
    refused(
        () -> new Rating("sling", "prop", 1, "tag", 2, Math.PI / 2, List.of()),
        "sling: leg angle is 1.5707963267948966; wanted: an angle in rad from 0 to below π/2");
    refused(
        () -> new Rating.Reduction("wet", 1.2, "ours"),
        "wet: share is 1.2; wanted: above 0 and at most 1");
    refused(
        EMPTY.with(new ChainSeat("notch", "prop", "levr", Direction.UP, 1, 0)),
        "notch: body is \"levr\"; wanted: a body of prop (lever, ground); the nearest"
            + " is \"lever\"");
    refused(
        EMPTY.with(new ChainSeat("notch", "chain", "lever", Direction.UP, 1, 0)),
        "notch: part is \"chain\"; wanted: a connection of the device (hinge, prop)");
    refused(
        () -> new ChainSeat("notch", "prop", "lever", Direction.UP, Math.PI, 0),
        "notch: opening is 3.141592653589793; wanted: an angle in rad above 0 and below π");
    refused(
        () -> new ChainSeat("notch", "prop", "lever", Direction.UP, 1, -0.1),
        "notch: friction is -0.1; wanted: 0 or more");
  }

  /** All mistakes are told at once. */
  @Test
  void severalMistakes() {
    refused(
        EMPTY.with("levr", BAR, STEEL).with(Rating.of("chain", 1, "tag")),
        "sizing: part is \"levr\"; wanted: a member or strut of the device (lever, prop); the"
            + " nearest is \"lever\"\nchain: part is \"chain\"; wanted: a connection of the device"
            + " (hinge, prop)");
  }

  @Test
  void drivingLoadsThatTheDeviceLacks() {
    refused(
        () -> Capacity.of(prop(1).build(), EMPTY, Variation.of("barel")),
        "propped lever: driving load is barel; wanted: the name of a given load of the device");
  }
}
