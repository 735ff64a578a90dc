package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.sheet.Part;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;

/** The input as it was understood, as tables in words. */
final class InputChapter {

  static final String TITLE = "Input as understood";

  private final DeviceFile file;
  private final Device device;
  private final Stated stated;

  private InputChapter(DeviceFile file, UnitSystem units) {
    this.file = file;
    device = file.device();
    stated = new Stated(units);
  }

  static List<Part> parts(DeviceFile file, UnitSystem units) {
    InputChapter chapter = new InputChapter(file, units);
    return PageParts.of(TITLE, chapter::write);
  }

  private void write(Page page) {
    page.paragraph(ReportText.counts(device));
    page.paragraph(
        "Lengths are in "
            + stated.units().unit(Dimension.LENGTH).symbol()
            + ", forces in "
            + stated.units().unit(Dimension.FORCE).symbol()
            + ". x points to the right, y up; angles and couples are positive counter-clockwise."
            + " The force of a connection is told as it acts on the first body that it joins,"
            + " unless another is named. Tension is positive.");
    points(page);
    members(page);
    new ConnectionsTable(device, stated).write(page);
    new LoadsTable(device, stated).write(page);
    cases(page);
    new GroundTable(file.foundations(), stated).write(page);
    drive(page);
  }

  private void points(Page page) {
    Table table =
        new Table()
            .column("point", Table.Kind.WORDS)
            .column(stated.head("x", Dimension.LENGTH), Table.Kind.NUMBERS)
            .column(stated.head("y", Dimension.LENGTH), Table.Kind.NUMBERS);
    device
        .points()
        .forEach(
            (name, at) ->
                table.row(
                    List.of(
                        name,
                        stated.number(at.x(), Dimension.LENGTH),
                        stated.number(at.y(), Dimension.LENGTH))));
    page.heading("Points");
    page.table(table);
  }

  private void members(Page page) {
    if (!device.members().isEmpty()) {
      Table table =
          new Table().column("member", Table.Kind.WORDS).column("what it is", Table.Kind.WORDS);
      device.members().forEach(one -> table.row(List.of(one.name(), MemberWords.of(one))));
      page.heading("Members");
      page.table(table);
    }
    if (!device.joints().isEmpty()) {
      Table table = new Table().column("joint", Table.Kind.WORDS).column("at", Table.Kind.WORDS);
      device.joints().forEach(one -> table.row(List.of(one.name(), one.at())));
      page.heading("Joints");
      page.table(table);
    }
  }

  private void cases(Page page) {
    List<LoadCase> cases = device.cases();
    if (!cases.equals(List.of(LoadCase.ALL_LOADS))) {
      page.heading("Cases");
      cases.forEach(one -> page.item(CaseWords.of(one)));
    }
    if (device.advantage().isPresent()) {
      EffortAndResistance ratio = device.advantage().get();
      page.heading("Mechanical advantage");
      page.item(
          "effort "
              + Listing.quoted(ratio.effort())
              + ", resistance "
              + Listing.quoted(ratio.resistance()));
    }
  }

  private void drive(Page page) {
    file.travel()
        .ifPresent(
            plan -> {
              page.heading("Drive");
              page.item(
                  DriveWords.of(plan.drive())
                      + ", from "
                      + stated.text(plan.from(), plan.dimension())
                      + " to "
                      + stated.text(plan.to(), plan.dimension())
                      + "; "
                      + DriveWords.sense(plan.drive()));
            });
  }
}
