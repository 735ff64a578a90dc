package bellcrank.examples.file;

import bellcrank.examples.file.FormedSection.Hole;
import bellcrank.examples.file.FormedSection.Stands;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads cross-sections. */
final class SectionReader {

  private static final String EXAMPLE =
      "a section, such as {tube: [60 mm, 40 mm, 3 mm]} or {round: 20 mm}";

  private static final Map<String, Stands> STANDS = new TreeMap<>();
  private static final Map<String, SectionForm> FORMS = new TreeMap<>();

  static {
    for (Stands stands : Stands.values()) {
      STANDS.put(stands.word(), stands);
    }
    for (SectionForm form : SectionForm.values()) {
      FORMS.put(form.word(), form);
    }
  }

  private final Reading reading;

  SectionReader(Reading reading) {
    this.reading = reading;
  }

  /** The section of a part, by which problems call it. */
  Optional<SectionStatement> read(String part, Spot spot) {
    Optional<Fields> fields = spot.fields(EXAMPLE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    Fields keys = fields.get();
    keys.only(FileKeys.SECTION);
    List<String> forms =
        keys.named().stream()
            .map(Named::text)
            .filter(key -> FORMS.containsKey(key) || key.equals("own"))
            .toList();
    boolean misspelt =
        keys.named().stream().anyMatch(key -> !FileKeys.SECTION.contains(key.text()));
    if (forms.isEmpty() && misspelt) {
      return Optional.empty();
    }
    if (forms.size() != 1) {
      String found = forms.isEmpty() ? "no form of section" : String.join(" and ", forms);
      return keys.whole()
          .refuse(found, "one of the keys " + String.join(", ", FORMS.keySet()) + ", own");
    }
    Draft draft = new Draft(reading, part, spot, keys);
    SectionForm form = FORMS.get(forms.get(0));
    return form == null ? own(draft) : formed(draft, form);
  }

  private Optional<SectionStatement> own(Draft whole) {
    Optional<Spot> spot = whole.fields().find("own");
    if (whole.fields().named().size() > 1) {
      return whole.fields().whole().refuse("keys beside own", "own alone, with its properties");
    }
    Optional<Fields> fields = spot.flatMap(one -> one.fields("properties by name"));
    if (spot.isEmpty() || fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.OWN_SECTION);
    Draft draft = new Draft(reading, whole.part(), spot.get(), fields.get());
    String name = draft.text("name", "how the section is called");
    double area = draft.amount("area", Dimension.AREA);
    SecondMoments moments = new SecondMoments(draft, area);
    double gyration = moments.gyration("gyration", "second moment");
    double sideGyration = moments.gyration("side gyration", "side second moment");
    Optional<Double> least = moments.gyrationIfAny("least gyration", "least second moment");
    double top = moments.reach("top", "top modulus", gyration);
    double bottom = moments.reach("bottom", "bottom modulus", gyration);
    double sideReach = moments.reach("side reach", "side modulus", sideGyration);
    double shearArea = draft.amount("shear area", Dimension.AREA);
    double thickness = draft.amount("thickness", Dimension.LENGTH);
    return draft.made(
        () ->
            new OwnSection(
                name,
                area,
                top,
                bottom,
                gyration,
                shearArea,
                sideGyration,
                sideReach,
                thickness,
                least));
  }

  private Optional<SectionStatement> formed(Draft draft, SectionForm form) {
    List<Double> sizes = new ArrayList<>();
    draft.fields().find(form.word()).ifPresent(spot -> sizes(draft, form, spot, sizes));
    Stands stands = draft.choice("stands", STANDS, Stands.UPRIGHT);
    int together = draft.wholeNumber("side by side", 1, 1);
    double gap = draft.amount("gap", Dimension.LENGTH, 0);
    Optional<Double> back = draft.amountIfAny("back to back", Dimension.LENGTH);
    List<Hole> holes = holes(draft);
    double above = draft.amount("notch above", Dimension.LENGTH, 0);
    double below = draft.amount("notch below", Dimension.LENGTH, 0);
    int separate = draft.wholeNumber("separate", 1, 1);
    return draft.made(
        () ->
            new FormedSection(
                form, sizes, stands, together, gap, back, holes, above, below, separate));
  }

  private static void sizes(Draft draft, SectionForm form, Spot spot, List<Double> sizes) {
    List<Spot> items = spot.isItems() ? spot.itemsIfAny() : List.of(spot);
    if (!form.takes(items.size())) {
      draft.fail();
      spot.report("the sizes of a " + form.word() + ": " + form.sizes());
      return;
    }
    items.forEach(item -> sizes.add(draft.amount(item, Dimension.LENGTH)));
  }

  private List<Hole> holes(Draft draft) {
    Optional<Spot> spot = draft.fields().find("holes");
    List<Hole> holes = new ArrayList<>();
    String wanted = "a list of holes, such as [{diameter: 10 mm, height: 20 mm}]";
    if (spot.isPresent()) {
      for (Spot item : draft.orFail(spot.get().items(wanted), List.<Spot>of())) {
        Optional<Hole> hole = item.fields(wanted).flatMap(fields -> hole(item, fields));
        hole.ifPresent(holes::add);
        if (hole.isEmpty()) {
          draft.fail();
        }
      }
    }
    return holes;
  }

  private Optional<Hole> hole(Spot item, Fields fields) {
    fields.only(FileKeys.HOLE);
    Draft draft = new Draft(reading, "hole", item, fields);
    double diameter = draft.amount("diameter", Dimension.LENGTH);
    if (fields.has("height") && fields.present(FileKeys.HOLE).size() > 2) {
      return fields
          .whole()
          .refuse("height beside offset, from or to", "a height, or offset with from and to");
    }
    if (!fields.has("height") && fields.has("offset")) {
      double offset = draft.amount("offset", Dimension.LENGTH);
      double from = draft.amount("from", Dimension.LENGTH);
      double to = draft.amount("to", Dimension.LENGTH);
      return draft.made(() -> new Hole.Upright(diameter, offset, from, to));
    }
    double height = draft.amount("height", Dimension.LENGTH);
    return draft.made(() -> new Hole.Across(diameter, height));
  }
}
