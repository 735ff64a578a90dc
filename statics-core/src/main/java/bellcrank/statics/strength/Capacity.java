package bellcrank.statics.strength;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What gives first when the driving loads grow in one pose, and at what multiple of them.
 *
 * <p>Everything is ranked together: checks of strength that reach their limit, and the device that
 * slips, tips, lifts, sinks or goes slack. Multiples below zero are not looked at. An estimate for
 * a flat device of rigid parts under static loads.
 */
public final class Capacity {

  private final Driven driven;
  private final Pose pose;
  private final List<Crossing> ranked;
  private final List<Checked> never;
  private final List<NotChecked> notChecked;
  private final Holding holding;
  private final List<String> loads;

  private Capacity(Driven driven, Pose pose, Method method, CapacitySearch search) {
    this.driven = driven;
    this.pose = pose;
    List<Crossing> sorted = new ArrayList<>(search.crossings());
    sorted.sort(Comparator.comparingDouble(Crossing::multiple));
    ranked = List.copyOf(sorted);
    never = List.copyOf(search.never());
    notChecked = List.copyOf(search.notChecked());
    holding = search.holding();
    loads = LoadWords.of(driven.loadCase(), method);
  }

  /**
   * Capacity of a device as drawn, under its first case, with the rules of the sizing's method.
   *
   * @param device the device
   * @param sizing sections, materials and details
   * @param driving the loads that grow
   * @return what gives, in order
   * @throws bellcrank.statics.device.ModelException if sizing or driving name what the device does
   *     not have
   */
  public static Capacity of(Device device, Sizing sizing, Variation.Multiple driving) {
    return of(
        device,
        device.cases().get(0),
        Pose.DRAWN,
        sizing,
        Rules.of(sizing.method()),
        driving,
        List.of());
  }

  /**
   * Capacity of a device in a pose.
   *
   * @param device the device
   * @param loadCase factors on the loads
   * @param pose where the bodies are; it must fit the connections
   * @param sizing sections, materials and details
   * @param rules rules of the method of the sizing
   * @param driving the loads that grow
   * @param foundations the ground under contact bases
   * @return what gives, in order
   * @throws bellcrank.statics.device.ModelException if sizing, driving or foundations name what the
   *     device does not have, or the rules are of another method
   */
  public static Capacity of(
      Device device,
      LoadCase loadCase,
      Pose pose,
      Sizing sizing,
      Rules rules,
      Variation.Multiple driving,
      List<Foundation> foundations) {
    Driven driven = new Driven(device, loadCase, driving, foundations);
    Plan plan = new Plan(device, sizing, rules);
    return new Capacity(
        driven, pose, sizing.method(), new CapacitySearch(plan, driven.forces(pose, plan.needs())));
  }

  /**
   * What happens as the driving loads grow.
   *
   * @return in the order of the multiples; empty if nothing gives however large they are
   */
  public List<Crossing> ranked() {
    return ranked;
  }

  /**
   * What gives first.
   *
   * @return the first of all; empty if nothing gives
   */
  public Optional<Crossing> first() {
    return ranked.stream().findFirst();
  }

  /**
   * Checks that the driving loads do not bring to their limit, or not before the device gives way.
   *
   * @return the checks under the loads as they are stated
   */
  public List<Checked> never() {
    return never;
  }

  /**
   * Checks that could not be made.
   *
   * @return parts and reasons
   */
  public List<NotChecked> notChecked() {
    return notChecked;
  }

  /**
   * What else is to be known, such as a device that does not hold at all.
   *
   * @return clauses; may be empty
   */
  public List<String> remarks() {
    return holding.remarks();
  }

  /**
   * Why the device itself does not hold with a multiple of the driving loads that is below all that
   * is ranked: it may hold only with more of them or at no multiple at all, or that was not
   * decided.
   *
   * @param multiple the multiple, 0 or more
   * @return a clause; empty if it holds, or if its giving way is among what is ranked
   */
  public Optional<String> whyNotHeld(double multiple) {
    return holding.whyNot(multiple);
  }

  /**
   * What is in the loads as they are stated, at a multiple of one: factors of the case, its dynamic
   * factor, and whether the method wants them.
   *
   * @return clauses, at least one
   */
  public List<String> loads() {
    return loads;
  }

  /**
   * The loads that grow.
   *
   * @return as it was asked for
   */
  public Variation.Multiple driving() {
    return driven.driving();
  }

  /**
   * The balance at a multiple of the driving loads.
   *
   * @param multiple multiple of the driving loads
   * @return the device with loads so large
   */
  public Balance balance(double multiple) {
    return driven.balance(pose, multiple);
  }

  /**
   * An answer at a multiple of the driving loads, such as the pull at the winch when the first part
   * gives.
   *
   * @param ask the answer that is wanted
   * @param multiple multiple of the driving loads
   * @return the answer of a balance
   */
  public Answer at(Ask ask, double multiple) {
    return balance(multiple).answer(ask);
  }
}
