package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Strut;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.strength.CheckResult.NotChecked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** All checks that a sizing calls for, ready to be made in any state of a device, in any pose. */
final class Plan {

  private final Device device;
  private final Sizing sizing;
  private final Rules rules;
  private final Needs needs = new Needs();
  private final List<Checking<?>> checkings = new ArrayList<>();
  private final List<NotChecked> missing = new ArrayList<>();

  Plan(Device device, Sizing sizing, Rules rules) {
    this.device = device;
    this.sizing = sizing;
    this.rules = rules;
    SizingCheck.of(sizing, rules, device);
    device.members().forEach(this::member);
    device.connections().forEach(this::strut);
    sizing.details().forEach(this::detail);
  }

  List<Checking<?>> checkings() {
    return checkings;
  }

  /** What could not be planned for want of a section, a material or a rule. */
  List<NotChecked> missing() {
    return missing;
  }

  Needs needs() {
    return needs;
  }

  private <D> void plan(String part, Check<D> check, Function<Rule<D>, Checking<D>> make) {
    plan(part, check.name(), check, make);
  }

  private <D> void plan(
      String part, String what, Check<D> check, Function<Rule<D>, Checking<D>> make) {
    Optional<Rule<D>> rule = rules.rule(check);
    if (rule.isPresent()) {
      checkings.add(make.apply(rule.get()));
    } else {
      missing.add(new NotChecked(part, what, "the rules have none for it"));
    }
  }

  private void member(Member member) {
    if (member.bars().isEmpty()) {
      return;
    }
    for (Bar bar : member.bars()) {
      Optional<Sized> sized = sizing.sized(member.name(), bar);
      if (sized.isEmpty()) {
        missing.add(
            new NotChecked(
                member.name(),
                "stresses of " + bar.start() + "–" + bar.end(),
                "no section and material are stated"));
        continue;
      }
      int index = needs.bar(member.name(), bar);
      for (Check<BarDemand> check : List.of(Check.TOP_FACE, Check.BOTTOM_FACE, Check.SHEAR)) {
        plan(
            member.name(),
            BarChecking.what(check, bar),
            check,
            rule -> new BarChecking(member.name(), bar, index, sized.get(), member.count(), rule));
      }
    }
  }

  private void strut(Connection connection) {
    if (!(connection instanceof Strut strut)) {
      return;
    }
    Optional<Sized> sized = sizing.sized(strut.name());
    if (sized.isEmpty()) {
      missing.add(
          new NotChecked(
              strut.name(), StrutStressChecking.WHAT, "no section and material are stated"));
      return;
    }
    int tension = needs.tension(strut.name());
    plan(
        strut.name(),
        StrutStressChecking.WHAT,
        Check.TOP_FACE,
        rule -> new StrutStressChecking(strut.name(), tension, sized.get(), rule));
  }

  private void detail(Detail detail) {
    if (detail instanceof ColumnEnds ends) {
      column(ends);
    } else if (detail instanceof PinJoint joint) {
      pin(joint);
    } else if (detail instanceof FilletWeld weld) {
      weld(weld);
    } else if (detail instanceof Rating rating) {
      rating(rating);
    } else if (detail instanceof ChainSeat seat) {
      int force = needs.force(seat.part(), seat.body());
      plan(
          seat.part(),
          SeatChecking.what(seat),
          Check.SEAT,
          rule -> new SeatChecking(seat, force, rule));
    }
  }

  private void column(ColumnEnds ends) {
    Optional<Connection> connection = device.connection(ends.part());
    if (connection.isPresent() && connection.get() instanceof Strut strut) {
      Optional<Sized> sized = sizing.sized(strut.name());
      if (sized.isEmpty()) {
        missing.add(new NotChecked(strut.name(), "column", "no section and material are stated"));
        return;
      }
      int tension = needs.tension(strut.name());
      for (Check<ColumnDemand> check : List.of(Check.COLUMN, Check.EULER)) {
        plan(strut.name(), check, rule -> new StrutChecking(ends, tension, sized.get(), rule));
      }
      return;
    }
    Member member = (Member) device.body(ends.part()).orElseThrow();
    Point from = device.point(ends.from().orElseThrow());
    Point to = device.point(ends.to().orElseThrow());
    List<Bar> bars = Stretches.between(device, member, from, to);
    List<Sized> sized = Stretches.sized(sizing, member.name(), bars);
    if (sized.isEmpty()) {
      missing.add(
          new NotChecked(
              member.name(),
              ColumnChecking.what(ends, Check.COLUMN),
              "no section and material are stated"));
      return;
    }
    List<Integer> indices = bars.stream().map(bar -> needs.bar(member.name(), bar)).toList();
    for (Check<ColumnDemand> check : List.of(Check.COLUMN, Check.EULER, Check.COLUMN_AND_BENDING)) {
      plan(
          member.name(),
          ColumnChecking.what(ends, check),
          check,
          rule ->
              new ColumnChecking(ends, indices, from.distance(to), sized, member.count(), rule));
    }
  }

  private void pin(PinJoint joint) {
    Connection pin = device.connection(joint.part()).orElseThrow();
    List<Integer> forces = forces(pin);
    plan(pin.name(), Check.PIN_SHEAR, rule -> new PinChecking(joint, forces, rule));
    plan(pin.name(), Check.PIN_BENDING, rule -> new PinChecking(joint, forces, rule));
    for (PinJoint.Plate plate : joint.plates()) {
      int force = needs.force(pin.name(), plate.body());
      for (Check<PlateDemand> check : List.of(Check.BEARING, Check.TEAR_OUT, Check.NET_SECTION)) {
        plan(
            pin.name(),
            PlateChecking.what(check, plate),
            check,
            rule -> new PlateChecking(joint, plate, force, rule));
      }
    }
  }

  /** Between two bodies the ground takes the opposite of the other, so it needs no place. */
  private List<Integer> forces(Connection connection) {
    List<String> bodies = connection.bodies().stream().distinct().toList();
    return bodies.stream()
        .filter(body -> bodies.size() > 2 || !body.equals(Ground.NAME))
        .map(body -> needs.force(connection.name(), body))
        .toList();
  }

  private void weld(FilletWeld weld) {
    if (weld.body().isPresent()) {
      String body = weld.body().get();
      Connection connection = device.connection(weld.part()).orElseThrow();
      int force = needs.force(weld.part(), body);
      Point at = device.point(connection.places().get(connection.bodies().indexOf(body)));
      plan(
          weld.part(),
          weld.name(),
          Check.WELD,
          rule -> new ForceWeldChecking(weld, force, at, rule));
      return;
    }
    FilletWeld.Cut cut = weld.cut().orElseThrow();
    Member member = (Member) device.body(weld.part()).orElseThrow();
    int bar = needs.bar(member.name(), new Bar(cut.start(), cut.end()));
    plan(
        weld.part(),
        weld.name(),
        Check.WELD,
        rule -> new CutWeldChecking(weld, cut.distance(), bar, member.count(), rule));
  }

  private void rating(Rating rating) {
    Connection connection = device.connection(rating.part()).orElseThrow();
    if (Stretches.hasTension(connection)) {
      int tension = needs.tension(rating.part());
      plan(
          rating.part(),
          RatingChecking.what(rating),
          Check.WORKING_LOAD,
          rule -> RatingChecking.ofTension(rating, tension, rule));
    } else {
      List<Integer> forces = forces(connection);
      plan(
          rating.part(),
          RatingChecking.what(rating),
          Check.WORKING_LOAD,
          rule -> RatingChecking.ofForces(rating, forces, rule));
    }
  }
}
