package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Verdict;
import java.util.List;
import java.util.Optional;

/** One step of a worked solution. */
public sealed interface Step {

  /**
   * A member that carries forces at two pins only: they act along the line through them.
   *
   * @param member name of the member
   * @param from name of the pin at its first end
   * @param to name of the pin at its second end
   * @param symbol symbol of its axial force, tension positive
   */
  record TwoForceMember(String member, String from, String to, Symbol symbol) implements Step {}

  /**
   * A rope that loses tension at sheaves: each straight part carries a multiple of the first.
   *
   * @param rope name of the rope
   * @param symbol symbol of the tension of its first part
   * @param multiples tensions of its straight parts over that of the first
   */
  record RopeLaw(String rope, Symbol symbol, List<Double> multiples) implements Step {

    /**
     * Copies the list.
     *
     * @param rope name of the rope
     * @param symbol symbol of the tension of its first part
     * @param multiples tensions over that of the first
     */
    public RopeLaw {
      multiples = List.copyOf(multiples);
    }
  }

  /**
   * One equation that yields one unknown.
   *
   * @param equation the equation
   * @param found what it yields
   */
  record Single(Equation equation, Found found) implements Step {}

  /**
   * Equations that must be solved together, since none has one unknown alone.
   *
   * @param equations the equations
   * @param found what they yield, at most as many as there are equations
   */
  record Together(List<Equation> equations, List<Found> found) implements Step {

    /**
     * Copies the lists.
     *
     * @param equations the equations
     * @param found what they yield
     */
    public Together {
      equations = List.copyOf(equations);
      found = List.copyOf(found);
    }
  }

  /**
   * Equations that are left with more unknowns than there are equations.
   *
   * @param equations the equations; the terms of open forces have no values
   * @param open the forces that statics leaves open
   * @param released forces that would have to be released, or known from elsewhere, to settle the
   *     others
   */
  record Open(List<Equation> equations, List<Unknown> open, List<Unknown> released)
      implements Step {

    /**
     * Copies the lists.
     *
     * @param equations the equations
     * @param open the forces that statics leaves open
     * @param released forces that would have to be released
     */
    public Open {
      equations = List.copyOf(equations);
      open = List.copyOf(open);
      released = List.copyOf(released);
    }
  }

  /**
   * An unknown with its value.
   *
   * @param unknown the unknown
   * @param si its value, in N or N·m
   */
  record Found(Unknown unknown, double si) {}

  /**
   * A force that statics leaves open and that is taken as known from elsewhere.
   *
   * @param found the force with the value that is taken
   */
  record Taken(Found found) implements Step {}

  /**
   * An equation that cannot be met: nothing takes up what is left of the loads.
   *
   * @param equation the equation; its terms do not add up to nothing
   */
  record NotMet(Equation equation) implements Step {}

  /**
   * A body on which just three forces act: their lines meet in one point, or are parallel.
   *
   * @param body name of the body
   * @param forces what acts: names of connections and loads
   * @param meeting where the lines meet; empty if they are parallel
   */
  record ThreeForces(String body, List<String> forces, Optional<Point> meeting) implements Step {

    /**
     * Copies the list.
     *
     * @param body name of the body
     * @param forces what acts
     * @param meeting where the lines meet
     */
    public ThreeForces {
      forces = List.copyOf(forces);
    }
  }

  /**
   * A part that would have to give what it cannot.
   *
   * @param violation what is needed and what can be given
   */
  record Broken(Violation violation) implements Step {}

  /**
   * A motion that nothing holds.
   *
   * @param freedom the motion
   * @param body a body that moves
   * @param point a point of it that moves as fast as any; empty if it has no named point
   * @param way unit vector of the way that this point goes: a strut from the ground along it would
   *     hold the motion
   */
  record Moves(Freedom freedom, String body, Optional<String> point, Vector way) implements Step {}

  /**
   * A rope round a post, once both tensions are known: it holds if the greater is not more than the
   * smaller times e to the power μβ.
   *
   * @param rope name of the rope
   * @param first symbol of its first tension
   * @param last symbol of its last tension
   * @param friction coefficient of friction μ
   * @param angle angle β on the post in rad
   */
  record PostLaw(String rope, Symbol first, Symbol last, double friction, double angle)
      implements Step {}

  /**
   * The state that is worked out: a sought effort is as great or as small as it can be.
   *
   * @param sought name of the sought effort
   * @param greatest whether it is greatest
   * @param how what is about to happen there
   */
  record AtLimit(String sought, boolean greatest, GivingWay how) implements Step {}

  /**
   * The state that is worked out where statics leaves forces open: the one in which the device just
   * holds.
   *
   * @param friction factor on all coefficients of friction with which it does; 1 for the stated
   *     ones
   * @param how what is about to happen there
   */
  record JustHeld(double friction, GivingWay how) implements Step {}

  /**
   * How far a rough part is from slipping: friction over normal force, against μ.
   *
   * @param part name of the part
   * @param friction symbol of its friction
   * @param frictionForce friction in N, with its sign
   * @param normal symbol of its normal force
   * @param normalForce normal force in N, above 0
   * @param coefficient coefficient of friction μ
   */
  record Margin(
      String part,
      Symbol friction,
      double frictionForce,
      Symbol normal,
      double normalForce,
      double coefficient)
      implements Step {

    /**
     * Friction over normal force.
     *
     * @return with the sign of the friction; it sticks up to μ either way
     */
    public double ratio() {
      return frictionForce / normalForce;
    }
  }

  /**
   * Friction in a pin: its couple is at most the radius of the friction circle times its force.
   *
   * @param pin name of the pin
   * @param radius radius of the bearing in m
   * @param angle angle of friction φ in rad
   */
  record PinFriction(String pin, double radius, double angle) implements Step {}

  /**
   * The couples that turn a screw, once its axial force is known.
   *
   * @param screw name of the screw
   * @param symbol symbol of its axial force
   * @param force axial force in N, tension positive
   * @param radius mean radius of the thread in m
   * @param slope angle of the thread α in rad
   * @param angle angle of friction φ in rad
   */
  record ThreadLaw(
      String screw, Symbol symbol, double force, double radius, double slope, double angle)
      implements Step {}

  /**
   * Whether the device stands with all one-sided and rough parts, and how much friction that takes.
   *
   * @param verdict the verdict
   * @param friction the common factor on friction at which it just holds
   */
  record Judged(Verdict verdict, FrictionFactor friction) implements Step {}

  /**
   * What is to be said in words: by what limits, or why there are no equations.
   *
   * @param sentence one or more sentences
   */
  record Finding(String sentence) implements Step {}

  /**
   * An answer that was asked for.
   *
   * @param ask what was asked
   * @param answer the answer, read from the numbers of this solution
   * @param from the unknowns from which it is read
   */
  record Result(Ask ask, Answer answer, List<Unknown> from) implements Step {

    /**
     * Copies the list.
     *
     * @param ask what was asked
     * @param answer the answer
     * @param from the unknowns from which it is read
     */
    public Result {
      from = List.copyOf(from);
    }
  }
}
