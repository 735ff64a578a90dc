package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * The connections of a device in words.
 *
 * @param device the device
 * @param stated writes the values
 */
record ConnectionsTable(Device device, Stated stated) {

  void write(Page page) {
    if (device.connections().isEmpty()) {
      return;
    }
    Table table =
        new Table()
            .column("connection", Table.Kind.WORDS)
            .column("kind", Table.Kind.WORDS)
            .column("at", Table.Kind.WORDS)
            .column("joins", Table.Kind.WORDS)
            .column("stated", Table.Kind.WORDS);
    ConnectionWords words = new ConnectionWords(stated);
    for (Connection one : device.connections()) {
      int count = device.counts().getOrDefault(one.name(), 1);
      String several = count > 1 ? count + " side by side" : "";
      String detail = words.of(one);
      table.row(
          List.of(
              one.name(),
              one.kind(),
              each(one.places(), " – "),
              each(one.bodies(), ", "),
              detail + (detail.isEmpty() || several.isEmpty() ? "" : "; ") + several));
    }
    page.heading("Connections");
    page.table(table);
  }

  private static String each(List<String> names, String between) {
    return String.join(between, new LinkedHashSet<>(names));
  }
}
