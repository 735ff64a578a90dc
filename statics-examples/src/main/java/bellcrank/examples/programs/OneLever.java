package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.DrawingOptions;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;

/** First lesson: a lever, and what a moment is. A pole over a block lifts the edge of a trough. */
public final class OneLever {

  private OneLever() {}

  /**
   * Tells with which force the hand holds the pole.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // A device is said as one would say it in the yard: first the points, in metres, x to the right
    // and y up; then the parts between them; then how they are held; then what presses on them.
    Device pole =
        Device.named("pole under a trough")
            .point("nose", -0.15, 0)
            .point("block", 0, 0)
            .point("grip", 1.2, 0)
            .member("pole", "nose", "block", "grip")
            .pin("block", "block", "pole", "ground")
            // The trough presses the nose down: a vector in newtons, so y is negative.
            .force("trough", "pole", "nose", Vector.of(0, -960))
            // The hand is what we look for. We say which way it pushes; statics finds how hard.
            .sought("hand", "pole", "grip", Direction.DOWN)
            .advantage("hand", "trough")
            .build();
    Balance balance = Balance.of(pole);

    Notebook notebook = Notebook.of("one-lever", args);
    notebook.write("The pole is " + balance.outcome().words() + ".");

    // A moment is force times distance. Counter-clockwise is positive: the trough, down on the
    // left,
    // turns the pole counter-clockwise; the hand, down on the right, turns it back.
    String[] turns = {"counter-clockwise", "clockwise"};
    notebook.value(
        "moment of the trough about the block",
        balance.number("trough.moment about block"),
        Dimension.MOMENT,
        turns[0],
        turns[1]);
    notebook.value(
        "moment of the hand about the block",
        balance.number("hand.moment about block"),
        Dimension.MOMENT,
        turns[0],
        turns[1]);
    notebook.value("hand", balance.number("hand"), Dimension.FORCE, "down", "up");

    // The block carries both. Ask for y: how hard it pushes the pole up.
    notebook.value("block, on the pole", balance.number("block.y"), Dimension.FORCE, "up", "down");
    notebook.value("advantage", balance.number("advantage"), Dimension.NUMBER);

    // By hand: moments about the block leave the block's own force out, since it has no arm there.
    notebook.working(balance, Detail.FULL, "hand", "block.y");

    notebook.draw("device", DeviceDrawing.of(pole).svg());
    DrawingOptions withArm = DrawingOptions.USUAL.withArm("hand", "block");
    notebook.draw("free-body", FreeBodyDrawing.of(balance, List.of("pole")).with(withArm).svg());
  }
}
