package bellcrank.examples.report;

import bellcrank.examples.file.SizingStatement;
import bellcrank.statics.strength.Detail;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.PinJoint;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sized;
import bellcrank.statics.strength.Sizing;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where the strengths of materials and the limits of ropes and fittings come from. */
final class StrengthSources {

  private final Map<String, String> sources = new LinkedHashMap<>();

  private StrengthSources() {}

  /** Sources by the names of materials, ratings and reductions, each once. */
  static Map<String, String> of(SizingStatement stated) {
    Sizing sizing = stated.sizing();
    StrengthSources all = new StrengthSources();
    sizing.parts().forEach(part -> sizing.sized(part).map(Sized::material).ifPresent(all::add));
    sizing
        .bars()
        .forEach(
            (member, bars) ->
                bars.forEach(
                    bar -> sizing.sized(member, bar).map(Sized::material).ifPresent(all::add)));
    sizing.details().forEach(all::add);
    return all.sources;
  }

  private void add(Material material) {
    sources.put(material.name(), material.source());
  }

  private void add(Detail detail) {
    if (detail instanceof PinJoint joint) {
      add(joint.material());
      joint.plates().forEach(plate -> add(plate.material()));
    } else if (detail instanceof FilletWeld weld) {
      add(weld.material());
    } else if (detail instanceof Rating rating) {
      sources.put(rating.name(), rating.source());
      rating
          .reductions()
          .forEach(one -> sources.put(rating.name() + ", " + one.why(), one.source()));
    }
  }
}
