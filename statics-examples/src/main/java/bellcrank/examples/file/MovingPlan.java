package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Weight;
import bellcrank.statics.study.MovingLoad;
import bellcrank.statics.study.MovingLoad.Leg;
import bellcrank.statics.study.Train;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A load that goes along a member.
 *
 * @param name name under which it is told
 * @param load name of the force or weight
 * @param along names of the points along which it goes, two or more
 * @param on name of the member on which it goes; empty for the one it is drawn on
 * @param loadCase name of the case; empty for the first
 * @param asks what is asked, at least one number, in no case
 * @param train what goes in its place, if not the load alone
 */
public record MovingPlan(
    String name,
    String load,
    List<String> along,
    Optional<String> on,
    Optional<String> loadCase,
    List<Ask> asks,
    Optional<Train> train) {

  /**
   * Copies the lists.
   *
   * @param name name under which it is told
   * @param load name of the force or weight
   * @param along names of the points along which it goes
   * @param on name of the member on which it goes
   * @param loadCase name of the case
   * @param asks what is asked
   * @param train what goes in its place
   * @throws ModelException if there are fewer than two points, or nothing is asked, something
   *     twice, or in a case
   */
  public MovingPlan {
    Ask.of(name);
    along = List.copyOf(along);
    asks = List.copyOf(asks);
    if (along.size() < 2) {
      throw new ModelException(name, "along", along, "two points or more");
    }
    if (asks.isEmpty()) {
      throw new ModelException(name, "asks", "none", "at least one ask");
    }
    Set<String> seen = new HashSet<>();
    for (Ask ask : asks) {
      if (!seen.add(ask.text()) || ask.loadCase().isPresent()) {
        throw new ModelException(
            name, "asks", '"' + ask.text() + '"', "each ask once, and in no case");
      }
    }
  }

  /**
   * The moving load.
   *
   * @param device the device
   * @return it on its way
   * @throws ModelException if the device has no such load, member, point or case
   */
  public MovingLoad of(Device device) {
    LoadCase chosen = loadCase.map(device::loadCase).orElseGet(() -> device.cases().get(0));
    String member = on.orElseGet(() -> body(device));
    List<Leg> legs = new ArrayList<>();
    for (int k = 1; k < along.size(); k++) {
      legs.add(new Leg(member, along.get(k - 1), along.get(k)));
    }
    return MovingLoad.of(device, chosen, Pose.DRAWN, load, legs);
  }

  private String body(Device device) {
    Load drawn = device.load(load).orElse(null);
    if (drawn instanceof Force force) {
      return force.body();
    }
    return drawn instanceof Weight weight ? weight.body() : load;
  }

  /** Checks that a file has what it names. */
  void check(FileParts file) {
    of(file.model().device());
    asks.forEach(ask -> ask.check(file.model().device()));
  }
}
