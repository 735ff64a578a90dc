package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Problem;
import bellcrank.statics.device.Strut;
import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a sizing fits a device: all names are there, and are what they are taken for. */
final class SizingCheck {

  private final Device device;
  private final List<Problem> problems = new ArrayList<>();

  private SizingCheck(Device device) {
    this.device = device;
  }

  /**
   * Checks.
   *
   * @throws ModelException listing everything that does not fit
   */
  static void of(Sizing sizing, Rules rules, Device device) {
    SizingCheck check = new SizingCheck(device);
    if (rules.method() != sizing.method()) {
      check.problems.add(
          new Problem(
              "sizing", "method", sizing.method().name(), "that of the rules, " + rules.method()));
    }
    sizing.parts().forEach(check::part);
    sizing.bars().forEach((member, bars) -> bars.forEach(bar -> check.bar(member, bar)));
    sizing.details().forEach(check::detail);
    if (!check.problems.isEmpty()) {
      throw new ModelException(check.problems);
    }
  }

  private void part(String name) {
    if (member(name).isEmpty() && !(connection(name).orElse(null) instanceof Strut)) {
      List<String> known =
          Stream.concat(
                  device.members().stream().map(Member::name),
                  device.connections().stream()
                      .filter(Strut.class::isInstance)
                      .map(Connection::name))
              .toList();
      unknown("sizing", "part", name, "a member or strut of the device", known);
    }
  }

  private void bar(String name, Bar bar) {
    Optional<Member> member = member(name);
    if (member.isEmpty()) {
      unknown("sizing", "member", name, "a member of the device", names());
    } else if (!member.get().bars().contains(bar)) {
      List<String> known =
          member.get().bars().stream().map(one -> one.start() + "–" + one.end()).toList();
      unknown(name, "bar", bar.start() + "–" + bar.end(), "one of its bars", known);
    }
  }

  private void detail(Detail detail) {
    if (detail instanceof ColumnEnds ends) {
      column(ends);
    } else if (detail instanceof PinJoint joint) {
      pin(joint);
    } else if (detail instanceof FilletWeld weld) {
      weld(weld);
    } else if (detail instanceof Rating rating) {
      connectionOf(rating.name(), rating.part());
    } else if (detail instanceof ChainSeat seat) {
      bodyOf(seat.name(), seat.part(), seat.body());
    }
  }

  private void column(ColumnEnds ends) {
    if (member(ends.part()).isEmpty() && connection(ends.part()).isEmpty()) {
      List<String> known = new ArrayList<>(names());
      device.connections().stream()
          .filter(Strut.class::isInstance)
          .map(Connection::name)
          .forEach(known::add);
      unknown("column", "part", ends.part(), "a member or strut of the device", known);
      return;
    }
    if (ends.from().isEmpty()) {
      if (!(connection(ends.part()).orElse(null) instanceof Strut)) {
        problems.add(
            new Problem(
                ends.part(), "column", "without ends", "a strut, or a member with both ends"));
      }
      return;
    }
    Optional<Member> member = member(ends.part());
    if (member.isEmpty()) {
      unknown("column", "member", ends.part(), "a member of the device", names());
      return;
    }
    String from = ends.from().get();
    String to = ends.to().orElseThrow();
    for (String point : List.of(from, to)) {
      if (!device.points().containsKey(point)) {
        unknown(
            ends.part(),
            "column",
            point,
            "a point of the device",
            List.copyOf(device.points().keySet()));
        return;
      }
    }
    if (Stretches.between(device, member.get(), device.point(from), device.point(to)).isEmpty()) {
      problems.add(
          new Problem(
              ends.part(), "column", from + " to " + to, "a straight stretch with bars on it"));
    }
  }

  private void pin(PinJoint joint) {
    if (!(connection(joint.part()).orElse(null) instanceof Pin)) {
      List<String> known =
          device.connections().stream()
              .filter(Pin.class::isInstance)
              .map(Connection::name)
              .toList();
      unknown("pin joint", "pin", joint.part(), "a pin of the device", known);
      return;
    }
    joint.plates().forEach(plate -> bodyOf(joint.part(), joint.part(), plate.body()));
  }

  private void weld(FilletWeld weld) {
    if (weld.body().isPresent()) {
      bodyOf(weld.name(), weld.part(), weld.body().get());
      return;
    }
    FilletWeld.Cut cut = weld.cut().orElseThrow();
    int before = problems.size();
    bar(weld.part(), new Bar(cut.start(), cut.end()));
    if (problems.size() == before) {
      double length = device.point(cut.start()).distance(device.point(cut.end()));
      if (cut.distance() > length * (1 + 1e-9)) {
        problems.add(
            new Problem(
                weld.name(), "distance", String.valueOf(cut.distance()), "0 to " + length + " m"));
      }
    }
  }

  private void bodyOf(String name, String connection, String body) {
    Optional<Connection> found = connection(connection);
    if (found.isEmpty()) {
      connectionOf(name, connection);
    } else if (!found.get().bodies().contains(body)) {
      unknown(name, "body", body, "a body of " + connection, found.get().bodies());
    }
  }

  private void connectionOf(String name, String connection) {
    if (connection(connection).isEmpty()) {
      unknown(
          name,
          "part",
          connection,
          "a connection of the device",
          device.connections().stream().map(Connection::name).toList());
    }
  }

  private void unknown(String part, String field, String name, String kind, List<String> known) {
    String hint =
        NearestName.of(name, known).map(near -> "; the nearest is \"" + near + '"').orElse("");
    problems.add(
        new Problem(
            part, field, '"' + name + '"', kind + " (" + String.join(", ", known) + ")" + hint));
  }

  private List<String> names() {
    return device.members().stream().map(Member::name).toList();
  }

  private Optional<Member> member(String name) {
    return device.members().stream().filter(one -> one.name().equals(name)).findFirst();
  }

  private Optional<Connection> connection(String name) {
    return device.connection(name);
  }
}
