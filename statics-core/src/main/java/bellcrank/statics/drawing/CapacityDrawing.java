package bellcrank.statics.drawing;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Checks;
import bellcrank.statics.strength.Crossing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A picture of how much is used of what each part can bear: a level bar for each check, with a line
 * where all of it is used. What could not be checked is told below.
 */
public final class CapacityDrawing {

  private final String heading;
  private final List<Bar> bars;
  private final List<String> notes;

  private CapacityDrawing(String heading, List<Bar> bars, List<String> notes) {
    this.heading = heading;
    this.bars = List.copyOf(bars);
    this.notes = List.copyOf(notes);
  }

  /**
   * One bar.
   *
   * @param part name of the part
   * @param what what is checked of it
   * @param utilisation share that is used of what it can bear, 0 or more, 1 at the limit; infinite
   *     for what gives however small the loads are
   * @param note what else is to be told, such as the multiple of the loads at which it gives; may
   *     be empty
   */
  public record Bar(String part, String what, double utilisation, String note) {

    /**
     * Checks the share.
     *
     * @param part name of the part
     * @param what what is checked of it
     * @param utilisation share that is used of what it can bear, 0 or more
     * @param note what else is to be told; may be empty
     * @throws ModelException if the share is negative or no number
     */
    public Bar {
      if (!(utilisation >= 0)) {
        throw new ModelException(part, "utilisation", utilisation, "a number of 0 or more");
      }
    }

    /**
     * A check under the loads as they are stated.
     *
     * @param check the check
     * @return its bar
     */
    public static Bar of(Checked check) {
      return new Bar(check.part(), check.what(), check.utilisation(), "");
    }

    /**
     * What gives at some multiple of the driving loads. Its share is that under the loads as they
     * are stated; for a device that gives way it is one over the multiple.
     *
     * @param crossing what gives
     * @return its bar, with the multiple as a note
     */
    public static Bar of(Crossing crossing) {
      String note = String.format(Locale.ROOT, "gives at %.4g times the load", crossing.multiple());
      return crossing instanceof Crossing.Used used
          ? new Bar(used.stated().part(), used.stated().what(), used.stated().utilisation(), note)
          : new Bar("device", "gives way", 1 / crossing.multiple(), note);
    }
  }

  /**
   * Bars of one's own.
   *
   * @param heading what the picture is of, in one line
   * @param bars the bars from the top down, at least one
   * @return the drawing
   * @throws ModelException if there is no bar
   */
  public static CapacityDrawing of(String heading, List<Bar> bars) {
    return new CapacityDrawing(heading, atLeastOne(heading, bars), List.of());
  }

  /**
   * All checks under the loads as they are stated, the part that is used most on top.
   *
   * @param heading what the picture is of, in one line
   * @param checks the checks
   * @return the drawing
   * @throws ModelException if no check was made
   */
  public static CapacityDrawing of(String heading, Checks checks) {
    return of(heading, checks.checked().stream().map(Bar::of).toList())
        .withNotChecked(checks.notChecked());
  }

  /**
   * What gives as the driving loads grow, the first on top, and below it the checks that these
   * loads do not bring to their limit.
   *
   * @param heading what the picture is of, in one line
   * @param capacity what gives
   * @return the drawing
   * @throws ModelException if nothing gives and no check was made
   */
  public static CapacityDrawing of(String heading, Capacity capacity) {
    List<Bar> bars = new ArrayList<>();
    capacity.ranked().forEach(one -> bars.add(Bar.of(one)));
    capacity.never().forEach(one -> bars.add(Bar.of(one)));
    return of(heading, bars).withNotChecked(capacity.notChecked());
  }

  /**
   * This drawing with what could not be checked.
   *
   * @param open checks that could not be made
   * @return a copy
   */
  public CapacityDrawing withNotChecked(List<NotChecked> open) {
    List<String> more = new ArrayList<>(notes);
    for (NotChecked one : open) {
      more.add("not checked: " + one.part() + ", " + one.what() + ": " + one.why());
    }
    return new CapacityDrawing(heading, bars, more);
  }

  private static List<Bar> atLeastOne(String heading, List<Bar> bars) {
    if (bars.isEmpty()) {
      throw new ModelException(heading, "bars", "none", "at least one check to draw");
    }
    return bars;
  }

  /**
   * The bars.
   *
   * @return from the top down
   */
  public List<Bar> bars() {
    return bars;
  }

  /**
   * The picture.
   *
   * @return an SVG document with title and description; each bar carries {@code data-part}, {@code
   *     data-check} and {@code data-utilisation}, the picture {@code data-units-per-whole}, the
   *     length of a bar at the limit
   */
  public String svg() {
    return new CapacityPicture(heading, bars, notes).svg();
  }
}
