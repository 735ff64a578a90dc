package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Profile;
import bellcrank.statics.strength.Section;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A cross-section by its form and sizes, and how it is placed and weakened: first it is turned,
 * then put side by side, then holes are drilled and notches cut; separate ones are counted last.
 *
 * @param form the form
 * @param sizes its sizes in m, in the order of the form
 * @param stands how it stands in the plane of the device
 * @param together how many are joined side by side, 1 or more
 * @param gap free width between those in m, 0 or more
 * @param backToBack free width in m between it and its joined mirror image, if it has one
 * @param holes holes in what stands there then
 * @param notchAbove depth of a notch from above in m, 0 for none
 * @param notchBelow depth of a notch from below in m, 0 for none
 * @param separate how many share the load without being joined, 1 or more
 */
public record FormedSection(
    SectionForm form,
    List<Double> sizes,
    Stands stands,
    int together,
    double gap,
    Optional<Double> backToBack,
    List<Hole> holes,
    double notchAbove,
    double notchBelow,
    int separate)
    implements SectionStatement {

  /** How a section stands in the plane of the device. */
  public enum Stands {
    /** Its height in the plane. */
    UPRIGHT,
    /** Its width in the plane. */
    TURNED,
    /** Top and bottom exchanged. */
    UPSIDE_DOWN;

    /**
     * Its word in a file.
     *
     * @return lower-case words
     */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** A hole. */
  public sealed interface Hole {

    /**
     * Its diameter.
     *
     * @return in m, above 0
     */
    double diameter();

    /**
     * A hole square to the plane of the device.
     *
     * @param diameter its diameter in m, above 0
     * @param height height of its centre above the lower edge in m
     */
    record Across(double diameter, double height) implements Hole {}

    /**
     * A hole up and down in the plane of the device.
     *
     * @param diameter its diameter in m, above 0
     * @param offset distance of its centre from the left edge in m
     * @param from height at which it begins above the lower edge in m
     * @param to height at which it ends in m
     */
    record Upright(double diameter, double offset, double from, double to) implements Hole {}
  }

  /**
   * Copies the lists and checks that material is left.
   *
   * @param form the form
   * @param sizes its sizes in m
   * @param stands how it stands
   * @param together how many are joined side by side, 1 or more
   * @param gap free width between those in m, 0 or more
   * @param backToBack free width in m to its mirror image, if it has one
   * @param holes the holes
   * @param notchAbove depth of a notch from above in m, 0 for none
   * @param notchBelow depth of a notch from below in m, 0 for none
   * @param separate how many share the load unjoined, 1 or more
   * @throws ModelException if a size is out of its range
   */
  public FormedSection {
    sizes = List.copyOf(sizes);
    holes = List.copyOf(holes);
    if (together == 1 && gap != 0) {
      throw new ModelException("section", "gap", gap, "none, as there is only one");
    }
    made(form, sizes, stands, together, gap, backToBack, holes, notchAbove, notchBelow)
        .section()
        .times(separate);
  }

  /**
   * A form as it is.
   *
   * @param form the form
   * @param sizes its sizes in m
   * @return the section
   * @throws ModelException if a size is out of its range
   */
  public static FormedSection of(SectionForm form, List<Double> sizes) {
    return new FormedSection(
        form, sizes, Stands.UPRIGHT, 1, 0, Optional.empty(), List.of(), 0, 0, 1);
  }

  @Override
  public Section section() {
    Section one =
        made(form, sizes, stands, together, gap, backToBack, holes, notchAbove, notchBelow)
            .section();
    return separate == 1 ? one : one.times(separate);
  }

  private static Profile made(
      SectionForm form,
      List<Double> sizes,
      Stands stands,
      int together,
      double gap,
      Optional<Double> backToBack,
      List<Hole> holes,
      double notchAbove,
      double notchBelow) {
    Profile profile = form.profile(sizes);
    if (stands == Stands.TURNED) {
      profile = profile.turned();
    } else if (stands == Stands.UPSIDE_DOWN) {
      profile = profile.upsideDown();
    }
    if (together != 1) {
      profile = profile.sideBySide(together, gap);
    }
    if (backToBack.isPresent()) {
      profile = profile.backToBack(backToBack.get());
    }
    for (Hole hole : holes) {
      profile = drilled(profile, hole);
    }
    if (notchAbove != 0) {
      profile = profile.notchedFromAbove(notchAbove);
    }
    return notchBelow == 0 ? profile : profile.notchedFromBelow(notchBelow);
  }

  private static Profile drilled(Profile profile, Hole hole) {
    if (hole instanceof Hole.Upright up) {
      return profile.withHoleUpright(up.offset(), up.diameter(), up.from(), up.to());
    }
    Hole.Across across = (Hole.Across) hole;
    return profile.withHoleAcross(across.height(), across.diameter());
  }
}
