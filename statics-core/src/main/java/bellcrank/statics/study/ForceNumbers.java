package bellcrank.statics.study;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Stop;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Numbers of forces, of directions, of gravity, of cases and of sheaves. */
final class ForceNumbers {

  /** Parts other than forces that have a direction. */
  private static final List<Slot<?>> WAYS =
      List.of(
          new Slot<>(
              SpreadLoad.class,
              s -> s.direction().map(Direction::angle),
              (s, v) ->
                  new SpreadLoad(
                      s.name(), s.member(), s.from(), s.to(), s.start(), s.end(), way(v), s.per())),
          new Slot<>(
              Sought.class,
              s -> s.direction().map(Direction::angle),
              (s, v) -> new Sought(s.name(), s.want(), s.body(), s.at(), way(v), s.to())),
          Slot.way(
              Roller.class,
              Roller::push,
              (r, d) -> new Roller(r.name(), r.at(), r.body(), r.other(), d, r.sides())),
          Slot.way(
              bellcrank.statics.device.Slot.class,
              bellcrank.statics.device.Slot::along,
              (s, d) ->
                  new bellcrank.statics.device.Slot(
                      s.name(), s.at(), s.body(), s.other(), d, s.sides())),
          Slot.way(
              Guide.class,
              Guide::along,
              (g, d) -> new Guide(g.name(), g.at(), g.body(), g.other(), d)),
          Slot.way(
              Contact.class,
              Contact::push,
              (c, d) ->
                  new Contact(
                      c.name(), c.at(), c.body(), c.other(), d, c.friction(), c.kineticFriction())),
          Slot.way(
              ContactBase.class,
              ContactBase::push,
              (c, d) ->
                  new ContactBase(
                      c.name(),
                      c.at(),
                      c.body(),
                      c.other(),
                      d,
                      c.width(),
                      c.friction(),
                      c.kineticFriction())));

  private ForceNumbers() {}

  private static Optional<Direction> way(double angle) {
    return Optional.of(Direction.ofAngle(angle));
  }

  private static List<String> forces(Draft draft) {
    return draft.parts(Force.class).stream()
        .filter(force -> force.vector().norm() > 0)
        .map(Force::name)
        .toList();
  }

  /** The size of a force that keeps its direction. */
  record Size(String force) implements InputNumber {

    @Override
    public String text() {
      return InputText.SIZE + " of " + InputText.name(force);
    }

    @Override
    public Dimension dimension() {
      return Dimension.FORCE;
    }

    private Draft.Polar polar(Draft draft) {
      return draft
          .force(force)
          .orElseThrow(
              () -> draft.missing(InputText.SIZE, force, "a force other than zero", forces(draft)));
    }

    @Override
    public double read(Draft draft) {
      return polar(draft).size();
    }

    @Override
    public void write(Draft draft, double value) {
      draft.force(force, new Draft.Polar(polar(draft).direction(), value));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(Rates.ofForce(force, polar(draft).direction().times(1)));
    }
  }

  /** The direction of a force, of another load, or of what a part pushes or slides along. */
  record Way(String part) implements InputNumber {

    @Override
    public String text() {
      return InputText.DIRECTION + " of " + InputText.name(part);
    }

    @Override
    public Dimension dimension() {
      return Dimension.ANGLE;
    }

    @Override
    public double read(Draft draft) {
      Optional<Draft.Polar> polar = draft.force(part);
      if (polar.isPresent()) {
        return polar.get().direction().angle();
      }
      for (Slot<?> slot : WAYS) {
        Optional<Double> found = slot.read(draft, part);
        if (found.isPresent()) {
          return found.get();
        }
      }
      throw missing(draft);
    }

    @Override
    public void write(Draft draft, double value) {
      Optional<Draft.Polar> polar = draft.force(part);
      if (polar.isPresent()) {
        draft.force(part, new Draft.Polar(Direction.ofAngle(value), polar.get().size()));
        return;
      }
      for (Slot<?> slot : WAYS) {
        if (slot.write(draft, part, value)) {
          return;
        }
      }
      throw missing(draft);
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(
          draft
              .force(part)
              .map(polar -> Rates.ofForce(part, polar.vector().perpendicular()))
              .orElseGet(() -> Rates.ofNumber(InputText.DIRECTION, part)));
    }

    private ModelException missing(Draft draft) {
      List<String> known = new ArrayList<>(forces(draft));
      WAYS.forEach(slot -> known.addAll(slot.names(draft)));
      return draft.missing(InputText.DIRECTION, part, "a part with a direction", known);
    }
  }

  /** How strong gravity is; it keeps its direction. */
  record Gravity() implements InputNumber {

