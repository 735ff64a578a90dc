package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;

/** Sixth lesson: ropes and sheaves. A jib at the loft door hoists a crate. */
public final class LoftJib {

  private LoftJib() {}

  /**
   * Tells rope, tie and heel, with an ideal sheave and with one that rubs.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    Notebook notebook = Notebook.of("loft-jib", args);

    // A rope over a sheave that turns freely has one tension: it pulls the crate as hard as the
    // winch. The sheave hands on both pulls, and their turning about its axle cancels.
    notebook.write("A sheave without losses:");
    Balance ideal = Balance.of(jib(1, Reeving.Hauling.IDEAL));
    tell(notebook, ideal);
    notebook.working(ideal, Detail.OUTLINE, "rope.tension", "tie.tension", "heel.x", "heel.y");

    // A real sheave rubs. While the crate goes up, nine tenths of the winch's pull reach it.
    notebook.write("");
    notebook.write("Hoisting over a sheave with an efficiency of 0.9:");
    Balance raising = Balance.of(jib(0.9, Reeving.Hauling.RAISING));
    tell(notebook, raising);

    notebook.write("Nobody stands below: what hangs may fall.");
    notebook.draw("device", DeviceDrawing.of(ideal.device()).svg());
    notebook.draw("jib", FreeBodyDrawing.of(ideal, List.of("jib")).svg());
  }

  /** The jib rises 3 in 4; the rope from the winch runs along it and over the sheave at its tip. */
  private static Device jib(double efficiency, Reeving.Hauling hauling) {
    return Device.named("loft jib")
        .point("heel", 0, 2)
        .point("tip", 1.6, 3.2)
        .point("ring", 0, 3.2)
        .point("winch", 0.02, 2.14) // a sheave's radius, 0.1 m, above the line of the jib
        .point("crate", 1.7, 1) // below the right-hand side of the sheave
        .member("jib", "heel", "tip")
        .joint("crate")
        .pin("heel", "heel", "jib", "ground")
        .line("tie", End.of("jib", "tip"), End.of("ground", "ring"))
        .connect(
            new Reeving(
                "rope",
                List.of(
                    Stop.end("ground", "winch"),
                    // from the winch the rope turns clockwise over the sheave
                    Stop.sheave("jib", "tip", 0.1, Turn.CLOCKWISE),
                    Stop.end("crate", "crate")),
                efficiency,
                hauling))
        .force("goods", "crate", "crate", Vector.of(0, -540))
        .build();
  }

  private static void tell(Notebook notebook, Balance balance) {
    // The crate may swing, so a motion is free; but hanging straight it has no reason to.
    notebook.write("The jib is " + balance.outcome().words() + ".");
    // A reeving is told from its first stop: tension at the winch, end tension at the crate.
    notebook.value("rope at the winch", balance.number("rope.tension"), Dimension.FORCE);
    notebook.value("rope at the crate", balance.number("rope.end tension"), Dimension.FORCE);
    // A rope that had to push would be told as a broken condition; tension is positive.
    notebook.value(
        "tie", balance.number("tie.tension"), Dimension.FORCE, "pulled", "would be pressed");
    notebook.value(
        "heel on the jib, along x",
        balance.number("heel.x"),
        Dimension.FORCE,
        "to the right",
        "to the left");
    notebook.value(
        "heel on the jib, along y", balance.number("heel.y"), Dimension.FORCE, "up", "down");
  }
}
