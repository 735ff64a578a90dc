package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.ForcePolygon;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;

/**
 * Seventh lesson: a truss, by joints and by a section. It carries the press-house's lean-to roof.
 */
public final class RoofTruss {

  private static final List<String> BARS = List.of("AD", "DB", "AE", "EC", "DE", "EB", "BC");

  private RoofTruss() {}

  /**
   * Tells the forces in the bars.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // The lower chord is level, the upper one rises 3 in 4 from the eaves A to the ridge C. A joint
    // is a pin seen as a body without size; a bar between two joints is a strut.
    DeviceBuilder builder =
        Device.named("lean-to truss")
            .point("A", 0, 0)
            .point("B", 4, 0)
            .point("C", 4, 3)
            .point("D", 2, 0)
            .point("E", 2, 1.5);
    for (String joint : List.of("A", "B", "C", "D", "E")) {
      builder.joint(joint);
    }
    for (String bar : BARS) {
      String from = bar.substring(0, 1);
      String to = bar.substring(1);
      builder.strut(bar, End.of(from, from), End.of(to, to));
    }
    Device truss =
        builder
            .pin("support A", "A", "A", "ground")
            .roller("support B", "B", "B", "ground", Direction.UP)
            .force("roof", "E", "E", Vector.of(0, -4800))
            .force("ridge", "C", "C", Vector.of(0, -2400))
            .build();
    Balance balance = Balance.of(truss);
    Notebook notebook = Notebook.of("roof-truss", args);

    // Five joints give two equations each; seven bars and three support forces are ten unknowns.
    notebook.write("The truss is " + balance.outcome().words() + ".");
    notebook.value("support A", balance.number("support A.y"), Dimension.FORCE, "up", "down");
    notebook.value("support B", balance.number("support B"), Dimension.FORCE, "up", "down");
    for (String bar : BARS) {
      notebook.value(bar, balance.number(bar + ".tension"), Dimension.FORCE, "pulled", "pressed");
    }
    // Look at joint D: three bars, no load, and two of them in one line. The third, DE, has nothing
    // to push against. Bars without force are found so before anything is worked out.

    // By joints: from joint to joint, two unknown bars at a time. A section comes in where it is
    // shorter.
    notebook.write("");
    notebook.write("All bars:");
    notebook.working(balance, Detail.OUTLINE);

    // By a section: if only one bar is wanted, cut the truss through it, and take moments about the
    // point through which the other cut bars pass. One equation, and not even the supports are
    // needed.
    notebook.write("");
    notebook.write("Bar EB alone:");
    notebook.working(balance, Detail.FULL, "EB.tension");

    notebook.write("");
    notebook.write("Pressed bars may buckle; statics of stiff bars does not see that.");
    notebook.draw("device", DeviceDrawing.of(truss).svg());
    notebook.draw("polygon-of-joint-B", ForcePolygon.of(balance, List.of("B")).svg());
  }
}
