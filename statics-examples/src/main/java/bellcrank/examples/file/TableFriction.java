package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.ground.FrictionRow;
import bellcrank.statics.ground.FrictionTable;
import bellcrank.statics.ground.Span;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A coefficient of friction that a file takes from the friction table.
 *
 * @param part name of the connection whose friction it is
 * @param row name of the row of the table
 * @param take which end of the row's range; needed if the row has a range
 */
public record TableFriction(String part, String row, Optional<Take> take) {

  /** An end of a range. */
  public enum Take {
    /** The lowest value, where slipping does harm. */
    LOWEST,
    /** The highest value, where sticking does harm. */
    HIGHEST;

    /**
     * Its word in a file.
     *
     * @return {@code lowest} or {@code highest}
     */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Checks that the table has such a value.
   *
   * @param part name of the connection whose friction it is
   * @param row name of the row of the table
   * @param take which end of the row's range; needed if the row has a range
   * @throws ModelException if there is no such row, or it has a range of which no end is taken
   */
  public TableFriction {
    Span span = FrictionTable.named(row).staticFriction();
    if (!span.isSingle() && take.isEmpty()) {
      throw new ModelException(
          part,
          "friction",
          "a range from " + span.low() + " to " + span.high(),
          "take: lowest for " + span.low() + ", or take: highest for " + span.high());
    }
  }

  /**
   * The row of the table.
   *
   * @return the row, with its source
   */
  public FrictionRow tableRow() {
    return FrictionTable.named(row);
  }

  /**
   * The value.
   *
   * @return coefficient of static friction, 0 or more
   */
  public double value() {
    Span span = tableRow().staticFriction();
    return take.filter(Take.HIGHEST::equals).isPresent() ? span.high() : span.low();
  }

  /** Checks that a device has this friction. */
  void check(Device device) {
    OptionalDouble own = friction(device.connection(part).orElse(null));
    if (own.isEmpty() || own.getAsDouble() != value()) {
      throw new ModelException(
          part,
          "friction",
          own.isEmpty() ? "none" : Double.toString(own.getAsDouble()),
          value() + ", as the friction table has for \"" + row + '"');
    }
  }

  private static OptionalDouble friction(@Nullable Connection connection) {
    if (connection instanceof Contact contact) {
      return OptionalDouble.of(contact.friction());
    }
    if (connection instanceof ContactBase base) {
      return OptionalDouble.of(base.friction());
    }
    if (connection instanceof Wrap wrap) {
      return OptionalDouble.of(wrap.friction());
    }
    if (connection instanceof Screw screw) {
      return OptionalDouble.of(screw.friction());
    }
    return connection instanceof Pin pin
        ? OptionalDouble.of(pin.friction())
        : OptionalDouble.empty();
  }
}