    @Override
    public String text() {
      return InputText.GRAVITY;
    }

    @Override
    public Dimension dimension() {
      return Dimension.ACCELERATION;
    }

    @Override
    public double read(Draft draft) {
      return draft.gravity().size();
    }

    @Override
    public void write(Draft draft, double value) {
      draft.gravity(new Draft.Polar(draft.gravity().direction(), value));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(Rates.ofGravity(draft.gravity().direction().times(1)));
    }
  }

  /** The slope of the ground of a device that is drawn as if it were level: gravity is turned. */
  record Slope() implements InputNumber {

    @Override
    public String text() {
      return InputText.SLOPE;
    }

    @Override
    public Dimension dimension() {
      return Dimension.ANGLE;
    }

    @Override
    public double read(Draft draft) {
      Direction down = draft.gravity().direction();
      return Math.atan2(-down.x(), -down.y()) + 0.0;
    }

    @Override
    public void write(Draft draft, double value) {
      Direction down = Direction.from(-Math.sin(value), -Math.cos(value));
      draft.gravity(new Draft.Polar(down, draft.gravity().size()));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(Rates.ofGravity(draft.gravity().vector().perpendicular().times(-1)));
    }
  }

  /** The factor of a load in a case. */
  record Factor(String load, String loadCase) implements InputNumber {

    @Override
    public String text() {
      return InputText.FACTOR
          + " of "
          + InputText.name(load)
          + InputText.IN
          + InputText.name(loadCase);
    }

    @Override
    public Dimension dimension() {
      return Dimension.NUMBER;
    }

    @Override
    public double read(Draft draft) {
      return stated(draft).factors().getOrDefault(load, 1.0);
    }

    private LoadCase stated(Draft draft) {
      if (draft.device().load(load).isEmpty()) {
        List<String> known =
            draft.parts(bellcrank.statics.device.Load.class).stream().map(Draft::nameOf).toList();
        throw draft.missing(InputText.FACTOR, load, "a load", known);
      }
      return draft.device().loadCase(loadCase);
    }

    @Override
    public void write(Draft draft, double value) {
      LoadCase stated = stated(draft);
      Map<String, Double> factors = new LinkedHashMap<>(stated.factors());
      factors.put(load, value);
      draft.device().loadCase(new LoadCase(loadCase, factors, stated.dynamic()));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(Rates.ofNumber("factor in " + loadCase, load));
    }
  }

  /** The dynamic factor of a case. */
  record Dynamic(String loadCase) implements InputNumber {

    @Override
    public String text() {
      return InputText.DYNAMIC + " of " + InputText.name(loadCase);
    }

    @Override
    public Dimension dimension() {
      return Dimension.NUMBER;
    }

    @Override
    public double read(Draft draft) {
      return draft.device().loadCase(loadCase).dynamic();
    }

    @Override
    public void write(Draft draft, double value) {
      LoadCase stated = draft.device().loadCase(loadCase);
      draft.device().loadCase(new LoadCase(loadCase, stated.factors(), value));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(Rates.ofNumber(InputText.DYNAMIC, loadCase));
    }
  }

  /** The radius of the sheaves and drums of a reeving at a point. */
  record Sheave(String reeving, String at) implements InputNumber {

    @Override
    public String text() {
      return "radius of " + InputText.name(reeving) + InputText.AT + InputText.name(at);
    }

    @Override
    public Dimension dimension() {
      return Dimension.LENGTH;
    }

    private boolean isHere(Stop stop) {
      return stop.kind() != Stop.Kind.END && stop.at().equals(at);
    }

    private Reeving stated(Draft draft) {
      return draft
          .part(Reeving.class, reeving)
          .filter(one -> one.stops().stream().anyMatch(this::isHere))
          .orElseThrow(
              () ->
                  draft.missing(
                      "reeving",
                      reeving,
                      "a reeving with a sheave or drum at " + at,
                      draft.parts(Reeving.class).stream().map(Reeving::name).toList()));
    }

    @Override
    public double read(Draft draft) {
      return stated(draft).stops().stream()
          .filter(this::isHere)
          .mapToDouble(Stop::radius)
          .findFirst()
          .orElseThrow();
    }

    @Override
    public void write(Draft draft, double value) {
      Reeving stated = stated(draft);
      List<Stop> stops =
          stated.stops().stream()
              .map(
                  stop ->
                      isHere(stop)
                          ? new Stop(stop.kind(), stop.body(), stop.at(), value, stop.turn())
                          : stop)
              .toList();
      draft.put(new Reeving(reeving, stops, stated.efficiency(), stated.hauling()));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      return Optional.of(Rates.ofNumber("radius at " + at, reeving));
    }
  }
}
