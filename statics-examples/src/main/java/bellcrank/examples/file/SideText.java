package bellcrank.examples.file;

import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideStay;
import bellcrank.statics.units.Dimension;

/** Writes what a file says of the device as seen along its plane. */
final class SideText {

  private final AmountText amounts;

  SideText(AmountText amounts) {
    this.amounts = amounts;
  }

  String written(SideStatement side) {
    Flow flow = new Flow().text("base", side.base());
    flow.put("breadth", amounts.bare(side.breadth(), Dimension.LENGTH));
    side.friction().ifPresent(friction -> flow.put("friction", AmountText.number(friction)));
    length(flow, "base offset", side.baseOffset());
    angle(flow, "lean", side.lean());
    angle(flow, "slope", side.slope());
    if (!side.offsets().isEmpty()) {
      Flow offsets = new Flow();
      side.offsets()
          .forEach((name, offset) -> offsets.put(name, amounts.bare(offset, Dimension.LENGTH)));
      flow.put("offsets", offsets.written());
    }
    if (!side.loads().isEmpty()) {
      Flow loads = new Flow();
      side.loads().forEach(load -> loads.put(load.name(), load(load)));
      flow.put("loads", loads.written());
    }
    if (!side.stays().isEmpty()) {
      Flow stays = new Flow();
      side.stays().forEach(stay -> stays.put(stay.name(), stay(stay)));
      flow.put("stays", stays.written());
    }
    return flow.textsIfAny("leave out", side.leaveOut()).written();
  }

  private String load(SideLoad load) {
    Flow flow = new Flow().put("height", amounts.bare(load.height(), Dimension.LENGTH));
    length(flow, "offset", load.offset());
    if (load.down() != 0) {
      flow.put("down", amounts.bare(load.down(), Dimension.FORCE));
    }
    if (load.side() != 0 || load.down() == 0) {
      flow.put("side", amounts.bare(load.side(), Dimension.FORCE));
    }
    return flow.written();
  }

  private String stay(SideStay stay) {
    Flow flow = new Flow().put("height", amounts.bare(stay.height(), Dimension.LENGTH));
    length(flow, "offset", stay.offset());
    flow.put("anchor offset", amounts.bare(stay.anchorOffset(), Dimension.LENGTH));
    length(flow, "anchor height", stay.anchorHeight());
    return flow.written();
  }

  private void length(Flow flow, String key, double length) {
    if (length != 0) {
      flow.put(key, amounts.bare(length, Dimension.LENGTH));
    }
  }

  private void angle(Flow flow, String key, double angle) {
    if (angle != 0) {
      flow.put(key, amounts.withUnit(angle, Dimension.ANGLE));
    }
  }
}
