package bellcrank.examples.file;

import bellcrank.statics.device.Bar;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Section and material of a member or strut.
 *
 * @param whole those of all its bars, as far as they are stated
 * @param bars those of single bars of a member that differ, in order
 */
public record PartStatement(SizedStatement whole, Map<Bar, SizedStatement> bars) {

  /**
   * Copies the map.
   *
   * @param whole those of all its bars
   * @param bars those of single bars that differ
   */
  public PartStatement {
    bars = Collections.unmodifiableMap(new LinkedHashMap<>(bars));
  }
}
