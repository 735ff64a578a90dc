package bellcrank.statics.study.internal;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.TorsionSpring;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Reads asks from forces with rates. What it cannot read exactly it leaves. */
public final class DualReader {

  private final DualDevice at;
  private final DualEquations equations;
  private final List<Dual> forces;

  DualReader(DualDevice at, DualEquations equations, List<Dual> forces) {
    this.at = at;
    this.equations = equations;
    this.forces = forces;
  }

  /**
   * The answer to an ask with its rate.
   *
   * @param ask the ask; checked against the device
   * @return empty if it is not read here
   */
  public Optional<Dual> read(Ask ask) {
    Optional<Dual> whole = whole(ask);
    return ask.each() ? whole.flatMap(value -> each(ask, value)) : whole;
  }

  private Optional<Dual> each(Ask ask, Dual value) {
    if (ask.subject() instanceof Subject.Part part) {
      Optional<Connection> connection = at.device.connection(part.name());
      if (connection.isPresent()) {
        String body = ask.on().orElse(connection.get().bodies().get(0));
        return Optional.of(value.times(1.0 / at.device.sharing(connection.get(), body)));
      }
    }
    return Optional.empty();
  }

  private Optional<Dual> whole(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Ratio ratio) {
      Optional<Dual> below = read(ratio.denominator());
      return read(ratio.numerator()).flatMap(above -> below.map(above::over));
    }
    if (subject instanceof Subject.Resultant resultant) {
      return new DualLoadReader(at, equations).resultant(resultant, ask);
    }
    if (subject instanceof Subject.Spot spot) {
      DualVector place = at.point(spot.point());
      return Optional.of(ask.measure() == Measure.X ? place.x() : place.y());
    }
    if (subject instanceof Subject.Centre centre) {
      return new DualLoadReader(at, equations).centre(centre, ask);
    }
    if (subject instanceof Subject.Advantage) {
      return at.device
          .advantage()
          .filter(pair -> ask.measure() == Measure.ACTUAL)
          .flatMap(this::actual);
    }
    if (subject instanceof Subject.Group group) {
      return sum(between(group), ask, DualVector.ZERO, ask.measure());
    }
    return subject instanceof Subject.Part part ? part(part.name(), ask) : Optional.empty();
  }

  private Optional<Dual> actual(EffortAndResistance pair) {
    Optional<Dual> effort = value(pair.effort());
    return value(pair.resistance()).flatMap(above -> effort.map(above::over));
  }

  private Optional<Dual> value(String name) {
    boolean sought =
        at.device.connection(name).isEmpty() && at.device.load(name).orElse(null) instanceof Sought;
    return sought
        ? Optional.of(unknown(equations.laws.first(name)))
        : read(Ask.of(name, Measure.VALUE));
  }

  /** An unknown in N or N·m. */
  private Dual unknown(int column) {
    return forces.get(column).times(equations.unit(column));
  }

  private Optional<Dual> part(String name, Ask ask) {
    if (isInside(ask) && at.device.body(name).orElse(null) instanceof Member member) {
      int body = at.body(name);
      List<DualAction> acting = carried(one -> one.body() == body);
      equations.given.stream().filter(one -> one.body() == body).forEach(acting::add);
      return new DualInside(new DualBars(at, member, acting), member).read(ask);
    }
    Optional<Load> load = at.device.load(name);
    Optional<Connection> connection = at.device.connection(name);
    if (ask.measure() == Measure.LENGTH) {
      return connection.flatMap(one -> new DualLoadReader(at, equations).length(one));
    }
    if (load.isPresent()) {
      return load.get() instanceof Sought sought ? sought(sought, ask) : load(load.get(), ask);
    }
    return connection.flatMap(one -> connection(one, ask));
  }

  private static boolean isInside(Ask ask) {
    boolean placed = ask.stretch().filter(one -> one.distance().isPresent()).isPresent();
    return placed
        || switch (ask.measure()) {
          case PEAK_NORMAL,
              PEAK_SHEAR,
              PEAK_MOMENT,
              PLACE_OF_PEAK_NORMAL,
              PLACE_OF_PEAK_SHEAR,
              PLACE_OF_PEAK_MOMENT ->
              true;
          default -> false;
        };
  }

  private Optional<Dual> load(Load load, Ask ask) {
    if (load instanceof Couple couple && at.device.body(couple.member()).isEmpty()) {
      Dual moment = at.number("moment", couple.name(), couple.moment());
      return Optional.of(moment.times(at.factor(couple.name())));
    }
    DualVector about = load instanceof Force force ? at.point(force.at()) : DualVector.ZERO;
    int body =
        load instanceof Spring spring
            ? at.body(spring.first().body())
            : load instanceof TorsionSpring twist ? at.body(twist.body()) : DualAction.NONE;
    boolean turning = load instanceof Couple || load instanceof TorsionSpring;
    List<DualAction> own =
        equations.given.stream()
            .filter(one -> one.owner().equals(load.name()))
            .filter(one -> one.body() >= 0)
            .filter(one -> body == DualAction.NONE || one.body() == body)
            .toList();
    Measure natural = turning ? Measure.COUPLE : Measure.SIZE;
    return sum(own, ask, about, ask.measure() == Measure.VALUE ? natural : ask.measure());
  }

  private Optional<Dual> sought(Sought sought, Ask ask) {
    int column = equations.laws.first(sought.name());
    boolean plain = ask.measure() == Measure.MASS || ask.measure() == Measure.VALUE;
    if (plain && sought.want() != Sought.Want.COMPONENTS) {
      Dual value = unknown(column);
      return Optional.of(
          switch (sought.want()) {
            case MASS -> value.over(at.gravity().norm());
            case INTENSITY ->
                value.over(
                    at.point(sought.to().orElseThrow())
                        .minus(at.point(sought.at().orElseThrow()))
                        .norm());
            default -> value;
          });
    }
    DualVector place = sought.at().map(at::point).orElse(DualVector.ZERO);
    return sum(
        carried(one -> one.owner().equals(sought.name())),
        ask,
        place,
        plain ? Measure.SIZE : ask.measure());
  }

  private Optional<Dual> connection(Connection connection, Ask ask) {
    int column = equations.laws.first(connection.name());
    Measure measure = ask.measure() == Measure.VALUE ? natural(connection) : ask.measure();
    return switch (measure) {
      case NORMAL, TENSION -> Optional.of(unknown(column));
      case COMPRESSION -> Optional.of(unknown(column).negative());
      case END_TENSION -> Optional.of(endTension(connection, column));
      case RATIO_OF_TENSIONS -> Optional.of(unknown(column).over(unknown(column + 1)));
      case FRICTION -> Optional.of(isSmooth(connection) ? Dual.ZERO : unknown(column + 1));
      case OFFSET ->
          Optional.of(unknown(column + (isSmooth(connection) ? 1 : 2)).over(unknown(column)));
      case RAISING -> Optional.of(turning((Screw) connection, column, 1));
      case LOWERING -> Optional.of(turning((Screw) connection, column, -1));
      default -> sum(connection, ask, measure);
    };
  }

  /**
   * The force whose size is asked for, with its rates.
   *
   * @return empty if the ask is not for the size of a connection's force
   */
  public Optional<List<Dual>> components(Ask ask) {
    Optional<Connection> connection =
        ask.subject() instanceof Subject.Part part
            ? at.device.connection(part.name())
            : Optional.empty();
    boolean size =
        connection.isPresent()
            && (ask.measure() == Measure.SIZE
                || (ask.measure() == Measure.VALUE && natural(connection.get()) == Measure.SIZE));
    if (!size) {
      return Optional.empty();
    }
    Optional<Dual> x = sum(connection.get(), ask, Measure.X);
    Optional<Dual> y = sum(connection.get(), ask, Measure.Y);
    return x.isPresent() && y.isPresent()
        ? Optional.of(List.of(x.get(), y.get()))
        : Optional.empty();
  }

  private static Measure natural(Connection connection) {
    return switch (connection.kind()) {
      case "strut", "line", "reeving", "screw", "wrap" -> Measure.TENSION;
      case "pin", "clamp" -> Measure.SIZE;
      default -> Measure.NORMAL;
    };
  }

  private static boolean isSmooth(Connection connection) {
    return (connection instanceof Contact contact && contact.friction() == 0)
        || (connection instanceof ContactBase base && base.friction() == 0);
  }

  private Dual endTension(Connection connection, int column) {
    Dual multiple = equations.laws.lastMultiple.get(connection.name());
    return multiple == null
        ? unknown(connection.kind().equals("wrap") ? column + 1 : column)
        : unknown(column).times(multiple);
  }

  /** The couple that turns a screw: F·r·tan(φ ± α), tan α = lead / (2πr), tan φ = μ. */
  private Dual turning(Screw screw, int column, int sense) {
    Dual radius = at.number("mean radius", screw.name(), screw.meanRadius());
    Dual lead = at.number("lead", screw.name(), screw.lead());
    Dual friction = at.number("friction", screw.name(), screw.friction());
    Dual slope = lead.over(radius.times(2 * Math.PI)).times(sense);
    Dual tangent = friction.plus(slope).over(Dual.ONE.minus(friction.times(slope)));
    return unknown(column).abs().times(radius).times(tangent);
  }

  private Optional<Dual> sum(Connection connection, Ask ask, Measure measure) {
    String name = ask.on().orElse(connection.bodies().get(0));
    int body = at.body(name);
    int place = connection.bodies().indexOf(name);
    return sum(
        carried(one -> one.owner().equals(connection.name()) && one.body() == body),
        ask,
        at.point(connection.places().get(place)),
        measure);
  }

  private List<DualAction> carried(Predicate<DualAction> which) {
    List<DualAction> all = new ArrayList<>();
    for (DualAction action : equations.laws.actions) {
      if (which.test(action)) {
        all.add(action.times(unknown(action.column())));
      }
    }
    return all;
  }

  private List<DualAction> between(Subject.Group group) {
    Set<Integer> on = new HashSet<>();
    group.bodies().forEach(body -> on.add(at.body(body)));
    Set<Integer> from = new HashSet<>();
    if (group.from().isEmpty()) {
      for (int body = -1; body < at.bodyCount(); body++) {
        from.add(body);
      }
      from.removeAll(on);
    }
    group.from().forEach(body -> from.add(at.body(body)));
    for (Connection connection : at.device.connections()) {
      if (connection instanceof Pin pin && at.isOwnBody(pin)) {
        int own = at.body(pin.name());
        boolean touches = pin.bodies().stream().anyMatch(body -> on.contains(at.body(body)));
        boolean asked =
            pin.bodies().stream()
                .anyMatch(body -> !on.contains(at.body(body)) && from.contains(at.body(body)));
        from.remove(own);
        if (touches && asked) {
          from.add(own);
        }
      }
    }
    return carried(one -> on.contains(one.body()) && from.contains(one.other()));
  }

  private Optional<Dual> sum(
      List<DualAction> actions, Ask ask, DualVector otherwise, Measure measure) {
    DualVector about = ask.about().map(at::point).orElse(otherwise);
    return DualSum.of(actions, about).measure(measure);
  }
}
