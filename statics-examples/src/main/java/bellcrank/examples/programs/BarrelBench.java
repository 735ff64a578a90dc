package bellcrank.examples.programs;

import bellcrank.examples.report.InsideChart;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Side;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.Extremes;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.InternalForces;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.util.Optional;

/** Third lesson: a beam on two supports, and the forces inside it. Barrels lie on a bench. */
public final class BarrelBench {

  private static final UnitSystem SI = UnitSystem.SI;

  private BarrelBench() {}

  /**
   * Tells the support forces, and shear force and bending moment along the beam.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // One end on a pin, the other support a roller: x, y and a moment want just three unknowns.
    // With
    // two pins the beam could be wedged between them, and statics alone would not tell how hard.
    Device bench =
        Device.named("barrel bench")
            .point("left", 0, 0)
            .point("right", 3, 0)
            .point("end", 4, 0)
            .member("beam", "left", "end")
            .pin("left", "left", "beam", "ground")
            .roller("right", "right", "beam", "ground", Direction.UP)
            // Barrels side by side: 600 N on each metre between the supports, evenly.
            .load(
                new SpreadLoad(
                    "barrels",
                    "beam",
                    "left",
                    "right",
                    600,
                    600,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .force("tub", "beam", "end", Vector.of(0, -300))
            .build();
    Balance balance = Balance.of(bench);
    Notebook notebook = Notebook.of("barrel-bench", args);
    notebook.value("left trestle", balance.number("left.y"), Dimension.FORCE, "up", "down");
    notebook.value("right trestle", balance.number("right"), Dimension.FORCE, "up", "down");

    // Cut the beam anywhere and hold what is left of the cut: it takes a shear force V and a
    // bending
    // moment M. From left to right, V is positive if the left part is pushed up, M if the beam
    // sags.
    InternalForces inside = balance.internalForces("beam");
    BarForces beam = inside.bar("left", "end").orElseThrow();
    for (double at : new double[] {0, 1, 2, 3, 4}) {
      // At a support V jumps, so we say on which side of the cut we look.
      Side side = at == 0 ? Side.AFTER : Side.BEFORE;
      notebook.write(
          "at %s: V %s, M %s"
              .formatted(
                  SI.format(at, Dimension.LENGTH, 4),
                  SI.format(beam.shear(at, side), Dimension.FORCE, 4),
                  SI.format(beam.moment(at, side), Dimension.MOMENT, 4)));
    }
    // M is greatest where V passes through zero; over the right trestle the beam bends the other
    // way.
    Extremes moment = beam.extremes(InsideForce.MOMENT);
    notebook.value("sags most, M", moment.greatest().value(), Dimension.MOMENT);
    notebook.value("  there", moment.greatest().at(), Dimension.LENGTH);
    notebook.value("hogs most, M", moment.least().value(), Dimension.MOMENT);
    notebook.value("  there", moment.least().at(), Dimension.LENGTH);
    notebook.write("Whether the beam is strong enough is another question, for its cross-section.");

    notebook.draw("free-body", FreeBodyDrawing.of(balance).svg());
    System.setProperty("java.awt.headless", "true"); // the chart is drawn without a screen
    notebook.draw("inside", InsideChart.svg(inside, "barrel bench", SI));
  }
}
