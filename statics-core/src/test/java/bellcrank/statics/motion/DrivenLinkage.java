package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A random linkage with what drives it.
 *
 * @param kind what it is called
 * @param device its device, as drawn
 * @param drive what drives it
 * @param least least value of the drive
 * @param greatest greatest value of the drive
 * @param effort ask of the effort at the drive; a tension counts against the drive
 * @param branches one number per loop, from −1 to 1, that is zero where two ways of putting the
 *     loop together meet, such as the sine of the angle between two bars
 */
record DrivenLinkage(
    String kind,
    Device device,
    Drive drive,
    double least,
    double greatest,
    String effort,
    List<ToDoubleFunction<Pose>> branches) {

  Travel travel() {
    return Travel.of(device, drive, least, greatest);
  }

  /** The effort that works in the sense of the drive. */
  double signedEffort(double asked) {
    return drive instanceof Drive.Length ? -asked : asked;
  }

  static double sine(Vector one, Vector other) {
    return one.cross(other) / one.norm() / other.norm();
  }

  static double cosine(Vector one, Vector other) {
    return one.dot(other) / one.norm() / other.norm();
  }

  @Override
  public String toString() {
    return kind + " " + drive + " " + device.points() + " " + device.loads();
  }
}
