package bellcrank.statics.device;

import java.util.List;

/** Finds what keeps a device from answering greatest or least of an ask. */
final class ExtremeCheck {

  private final Ask within;
  private final Device device;
  private final AskEndings endings;
  private final AskCheck plain;

  /** Checks what greatest or least stands before. */
  ExtremeCheck(Ask within, Device device, AskEndings endings) {
    this.within = within;
    this.device = device;
    this.endings = endings;
    plain = new AskCheck(within, device, endings);
  }

  void all() {
    if (within.subject() instanceof Subject.Multiple multiple) {
      multiple(multiple.loads());
    } else if (within.subject() instanceof Subject.Place place) {
      endings.known("force or weight at a point of a member", List.of(place.load()), movable());
      plain.whole("a distance", PartMeasures.PLACE);
    } else if (within.subject() instanceof Subject.Whole
        || within.measure() == Measure.EFFICIENCY
        || within.measure() == Measure.RETURN_EFFICIENCY
        || AskCheck.isWords(within)) {
      endings.problem(
          within.text(),
          "an ask for a number that may differ from state to state, or multiple, multiple(LOAD)"
              + " or distance(LOAD) along A–B");
    } else {
      plain.plain(within.subject());
    }
  }

  private void multiple(List<String> loads) {
    endings.known("given load", loads, plain.givenLoads());
    boolean some =
        device.loads().stream().anyMatch(one -> !(one instanceof Sought || one instanceof Weight));
    if (loads.isEmpty() && !some) {
      endings.problem(
          "multiple", "a device with a given load that is no weight, or multiple(LOAD)");
    }
    plain.whole("a multiple", PartMeasures.MULTIPLE);
  }

  private List<String> movable() {
    return device.loads().stream().filter(this::isMovable).map(Load::name).toList();
  }

  private boolean isMovable(Load load) {
    return (load instanceof Force force && isMember(force.body()))
        || (load instanceof Weight weight && weight.at().isPresent() && isMember(weight.body()));
  }

  private boolean isMember(String body) {
    return device.body(body).filter(Member.class::isInstance).isPresent();
  }
}
