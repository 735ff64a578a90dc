package bellcrank.statics.explain;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All equations worth looking at: of those with the same unknowns the least laborious. */
final class Candidates {

  /** Share below which a coefficient is zero. */
  static final double ZERO = 1e-9;

  /** Share below which a coefficient is too small to divide by, if there is a choice. */
  static final double WEAK = 1e-4;

  /** Moments are taken no farther off the middle than this many sizes. */
  static final double FARTHEST = 10;

  /** Up to this many unknowns on a cut all crossings of their lines are tried. */
  static final int CROSSINGS = 12;

  /** Of equations with the same unknowns, up to this many, several are kept. */
  static final int ALIKE = 3;

  /** Conditions that differ by less, in sizes of the device, are the same. */
  private static final double SAME = 1e-8;

  private static final int PER_TERM = 10;
  private static final int NO_NAME = 15;
  private static final int SLANTED = 8;
  private static final int PER_BODY = 1;
  private static final int SECTION = 3;
  private static final int TOO_WEAK = 500;

  private final Picture picture;
  private final Map<List<Integer>, List<Candidate>> best = new HashMap<>();
  private final List<Candidate> idle = new ArrayList<>();

  private Candidates(Picture picture) {
    this.picture = picture;
  }

  /** A law is no more laborious than its terms. */
  static int costOfLaw(int terms) {
    return PER_TERM * terms;
  }

  /**
   * Equations, the least laborious first; those without unknowns come last.
   *
   * @param laws what holds for parts at their limit
   */
  static List<Candidate> of(Picture picture, List<Candidate> laws) {
    Candidates candidates = new Candidates(picture);
    Cuts.of(picture).forEach(candidates::cut);
    List<Candidate> all = new ArrayList<>(laws);
    candidates.best.forEach(
        (unknowns, alike) -> all.addAll(candidates.independent(unknowns, alike)));
    all.sort(Candidate.CHEAPEST);
    candidates.idle.sort(Candidate.CHEAPEST);
    all.addAll(candidates.idle);
    return List.copyOf(all);
  }

  /** The plain equations of each body: forces to the right and up, moments about the middle. */
  static List<Candidate> plain(Picture picture) {
    Candidates candidates = new Candidates(picture);
    List<Candidate> all = new ArrayList<>();
    for (int body = 0; body < picture.bodies().size(); body++) {
      BitSet cut = new BitSet();
      cut.set(body);
      Acting acting = new Acting(picture, cut);
      all.add(candidates.candidate(acting, new Condition.Forces(Direction.RIGHT)));
      all.add(candidates.candidate(acting, new Condition.Forces(Direction.UP)));
      if (!acting.isParticle()) {
        Point about = acting.places().isEmpty() ? picture.middle() : acting.places().get(0);
        all.add(candidates.candidate(acting, moments(about, picture)));
      }
    }
    return List.copyOf(all);
  }

  private static Condition moments(Point about, Picture picture) {
    return new Condition.Moments(picture.placeName(about), about);
  }

  private void cut(BitSet cut) {
    Acting acting = new Acting(picture, cut);
    Map<String, Condition> conditions = new HashMap<>();
    put(conditions, new Condition.Forces(Direction.RIGHT));
    put(conditions, new Condition.Forces(Direction.UP));
    List<Acting.Force> forces = acting.unknowns();
    for (Acting.Force force : forces) {
      if (!force.wrench().isCouple(ZERO)) {
        Vector line = Vector.of(force.wrench().x(), force.wrench().y());
        put(conditions, new Condition.Forces(sensible(line.perpendicular())));
        put(conditions, new Condition.Forces(sensible(line)));
      }
    }
    if (!acting.isParticle()) {
      acting.places().forEach(at -> put(conditions, moments(at, picture)));
      if (forces.size() <= CROSSINGS) {
        crossings(forces, conditions);
      }
      if (acting.places().isEmpty()) {
        put(conditions, moments(picture.middle(), picture));
      }
    }
    conditions.values().forEach(condition -> keep(candidate(acting, condition)));
  }

