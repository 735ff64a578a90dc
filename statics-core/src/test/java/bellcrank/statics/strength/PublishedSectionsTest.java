package bellcrank.statics.strength;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.geometry.Point;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Properties of published sections and answers of textbook problems, to half a unit of the last
 * digit that can be met. Where a source errs, the row has the right value as well.
 */
class PublishedSectionsTest {

  private static final double IN = 0.0254;
  private static final double MM = 1e-3;
  private static final double CM = 1e-2;

  /** 490 lb/ft³, on which the weights rest. */
  private static final double STEEL = 490 * 0.45359237 / Math.pow(0.3048, 3);

  private static final Map<String, Double> UNITS =
      Map.ofEntries(
          entry("1", 1.0),
          entry("m", 1.0),
          entry("m2", 1.0),
          entry("m4", 1.0),
          entry("in", IN),
          entry("in2", Math.pow(IN, 2)),
          entry("in3", Math.pow(IN, 3)),
          entry("in4", Math.pow(IN, 4)),
          entry("cm", CM),
          entry("cm2", Math.pow(CM, 2)),
          entry("cm3", Math.pow(CM, 3)),
          entry("cm4", Math.pow(CM, 4)),
          entry("mm4", Math.pow(MM, 4)),
          entry("lb/ft", 0.45359237 / 0.3048));

  @ParameterizedTest(name = "{0}: {1} = {2} {3}")
  @CsvFileSource(resources = "/reference-data/sections.csv", numLinesToSkip = 1)
  void agreesWithThePublishedValue(ArgumentsAccessor row) {
    Map<String, DoubleSupplier> known = known(row.getString(0));
    double unit = Objects.requireNonNull(UNITS.get(row.getString(3)));
    double value = Objects.requireNonNull(known.get(row.getString(1))).getAsDouble() / unit;
    String printed = row.getString(2);
    String checked = row.getString(5);
    BigDecimal right = new BigDecimal(checked == null ? printed : checked);
    int exponent = right.precision() - right.scale() - 1;
    double half = 0.5 * Math.pow(10, exponent - row.getInteger(4) + 1);
    assertThat(value).isCloseTo(right.doubleValue(), within(half));
    if (checked != null) {
      double wrong = Double.parseDouble(printed);
      assertThat(Math.abs(value - wrong)).as("the printed value is wrong").isGreaterThan(half);
    }
  }

  private static Map<String, DoubleSupplier> known(String id) {
    return switch (id) {
      case "ai-L6x4x7-8" -> angle(Profiles.angle(4 * IN, 6 * IN, 0.875 * IN));
      case "ai-L6x6x1" -> angle(Profiles.angle(6 * IN, 6 * IN, IN));
      case "eu-HEA100" -> of(beam(96, 100, 5, 8, 12));
      case "eu-HEB100" -> of(beam(100, 100, 6, 10, 12));
      case "eu-IPE100" -> of(beam(100, 55, 4.1, 5.7, 7));
      case "eu-IPE80" -> of(beam(80, 46, 3.8, 5.2, 5));
      case "st-sec-pp12" -> of(Profiles.pipe(12 * IN, 0.25 * IN));
      case "st-sec-pp1234" -> of(Profiles.pipe(12.75 * IN, 0.375 * IN));
      case "st-sec-pipe2" -> of(Profiles.pipe(2.375 * IN, (2.375 - 2.067) / 2 * IN));
      case "st-sec-pipe4" -> of(Profiles.pipe(4.5 * IN, (4.5 - 4.026) / 2 * IN));
      case "st-sec-hss316" -> of(Profiles.formedTube(4 * IN, 4 * IN, 0.174 * IN));
      case "st-sec-hss4" -> hss4();
      case "es-10.3-ring" -> ring();
      case "es-10.3-triangle" -> triangle();
      case "es-10.4-builtup" -> builtUp();
      case "es-10.4-fillet" -> fillet();
      case "es-10.4-lumber" -> lumber();
      case "es-10.4-tee" -> tee();
      case "es-10.6-polar" -> polar();
      case "es-10.ex-arch" -> arch();
      case "es-10.ex-box" -> box();
      case "es-10.ex-channels" -> channels();
      default -> throw new AssertionError(id + " is not worked out");
    };
  }

  private static Profile beam(double h, double b, double tw, double tf, double r) {
    return Profiles.beam(h * MM, b * MM, tw * MM, tf * MM, r * MM);
  }

  private static Map<String, DoubleSupplier> of(Profile profile) {
    Section section = profile.section();
    return Map.of(
        "A", section::area,
        "I", section::inertia,
        "Iside", section::sideInertia,
        "W", section::topModulus,
        "Wside", profile.turned().section()::topModulus,
        "Wpolar", () -> (section.inertia() + section.sideInertia()) / section.top(),
        "r", section::gyration,
        "w", () -> section.massPerLength(STEEL));
  }

  private static Map<String, DoubleSupplier> angle(Profile profile) {
    Point centroid = profile.shape().moments().centroid();
    Section section = profile.section();
    return Map.of(
        "A", section::area,
        "x", centroid::x,
        "y", centroid::y,
        "I", section::inertia,
        "Iside", section::sideInertia);
  }

