package bellcrank.examples.file;

import bellcrank.examples.file.FormedSection.Hole;
import bellcrank.examples.file.FormedSection.Stands;
import bellcrank.examples.file.RatingStatement.ReductionStatement;
import bellcrank.examples.file.RatingStatement.Stated;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.strength.ChainSeat;
import bellcrank.statics.strength.Check;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.Method;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Makes sizings of a device with everything in them that a file can state. */
final class RandomSizing {

  private static final String TABLE = "A500 grade C (ASTM 2021)";

  private final Random random;
  private final Device device;

  RandomSizing(Random random, Device device) {
    this.random = random;
    this.device = device;
  }

  /** The file with a sizing, and perhaps with loads that grow. */
  DeviceFile in(DeviceFile file) {
    List<String> given =
        device.loads().stream()
            .filter(load -> !(load instanceof Sought))
            .map(Load::name)
            .filter(
                name -> file.limits().values().stream().anyMatch(limit -> limit.equals(of(name))))
            .toList();
    Optional<Driving> driving =
        given.isEmpty() || random.nextBoolean()
            ? Optional.empty()
            : Optional.of(new Driving(given.subList(0, 1), List.of(Ask.parse("resultant.x"))));
    return file.with(sizing(), driving);
  }

  private static Object of(String name) {
    return new Driving(List.of(name), List.of()).variation();
  }

  private SizingStatement sizing() {
    Materials materials =
        random.nextBoolean()
            ? new Materials(Map.of())
            : new Materials(Map.of("y: no", own("y: no")));
    String material = materials.own().isEmpty() ? TABLE : "y: no";
    Map<String, PartStatement> parts = new LinkedHashMap<>();
    List<ColumnEnds> columns = new ArrayList<>();
    List<PinStatement> pins = new ArrayList<>();
    List<WeldStatement> welds = new ArrayList<>();
    List<RatingStatement> ratings = new ArrayList<>();
    List<ChainSeat> seats = new ArrayList<>();
    for (Member member : device.members()) {
      if (!member.bars().isEmpty()) {
        Bar bar = member.bars().get(0);
        SizedStatement whole = sized(material);
        Map<Bar, SizedStatement> bars =
            random.nextBoolean() ? Map.of() : Map.of(bar, sized(material));
        parts.put(member.name(), new PartStatement(whole, bars));
        welds.add(weld(member.name(), Optional.of(cut(bar)), Optional.empty(), material));
      }
    }
    for (Connection connection : device.connections()) {
      String name = connection.name();
      String body = connection.bodies().get(0);
      if (connection instanceof Strut) {
        parts.put(name, new PartStatement(sized(material), Map.of()));
        columns.add(
            random.nextBoolean()
                ? ColumnEnds.pinned(name)
                : new ColumnEnds(
                    name,
                    Optional.empty(),
                    Optional.empty(),
                    size(),
                    size(),
                    ColumnEnds.Curve.A0,
                    "held: somehow"));
      }
      if (connection instanceof Pin) {
        pins.add(pin(name, body, material));
        welds.add(weld(name, Optional.empty(), Optional.of(body), material));
      }
      ratings.add(rating(name));
      seats.add(
          new ChainSeat(
              "seat " + seats.size(), name, body, Direction.ofAngle(size()), size(), size()));
    }
    List<FactorStatement> rules =
        List.of(new FactorStatement(Check.SHEAR.name(), size(), meaning(), "so: it is"));
    Method method = random.nextBoolean() ? Method.ALLOWABLE : Method.RESISTANCE;
    return new SizingStatement(
        method, materials, parts, columns, pins, welds, ratings, seats, rules);
  }

  private Optional<String> meaning() {
    return random.nextBoolean() ? Optional.empty() : Optional.of("all of it");
  }

  private double size() {
    return 0.01 + 0.9 * random.nextDouble();
  }

  private static Material own(String name) {
    Map<Material.Strength, Double> strengths = new EnumMap<>(Material.Strength.class);
    for (Material.Strength strength : Material.Strength.values()) {
      strengths.put(strength, 1e7 / 3);
    }
    return new Material(
        name, Material.Kind.TIMBER, 1e10 / 7, OptionalDouble.empty(), strengths, "made up");
  }

  private SizedStatement sized(String material) {
    return new SizedStatement(
        random.nextInt(4) == 0 ? Optional.empty() : Optional.of(section()),
        random.nextInt(4) == 0 ? Optional.empty() : Optional.of(material));
  }

  private SectionStatement section() {
    double d = size();
    return switch (random.nextInt(6)) {
      case 0 -> FormedSection.of(SectionForm.ROUND, List.of(d));
      case 1 -> FormedSection.of(SectionForm.PIPE, List.of(d, d / 7));
      case 2 -> FormedSection.of(SectionForm.TUBE, List.of(d, d, d / 9, d / 5, d / 11));
      case 3 -> FormedSection.of(SectionForm.ANGLE, List.of(d, 2 * d, d / 9));
      case 4 ->
          new OwnSection(
              "n°: 1", d * d, d, d, d / 3, d * d / 2, d / 3, d, d / 9, Optional.of(d / 4));
      default ->
          new FormedSection(
              SectionForm.RECTANGLE,
              List.of(d, d),
              random.nextBoolean() ? Stands.TURNED : Stands.UPSIDE_DOWN,
              2,
              d / 3,
              Optional.empty(),
              List.of(new Hole.Across(d / 7, d / 2), new Hole.Upright(d / 9, d / 2, d / 10, d / 5)),
              d / 20,
              d / 30,
              2);
    };
  }

  private FilletWeld.Cut cut(Bar bar) {
    return new FilletWeld.Cut(bar.start(), bar.end(), 0);
  }

  private WeldStatement weld(
      String part, Optional<FilletWeld.Cut> cut, Optional<String> body, String material) {
    return new WeldStatement(
        "weld, of " + part.length() + " " + random.nextInt(),
        part,
        cut,
        body,
        cut.isPresent() ? FilletWeld.Plane.ACROSS : FilletWeld.Plane.IN_PLANE,
        random.nextBoolean(),
        size(),
        random.nextBoolean()
            ? Optional.of(new WeldStatement.Box(size(), size()))
            : Optional.empty(),
        List.of(new FilletWeld.Seam(0, -size(), size(), 0)),
        Optional.of(material),
        Optional.of(size()),
        random.nextBoolean() ? Optional.of(1e8 * size()) : Optional.empty());
  }

  private PinStatement pin(String name, String body, String material) {
    double d = size();
    return new PinStatement(
        name,
        d,
        1 + random.nextInt(2),
        Optional.of(material).filter(any -> random.nextBoolean()),
        List.of(
            new PinStatement.PlateStatement(
                body, 2, d / 3, d * 1.1, 2 * d, 3 * d, Optional.of(material))),
        random.nextBoolean() ? 0 : d / 9);
  }

  private RatingStatement rating(String part) {
    boolean table = random.nextBoolean();
    Stated limit =
        table ? new Stated.Row("Grade 80 chain 3/8 in") : new Stated.Own(size(), "a: tag");
    List<ReductionStatement> reductions =
        List.of(
            new ReductionStatement("clips", new Stated.Row("rope end: clips")),
            new ReductionStatement("bent", new Stated.Own(0.5 + size() / 3, "made up")));
    return new RatingStatement(
        random.nextBoolean() ? part : "rated " + part.length() + " " + random.nextInt(),
        part,
        limit,
        1 + random.nextInt(3),
        random.nextBoolean() ? 0 : size(),
        reductions);
  }
}
