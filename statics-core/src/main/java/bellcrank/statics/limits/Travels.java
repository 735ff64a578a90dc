package bellcrank.statics.limits;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.internal.Travel;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

/** Turns a variation into fixed loads and loads times a number. */
final class Travels {

  /** Up to this many names a list is as quick as a set. */
  private static final int FEW = 8;

  private final Device device;
  private final LoadCase loadCase;
  private final Pose pose;
  private final ForceSpace space;

  Travels(Device device, LoadCase loadCase, Pose pose, ForceSpace space) {
    this.device = device;
    this.loadCase = loadCase;
    this.pose = pose;
    this.space = space;
  }

  Travel of(Variation variation) {
    return variation instanceof Variation.Multiple multiple
        ? multiple(multiple)
        : place((Variation.Place) variation);
  }

  /** Length of the line of a place in m; 0 for loads. */
  double length(Variation variation) {
    return variation instanceof Variation.Place place
        ? device.point(place.from()).distance(device.point(place.to()))
        : 0;
  }

  /** The loads that a multiple is of. */
  static Set<String> loads(Device device, Variation.Multiple multiple) {
    if (!multiple.loads().isEmpty()) {
      return new LinkedHashSet<>(multiple.loads());
    }
    Set<String> applied = new LinkedHashSet<>();
    for (Load load : device.loads()) {
      boolean onScrew =
          load instanceof Couple couple && device.connection(couple.member()).isPresent();
      if (!onScrew
          && (load instanceof Force || load instanceof Couple || load instanceof SpreadLoad)) {
        applied.add(load.name());
      }
    }
    return applied;
  }

  private Travel multiple(Variation.Multiple multiple) {
    Collection<String> varied =
        multiple.loads().isEmpty() || multiple.loads().size() > FEW
            ? loads(device, multiple)
            : multiple.loads();
    for (String name : varied) {
      Load load = device.load(name).orElse(null);
      if (load == null || load instanceof Sought) {
        throw new ModelException(
            device.name(), "varied load", name, "the name of a given load of the device");
      }
      if (load instanceof Couple couple && device.connection(couple.member()).isPresent()) {
        throw new ModelException(
            name, "varied load", "a couple on a screw", "a sought couple on it: its range is told");
      }
    }
    return Travel.of(
        space.loads(loadCase, name -> !varied.contains(name)),
        space.loads(loadCase, varied::contains),
        Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY);
  }

  private Travel place(Variation.Place place) {
    Load load = device.load(place.load()).orElse(null);
    String body;
    Point at;
    if (load instanceof Force force) {
      body = force.body();
      at = device.point(force.at());
    } else if (load instanceof Weight weight) {
      body = weight.body();
      at =
          weight.at().isPresent()
              ? device.point(weight.at().get())
              : device.body(body).orElse(null) instanceof Member member
                  ? device.middleOfBars(member)
                  : Point.ORIGIN;
    } else {
      throw new ModelException(
          device.name(), "load that is moved", place.load(), "the name of a force or weight");
    }
    if (!(device.body(body).orElse(null) instanceof Member)) {
      throw new ModelException(
          place.load(), "load that is moved", "on " + body, "a load on a member");
    }
    Point from = device.point(place.from());
    double length = length(place);
    if (!(length > 0)) {
      throw new ModelException(
          place.load(), "line", place.from() + " to " + place.to(), "two points apart");
    }
    Vector toStart = turned(body, at.to(from));
    Vector along = turned(body, from.to(device.point(place.to())).times(1 / length));
    double[] fixed = space.loads(loadCase, name -> true);
    double[] shift = space.shift(loadCase, place.load(), toStart);
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] += shift[i];
    }
    return Travel.of(fixed, space.shift(loadCase, place.load(), along), 0, length);
  }

  private Vector turned(String body, Vector drawn) {
    Point start = pose.frame(body).apply(Point.ORIGIN);
    return start.to(pose.frame(body).apply(Point.of(drawn.x(), drawn.y())));
  }
}
