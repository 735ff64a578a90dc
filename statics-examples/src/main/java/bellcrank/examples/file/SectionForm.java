package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Profile;
import bellcrank.statics.strength.Profiles;
import java.util.List;
import java.util.Locale;

/** The forms of section that a file knows, with their sizes in order. */
public enum SectionForm {
  /** A solid rectangle. */
  RECTANGLE("width, height", 2, 0),
  /** A solid round bar. */
  ROUND("diameter", 1, 0),
  /** A round pipe. */
  PIPE("diameter, wall", 2, 0),
  /** A rectangular tube with sharp corners, or with radii of its corners. */
  TUBE("width, height, wall, and radii of the corners outside and inside if they are round", 3, 2),
  /** A cold-formed tube with corners of 2 and 1 walls. */
  FORMED_TUBE("width, height, wall", 3, 0),
  /** An angle. */
  ANGLE("width, height, thickness, and the radius of the inner corner if it is round", 3, 1),
  /** A channel, its web upright. */
  CHANNEL("depth, width, web, flange, and the radius of the inner corners if they are round", 4, 1),
  /** An I or H. */
  BEAM("depth, width, web, flange, and the radius of the inner corners if they are round", 4, 1),
  /** A T, its flange on top. */
  TEE("depth, width, stem, flange, and the radius of the inner corners if they are round", 4, 1);

  /** Larger sizes are taken for a unit that was forgotten. */
  static final double LARGEST = 5;

  private final String sizes;
  private final int needed;
  private final int further;

  SectionForm(String sizes, int needed, int further) {
    this.sizes = sizes;
    this.needed = needed;
    this.further = further;
  }

  private static double root(List<Double> sizes, int index) {
    return sizes.size() > index ? sizes.get(index) : 0;
  }

  /**
   * Its word in a file.
   *
   * @return lower-case words
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The sizes in words, in order. */
  String sizes() {
    return sizes;
  }

  /** Whether a number of sizes is all of the needed ones, or those with all of the further ones. */
  boolean takes(int count) {
    return count == needed || count == needed + further;
  }

  Profile profile(List<Double> given) {
    if (!takes(given.size())) {
      throw new ModelException(word(), "sizes", given.size() + " of them", sizes);
    }
    for (double size : given) {
      if (size > LARGEST) {
        throw new ModelException(
            word(),
            "size",
            AmountText.number(size) + " m",
            "at most "
                + AmountText.number(LARGEST)
                + " m; a bare number is in the file's unit of length, so write it as 60 mm");
      }
    }
    return made(given);
  }

  private Profile made(List<Double> s) {
    return switch (this) {
      case RECTANGLE -> Profiles.rectangle(s.get(0), s.get(1));
      case ROUND -> Profiles.round(s.get(0));
      case PIPE -> Profiles.pipe(s.get(0), s.get(1));
      case TUBE ->
          s.size() == 3
              ? Profiles.tube(s.get(0), s.get(1), s.get(2))
              : Profiles.tube(s.get(0), s.get(1), s.get(2), s.get(3), s.get(4));
      case FORMED_TUBE -> Profiles.formedTube(s.get(0), s.get(1), s.get(2));
      case ANGLE -> Profiles.angle(s.get(0), s.get(1), s.get(2), root(s, 3));
      case CHANNEL -> Profiles.channel(s.get(0), s.get(1), s.get(2), s.get(3), root(s, 4));
      case BEAM -> Profiles.beam(s.get(0), s.get(1), s.get(2), s.get(3), root(s, 4));
      case TEE -> Profiles.tee(s.get(0), s.get(1), s.get(2), s.get(3), root(s, 4));
    };
  }
}
