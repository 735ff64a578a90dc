package bellcrank.statics.study;

import bellcrank.statics.device.Device;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.strength.Sizing;
import java.util.List;
import java.util.Optional;

/**
 * What is studied: a device, the ground under it and what it is made of, as one value.
 *
 * @param device the device
 * @param foundations the ground under its contact bases
 * @param sizing sections, materials and details; empty if strength is no matter
 */
public record Model(Device device, List<Foundation> foundations, Optional<Sizing> sizing) {

  /**
   * Copies the list.
   *
   * @param device the device
   * @param foundations the ground under its contact bases
   * @param sizing sections, materials and details; empty if strength is no matter
   */
  public Model {
    foundations = List.copyOf(foundations);
  }

  /**
   * A device alone.
   *
   * @param device the device
   * @return it without stated ground and without a sizing
   */
  public static Model of(Device device) {
    return new Model(device, List.of(), Optional.empty());
  }

  /**
   * The model with another device.
   *
   * @param other the device
   * @return a copy
   */
  public Model with(Device other) {
    return new Model(other, foundations, sizing);
  }

  /**
   * The model on other ground.
   *
   * @param others the ground under its contact bases
   * @return a copy
   */
  public Model with(List<Foundation> others) {
    return new Model(device, others, sizing);
  }

  /**
   * The model with a sizing.
   *
   * @param other sections, materials and details
   * @return a copy
   */
  public Model with(Sizing other) {
    return new Model(device, foundations, Optional.of(other));
  }
}
