package bellcrank.examples.file;

import bellcrank.examples.file.RatingStatement.ReductionStatement;
import bellcrank.examples.file.RatingStatement.Stated;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.strength.ChainSeat;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads what a check needs beside section and material. */
final class DetailReader {

  /** The end condition unless another is stated. */
  static final String PINNED = "pinned at both ends";

  /** The word for seams in the plane of the device. */
  static final String IN_PLANE = "in plane";

  private static final Map<String, FilletWeld.Plane> PLANES =
      Map.of("across", FilletWeld.Plane.ACROSS, IN_PLANE, FilletWeld.Plane.IN_PLANE);

  private static final Map<String, ColumnEnds.Curve> CURVES = new TreeMap<>();

  static {
    for (ColumnEnds.Curve curve : ColumnEnds.Curve.values()) {
      CURVES.put(curve.name().toLowerCase(Locale.ROOT), curve);
    }
  }

  private final Reading reading;
  private final Materials materials;

  DetailReader(Reading reading, Materials materials) {
    this.reading = reading;
    this.materials = materials;
  }

  /** The name of a material that is known, if one is stated. */
  Optional<String> material(Draft draft) {
    Optional<String> name = draft.textIfAny("material");
    if (name.isPresent() && draft.isSound()) {
      draft.made(
          () -> {
            materials.check(name.get());
            return name;
          });
      if (!materials.has(name.get())) {
        draft.fail();
      }
    }
    return name;
  }

  Optional<ColumnEnds> column(Draft draft) {
    String part = draft.text("part", "the name of a strut or member");
    boolean stretch = draft.has("from") || draft.has("to");
    Optional<String> from = stretch ? Optional.of(draft.place("from")) : Optional.empty();
    Optional<String> to = stretch ? Optional.of(draft.place("to")) : Optional.empty();
    double inPlane = draft.amount("in plane", Dimension.NUMBER, 1);
    double side = draft.amount("side", Dimension.NUMBER, 1);
    ColumnEnds.Curve curve = draft.choice("curve", CURVES, ColumnEnds.Curve.C);
    boolean stated = draft.has("in plane") || draft.has("side");
    String ends =
        stated
            ? draft.text("ends", "the end condition in words, to which the factors belong")
            : draft.textIfAny("ends").orElse(PINNED);
    return draft.made(
        () -> new ColumnEnds(part, from, to, inPlane, side, curve, FreeText.check("ends", ends)));
  }

  Optional<PinStatement> pin(Draft draft) {
    double diameter = draft.amount("diameter", Dimension.LENGTH);
    int planes =
        draft
            .fields()
            .find("planes")
            .map(spot -> draft.orFail(WholeNumber.read(spot, 1, 2), 1))
            .orElse(1);
    Optional<String> material = material(draft);
    double gap = draft.amount("gap", Dimension.LENGTH, 0);
    List<PinStatement.PlateStatement> plates =
        items(draft, "plates", FileKeys.PLATE, "{on: jib, thickness: 6 mm, …}", this::plate);
    return draft.made(
        () ->
            new PinStatement(draft.part(), diameter, planes, material, plates, gap)
                .checked(materials));
  }

  private Optional<PinStatement.PlateStatement> plate(Draft draft) {
    String on = draft.text("on", "the name of the body whose plates they are");
    int count = draft.count();
    double thickness = draft.amount("thickness", Dimension.LENGTH);
    double hole = draft.amount("hole", Dimension.LENGTH);
    double end = draft.amount("end", Dimension.LENGTH);
    double width = draft.amount("width", Dimension.LENGTH);
    Optional<String> material = material(draft);
    return draft.made(
        () -> new PinStatement.PlateStatement(on, count, thickness, hole, end, width, material));
  }

  /**
   * Reads welds.
   *
   * @param thickest thickness of the section of a part, if it has one
   */
  Optional<WeldStatement> weld(Draft draft, Function<String, Optional<Double>> thickest) {
    boolean member = draft.has("member") || draft.has("bar");
    if (member && draft.has("connection")) {
      return draft
          .fields()
          .whole()
          .refuse("member and connection", "a bar of a member that is cut, or a connection");
    }
    String part =
        member
            ? draft.text("member", "the name of a member")
            : draft.text("connection", "the name of a connection, or a member with a bar");
    Optional<FilletWeld.Cut> cut = member ? cut(draft) : Optional.empty();
    Optional<String> body =
        member
            ? Optional.empty()
            : Optional.of(draft.text("on", "the body on which the connection acts"));
    FilletWeld.Plane plane =
        draft.choice("plane", PLANES, member ? FilletWeld.Plane.ACROSS : FilletWeld.Plane.IN_PLANE);
    if (draft.has("leg") && draft.has("throat")) {
      return draft.fields().whole().refuse("leg and throat", "the one or the other");
    }
    boolean leg = draft.has("leg");
    double size = draft.amount(leg ? "leg" : "throat", Dimension.LENGTH);
    Optional<WeldStatement.Box> box = box(draft);
    List<FilletWeld.Seam> seams = seams(draft);
    Optional<String> material = material(draft);
    Optional<Double> thickness = draft.amountIfAny("thickness", Dimension.LENGTH);
    Optional<Double> electrode = draft.amountIfAny("electrode", Dimension.PRESSURE);
    return draft.made(
        () ->
            new WeldStatement(
                    draft.part(),
                    part,
                    cut,
                    body,
                    plane,
                    leg,
                    size,
                    box,
                    seams,
                    material,
                    thickness,
                    electrode)
                .checked(materials, thickest.apply(part)));
  }

