package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * How a device gives way at a limit: what slides, lifts, tips or goes slack there, and the motion
 * that sets in. It follows from the parts that are at their limit in every state the device can be
 * in there: those slide against their friction or open, the rest stick.
 *
 * @param events what happens at the parts that are at their limit
 * @param motion the motion; empty if no motion, or more than one, fits
 * @param ways number of independent motions that the parts at their limit leave free; 0 if none
 *     fits
 */
public record GivingWay(List<Event> events, Optional<Freedom> motion, int ways) {

  /**
   * Copies the list.
   *
   * @param events what happens at the parts that are at their limit
   * @param motion the motion
   * @param ways number of independent motions
   */
  public GivingWay {
    events = List.copyOf(events);
  }

  /**
   * The events and the motion in a sentence.
   *
   * @param device the device
   * @param units units in which places are told
   * @return such as {@code heel slides left: ladder turns clockwise about a point at (2 m, 3 m)}
   */
  public String words(Device device, UnitSystem units) {
    StringJoiner happens = new StringJoiner(", ");
    for (Event event : events) {
      happens.add(event.part() + " " + event.words());
    }
    String moves =
        motion
            .map(freedom -> freedom.words(device, units))
            .orElse(
                ways > 1
                    ? ways + " independent motions are possible, statics does not tell which"
                    : "");
    if (events.isEmpty()) {
      return moves.isEmpty() ? "no part is at a limit of its own" : moves;
    }
    return moves.isEmpty() ? happens.toString() : happens + ": " + moves;
  }
}
