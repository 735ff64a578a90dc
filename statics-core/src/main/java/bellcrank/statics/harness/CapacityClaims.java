package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/**
 * Holds what gives first against what is expected.
 *
 * @param device the device
 * @param driving the loads that grow
 * @param units units of the messages
 * @param ranked what gives, in order
 * @param notChecked what could not be checked
 * @param remarks what else is to be known
 * @param held why the device itself does not hold at a multiple, if it does not
 */
record CapacityClaims(
    Device device,
    Variation.Multiple driving,
    UnitSystem units,
    List<Giving> ranked,
    List<NotChecked> notChecked,
    List<String> remarks,
    DoubleFunction<Optional<String>> held) {

  /** Of what gives so many are listed. */
  private static final int LISTED = 5;

  private static final double ROUNDING = 1e-9;

  /** What is wrong with saying that a part is the first to give. */
  Optional<Message> firstToGiveWay(String part) {
    return first(part, one -> one.isOf(part), "");
  }

  /** What is wrong with saying that a check of a part is the first to be reached. */
  Optional<Message> firstToGiveWay(String part, String check) {
    return first(part, one -> one.isOf(part, check), " by " + check);
  }

  private Optional<Message> first(String part, Predicate<Giving> wanted, String by) {
    requirePart(part);
    if (ranked.stream().filter(this::isFirst).anyMatch(wanted)) {
      return Optional.empty();
    }
    String expected =
        part
            + " of "
            + device.name()
            + " is expected to give first"
            + by
            + " as "
            + VariedWords.varies(driving)
            + ", but ";
    if (ranked.isEmpty()) {
      return Optional.of(listed(expected + "nothing gives, however large that is" + open(part)));
    }
    String follows =
        ranked.stream()
            .filter(wanted)
            .findFirst()
            .map(one -> "; " + part + " follows at " + times(one))
            .orElse("; " + part + " gives at no multiple" + open(part));
    return Optional.of(shown(expected + "first it is " + told(ranked.get(0)) + follows));
  }

  /** Whether it gives at the least multiple of all, be it together with others. */
  private boolean isFirst(Giving one) {
    double least = ranked.get(0).crossing().multiple();
    return one.crossing().multiple() <= least * (1 + ROUNDING);
  }

  /** What is wrong with saying that nothing gives before a multiple. */
  Optional<Message> holdsUntilAtLeast(double multiple) {
    if (!(multiple >= 0 && multiple <= Double.MAX_VALUE)) {
      throw new ModelException(device.name(), "multiple", multiple, "0 or more");
    }
    String expected =
        device.name()
            + " is expected to hold with "
            + VariedWords.upTo(driving, Numbers.plain(multiple))
            + ", but ";
    // from the loads as they are stated on, or from that multiple, if it is below
    Optional<String> not = held.apply(Math.min(1, multiple));
    if (not.isPresent()) {
      return Optional.of(listed(expected + not.get()));
    }
    return ranked.isEmpty() || ranked.get(0).crossing().multiple() >= multiple * (1 - ROUNDING)
        ? Optional.empty()
        : Optional.of(shown(expected + "first gives " + told(ranked.get(0))));
  }

  /** What is wrong with saying that every check could be made. */
  Optional<Message> checksEverything() {
    return notChecked.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Message.of(
                    "Every part of "
                        + device.name()
                        + " is expected to be checked, but "
                        + (notChecked.size() == 1
                            ? "one check was"
                            : notChecked.size() + " checks were")
                        + " not made.")
                .and(openLines()));
  }

  private String open(String part) {
    return notChecked.stream()
        .filter(one -> one.part().equals(part))
        .findFirst()
        .map(one -> ", and its check of " + one.what() + " was not made: " + one.why())
        .orElse("");
  }

  /** What gives, at which multiple and where, and by which numbers. */
  private String told(Giving one) {
    String head = one.part() + " by " + one.check() + " at " + times(one);
    if (one.crossing() instanceof Crossing.Used used) {
      String place = used.reached().place().isEmpty() ? "" : ", " + used.reached().place();
      return head + place + " (" + used.reached().working(units) + ")";
    }
    return head + ": " + ((Crossing.GivesWay) one.crossing()).at().how().words(device, units);
  }

  private String times(Giving one) {
    return VariedWords.at(driving, number(one.crossing().multiple()))
        + one.worst()
            .map(worst -> ", at " + Numbers.percent(worst.share()) + " of the course")
            .orElse("");
  }

  private Message shown(String sentence) {
    Giving first = ranked.get(0);
    Setup.Shown state = new Setup.Shown(first.state().get(), units, "at " + times(first));
    List<String> bodies =
        first.parts().isEmpty()
            ? List.of()
            : new ConcernedBodies(device).ofPart(first.parts().get(0));
    return listed(sentence).with(state, bodies);
  }

  private Message listed(String sentence) {
    List<String> lines = new ArrayList<>();
    if (!ranked.isEmpty()) {
      lines.add("What gives, in order:");
      TextTable table = new TextTable().row("multiple", "part", "check", "used as stated");
      for (Giving one : ranked.subList(0, Math.min(LISTED, ranked.size()))) {
        table.row(number(one.crossing().multiple()), one.part(), one.check(), used(one));
      }
      lines.addAll(table.lines());
    }
    lines.addAll(openLines());
    remarks.forEach(remark -> lines.add("To be known: " + remark + "."));
    return Message.of(sentence + ".").and(lines);
  }

  private List<String> openLines() {
    return notChecked.stream()
        .map(one -> "Not checked: " + one.part() + ", " + one.what() + ": " + one.why() + ".")
        .toList();
  }

  private static String used(Giving one) {
    return one.crossing() instanceof Crossing.Used used
        ? Numbers.percent(used.stated().utilisation())
        : "";
  }

  private static String number(double value) {
    return new Quantity(value, Dimension.NUMBER).format(Dimension.NUMBER.si(), 4);
  }

  private void requirePart(String part) {
    if (device.body(part).isEmpty() && device.connection(part).isEmpty()) {
      List<String> names = new ArrayList<>();
      device.members().forEach(one -> names.add(one.name()));
      device.joints().forEach(one -> names.add(one.name()));
      device.connections().forEach(one -> names.add(one.name()));
      throw new ModelException(
          device.name(), "part", '"' + part + '"', "one of: " + String.join(", ", names));
    }
  }
}
