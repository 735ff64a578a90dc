package bellcrank.examples.file;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code members} and the weights that stand with them. */
final class MembersReader {

  private static final String WANTED =
      "the points of a member, such as [A, B], or fields such as {bars: [A, B], weight: 12 kg}";
  private static final String CHAIN = "a chain such as [A, B, C] or pairs such as [[A, B], [B, C]]";

  private final Reading reading;

  MembersReader(Reading reading) {
    this.reading = reading;
  }

  /** The name of the load that is the weight of a member. */
  static String nameOfWeight(String member) {
    return member + " weight";
  }

  /** Takes the names, so that others may be told apart from unknown ones. */
  List<Named> declare(List<Named> stated) {
    return stated.stream()
        .filter(
            named -> reading.bodies().declare(named.text(), named.name(), BodyNames.Kind.MEMBER))
        .toList();
  }

  void read(Named named) {
    Optional<Member> member = member(named);
    if (member.isEmpty()) {
      reading.bodies().fail(named.text());
      return;
    }
    reading.device().member(member.get());
  }

  private Optional<Member> member(Named named) {
    Fields fields =
        named.value().isItems()
            ? new Fields(named.value(), List.of())
            : named.value().fields(WANTED).orElse(new Fields(named.value(), List.of()));
    fields.only(FileKeys.MEMBER);
    reading.index().add(PartIndex.Section.MEMBER, named.text(), named.name(), Optional.of(fields));
    Draft draft = new Draft(reading, named.text(), named.name(), fields);
    if (named.value().isItems()) {
      List<Bar> chain = bars(draft, named.value());
      return draft.made(() -> new Member(named.text(), List.of(), chain, List.of(), 1));
    }
    if (!named.value().isFields()) {
      draft.fail();
    }
    List<String> points = places(draft, "points", "point ");
    List<Bar> bars = fields.find("bars").map(spot -> bars(draft, spot)).orElse(List.of());
    List<String> outline = places(draft, "outline", "corner ");
    int count = draft.count();
    Optional<Member> member =
        draft.made(() -> new Member(named.text(), points, bars, outline, count));
    fields.find("weight").ifPresent(spot -> weight(named.text(), spot, member.isPresent()));
    return member;
  }

  /** Places in a row; one of coordinates is called by its number, since answers speak of it. */
  private static List<String> places(Draft draft, String key, String one) {
    Optional<Spot> stated = draft.fields().find(key);
    if (stated.isEmpty()) {
      return List.of();
    }
    Optional<List<Spot>> items = stated.get().items("a list of places such as [A, B, C]");
    List<String> places = new ArrayList<>();
    for (Spot item : draft.orFail(items, List.of())) {
      places.add(draft.place(item, one + (places.size() + 1)));
    }
    return places;
  }

  private List<Bar> bars(Draft draft, Spot spot) {
    List<Spot> items = draft.orFail(spot.items(CHAIN), List.of());
    List<Bar> bars = new ArrayList<>();
    if (!items.isEmpty() && items.stream().allMatch(this::isPair)) {
      for (Spot pair : items) {
        List<Spot> ends = pair.itemsIfAny();
        bar(draft, pair, draft.place(ends.get(0)), draft.place(ends.get(1)), bars);
      }
      return bars;
    }
    if (items.size() < 2) {
      if (spot.isItems()) {
        spot.report(CHAIN);
      }
      draft.fail();
      return bars;
    }
    String before = draft.place(items.get(0));
    for (Spot item : items.subList(1, items.size())) {
      String next = draft.place(item);
      bar(draft, item, before, next, bars);
      before = next;
    }
    return bars;
  }

  private static void bar(Draft draft, Spot spot, String start, String end, List<Bar> bars) {
    if (start.isEmpty() || end.isEmpty()) {
      return;
    }
    try {
      bars.add(new Bar(start, end));
    } catch (ModelException e) {
      draft.fail();
      e.problems().forEach(one -> spot.report(one.value(), one.wanted()));
    }
  }

  /** Whether a list of two is the two ends of a bar rather than the coordinates of one place. */
  private boolean isPair(Spot spot) {
    List<Spot> two = spot.itemsIfAny();
    if (two.size() != 2) {
      return false;
    }
    boolean named =
        two.stream()
            .allMatch(
                end ->
                    end.isItems() || end.textIfAny().filter(reading.points()::isKnown).isPresent());
    return named || !two.stream().allMatch(reading.values()::isLength);
  }

  private void weight(String member, Spot spot, boolean memberRead) {
    String name = nameOfWeight(member);
    boolean free = reading.parts().declare(name, spot);
    Optional<Fields> stated = spot.isFields() ? spot.fields("") : Optional.empty();
    Fields fields = stated.orElse(new Fields(spot, List.of()));
    fields.only(FileKeys.MEMBER_WEIGHT);
    Draft draft = new Draft(reading, name, spot, fields);
    Optional<Spot> value =
        stated.isPresent()
            ? fields.need("value", "a force such as 60 N or a mass such as 12 kg")
            : Optional.of(spot);
    double mass = draft.orFail(value.flatMap(reading.values()::mass), 1.0);
    Optional<String> at = fields.find("at").map(draft::place);
    draft
        .made(() -> new Weight(name, member, at, mass))
        .filter(weight -> free && memberRead)
        .ifPresent(
            weight -> {
              reading.index().add(PartIndex.Section.PART, name, spot, Optional.of(fields));
              reading.device().load(weight);
              reading.parts().add(weight);
            });
  }
}
