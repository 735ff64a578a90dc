package bellcrank.statics.explain;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Puts the steps that are no equations of equilibrium into words. */
final class StepWords {

  private final Device device;
  private final UnitSystem units;
  private final Figures figures;

  StepWords(Device device, UnitSystem units, Figures figures) {
    this.device = device;
    this.units = units;
    this.figures = figures;
  }

  List<Piece> words(Step step) {
    List<Piece> pieces = new ArrayList<>();
    if (step instanceof Step.TwoForceMember one) {
      add(
          pieces,
          one.member()
              + " is a two-force member: only the pins "
              + one.from()
              + " and "
              + one.to()
              + " act on it, so its force ");
      pieces.add(Pages.letter(one.symbol()));
      add(pieces, " lies along the line through them.");
    } else if (step instanceof Step.RopeLaw one) {
      ropeLaw(pieces, one);
    } else if (step instanceof Step.PostLaw one) {
      postLaw(pieces, one);
    } else if (step instanceof Step.Taken one) {
      add(pieces, "Statics alone leaves ");
      pieces.add(Pages.letter(one.found().unknown().symbol()));
      add(pieces, " open. It is taken as known: ");
      pieces.add(new EquationWords(figures, 0).found(one.found()));
      add(pieces, ".");
    } else if (step instanceof Step.ThreeForces one) {
      add(
          pieces,
          "Check: just three forces act on "
              + one.body()
              + ", those of "
              + Wording.and(one.forces())
              + "; "
              + one.meeting()
                  .map(at -> "their lines meet in one point, " + place(at))
                  .orElse("they are parallel")
              + ".");
    } else if (step instanceof Step.Broken one) {
      add(pieces, broken(one.violation()));
    } else if (step instanceof Step.Moves one) {
      add(pieces, moves(one));
    } else if (step instanceof Step.Margin
        || step instanceof Step.PinFriction
        || step instanceof Step.ThreadLaw
        || step instanceof Step.AtLimit
        || step instanceof Step.JustHeld
        || step instanceof Step.Judged) {
      add(pieces, new LimitWords(device, units, figures).words(step));
    } else if (step instanceof Step.Finding one) {
      add(pieces, one.sentence());
    }
    return pieces;
  }

  private static void add(List<Piece> pieces, String words) {
    pieces.add(new Piece.Words(words));
  }

  private void ropeLaw(List<Piece> pieces, Step.RopeLaw one) {
    add(
        pieces,
        "A sheave does not pass on the whole tension. The straight parts of "
            + one.rope()
            + ", from its first end on, carry ");
    pieces.add(Pages.letter(one.symbol()));
    add(
        pieces,
        " times "
            + Wording.and(
                one.multiples().stream()
                    .map(multiple -> figures.text(multiple, Dimension.NUMBER))
                    .toList())
            + ".");
  }

  private void postLaw(List<Piece> pieces, Step.PostLaw one) {
    add(pieces, "Round the post, the greater of ");
    pieces.add(Pages.letter(one.first()));
    add(pieces, " and ");
    pieces.add(Pages.letter(one.last()));
    String most = new LawWords(figures).power(one.friction(), one.angle());
    add(pieces, " may be e^(μβ) = " + most + " times the smaller.");
  }

  private String place(Point at) {
    EquationWords words = new EquationWords(figures, 0);
    return "(" + words.length(at.x()) + ", " + words.length(at.y()) + ")";
  }

  private String broken(Violation one) {
    String needed = units.format(one.needed(), one.dimension(), Carried.ANSWER_DIGITS);
    boolean bounded = Math.abs(one.limit()) < Double.MAX_VALUE && one.needed() < Double.MAX_VALUE;
    String limit = units.format(one.limit(), one.dimension(), Carried.ANSWER_DIGITS);
    return one.part()
        + " "
        + one.words()
        + (bounded ? ": balance needs " + needed + ", it can give " + limit : "")
        + ". So the device does not rest like this.";
  }

  private String moves(Step.Moves one) {
    String words = one.freedom().words(device, units);
    String free = one.freedom().driven() ? "It moves: " : "Still free: ";
    return free
        + words
        + "."
        + one.point()
            .map(
                point ->
                    " A strut from the ground to "
                        + point
                        + " of "
                        + one.body()
                        + ", along the way that it goes ("
                        + UnknownWords.direction(one.way())
                        + "), would hold this motion.")
            .orElse("");
  }

  String words(Answer answer) {
    if (answer instanceof Answer.Words words) {
      return words.text();
    }
    if (answer instanceof Answer.LineOfAction line) {
      return units.format(line.size(), Dimension.FORCE, Carried.ANSWER_DIGITS)
          + " through "
          + place(line.line().point())
          + ", "
          + UnknownWords.direction(line.line().direction().times(1));
    }
    return answer instanceof Answer.Unanswered none ? "none: " + none.explanation() : "";
  }
}
