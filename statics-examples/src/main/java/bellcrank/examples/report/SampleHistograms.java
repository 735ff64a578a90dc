package bellcrank.examples.report;

import bellcrank.statics.drawing.HistogramDrawing;
import bellcrank.statics.study.FigureAnswer;
import bellcrank.statics.study.Happening;
import bellcrank.statics.study.Histogram;
import bellcrank.statics.study.Sampled;
import bellcrank.statics.study.Samples;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Pictures of how the figures of samples are spread. */
public final class SampleHistograms {

  private SampleHistograms() {}

  /**
   * Draws a histogram for each figure that has numbers.
   *
   * @param answer the answers to a file
   * @param units units of the values
   * @return SVG documents by the figure's text; empty if the file draws no samples
   */
  public static Map<String, String> of(FileAnswer answer, UnitSystem units) {
    Map<String, String> pictures = new LinkedHashMap<>();
    Optional<Samples> samples = answer.study().flatMap(StudyAnswer::samples);
    if (samples.isEmpty()) {
      return pictures;
    }
    for (Sampled one : samples.get().figures()) {
      Optional<Histogram> histogram = one.histogram(RoughJson.BINS);
      if (histogram.isPresent()) {
        pictures.put(
            one.figure().text(), drawn(answer, samples.get(), one, histogram.get(), units));
      }
    }
    return pictures;
  }

  private static String drawn(
      FileAnswer answer, Samples samples, Sampled one, Histogram histogram, UnitSystem units) {
    HistogramDrawing drawing =
        HistogramDrawing.of(
                answer.file().device().name() + ": " + one.figure().text() + " in samples",
                histogram.dimension(),
                histogram.bins().stream()
                    .map(bin -> new HistogramDrawing.Bin(bin.from(), bin.to(), bin.count()))
                    .toList())
            .withUnits(units);
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      String label = Math.round(100 * share) + " %";
      drawing =
          drawing.with(
              new HistogramDrawing.Mark(
                  HistogramDrawing.Kind.SHARE,
                  one.percentile(share).orElseThrow().si(),
                  label,
                  label + " of the samples lie below"));
    }
    if (one.stated() instanceof FigureAnswer.Is is) {
      drawing =
          drawing.with(
              new HistogramDrawing.Mark(
                  HistogramDrawing.Kind.STATED, is.si(), "stated", "all numbers as stated"));
    }
    for (Happening happening : samples.chances().stream().map(chance -> chance.what()).toList()) {
      Optional<Quantity> bound = bound(happening, one);
      if (bound.isPresent()) {
        drawing =
            drawing.with(
                new HistogramDrawing.Mark(
                    HistogramDrawing.Kind.TARGET,
                    bound.get().si(),
                    "bound",
                    happening instanceof Happening.Above
                        ? "should not be exceeded"
                        : "should be reached"));
      }
    }
    long beside = histogram.below() + histogram.above();
    if (beside > 0) {
      drawing = drawing.withNote(beside + " samples lie beyond the ends of the picture.");
    }
    long missing = samples.done() - one.count();
    return (missing > 0
            ? drawing.withNote("In " + missing + " samples it has no number.")
            : drawing)
        .svg();
  }

  private static Optional<Quantity> bound(Happening happening, Sampled one) {
    if (happening instanceof Happening.Above above && above.figure().equals(one.figure())) {
      return Optional.of(above.bound());
    }
    return happening instanceof Happening.Below below && below.figure().equals(one.figure())
        ? Optional.of(below.bound())
        : Optional.empty();
  }
}
