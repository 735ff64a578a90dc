package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.equilibrium.WrapAngle;
import bellcrank.statics.limits.LimitState;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Writes the steps of a solution. */
final class SolutionWriting {

  /** Share of the loads above which what is left of them is no rounding. */
  private static final double LEFT_OVER = 1e-7;

  private final Balance balance;
  private final Device device;
  private final Optional<List<Ask>> asks;
  private final Picture picture;
  private final List<Candidate> laws;
  private final Optional<Decision> decision;
  private final List<Step> steps = new ArrayList<>();
  private final BitSet named = new BitSet();

  SolutionWriting(Balance balance, Optional<List<Ask>> asks) {
    this(balance, asks, Optional.empty(), Optional.empty());
  }

  /**
   * A solution.
   *
   * @param state a state in which parts are at their limit, of this balance
   * @param decision what the limits say
   */
  SolutionWriting(
      Balance balance,
      Optional<List<Ask>> asks,
      Optional<LimitState> state,
      Optional<Decision> decision) {
    this.balance = balance;
    this.asks = asks;
    this.decision = decision;
    device = balance.device();
    asks.ifPresent(all -> all.forEach(ask -> ask.check(device)));
    Picture drawn = PictureDrawing.of(balance);
    Optional<LimitLaws> found = state.map(one -> LimitLaws.of(one, drawn));
    picture = found.map(LimitLaws::picture).orElse(drawn);
    laws = found.map(LimitLaws::laws).orElse(List.of());
  }

  WorkedSolution write() {
    Outcome outcome = balance.outcome();
    if (outcome instanceof Outcome.NotDecided open) {
      steps.add(
          new Step.Finding(
              "Friction in "
                  + String.join(", ", open.parts())
                  + " leaves a range of forces, so equations alone give no numbers."));
      decision.ifPresent(
          one -> steps.addAll(one.steps(picture, new Plan(List.of(), new double[0]))));
      decision.flatMap(one -> asks.map(one::results)).ifPresent(steps::addAll);
      return finish(List.of());
    }
    Planner planner = new Planner(picture, laws);
    if (picture.bodies().size() > Cuts.ALL_GROUPS) {
      steps.add(
          new Step.Finding(
              "The device has "
                  + picture.bodies().size()
                  + " bodies. They are taken one by one or in pairs, or cut off by a section,"
                  + " straight or round one body; other groups are not tried."));
    }
    return outcome instanceof Outcome.NoBalance moving
        ? noBalance(planner, moving)
        : balanced(planner);
  }

  private WorkedSolution balanced(Planner planner) {
    Readings readings = new Readings(balance, picture);
    Plan all = planner.all(readings::given, readings::fixes);
    BitSet goals = new BitSet();
    List<BitSet> needs = new ArrayList<>();
    if (asks.isPresent()) {
      for (Ask ask : asks.get()) {
        needs.add(readings.needs(ask, all));
        goals.or(needs.get(needs.size() - 1));
      }
    }
    Plan plan = asks.isPresent() ? planner.some(all, goals) : all;
    EquationWriting equations = new EquationWriting(device, picture, plan);
    List<Step> written = new ArrayList<>();
    plan.moves().forEach(move -> written.add(step(move, equations, plan)));
    laws();
    steps.addAll(written);
    BitSet open = new BitSet();
    open.set(0, picture.unknowns().size());
    open.andNot(all.known());
    if (asks.isPresent()) {
      open = open.intersects(goals) ? open : new BitSet();
    }
    if (!open.isEmpty()) {
      open(planner, new EquationWriting(device, picture, all), all, open);
    }
    posts(plan);
    if (open.isEmpty() && asks.isEmpty()) {
      new ThreeForceFinder(picture, all, cuts(plan)).find().forEach(steps::add);
    }
    List<Step> decided = decision.map(one -> one.steps(picture, plan)).orElse(List.of());
    balance.violations().stream()
        .filter(one -> decided.stream().noneMatch(step -> tells(step, one)))
        .forEach(one -> steps.add(new Step.Broken(one)));
    RoughParts.threads(device, picture, plan).stream()
        .filter(one -> !isLaw(one.screw(), Condition.Rule.THREAD))
        .forEach(steps::add);
    steps.addAll(decided);
    if (asks.isEmpty()) {
      balance.freedoms().forEach(one -> steps.add(Motions.step(device, balance.pose(), one)));
    }
    results(readings.of(all.with(plan)), needs);
    return finish(equations.used());
  }

