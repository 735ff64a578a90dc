package bellcrank.examples.report;

import bellcrank.statics.device.Ground;
import bellcrank.statics.motion.CourseEnd;
import bellcrank.statics.motion.Drive;

/** Tells what drives a device, and why its course ends. */
final class DriveWords {

  private DriveWords() {}

  /** What is counted, such as {@code turn of crank}. */
  static String of(Drive drive) {
    if (drive instanceof Drive.Turn turn) {
      return "turn of "
          + turn.member()
          + (turn.other().equals(Ground.NAME) ? "" : " against " + turn.other());
    }
    if (drive instanceof Drive.Length length) {
      return "change in length of " + length.connection();
    }
    Drive.Slide slide = (Drive.Slide) drive;
    return "way of " + slide.point() + " of " + slide.body();
  }

  /** The word that heads a column, such as {@code turn}. */
  static String head(Drive drive) {
    return drive instanceof Drive.Turn ? "turn" : drive instanceof Drive.Length ? "change" : "way";
  }

  /** Which sense counts positive. */
  static String sense(Drive drive) {
    if (drive instanceof Drive.Turn) {
      return "counter-clockwise positive, 0 as drawn";
    }
    if (drive instanceof Drive.Length) {
      return "longer is positive, 0 as drawn";
    }
    Drive.Slide slide = (Drive.Slide) drive;
    return "positive " + DirectionWords.of(slide.along().x(), slide.along().y()) + ", 0 as drawn";
  }

  /** Why a course ends. */
  static String why(CourseEnd end) {
    return switch (end.why()) {
      case STATED -> "the stated limit";
      case DEAD_CENTRE -> "a dead centre, beyond which the drive would have to turn back";
      case STUCK -> "no further step fits the connections";
      case TOO_LONG -> "it goes on, but is followed no farther";
      case MEETS -> end.part().replaceAll(":$", "") + " meet";
      default -> end.words();
    };
  }
}