  private static Optional<FilletWeld.Cut> cut(Draft draft) {
    List<String> bar = draft.twoPlaces("bar");
    double distance = draft.amount("distance", Dimension.LENGTH);
    return draft.made(() -> new FilletWeld.Cut(bar.get(0), bar.get(1), distance));
  }

  private Optional<WeldStatement.Box> box(Draft draft) {
    Optional<Spot> spot = draft.fields().find("box");
    if (spot.isEmpty()) {
      return Optional.empty();
    }
    List<Double> sizes =
        draft.orFail(
            reading
                .values()
                .pair(spot.get(), Dimension.LENGTH, "width and height such as [60 mm, 40 mm]"),
            List.of(1.0, 1.0));
    return draft.made(() -> new WeldStatement.Box(sizes.get(0), sizes.get(1)));
  }

  private static List<FilletWeld.Seam> seams(Draft draft) {
    Optional<Spot> spot = draft.fields().find("seams");
    List<FilletWeld.Seam> seams = new ArrayList<>();
    String wanted = "a list of seams, each [x, y of its start, x, y of its end]";
    if (spot.isPresent()) {
      for (Spot item : draft.orFail(spot.get().items(wanted), List.<Spot>of())) {
        List<Spot> four = draft.orFail(item.items(wanted), List.<Spot>of());
        if (four.size() != 4) {
          draft.fail();
          item.report(wanted);
          continue;
        }
        List<Double> at = four.stream().map(one -> draft.amount(one, Dimension.LENGTH)).toList();
        draft
            .made(() -> new FilletWeld.Seam(at.get(0), at.get(1), at.get(2), at.get(3)))
            .ifPresentOrElse(seams::add, draft::fail);
      }
    }
    return seams;
  }

  Optional<RatingStatement> rating(Draft draft) {
    String part = draft.textIfAny("part").orElse(draft.part());
    Optional<Stated> limit = stated(draft, "limit", Dimension.FORCE);
    int legs = draft.wholeNumber("legs", 1, 1);
    double angle = draft.amount("leg angle", Dimension.ANGLE, 0);
    List<ReductionStatement> reductions =
        items(
            draft,
            "reductions",
            FileKeys.REDUCTION,
            "{why: clips at its ends, table: \"rope end: clips\"}",
            DetailReader::reduction);
    return limit.flatMap(
        one ->
            draft.made(
                () -> new RatingStatement(draft.part(), part, one, legs, angle, reductions)));
  }

  private static Optional<ReductionStatement> reduction(Draft draft) {
    String why = draft.text("why", "what takes from the limit");
    Optional<Stated> share = stated(draft, "share", Dimension.NUMBER);
    return share.flatMap(one -> draft.made(() -> new ReductionStatement(why, one)));
  }

  /** A row of a table, or a value with its source. */
  private static Optional<Stated> stated(Draft draft, String key, Dimension dimension) {
    if (draft.has("table") && (draft.has(key) || draft.has("source"))) {
      draft.fail();
      return draft
          .fields()
          .whole()
          .refuse(
              "table beside " + key + " or source", "a row of the table, or a value of one's own");
    }
    if (draft.has("table")) {
      String row = draft.text("table", "the name of a row");
      return draft.made(() -> new Stated.Row(row));
    }
    double value = draft.amount(key, dimension);
    String source = draft.text("source", "where the value comes from");
    return draft.made(() -> new Stated.Own(value, source));
  }

  Optional<ChainSeat> seat(Draft draft) {
    String part = draft.text("part", "the name of a connection");
    String on = draft.text("on", "the member that has the notch");
    Direction depth = draft.direction("depth", Optional.empty());
    double opening = draft.amount("opening", Dimension.ANGLE);
    double friction = draft.amount("friction", Dimension.NUMBER);
    return draft.made(() -> new ChainSeat(draft.part(), part, on, depth, opening, friction));
  }

  private <T> List<T> items(
      Draft draft,
      String key,
      Set<String> keys,
      String example,
      Function<Draft, Optional<T>> maker) {
    Optional<Spot> spot = draft.fields().find(key);
    List<T> all = new ArrayList<>();
    String wanted = "a list, each such as " + example;
    if (spot.isPresent()) {
      for (Spot item : draft.orFail(spot.get().items(wanted), List.<Spot>of())) {
        Optional<Fields> fields = item.fields(wanted);
        fields.ifPresent(one -> one.only(keys));
        fields
            .flatMap(one -> maker.apply(new Draft(reading, draft.part(), item, one)))
            .ifPresentOrElse(all::add, draft::fail);
      }
    }
    return all;
  }
}
