package bellcrank.statics.drawing;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import java.util.List;

/**
 * The forces on a free body drawn tip to tail, in the order of their directions. In balance they
 * close. Couples have no part in it.
 */
public final class ForcePolygon {

  private final FreeBody body;
  private final DrawingOptions options;

  private ForcePolygon(FreeBody body, DrawingOptions options) {
    this.body = body;
    this.options = options;
  }

  /**
   * The polygon of the whole device, cut free from the ground.
   *
   * @param balance its balance
   * @return the polygon
   * @throws ModelException if the device has no bodies
   */
  public static ForcePolygon of(Balance balance) {
    return new ForcePolygon(FreeBody.of(balance), DrawingOptions.USUAL);
  }

  /**
   * The polygon of one body or a group.
   *
   * @param balance the balance of the device
   * @param bodies names of members or joints, at least one
   * @return the polygon
   * @throws ModelException if no body is named, or one that the device does not have
   */
  public static ForcePolygon of(Balance balance, List<String> bodies) {
    return new ForcePolygon(FreeBody.of(balance, bodies), DrawingOptions.USUAL);
  }

  /**
   * This polygon with other options; of these, units and components count.
   *
   * @param other what is shown, and how
   * @return a copy
   */
  public ForcePolygon with(DrawingOptions other) {
    return new ForcePolygon(body, other);
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
   * Whether the forces are all known and add up to nothing.
   *
   * @return false where a force is not known or there is no balance
   */
  public boolean closes() {
    return new PolygonPicture(body, options).closes();
  }

  /**
   * The picture.
   *
   * @return an SVG document with title and description; each force carries {@code data-force},
   *     {@code data-fx} and {@code data-fy} in N
   */
  public String svg() {
    return new PolygonPicture(body, options).svg();
  }
}
