package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Side;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;

/** Reads forces inside members: at a place of a bar, or where they are largest. */
final class MemberAnswers {

  private final Balance balance;

  MemberAnswers(Balance balance) {
    this.balance = balance;
  }

  /** Whether an ask about a part is about the inside of a member rather than of what holds it. */
  static boolean concern(Device device, String name, Ask ask) {
    boolean placed = ask.stretch().filter(one -> one.distance().isPresent()).isPresent();
    boolean peak =
        switch (ask.measure()) {
          case PEAK_NORMAL,
              PEAK_SHEAR,
              PEAK_MOMENT,
              PLACE_OF_PEAK_NORMAL,
              PLACE_OF_PEAK_SHEAR,
              PLACE_OF_PEAK_MOMENT ->
              true;
          default -> false;
        };
    return (placed || peak)
        && device.members().stream().anyMatch(member -> member.name().equals(name));
  }

  Answer answer(String member, Ask ask) {
    InternalForces forces = balance.internalForces(member);
    Optional<Stretch> stretch = ask.stretch();
    if (stretch.isEmpty()) {
      return peak(forces.bars(), force(ask.measure()));
    }
    String start = stretch.get().start();
    String end = stretch.get().end();
    Optional<BarForces> bar = forces.bar(start, end);
    // measured from its other end, a bar has its other side to the right
    boolean reversed = bar.isEmpty();
    BarForces found = bar.orElseGet(() -> forces.bar(end, start).orElseThrow());
    InsideForce force = force(ask.measure());
    int sign = reversed && force == InsideForce.MOMENT ? -1 : 1;
    if (stretch.get().distance().isPresent()) {
      return at(found, force, stretch.get(), reversed, sign);
    }
    return switch (ask.measure()) {
      case PEAK_NORMAL, PEAK_SHEAR, PEAK_MOMENT -> times(sign, peak(List.of(found), force));
      default -> placeOfPeak(found, force, reversed);
    };
  }

  private static Answer times(int sign, Answer answer) {
    return answer instanceof Answer.Value value
        ? new Answer.Value(sign * value.si() + 0.0, value.dimension())
        : answer;
  }

  private static InsideForce force(Measure measure) {
    return switch (measure) {
      case NORMAL, PEAK_NORMAL, PLACE_OF_PEAK_NORMAL -> InsideForce.NORMAL;
      case SHEAR, PEAK_SHEAR, PLACE_OF_PEAK_SHEAR -> InsideForce.SHEAR;
      default -> InsideForce.MOMENT;
    };
  }

  private static Answer at(
      BarForces bar, InsideForce force, Stretch place, boolean reversed, int sign) {
    double distance = Math.min(bar.length(), place.distance().orElseThrow());
    double at = reversed ? bar.length() - distance : distance;
    Optional<Side> side = place.side().map(one -> reversed ? one.opposite() : one);
    Piece before = bar.piece(at, side.orElse(Side.BEFORE));
    Piece after = bar.piece(at, side.orElse(Side.AFTER));
    Optional<Answer.Unanswered> none = before.whyNot(force).or(() -> after.whyNot(force));
    if (none.isPresent()) {
      return none.get();
    }
    if (side.isEmpty() && bar.jumps(force, at)) {
      Bar ends = bar.bar();
      return Values.notDefined(
          "the "
              + force.words()
              + " jumps at this place of "
              + InternalForces.name(ends)
              + ": ask just before it or just after it");
    }
    double value = bar.value(force, at, side.orElse(Side.AFTER));
    return new Answer.Value(sign * value + 0.0, force.dimension());
  }

  private static Answer peak(List<BarForces> bars, InsideForce force) {
    double largest = 0;
    for (BarForces bar : bars) {
      Optional<Answer.Unanswered> none = bar.whyNot(force);
      if (none.isPresent()) {
        return none.get();
      }
      double value = bar.extremes(force).largest().value();
      largest = Math.abs(value) > Math.abs(largest) ? value : largest;
    }
    return new Answer.Value(largest + 0.0, force.dimension());
  }

  private static Answer placeOfPeak(BarForces bar, InsideForce force, boolean reversed) {
    Optional<Answer.Unanswered> none = bar.whyNot(force);
    if (none.isPresent()) {
      return none.get();
    }
    double at = bar.extremes(force).largest().at();
    return new Answer.Value(reversed ? bar.length() - at : at, Dimension.LENGTH);
  }
}
