package bellcrank.statics.device;

import java.util.List;

/** What an {@link Ask} is about. */
public sealed interface Subject
    permits Subject.Part,
        Subject.Group,
        Subject.Resultant,
        Subject.Centre,
        Subject.Spot,
        Subject.Advantage,
        Subject.Whole,
        Subject.Ratio,
        Subject.Multiple,
        Subject.Place,
        Subject.Extreme {

  /**
   * One part of the device.
   *
   * @param name name of a connection, load or sought quantity; with a place on a bar, of a member
   */
  record Part(String name) implements Subject {

    /**
     * Checks the name.
     *
     * @param name name of the part
     * @throws ModelException if it is not acceptable
     */
    public Part {
      Check.name("ask", name);
    }
  }

  /**
   * All forces that other bodies put on a group of bodies.
   *
   * @param bodies names of the bodies, one or more
   * @param from names of the bodies whose forces count; empty for all others, the ground included
   */
  record Group(List<String> bodies, List<String> from) implements Subject {

    /**
     * Checks the names and copies the lists.
     *
     * @param bodies names of the bodies, one or more
     * @param from names of other bodies, or none
     * @throws ModelException if no body is named, one is named twice, or a name is not acceptable
     */
    public Group {
      bodies = names("group", bodies, 1);
      from = names("from", from, 0);
    }
  }

  /**
   * The resultant of given loads; sought ones do not count.
   *
   * @param loads names of the loads; empty for all
   */
  record Resultant(List<String> loads) implements Subject {

    /**
     * Checks the names and copies the list.
     *
     * @param loads names of given loads, or none
     * @throws ModelException if one is named twice or a name is not acceptable
     */
    public Resultant {
      loads = names("resultant", loads, 0);
    }
  }

  /**
   * The centre of gravity.
   *
   * @param bodies names of the bodies whose weights count; empty for all
   */
  record Centre(List<String> bodies) implements Subject {

    /**
     * Checks the names and copies the list.
     *
     * @param bodies names of bodies, or none
     * @throws ModelException if one is named twice or a name is not acceptable
     */
    public Centre {
      bodies = names("centre", bodies, 0);
    }
  }

  /**
   * A point of a body, wherever the pose brings it. The ask names the body where several have it.
   *
   * @param point name of the point
   */
  record Spot(String point) implements Subject {

    /**
     * Checks the name.
     *
     * @param point name of the point
     * @throws ModelException if it is not acceptable
     */
    public Spot {
      Check.name("ask", point);
    }
  }

  /** The mechanical advantage between the device's stated effort and resistance. */
  record Advantage() implements Subject {}

  /** The device as a whole: outcome, freedoms, redundancy, verdict or friction factor. */
  record Whole() implements Subject {}

  /**
   * The ratio of two answers.
   *
   * @param numerator the answer that is divided
   * @param denominator the answer that divides it
   */
  record Ratio(Ask numerator, Ask denominator) implements Subject {

    /**
     * Checks that both sides are plain.
     *
     * @param numerator the answer that is divided
     * @param denominator the answer that divides it
     * @throws ModelException if a side is a ratio itself, an extreme or what only an extreme has,
     *     or names a case, which belongs to the ratio
     */
    public Ratio {
      plain(numerator);
      plain(denominator);
    }

    private static void plain(Ask side) {
      if (side.subject() instanceof Ratio || side.loadCase().isPresent()) {
        throw new ModelException(
            "ask",
            "ratio",
            side.text(),
            "two asks that are no ratios themselves, and the case after the second, for both");
      }
      if (isOfLimits(side.subject())) {
        throw new ModelException(
            "ask",
            "ratio",
            side.text(),
            "two plain asks: greatest or least stands before the whole ratio, and multiple and"
                + " distance(…) are in none");
      }
    }
  }

  /**
   * The common factor on loads up to which the device can hold; only in an {@link Extreme}.
   *
   * @param loads names of given loads; empty for all but the weights
   */
  record Multiple(List<String> loads) implements Subject {

    /**
     * Checks the names and copies the list.
     *
     * @param loads names of given loads, or none
     * @throws ModelException if one is named twice or a name is not acceptable
     */
    public Multiple {
      loads = names("multiple", loads, 0);
    }
  }

  /**
   * How far a load may be moved along the line of the ask, in m from its first point, while the
   * device can hold; only in an {@link Extreme}.
   *
   * @param load name of a force or weight on a member, at a point
   */
  record Place(String load) implements Subject {

    /**
     * Checks the name.
     *
     * @param load name of the load
     * @throws ModelException if it is not acceptable
     */
    public Place {
      Check.name("ask", load);
    }
  }

  /**
   * The end of the range in which an answer lies, in all states in which the device can hold.
   *
   * @param greatest whether it is the upper end
   * @param of what is asked, answered by a number; the case of the whole is not in it
   */
  record Extreme(boolean greatest, Ask of) implements Subject {

    /** The word for the upper end. */
    static final String GREATEST = "greatest";

    /** The word for the lower end. */
    static final String LEAST = "least";

    /**
     * Checks that the ask within is no extreme and names no case.
     *
     * @param greatest whether it is the upper end
     * @param of what is asked, answered by a number
     * @throws ModelException if the ask within is an extreme itself or names a case
     */
    public Extreme {
      if (of.subject() instanceof Extreme || of.loadCase().isPresent()) {
        throw new ModelException(
            "ask",
            greatest ? GREATEST : LEAST,
            of.text(),
            "greatest or least once, before the whole ask, and the case of the whole, not of the"
                + " ask within");
      }
    }

    /**
     * The word for this end.
     *
     * @return {@code greatest} or {@code least}
     */
    public String word() {
      return greatest ? GREATEST : LEAST;
    }
  }

  private static boolean isOfLimits(Subject subject) {
    return subject instanceof Extreme || subject instanceof Multiple || subject instanceof Place;
  }

  private static List<String> names(String field, List<String> names, int least) {
    names.forEach(name -> Check.name("ask", name));
    return Check.different("ask", field, names, least);
  }
}
