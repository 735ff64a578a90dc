package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.units.Dimension;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the mechanical advantage: ideal from the velocities of the free motion (virtual work),
 * actual from the forces of the balance.
 */
final class AdvantageFinder {

  private static final double ZERO = 1e-9;

  private final Balance balance;
  private final Device device;
  private final Solved solved;

  AdvantageFinder(Balance balance, Solved solved) {
    this.balance = balance;
    this.device = balance.device();
    this.solved = solved;
  }

  Advantage find(EffortAndResistance pair) {
    if (turns(pair.effort()) != turns(pair.resistance())) {
      return new Advantage.NotDefined("the one is a couple and the other a force");
    }
    Answer ideal = equalWork(pair);
    Answer actual = actual(pair);
    if (ideal instanceof Answer.Value velocities) {
      return actual instanceof Answer.Value forces
          ? new Advantage.Ratio(velocities.si(), forces.si())
          : new Advantage.IdealOnly(velocities.si(), why(actual));
    }
    return actual instanceof Answer.Value forces
        ? new Advantage.ActualOnly(forces.si(), why(ideal))
        : new Advantage.NotDefined(why(ideal));
  }

  private static String why(Answer answer) {
    return answer instanceof Answer.Unanswered none ? none.explanation() : "";
  }

  /**
   * Velocity ratio effort over resistance; the sign is that of the ratio of forces it stands for.
   */
  Answer equalWork(EffortAndResistance pair) {
    // where one of them is a connection, it is let go: it has to move to do work
    Set<String> released = new HashSet<>(List.of(pair.effort(), pair.resistance()));
    screw(pair.effort()).ifPresent(screw -> released.add(screw.name()));
    screw(pair.resistance()).ifPresent(screw -> released.add(screw.name()));
    MotionFinder motion = MotionFinder.of(device, balance.pose(), false, released);
    if (motion.count() == 0) {
      return Values.notDefined("nothing moves, so there is no ratio of velocities");
    }
    double[] effort = powers(motion, pair.effort());
    double[] resistance = powers(motion, pair.resistance());
    int fastest = 0;
    double largestResistance = 0;
    for (int m = 0; m < effort.length; m++) {
      fastest = Math.abs(effort[m]) > Math.abs(effort[fastest]) ? m : fastest;
      largestResistance = Math.max(largestResistance, Math.abs(resistance[m]));
    }
    if (Math.abs(effort[fastest]) <= ZERO) {
      return Values.notDefined("the effort does no work on what can move");
    }
    if (largestResistance <= ZERO * Math.abs(effort[fastest])) {
      return Values.notDefined(
          "the resistance does not move while the effort does (a dead centre), so the ratio has"
              + " no bound");
    }
    double share = resistance[fastest] / effort[fastest];
    for (int m = 0; m < effort.length; m++) {
      if (Math.abs(resistance[m] - share * effort[m]) > ZERO * largestResistance) {
        return Values.notDefined(
            "there are " + effort.length + " free motions, which give different ratios");
      }
    }
    // powers of couples are those of couple / size
    return new Answer.Value(
        -unit(pair.resistance()) / (share * unit(pair.effort())), Dimension.NUMBER);
  }

  private double unit(String name) {
    return turns(name) ? device.size() : 1;
  }

  /** The screw that a couple turns. */
  private Optional<Screw> screw(String name) {
    Load load = device.load(name).orElse(null);
    String turned =
        load instanceof Couple couple
            ? couple.member()
            : load instanceof Sought sought ? sought.body() : "";
    return turns(name)
        ? device.connection(turned).filter(Screw.class::isInstance).map(Screw.class::cast)
        : Optional.empty();
  }

  private Answer actual(EffortAndResistance pair) {
    Optional<Answer> none = balance.noForces();
    if (none.isPresent()) {
      return none.get();
    }
    Answer effort = value(pair.effort());
    Answer resistance = value(pair.resistance());
    if (!(effort instanceof Answer.Value e) || !(resistance instanceof Answer.Value r)) {
      return Values.notDefined("statics alone does not fix both forces");
    }
    if (Math.abs(e.si()) <= 1e-12 * solved.forceScale()) {
      return Values.notDefined("the effort is zero");
    }
    return new Answer.Value(r.si() / e.si(), Dimension.NUMBER);
  }

  private boolean turns(String name) {
    Load load = device.load(name).orElse(null);
    return load instanceof Couple
        || (load instanceof Sought sought && sought.want() == Sought.Want.COUPLE);
  }

  /** Power of a unit of the force on each motion; a load is a unit along its own direction. */
  private double[] powers(MotionFinder motion, String name) {
    Optional<Screw> screw = screw(name);
    if (screw.isPresent()) {
      // a turn drives the ends apart by the lead, and tension has power where they come together
      double perTurn = -2 * Math.PI * device.size() / screw.get().lead();
      return Arrays.stream(motion.powers(screw.get().name())).map(one -> perTurn * one).toArray();
    }
    Load load = device.load(name).orElse(null);
    if (load == null || load instanceof Sought) {
      return motion.powers(name);
    }
    double[] powers = motion.loadPowers(name, solved);
    double size = size(load);
    for (int m = 0; m < powers.length; m++) {
      powers[m] = size == 0 ? 0 : powers[m] / size;
    }
    return powers;
  }

  private double size(Load load) {
    if (load instanceof Force force) {
      return force.vector().norm();
    }
    if (load instanceof Weight weight) {
      return weight.mass() * device.gravity().norm();
    }
    // a couple's power is taken with its sign, so that its value may be negative
    return load instanceof Couple couple ? couple.moment() / device.size() : 0;
  }

  private Answer value(String name) {
    Load load = device.load(name).orElse(null);
    Optional<Connection> connection = device.connection(name);
    if (connection.isEmpty() && load instanceof Sought sought) {
      int column = solved.assembly().soughtColumn(name);
      double size = sought.want() == Sought.Want.COUPLE ? device.size() : 1;
      return Values.of(solved.unknown(column) * size, Dimension.FORCE, solved.determined(column));
    }
    return new Answering(balance, solved).answer(Ask.of(name, Measure.VALUE));
  }
}
