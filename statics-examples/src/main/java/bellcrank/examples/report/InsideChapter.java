package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.InternalForces;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Normal force, shear force and bending moment, as tables and curves. */
final class InsideChapter implements CaseChapter {

  /** Of more members than this no curves are drawn; the table has them all. */
  private static final int MOST_CURVES = 8;

  @Override
  public String id() {
    return "inside";
  }

  @Override
  public String title() {
    return "Forces inside the members";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    Balance balance = facts.balance();
    List<Part> parts =
        new ArrayList<>(
            PageParts.of(title(), page -> InsideSection.write(page, balance, facts.amounts())));
    if (parts.isEmpty()) {
      return parts;
    }
    int drawn = 0;
    for (Member member : balance.device().members()) {
      InternalForces forces = balance.internalForces(member.name());
      if (bends(forces, facts.amounts()) && drawn < MOST_CURVES) {
        drawn++;
        parts.add(
            new Part.Picture(
                "Normal force, shear force and bending moment along " + member.name() + ".",
                InsideChart.svg(forces, member.name(), facts.units())));
      }
    }
    return parts;
  }

  /** A bar that is only pulled or pushed needs no curve. */
  private static boolean bends(InternalForces forces, Amounts amounts) {
    return InsideChart.isDrawable(forces)
        && forces.bars().stream()
            .filter(bar -> bar.unresolved(InsideForce.MOMENT).isEmpty())
            .anyMatch(
                bar ->
                    !amounts.isZero(
                        bar.extremes(InsideForce.MOMENT).largest().value(), Dimension.MOMENT));
  }
}
