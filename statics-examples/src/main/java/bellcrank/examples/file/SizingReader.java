package bellcrank.examples.file;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.strength.ChainSeat;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.Method;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads {@code sizing}: sections, materials and details. */
final class SizingReader {

  private static final String EXAMPLE =
      "sections, materials and details, beginning with {method: allowable}";

  private static final Map<String, Method> METHODS = new TreeMap<>();

  static {
    for (Method method : Method.values()) {
      METHODS.put(method.name().toLowerCase(Locale.ROOT), method);
    }
  }

  /** One entry by itself, so that what the device does not have is reported at its place. */
  private record Entry(Draft draft, SizingStatement alone) {}

  private final Reading reading;
  private final List<Entry> entries = new ArrayList<>();

  SizingReader(Reading reading) {
    this.reading = reading;
  }

  Optional<SizingStatement> read(Spot spot) {
    Optional<Fields> fields = spot.fields(EXAMPLE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.SIZING);
    Draft draft = new Draft(reading, "sizing", spot, fields.get());
    Method method = draft.choiceNeeded("method", METHODS, Method.ALLOWABLE);
    Materials materials = materials(draft);
    SizingStatement none = SizingStatement.of(method, materials);
    DetailReader details = new DetailReader(reading, materials);
    Map<String, PartStatement> parts = parts(draft, details, none);
    List<ColumnEnds> columns = columns(draft, details, none);
    List<PinStatement> pins =
        details(draft, "pins", FileKeys.PIN_JOINT, details::pin, none::withPin);
    Function<String, Optional<Double>> thickest =
        part ->
            Optional.ofNullable(parts.get(part))
                .flatMap(one -> one.whole().section())
                .map(section -> section.section().thickest());
    List<WeldStatement> welds =
        details(
            draft,
            "welds",
            FileKeys.WELD,
            one -> details.weld(one, thickest),
            weld -> none.withWeld(weld, parts));
    List<RatingStatement> ratings =
        details(draft, "ratings", FileKeys.RATING, details::rating, none::withRating);
    List<ChainSeat> seats = details(draft, "seats", FileKeys.SEAT, details::seat, none::withSeat);
    List<FactorStatement> rules =
        details(draft, "rules", FileKeys.RULE, SizingReader::rule, one -> none);
    return draft.made(
        () ->
            new SizingStatement(
                method, materials, parts, columns, pins, welds, ratings, seats, rules));
  }

  private Materials materials(Draft draft) {
    Map<String, Material> own = new LinkedHashMap<>();
    for (Named named : named(draft, "materials")) {
      Optional<Material> material = entry(named, FileKeys.MATERIAL).flatMap(MaterialText::read);
      material.ifPresentOrElse(one -> own.put(named.text(), one), draft::fail);
    }
    return new Materials(own);
  }

  private Map<String, PartStatement> parts(
      Draft draft, DetailReader details, SizingStatement none) {
    Map<String, PartStatement> parts = new LinkedHashMap<>();
    for (Named named : named(draft, "parts")) {
      Optional<Draft> entry = entry(named, FileKeys.PART);
      Optional<PartStatement> part = entry.flatMap(one -> part(one, details));
      if (part.isEmpty() || entry.isEmpty()) {
        draft.fail();
        continue;
      }
      parts.put(named.text(), part.get());
      alone(draft, entry.get(), () -> none.withPart(named.text(), part.get()));
    }
    return parts;
  }

  private Optional<PartStatement> part(Draft draft, DetailReader details) {
    SizedStatement whole = sized(draft, details);
    Map<Bar, SizedStatement> bars = new LinkedHashMap<>();
    Optional<Spot> spot = draft.fields().find("bars");
    String wanted = "a list of bars, such as [{bar: [A, B], section: {round: 20 mm}}]";
    if (spot.isPresent()) {
      for (Spot item : draft.orFail(spot.get().items(wanted), List.<Spot>of())) {
        Optional<Fields> fields = item.fields(wanted);
        fields.ifPresent(one -> one.only(FileKeys.BAR));
        if (fields.isEmpty()) {
          draft.fail();
          continue;
        }
        Draft own = new Draft(reading, draft.part(), item, fields.get());
        List<String> ends = own.twoPlaces("bar");
        SizedStatement sized = sized(own, details);
        own.made(() -> sized)
            .ifPresentOrElse(
                one -> {
                  if (bars.put(new Bar(ends.get(0), ends.get(1)), one) != null) {
                    draft.fail();
                    item.report("each bar once");
                  }
                },
                draft::fail);
      }
    }
    return draft.made(() -> new PartStatement(whole, bars));
  }

