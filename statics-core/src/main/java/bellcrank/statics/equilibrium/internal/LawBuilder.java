package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.Arrays;
import java.util.List;

/** Makes the laws of a device's connections and sought quantities. */
final class LawBuilder {

  private static final double[] WORLD_AXES = {1, 0, 0, 1};

  private final Device device;
  private final Scale scale;
  private final PinBodies pins;
  private final boolean dryPins;
  private ForceLaw[] laws;
  private int count;
  private int columns;
  private int actions;

  /**
   * A builder.
   *
   * @param expected number of laws to be expected
   * @param dryPins whether friction couples of pins are unknowns
   */
  LawBuilder(Device device, Scale scale, PinBodies pins, int expected, boolean dryPins) {
    this.device = device;
    this.dryPins = dryPins;
    this.scale = scale;
    this.pins = pins;
    laws = new ForceLaw[expected];
  }

  /** The laws made, each with its runs of columns and actions. */
  ForceLaw[] laws() {
    return count == laws.length ? laws : Arrays.copyOf(laws, count);
  }

  /** Number of laws by now. */
  int count() {
    return count;
  }

  /** Number of columns of the laws by now. */
  int columns() {
    return columns;
  }

  /** Number of actions of the laws by now. */
  int actions() {
    return actions;
  }

  private void add(ForceLaw law) {
    if (count == laws.length) {
      laws = Arrays.copyOf(laws, 2 * count + 4);
    }
    law.firstColumn = columns;
    law.firstAction = actions;
    columns += law.columns();
    actions += law.actions();
    laws[count++] = law;
  }

  /** The laws of a connection; a pin that is a body of its own has one for each of its bodies. */
  void addConnection(Connection connection) {
    if (connection instanceof Pin pin) {
      pin(pin);
    } else if (connection instanceof Clamp c) {
      add(point(c.name(), c.at(), c.body(), c.other(), WORLD_AXES, false, true));
    } else if (connection instanceof Roller r) {
      add(turning(r.name(), r.at(), r.body(), r.other(), axes(r.push(), false), false));
    } else if (connection instanceof Slot s) {
      double[] square = axes(s.along().perpendicular(), false);
      add(turning(s.name(), s.at(), s.body(), s.other(), square, false));
    } else if (connection instanceof Guide g) {
      double[] square = axes(g.along().perpendicular(), false);
      add(turning(g.name(), g.at(), g.body(), g.other(), square, true));
    } else if (connection instanceof Contact c) {
      double[] axes = axes(c.push(), c.friction() > 0);
      add(turning(c.name(), c.at(), c.body(), c.other(), axes, false));
    } else if (connection instanceof ContactBase b) {
      double[] axes = axes(b.push(), b.friction() > 0);
      add(turning(b.name(), b.at(), b.body(), b.other(), axes, true));
    } else if (connection instanceof Strut strut) {
      add(axial(strut.name(), strut.first(), strut.second()));
    } else if (connection instanceof Line line) {
      add(axial(line.name(), line.first(), line.second()));
    } else if (connection instanceof Screw screw) {
      add(axial(screw.name(), screw.first(), screw.second()));
    } else if (connection instanceof Reeving reeving) {
      add(reeving(reeving));
    } else if (connection instanceof Wrap wrap) {
      add(
          new RopeLaw(
              wrap.name(),
              stops(List.of(wrap.first(), wrap.post(), wrap.last())),
              new int[] {0, 1},
              new double[] {1, 1}));
    }
  }

  private void pin(Pin pin) {
    List<String> bodies = pin.bodies();
    int own = pins.of(pin.name());
    boolean dry = dryPins && pin.friction() > 0;
    if (own < 0) {
      add(point(pin.name(), pin.at(), bodies.get(0), bodies.get(1), WORLD_AXES, false, dry));
      return;
    }
    Point at = device.point(pin.at());
    for (String body : bodies) {
      add(
          new PointLaw(
              pin.name(), body(body), own, scale.x(at), scale.y(at), WORLD_AXES, false, dry));
    }
  }

  /** Push direction, and with friction the direction to its right: for a push up, +x. */
  private static double[] axes(Direction push, boolean friction) {
    return friction
        ? new double[] {push.x(), push.y(), push.y(), -push.x()}
        : new double[] {push.x(), push.y()};
  }

  private PointLaw turning(
      String name, String at, String body, String other, double[] axes, boolean couple) {
    return point(name, at, body, other, axes, true, couple);
  }

  private PointLaw point(
      String name,
      String place,
      String body,
      String other,
      double[] axes,
      boolean turns,
      boolean couple) {
    Point at = device.point(place);
    return new PointLaw(
        name, body(body), body(other), scale.x(at), scale.y(at), axes, turns, couple);
  }

  private AxialLaw axial(String name, End first, End second) {
    Point a = device.point(first.at());
    Point b = device.point(second.at());
    return new AxialLaw(
        name,
        body(first.body()),
        body(second.body()),
        scale.x(a),
        scale.y(a),
        scale.x(b),
        scale.y(b));
  }

  private RopeLaw reeving(Reeving reeving) {
    int parts = reeving.stops().size() - 1;
    double[] multiple = new double[parts];
    double step =
        switch (reeving.hauling()) {
          case IDEAL -> 1;
          case RAISING -> reeving.efficiency();
          case LOWERING -> 1 / reeving.efficiency();
        };
    multiple[0] = 1;
    for (int part = 1; part < parts; part++) {
      multiple[part] = multiple[part - 1] * step;
    }
    return new RopeLaw(reeving.name(), stops(reeving.stops()), new int[parts], multiple);
  }

  private RopeLaw.Stops stops(List<Stop> stops) {
    RopeLaw.Stops arrays = new RopeLaw.Stops(stops.size());
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      Point at = device.point(stop.at());
      arrays.body[i] = body(stop.body());
      arrays.qx[i] = scale.x(at);
      arrays.qy[i] = scale.y(at);
      arrays.signedRadius[i] = stop.turn().sign() * stop.radius() / scale.size();
    }
    return arrays;
  }

  void addSought(Sought sought) {
    int body = pins.underLoad(sought.body());
    double qx = 0;
    double qy = 0;
    Entry entry = new Entry.Unplaced();
    if (sought.at().isPresent()) {
      Point at = device.point(sought.at().get());
      // an even load acts as its total at the middle of its segment
      Point end = sought.to().map(device::point).orElse(at);
      qx = (scale.x(at) + scale.x(end)) / 2;
      qy = (scale.y(at) + scale.y(end)) / 2;
      entry =
          sought.to().isPresent()
              ? new Entry.Along(scale.x(at), scale.y(at), scale.x(end), scale.y(end))
              : new Entry.At(qx, qy);
    }
    double[] directions =
        switch (sought.want()) {
          case FORCE, INTENSITY -> axes(sought.direction().orElseThrow(), false);
          case COMPONENTS -> Arrays.copyOf(WORLD_AXES, 4);
          case COUPLE -> new double[0];
          // one unit is the weight of one newton, so that the column is of order one
          case MASS -> {
            double g = device.gravity().norm();
            yield g > 0
                ? new double[] {device.gravity().x() / g, device.gravity().y() / g}
                : new double[] {0, 0};
          }
        };
    add(new SoughtLaw(sought.name(), body, qx, qy, directions, entry));
  }

  private int body(String name) {
    return device.bodyIndex(name);
  }
}
