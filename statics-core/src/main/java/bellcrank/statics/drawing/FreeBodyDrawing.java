package bellcrank.statics.drawing;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.ground.Foundation;
import java.util.List;

/**
 * The picture of a free body: its shape, everything that acts on it from outside with names and
 * values, and a few distances and angles. Under a base that was cut lies its pressure to scale.
 * Forces that statics does not fix are drawn dashed with a question mark. Where there is no
 * balance, only the loads are drawn, and how the bodies start to move.
 */
public final class FreeBodyDrawing {

  private final Balance balance;
  private final FreeBody body;
  private final DrawingOptions options;
  private final List<Foundation> ground;

  private FreeBodyDrawing(
      Balance balance, FreeBody body, DrawingOptions options, List<Foundation> ground) {
    this.balance = balance;
    this.body = body;
    this.options = options;
    this.ground = List.copyOf(ground);
  }

  /**
   * The whole device, cut free from the ground.
   *
   * @param balance its balance
   * @return the drawing
   * @throws ModelException if the device has no bodies
   */
  public static FreeBodyDrawing of(Balance balance) {
    return new FreeBodyDrawing(balance, FreeBody.of(balance), DrawingOptions.USUAL, List.of());
  }

  /**
   * One body or a group.
   *
   * @param balance the balance of the device
   * @param bodies names of members or joints, at least one
   * @return the drawing
   * @throws ModelException if no body is named, or one that the device does not have
   */
  public static FreeBodyDrawing of(Balance balance, List<String> bodies) {
    return new FreeBodyDrawing(
        balance, FreeBody.of(balance, bodies), DrawingOptions.USUAL, List.of());
  }

  /**
   * This drawing with other options.
   *
   * @param other what is shown, and how
   * @return a copy
   * @throws ModelException if the options name a point that the device does not have, or the moment
   *     arm of a force that does not act on the body with a known size other than zero
   */
  public FreeBodyDrawing with(DrawingOptions other) {
    OptionCheck.check(body, other);
    return new FreeBodyDrawing(balance, body, other, ground);
  }

  /**
   * This drawing with what is known of the ground under contact bases: with the length of a base
   * its greatest pressure is told, without it the force per width.
   *
   * @param foundations what is under the contact bases, one at most for each
   * @return a copy
   * @throws ModelException if one is under no contact base of the device
   */
  public FreeBodyDrawing withGround(List<Foundation> foundations) {
    for (Foundation one : foundations) {
      if (!(body.device().connection(one.base()).orElse(null) instanceof ContactBase)) {
        throw new ModelException(
            body.device().name(),
            "foundation",
            '"' + one.base() + '"',
            "the name of a contact base of the device");
      }
    }
    return new FreeBodyDrawing(balance, body, options, foundations);
  }

  /**
   * What is drawn.
   *
   * @return the bodies and what acts on them
   */
  public FreeBody freeBody() {
    return body;
  }

  /**
   * The picture.
   *
   * @return an SVG document with title and description; each force carries its numbers as data
   *     attributes: {@code data-force}, {@code data-fx} and {@code data-fy} in N, {@code data-x}
   *     and {@code data-y} in m; the strip of a pressure {@code data-pressure} and {@code
   *     data-normal} in N
   */
  public String svg() {
    return new FreeBodyPicture(balance, body, options, ground).svg();
  }
}
