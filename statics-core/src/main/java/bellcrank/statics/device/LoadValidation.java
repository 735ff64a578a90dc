package bellcrank.statics.device;

import java.util.Optional;

/** Checks that loads act where they can. */
final class LoadValidation {

  private final DeviceValidation device;

  LoadValidation(DeviceValidation device) {
    this.device = device;
  }

  void check(Load load) {
    if (load instanceof Force force) {
      target(force.name(), force.body(), Optional.of(force.at()));
    } else if (load instanceof Couple couple) {
      turned(couple.name(), couple.member(), couple.at());
    } else if (load instanceof SpreadLoad spread) {
      member(spread.name(), "member", spread.member());
      boolean from = device.point(spread.name(), "from", spread.from());
      boolean to = device.point(spread.name(), "to", spread.to());
      if (from && to) {
        device.apart(spread.name(), "from and to", spread.from(), spread.to());
        device.level(spread);
      }
    } else if (load instanceof Weight weight) {
      target(weight.name(), weight.body(), weight.at());
    } else if (load instanceof Spring spring) {
      end(spring.name(), spring.first());
      end(spring.name(), spring.second());
      device.apart(spring.name(), "ends", spring.first().at(), spring.second().at());
    } else if (load instanceof TorsionSpring spring) {
      member(spring.name(), "joins", spring.body());
      if (device.body(spring.name(), spring.other())) {
        device.notJoint(spring.name(), "joins", spring.other());
      }
    } else if (load instanceof Sought sought) {
      if (sought.want() == Sought.Want.COUPLE) {
        turned(sought.name(), sought.body(), sought.at());
      } else if (sought.want() == Sought.Want.INTENSITY) {
        String from = sought.at().orElse("");
        String to = sought.to().orElse("");
        member(sought.name(), "member", sought.body());
        boolean known = device.point(sought.name(), "from", from);
        if (device.point(sought.name(), "to", to) && known) {
          device.apart(sought.name(), "from and to", from, to);
        }
      } else {
        target(sought.name(), sought.body(), sought.at());
      }
    }
  }

  private void target(String name, String body, Optional<String> at) {
    if (at.isPresent() && !device.point(name, "at", at.get())) {
      return;
    }
    if (device.isPin(body)) {
      String own = device.placeOfPin(body);
      if (at.isPresent() && !at.get().equals(own)) {
        device.problem(name, "at", Check.quote(at.get()), "the point of pin " + body + ", " + own);
      }
      if (at.isEmpty()) {
        device.problem(name, "at", "missing", "the point where the weight acts");
      }
      return;
    }
    if (device.known(body) == Ground.GROUND) {
      if (body.equals(Ground.NAME)) {
        device.problem(
            name, "body", Ground.NAME, "a member, joint or pin: the ground takes any load");
      } else {
        device.problem(
            name,
            "body",
            Check.quote(body),
            DeviceValidation.oneOf("member, joint or pin", body, device.bodyAndPinNames()));
      }
      return;
    }
    at.ifPresent(place -> device.atJoint(name, body, place));
    if (at.isEmpty() && !device.hasBars(body)) {
      device.problem(
          name,
          "at",
          "missing",
          "a point, since " + body + " has no bars to spread the weight over");
    }
  }

  private void end(String name, End end) {
    boolean body = device.body(name, end.body());
    boolean at = device.point(name, "at", end.at());
    if (body && at) {
      device.atJoint(name, end.body(), end.at());
    }
  }

  /** What a couple acts on: a member, or a screw about its own axis. */
  private void turned(String name, String target, Optional<String> at) {
    if (device.isScrew(target)) {
      at.ifPresent(
          point ->
              device.problem(
                  name, "at", Check.quote(point), "no place: a couple on a screw turns all of it"));
      return;
    }
    at.ifPresent(point -> device.point(name, "at", point));
    if (device.isBody(target)) {
      member(name, "member", target);
      return;
    }
    device.problem(
        name,
        "member",
        Check.quote(target),
        DeviceValidation.oneOf("member or screw", target, device.memberAndScrewNames()));
  }

  private void member(String name, String field, String member) {
    if (device.body(name, member) && !(device.known(member) instanceof Member)) {
      device.problem(name, field, Check.quote(member), "a member: only a member takes a couple");
    }
  }
}
