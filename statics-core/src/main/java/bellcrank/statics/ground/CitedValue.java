package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;

/**
 * One published figure with its source.
 *
 * @param name stable plain name by which it is chosen
 * @param value the figure in the SI unit of its dimension, as a range where the source has one
 * @param dimension what kind of quantity it is
 * @param source document, edition and place
 * @param basis how the figure came here
 * @param note what to mind when using it; may be empty
 */
public record CitedValue(
    String name, Span value, Dimension dimension, String source, Basis basis, String note) {

  /**
   * Checks the texts.
   *
   * @param name stable plain name by which it is chosen
   * @param value the figure in the SI unit of its dimension, as a range where the source has one
   * @param dimension what kind of quantity it is
   * @param source document, edition and place
   * @param basis how the figure came here
   * @param note what to mind when using it; may be empty
   * @throws ModelException if the name or the source is blank
   */
  public CitedValue {
    Check.text("cited value", "name", name);
    Check.text(name, "source", source);
  }
}
