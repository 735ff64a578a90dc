package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Efficiency;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * Tenth lesson: what friction costs, and what it holds. A screw bears down a cider press's beam.
 */
public final class BeamPress {

  private BeamPress() {}

  /**
   * Tells the couple on the screw without and with friction, the efficiency, and self-locking.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    Notebook notebook = Notebook.of("beam-press", args);

    // First all parts smooth. The beam has arms of 0.5 m and 1.5 m, so a third of the cake's 9000 N
    // comes from the screw; and work in = work out tells the couple.
    Balance smooth = Balance.of(press(0, 0));
    notebook.value("screw", smooth.number("screw.tension"), Dimension.FORCE, "pulled", "pressed");
    // The couple about the screw's own axis is positive if it drives the two ends apart.
    // The smooth screw needs the same couple up and down; "raising" is the one against its load.
    notebook.value("couple on a smooth screw", smooth.number("screw.raising"), Dimension.MOMENT);

    // Now the thread rubs with 0.12, and the pin in its bearing with 0.2. A dry pin gives a couple
    // of up to its radius × sin φ × its force, one way or the other. So the couple at the crank may
    // lie anywhere in a range while the press rests.
    Limits limits = Limits.of(press(0.2, 0.12));
    notebook.write("With friction: " + limits.verdict().words());
    Optional<Range> crank = limits.range("crank");
    crank.ifPresent(
        range -> {
          notebook.value("  it is tightened beyond", range.greatest(), Dimension.MOMENT);
          notebook.value("  it surely comes loose beyond", range.least(), Dimension.MOMENT);
          boolean holds = range.least().orElse(1) < 0;
          // Below zero: the crank must be turned back by hand. Let go, the press stays as it is.
          notebook.write(
              holds
                  ? "  it is self-locking: it stays when the crank is let go"
                  : "  it runs back when the crank is let go");
        });

    // Efficiency: of the work at the crank, the share that reaches the cake while it is tightened.
    Optional<Efficiency> efficiency = limits.efficiency();
    if (efficiency.isPresent() && efficiency.get().forward() instanceof Answer.Value forward) {
      notebook.value("efficiency", forward.si(), Dimension.NUMBER);
    }
    // A screw that holds by itself wastes more than half of the work: one pays for the holding.
    notebook.write("Shaking can work a screw loose, and a beam under load stores a blow.");
    notebook.draw("device", DeviceDrawing.of(limits.device()).svg());
  }

  /** The press with coefficients of friction; both are from memory, for greased iron and wood. */
  private static Device press(double inPin, double inThread) {
    return Device.named("beam press")
        .point("hinge", 0, 0)
        .point("ram", 0.5, 0)
        .point("cap", 1.5, 0)
        .point("nut", 1.5, 0.8) // in a yoke above the beam
        .member("beam", "hinge", "ram", "cap")
        .connect(new Pin("hinge", "hinge", List.of("beam", "ground"), 0.025, inPin))
        .connect(
            new Screw(
                "screw",
                End.of("beam", "cap"),
                End.of("ground", "nut"),
                0.008, // metres that it advances in one turn
                0.018, // mean radius of its thread
                inThread))
        .force("cake", "beam", "ram", Vector.of(0, 9000))
        .load(new Sought("crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
        .advantage("crank", "cake")
        .build();
  }
}