  /** Whether a step tells what a part would have to rub, and that it cannot. */
  private static boolean tells(Step step, Violation one) {
    return step instanceof Step.Margin margin
        && margin.part().equals(one.part())
        && one.dimension() == Dimension.FORCE
        && Math.abs(margin.ratio()) > margin.coefficient();
  }

  private Set<Integer> cuts(Plan plan) {
    Set<Integer> single = new HashSet<>();
    for (Plan.Move move : plan.moves()) {
      for (Candidate one : move.equations()) {
        if (one.cut().cardinality() == 1) {
          single.add(one.cut().nextSetBit(0));
        }
      }
    }
    return single;
  }

  private Step step(Plan.Move move, EquationWriting equations, Plan plan) {
    List<Equation> lines =
        move.equations().stream().map(one -> equations.write(one, move.found())).toList();
    List<Step.Found> found =
        move.found().stream()
            .map(k -> new Step.Found(picture.unknowns().get(k), plan.value(k)))
            .toList();
    lines.forEach(this::name);
    move.found().forEach(named::set);
    move.found().forEach(equations.known()::set);
    if (lines.isEmpty()) {
      return new Step.Taken(found.get(0));
    }
    return lines.size() == 1 && found.size() == 1
        ? new Step.Single(lines.get(0), found.get(0))
        : new Step.Together(lines, found);
  }

  /** Keeps the unknowns that an equation has or leaves out. */
  private void name(Equation equation) {
    Set<Symbol> symbols = new HashSet<>();
    equation.terms().forEach(term -> symbols.add(term.symbol()));
    equation.avoided().forEach(one -> symbols.add(one.symbol()));
    for (int k = 0; k < picture.unknowns().size(); k++) {
      if (symbols.contains(picture.unknowns().get(k).symbol())) {
        named.set(k);
      }
    }
  }

  /** What needs no equation of equilibrium: two-force members and ropes that lose tension. */
  private void laws() {
    Set<Symbol> symbols = new HashSet<>();
    named.stream().mapToObj(picture.unknowns()::get).map(Unknown::symbol).forEach(symbols::add);
    picture.twoForce().stream().filter(one -> symbols.contains(one.symbol())).forEach(steps::add);
    for (Unknown unknown : namedUnknowns()) {
      Optional<Connection> part = device.connection(unknown.part());
      if (part.isPresent() && part.get() instanceof Reeving rope) {
        List<Double> multiples = RopeParts.multiples(rope);
        if (multiples.stream().anyMatch(one -> one != 1)) {
          steps.add(new Step.RopeLaw(rope.name(), unknown.symbol(), multiples));
        }
      }
    }
  }

  private void posts(Plan plan) {
    BitSet known = plan.known();
    for (int k = 0; k + 1 < picture.unknowns().size(); k++) {
      Unknown first = picture.unknowns().get(k);
      Unknown last = picture.unknowns().get(k + 1);
      Optional<Connection> part = device.connection(first.part());
      boolean both = first.part().equals(last.part()) && known.get(k) && known.get(k + 1);
      if (both
          && part.isPresent()
          && part.get() instanceof Wrap wrap
          && !isLaw(wrap.name(), Condition.Rule.POST)) {
        double angle = WrapAngle.of(device, wrap);
        steps.add(
            new Step.PostLaw(wrap.name(), first.symbol(), last.symbol(), wrap.friction(), angle));
      }
    }
  }

  /** Whether what holds for a part is among the equations. */
  private boolean isLaw(String part, Condition.Rule rule) {
    return laws.stream()
        .map(Candidate::condition)
        .anyMatch(
            one ->
                one instanceof Condition.Law law && law.part().equals(part) && law.rule() == rule);
  }

