package bellcrank.statics.device;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which measures each kind of part has. */
final class PartMeasures {

  static final Set<Measure> WHOLE =
      EnumSet.of(
          Measure.OUTCOME,
          Measure.FREEDOMS,
          Measure.REDUNDANCY,
          Measure.VERDICT,
          Measure.FRICTION_FACTOR);

  static final Set<Measure> MULTIPLE = EnumSet.of(Measure.VALUE);

  static final Set<Measure> PLACE = EnumSet.of(Measure.DISTANCE);

  /** The couple of a screw has no moment in the plane. */
  static final Set<Measure> SCREW_COUPLE = EnumSet.of(Measure.VALUE, Measure.COUPLE);

  /** What is asked of a member at a place. */
  static final Set<Measure> AT_PLACE = EnumSet.of(Measure.NORMAL, Measure.SHEAR, Measure.MOMENT);

  /** What is asked of a bar or of all bars of a member. */
  static final Set<Measure> PEAK =
      EnumSet.of(Measure.PEAK_NORMAL, Measure.PEAK_SHEAR, Measure.PEAK_MOMENT);

  /** What is asked of one bar. */
  static final Set<Measure> PLACE_OF_PEAK =
      EnumSet.of(
          Measure.PLACE_OF_PEAK_NORMAL, Measure.PLACE_OF_PEAK_SHEAR, Measure.PLACE_OF_PEAK_MOMENT);

  static final Set<Measure> MEMBER = member();

  static final Set<Measure> ADVANTAGE =
      EnumSet.of(Measure.ACTUAL, Measure.IDEAL, Measure.EFFICIENCY, Measure.RETURN_EFFICIENCY);

  static final Set<Measure> POINT = EnumSet.of(Measure.X, Measure.Y);

  static final Set<Measure> CENTRE = EnumSet.of(Measure.X, Measure.Y, Measure.DISTANCE);

  private static final Set<Measure> FORCE =
      EnumSet.of(
          Measure.VALUE, Measure.X, Measure.Y, Measure.SIZE, Measure.DIRECTION, Measure.MOMENT);

  private static final Set<Measure> COUPLE =
      EnumSet.of(Measure.VALUE, Measure.COUPLE, Measure.MOMENT);

  static final Set<Measure> GROUP = force(Measure.COUPLE);

  static final Set<Measure> RESULTANT = force(Measure.LINE, Measure.DISTANCE, Measure.ARM);

  private PartMeasures() {}

  private static Set<Measure> member() {
    Set<Measure> all = EnumSet.copyOf(AT_PLACE);
    all.addAll(PEAK);
    all.addAll(PLACE_OF_PEAK);
    return all;
  }

  /** Whether an ask is about what is inside a member, whatever else has the member's name. */
  static boolean isInside(Ask ask) {
    return ask.stretch().filter(stretch -> stretch.distance().isPresent()).isPresent()
        || PEAK.contains(ask.measure())
        || PLACE_OF_PEAK.contains(ask.measure());
  }

  private static Set<Measure> force(Measure... more) {
    Set<Measure> all = EnumSet.copyOf(FORCE);
    all.addAll(List.of(more));
    return all;
  }

  static Set<Measure> of(Connection connection) {
    if (connection instanceof Clamp || (connection instanceof Pin pin && pin.friction() > 0)) {
      return force(Measure.COUPLE);
    } else if (connection instanceof Roller || connection instanceof Slot) {
      return force(Measure.NORMAL);
    } else if (connection instanceof Guide) {
      return force(Measure.COUPLE, Measure.NORMAL);
    } else if (connection instanceof Strut || connection instanceof Line) {
      return force(Measure.TENSION, Measure.COMPRESSION, Measure.LENGTH);
    } else if (connection instanceof Screw) {
      return force(
          Measure.TENSION, Measure.COMPRESSION, Measure.LENGTH, Measure.RAISING, Measure.LOWERING);
    } else if (connection instanceof Reeving) {
      return force(Measure.TENSION, Measure.END_TENSION, Measure.LENGTH);
    } else if (connection instanceof Wrap) {
      return force(Measure.TENSION, Measure.END_TENSION, Measure.RATIO_OF_TENSIONS);
    } else if (connection instanceof Contact) {
      return force(Measure.NORMAL, Measure.FRICTION);
    } else if (connection instanceof ContactBase) {
      return force(Measure.NORMAL, Measure.FRICTION, Measure.COUPLE, Measure.OFFSET);
    }
    return FORCE;
  }

  static Set<Measure> of(Load load) {
    if (isCouple(load)) {
      return COUPLE;
    }
    return load instanceof Sought sought && sought.want() == Sought.Want.MASS
        ? force(Measure.MASS)
        : FORCE;
  }

  /** Whether a load has the same moment about every point. */
  static boolean isCouple(Load load) {
    return load instanceof Couple
        || load instanceof TorsionSpring
        || (load instanceof Sought sought && sought.want() == Sought.Want.COUPLE);
  }

  /** Whether a load is a couple about the own axis of a screw. */
  static boolean isOnScrew(Load load, Device device) {
    return (load instanceof Couple couple && device.body(couple.member()).isEmpty())
        || (load instanceof Sought sought
            && sought.want() == Sought.Want.COUPLE
            && device.body(sought.body()).isEmpty());
  }

  static String kind(Load load) {
    if (load instanceof Force) {
      return "force";
    } else if (load instanceof Couple) {
      return "couple";
    } else if (load instanceof SpreadLoad) {
      return "spread load";
    } else if (load instanceof Weight) {
      return "weight";
    } else if (load instanceof Spring) {
      return "spring";
    } else if (load instanceof TorsionSpring) {
      return "torsion spring";
    }
    return switch (((Sought) load).want()) {
      case FORCE, COMPONENTS -> "sought force";
      case COUPLE -> "sought couple";
      case MASS -> "sought mass";
      case INTENSITY -> "sought intensity";
    };
  }

  static String words(Collection<Measure> measures) {
    List<String> words = measures.stream().map(Measure::word).toList();
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : words.stream().limit(last).collect(Collectors.joining(", ")) + " or " + words.get(last);
  }

  static List<Ask> all(Device device) {
    List<Ask> asks = new ArrayList<>();
    for (Connection connection : device.connections()) {
      add(asks, new Subject.Part(connection.name()), of(connection));
    }
    for (Load load : device.loads()) {
      add(asks, new Subject.Part(load.name()), of(load));
    }
    for (Member member : device.members()) {
      if (!member.bars().isEmpty()) {
        add(asks, new Subject.Part(member.name()), PEAK);
      }
    }
    if (device.loads().size() > device.sought().size()) {
      add(asks, new Subject.Resultant(List.of()), RESULTANT);
    }
    if (hasWeight(device)) {
      add(asks, new Subject.Centre(List.of()), CENTRE);
    }
    if (device.advantage().isPresent()) {
      add(asks, new Subject.Advantage(), ADVANTAGE);
    }
    add(asks, new Subject.Whole(), WHOLE);
    return List.copyOf(asks);
  }

  private static boolean hasWeight(Device device) {
    return device.loads().stream().anyMatch(Weight.class::isInstance)
        || device.connections().stream()
            .anyMatch(one -> one instanceof Strut strut && strut.mass() > 0);
  }

  private static void add(List<Ask> asks, Subject subject, Set<Measure> measures) {
    for (Measure measure : measures) {
      // these three need a point or a line as well
      if (measure != Measure.MOMENT && measure != Measure.ARM && measure != Measure.DISTANCE) {
        asks.add(Ask.of(subject, measure));
      }
    }
  }
}
