package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.UnitSystem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is asserted about: a device under a case of loads, in a pose, on its ground.
 *
 * @param device the device
 * @param loadCase the case
 * @param pose the pose
 * @param foundations the ground under contact bases
 * @param units units in which messages are written and in which a limit may go without its unit
 * @param ownBalance the balance that is asserted about, if it is one
 * @param ownLimits the limits that are asserted about, if it is they
 */
record Setup(
    Device device,
    LoadCase loadCase,
    Pose pose,
    List<Foundation> foundations,
    UnitSystem units,
    Optional<Balance> ownBalance,
    Optional<Limits> ownLimits) {

  /** So much more friction than just enough leaves a state in spite of rounding. */
  private static final double HAIR = 1e-9;

  static Setup of(Device device) {
    return of(device, device.cases().get(0), Pose.DRAWN);
  }

  static Setup of(Device device, LoadCase loadCase, Pose pose) {
    return new Setup(
        device, loadCase, pose, List.of(), UnitSystem.SI, Optional.empty(), Optional.empty());
  }

  static Setup of(Balance balance) {
    return new Setup(
        balance.device(),
        balance.loadCase(),
        balance.pose(),
        List.of(),
        UnitSystem.SI,
        Optional.of(balance),
        Optional.empty());
  }

  static Setup of(Limits limits) {
    return new Setup(
        limits.device(),
        limits.loadCase(),
        limits.balance().pose(),
        limits.foundations(),
        UnitSystem.SI,
        Optional.empty(),
        Optional.of(limits));
  }

  Setup in(LoadCase other) {
    return new Setup(device, other, pose, foundations, units, ownBalance, ownLimits);
  }

  Setup in(Pose other) {
    return new Setup(device, loadCase, other, foundations, units, ownBalance, ownLimits);
  }

  Setup on(List<Foundation> ground) {
    return new Setup(device, loadCase, pose, ground, units, ownBalance, ownLimits);
  }

  Setup with(UnitSystem other) {
    return new Setup(device, loadCase, pose, foundations, other, ownBalance, ownLimits);
  }

  /** This setup in the case that an ask names; what is solved already has its own case alone. */
  Setup forCase(Ask ask) {
    if (ask.loadCase().isEmpty() || ask.loadCase().get().equals(loadCase.name())) {
      return this;
    }
    if (ownBalance.isPresent() || ownLimits.isPresent()) {
      throw new ModelException(
          "ask " + ask.text(),
          "case",
          '"' + ask.loadCase().get() + '"',
          loadCase.name() + ", in which this was solved");
    }
    return in(device.loadCase(ask.loadCase().get()));
  }

  /** Whether one-sided or rough parts, or the ground, have a say. */
  boolean isDecidedByLimits() {
    return ownLimits.isPresent()
        || (ownBalance.isEmpty() && (Limits.concern(device) || !foundations.isEmpty()));
  }

  Limits limits() {
    return ownLimits.orElseGet(() -> Limits.of(device, loadCase, pose, foundations));
  }

  Balance balance() {
    if (ownBalance.isPresent()) {
      return ownBalance.get();
    }
    // the ground may hold back a smooth base, which then has a force of its own
    return isDecidedByLimits() ? limits().balance() : Balance.of(device, loadCase, pose);
  }

  /** The ask that a text stands for: the bare name of a part, or the text of an ask. */
  Ask ask(String text) {
    boolean part = device.connection(text).isPresent() || device.load(text).isPresent();
    return (part ? Ask.of(text) : Ask.parse(text)).check(device);
  }

  Answer answer(Ask ask) {
    return isDecidedByLimits() || (ownBalance.isEmpty() && Limits.decide(ask))
        ? limits().answer(ask)
        : balance().answer(ask);
  }

  /** Between which values an answer lies in all states; empty if there is no such range. */
  Optional<Range> range(Ask ask) {
    return limits().range(ask);
  }

  /**
   * A state whose forces can be shown; where several are possible, one without needless squeeze.
   */
  Shown shown() {
    Balance balance = balance();
    boolean one =
        balance.undetermined().isEmpty() && !(balance.outcome() instanceof Outcome.NotDecided);
    if (one || !isDecidedByLimits()) {
      return new Shown(balance, units, "");
    }
    Limits limits = limits();
    Optional<Balance> least = limits.withLeastForces();
    if (least.isPresent()) {
      return new Shown(least.get(), units, "in the possible state with the least forces");
    }
    return withEnoughFriction(limits).orElseGet(() -> new Shown(balance, units, ""));
  }

  /** Where it only wants friction: the forces that it would take. */
  private Optional<Shown> withEnoughFriction(Limits limits) {
    if (!(limits.frictionFactor() instanceof FrictionFactor.Least enough)) {
      return Optional.empty();
    }
    String remark =
        "with " + Numbers.plain(enough.factor()) + " times its friction, where it would just hold";
    return limits
        .withFriction(enough.factor() * (1 + HAIR))
        .withLeastForces()
        .map(state -> new Shown(state, units, remark));
  }

  /** The state in which a sought effort is greatest or least, if an ask is about one. */
  Optional<Shown> shownAtEnd(Ask ask, boolean greatest) {
    boolean effort =
        ask.subject() instanceof Subject.Part part
            && device.load(part.name()).orElse(null) instanceof Sought sought
            && sought.want() != Sought.Want.COMPONENTS;
    return effort && isDecidedByLimits()
        ? limits()
            .stateAt(((Subject.Part) ask.subject()).name(), greatest)
            .map(
                state ->
                    new Shown(
                        state.balance(),
                        units,
                        "in the state in which it is " + (greatest ? "greatest" : "least")))
        : Optional.empty();
  }

  /** A balance of which a free body can be shown, and what is to be said about it. */
  record Shown(Balance balance, UnitSystem units, String remark) {
    Shown remarked(String other) {
      String both = remark.isEmpty() ? other : other + ", " + remark;
      return new Shown(balance, units, both);
    }
  }

  /** The same with some loads multiplied; empty where friction may differ from the stated one. */
  Optional<Setup> grown(Variation.Multiple loads, double multiple) {
    if (ownBalance.isPresent() || ownLimits.isPresent()) {
      return Optional.empty();
    }
    Map<String, Double> factors = new LinkedHashMap<>(loadCase.factors());
    for (String load : loads.varied(device)) {
      factors.put(load, factors.getOrDefault(load, 1.0) * multiple);
    }
    return Optional.of(in(new LoadCase(loadCase.name(), factors, loadCase.dynamic())));
  }

  /** The device by name, with what is chosen of it. */
  String name() {
    return device.name()
        + (device.cases().size() > 1 ? " in case " + loadCase.name() : "")
        + (pose.equals(Pose.DRAWN) ? "" : " (not as drawn)");
  }
}
