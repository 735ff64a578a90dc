package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.HistogramDrawing;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Happening;
import bellcrank.statics.study.Histogram;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.Sampled;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Sampling;
import bellcrank.statics.study.Sensitivities;
import bellcrank.statics.study.ToleranceBox;
import bellcrank.statics.study.Uncertain;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.util.List;

/**
 * Numbers that are not known well: a press lever was measured with a folding rule, and the hand on
 * it is a guess. How sure is the force on the ram?
 */
public final class RoughPress {

  private RoughPress() {}

  /**
   * Tells what matters most, the worst case, and how likely the ram gets too little.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    Device press =
        Device.named("press lever by eye")
            .point("hinge", 0, 0)
            .point("ram", 0.25, 0)
            .point("grip", 1.6, 0)
            .member("lever", "hinge", "ram", "grip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("hand", "lever", "grip", Vector.of(0, -200))
            .sought("ram", "lever", "ram", Direction.UP)
            .build();
    Notebook notebook = Notebook.of("rough-press", args);

    // Each number of the device can be named. Beside it stands how far it may be off.
    Model model = Model.of(press);
    List<Uncertain> rough =
        List.of(
            Uncertain.within(Input.size("hand"), 20), // newtons, either way
            Uncertain.uniform(Input.x("ram"), 0.24, 0.26));
    Figure ram = Figure.parse("ram");

    // A figure has a rate for each number: what 1 N more, or 1 mm more, does to it. Which matters
    // most depends on how rough the numbers are: that is the rate times half the width.
    Sensitivities effects = Sensitivities.ofUncertain(model, ram, rough);
    effects.words().forEach(notebook::write);
    effects
        .rankedBySpread()
        .forEach(
            one ->
                notebook.value(
                    "  as rough as it is, " + one.input().text() + " moves the ram force by",
                    effects.bySpread(one),
                    Dimension.FORCE));

    // The worst case: all numbers at their worst at once. That may be a rare chance.
    ToleranceBox box = ToleranceBox.of(model, rough, ram);
    box.least().ifPresent(one -> notebook.value("at worst", one.si(), Dimension.FORCE));
    box.greatest().ifPresent(one -> notebook.value("at best", one.si(), Dimension.FORCE));

    // How rare? Draw both numbers at random, many times, and count.
    Happening tooLittle = Happening.below(ram, Quantity.parse("1200 N", Dimension.FORCE));
    Samples samples = Sampling.of(model, rough, List.of(ram)).with(tooLittle).run(20_000, 1);
    Sampled forces = samples.figure(ram);
    notebook.value(
        "9 of 10 samples lie above", forces.percentile(0.1).orElseThrow().si(), Dimension.FORCE);
    notebook.write(
        samples
            .chances()
            .get(0)
            .words(UnitSystem.SI)
            .replaceFirst("^in", "The ram gets too little: in"));

    Histogram bars = forces.histogram(30).orElseThrow();
    HistogramDrawing picture =
        HistogramDrawing.of(
                "force on the ram",
                bars.dimension(),
                bars.bins().stream()
                    .map(bar -> new HistogramDrawing.Bin(bar.from(), bar.to(), bar.count()))
                    .toList())
            .with(
                new HistogramDrawing.Mark(
                    HistogramDrawing.Kind.TARGET, 1200, "wanted", "what the pomace wants"));
    notebook.draw("samples", picture.svg());
  }
}
