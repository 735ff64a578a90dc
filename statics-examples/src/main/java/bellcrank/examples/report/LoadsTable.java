package bellcrank.examples.report;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import java.util.List;

/**
 * The loads of a device, and what is sought, in words.
 *
 * @param device the device
 * @param stated writes the values
 */
record LoadsTable(Device device, Stated stated) {

  void write(Page page) {
    if (device.loads().isEmpty()) {
      return;
    }
    Table table =
        new Table()
            .column("load", Table.Kind.WORDS)
            .column("what it is", Table.Kind.WORDS)
            .column("where", Table.Kind.WORDS);
    LoadWords words = new LoadWords(device, stated);
    for (Load load : device.loads()) {
      table.row(List.of(load.name(), words.what(load), words.where(load)));
    }
    page.heading("Loads, and what is sought");
    page.table(table);
  }
}
