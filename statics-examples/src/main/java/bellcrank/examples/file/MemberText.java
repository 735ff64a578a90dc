package bellcrank.examples.file;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Weight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes members. */
final class MemberText {

  private final AmountText amounts;
  private final Map<String, Weight> weights = new HashMap<>();

  MemberText(Device device, AmountText amounts) {
    this.amounts = amounts;
    int last = -1;
    for (Load load : device.loads()) {
      int member = load instanceof Weight weight ? device.bodyIndex(weight.body()) : -1;
      if (member <= last
          || member >= device.members().size()
          || !load.name().equals(MembersReader.nameOfWeight(((Weight) load).body()))) {
        break;
      }
      last = member;
      weights.put(((Weight) load).body(), (Weight) load);
    }
  }

  /** How many of the first loads stand with their members. */
  int leadingWeights() {
    return weights.size();
  }

  String written(Member member) {
    Weight weight = weights.get(member.name());
    List<String> chain = chain(member.bars());
    boolean implied = ends(member.bars()).equals(member.points());
    boolean plain = weight == null && member.outline().isEmpty() && member.count() == 1;
    if (plain && implied && !chain.isEmpty()) {
      return Flow.list(chain);
    }
    Flow flow = new Flow();
    if (!implied) {
      flow.texts("points", member.points());
    }
    if (!chain.isEmpty()) {
      flow.texts("bars", chain);
    } else if (!member.bars().isEmpty()) {
      flow.put(
          "bars",
          Flow.items(
              member.bars().stream()
                  .map(bar -> Flow.list(List.of(bar.start(), bar.end())))
                  .toList()));
    }
    if (weight != null) {
      flow.put("weight", weight(weight));
    }
    return flow.textsIfAny("outline", member.outline()).count(member.count()).written();
  }

  private String weight(Weight weight) {
    String mass = amounts.mass(weight.mass());
    return weight.at().isEmpty()
        ? mass
        : new Flow().put("value", mass).text("at", weight.at()).written();
  }

  /** The points of bars that follow one another; empty if they do not. */
  private static List<String> chain(List<Bar> bars) {
    List<String> chain = new ArrayList<>();
    for (Bar bar : bars) {
      if (chain.isEmpty()) {
        chain.add(bar.start());
      } else if (!chain.get(chain.size() - 1).equals(bar.start())) {
        return List.of();
      }
      chain.add(bar.end());
    }
    return chain;
  }

  private static List<String> ends(List<Bar> bars) {
    Set<String> ends = new LinkedHashSet<>();
    for (Bar bar : bars) {
      ends.add(bar.start());
      ends.add(bar.end());
    }
    return List.copyOf(ends);
  }
}