  private static Map<String, DoubleSupplier> hss4() {
    Section design = Profiles.formedTube(4 * IN, 4 * IN, 0.233 * IN).section();
    Section nominal = Profiles.formedTube(4 * IN, 4 * IN, 0.25 * IN).section();
    return Map.of(
        "A", design::area, "r", design::gyration, "w", () -> nominal.massPerLength(STEEL));
  }

  private static Map<String, DoubleSupplier> ring() {
    Shape ring = Profiles.pipe(90 * MM, 15 * MM).shape().moved(125 * MM, 0);
    return Map.of("Iy", ring.moments()::secondX, "I", ring.moments().aboutCentroid()::secondX);
  }

  private static Map<String, DoubleSupplier> triangle() {
    AreaMoments moments =
        Shape.polygon(List.of(Point.of(0, 0), Point.of(60 * MM, 0), Point.of(10 * MM, 90 * MM)))
            .moments();
    return Map.of("Ibase", moments::secondY, "I", moments.aboutCentroid()::secondY);
  }

  private static Map<String, DoubleSupplier> builtUp() {
    AreaMoments plate = Shape.rectangle(-4 * IN, -IN, 8 * IN, IN).moments();
    AreaMoments angle =
        AreaMoments.of(4.75 * IN * IN, Point.of(0, 1.98 * IN), 0, 17.3 * Math.pow(IN, 4), 0);
    AreaMoments all = plate.plus(angle).plus(angle);
    return Map.of("y", all.centroid()::y, "I", all.aboutCentroid()::secondY);
  }

  private static Map<String, DoubleSupplier> fillet() {
    Shape shape =
        Shape.rectangle(0, 0, 9 * IN, 3 * IN)
            .and(Shape.rectangle(0, 3 * IN, 3 * IN, 7 * IN))
            .and(Shape.fillet(3 * IN, 3 * IN, 3 * IN, 3 * IN));
    return Map.of("Ix", shape.moments()::secondY);
  }

  private static Map<String, DoubleSupplier> lumber() {
    double first = Profiles.rectangle(1.5 * IN, 5.5 * IN).sideBySide(3, 0).section().inertia();
    double second = Profiles.beam(8.5 * IN, 5.5 * IN, 1.5 * IN, 1.5 * IN, 0).section().inertia();
    return Map.of("I1", () -> first, "I2", () -> second, "ratio", () -> second / first);
  }

  private static Map<String, DoubleSupplier> tee() {
    AreaMoments moments =
        Profiles.tee(80 * MM, 90 * MM, 30 * MM, 20 * MM, 0).shape().moved(45 * MM, 0).moments();
    return Map.of("Ix", moments::secondY, "Iy", moments::secondX);
  }

  private static Map<String, DoubleSupplier> polar() {
    Shape quarter = Shape.disc(0, 0, 2).within(0, 0, 2, 2);
    AreaMoments segment =
        quarter
            .without(Shape.polygon(List.of(Point.of(0, 0), Point.of(1, 0), Point.of(0, 1))))
            .moments();
    double polar = segment.secondX() + segment.secondY();
    return Map.of(
        "A", segment::area, "J", () -> polar, "k", () -> Math.sqrt(polar / segment.area()));
  }

  private static Map<String, DoubleSupplier> arch() {
    AreaMoments moments =
        Shape.rectangle(0, 0, 8 * CM, 6 * CM)
            .and(Shape.disc(4 * CM, 6 * CM, 8 * CM).above(6 * CM))
            .without(Shape.disc(4 * CM, 6 * CM, 4 * CM))
            .moments();
    return Map.of(
        "A", moments::area,
        "Ix", moments::secondY,
        "kx", () -> Math.sqrt(moments.secondY() / moments.area()),
        "Iy", moments::secondX,
        "ky", () -> Math.sqrt(moments.secondX() / moments.area()));
  }

  private static Map<String, DoubleSupplier> box() {
    AreaMoments moments =
        Shape.rectangle(0, 0, 12 * IN, 14 * IN)
            .without(Shape.rectangle(2 * IN, 4 * IN, 8 * IN, 8 * IN))
            .moments();
    return Map.of("y", moments.centroid()::y, "I", moments.aboutCentroid()::secondY);
  }

  private static Map<String, DoubleSupplier> channels() {
    double in4 = Math.pow(IN, 4);
    AreaMoments right =
        AreaMoments.of(4.48 * IN * IN, Point.of(3.634 * IN, 0), 2.27 * in4, 67.3 * in4, 0);
    AreaMoments left = right.moved(-2 * 3.634 * IN, 0);
    AreaMoments plates =
        Shape.rectangle(-6 * IN, 5 * IN, 12 * IN, 0.5 * IN)
            .and(Shape.rectangle(-6 * IN, -5.5 * IN, 12 * IN, 0.5 * IN))
            .moments();
    AreaMoments all = right.plus(left).plus(plates);
    return Map.of(
        "I",
        all::secondY,
        "k",
        () -> Math.sqrt(all.secondY() / all.area()),
        "Iside",
        all::secondX,
        "kside",
        () -> Math.sqrt(all.secondX() / all.area()));
  }
}
