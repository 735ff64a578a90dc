package bellcrank.examples.report;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Member;
import java.util.ArrayList;
import java.util.List;

/** Says what a member is made of. */
final class MemberWords {

  private MemberWords() {}

  static String of(Member member) {
    List<String> words = new ArrayList<>();
    if (!member.bars().isEmpty()) {
      words.add((member.bars().size() == 1 ? "bar " : "bars ") + bars(member.bars()));
    }
    List<String> others =
        member.points().stream()
            .filter(
                point ->
                    member.bars().stream()
                        .noneMatch(bar -> bar.start().equals(point) || bar.end().equals(point)))
            .toList();
    if (!others.isEmpty()) {
      words.add((others.size() == 1 ? "point " : "points ") + Listing.of(others));
    }
    if (!member.outline().isEmpty()) {
      words.add("outline through " + Listing.of(member.outline()));
    }
    if (member.count() > 1) {
      words.add(member.count() + " side by side, which share its forces evenly");
    }
    return String.join("; ", words);
  }

  /** Bars that follow one another as one chain of points. */
  private static String bars(List<Bar> bars) {
    StringBuilder text = new StringBuilder();
    String end = "";
    for (Bar bar : bars) {
      if (!bar.start().equals(end)) {
        text.append(text.isEmpty() ? "" : ", ").append(bar.start());
      }
      text.append(" – ").append(bar.end());
      end = bar.end();
    }
    return text.toString();
  }
}
