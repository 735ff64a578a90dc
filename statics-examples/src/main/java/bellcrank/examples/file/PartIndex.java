package bellcrank.examples.file;

import bellcrank.statics.device.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the place in the file that a problem of the model speaks of. */
final class PartIndex {

  /** The sections that give names; one name may stand in several of them. */
  enum Section {
    POINT,
    MEMBER,
    JOINT,
    PART,
    CASE,
    ADVANTAGE
  }

  /** Where a part stands. */
  private record Entry(Section section, Spot name, Optional<Fields> fields) {

    Optional<Spot> field(String field) {
      return fields.flatMap(keys -> keys.find(field));
    }
  }

  /** Fields whose problems belong to one section for certain. */
  private static final Map<String, Section> SECTION_OF_FIELD =
      Map.of(
          "place", Section.POINT,
          "points", Section.MEMBER,
          "outline", Section.MEMBER,
          "bars", Section.MEMBER,
          "factors", Section.CASE,
          "effort", Section.ADVANTAGE,
          "resistance", Section.ADVANTAGE);

  /** Where else a problem is looked for, the likeliest first. */
  private static final List<Section> ORDER =
      List.of(
          Section.PART,
          Section.JOINT,
          Section.MEMBER,
          Section.POINT,
          Section.CASE,
          Section.ADVANTAGE);

  private final Map<String, List<Entry>> entries = new HashMap<>();

  void add(Section section, String name, Spot spot, Optional<Fields> fields) {
    entries.computeIfAbsent(name, n -> new ArrayList<>()).add(new Entry(section, spot, fields));
  }

  /** Reports a problem of the whole model at the part it speaks of, or at the top. */
  void report(Problem problem, Spot top) {
    Spot spot = entry(problem).map(entry -> spot(entry, problem)).orElse(top);
    spot.reportLate(found(problem), problem.wanted());
  }

  private Optional<Entry> entry(Problem problem) {
    List<Entry> named = entries.getOrDefault(problem.part(), List.of());
    Section certain = SECTION_OF_FIELD.get(problem.field());
    if (certain != null) {
      return named.stream().filter(entry -> entry.section() == certain).findFirst();
    }
    return ORDER.stream()
        .flatMap(section -> named.stream().filter(entry -> entry.section() == section))
        .findFirst();
  }

  private static Spot spot(Entry entry, Problem problem) {
    String key =
        switch (problem.field()) {
          case "body" -> "member";
          case "from and to" -> "to";
          default -> problem.field();
        };
    return entry.field(key).or(() -> main(entry)).orElse(entry.name());
  }

  /** The value that names the kind of connection: its places. */
  private static Optional<Spot> main(Entry entry) {
    return entry
        .fields()
        .flatMap(
            fields ->
                fields.present(FileKeys.CONNECTIONS.keySet()).stream()
                    .findFirst()
                    .flatMap(fields::find));
  }

  /** What was found, with the field in front where the value alone would not tell. */
  static String found(Problem problem) {
    return problem.value().startsWith("\"")
        ? problem.value()
        : problem.field() + " " + problem.value();
  }
}
