package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;

/**
 * Where the bodies are, in scaled coordinates: q = (p − middle) / size. A body's drawn point q goes
 * to R·q + t. The ground has index −1 and stays.
 */
public final class Placements {

  private static final int WIDTH = 5;

  private final Assembly assembly;
  // cosine and sine of the turn, shift to the right and up, turn of each body side by side
  private final double[] frames;

  /** Names of the bodies' frames; read from the assembly once a pose other than the drawn comes. */
  private String[] names = {};

  private boolean drawn = true;

  Placements(Assembly assembly) {
    this.assembly = assembly;
    frames = new double[WIDTH * assembly.bodyCount()];
  }

  private void put(int body, double turn, double c, double s, double x, double y) {
    int k = WIDTH * body;
    frames[k] = c;
    frames[k + 1] = s;
    frames[k + 2] = x;
    frames[k + 3] = y;
    frames[k + 4] = turn;
  }

  /** Puts a body to a turn and a shift, in scaled coordinates about the device's middle. */
  void put(int body, double turn, double x, double y) {
    drawn = false;
    put(body, turn, Math.cos(turn), Math.sin(turn), x, y);
  }

  /** Takes the bodies' frames from a pose. */
  void take(Pose pose) {
    drawn = pose.isDrawn();
    if (drawn) {
      return;
    }
    if (names.length == 0) {
      names = assembly.frameNames();
    }
    double middleX = assembly.scale().middleX();
    double middleY = assembly.scale().middleY();
    double perSize = 1 / assembly.scale().size();
    for (int body = 0; body < names.length; body++) {
      Frame frame = pose.frame(names[body]);
      double c = frame.cosine();
      double s = frame.sine();
      // the frame turns about the world's origin, scaled coordinates about the middle
      put(
          body,
          frame.turn(),
          c,
          s,
          (c * middleX - s * middleY + frame.shift().x() - middleX) * perSize,
          (s * middleX + c * middleY + frame.shift().y() - middleY) * perSize);
    }
  }

  /** Takes over other placements of the same bodies. */
  void copy(Placements from) {
    drawn = from.drawn;
    System.arraycopy(from.frames, 0, frames, 0, frames.length);
  }

  /** Gives every body a place of its own that fits nothing: what is zero then is zero always. */
  void scatter() {
    drawn = false;
    for (int body = 0; body < assembly.bodyCount(); body++) {
      double angle = 0.7 + 0.61803398875 * (body + 1);
      put(
          body,
          angle,
          Math.cos(angle),
          Math.sin(angle),
          0.13 + 0.071 * Math.sin(3.7 * body),
          -0.17 + 0.083 * Math.cos(2.3 * body));
    }
  }

  private boolean stays(int body) {
    return drawn || body < 0;
  }

  double x(int body, double qx, double qy) {
    int k = WIDTH * body;
    return stays(body) ? qx : frames[k] * qx - frames[k + 1] * qy + frames[k + 2];
  }

  double y(int body, double qx, double qy) {
    int k = WIDTH * body;
    return stays(body) ? qy : frames[k + 1] * qx + frames[k] * qy + frames[k + 3];
  }

  double turnedX(int body, double dx, double dy) {
    int k = WIDTH * body;
    return stays(body) ? dx : frames[k] * dx - frames[k + 1] * dy;
  }

  double turnedY(int body, double dx, double dy) {
    int k = WIDTH * body;
    return stays(body) ? dy : frames[k + 1] * dx + frames[k] * dy;
  }

  /** Cosine of a body's turn. */
  double cosine(int body) {
    return stays(body) ? 1 : frames[WIDTH * body];
  }

  /** Sine of a body's turn. */
  double sine(int body) {
    return stays(body) ? 0 : frames[WIDTH * body + 1];
  }

  double turn(int body) {
    return stays(body) ? 0 : frames[WIDTH * body + 4];
  }
}
