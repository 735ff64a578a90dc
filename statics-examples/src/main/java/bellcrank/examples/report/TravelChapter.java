package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import bellcrank.statics.motion.Course;
import java.util.ArrayList;
import java.util.List;

/** What happens on the way, with its curves. */
final class TravelChapter implements CaseChapter {

  @Override
  public String id() {
    return "travel";
  }

  @Override
  public String title() {
    return "Over the travel";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    List<Part> parts = new ArrayList<>();
    facts
        .travel()
        .ifPresent(
            travel -> {
              parts.addAll(
                  PageParts.of(
                      title(), page -> TravelSection.write(page, travel, facts.amounts())));
              if (travel.travel() instanceof Course && TravelChart.isDrawable(travel)) {
                String name = facts.file().device().name();
                parts.add(
                    new Part.Picture(
                        "Curves over the travel. A dot marks the greatest value of each.",
                        TravelChart.svg(travel, name, facts.units())));
              }
            });
    return parts;
  }
}
