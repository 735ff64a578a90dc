package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A set of rules of one method, at most one for each check. Immutable. */
public final class Rules {

  private final Method method;
  private final Map<Check<?>, Rule<?>> rules;

  private Rules(Method method, Map<Check<?>, Rule<?>> rules) {
    this.method = method;
    this.rules = rules;
  }

  /**
   * A set without any rule.
   *
   * @param method the method of all its rules
   * @return the set
   */
  public static Rules none(Method method) {
    return new Rules(method, Map.of());
  }

  /**
   * The rules of allowable stresses, after American practice.
   *
   * @return a rule for each check
   */
  public static Rules allowable() {
    return AllowableRules.make();
  }

  /**
   * The rules of design resistances, after EN 1993.
   *
   * @return a rule for each check
   */
  public static Rules resistance() {
    return ResistanceRules.make();
  }

  /**
   * The rules that come with a method.
   *
   * @param method the method
   * @return a rule for each check
   */
  public static Rules of(Method method) {
    return method == Method.ALLOWABLE ? allowable() : resistance();
  }

  /**
   * A rule for welds that credits the direction of the force to the seam; it may replace the one of
   * {@link #allowable()}.
   *
   * @return the rule of AISC 360-16, J2.4(b)
   */
  public static Rule<WeldDemand> weldByDirection() {
    return AllowableRules.weldByDirection();
  }

  /**
   * The method of all its rules.
   *
   * @return the method
   */
  public Method method() {
    return method;
  }

  /**
   * The rules.
   *
   * @return in the order of {@link Check#all()}
   */
  public List<Rule<?>> all() {
    List<Rule<?>> all = new ArrayList<>();
    for (Check<?> check : Check.all()) {
      Rule<?> rule = rules.get(check);
      if (rule != null) {
        all.add(rule);
      }
    }
    return List.copyOf(all);
  }

  /**
   * The rule of a check.
   *
   * @param check the check
   * @param <D> what its rules are fed with
   * @return the rule, if the set has one
   */
  @SuppressWarnings("unchecked") // `with` keeps check and rule of one kind
  public <D> Optional<Rule<D>> rule(Check<D> check) {
    return Optional.ofNullable((Rule<D>) rules.get(check));
  }

  /**
   * Adds a rule or replaces the one of the same check.
   *
   * @param rule a rule of the same method
   * @return a copy
   * @throws ModelException if the rule belongs to the other method
   */
  public Rules with(Rule<?> rule) {
    if (rule.method() != method) {
      throw new ModelException(
          rule.check().name(), "method", rule.method(), "the method of the set, " + method);
    }
    Map<Check<?>, Rule<?>> changed = new LinkedHashMap<>(rules);
    changed.put(rule.check(), rule);
    return new Rules(method, changed);
  }

  /**
   * Leaves a check out.
   *
   * @param check the check
   * @return a copy without its rule
   */
  public Rules without(Check<?> check) {
    Map<Check<?>, Rule<?>> changed = new LinkedHashMap<>(rules);
    changed.remove(check);
    return new Rules(method, changed);
  }
}
