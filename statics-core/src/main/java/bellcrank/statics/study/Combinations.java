package bellcrank.statics.study;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Sought;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Cases made of groups of loads with factors. Every permanent group takes each of its two factors,
 * and at most one variable group leads: it takes its full factor, each other variable group is
 * absent or accompanies it. All choices are made in all ways, so the worst case is among them
 * wherever an answer follows the loads linearly.
 *
 * <p>The factors are the user's own; none is built in. The form is that of design by limit states
 * (EN 1990:2002, 6.4.3, from memory).
 */
public final class Combinations {

  /** More cases than this are refused. */
  public static final int MOST = 4096;

  private static final int LONGEST_NAME = 80;

  private Combinations() {}

  /** A group of loads that always act together. */
  public sealed interface Group {

    /**
     * The group's name.
     *
     * @return a name, told where the group is used
     */
    String name();

    /**
     * Names of its loads.
     *
     * @return at least one
     */
    List<String> loads();
  }

  /**
   * Loads that are always there, such as weights of the parts.
   *
   * @param name name of the group
   * @param loads names of its loads
   * @param unfavourable factor where they make things worse
   * @param favourable factor where they help
   */
  public record Permanent(String name, List<String> loads, double unfavourable, double favourable)
      implements Group {

    /**
     * Copies the list and checks the numbers.
     *
     * @param name name of the group
     * @param loads names of its loads
     * @param unfavourable factor where they make things worse
     * @param favourable factor where they help
     * @throws ModelException if no load is named or a factor is not finite
     */
    public Permanent {
      loads = some(name, loads);
      finite(name, "unfavourable factor", unfavourable);
      finite(name, "favourable factor", favourable);
    }
  }

  /**
   * Loads that may be absent, such as a hand or the wind.
   *
   * @param name name of the group
   * @param loads names of its loads
   * @param leading factor where this is the variable group that leads
   * @param accompanying factor where another one leads; 0 if it then never counts
   */
  public record Variable(String name, List<String> loads, double leading, double accompanying)
      implements Group {

    /**
     * Copies the list and checks the numbers.
     *
     * @param name name of the group
     * @param loads names of its loads
     * @param leading factor where this is the variable group that leads
     * @param accompanying factor where another one leads
     * @throws ModelException if no load is named or a factor is not finite
     */
    public Variable {
      loads = some(name, loads);
      finite(name, "leading factor", leading);
      finite(name, "accompanying factor", accompanying);
    }
  }

  /** What a group does in a combination. */
  public enum Role {
    /** Permanent loads that make things worse. */
    UNFAVOURABLE("unfavourable"),
    /** Permanent loads that help. */
    FAVOURABLE("favourable"),
    /** Permanent loads whose two factors are the same. */
    PERMANENT("permanent"),
    /** The variable loads that lead. */
    LEADING("leading"),
    /** Variable loads beside those that lead. */
    ACCOMPANYING("accompanying"),
    /** Variable loads that are not there. */
    ABSENT("absent");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    /**
     * The role in a word.
     *
     * @return an adjective
     */
    public String word() {
      return word;
    }
  }

  /**
   * A group in a combination.
   *
   * @param group name of the group
   * @param role what it does
   * @param factor its factor
   */
  public record Taken(String group, Role role, double factor) {}

  /**
   * A combination.
   *
   * @param loadCase the case; loads that are in no group keep a factor of 1
   * @param taken how it was made, one for each group
   */
  public record Combination(LoadCase loadCase, List<Taken> taken) {

    /**
     * Copies the list.
     *
     * @param loadCase the case
     * @param taken how it was made
     */
    public Combination {
      taken = List.copyOf(taken);
    }

    /**
     * How the combination was made, in words.
     *
     * @return such as {@code self-weight 1.35 (unfavourable), hand 1.5 (leading)}
     */
    public String words() {
      return taken.stream()
          .map(one -> one.group() + " " + number(one.factor()) + " (" + one.role().word() + ")")
          .collect(Collectors.joining(", "));
    }
  }

