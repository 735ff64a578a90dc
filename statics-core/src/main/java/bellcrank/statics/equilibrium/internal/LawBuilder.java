package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
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
import java.util.function.Consumer;
import java.util.function.ToIntFunction;

/** Makes the laws of a device's connections and sought quantities. */
final class LawBuilder {

  private static final double[] WORLD_AXES = {1, 0, 0, 1};

  private final Device device;
  private final Scale scale;
  private final ToIntFunction<String> bodyOrPin;

  LawBuilder(Device device, Scale scale, ToIntFunction<String> bodyOrPin) {
    this.device = device;
    this.scale = scale;
    this.bodyOrPin = bodyOrPin;
  }

  /** The laws of a connection; a pin that is a joint of its own has one for each of its bodies. */
  void connection(Connection connection, int pinBody, Consumer<ForceLaw> out) {
    if (connection instanceof Pin pin) {
      if (pinBody >= 0) {
        for (String body : pin.bodies()) {
          out.accept(point(pin, body(body), pinBody, WORLD_AXES, false, false));
        }
      } else {
        out.accept(between(pin, WORLD_AXES, false, false));
      }
    } else if (connection instanceof Clamp clamp) {
      out.accept(between(clamp, WORLD_AXES, false, true));
    } else if (connection instanceof Roller roller) {
      out.accept(between(roller, axes(roller.push(), false), true, false));
    } else if (connection instanceof Slot slot) {
      out.accept(between(slot, axes(slot.along().perpendicular(), false), true, false));
    } else if (connection instanceof Guide guide) {
      out.accept(between(guide, axes(guide.along().perpendicular(), false), true, true));
    } else if (connection instanceof Contact contact) {
      out.accept(between(contact, axes(contact.push(), contact.friction() > 0), true, false));
    } else if (connection instanceof ContactBase base) {
      out.accept(between(base, axes(base.push(), base.friction() > 0), true, true));
    } else if (connection instanceof Strut
        || connection instanceof Line
        || connection instanceof Screw) {
      Point a = device.point(connection.places().get(0));
      Point b = device.point(connection.places().get(1));
      out.accept(
          new AxialLaw(
              connection.name(),
              body(connection.bodies().get(0)),
              body(connection.bodies().get(1)),
              scale.x(a),
              scale.y(a),
              scale.x(b),
              scale.y(b)));
    } else if (connection instanceof Reeving reeving) {
      out.accept(reeving(reeving));
    } else if (connection instanceof Wrap wrap) {
      out.accept(
          new RopeLaw(
              wrap.name(),
              stops(List.of(wrap.first(), wrap.post(), wrap.last())),
              new int[] {0, 1},
              new double[] {1, 1}));
    }
  }

  /** Push direction, and with friction the direction to its right: for a push up, +x. */
  private static double[] axes(Direction push, boolean friction) {
    return friction
        ? new double[] {push.x(), push.y(), push.y(), -push.x()}
        : new double[] {push.x(), push.y()};
  }

  private PointLaw between(
      Connection connection, double[] directions, boolean turns, boolean couple) {
    return point(
        connection,
        body(connection.bodies().get(0)),
        body(connection.bodies().get(1)),
        directions,
        turns,
        couple);
  }

  private PointLaw point(
      Connection connection,
      int body,
      int other,
      double[] directions,
      boolean turns,
      boolean couple) {
    Point at = device.point(connection.places().get(0));
    return new PointLaw(
        connection.name(), body, other, scale.x(at), scale.y(at), directions, turns, couple);
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

  SoughtLaw sought(Sought sought) {
    int body = bodyOrPin.applyAsInt(sought.body());
    double qx = 0;
    double qy = 0;
    if (sought.at().isPresent()) {
      Point at = device.point(sought.at().get());
      // an even load acts as its total at the middle of its segment
      Point end = sought.to().map(device::point).orElse(at);
      qx = (scale.x(at) + scale.x(end)) / 2;
      qy = (scale.y(at) + scale.y(end)) / 2;
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
    return new SoughtLaw(sought.name(), body, qx, qy, directions);
  }

  private int body(String name) {
    return device.bodyIndex(name);
  }
}
