package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what a load acts on: {@code member} and {@code at}, or {@code joint}. */
final class TargetReader {

  private final Reading reading;

  TargetReader(Reading reading) {
    this.reading = reading;
  }

  /** The target; a member's place may be left out only if it is not needed. */
  Target read(Draft draft, boolean placeNeeded) {
    Optional<String> at = draft.fields().find("at").map(draft::place);
    Optional<Spot> joint = draft.fields().find("joint");
    if (joint.isPresent()) {
      if (draft.has("member")) {
        joint.get().report("member and joint", "one of them");
        draft.fail();
      }
      return joint(draft, joint.get(), at);
    }
    String member = member(draft);
    if (placeNeeded && at.isEmpty()) {
      return new Target(member, Optional.of(draft.place("at")));
    }
    return new Target(member, at);
  }

  /** The member at {@code member}. */
  String member(Draft draft) {
    Optional<Spot> stated =
        draft.fields().need("member", "the member and the place, or the joint, it acts on");
    return draft.orFail(stated.flatMap(this::member), "");
  }

  private Optional<String> member(Spot spot) {
    List<String> members = reading.bodies().names(BodyNames.Kind.MEMBER);
    Optional<String> name = spot.text("the name of a member");
    if (name.isEmpty() || members.contains(name.get())) {
      return name.filter(known -> !reading.bodies().hasFailed(known));
    }
    if (!reading.bodies().isWhole()) {
      return Optional.empty();
    }
    return spot.refuse(
        reading.bodies().is(name.get(), BodyNames.Kind.JOINT)
            ? "the name of a member; for a joint write joint: " + name.get()
            : reading.problems().name("member", name.get(), members));
  }

  /** The member at {@code member}, or the screw at {@code screw}. */
  String memberOrScrew(Draft draft) {
    Optional<Spot> screw = draft.fields().find("screw");
    if (screw.isEmpty()) {
      Optional<Spot> stated = draft.fields().need("member", "the member, or the screw, it turns");
      return draft.orFail(stated.flatMap(this::member), "");
    }
    if (draft.has("member")) {
      screw.get().report("member and screw", "one of them");
      draft.fail();
      return "";
    }
    return draft.orFail(screw(screw.get()), "");
  }

  /** Where a couple is applied to a member, if it is said; one on a screw has no place. */
  Optional<String> placeOfCouple(Draft draft) {
    Optional<Spot> at = draft.fields().find("at");
    if (at.isPresent() && draft.has("screw")) {
      at.get().report("the key at", "no place: a couple on a screw turns all of it");
      draft.fail();
      return Optional.empty();
    }
    return at.map(draft::place);
  }

  private Optional<String> screw(Spot spot) {
    Optional<String> name = spot.text("the name of a screw");
    if (name.isEmpty() || isPassedOver(name.get())) {
      return Optional.empty();
    }
    Optional<Connection> connection = reading.parts().connection(name.get());
    if (connection.filter(Screw.class::isInstance).isEmpty()) {
      return spot.refuse(reading.problems().name("screw", name.get(), reading.parts().screws()));
    }
    if (reading.bodies().names().contains(name.get())) {
      return spot.refuse("a screw whose name no body has: a couple on the body is meant else");
    }
    return name;
  }

  private Target joint(Draft draft, Spot spot, Optional<String> stated) {
    Optional<String> name = spot.text("the name of a joint or pin");
    if (name.isEmpty()) {
      draft.fail();
      return new Target("", Optional.of(""));
    }
    String body = name.get();
    Optional<String> own = reading.bodies().placeOfJoint(body).or(() -> placeOfPin(body));
    if (own.isEmpty()) {
      draft.fail();
      if (!isPassedOver(body)) {
        List<String> known = new ArrayList<>(reading.bodies().names(BodyNames.Kind.JOINT));
        known.addAll(reading.parts().pins());
        spot.report(reading.problems().name("joint or pin", body, known));
      }
    }
    return new Target(body, Optional.of(stated.orElse(own.orElse(""))));
  }

  private Optional<String> placeOfPin(String name) {
    return reading.bodies().is(name, BodyNames.Kind.MEMBER)
        ? Optional.empty()
        : reading
            .parts()
            .connection(name)
            .filter(Pin.class::isInstance)
            .map(pin -> ((Pin) pin).at());
  }

  /** Whether a name is that of a joint or connection that has been complained about already. */
  private boolean isPassedOver(String name) {
    boolean joint =
        reading.bodies().is(name, BodyNames.Kind.JOINT) && reading.bodies().hasFailed(name);
    boolean connection =
        reading.parts().isDeclared(name)
            && reading.parts().connection(name).isEmpty()
            && reading.parts().load(name).isEmpty();
    return joint || connection || !reading.bodies().isWhole();
  }
}