  private void open(Planner planner, EquationWriting writing, Plan plan, BitSet open) {
    plan.known().stream().forEach(writing.known()::set);
    OpenForces found = OpenForces.of(planner, picture, plan, open);
    open.stream().forEach(named::set);
    steps.add(
        new Step.Open(
            found.equations().stream().map(one -> writing.write(one, List.of())).toList(),
            open.stream().mapToObj(picture.unknowns()::get).toList(),
            found.released().stream().map(picture.unknowns()::get).toList()));
  }

  private WorkedSolution noBalance(Planner planner, Outcome.NoBalance moving) {
    Plan all = planner.all(unknown -> OptionalDouble.empty(), unknown -> true);
    Optional<Candidate> unmet = unmet(planner, all);
    List<Given> used = List.of();
    if (unmet.isPresent()) {
      BitSet goals = new BitSet();
      unmet.get().unknowns().forEach(goals::set);
      Plan plan = all.slice(goals);
      EquationWriting equations = new EquationWriting(device, picture, plan);
      List<Step> written = new ArrayList<>();
      plan.moves().forEach(move -> written.add(step(move, equations, plan)));
      laws();
      steps.addAll(written);
      Equation failing = equations.write(unmet.get(), List.of());
      name(failing);
      steps.add(new Step.NotMet(failing));
      used = equations.used();
    }
    steps.add(Motions.step(device, balance.pose(), moving.driven()));
    decision.ifPresent(one -> steps.add(one.judged()));
    asks.ifPresent(
        wanted ->
            wanted.forEach(ask -> steps.add(new Step.Result(ask, balance.answer(ask), List.of()))));
    return finish(used);
  }

  /** The equation without unknowns left that is reached soonest and cannot be met. */
  private Optional<Candidate> unmet(Planner planner, Plan all) {
    double scale = 0;
    for (KnownLoad load : picture.loads()) {
      scale += load.isCouple() ? Math.abs(load.size()) / picture.size() : load.size();
    }
    double bound = LEFT_OVER * scale;
    BitSet known = all.known();
    return planner.candidates().stream()
        .filter(one -> Block.open(one, known).isEmpty())
        .filter(one -> left(one, all) > bound * reach(one))
        .limit(60)
        .min(
            Comparator.<Candidate>comparingInt(one -> chain(one, all).equations())
                .thenComparing(Candidate.CHEAPEST));
  }

  private double reach(Candidate one) {
    return one.condition() instanceof Condition.Moments ? picture.size() : 1;
  }

  private static Plan chain(Candidate one, Plan all) {
    BitSet goals = new BitSet();
    one.unknowns().forEach(goals::set);
    return all.slice(goals);
  }

  private static double left(Candidate one, Plan all) {
    double sum = one.loads();
    for (int k = 0; k < one.unknowns().size(); k++) {
      sum += one.coefficients().get(k) * all.value(one.unknowns().get(k));
    }
    return Math.abs(sum);
  }

  private void results(Balance own, List<BitSet> needs) {
    List<Ask> wanted = asks.orElseGet(balance::components);
    for (int k = 0; k < wanted.size(); k++) {
      List<Unknown> from = new ArrayList<>();
      if (asks.isPresent()) {
        needs.get(k).stream().mapToObj(picture.unknowns()::get).forEach(from::add);
      } else {
        Picture.Share share = picture.shares().get(wanted.get(k));
        if (share != null) {
          from.add(picture.unknowns().get(share.unknown()));
        }
      }
      steps.add(new Step.Result(wanted.get(k), own.answer(wanted.get(k)), from));
    }
  }

  private List<Unknown> namedUnknowns() {
    return named.stream().mapToObj(picture.unknowns()::get).toList();
  }

  private WorkedSolution finish(List<Given> used) {
    List<Unknown> unknowns = new ArrayList<>(namedUnknowns());
    unknowns.sort(Comparator.comparing(one -> one.symbol().text()));
    return new WorkedSolution(balance, steps, unknowns, used, picture.bodies().size());
  }
}
