package bellcrank.statics.study;

import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.PinJoint;
import bellcrank.statics.strength.Rating;
import java.util.List;

/** Numbers of joint details; {@link MaterialNumber} has those of materials. */
final class SizingSlots {

  static final List<Slot<?>> LIMIT =
      List.of(Slot.of(Rating.class, Rating::limit, (r, v) -> rating(r, v, r.legAngle())));

  static final List<Slot<?>> LEG_ANGLE =
      List.of(Slot.of(Rating.class, Rating::legAngle, (r, v) -> rating(r, r.limit(), v)));

  static final List<Slot<?>> DIAMETER =
      List.of(Slot.of(PinJoint.class, PinJoint::diameter, (p, v) -> pin(p, v, p.gap())));

  static final List<Slot<?>> GAP =
      List.of(Slot.of(PinJoint.class, PinJoint::gap, (p, v) -> pin(p, p.diameter(), v)));

  static final List<Slot<?>> THROAT =
      List.of(
          Slot.of(
              FilletWeld.class,
              FilletWeld::throat,
              (w, v) ->
                  new FilletWeld(
                      w.name(),
                      w.part(),
                      w.cut(),
                      w.body(),
                      w.plane(),
                      v,
                      w.lines(),
                      w.material(),
                      w.electrode())));

  private SizingSlots() {}

  private static Rating rating(Rating r, double limit, double legAngle) {
    return new Rating(r.name(), r.part(), limit, r.source(), r.legs(), legAngle, r.reductions());
  }

  private static PinJoint pin(PinJoint p, double diameter, double gap) {
    return new PinJoint(p.part(), diameter, p.planes(), p.material(), p.plates(), gap);
  }
}
