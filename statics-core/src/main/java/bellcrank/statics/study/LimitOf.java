package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.device.Subject;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.internal.LimitRates;
import java.util.Optional;

/** Tells which limit a figure is, if it is one whose rates can be had exactly. */
final class LimitOf {

  private final Model model;
  private final Device device;
  private final Figure figure;

  LimitOf(Model model, Figure figure) {
    this.model = model;
    device = model.device();
    this.figure = figure;
  }

  Optional<LimitRates> find(FigureAnswer.Is stated) {
    // what ground gives depends on the forces, or is added to friction
    if (!model.foundations().isEmpty()) {
      return Optional.empty();
    }
    LoadCase loadCase = figure.loadCase(device);
    if (figure instanceof Figure.FirstFailure failure) {
      return model.sizing().isPresent()
          ? Optional.empty()
          : LimitRates.multiple(device, loadCase, failure.driving().varied(device), true);
    }
    return figure instanceof Figure.OfAsk one
        ? find(one.ask(), loadCase, stated.si())
        : Optional.empty();
  }

  private Optional<LimitRates> find(Ask ask, LoadCase loadCase, double stated) {
    if (ask.measure() == Measure.FRICTION_FACTOR) {
      return stated > 0 ? LimitRates.friction(device, loadCase, stated) : Optional.empty();
    }
    if (!(ask.subject() instanceof Subject.Extreme extreme)) {
      return Optional.empty();
    }
    Ask of = extreme.of();
    if (of.subject() instanceof Subject.Multiple multiple) {
      Variation.Multiple driving = new Variation.Multiple(multiple.loads());
      return LimitRates.multiple(device, loadCase, driving.varied(device), extreme.greatest());
    }
    if (of.subject() instanceof Subject.Place place) {
      Stretch line = of.stretch().orElseThrow();
      return LimitRates.place(
          device, loadCase, place.load(), line.start(), line.end(), extreme.greatest());
    }
    return LimitRates.force(device, loadCase, of, extreme.greatest());
  }
}
