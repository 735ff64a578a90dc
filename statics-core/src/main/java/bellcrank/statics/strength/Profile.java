package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/**
 * The drawn cross-section of a bar, from which a {@link Section} takes its properties. The height
 * lies in the plane of the device. Places are told from the left and lower edge of the box round
 * the material.
 *
 * @param name how it is called, such as {@code tube 60 × 40 × 3 mm}
 * @param shape the material
 * @param thickest greatest thickness of the material in m, above 0; strengths depend on it
 */
public record Profile(String name, Shape shape, double thickest) {

  /**
   * Checks that there is material.
   *
   * @param name how it is called
   * @param shape the material
   * @param thickest greatest thickness of the material in m, above 0
   * @throws ModelException if there is no material or the thickness is not above 0
   */
  public Profile {
    SectionLength.positive(name, "thickness", thickest);
    double area = shape.moments().area();
    if (!(area > 0)) {
      throw new ModelException(name, "area", area, "a section with material left");
    }
  }

  /**
   * The same under another name.
   *
   * @param other the name
   * @return the renamed profile
   */
  public Profile named(String other) {
    return new Profile(other, shape, thickest);
  }

  /**
   * Turned by a quarter, so that what was its width lies in the plane of the device: a plank laid
   * flat.
   *
   * @return the turned profile
   */
  public Profile turned() {
    return new Profile(name + " turned", shape.turned(), thickest);
  }

  /**
   * With top and bottom exchanged: turned by two quarters.
   *
   * @return the turned profile
   */
  public Profile upsideDown() {
    return new Profile(name + " upside down", shape.turned().turned(), thickest);
  }

  /**
   * Several of these side by side, joined so that they bend as one. Parts that are not joined are
   * told by {@link Section#times}.
   *
   * @param count how many, 1 or more
   * @param gap free width between two of them in m, 0 or more
   * @return all of them
   * @throws ModelException if the count is below 1 or the gap below 0
   */
  public Profile sideBySide(int count, double gap) {
    if (count < 1) {
      throw new ModelException(name, "count", count, "1 or more");
    }
    SectionLength.orNone(name, "gap", gap, 1, "; both in m");
    double pitch = Box.of(shape).width() + gap;
    Shape all = shape;
    for (int i = 1; i < count; i++) {
      all = all.and(shape.moved(i * pitch, 0));
    }
    return new Profile(count + " × " + name, all, thickest);
  }

  /**
   * This one and its mirror image, left edge to left edge and joined: two channels with their webs,
   * two angles with their upright legs facing one another.
   *
   * @param gap free width between the two in m, 0 or more
   * @return both
   * @throws ModelException if the gap is below 0
   */
  public Profile backToBack(double gap) {
    SectionLength.orNone(name, "gap", gap, 1, "; both in m");
    Shape right = shape.moved(gap / 2 - Box.of(shape).left(), 0);
    return new Profile("2 × " + name + " back to back", right.and(right.mirrored()), thickest);
  }

  /**
   * With a hole that goes square to the plane of the device through all material at its height: a
   * pin hole in a lever, a bolt hole in a web. Area and second moments are those of what is left.
   *
   * @param height height of its centre above the lower edge in m
   * @param diameter its diameter in m, above 0 and below the height of the section
   * @return the net profile
   * @throws ModelException if the hole is larger than the section, sticks out of it, or meets no
   *     material
   */
  public Profile withHoleAcross(double height, double diameter) {
    Box box = Box.of(shape);
    SectionLength.below(
        name, "hole diameter", diameter, box.height(), ", the height of the section");
    double centre = within("hole height", height, diameter / 2, box.height());
    return cut("hole", 0, centre - diameter / 2, box.width(), diameter);
  }

  /**
   * With a hole that goes up and down, in the plane of the device, through what lies between two
   * heights: a bolt hole in a flange.
   *
   * @param offset distance of its centre from the left edge in m
   * @param diameter its diameter in m, above 0 and below the width of the section
   * @param from height at which it begins above the lower edge in m, 0 or more
   * @param to height at which it ends, above the other, at most the height of the section
   * @return the net profile
   * @throws ModelException if the hole is larger than the section, sticks out of it, or meets no
   *     material
   */
  public Profile withHoleUpright(double offset, double diameter, double from, double to) {
    Box box = Box.of(shape);
    SectionLength.below(name, "hole diameter", diameter, box.width(), ", the width of the section");
    double centre = within("hole offset", offset, diameter / 2, box.width());
    double high = box.height();
    double start =
        SectionLength.orNone(name, "hole begins", from, high, ", the height of the section");
    double length =
        SectionLength.upTo(
            name, "hole length", to - from, high - from, ", what is above its start");
    return cut("hole", centre - diameter / 2, start, diameter, length);
  }

  /**
   * With a notch cut from above over the whole width.
   *
   * @param depth how deep in m, above 0 and below the height of the section
   * @return the net profile
   * @throws ModelException if nothing would be left
   */
  public Profile notchedFromAbove(double depth) {
    Box box = Box.of(shape);
    SectionLength.below(name, "notch", depth, box.height(), ", the height of the section");
    return new Profile(name + " notched", shape.below(box.top() - depth), thickest);
  }

  /**
   * With a notch cut from below over the whole width.
   *
   * @param depth how deep in m, above 0 and below the height of the section
   * @return the net profile
   * @throws ModelException if nothing would be left
   */
  public Profile notchedFromBelow(double depth) {
    Box box = Box.of(shape);
    SectionLength.below(name, "notch", depth, box.height(), ", the height of the section");
    return new Profile(name + " notched", shape.above(box.bottom() + depth), thickest);
  }

  private double within(String field, double place, double reach, double size) {
    double rounding = SectionLength.ROUNDING * size;
    if (!(place >= reach - rounding && place <= size - reach + rounding)) {
      throw new ModelException(
          name,
          field,
          place,
          "from "
              + SectionLength.text(reach)
              + " to "
              + SectionLength.text(size - reach)
              + " m, inside the section");
    }
    return Math.max(reach, Math.min(place, size - reach));
  }

  private Profile cut(String what, double left, double bottom, double width, double height) {
    Box box = Box.of(shape);
    double x = box.left() + left;
    double y = box.bottom() + bottom;
    if (!(shape.within(x, y, width, height).moments().area() > 0)) {
      throw new ModelException(
          name, what, "where there is no material", "a place that meets a wall of the section");
    }
    return new Profile(name + " with " + what, shape.cut(x, y, width, height), thickest);
  }

  /**
   * The properties of this cross-section.
   *
   * @return the section
   */
  public Section section() {
    AreaMoments moments = shape.moments();
    AreaMoments own = moments.aboutCentroid();
    double x = moments.centroid().x();
    double y = moments.centroid().y();
    Box box = Box.of(shape);
    ShearPlace shear = ShearPlace.of(shape, y);
    return new Section(
        name,
        own.area(),
        box.top() - y,
        y - box.bottom(),
        own.secondY(),
        shear.firstMoment(),
        shear.width(),
        own.secondX(),
        Math.max(x - box.left(), box.right() - x),
        thickest,
        own.product());
  }
}
