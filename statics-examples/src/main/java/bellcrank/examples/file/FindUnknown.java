package bellcrank.examples.file;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.motion.Unknown;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The one number that a file leaves open, to be found. */
public sealed interface FindUnknown {

  /**
   * In what it is measured.
   *
   * @param travel how the device is driven; empty if the file does not say
   * @return the kind of quantity
   */
  Dimension dimension(Optional<TravelPlan> travel);

  /**
   * The devices that differ in it.
   *
   * @param device the device as drawn
   * @return the device by the value of the unknown, in SI units
   * @throws ModelException if the unknown names what the device does not have
   */
  DoubleFunction<Device> family(Device device);

  /**
   * How far points are moved together from where they are drawn.
   *
   * @param points names of the points, one or more
   * @param along direction that counts positive
   */
  record Move(List<String> points, Direction along) implements FindUnknown {

    /**
     * Copies the list.
     *
     * @param points names of the points
     * @param along direction that counts positive
     */
    public Move {
      points = List.copyOf(points);
    }

    @Override
    public Dimension dimension(Optional<TravelPlan> travel) {
      return Dimension.LENGTH;
    }

    @Override
    public DoubleFunction<Device> family(Device device) {
      return Unknown.pointsAlong(device, points, along);
    }
  }

  /**
   * The place of a point along a direction: to the right its abscissa, up its ordinate.
   *
   * @param point name of the point
   * @param along the direction
   * @param from name of the point from which the place is measured; the origin if empty
   */
  record Place(String point, Direction along, Optional<String> from) implements FindUnknown {

    @Override
    public Dimension dimension(Optional<TravelPlan> travel) {
      return Dimension.LENGTH;
    }

    @Override
    public DoubleFunction<Device> family(Device device) {
      DoubleFunction<Device> moved = Unknown.pointAlong(device, point, along);
      Point start = from.map(device::point).orElse(Point.ORIGIN);
      double drawn = start.to(device.point(point)).dot(along.times(1));
      return place -> moved.apply(place - drawn);
    }
  }

  /**
   * How far points are turned from where they are drawn.
   *
   * @param points names of the points, one or more
   * @param about name of the point about which they turn
   */
  record Turn(List<String> points, String about) implements FindUnknown {

    /**
     * Copies the list.
     *
     * @param points names of the points
     * @param about name of the point about which they turn
     */
    public Turn {
      points = List.copyOf(points);
    }

    @Override
    public Dimension dimension(Optional<TravelPlan> travel) {
      return Dimension.ANGLE;
    }

    @Override
    public DoubleFunction<Device> family(Device device) {
      return Unknown.turnOf(device, points, about);
    }
  }

  /**
   * A number of a load.
   *
   * @param kind which number
   * @param load name of the load
   */
  record OfLoad(Kind kind, String load) implements FindUnknown {

    /** Which number of a load. */
    public enum Kind {
      /** Mass of a weight. */
      MASS("mass", Dimension.MASS),
      /** Size of a force, negative against its drawn direction. */
      FORCE("force", Dimension.FORCE),
      /** Angle of a force, spread load or sought effort from the right. */
      DIRECTION("direction", Dimension.ANGLE),
      /** Moment of a couple. */
      COUPLE("couple", Dimension.MOMENT),
      /** Length of a spread load, its intensities kept. */
      REACH("reach", Dimension.LENGTH),
      /** Depth of a spread load that grows with depth. */
      DEPTH("depth", Dimension.LENGTH);

      private final String key;
      private final Dimension dimension;

      Kind(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
      }

      /**
       * The key in a file.
       *
       * @return a word
       */
      public String key() {
        return key;
      }
    }

    @Override
    public Dimension dimension(Optional<TravelPlan> travel) {
      return kind.dimension;
    }

    @Override
    public DoubleFunction<Device> family(Device device) {
      return switch (kind) {
        case MASS -> Unknown.mass(device, load);
        case FORCE -> Unknown.force(device, load);
        case DIRECTION -> Unknown.direction(device, load);
        case COUPLE -> Unknown.couple(device, load);
        case REACH -> Unknown.reach(device, load);
        case DEPTH -> Unknown.depth(device, load);
      };
    }
  }

  /** The slope of the ground on which a device stands that is drawn level. */
  record Slope() implements FindUnknown {

    @Override
    public Dimension dimension(Optional<TravelPlan> travel) {
      return Dimension.ANGLE;
    }

    @Override
    public DoubleFunction<Device> family(Device device) {
      return Unknown.slope(device);
    }
  }

  /** The drive, over the whole travel. */
  record Driven() implements FindUnknown {

    @Override
    public Dimension dimension(Optional<TravelPlan> travel) {
      return travel.map(TravelPlan::dimension).orElse(Dimension.LENGTH);
    }

    @Override
    public DoubleFunction<Device> family(Device device) {
      return value -> device;
    }
  }
}
