package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.sheet.Part;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Locale;

/** What the answers rest on. Only what the device has is told. */
final class AssumptionsChapter {

  static final String TITLE = "Assumptions";

  private final DeviceFile file;
  private final UnitSystem units;

  private AssumptionsChapter(DeviceFile file, UnitSystem units) {
    this.file = file;
    this.units = units;
  }

  static List<Part> parts(DeviceFile file, UnitSystem units) {
    return PageParts.of(TITLE, new AssumptionsChapter(file, units)::write);
  }

  private void write(Page page) {
    Device device = file.device();
    page.item("The device and all its loads lie in one plane. Nothing out of it is looked at.");
    page.item(
        "Members are rigid and keep the shape in which they are drawn. They weigh nothing beyond"
            + " the weights that are stated.");
    page.item("Loads act slowly. There is no shock and no acceleration.");
    if (device.loads().stream().anyMatch(Weight.class::isInstance)) {
      gravity(page, device.gravity());
    }
    if (has(Pin.class)) {
      page.item("Pins turn freely unless friction is stated.");
    }
    if (has(Strut.class)) {
      page.item("Struts carry force along the line between their ends only.");
    }
    if (has(Line.class) || has(Reeving.class) || has(Wrap.class)) {
      page.item(
          "Lines and ropes only pull, run straight between the parts that they meet, do not"
              + " stretch, and weigh nothing.");
    }
    if (has(Contact.class) || has(ContactBase.class)) {
      page.item(
          "Contacts only push. Friction is dry: it holds up to its coefficient times the normal"
              + " force, whatever the area and the speed.");
    }
    if (has(Wrap.class) || has(Screw.class)) {
      page.item("Friction of wraps and screws has the coefficient that is stated.");
    }
    if (device.members().stream().anyMatch(member -> member.count() > 1)
        || !device.counts().isEmpty()) {
      page.item("Parts that are stated several times share their forces evenly.");
    }
    file.tables().forEach(one -> page.item(TakenWords.of(one)));
  }

  private boolean has(Class<? extends Connection> kind) {
    return file.device().connections().stream().anyMatch(kind::isInstance);
  }

  private void gravity(Page page, Vector gravity) {
    boolean us = units.equals(UnitSystem.US);
    page.item(
        "Weights are masses times "
            + String.format(Locale.ROOT, "%.5f", gravity.norm())
            + " m/s²"
            + (us
                ? " (" + String.format(Locale.ROOT, "%.3f", gravity.norm() / 0.3048) + " ft/s²)"
                : "")
            + (gravity.norm() == 0
                ? "."
                : ", " + DirectionWords.of(gravity.x(), gravity.y()) + "."));
  }
}
