package bellcrank.statics.study;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import java.util.List;
import java.util.Optional;

/** Numbers of connections and loads. */
final class DeviceSlots {

  static final List<Slot<?>> MASS =
      List.of(
          Slot.of(Weight.class, Weight::mass, (w, v) -> new Weight(w.name(), w.body(), w.at(), v)),
          new Slot<>(
              Strut.class,
              s -> s.mass() > 0 ? Optional.of(s.mass()) : Optional.empty(),
              (s, v) -> new Strut(s.name(), s.first(), s.second(), v)));

  static final List<Slot<?>> MOMENT =
      List.of(
          Slot.of(
              Couple.class, Couple::moment, (c, v) -> new Couple(c.name(), c.member(), v, c.at())));

  static final List<Slot<?>> START =
      List.of(Slot.of(SpreadLoad.class, SpreadLoad::start, (s, v) -> spread(s, v, s.end())));

  static final List<Slot<?>> END =
      List.of(Slot.of(SpreadLoad.class, SpreadLoad::end, (s, v) -> spread(s, s.start(), v)));

  static final List<Slot<?>> STIFFNESS =
      List.of(
          Slot.of(
              Spring.class,
              Spring::stiffness,
              (s, v) -> new Spring(s.name(), s.first(), s.second(), v, s.freeLength())));

  static final List<Slot<?>> FREE_LENGTH =
      List.of(
          Slot.of(
              Spring.class,
              Spring::freeLength,
              (s, v) -> new Spring(s.name(), s.first(), s.second(), s.stiffness(), v)));

  static final List<Slot<?>> TORSION_STIFFNESS =
      List.of(
          Slot.of(
              TorsionSpring.class,
              TorsionSpring::stiffness,
              (s, v) -> new TorsionSpring(s.name(), s.body(), s.other(), v, s.turned())));

  static final List<Slot<?>> TURNED =
      List.of(
          Slot.of(
              TorsionSpring.class,
              TorsionSpring::turned,
              (s, v) -> new TorsionSpring(s.name(), s.body(), s.other(), s.stiffness(), v)));

  static final List<Slot<?>> FRICTION =
      List.of(
          Slot.of(
              Contact.class,
              Contact::friction,
              (c, v) -> rough(c, v, kinetic(c.friction(), c.kineticFriction(), v))),
          Slot.of(
              ContactBase.class,
              ContactBase::friction,
              (c, v) -> base(c, c.width(), v, kinetic(c.friction(), c.kineticFriction(), v))),
          Slot.of(
              Pin.class,
              Pin::friction,
              (p, v) -> new Pin(p.name(), p.at(), p.bodies(), p.radius(), v)),
          Slot.of(
              Wrap.class,
              Wrap::friction,
              (w, v) -> new Wrap(w.name(), w.first(), w.post(), w.last(), v, w.extraTurns())),
          Slot.of(Screw.class, Screw::friction, (s, v) -> screw(s, s.lead(), s.meanRadius(), v)));

  static final List<Slot<?>> KINETIC =
      List.of(
          Slot.of(Contact.class, Contact::kineticFriction, (c, v) -> rough(c, c.friction(), v)),
          Slot.of(
              ContactBase.class,
              ContactBase::kineticFriction,
              (c, v) -> base(c, c.width(), c.friction(), v)));

  static final List<Slot<?>> WIDTH =
      List.of(
          Slot.of(
              ContactBase.class,
              ContactBase::width,
              (c, v) -> base(c, v, c.friction(), c.kineticFriction())));

  static final List<Slot<?>> RADIUS =
      List.of(
          new Slot<>(
              Pin.class,
              p -> p.radius() > 0 ? Optional.of(p.radius()) : Optional.empty(),
              (p, v) -> new Pin(p.name(), p.at(), p.bodies(), v, p.friction())),
          Slot.of(
              Wrap.class,
              w -> w.post().radius(),
              (w, v) ->
                  new Wrap(
                      w.name(),
                      w.first(),
                      new Stop(w.post().kind(), w.post().body(), w.post().at(), v, w.post().turn()),
                      w.last(),
                      w.friction(),
                      w.extraTurns())));

  static final List<Slot<?>> MEAN_RADIUS =
      List.of(
          Slot.of(Screw.class, Screw::meanRadius, (s, v) -> screw(s, s.lead(), v, s.friction())));

  static final List<Slot<?>> LEAD =
      List.of(
          Slot.of(Screw.class, Screw::lead, (s, v) -> screw(s, v, s.meanRadius(), s.friction())));

  static final List<Slot<?>> EFFICIENCY =
      List.of(
          Slot.of(
              Reeving.class,
              Reeving::efficiency,
              (r, v) -> new Reeving(r.name(), r.stops(), v, r.hauling())));

  private DeviceSlots() {}

  /** Kinetic friction that was not stated apart goes with the static one. */
  private static double kinetic(double friction, double kinetic, double changed) {
    return kinetic == friction ? changed : kinetic;
  }

  private static Contact rough(Contact c, double friction, double kinetic) {
    return new Contact(c.name(), c.at(), c.body(), c.other(), c.push(), friction, kinetic);
  }

  private static ContactBase base(ContactBase c, double width, double friction, double kinetic) {
    return new ContactBase(
        c.name(), c.at(), c.body(), c.other(), c.push(), width, friction, kinetic);
  }

  private static Screw screw(Screw s, double lead, double meanRadius, double friction) {
    return new Screw(s.name(), s.first(), s.second(), lead, meanRadius, friction);
  }

  private static SpreadLoad spread(SpreadLoad s, double start, double end) {
    return new SpreadLoad(
        s.name(), s.member(), s.from(), s.to(), start, end, s.direction(), s.per());
  }
}
