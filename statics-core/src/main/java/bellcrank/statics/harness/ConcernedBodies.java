package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import java.util.List;
import java.util.Optional;

/** Which free body shows why something is as it is. */
final class ConcernedBodies {

  private final Device device;

  ConcernedBodies(Device device) {
    this.device = device;
  }

  /** The bodies that an ask is about; empty for the device as a whole. */
  List<String> of(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Extreme extreme) {
      return of(extreme.of());
    }
    if (subject instanceof Subject.Ratio ratio) {
      return of(ratio.numerator());
    }
    if (subject instanceof Subject.Group group) {
      return group.bodies();
    }
    if (subject instanceof Subject.Advantage) {
      return device.advantage().map(pair -> ofPart(pair.effort())).orElse(List.of());
    }
    if (subject instanceof Subject.Place place) {
      return ofPart(place.load());
    }
    Optional<String> on = ask.on().filter(this::isBody);
    if (on.isPresent()) {
      return List.of(on.get());
    }
    return subject instanceof Subject.Part part ? ofPart(part.name()) : List.of();
  }

  /** The first body that a part touches; empty for the device as a whole. */
  List<String> ofPart(String part) {
    if (isBody(part)) {
      return List.of(part);
    }
    Optional<Connection> connection = device.connection(part);
    if (connection.isPresent()) {
      return connection.get().bodies().stream().filter(this::isBody).limit(1).toList();
    }
    Optional<String> body = device.load(part).map(ConcernedBodies::body);
    if (body.isEmpty() || body.get().equals(part)) {
      return List.of();
    }
    // a load may act on a pin itself
    return isBody(body.get()) ? List.of(body.get()) : ofPart(body.get());
  }

  private boolean isBody(String name) {
    return !name.equals(Ground.NAME) && device.body(name).isPresent();
  }

  private static String body(Load load) {
    if (load instanceof Force force) {
      return force.body();
    }
    if (load instanceof Weight weight) {
      return weight.body();
    }
    if (load instanceof Couple couple) {
      return couple.member();
    }
    if (load instanceof SpreadLoad spread) {
      return spread.member();
    }
    if (load instanceof Spring spring) {
      return spring.first().body().equals(Ground.NAME)
          ? spring.second().body()
          : spring.first().body();
    }
    if (load instanceof TorsionSpring spring) {
      return spring.body().equals(Ground.NAME) ? spring.other() : spring.body();
    }
    return ((Sought) load).body();
  }
}
