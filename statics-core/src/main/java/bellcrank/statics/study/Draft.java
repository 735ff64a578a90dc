package bellcrank.statics.study;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.DeviceDraft;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.strength.Detail;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A model that is being changed; the device in it is built once, at the end. */
final class Draft {

  private final DeviceDraft device;
  private final List<Foundation> foundations;
  private Optional<Sizing> sizing;

  /** Forces that are changed: size and direction apart, so that neither is lost with the other. */
  private final Map<String, Polar> forces = new LinkedHashMap<>();

  private Optional<Polar> gravity = Optional.empty();

  /** A vector by its direction and its size, which is negative against the direction. */
  record Polar(Direction direction, double size) {

    static Polar of(Vector vector) {
      return new Polar(Direction.from(vector), vector.norm());
    }

    Vector vector() {
      return direction.times(size);
    }
  }

  Draft(Model model) {
    device = DeviceDraft.of(model.device());
    foundations = new ArrayList<>(model.foundations());
    sizing = model.sizing();
  }

  DeviceDraft device() {
    return device;
  }

  Optional<Sizing> sizing() {
    return sizing;
  }

  void sizing(Sizing other) {
    sizing = Optional.of(other);
  }

  /** A force by size and direction; none if it is zero as stated, and so has no direction. */
  Optional<Polar> force(String name) {
    Polar changed = forces.get(name);
    if (changed != null) {
      return Optional.of(changed);
    }
    return device.load(name).orElse(null) instanceof Force force && force.vector().norm() > 0
        ? Optional.of(Polar.of(force.vector()))
        : Optional.empty();
  }

  void force(String name, Polar other) {
    forces.put(name, other);
  }

  /** Gravity; downwards where it is zero. */
  Polar gravity() {
    return gravity.orElseGet(
        () ->
            device.gravity().norm() > 0
                ? Polar.of(device.gravity())
                : new Polar(Direction.DOWN, 0));
  }

  void gravity(Polar other) {
    gravity = Optional.of(other);
  }

  /** A connection, load, foundation or detail by kind and name, changes taken in. */
  <T> Optional<T> part(Class<T> kind, String name) {
    if (Connection.class.isAssignableFrom(kind)) {
      return device.connection(name).filter(kind::isInstance).map(kind::cast);
    }
    if (Load.class.isAssignableFrom(kind)) {
      return device.load(name).filter(kind::isInstance).map(kind::cast);
    }
    return others().stream()
        .filter(one -> kind.isInstance(one) && nameOf(one).equals(name))
        .findFirst()
        .map(kind::cast);
  }

  /** All parts of a kind, as stated. */
  <T> List<T> parts(Class<T> kind) {
    List<Object> all = new ArrayList<>(device.device().connections());
    all.addAll(device.device().loads());
    all.addAll(others());
    return all.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private List<Object> others() {
    List<Object> all = new ArrayList<>(foundations);
    sizing.ifPresent(one -> all.addAll(one.details()));
    return all;
  }

  static String nameOf(Object part) {
    if (part instanceof Connection connection) {
      return connection.name();
    } else if (part instanceof Load load) {
      return load.name();
    } else if (part instanceof Foundation foundation) {
      return foundation.base();
    } else if (part instanceof Rating rating) {
      return rating.name();
    }
    return part instanceof FilletWeld weld ? weld.name() : ((Detail) part).part();
  }

  /** Exchanges a part for another of the same kind and name. */
  void put(Object part) {
    if (part instanceof Connection connection) {
      device.connection(connection);
    } else if (part instanceof Load load) {
      device.load(load);
    } else if (part instanceof Foundation foundation) {
      foundations.replaceAll(one -> one.base().equals(foundation.base()) ? foundation : one);
    } else {
      Sizing stated = sizing.orElseThrow();
      sizing(
          stated.withDetails(
              stated.details().stream()
                  .map(one -> same(one, part) ? (Detail) part : one)
                  .toList()));
    }
  }

  private static boolean same(Object one, Object other) {
    return one.getClass() == other.getClass() && nameOf(one).equals(nameOf(other));
  }

  /** What to say where the model has nothing of a name. */
  ModelException missing(String field, String name, String kind, Collection<String> known) {
    return MissingName.of(device.device().name(), field, name, kind, known);
  }

  Model build() {
    forces.forEach(
        (name, polar) -> {
          Force stated = (Force) device.load(name).orElseThrow();
          device.load(new Force(name, stated.body(), stated.at(), polar.vector()));
        });
    gravity.ifPresent(polar -> device.gravity(polar.vector()));
    return new Model(device.build(), foundations, sizing);
  }
}