  private SizedStatement sized(Draft draft, DetailReader details) {
    Optional<Spot> spot = draft.fields().find("section");
    Optional<SectionStatement> section =
        spot.flatMap(one -> new SectionReader(reading).read(draft.part(), one));
    if (spot.isPresent() && section.isEmpty()) {
      draft.fail();
    }
    return new SizedStatement(section, details.material(draft));
  }

  private List<ColumnEnds> columns(Draft draft, DetailReader details, SizingStatement none) {
    List<ColumnEnds> columns = new ArrayList<>();
    Optional<Spot> spot = draft.fields().find("columns");
    String wanted = "a list of columns, such as [{part: prop}]";
    if (spot.isPresent()) {
      for (Spot item : draft.orFail(spot.get().items(wanted), List.<Spot>of())) {
        Optional<Fields> fields = item.fields(wanted);
        fields.ifPresent(one -> one.only(FileKeys.COLUMN));
        Optional<Draft> own = fields.map(one -> new Draft(reading, "column", item, one));
        Optional<ColumnEnds> ends = own.flatMap(details::column);
        if (ends.isEmpty() || own.isEmpty()) {
          draft.fail();
          continue;
        }
        columns.add(ends.get());
        alone(draft, own.get(), () -> none.withColumn(ends.get()));
      }
    }
    return columns;
  }

  private <T> List<T> details(
      Draft draft,
      String key,
      Set<String> keys,
      Function<Draft, Optional<T>> maker,
      Function<T, SizingStatement> alone) {
    List<T> all = new ArrayList<>();
    for (Named named : named(draft, key)) {
      Optional<Draft> entry = entry(named, keys);
      Optional<T> one = entry.flatMap(maker);
      if (one.isEmpty() || entry.isEmpty()) {
        draft.fail();
        continue;
      }
      all.add(one.get());
      alone(draft, entry.get(), () -> alone.apply(one.get()));
    }
    return all;
  }

  /** Keeps an entry by itself; what is wrong with it whatever the device is told at once. */
  private void alone(Draft whole, Draft entry, Supplier<SizingStatement> maker) {
    entry
        .made(maker)
        .ifPresentOrElse(one -> entries.add(new Entry(entry, one)), () -> whole.fail());
  }

  private static Optional<FactorStatement> rule(Draft draft) {
    double factor = draft.amount("factor", Dimension.NUMBER);
    Optional<String> meaning = draft.textIfAny("meaning");
    String why = draft.text("why", "why the factor differs from that of the rule");
    return draft.made(() -> new FactorStatement(draft.part(), factor, meaning, why));
  }

  private static List<Named> named(Draft draft, String key) {
    Optional<Spot> spot = draft.fields().find(key);
    return spot.isEmpty()
        ? List.of()
        : draft.orFail(spot.get().fields(key + " by name").map(Fields::named), List.of());
  }

  private Optional<Draft> entry(Named named, Set<String> keys) {
    Optional<Fields> fields =
        named.value().fields("a mapping with the keys " + String.join(", ", keys));
    fields.ifPresent(found -> found.only(keys));
    return fields.map(found -> new Draft(reading, named.text(), named.name(), found));
  }

  /** Reports, entry by entry, what the device does not have. */
  void check(Device device) {
    for (Entry entry : entries) {
      try {
        entry.alone().check(device);
      } catch (ModelException e) {
        e.problems().stream().distinct().forEach(problem -> report(entry.draft(), problem));
      }
    }
  }

  private static void report(Draft draft, Problem problem) {
    Spot name = draft.name();
    String key = problem.field().equals("body") ? "on" : problem.field();
    Optional<Spot> stated =
        draft
            .fields()
            .find(key)
            .or(() -> draft.fields().find(key + "s"))
            .or(() -> draft.fields().find("connection"));
    stated.orElse(name).reportLate(PartIndex.found(problem), problem.wanted());
  }
}
