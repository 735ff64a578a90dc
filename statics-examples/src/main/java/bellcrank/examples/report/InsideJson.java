package bellcrank.examples.report;

import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.Peak;
import bellcrank.statics.equilibrium.Piece;
import java.util.List;
import java.util.Locale;

/** Forces inside the members as JSON: exact curves, and their extremes. */
final class InsideJson {

  private final JsonPage page;
  private final Balance balance;

  InsideJson(JsonPage page, Balance balance) {
    this.page = page;
    this.balance = balance;
  }

  void write() {
    List<Member> members =
        balance.device().members().stream().filter(one -> !one.bars().isEmpty()).toList();
    page.list("inside", members, this::member);
  }

  private void member(Member member) {
    page.object(
        () -> {
          page.text("member", member.name());
          page.whole("count", member.count());
          page.list("bars", balance.internalForces(member.name()).bars(), this::bar);
        });
  }

  private void bar(BarForces bar) {
    page.object(
        () -> {
          page.text("start", bar.bar().start());
          page.text("end", bar.bar().end());
          page.number("length", bar.length());
          page.text("unresolved", bar.unresolved());
          page.list("pieces", bar.unresolved().isPresent() ? List.of() : bar.pieces(), this::piece);
          page.list(
              "extremes",
              List.of(InsideForce.values()).stream()
                  .filter(force -> bar.unresolved(force).isEmpty())
                  .toList(),
              force -> extremes(bar, force));
        });
  }

  private static String word(InsideForce force) {
    return force.name().toLowerCase(Locale.ROOT);
  }

  private void piece(Piece piece) {
    page.object(
        () -> {
          page.number("from", piece.start());
          page.number("to", piece.end());
          for (InsideForce force : InsideForce.values()) {
            if (piece.unresolved(force).isPresent()) {
              page.nothing(word(force));
            } else {
              page.numbers(word(force), piece.curve(force).coefficients());
            }
          }
        });
  }

  private void extremes(BarForces bar, InsideForce force) {
    page.object(
        () -> {
          page.text("of", word(force));
          page.object("least", () -> peak(bar.extremes(force).least()));
          page.object("greatest", () -> peak(bar.extremes(force).greatest()));
        });
  }

  private void peak(Peak peak) {
    page.number("at", peak.at());
    page.number("value", peak.value());
  }
}
