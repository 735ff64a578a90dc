package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.internal.CutForces;
import bellcrank.statics.equilibrium.internal.CutPiece;
import bellcrank.statics.equilibrium.internal.CutPlace;
import bellcrank.statics.equilibrium.internal.MemberCut;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The forces inside the bars of a member, all equal parts of it together. Signs are told at {@link
 * BarForces}.
 *
 * @param member name of the member
 * @param bars its bars in order; empty if it has none
 */
public record InternalForces(String member, List<BarForces> bars) {

  private static final String OPEN =
      "statics alone does not fix it: there are more unknown forces than equations";

  /**
   * Copies the list.
   *
   * @param member name of the member
   * @param bars its bars in order; empty if it has none
   */
  public InternalForces {
    bars = List.copyOf(bars);
  }

  /**
   * A bar.
   *
   * @param start name of the point where it starts
   * @param end name of the point where it ends
   * @return empty if there is no bar that starts and ends there
   */
  public Optional<BarForces> bar(String start, String end) {
    return bars.stream().filter(one -> one.bar().equals(new Bar(start, end))).findFirst();
  }

  static String name(Bar bar) {
    return bar.start() + "–" + bar.end();
  }

  /** Forces of a balance, cut as planned. */
  static InternalForces of(Balance balance, Solved solved, Member member, MemberCut cut) {
    Device device = balance.device();
    Optional<Answer> none = balance.noForces();
    CutForces forces = cut.forces(solved);
    List<List<Piece>> pieces = new ArrayList<>();
    member.bars().forEach(bar -> pieces.add(new ArrayList<>()));
    for (CutPiece piece : forces.pieces()) {
      String name = name(member.bars().get(piece.bar()));
      pieces.get(piece.bar()).add(piece(name, piece, none));
    }
    Frame frame = balance.pose().frame(member.name());
    List<BarForces> bars = new ArrayList<>();
    for (int i = 0; i < member.bars().size(); i++) {
      Bar bar = member.bars().get(i);
      bars.add(
          new BarForces(
              bar,
              frame.apply(device.point(bar.start())),
              frame.apply(device.point(bar.end())),
              pieces.get(i),
              forces.places(i).stream().map(InternalForces::place).toList(),
              solved.forceScale(),
              device.size()));
    }
    return new InternalForces(member.name(), bars);
  }

  private static Place place(CutPlace place) {
    return new Place(place.at(), place.points(), place.parts(), place.joins());
  }

  private static Piece piece(String bar, CutPiece piece, Optional<Answer> none) {
    List<Polynomial> curves = new ArrayList<>();
    for (List<Double> curve : List.of(piece.normal(), piece.shear(), piece.moment())) {
      curves.add(new Polynomial(piece.start(), curve.isEmpty() ? List.of(0.0) : curve));
    }
    List<Optional<Answer.Unanswered>> open = new ArrayList<>();
    for (InsideForce force : InsideForce.values()) {
      open.add(whyNot(piece, force, none));
    }
    return new Piece(bar, piece.start(), piece.end(), curves, open);
  }

  private static Optional<Answer.Unanswered> whyNot(
      CutPiece piece, InsideForce force, Optional<Answer> none) {
    if (none.isPresent() && none.get() instanceof Answer.Unanswered unanswered) {
      return Optional.of(unanswered);
    }
    if (!piece.why().isEmpty()) {
      Answer.Reason reason =
          piece.isRing() ? Answer.Reason.UNDETERMINED : Answer.Reason.NOT_DEFINED;
      return Optional.of(new Answer.Unanswered(reason, piece.why()));
    }
    return piece.told().get(force.index())
        ? Optional.empty()
        : Optional.of(new Answer.Unanswered(Answer.Reason.UNDETERMINED, OPEN));
  }
}
