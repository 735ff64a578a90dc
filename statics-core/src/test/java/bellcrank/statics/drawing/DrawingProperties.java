package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.RandomDevices;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for the pictures of any device. */
class DrawingProperties {

  /** A worse condition than this leaves more rounding than a zero may have. */
  private static final double BADLY_CONDITIONED = 1e6;

  @Provide
  Arbitrary<Device> medium() {
    return RandomDevices.medium();
  }

  @Provide
  Arbitrary<Device> small() {
    return RandomDevices.small();
  }

  private static List<String> bodies(Device device) {
    List<String> names = FreeBody.names(device);
    Assume.that(!names.isEmpty());
    return names;
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void everyGroupIsInBalanceWithWhatIsDrawn(
      @ForAll("medium") Device device, @ForAll Random random) {
    Balance balance = Balance.of(device);
    Assume.that(balance.condition() < BADLY_CONDITIONED);
    List<String> all = bodies(device);
    // what loads each body, also where the whole feels none of it: springs between its bodies
    double largest = 0;
    for (String body : all) {
      FreeBody alone = FreeBody.of(balance, List.of(body));
      largest = Math.max(largest, alone.scale());
      for (ActingCouple couple : alone.couples()) {
        largest = Math.max(largest, Math.abs(couple.moment()) / device.size());
      }
    }
    closes(FreeBody.of(balance), largest);
    for (String body : all) {
      closes(FreeBody.of(balance, List.of(body)), largest);
    }
    for (int i = 0; i < 4; i++) {
      List<String> group = new ArrayList<>(all);
      group.removeIf(body -> random.nextInt(3) == 0);
      if (!group.isEmpty()) {
        closes(FreeBody.of(balance, group), largest);
      }
    }
  }

  private static void closes(FreeBody body, double largest) {
    if (!body.reactions() || !body.openForces().isEmpty() || !body.openCouples().isEmpty()) {
      return;
    }
    Point middle = body.device().middle();
    Vector sum = Vector.ZERO;
    double moment = 0;
    double size = largest;
    for (ActingForce force : body.forces()) {
      sum = sum.plus(force.vector());
      moment += middle.to(force.at()).cross(force.vector());
      size = Math.max(size, force.size());
    }
    for (SpreadForce spread : body.spreads()) {
      sum = sum.plus(spread.total());
      moment += middle.to(spread.middle()).cross(spread.total()) + spread.couple();
    }
    for (ActingCouple couple : body.couples()) {
      moment += couple.moment();
    }
    double close = 1e-8 * (size + 1e-6);
    assertThat(sum.x()).as("x on %s", body).isCloseTo(0, within(close));
    assertThat(sum.y()).as("y on %s", body).isCloseTo(0, within(close));
    boolean joints = body.bodies().stream().allMatch(one -> isJoint(body.device(), one));
    if (!joints) {
      assertThat(moment)
          .as("moment on %s", body)
          .isCloseTo(0, within(close * body.device().size()));
    }
  }

  private static boolean isJoint(Device device, String body) {
    return device.bodyIndex(body) >= device.members().size();
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void everyForceIsDrawnOnceToScaleAndNoLabelOverlaps(@ForAll("medium") Device device) {
    Balance balance = Balance.of(device);
    picture(FreeBodyDrawing.of(balance));
    for (String body : bodies(device)) {
      picture(FreeBodyDrawing.of(balance, List.of(body)));
      Picture.of(ForcePolygon.of(balance, List.of(body)).svg()).isWellMade().isToScale();
    }
    Picture.of(ForcePolygon.of(balance).svg()).isWellMade();
    Picture.of(DeviceDrawing.of(device).svg()).isWellMade();
  }

  private static void picture(FreeBodyDrawing drawing) {
    FreeBody body = drawing.freeBody();
    Picture picture = Picture.of(drawing.svg()).isWellMade().isToScale();
    List<String> wanted = new ArrayList<>();
    body.forces().stream()
        .filter(force -> !body.isZero(force.size()))
        .forEach(force -> wanted.add(force.symbol() + force.on() + force.vector()));
    body.spreads().stream()
        .filter(spread -> spread.start().norm() + spread.end().norm() > 0)
        .forEach(spread -> wanted.add(spread.part() + spread.on() + spread.total()));
    assertThat(picture.forces())
        .extracting(shown -> shown.name() + shown.on() + shown.force())
        .containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(picture.open()).hasSize(body.openForces().size() + body.openCouples().size());
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void componentsAndLogarithmsKeepTheSums(@ForAll("small") Device device) {
    Balance balance = Balance.of(device);
    DrawingOptions options =
        DrawingOptions.USUAL.withComponents().withArrows(ArrowScale.LOGARITHMIC);
    for (String body : bodies(device)) {
      FreeBodyDrawing drawing = FreeBodyDrawing.of(balance, List.of(body));
      Picture usual = Picture.of(drawing.svg());
      Picture parts = Picture.of(drawing.with(options).svg()).isWellMade().isToScale();
      double close = 1e-8 * drawing.freeBody().scale() * (1 + parts.forces().size());
      assertThat(sum(parts).minus(sum(usual)).norm()).isLessThanOrEqualTo(close);
    }
  }

  private static Vector sum(Picture picture) {
    return picture.forces().stream().map(Picture.Shown::force).reduce(Vector.ZERO, Vector::plus);
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void neighboursHaveOppositeForces(@ForAll("medium") Device device) {
    Balance balance = Balance.of(device);
    Assume.that(balance.condition() < BADLY_CONDITIONED);
    for (var connection : device.connections()) {
      Set<String> two = new HashSet<>(connection.bodies());
      boolean moving = two.stream().allMatch(body -> device.bodyIndex(body) >= 0);
      boolean rope = connection.kind().equals("reeving") || connection.kind().equals("wrap");
      boolean loaded = new Cut(device, bodies(device), true).isLoaded(connection.name());
      if (two.size() == 2 && moving && !rope && !loaded) {
        List<String> names = List.copyOf(two);
        Vector first = on(balance, connection.name(), names.get(0));
        Vector second = on(balance, connection.name(), names.get(1));
        double close = 1e-8 * (1 + first.norm());
        assertThat(first.plus(second).norm()).as(connection.name()).isLessThanOrEqualTo(close);
      }
    }
  }

  private static Vector on(Balance balance, String connection, String body) {
    return FreeBody.of(balance, List.of(body)).forces().stream()
        .filter(force -> force.part().equals(connection) && force.origin() == Origin.CONNECTION)
        .map(ActingForce::vector)
        .reduce(Vector.ZERO, Vector::plus);
  }
}
