package bellcrank.examples.programs;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.units.Dimension;
import java.io.IOException;
import java.util.List;

/** Fourth lesson: two-force and three-force bodies. A prop on the floor holds a hatch open. */
public final class HatchProp {

  private HatchProp() {}

  /**
   * Tells the forces at hatch, prop and floor.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    Device hatch =
        Device.named("propped hatch")
            .point("hinge", 0, 0)
            .point("middle", 0.8, 0.6)
            .point("head", 1.2, 0.9)
            .point("edge", 1.6, 1.2)
            .point("foot", 1.575, 0)
            .member("hatch", "hinge", "head", "edge")
            .member("prop", "head", "foot")
            .pin("hinge", "hinge", "hatch", "ground")
            .pin("head", "head", "hatch", "prop")
            // The floor pushes the prop up, and rubs: at most half as hard as it pushes.
            .connect(new Contact("floor", "foot", "prop", "ground", Direction.UP, 0.5, 0.5))
            .force("weight", "hatch", "middle", Vector.of(0, -189))
            .build();
    Balance balance = Balance.of(hatch);
    Notebook notebook = Notebook.of("hatch-prop", args);
    notebook.write("The hatch is " + balance.outcome().words() + ".");

    // Forces act on the prop at two places only. They are in balance only if both lie in the line
    // through these places, whatever their size: the prop is a two-force body.
    notebook.value("prop presses the hatch with", balance.number("head.size"), Dimension.FORCE);
    // On the hatch act three forces. If two lines meet in a point, the third passes through it too;
    // otherwise it would turn the hatch. So the hinge's force points to where the weight's line and
    // the prop's line meet, at x = 0.8 m and y = 1.86 m. The picture of the hatch shows it.
    notebook.value(
        "hinge on the hatch, along x",
        balance.number("hinge.x"),
        Dimension.FORCE,
        "to the right",
        "to the left");
    notebook.value(
        "hinge on the hatch, along y", balance.number("hinge.y"), Dimension.FORCE, "up", "down");
    notebook.value(
        "direction of the hinge's force", balance.number("hinge.direction"), Dimension.ANGLE);

    // The floor has to push along the prop, so it must rub. Friction is positive to the right here.
    notebook.value(
        "floor pushes the prop", balance.number("floor.normal"), Dimension.FORCE, "up", "down");
    notebook.value(
        "floor rubs on the prop",
        balance.number("floor.friction"),
        Dimension.FORCE,
        "to the right",
        "to the left");
    // How much of the friction is needed? Less than all of it leaves something for a wet floor.
    if (Limits.of(hatch).frictionFactor() instanceof FrictionFactor.Least least) {
      notebook.value("share of the friction that is needed", least.factor(), Dimension.NUMBER);
    }
    notebook.write("A prop that is kicked falls: a planar estimate does not know who walks by.");

    notebook.working(balance, Detail.OUTLINE, "head.size", "hinge.x", "hinge.y");

    notebook.draw("device", DeviceDrawing.of(hatch).svg());
    notebook.draw("hatch", FreeBodyDrawing.of(balance, List.of("hatch")).svg());
    notebook.draw("prop", FreeBodyDrawing.of(balance, List.of("prop")).svg());
  }
}
