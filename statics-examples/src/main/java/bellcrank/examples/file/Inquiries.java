package bellcrank.examples.file;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What a file asks beyond balance, limits and travel.
 *
 * @param finds what is to be found, one at most of each name
 * @param winches winches on lines of the device
 * @param measuredLines lines whose tension is estimated from a deflection
 * @param hangs how bodies hang from a point
 * @param handles where a handle balances bodies
 * @param rests whether places of rest are looked for on the way; there is a travel then
 * @param studies what is asked of numbers that can be otherwise, of cases and of moving loads
 */
public record Inquiries(
    List<FindPlan> finds,
    List<WinchPlan> winches,
    List<MeasuredLine> measuredLines,
    List<HangPlan> hangs,
    List<HangPlan> handles,
    boolean rests,
    Studies studies) {

  /** Nothing further is asked. */
  public static final Inquiries NOTHING =
      new Inquiries(List.of(), List.of(), List.of(), List.of(), List.of(), false, Studies.NOTHING);

  /**
   * Copies the lists and checks that names are used once.
   *
   * @param finds what is to be found
   * @param winches winches on lines of the device
   * @param measuredLines lines whose tension is estimated from a deflection
   * @param hangs how bodies hang from a point
   * @param handles where a handle balances bodies
   * @param rests whether places of rest are looked for on the way
   * @param studies what is asked of numbers that can be otherwise, of cases and of moving loads
   * @throws ModelException if two of one kind have the same name
   */
  public Inquiries {
    finds = once("find", finds, FindPlan::name);
    winches = once("winches", winches, WinchPlan::name);
    measuredLines = once("measured lines", measuredLines, MeasuredLine::name);
    hangs = once("hang", hangs, HangPlan::name);
    handles = once("balance point", handles, HangPlan::name);
  }

  private static <T> List<T> once(String key, List<T> all, Function<T, String> name) {
    Set<String> seen = new HashSet<>();
    for (T one : all) {
      if (!seen.add(name.apply(one))) {
        throw new ModelException(key, "name", name.apply(one), "each name once");
      }
    }
    return List.copyOf(all);
  }

  /** Checks that a device can be asked so. */
  void check(Device device, Optional<TravelPlan> travel) {
    finds.forEach(one -> one.check(device, travel));
    winches.forEach(one -> one.check(device));
    measuredLines.forEach(one -> one.check(device));
    hangs.forEach(one -> one.check(device));
    handles.forEach(one -> one.check(device));
    if (rests && travel.isEmpty()) {
      throw new ModelException("travel", "look for", "rest", "a file with a travel");
    }
  }
}
