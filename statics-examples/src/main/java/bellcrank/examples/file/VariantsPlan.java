package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.Variants;
import bellcrank.statics.study.Variants.Compared;
import bellcrank.statics.study.Variants.Variant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Variants of the device that are set beside it.
 *
 * @param compared what is compared, at least one figure, each once
 * @param changes variants, each with another name; at least one
 */
public record VariantsPlan(List<Compared> compared, List<Change> changes) {

  /** Name of the device as the file states it. */
  public static final String STATED = "as stated";

  /**
   * Copies the lists and checks names.
   *
   * @param compared what is compared
   * @param changes variants
   * @throws ModelException if nothing is compared or changed, or something twice
   */
  public VariantsPlan {
    FigureText.each("compare", compared.stream().map(Compared::figure).toList());
    compared = List.copyOf(compared);
    changes = List.copyOf(changes);
    if (changes.isEmpty()) {
      throw new ModelException("variants", "changes", "none", "at least one variant");
    }
    Set<String> seen = new HashSet<>(List.of(STATED));
    for (Change one : changes) {
      if (!seen.add(one.name())) {
        throw new ModelException(one.name(), "name", one.name(), "each name once");
      }
    }
  }

  /**
   * A variant.
   *
   * @param name its name
   * @param values numbers that differ from what is stated, in SI units; at least one
   */
  public record Change(String name, Map<Input, Double> values) {

    /**
     * Copies the map.
     *
     * @param name its name
     * @param values numbers that differ
     * @throws ModelException if the name is none or nothing differs
     */
    public Change {
      Ask.of(name);
      Map<Input, Double> copy = new LinkedHashMap<>();
      values.forEach((input, value) -> copy.put(input, value + 0.0)); // a file has no −0
      values = Collections.unmodifiableMap(copy);
      if (values.isEmpty()) {
        throw new ModelException(name, "values", "none", "at least one number that differs");
      }
    }

    /** The model with what differs. */
    Model of(Model model) {
      return Input.put(model, new ArrayList<>(values.keySet()), new ArrayList<>(values.values()));
    }
  }

  /** Checks that a file has what is compared and changed. */
  void check(FileParts file) {
    compared.forEach(one -> FigureText.check(one.figure(), file));
    changes.forEach(one -> one.of(file.model()));
  }

  /**
   * Compares.
   *
   * @param model the device with its ground and sizing
   * @return the table, the device as stated first
   */
  public Variants table(Model model) {
    List<Variant> all = new ArrayList<>(List.of(new Variant(STATED, model)));
    changes.forEach(one -> all.add(new Variant(one.name(), one.of(model))));
    return Variants.of(all, compared);
  }
}
