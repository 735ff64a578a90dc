package bellcrank.examples.report;

import bellcrank.examples.file.Inquiries;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answer to a device file as a page of text, at most 80 characters wide. */
public final class ReportText {

  private final Page page = new Page();
  private final UnitSystem units;

  private ReportText(UnitSystem units) {
    this.units = units;
  }

  /**
   * Writes the answers to a file. The caution is not in it; it is said once, after all files.
   *
   * @param answer the answers
   * @param units units of the values
   * @return lines with line ends
   */
  public static String of(FileAnswer answer, UnitSystem units) {
    return page(answer, units).toString();
  }

  /** What the answers say, block by block. */
  static Page page(FileAnswer answer, UnitSystem units) {
    ReportText report = new ReportText(units);
    report.write(answer);
    return report.page;
  }

  private void write(FileAnswer answer) {
    Device device = answer.file().device();
    page.title(device.name(), '=');
    page.paragraph(counts(device));
    if (!answer.file().tables().isEmpty()) {
      page.heading("Assumptions");
      answer.file().tables().forEach(one -> page.item(TakenWords.of(one)));
    }
    for (CaseAnswer one : answer.cases()) {
      LoadCase loadCase = one.balance().loadCase();
      if (!loadCase.equals(LoadCase.ALL_LOADS)) {
        page.title(CaseWords.of(loadCase), '-');
      } else {
        page.gap();
      }
      write(
          one,
          LimitsAnswer.of(one.solution(), answer.file()),
          SideAnswer.of(one.solution(), answer.file()));
      TravelAnswer.of(answer.file(), loadCase)
          .ifPresent(travel -> TravelSection.write(page, travel, Amounts.of(units, one.balance())));
      Amounts amounts = Amounts.of(units, one.balance());
      FindSection.write(page, one.finds(), answer.file().travel(), amounts);
      Inquiries asked = answer.file().inquiries();
      HaulSection.write(page, asked.winches(), asked.measuredLines(), one.solution(), amounts);
    }
    HangSection.write(page, answer.file().inquiries(), device, units);
    StudySection.write(page, answer, units);
  }

  /** How many parts of each kind there are. */
  static String counts(Device device) {
    List<String> counts = new ArrayList<>();
    counts.add(Listing.count(device.members().size(), "member"));
    if (!device.joints().isEmpty()) {
      counts.add(Listing.count(device.joints().size(), "joint"));
    }
    counts.add(Listing.count(device.connections().size(), "connection"));
    counts.add(Listing.count(device.loads().size() - device.sought().size(), "load"));
    counts.add(device.sought().size() + " sought");
    return String.join(", ", counts);
  }

  private void write(CaseAnswer answer, Optional<LimitsAnswer> limits, Optional<SideAnswer> side) {
    Balance balance = answer.balance();
    Amounts amounts = Amounts.of(units, balance);
    if (limits.isPresent()) {
      VerdictSection.write(page, limits.get(), balance, amounts, units);
      LimitWords.write(page, limits.get().limits(), balance, amounts, units);
      StatesSection.write(page, limits.get().states(), answer.solution(), amounts);
    } else {
      page.paragraph(OutcomeWords.of(balance, units));
    }
    Outcome outcome = balance.outcome();
    if (!(outcome instanceof Outcome.NoBalance)) {
      // where dry pins leave all forces open, their ranges are the answer
      boolean ranges =
          outcome instanceof Outcome.NotDecided
              && limits.filter(one -> !one.open().isEmpty()).isPresent();
      if (!ranges) {
        ReactionsSection.write(page, balance, amounts);
        AxialSection.write(page, balance, amounts);
      }
      limits.ifPresent(one -> OpenForcesSection.write(page, one.open(), amounts));
      SoughtSection.write(page, answer.solution(), limits, amounts, units);
    }
    InsideSection.write(page, balance, amounts);
    limits.ifPresent(one -> GroundSection.write(page, one.grounds(), amounts, units));
    side.ifPresent(one -> SideSection.write(page, one, units));
    answer
        .solution()
        .strength()
        .ifPresent(one -> StrengthSection.write(page, one, balance, amounts, units));
    AdvantageSection.write(page, balance, amounts);
    MotionSection.write(page, balance, limits, amounts);
    NearCriticalSection.write(page, balance, amounts);
    AskedSection.write(page, answer, amounts);
    ExpectationsSection.write(page, answer.checks(), amounts);
    ResidualSection.write(page, balance);
  }
}
