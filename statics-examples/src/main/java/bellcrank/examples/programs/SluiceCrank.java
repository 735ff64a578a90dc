package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.DrawingOptions;
import bellcrank.statics.drawing.ForcePolygon;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;

/** Second lesson: a bell crank, and forces that are not upright. A crank lifts a sluice board. */
public final class SluiceCrank {

  private SluiceCrank() {}

  /**
   * Tells the pull in the cord, and what the pivot bears.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // Two arms at a right angle turn about one pivot: that is a bell crank. It hands a force round
    // a corner. The board hangs on the level arm, the cord is tied to the upright one.
    Device crank =
        Device.named("sluice crank")
            .point("toe", -0.24, 0)
            .point("pivot", 0, 0)
            .point("eye", 0, 0.36)
            .member("crank", "toe", "pivot", "eye")
            .pin("pivot", "pivot", "crank", "ground")
            .force("board", "crank", "toe", Vector.of(0, -150))
            // The cord goes to the right and down: 4 along and 3 down. Only the direction counts.
            .sought("cord", "crank", "eye", Direction.from(4, -3))
            .build();
    Balance balance = Balance.of(crank);
    Notebook notebook = Notebook.of("sluice-crank", args);

    // The arm of a force is the distance of its line from the point, not the length of the metal.
    // The cord's line passes the pivot at 0.36 × 4/5 = 0.288 m, so 150 × 0.24 / 0.288 = 125 N. It
    // turns the crank clockwise, which is negative.
    double pull = balance.number("cord").orElseThrow();
    double moment = balance.number("cord.moment about pivot").orElseThrow();
    notebook.value("cord", pull, Dimension.FORCE);
    notebook.value("its moment about the pivot", moment, Dimension.MOMENT);
    notebook.value("so its arm is", Math.abs(moment / pull), Dimension.LENGTH);

    // A force can be told by its parts along x and y ...
    notebook.value(
        "pivot on the crank, along x",
        balance.number("pivot.x"),
        Dimension.FORCE,
        "to the right",
        "to the left");
    notebook.value(
        "pivot on the crank, along y", balance.number("pivot.y"), Dimension.FORCE, "up", "down");
    // ... or by its size and its direction, an angle from the x axis, counter-clockwise.
    notebook.value("pivot on the crank, size", balance.number("pivot.size"), Dimension.FORCE);
    notebook.value(
        "pivot on the crank, direction", balance.number("pivot.direction"), Dimension.ANGLE);
    // Action and reaction: the crank pushes its post the other way, just as hard.
    notebook.value(
        "pivot on the ground, along y",
        balance.number("pivot.y on ground"),
        Dimension.FORCE,
        "up",
        "down");

    notebook.working(balance, Detail.OUTLINE, "cord", "pivot.x", "pivot.y");

    List<String> alone = List.of("crank");
    DrawingOptions withArm = DrawingOptions.USUAL.withArm("cord", "pivot");
    notebook.draw("free-body", FreeBodyDrawing.of(balance, alone).with(withArm).svg());
    // Forces in balance, drawn tip to tail, come back to where they began.
    ForcePolygon polygon = ForcePolygon.of(balance, alone);
    notebook.write("the polygon of forces " + (polygon.closes() ? "closes" : "stays open"));
    notebook.draw("polygon", polygon.svg());
  }
}
