package bellcrank.statics.limits.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.WrapAngle;
import bellcrank.statics.equilibrium.internal.Assembly;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the one-sided and rough parts of a device can give. In the plane a cone of friction is two
 * half-planes and a base is two forces at its edges, so linear conditions say it exactly; only dry
 * pins and screws need {@link Branch branches}.
 */
public final class PartBounds {

  /** From this coefficient on, |T| ≤ μN alone keeps N from falling below zero in numbers too. */
  private static final double ROUGH = 0.01;

  /** Ratios of tensions above this are not told from a rope that is loose on one side. */
  private static final double LARGEST_RATIO = 1e7;

  private final Device device;
  private final Assembly assembly;
  private final LoadCase loadCase;
  private final FrictionLevel friction;
  private final Map<String, GroundCap> ground;
  private final boolean cone;
  private final List<Bound> bounds = new ArrayList<>();
  private final List<SinkingBase> sinking = new ArrayList<>();
  private final List<Branch> branches = new ArrayList<>();

  private PartBounds(
      Device device,
      Assembly assembly,
      LoadCase loadCase,
      FrictionLevel friction,
      Map<String, GroundCap> ground,
      boolean cone) {
    this.device = device;
    this.cone = cone;
    this.assembly = assembly;
    this.loadCase = loadCase;
    this.friction = friction;
    this.ground = ground;
    for (int i = 0; i < device.connections().size(); i++) {
      add(device.connections().get(i), i, assembly.firstColumn(i));
    }
  }

  /**
   * The conditions of a device.
   *
   * @param device the device
   * @param assembly its assembly, with dry pins
   * @param loadCase factors of its loads: a couple on a screw is one
   * @param friction which coefficients hold, and by what they are multiplied
   * @param ground by names of bases
   */
  public static PartBounds of(
      Device device,
      Assembly assembly,
      LoadCase loadCase,
      FrictionLevel friction,
      Map<String, GroundCap> ground) {
    return new PartBounds(device, assembly, loadCase, friction, ground, false);
  }

  /** The same for forces that may be multiplied by any number: what can be locked in. */
  PartBounds cone() {
    return new PartBounds(device, assembly, loadCase, friction, ground, true);
  }

  /** The linear conditions. */
  public List<Bound> bounds() {
    return bounds;
  }

  /** Whether forces that keep all conditions do so times any positive number. */
  public boolean areProportional() {
    return branches.stream().allMatch(Branch::isProportional)
        && sinking.isEmpty()
        && bounds.stream().allMatch(bound -> bound.limit == 0);
  }

  List<SinkingBase> sinking() {
    return sinking;
  }

  List<Branch> branches() {
    return branches;
  }

  private void add(Connection connection, int index, int column) {
    if (connection instanceof Line || connection instanceof Reeving) {
      notBelowZero(index, Bound.Kind.PULL, column);
    } else if ((connection instanceof Roller roller && roller.sides() == Sides.ONE)
        || (connection instanceof Slot slot && slot.sides() == Sides.ONE)) {
      notBelowZero(index, Bound.Kind.PUSH, column);
    } else if (connection instanceof Contact contact) {
      double mu = friction.of(contact.friction(), contact.kineticFriction());
      if (mu > ROUGH) {
        impliedNotBelowZero(index, Bound.Kind.PUSH, column);
      } else {
        notBelowZero(index, Bound.Kind.PUSH, column);
      }
      if (contact.friction() > 0) {
        slide(index, column, mu, 0);
      }
    } else if (connection instanceof ContactBase base) {
      base(base, index, column);
    } else if (connection instanceof Wrap wrap) {
      wrap(wrap, index, column);
    } else if (connection instanceof Pin pin && pin.friction() > 0) {
      pin(pin, index);
    } else if (connection instanceof Screw screw) {
      screw(screw, index, column);
    }
  }

  private void notBelowZero(int index, Bound.Kind kind, int column) {
    bounds.add(Bound.notBelowZero(index, kind, column, false));
  }

