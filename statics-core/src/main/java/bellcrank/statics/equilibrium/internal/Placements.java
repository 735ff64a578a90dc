package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;

/**
 * Where the bodies are, in scaled coordinates: q = (p − middle) / size. A body's drawn point q goes
 * to R·q + t. The ground has index −1 and stays.
 */
public final class Placements {

  private final double middleX;
  private final double middleY;
  private final double size;
  private final double[] cos;
  private final double[] sin;
  private final double[] shiftX;
  private final double[] shiftY;
  private final double[] turn;

  Placements(int bodies, double middleX, double middleY, double size) {
    this.middleX = middleX;
    this.middleY = middleY;
    this.size = size;
    cos = new double[bodies];
    sin = new double[bodies];
    shiftX = new double[bodies];
    shiftY = new double[bodies];
    turn = new double[bodies];
    drawn();
  }

  void drawn() {
    for (int body = 0; body < cos.length; body++) {
      put(body, 1, 0, 0, 0, 0);
    }
  }

  private void put(int body, double c, double s, double x, double y, double angle) {
    cos[body] = c;
    sin[body] = s;
    shiftX[body] = x;
    shiftY[body] = y;
    turn[body] = angle;
  }

  /** Takes the bodies' frames from a pose; {@code names[b]} is the body that carries body b. */
  void take(Pose pose, String[] names) {
    if (pose.isDrawn()) {
      drawn();
      return;
    }
    for (int body = 0; body < names.length; body++) {
      Frame frame = pose.frame(names[body]);
      if (frame.equals(Frame.IDENTITY)) {
        put(body, 1, 0, 0, 0, 0);
        continue;
      }
      double c = Math.cos(frame.turn());
      double s = Math.sin(frame.turn());
      put(
          body,
          c,
          s,
          (c * middleX - s * middleY + frame.shift().x() - middleX) / size,
          (s * middleX + c * middleY + frame.shift().y() - middleY) / size,
          frame.turn());
    }
  }

  /** Gives every body a place of its own that fits nothing: what is zero then is zero always. */
  void scatter() {
    for (int body = 0; body < cos.length; body++) {
      double angle = 0.7 + 0.61803398875 * (body + 1);
      put(
          body,
          Math.cos(angle),
          Math.sin(angle),
          0.13 + 0.071 * Math.sin(3.7 * body),
          -0.17 + 0.083 * Math.cos(2.3 * body),
          angle);
    }
  }

  double x(int body, double qx, double qy) {
    return body < 0 ? qx : cos[body] * qx - sin[body] * qy + shiftX[body];
  }

  double y(int body, double qx, double qy) {
    return body < 0 ? qy : sin[body] * qx + cos[body] * qy + shiftY[body];
  }

  double turnedX(int body, double dx, double dy) {
    return body < 0 ? dx : cos[body] * dx - sin[body] * dy;
  }

  double turnedY(int body, double dx, double dy) {
    return body < 0 ? dy : sin[body] * dx + cos[body] * dy;
  }

  double turn(int body) {
    return body < 0 ? 0 : turn[body];
  }
}
