package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;

/** Fifth lesson: bodies joined by a pin, and symmetry. Two hands hold a log in tongs. */
public final class WoodTongs {

  private WoodTongs() {}

  /**
   * Tells how hard the tongs grip, and what their pin bears.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // Two crossed arms, one the mirror image of the other. Nothing joins them to the ground: the
    // tongs float in the air. The log is a strut between the jaws; it can only be pressed or
    // pulled.
    Device tongs =
        Device.named("wood tongs")
            .point("upper grip", -0.36, 0.1)
            .point("lower grip", -0.36, -0.1)
            .point("crossing", 0, 0)
            .point("upper jaw", 0.09, 0.05)
            .point("lower jaw", 0.09, -0.05)
            .member("first arm", "upper grip", "crossing", "lower jaw")
            .member("second arm", "lower grip", "crossing", "upper jaw")
            .pin("crossing", "crossing", "first arm", "second arm")
            .strut("log", End.of("first arm", "lower jaw"), End.of("second arm", "upper jaw"))
            .force("upper hand", "first arm", "upper grip", Vector.of(0, -80))
            .force("lower hand", "second arm", "lower grip", Vector.of(0, 80))
            .build();
    Balance balance = Balance.of(tongs);
    Notebook notebook = Notebook.of("wood-tongs", args);

    // They are in balance for these loads only: pressed by one hand alone, they would be off.
    notebook.write("The tongs are " + balance.outcome().words() + ".");

    // Take one arm alone. About the crossing the pin has no arm, so the hand's moment must be the
    // log's: 80 N × 0.36 m = log × 0.09 m.
    notebook.value(
        "log", balance.number("log.tension"), Dimension.FORCE, "pulled apart", "pressed together");

    // The pin's force is told on the first of the bodies that it joins, here the first arm. Hand
    // and
    // log both push this arm down, so the pin has to hold it up with their sum.
    notebook.value(
        "crossing on the first arm", balance.number("crossing.y"), Dimension.FORCE, "up", "down");
    notebook.value(
        "crossing on the second arm",
        balance.number("crossing.y on second arm"),
        Dimension.FORCE,
        "up",
        "down");
    // Mirror the tongs about the level line: both arms change places, and x stays x. What the pin
    // gives one arm along x it would have to give the other too, but it gives them opposite forces.
    // So by symmetry alone there is nothing along x.
    notebook.value("crossing along x", balance.number("crossing.x"), Dimension.FORCE);

    // The pin bears more than the log does, and it is small. And fingers are softer than logs.
    notebook.write("Keep fingers out of jaws and crossing: both press harder than the hand.");

    notebook.draw("device", DeviceDrawing.of(tongs).svg());
    notebook.draw("first-arm", FreeBodyDrawing.of(balance, List.of("first arm")).svg());
    notebook.draw("second-arm", FreeBodyDrawing.of(balance, List.of("second arm")).svg());
  }
}
