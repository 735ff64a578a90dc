package bellcrank.statics.explain;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.explain.Unknown.Kind;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Limits;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What rough parts ask of their friction, once their forces are known. */
final class RoughParts {

  private RoughParts() {}

  private static List<Connection> inOrder(Device device) {
    return device.connections().stream().sorted(Comparator.comparing(Connection::name)).toList();
  }

  /** Contacts and dry pins; not bases for which the ground resists in its own way. */
  static List<Step> margins(Limits limits, Picture picture, Plan plan) {
    Set<String> founded =
        limits.foundations().stream().map(Foundation::base).collect(Collectors.toSet());
    List<Step> steps = new ArrayList<>();
    for (Connection part : inOrder(limits.device())) {
      double coefficient =
          part instanceof Contact c
              ? c.friction()
              : part instanceof ContactBase b ? b.friction() : 0;
      if (coefficient > 0 && !founded.contains(part.name())) {
        margin(part.name(), coefficient, picture, plan, steps);
      } else if (part instanceof Pin pin && pin.friction() > 0) {
        steps.add(new Step.PinFriction(pin.name(), pin.radius(), Math.atan(pin.friction())));
      }
    }
    return steps;
  }

  private static void margin(
      String part, double coefficient, Picture picture, Plan plan, List<Step> steps) {
    OptionalInt friction = known(picture, plan, part, Kind.FRICTION);
    OptionalInt normal = known(picture, plan, part, Kind.NORMAL);
    if (friction.isPresent() && normal.isPresent() && plan.value(normal.getAsInt()) > 0) {
      steps.add(
          new Step.Margin(
              part,
              picture.unknowns().get(friction.getAsInt()).symbol(),
              plan.value(friction.getAsInt()),
              picture.unknowns().get(normal.getAsInt()).symbol(),
              plan.value(normal.getAsInt()),
              coefficient));
    }
  }

  private static OptionalInt known(Picture picture, Plan plan, String part, Kind kind) {
    BitSet known = plan.known();
    return IntStream.range(0, picture.unknowns().size())
        .filter(known::get)
        .filter(
            k ->
                picture.unknowns().get(k).part().equals(part)
                    && picture.unknowns().get(k).kind() == kind)
        .findFirst();
  }

  /** Couples that turn the screws whose axial forces are known. */
  static List<Step.ThreadLaw> threads(Device device, Picture picture, Plan plan) {
    List<Step.ThreadLaw> steps = new ArrayList<>();
    for (Connection part : inOrder(device)) {
      OptionalInt axial = known(picture, plan, part.name(), Kind.AXIAL);
      if (part instanceof Screw screw && axial.isPresent()) {
        steps.add(
            new Step.ThreadLaw(
                screw.name(),
                picture.unknowns().get(axial.getAsInt()).symbol(),
                plan.value(axial.getAsInt()),
                screw.meanRadius(),
                Math.atan(screw.lead() / (2 * Math.PI * screw.meanRadius())),
                Math.atan(screw.friction())));
      }
    }
    return steps;
  }
}
