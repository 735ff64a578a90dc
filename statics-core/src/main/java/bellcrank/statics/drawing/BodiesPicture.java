package bellcrank.statics.drawing;

import bellcrank.statics.device.Body;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Spring;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Draws bodies with what joins them to one another. */
final class BodiesPicture {

  private static final double JOINT = 4.5;

  private final Scene scene;
  private final View view;
  private final Places places;
  private final Device device;
  private final List<String> bodies;

  BodiesPicture(Scene scene, View view, Places places, List<String> bodies) {
    this.scene = scene;
    this.view = view;
    this.places = places;
    device = places.device();
    this.bodies = bodies;
  }

  /**
   * Draws the bodies.
   *
   * @param loads places of the world at which loads act, by body
   */
  void bodies(Map<String, List<Point>> loads) {
    Map<String, List<Point>> further = new HashMap<>();
    loads.forEach((body, points) -> further.put(body, new ArrayList<>(points)));
    for (Connection connection : device.connections()) {
      // what slides has its place on its first body
      boolean onePlace = connection.places().stream().distinct().count() == 1;
      int carriers = onePlace && !(connection instanceof Pin) ? 1 : connection.bodies().size();
      for (int i = 0; i < carriers; i++) {
        String body = connection.bodies().get(i);
        further
            .computeIfAbsent(body, key -> new ArrayList<>())
            .add(places.of(body, connection.places().get(i)));
      }
    }
    for (String name : bodies) {
      Body body = device.body(name).orElseThrow();
      if (body instanceof Member member) {
        new MemberShapes(scene, view, places).draw(member, further.getOrDefault(name, List.of()));
      } else if (body instanceof Joint joint) {
        scene.circle(Layer.PIN, "sheave", view.at(places.of(name, joint.at())), JOINT);
      }
    }
  }

  /** Draws connections and springs between the bodies; pins and sheaves of those that are cut. */
  void inside() {
    LinkShapes links = new LinkShapes(scene, view, places);
    for (Connection connection : device.connections()) {
      if (bodies.containsAll(connection.bodies())) {
        new SupportShapes(scene, view, places).draw(connection, false);
      } else {
        links.sheaves(connection, bodies::contains);
        if (connection instanceof Pin pin) {
          hole(pin);
        } else if (connection instanceof ContactBase base && bodies.contains(base.body())) {
          new SupportShapes(scene, view, places).foot(base);
        }
      }
    }
    for (Load load : device.loads()) {
      if (load instanceof Spring spring
          && bodies.contains(spring.first().body())
          && bodies.contains(spring.second().body())) {
        links.spring(spring);
      }
    }
  }

  private void hole(Pin pin) {
    pin.bodies().stream()
        .filter(bodies::contains)
        .findFirst()
        .ifPresent(
            body -> scene.circle(Layer.PIN, "hole", view.at(places.of(body, pin.at())), 3.6));
  }

  /** Names of the bodies, at the middle of each. */
  void names() {
    for (String name : bodies) {
      Point at = view.at(new Centres(places).of(name));
      double gap = device.body(name).orElseThrow() instanceof Joint ? JOINT + 4 : 8;
      scene.label(ForceLabels.round(TextWidth.lines(name), "body-name", at, gap));
    }
  }
}
