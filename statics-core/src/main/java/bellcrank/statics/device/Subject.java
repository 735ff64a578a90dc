package bellcrank.statics.device;

import java.util.List;

/** What an {@link Ask} is about. */
public sealed interface Subject
    permits Subject.Part,
        Subject.Group,
        Subject.Resultant,
        Subject.Centre,
        Subject.Advantage,
        Subject.Whole,
        Subject.Ratio {

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

  /** The mechanical advantage between the device's stated effort and resistance. */
  record Advantage() implements Subject {}

  /** The device as a whole: its outcome, freedoms or redundancy. */
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
     * @throws ModelException if a side is a ratio itself or names a case, which belongs to the
     *     ratio
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
    }
  }

  private static List<String> names(String field, List<String> names, int least) {
    names.forEach(name -> Check.name("ask", name));
    return Check.different("ask", field, names, least);
  }
}
