package bellcrank.examples.file;

import bellcrank.statics.device.DeviceBuilder;
import java.util.List;

/**
 * What the readers of the sections of one file share.
 *
 * @param device collects the parts that could be read
 * @param problems collects what is wrong
 * @param values reads numbers
 * @param points known points
 * @param bodies known bodies
 * @param parts known connections and loads
 * @param index where the parts stand
 * @param tables collects what was taken from tables
 */
record Reading(
    DeviceBuilder device,
    Problems problems,
    Values values,
    PointNames points,
    BodyNames bodies,
    PartNames parts,
    PartIndex index,
    List<TableFriction> tables) {

  Directions directions() {
    return new Directions(values, points);
  }
}