  /** The same where further conditions of the part leave a force below zero no room. */
  private void impliedNotBelowZero(int index, Bound.Kind kind, int column) {
    bounds.add(Bound.notBelowZero(index, kind, column, true));
  }

  private void slide(int index, int column, double mu, double more) {
    int[] columns = {column, column + 1};
    bounds.add(new Bound(index, Bound.Kind.SLIDE, 1, more, columns, -mu, 1));
    bounds.add(new Bound(index, Bound.Kind.SLIDE, -1, more, columns, -mu, -1));
  }

  private void base(ContactBase base, int index, int column) {
    GroundCap cap = ground.get(base.name());
    impliedNotBelowZero(index, Bound.Kind.PUSH, column);
    if (base.friction() > 0) {
      double mu = friction.of(base.friction(), base.kineticFriction());
      slide(index, column, mu, cap == null || cone ? 0 : cap.sliding());
    }
    int couple = column + assembly.columnCount(index) - 1;
    double half = base.width() / 2 / assembly.size();
    int[] columns = {column, couple};
    bounds.add(new Bound(index, Bound.Kind.EDGE, 1, 0, columns, -half, 1));
    bounds.add(new Bound(index, Bound.Kind.EDGE, -1, 0, columns, -half, -1));
    if (cap != null && cap.canSink() && (cone || cap.pressure() <= 0)) {
      bounds.add(new Bound(index, Bound.Kind.SINK, 1, 0, new int[] {column}, 1));
    } else if (cap != null && cap.canSink()) {
      double all = cap.pressure() * cap.length() * base.width();
      sinking.add(new SinkingBase(index, column, couple, half, all));
    }
  }

  private void wrap(Wrap wrap, int index, int column) {
    notBelowZero(index, Bound.Kind.PULL, column);
    notBelowZero(index, Bound.Kind.PULL, column + 1);
    double mu = friction.of(wrap.friction(), wrap.friction());
    double angle = WrapAngle.of(device, wrap);
    double most = Math.exp(mu * angle);
    if (friction.factor() > 1) {
      // a rope that is loose on one side is held by no friction: a ratio without end must not do so
      most = Math.min(most, Math.max(LARGEST_RATIO, Math.exp(wrap.friction() * angle)));
    }
    int[] columns = {column, column + 1};
    // the smaller tension is asked to be large enough, so that multiples stay of order one
    bounds.add(new Bound(index, Bound.Kind.WRAP, 1, 0, columns, 1 / most, -1));
    bounds.add(new Bound(index, Bound.Kind.WRAP, -1, 0, columns, -1, 1 / most));
  }

  private void pin(Pin pin, int index) {
    double mu = friction.of(pin.friction(), pin.friction());
    double circle = pin.radius() * Math.sin(Math.atan(mu)) / assembly.size();
    boolean shaft = assembly.pinBody(pin.name()) >= 0;
    int count = shaft ? pin.bodies().size() : 1;
    for (int body = 0; body < count; body++) {
      int couple = assembly.coupleColumn(index, body);
      branches.add(new DryPin(index, couple - 2, couple - 1, couple, circle));
    }
  }

  /** A screw takes part once a couple on it is given or sought; without, it is held as it is. */
  private void screw(Screw screw, int index, int column) {
    double given = 0;
    boolean stated = false;
    List<Integer> sought = new ArrayList<>();
    for (Load load : device.loads()) {
      if (load instanceof Couple couple && couple.member().equals(screw.name())) {
        given += cone ? 0 : loadCase.factor(couple.name()) * couple.moment();
        stated = true;
      } else if (load instanceof Sought one && one.body().equals(screw.name())) {
        sought.add(assembly.soughtColumn(one.name()));
        stated = true;
      }
    }
    if (stated) {
      double mu = friction.of(screw.friction(), screw.friction());
      branches.add(
          new ScrewThread(
              index,
              column,
              sought,
              given / assembly.size(),
              screw.lead() / (2 * Math.PI * screw.meanRadius()),
              screw.meanRadius() / assembly.size(),
              mu));
    }
  }
}
