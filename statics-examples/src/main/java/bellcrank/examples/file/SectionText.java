package bellcrank.examples.file;

import bellcrank.examples.file.FormedSection.Hole;
import bellcrank.examples.file.FormedSection.Stands;
import bellcrank.statics.units.Dimension;

/** Writes cross-sections. */
final class SectionText {

  private final AmountText amounts;

  SectionText(AmountText amounts) {
    this.amounts = amounts;
  }

  String written(SectionStatement section) {
    return section instanceof OwnSection own ? own(own) : formed((FormedSection) section);
  }

  private String length(double si) {
    return amounts.withUnit(si, Dimension.LENGTH);
  }

  private String area(double si) {
    return amounts.withUnit(si, Dimension.AREA);
  }

  private String own(OwnSection own) {
    Flow flow =
        new Flow()
            .text("name", own.name())
            .put("area", area(own.area()))
            .put("top", length(own.top()))
            .put("bottom", length(own.bottom()))
            .put("gyration", length(own.gyration()))
            .put("shear area", area(own.shearArea()))
            .put("side gyration", length(own.sideGyration()))
            .put("side reach", length(own.sideReach()))
            .put("thickness", length(own.thickest()));
    own.leastGyration().ifPresent(least -> flow.put("least gyration", length(least)));
    return new Flow().put("own", flow.written()).written();
  }

  private String formed(FormedSection one) {
    String sizes =
        one.sizes().size() == 1
            ? length(one.sizes().get(0))
            : Flow.items(one.sizes().stream().map(this::length).toList());
    Flow flow = new Flow().put(one.form().word(), sizes);
    if (one.stands() != Stands.UPRIGHT) {
      flow.put("stands", one.stands().word());
    }
    if (one.together() != 1) {
      flow.put("side by side", Integer.toString(one.together()));
    }
    if (one.gap() != 0) {
      flow.put("gap", length(one.gap()));
    }
    one.backToBack().ifPresent(gap -> flow.put("back to back", length(gap)));
    if (!one.holes().isEmpty()) {
      flow.put("holes", Flow.items(one.holes().stream().map(this::hole).toList()));
    }
    if (one.notchAbove() != 0) {
      flow.put("notch above", length(one.notchAbove()));
    }
    if (one.notchBelow() != 0) {
      flow.put("notch below", length(one.notchBelow()));
    }
    if (one.separate() != 1) {
      flow.put("separate", Integer.toString(one.separate()));
    }
    return flow.written();
  }

  private String hole(Hole hole) {
    Flow flow = new Flow().put("diameter", length(hole.diameter()));
    if (hole instanceof Hole.Upright up) {
      return flow.put("offset", length(up.offset()))
          .put("from", length(up.from()))
          .put("to", length(up.to()))
          .written();
    }
    return flow.put("height", length(((Hole.Across) hole).height())).written();
  }
}
