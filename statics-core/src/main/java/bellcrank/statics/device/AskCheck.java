package bellcrank.statics.device;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds what keeps a device from answering an ask: names, measures, and by them the endings. */
final class AskCheck {

  /** Part of a bar's length by which a place may lie beyond its end: a rounded length. */
  private static final double ROUNDING = 1e-9;

  private final Ask ask;
  private final Device device;
  private final AskEndings endings;

  AskCheck(Ask ask, Device device, AskEndings endings) {
    this.ask = ask;
    this.device = device;
    this.endings = endings;
  }

  static void check(Ask ask, Device device) {
    List<Problem> problems = new ArrayList<>();
    new AskCheck(ask, device, new AskEndings(ask, device, ask.text(), problems)).all();
    if (!problems.isEmpty()) {
      throw new ModelException(problems);
    }
  }

  private void all() {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Multiple || subject instanceof Subject.Place) {
      endings.problem(ask.text(), "greatest or least before it");
    } else if (subject instanceof Subject.Extreme extreme) {
      new ExtremeCheck(extreme.of(), device, endings.of(extreme.of())).all();
    } else {
      plain(subject);
    }
    ask.loadCase()
        .ifPresent(
            name ->
                endings.known(
                    "case", List.of(name), device.cases().stream().map(LoadCase::name).toList()));
  }

  /** Everything but the case, of what is not greatest or least. */
  void plain(Subject subject) {
    if (subject instanceof Subject.Part part) {
      part(part.name());
    } else if (subject instanceof Subject.Group group) {
      endings.known("body", group.bodies(), bodies(true));
      endings.known("body", group.from(), bodies(true));
      group.from().stream()
          .filter(group.bodies()::contains)
          .forEach(body -> endings.problem(body, "a body outside the group"));
      whole("a group", PartMeasures.GROUP);
    } else if (subject instanceof Subject.Resultant resultant) {
      endings.known("given load", resultant.loads(), givenLoads());
      resultant.loads().stream()
          .flatMap(name -> device.load(name).stream())
          .filter(load -> PartMeasures.isOnScrew(load, device))
          .forEach(load -> endings.problem(load.name(), "a load in the plane, not one on a screw"));
      whole("a resultant", PartMeasures.RESULTANT);
    } else if (subject instanceof Subject.Centre centre) {
      endings.known("member or joint", centre.bodies(), bodies(false));
      whole("a centre", PartMeasures.CENTRE);
    } else if (subject instanceof Subject.Spot spot) {
      endings.known("point", List.of(spot.point()), device.points().keySet());
      if (endings.has("a point", PartMeasures.POINT)) {
        endings.onOneOf(device.bodiesAt(spot.point()));
        endings.about(false, false);
        endings.noStretch();
        endings.each(1);
      }
    } else if (subject instanceof Subject.Advantage) {
      if (device.advantage().isEmpty()) {
        endings.problem("advantage", "a device whose effort and resistance are stated");
      }
      whole("an advantage", PartMeasures.ADVANTAGE);
    } else if (subject instanceof Subject.Whole) {
      whole("a device", PartMeasures.WHOLE);
    } else if (subject instanceof Subject.Ratio ratio) {
      side(ratio.numerator());
      side(ratio.denominator());
    }
  }

  private void side(Ask side) {
    if (isWords(side)) {
      endings.problem(side.text(), "an ask that is answered by a number");
    }
    new AskCheck(side, device, endings.of(side)).all();
  }

  static boolean isWords(Ask ask) {
    return ask.measure() == Measure.OUTCOME
        || ask.measure() == Measure.VERDICT
        || ask.measure() == Measure.LINE;
  }

  private void part(String name) {
    Optional<Connection> connection = device.connection(name);
    Optional<Load> load = device.load(name);
    Optional<Member> member =
        device.members().stream().filter(one -> one.name().equals(name)).findFirst();
    boolean inside = PartMeasures.isInside(ask);
    if (member.isPresent() && (inside || (connection.isEmpty() && load.isEmpty()))) {
      member(member.get());
    } else if (connection.isPresent()) {
      connection(connection.get());
    } else if (load.isPresent()) {
      load(load.get());
    } else if (inside) {
      endings.known("member", List.of(name), device.members().stream().map(Member::name).toList());
    } else {
      endings.known("connection, load or sought quantity", List.of(name), parts());
    }
  }

  private static Optional<Stretch> place(Stretch stretch) {
    return Optional.of(stretch).filter(one -> one.distance().isPresent());
  }

  private void connection(Connection connection) {
    if (endings.has("a " + connection.kind(), PartMeasures.of(connection))) {
      endings.on(connection);
      endings.about(ask.measure() == Measure.MOMENT, ask.measure() == Measure.MOMENT);
      endings.noStretch();
      endings.each(device.sharing(connection, ask.on().orElse(connection.bodies().get(0))));
    }
  }

  private void load(Load load) {
    boolean onScrew = PartMeasures.isOnScrew(load, device);
    String kind = "a " + PartMeasures.kind(load) + (onScrew ? " on a screw" : "");
    if (endings.has(kind, onScrew ? PartMeasures.SCREW_COUPLE : PartMeasures.of(load))) {
      boolean moment = ask.measure() == Measure.MOMENT;
      endings.noOn();
      endings.about(moment, moment && !PartMeasures.isCouple(load));
      endings.noStretch();
      endings.each(1);
    }
  }

  private void member(Member member) {
    if (!endings.has("a member", PartMeasures.MEMBER)) {
      return;
    }
    endings.noOn();
    endings.each(member.count());
    boolean atPlace = PartMeasures.AT_PLACE.contains(ask.measure());
    Optional<Stretch> place = ask.stretch().flatMap(AskCheck::place);
    if (atPlace && place.isEmpty()) {
      // a moment about a point is one of a connection or load; the place tells what is meant here
      endings.problem(ask.measure().word(), "a place on a bar of the member: at LENGTH of A–B");
      return;
    }
    endings.about(false, false);
    if (!atPlace && place.isPresent()) {
      endings.problem(
          AskText.stretch(place.get()).strip(),
          "no place: the " + ask.measure().word() + " is that of a whole bar, along A–B");
    } else if (ask.stretch().isPresent()) {
      bar(member, ask.stretch().get());
    } else if (PartMeasures.PLACE_OF_PEAK.contains(ask.measure())) {
      endings.problem(ask.measure().word(), "a bar of the member: along A–B");
    } else if (member.bars().isEmpty()) {
      endings.problem(ask.measure().word(), "a member with bars; " + member.name() + " has none");
    }
  }

  private void bar(Member member, Stretch place) {
    String start = place.start();
    String end = place.end();
    String ends = AskText.ends(start, end);
    if (member.bars().stream().noneMatch(bar -> joins(bar, start, end))) {
      List<String> bars =
          member.bars().stream().map(bar -> AskText.ends(bar.start(), bar.end())).toList();
      endings.problem(
          ends,
          bars.isEmpty()
              ? "a member with bars; " + member.name() + " has none"
              : "a bar of " + member.name() + ": " + String.join(", ", bars));
      return;
    }
    double length = device.point(start).distance(device.point(end));
    double distance = place.distance().orElse(0);
    if (distance > length * (1 + ROUNDING)) {
      endings.problem(
          AskText.length(distance),
          "0 to " + AskText.length(length) + ", the length of bar " + ends);
    }
    boolean before = place.side().filter(side -> side == Side.BEFORE).isPresent() && distance == 0;
    boolean after =
        place.side().filter(side -> side == Side.AFTER).isPresent()
            && distance > length * (1 - ROUNDING);
    if (before || after) {
      endings.problem(
          AskText.stretch(place).strip(),
          "no side, or the other one: bar " + ends + (before ? " starts" : " ends") + " there");
    }
  }

  private static boolean joins(Bar bar, String start, String end) {
    return (bar.start().equals(start) && bar.end().equals(end))
        || (bar.start().equals(end) && bar.end().equals(start));
  }

  /** What is no single part. */
  void whole(String kind, Set<Measure> measures) {
    if (!endings.has(kind, measures)) {
      return;
    }
    boolean needsPoint =
        ask.measure() == Measure.MOMENT
            || ask.measure() == Measure.COUPLE
            || ask.measure() == Measure.ARM;
    endings.noOn();
    endings.about(needsPoint, needsPoint);
    endings.each(1);
    if (ask.measure() != Measure.DISTANCE) {
      endings.noStretch();
    } else if (ask.stretch().isEmpty() || ask.stretch().get().distance().isPresent()) {
      endings.problem(Measure.DISTANCE.word(), "a line from whose start it is: along A–B");
    } else {
      line(ask.stretch().get());
    }
  }

  private void line(Stretch line) {
    endings.known("point", List.of(line.start(), line.end()), device.points().keySet());
    Point start = device.points().get(line.start());
    if (start != null && start.equals(device.points().get(line.end()))) {
      endings.problem(AskText.ends(line.start(), line.end()), "two points at different places");
    }
  }

  private List<String> bodies(boolean ground) {
    List<String> names = new ArrayList<>();
    device.members().forEach(one -> names.add(one.name()));
    device.joints().forEach(one -> names.add(one.name()));
    if (ground) {
      names.add(Ground.NAME);
    }
    return names;
  }

  List<String> givenLoads() {
    return device.loads().stream().filter(one -> !(one instanceof Sought)).map(Load::name).toList();
  }

  private List<String> parts() {
    List<String> names = new ArrayList<>();
    device.connections().forEach(one -> names.add(one.name()));
    device.loads().forEach(one -> names.add(one.name()));
    return names;
  }
}
