package bellcrank.examples.file;

import bellcrank.statics.device.End;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Strut;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code joints} and {@code truss}. */
final class JointsReader {

  private static final String JOINTS_WANTED =
      "a list of points such as [A, B], or names with places such as {ring: A}";
  private static final String BARS_WANTED = "a list of bars such as [[A, B], [B, C]]";
  private static final String BAR_WANTED = "the two points of a bar, such as [A, B]";

  private final Reading reading;

  /** Points of the truss at which no joint can be; said once. */
  private final Set<String> without = new HashSet<>();

  JointsReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads the joints that are stated one by one. */
  void joints(Spot spot) {
    if (spot.isItems()) {
      for (Spot item : spot.itemsIfAny()) {
        Optional<String> point = point(item);
        Optional<String> name = item.textIfAny().filter(text -> !text.isBlank());
        name.ifPresent(joint -> joint(joint, item, point));
      }
      return;
    }
    spot.fields(JOINTS_WANTED)
        .ifPresent(
            fields -> {
              for (Named named : fields.named()) {
                Optional<String> point =
                    reading.points().place(named.value(), reading.values(), reading.device());
                joint(named.text(), named.name(), point);
              }
            });
  }

  private Optional<String> point(Spot item) {
    return item.isText() ? reading.points().named(item) : item.refuse("the name of a point");
  }

  private void joint(String name, Spot spot, Optional<String> point) {
    if (!reading.bodies().declare(name, spot, BodyNames.Kind.JOINT)) {
      return;
    }
    if (point.isEmpty()) {
      reading.bodies().fail(name);
      return;
    }
    try {
      reading.device().joint(new Joint(name, point.get()));
      reading.bodies().placeJoint(name, point.get());
      reading.index().add(PartIndex.Section.JOINT, name, spot, Optional.empty());
    } catch (ModelException e) {
      reading.bodies().fail(name);
      e.problems().forEach(one -> spot.report(one.value(), one.wanted()));
    }
  }

  /** Reads the bars of the truss and makes their joints and struts. */
  void truss(Spot spot) {
    for (Spot bar : spot.items(BARS_WANTED).orElse(List.of())) {
      List<Spot> ends = bar.itemsIfAny();
      if (ends.size() != 2) {
        bar.report(BAR_WANTED);
        continue;
      }
      Optional<String> first = end(ends.get(0));
      Optional<String> second = end(ends.get(1));
      String name = nameOfBar(ends.get(0), ends.get(1));
      if (reading.parts().declare(name, bar) && first.isPresent() && second.isPresent()) {
        strut(name, bar, first.get(), second.get());
      }
    }
  }

  private static String nameOfBar(Spot first, Spot second) {
    return nameOfBar(first.textIfAny().orElse("?"), second.textIfAny().orElse("?"));
  }

  /** The name that a bar of a truss gets. */
  static String nameOfBar(String first, String second) {
    return first + "–" + second;
  }

  private void strut(String name, Spot bar, String first, String second) {
    if (first.equals(second)) {
      bar.report("two different points");
      return;
    }
    Optional<String> a = reading.bodies().jointAt(first);
    Optional<String> b = reading.bodies().jointAt(second);
    if (a.isEmpty() || b.isEmpty()) {
      return;
    }
    try {
      Strut strut = new Strut(name, End.of(a.get(), first), End.of(b.get(), second), 0);
      reading.device().connect(strut);
      reading.parts().add(strut);
      reading.index().add(PartIndex.Section.PART, name, bar, Optional.empty());
    } catch (ModelException e) {
      e.problems().forEach(one -> bar.report(one.value(), one.wanted()));
    }
  }

  /** The point of a bar's end, with a joint there. */
  private Optional<String> end(Spot spot) {
    Optional<String> point = point(spot);
    if (point.isPresent()
        && reading.bodies().jointAt(point.get()).isEmpty()
        && !without.contains(point.get())) {
      joint(point.get(), spot, point);
      if (reading.bodies().jointAt(point.get()).isEmpty()) {
        without.add(point.get());
      }
    }
    return point;
  }
}
