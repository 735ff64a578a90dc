package bellcrank.examples.file;

import bellcrank.statics.device.Ground;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.units.Dimension;
import java.util.List;

/** Writes drives and how far they go. */
final class TravelText {

  private final AmountText amounts;

  TravelText(AmountText amounts) {
    this.amounts = amounts;
  }

  String drive(Drive drive) {
    if (drive instanceof Drive.Turn turn) {
      Flow flow = new Flow().text("turn", turn.member());
      return (turn.other().equals(Ground.NAME) ? flow : flow.text("against", turn.other()))
          .written();
    }
    if (drive instanceof Drive.Length length) {
      return new Flow().text("length", length.connection()).written();
    }
    Drive.Slide slide = (Drive.Slide) drive;
    return new Flow()
        .text("slide", slide.body())
        .text("point", slide.point())
        .put("along", new DirectionText(amounts).of(slide.along()))
        .written();
  }

  String travel(TravelPlan plan, boolean rests) {
    Flow flow =
        new Flow()
            .put("from", value(plan.from(), plan.dimension()))
            .put("to", value(plan.to(), plan.dimension()));
    if (plan.steps() != TravelPlan.USUAL_STEPS) {
      flow.put("steps", Integer.toString(plan.steps()));
    }
    if (!plan.meetings().isEmpty()) {
      flow.put("meets", Flow.items(plan.meetings().stream().map(TravelText::meeting).toList()));
    }
    if (rests) {
      flow.text("look for", TravelReader.REST);
    }
    return flow.written();
  }

  private String value(double si, Dimension dimension) {
    return dimension == Dimension.ANGLE
        ? amounts.withUnit(si, dimension)
        : amounts.bare(si, dimension);
  }

  private static String meeting(Meeting meeting) {
    return new Flow()
        .text("point", meeting.point())
        .text("of", meeting.body())
        .texts("edge", List.of(meeting.from(), meeting.to()))
        .text("against", meeting.other())
        .written();
  }
}
