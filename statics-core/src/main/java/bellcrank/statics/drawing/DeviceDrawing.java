package bellcrank.statics.drawing;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import java.util.ArrayList;
import java.util.List;

/**
 * The picture of a device as it is drawn, with its supports, ropes, springs and loads; other poses
 * as light outlines.
 */
public final class DeviceDrawing {

  private final Device device;
  private final DrawingOptions options;
  private final List<Pose> poses;
  private final List<Followed> followed;

  /**
   * A point whose path is drawn.
   *
   * @param body name of the body that carries it
   * @param point name of the point
   * @param poses the poses over which it is followed; those of the drawing if empty
   */
  record Followed(String body, String point, List<Pose> poses) {}

  private DeviceDrawing(
      Device device, DrawingOptions options, List<Pose> poses, List<Followed> followed) {
    this.device = device;
    this.options = options;
    this.poses = List.copyOf(poses);
    this.followed = List.copyOf(followed);
  }

  /**
   * A device as drawn, under its first case of loads.
   *
   * @param device the device
   * @return the drawing
   */
  public static DeviceDrawing of(Device device) {
    return new DeviceDrawing(device, DrawingOptions.USUAL, List.of(), List.of());
  }

  /**
   * This drawing with other options; moment arms have no part in it.
   *
   * @param other what is shown, and how
   * @return a copy
   * @throws ModelException if the options name a point that the device does not have
   */
  public DeviceDrawing with(DrawingOptions other) {
    OptionCheck.check(device, other);
    return new DeviceDrawing(device, other, poses, followed);
  }

  /**
   * This drawing with other poses as light outlines.
   *
   * @param others poses of a travel, in its order
   * @return a copy
   */
  public DeviceDrawing withPoses(List<Pose> others) {
    return new DeviceDrawing(device, options, others, followed);
  }

  /**
   * This drawing with the path of a point over the poses.
   *
   * @param body name of the body that carries it
   * @param point name of the point
   * @return a copy
   * @throws ModelException if the device has no such body or point
   */
  public DeviceDrawing withPathOf(String body, String point) {
    return withPathOf(body, point, List.of());
  }

  /**
   * This drawing with the path of a point over poses of its own, which are not drawn themselves.
   *
   * @param body name of the body that carries it
   * @param point name of the point
   * @param over poses of a travel, in its order; those of the drawing if empty
   * @return a copy
   * @throws ModelException if the device has no such body or point
   */
  public DeviceDrawing withPathOf(String body, String point, List<Pose> over) {
    device.point(point);
    if (device.body(body).isEmpty()) {
      throw new ModelException(
          device.name(),
          "body",
          '"' + body + '"',
          "a member or joint: " + String.join(", ", FreeBody.names(device)));
    }
    List<Followed> more = new ArrayList<>(followed);
    more.add(new Followed(body, point, List.copyOf(over)));
    return new DeviceDrawing(device, options, poses, more);
  }

  /**
   * The picture.
   *
   * @return an SVG document with title and description
   */
  public String svg() {
    return new DevicePicture(device, options, poses, followed).svg();
  }
}