  private void crossings(List<Acting.Force> forces, Map<String, Condition> conditions) {
    for (int i = 0; i < forces.size(); i++) {
      for (int j = 0; j < i; j++) {
        Wrench a = forces.get(i).wrench();
        Wrench b = forces.get(j).wrench();
        double sine = a.x() * b.y() - a.y() * b.x();
        if (Math.abs(sine) > ZERO * a.size() * b.size()) {
          // the point at which both have no moment
          Vector at =
              Vector.of(
                  (a.moment() * b.x() - b.moment() * a.x()) / -sine,
                  (a.moment() * b.y() - b.moment() * a.y()) / -sine);
          if (at.norm() <= FARTHEST * picture.size()) {
            put(conditions, moments(picture.middle().plus(at), picture));
          }
        }
      }
    }
  }

  /** One sense of a line: to the right, or straight up; level and upright lines exactly so. */
  private static Direction sensible(Vector vector) {
    double norm = vector.norm();
    if (Math.abs(vector.y()) <= ZERO * norm) {
      return Direction.RIGHT;
    }
    if (Math.abs(vector.x()) <= ZERO * norm) {
      return Direction.UP;
    }
    Direction one = Direction.from(vector);
    return one.x() > 0 ? one : one.opposite();
  }

  private void put(Map<String, Condition> conditions, Condition condition) {
    conditions.putIfAbsent(key(condition), condition);
  }

  /** Tells conditions apart that differ by more than rounding. */
  private String key(Condition condition) {
    if (condition instanceof Condition.Moments moments) {
      Vector at = picture.middle().to(moments.about()).times(1 / picture.size());
      return "m" + fine(at.x()) + "," + fine(at.y());
    }
    Direction along = ((Condition.Forces) condition).along();
    return "f" + fine(along.x()) + "," + fine(along.y());
  }

  private static long fine(double value) {
    return Math.round(value / SAME);
  }

  private void keep(Candidate candidate) {
    if (candidate.unknowns().isEmpty()) {
      idle.add(candidate);
      return;
    }
    best.computeIfAbsent(candidate.unknowns(), key -> new ArrayList<>()).add(candidate);
  }

  /** The least laborious equations with the same unknowns, as many as can be independent. */
  private List<Candidate> independent(List<Integer> unknowns, List<Candidate> alike) {
    if (unknowns.size() == 1 || unknowns.size() > ALIKE) {
      return List.of(Collections.min(alike, Candidate.CHEAPEST));
    }
    alike.sort(Candidate.CHEAPEST);
    Rows rows = new Rows(unknowns.size());
    List<Candidate> kept = new ArrayList<>();
    for (Candidate one : alike) {
      double[] row = new double[unknowns.size() + 1];
      for (int k = 0; k < unknowns.size(); k++) {
        row[k] = one.coefficients().get(k);
      }
      if (rows.add(row)) {
        kept.add(one);
      }
    }
    return kept;
  }

  private Candidate candidate(Acting acting, Condition condition) {
    List<Integer> unknowns = new ArrayList<>();
    List<Double> coefficients = new ArrayList<>();
    boolean weak = false;
    for (Acting.Force force : acting.unknowns()) {
      double share = Candidate.share(condition, force.wrench(), picture);
      if (!Candidate.isNone(share, condition, force.wrench(), picture)) {
        unknowns.add(force.number());
        coefficients.add(share);
        double full =
            force.wrench().size() * (condition instanceof Condition.Moments ? picture.size() : 1);
        weak |= Math.abs(share) < WEAK * full;
      }
    }
    double sum = 0;
    int terms = unknowns.size();
    for (Wrench load : acting.loads()) {
      double share = Candidate.share(condition, load, picture);
      if (!Candidate.isNone(share, condition, load, picture)) {
        sum += share;
        terms++;
      }
    }
    int bodies = acting.cut().cardinality();
    int cost = PER_TERM * terms + PER_BODY * (bodies - 1) + (weak ? TOO_WEAK : 0);
    cost += bodies > 1 && bodies < picture.bodies().size() ? SECTION : 0;
    if (condition instanceof Condition.Moments moments) {
      cost += moments.place().isEmpty() ? NO_NAME : 1;
    } else {
      Direction along = ((Condition.Forces) condition).along();
      cost += Candidate.isLevelOrUpright(along) ? 0 : SLANTED;
    }
    return new Candidate(
        acting.cut(),
        condition,
        List.copyOf(unknowns),
        List.copyOf(coefficients),
        sum,
        cost,
        acting.key() + " " + key(condition));
  }
}
