package bellcrank.statics.explain;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Turns candidates into equations with terms, and keeps the given loads that they use. */
final class EquationWriting {

  private final Device device;
  private final Picture picture;
  private final Plan plan;
  private final BitSet known = new BitSet();
  private final Map<String, Given> used = new TreeMap<>();

  EquationWriting(Device device, Picture picture, Plan plan) {
    this.device = device;
    this.picture = picture;
    this.plan = plan;
  }

  List<Given> used() {
    return List.copyOf(used.values());
  }

  BitSet known() {
    return known;
  }

  /** An equation; open unknowns that are found with it have values, others have none. */
  Equation write(Candidate one, Collection<Integer> found) {
    List<Term> sought = new ArrayList<>();
    List<Term> others = new ArrayList<>();
    for (int k = 0; k < one.unknowns().size(); k++) {
      int number = one.unknowns().get(k);
      boolean now = found.contains(number);
      OptionalDouble value =
          now || known.get(number) ? OptionalDouble.of(plan.value(number)) : OptionalDouble.empty();
      boolean dropped = !now && value.isPresent() && value.getAsDouble() == 0;
      if (!dropped) {
        Unknown unknown = picture.unknowns().get(number);
        boolean arm = isMoments(one) && unknown.dimension() != Dimension.MOMENT;
        Term term =
            new Term(
                unknown.symbol(),
                unknown.part(),
                one.coefficients().get(k),
                arm,
                value,
                unknown.dimension(),
                false,
                now);
        (now || value.isEmpty() ? sought : others).add(term);
      }
    }
    sought.addAll(others);
    picture.loads().forEach(load -> add(load, one, sought));
    return new Equation(
        picture.names(one.cut()), isSection(one.cut()), one.condition(), sought, avoided(one));
  }

  private static boolean isMoments(Candidate one) {
    return one.condition() instanceof Condition.Moments
        || (one.condition() instanceof Condition.Law law && law.rule().isOfCouples());
  }

  /** Share of a load in an equation; in a law only couples on a screw are loads. */
  private double share(KnownLoad load, Candidate one) {
    if (one.condition() instanceof Condition.Law law && law.rule() == Condition.Rule.LOADS) {
      Vector line = Vector.of(law.numbers().get(0), law.numbers().get(1));
      return picture.loadOn(load, one.cut()).along(Direction.from(line));
    }
    if (one.condition() instanceof Condition.Law law) {
      return law.rule() == Condition.Rule.THREAD && turns(load, law.part()) ? load.size() : 0;
    }
    Wrench wrench = picture.loadOn(load, one.cut());
    double share = Candidate.share(one.condition(), wrench, picture);
    return Candidate.isNone(share, one.condition(), wrench, picture) ? 0 : share;
  }

  private boolean turns(KnownLoad load, String screw) {
    return device.load(load.name()).orElse(null) instanceof Couple couple
        && couple.member().equals(screw);
  }

  private void add(KnownLoad load, Candidate one, List<Term> terms) {
    double share = share(load, one);
    if (share == 0) {
      return;
    }
    double size = load.size();
    Dimension kind = load.isCouple() ? Dimension.MOMENT : Dimension.FORCE;
    terms.add(
        new Term(
            load.symbol(),
            load.name(),
            share / size,
            isMoments(one) && !load.isCouple(),
            OptionalDouble.of(size),
            kind,
            true,
            false));
    Vector sense = load.isCouple() ? Vector.ZERO : load.link().force().times(1 / size);
    used.put(load.symbol().text(), new Given(load.symbol(), load.name(), size, kind, sense));
  }

  /** A section goes through bars of several bodies that are particles, or hang on particles. */
  private boolean isSection(BitSet cut) {
    boolean several = cut.cardinality() > 1 && cut.cardinality() < picture.bodies().size();
    return several
        && cut.intersects(picture.particles())
        && picture.cutBy(cut).stream()
            .anyMatch(k -> picture.unknowns().get(k).kind() == Unknown.Kind.AXIAL);
  }

  private List<Unknown> avoided(Candidate one) {
    List<Unknown> avoided = new ArrayList<>();
    if (one.condition() instanceof Condition.Law) {
      return avoided;
    }
    for (Acting.Force force : new Acting(picture, one.cut()).unknowns()) {
      if (!one.unknowns().contains(force.number()) && !known.get(force.number())) {
        avoided.add(picture.unknowns().get(force.number()));
      }
    }
    return avoided;
  }
}
