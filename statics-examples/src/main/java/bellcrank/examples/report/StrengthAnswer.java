package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Driving;
import bellcrank.examples.file.SizingStatement;
import bellcrank.examples.file.StrengthAsk;
import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Pose;
import bellcrank.statics.drawing.CapacityDrawing;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Checks;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.strength.Rules;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.strength.TravelCapacity;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * What the sizing of a file says in one case.
 *
 * @param sizing sections, materials and details
 * @param driving the loads that grow, if the file states them
 * @param checks the checks under the loads as they are stated, as drawn
 * @param ranked what gives as the driving loads grow, in order
 * @param notChecked what could not be checked, and why
 * @param remarks what else is to be known
 * @param travel how the device is driven, if what gives was looked for over a course
 * @param told answers an ask where something gives
 */
public record StrengthAnswer(
    SizingStatement sizing,
    Optional<Driving> driving,
    Checks checks,
    List<Row> ranked,
    List<NotChecked> notChecked,
    List<String> remarks,
    Optional<TravelPlan> travel,
    BiFunction<Ask, Row, Answer> told) {

  /** Between the name of a part and what is checked of it. */
  private static final String COLON = ": ";

  /**
   * Copies the lists.
   *
   * @param sizing sections, materials and details
   * @param driving the loads that grow, if the file states them
   * @param checks the checks under the loads as they are stated
   * @param ranked what gives, in order
   * @param notChecked what could not be checked, and why
   * @param remarks what else is to be known
   * @param travel how the device is driven, if it is
   * @param told answers an ask where something gives
   */
  public StrengthAnswer {
    ranked = List.copyOf(ranked);
    notChecked = List.copyOf(notChecked);
    remarks = List.copyOf(remarks);
  }

  /**
   * Something that gives.
   *
   * @param crossing what it is, and at what multiple
   * @param worst its place on the course, if there is one
   */
  public record Row(Crossing crossing, Optional<TravelCapacity.Worst> worst) {

    /** The part, or the word for all of the device. */
    String part() {
      return crossing instanceof Crossing.Used used ? used.stated().part() : "device";
    }

    /** What gives of it. */
    String what() {
      return crossing instanceof Crossing.Used used ? used.stated().what() : "gives way";
    }

    /** Share of what it can bear that the stated loads use, in the pose in which it gives. */
    double utilisation() {
      return crossing instanceof Crossing.Used used
          ? used.stated().utilisation()
          : 1 / crossing.multiple();
    }
  }

  /** That of a case of a file; empty if the file has no sizing. */
  static Optional<StrengthAnswer> of(DeviceFile file, Balance balance) {
    return file.sizing().map(sizing -> of(file, sizing, balance));
  }

  private static StrengthAnswer of(DeviceFile file, SizingStatement stated, Balance balance) {
    Sizing sizing = stated.sizing();
    Rules rules = stated.allRules();
    Checks checks = Checks.of(balance, sizing, rules);
    Set<NotChecked> open = new LinkedHashSet<>(stated.unfinished());
    Optional<Driving> driving = file.driving();
    if (driving.isEmpty()) {
      open.addAll(checks.notChecked());
      return new StrengthAnswer(
          stated,
          driving,
          checks,
          List.of(),
          List.copyOf(open),
          List.of(),
          Optional.empty(),
          (ask, row) -> balance.answer(ask));
    }
    Optional<Course> course = course(file, balance);
    if (course.isPresent()) {
      TravelCapacity capacity =
          TravelCapacity.of(
              course.get(), sizing, rules, driving.get().variation(), file.foundations());
      open.addAll(capacity.notChecked());
      return new StrengthAnswer(
          stated,
          driving,
          checks,
          capacity.ranked().stream()
              .map(worst -> new Row(worst.crossing(), Optional.of(worst)))
              .toList(),
          List.copyOf(open),
          capacity.remarks(),
          file.travel(),
          (ask, row) -> capacity.at(ask, row.worst().orElseThrow()));
    }
    Capacity capacity =
        Capacity.of(
            balance.device(),
            balance.loadCase(),
            Pose.DRAWN,
            sizing,
            rules,
            driving.get().variation(),
            file.foundations());
    open.addAll(capacity.notChecked());
    List<String> remarks = new ArrayList<>(capacity.remarks());
    if (file.travel().isPresent()) {
      remarks.add("it cannot be driven as stated, so only the drawn pose is looked at");
    }
    return new StrengthAnswer(
        stated,
        driving,
        checks,
        capacity.ranked().stream().map(one -> new Row(one, Optional.empty())).toList(),
        List.copyOf(open),
        remarks,
        Optional.empty(),
        (ask, row) -> capacity.at(ask, row.crossing().multiple()));
  }

  private static Optional<Course> course(DeviceFile file, Balance balance) {
    return file.travel()
        .map(
            plan ->
                Travel.of(
                    balance.device(),
                    balance.loadCase(),
                    plan.drive(),
                    plan.from(),
                    plan.to(),
                    plan.meetings()))
        .flatMap(
            travel -> travel instanceof Course one ? Optional.of(one) : Optional.<Course>empty());
  }

  /** Checks under the stated loads that the driving loads do not bring to their limit. */
  List<Checked> never() {
    return checks.checked().stream()
        .filter(
            one ->
                ranked.stream()
                    .noneMatch(
                        row -> row.part().equals(one.part()) && row.what().equals(one.what())))
        .toList();
  }

  /**
   * Bars for a picture of what is used: first what gives as the driving loads grow, in order, with
   * the share in the pose in which it gives; then the other checks as drawn.
   *
   * @return none if nothing was checked
   */
  public List<CapacityDrawing.Bar> bars() {
    List<CapacityDrawing.Bar> bars = new ArrayList<>();
    ranked.forEach(row -> bars.add(CapacityDrawing.Bar.of(row.crossing())));
    never().forEach(one -> bars.add(CapacityDrawing.Bar.of(one)));
    return bars;
  }

  /** What an expectation about strength is answered with. */
  Answer answer(StrengthAsk ask) {
    return switch (ask.kind()) {
      case UTILISATION ->
          checks.checked().stream()
              .filter(one -> (one.part() + COLON + one.what()).equals(ask.of()))
              .findFirst()
              .map(one -> number(one.utilisation()))
              .orElseGet(() -> none("no such check was made: " + ask.of()));
      case MULTIPLE ->
          ranked.stream()
              .filter(row -> (row.part() + COLON + row.what()).equals(ask.of()))
              .findFirst()
              .map(row -> number(row.crossing().multiple()))
              .orElseGet(() -> none("no multiple is told for " + ask.of()));
      default ->
          ranked.stream()
              .findFirst()
              .map(row -> first(ask, row))
              .orElseGet(() -> none("nothing gives as the driving loads grow"));
    };
  }

  private Answer first(StrengthAsk ask, Row row) {
    return switch (ask.kind()) {
      case FIRST_PART -> new Answer.Words(row.part());
      case FIRST_CHECK -> new Answer.Words(row.what());
      case FIRST_DRIVE ->
          row.worst().isPresent() && travel.isPresent()
              ? new Answer.Value(row.worst().get().drive(), travel.get().dimension())
              : none("nothing is driven");
      case AT_FIRST -> told.apply(ask.inner(), row);
      default -> number(row.crossing().multiple());
    };
  }

  private static Answer number(double value) {
    return new Answer.Value(value, Dimension.NUMBER);
  }

  private static Answer none(String why) {
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why);
  }
}
