package bellcrank.statics.limits;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes an ordinary device of a side view. A force down beside the plane is the same force in the
 * plane and a couple; so what acts sideways can grow while what presses stays as it is.
 */
final class SideDevice {

  static final String BODY = "whole device";
  private static final String FOOT = "foot";

  private final SideView view;
  private final double cosLean;
  private final double sinLean;
  private final double cosSlope;
  private final double sinSlope;
  private final Set<String> taken = new HashSet<>();
  private final List<String> places = new ArrayList<>(List.of(FOOT));
  private final List<Load> effects = new ArrayList<>();
  private final DeviceBuilder builder;
  private double pressing;

  /** The device, and the names of the loads in it that act sideways. */
  record Built(Device device, List<String> effects) {

    Built {
      effects = List.copyOf(effects);
    }
  }

  private SideDevice(SideView view) {
    this.view = view;
    cosLean = Math.cos(view.lean());
    sinLean = Math.sin(view.lean());
    cosSlope = Math.cos(view.slope());
    sinSlope = Math.sin(view.slope());
    builder = Device.named("side view of " + BODY).point(FOOT, 0, 0);
    taken.add(view.base());
    view.loads().forEach(one -> taken.add(one.name()));
    view.stays().forEach(one -> taken.add(one.name()));
  }

  static Built of(SideView view) {
    return new SideDevice(view).built();
  }

  private Built built() {
    String middle = place(view.baseOffset(), 0);
    view.loads().forEach(this::add);
    view.supports().forEach(one -> down(one.offset(), -one.push() * cosSlope));
    view.links().forEach(this::add);
    for (SideStay stay : view.stays()) {
      Point end = leaned(stay.height(), stay.offset());
      String fixed = place(end.x(), end.y());
      String anchor = "anchor " + places.size();
      builder.point(anchor, stay.anchorOffset(), stay.anchorHeight());
      builder.connect(new Line(stay.name(), End.of(BODY, fixed), End.of(Ground.NAME, anchor)));
    }
    builder.member(new Member(BODY, places, List.of(), List.of(), 1));
    builder.connect(
        new ContactBase(
            view.base(),
            middle,
            BODY,
            Ground.NAME,
            Direction.UP,
            view.breadth(),
            view.friction(),
            view.friction()));
    addPressing();
    effects.forEach(builder::load);
    return new Built(builder.build(), effects.stream().map(Load::name).toList());
  }

  private void addPressing() {
    if (pressing > 0) {
      double mass = pressing / Device.STANDARD_GRAVITY.norm();
      builder.load(new Weight(unused("pressing down"), BODY, Optional.of(FOOT), mass));
    } else if (pressing < 0) {
      builder.load(new Force(unused("lifting"), BODY, FOOT, Vector.of(0, -pressing)));
    }
  }

  private void add(SideLoad load) {
    Point at = leaned(load.height(), load.offset());
    down(at.x(), load.down() * cosSlope);
    sideways(unused("slope under a load"), at, Vector.of(load.down() * sinSlope, 0));
    sideways(load.name(), at, Vector.of(load.side() * cosSlope, load.side() * sinSlope));
  }

  private void add(SideLink link) {
    Point end = leaned(link.height(), 0);
    Point anchor = Point.of(link.anchorOffset(), link.anchorHeight());
    // in the leaned plane the loads act with their part in that plane
    Vector pull = end.to(anchor).times(link.pullPerLength() * cosLean * cosSlope);
    down(anchor.x(), -pull.y());
    sideways(unused("pull of a link"), anchor, Vector.of(pull.x(), 0));
  }

  private Point leaned(double height, double offset) {
    return Point.of(height * sinLean + offset * cosLean, height * cosLean - offset * sinLean);
  }

  private void down(double offset, double force) {
    pressing += force;
    double moment = -offset * force;
    if (moment != 0) {
      String name = unused("moment of an offset");
      taken.add(name);
      effects.add(new Couple(name, BODY, moment));
    }
  }

  private void sideways(String name, Point at, Vector force) {
    String place = place(at.x(), at.y());
    if (force.norm() != 0) {
      taken.add(name);
      effects.add(new Force(name, BODY, place, force));
    }
  }

  private String place(double x, double y) {
    String name = "place " + places.size();
    builder.point(name, x, y);
    places.add(name);
    return name;
  }

  private String unused(String wanted) {
    String name = wanted;
    for (int k = 2; taken.contains(name); k++) {
      name = wanted + " " + k;
    }
    return name;
  }
}