  /**
   * All combinations of groups.
   *
   * @param device the device whose loads they are
   * @param groups the groups, at least one
   * @return each combination once, in the order of the groups; several that come to the same
   *     factors are one
   * @throws ModelException if a group names what is no given load of the device or is in another
   *     group, two groups have one name, there is no group, or there would be more than {@link
   *     #MOST} combinations
   */
  public static List<Combination> of(Device device, List<Group> groups) {
    check(device, groups);
    Set<List<Taken>> all = new LinkedHashSet<>();
    List<Group> leaders = new ArrayList<>(groups);
    leaders.removeIf(one -> one instanceof Permanent);
    for (int leader = -1; leader < leaders.size(); leader++) {
      Optional<String> leading =
          leader < 0 ? Optional.empty() : Optional.of(leaders.get(leader).name());
      List<List<Taken>> made = List.of(List.of());
      for (Group group : groups) {
        made = withEach(made, choices(group, leading));
        if (all.size() + made.size() > MOST) {
          throw new ModelException(
              "combinations",
              "groups",
              groups.size(),
              "so few that at most " + MOST + " cases arise");
        }
      }
      all.addAll(made);
    }
    return told(groups, all);
  }

  /** Combinations that come to the same factors are one, told as it was made first. */
  private static List<Combination> told(List<Group> groups, Set<List<Taken>> all) {
    List<Combination> combinations = new ArrayList<>();
    Set<List<Double>> factors = new HashSet<>();
    Set<String> names = new HashSet<>();
    for (List<Taken> taken : all) {
      if (factors.add(taken.stream().map(one -> one.factor() + 0.0).toList())) {
        String name = name(taken);
        int number = combinations.size() + 1;
        boolean plain = name.length() <= LONGEST_NAME && names.add(name);
        combinations.add(
            new Combination(
                loadCase(plain ? name : "combination " + number, groups, taken), taken));
      }
    }
    return List.copyOf(combinations);
  }

  private static List<List<Taken>> withEach(List<List<Taken>> made, List<Taken> choices) {
    List<List<Taken>> longer = new ArrayList<>();
    for (List<Taken> one : made) {
      for (Taken choice : choices) {
        List<Taken> with = new ArrayList<>(one);
        with.add(choice);
        longer.add(List.copyOf(with));
      }
    }
    return longer;
  }

  private static List<Taken> choices(Group group, Optional<String> leading) {
    String name = group.name();
    if (group instanceof Permanent permanent) {
      return permanent.unfavourable() == permanent.favourable()
          ? List.of(new Taken(name, Role.PERMANENT, permanent.favourable()))
          : List.of(
              new Taken(name, Role.UNFAVOURABLE, permanent.unfavourable()),
              new Taken(name, Role.FAVOURABLE, permanent.favourable()));
    }
    Variable variable = (Variable) group;
    if (leading.filter(name::equals).isPresent()) {
      return List.of(new Taken(name, Role.LEADING, variable.leading()));
    }
    Taken absent = new Taken(name, Role.ABSENT, 0);
    return leading.isEmpty() || variable.accompanying() == 0
        ? List.of(absent)
        : List.of(new Taken(name, Role.ACCOMPANYING, variable.accompanying()), absent);
  }

  private static String name(List<Taken> taken) {
    return taken.stream()
        .map(one -> number(one.factor()) + " " + one.group())
        .collect(Collectors.joining(" + "));
  }

  private static LoadCase loadCase(String name, List<Group> groups, List<Taken> taken) {
    Map<String, Double> factors = new LinkedHashMap<>();
    for (int k = 0; k < groups.size(); k++) {
      double factor = taken.get(k).factor();
      groups.get(k).loads().forEach(load -> factors.put(load, factor));
    }
    return new LoadCase(name, factors, 1);
  }

  private static String number(double factor) {
    String text = String.format(Locale.ROOT, "%.4f", factor);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  private static void check(Device device, List<Group> groups) {
    if (groups.isEmpty()) {
      throw new ModelException("combinations", "groups", "none", "at least one");
    }
    List<String> given =
        device.loads().stream().filter(one -> !(one instanceof Sought)).map(Load::name).toList();
    Set<String> names = new LinkedHashSet<>();
    Map<String, String> owners = new LinkedHashMap<>();
    for (Group group : groups) {
      if (!names.add(group.name())) {
        throw new ModelException(group.name(), "name", group.name(), "a name for one group only");
      }
      for (String load : group.loads()) {
        if (!given.contains(load)) {
          throw new ModelException(
              group.name(), "load", load, "one of: " + String.join(", ", given));
        }
        String other = owners.put(load, group.name());
        if (other != null) {
          throw new ModelException(group.name(), "load", load, "a load that is not in " + other);
        }
      }
    }
  }

  private static List<String> some(String name, List<String> loads) {
    if (loads.isEmpty()) {
      throw new ModelException(name, "loads", "none", "at least one name of a load");
    }
    return List.copyOf(loads);
  }

  private static void finite(String name, String field, double value) {
    if (!Double.isFinite(value)) {
      throw new ModelException(name, field, value, "a finite number");
    }
  }
}
