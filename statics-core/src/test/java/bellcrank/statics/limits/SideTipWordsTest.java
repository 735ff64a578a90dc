package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.units.UnitSystem;
import org.junit.jupiter.api.Test;

class SideTipWordsTest {

  private static SideTipWords words(SideView view) {
    return SideTipWords.of(SideTip.of(view), UnitSystem.SI);
  }

  private static SideView press(double friction) {
    return SideView.of("sill", 0.5, friction).withDown("press", 1, 0, 1000);
  }

  @Test
  void aDeviceThatStandsTellsHowFarItIsFromTipping() {
    SideTipWords words = words(press(0.5).withSidePull("rope", 2, -100));
    assertThat(words.verdict()).isEqualTo("sideways it holds");
    assertThat(words.margin())
        .startsWith(
            "all sideways effects together may be 1.25 times what is stated until sill tips about"
                + " its left edge");
    assertThat(words.margin("rope"))
        .startsWith("the level force of rope may be 1.25 times")
        .endsWith(", which is 125 N to the left");
    assertThat(words.breadth(1))
        .isEqualTo("for the stated sideways effects the base has to be at least 0.400 m broad");
    assertThat(words.breadth(1.5))
        .isEqualTo(
            "for 1.50 times the stated sideways effects the base has to be at least 0.600 m broad");
    assertThat(words.all()).hasSize(9).last().asString().startsWith("an estimate");
  }

  @Test
  void tiltsAreToldInDegrees() {
    SideTipWords words = words(press(0.2));
    assertThat(words.lean(SideEdge.RIGHT))
        .startsWith("leaning to the right on its flat base it gives way at 14.5")
        .contains("sill tips about its right edge");
    assertThat(words.slope(SideEdge.LEFT))
        .startsWith("on ground that falls to the left it gives way at 11.3")
        .contains("sill slides left");
    assertThat(words.margin()).isEqualTo("all sideways effects together may grow without limit");
    assertThat(words.breadth(1))
        .isEqualTo("for the stated sideways effects a base of any breadth would do");
    assertThat(words(press(0.2).withBreadth(3)).lean(SideEdge.RIGHT)).endsWith("at any angle");
  }

  @Test
  void whatDoesNotStandSaysSo() {
    SideTipWords slides = words(press(0.1).withSidePull("rope", 0.5, 200));
    assertThat(slides.verdict()).startsWith("sideways it does not hold: sill slides right");
    assertThat(slides.breadth(1))
        .isEqualTo(
            "no breadth of the base would do for the stated sideways effects: it slides or is"
                + " lifted");
    SideTipWords beside = words(press(0.1).withBaseOffset(1).withSidePull("rope", 1, 5));
    assertThat(beside.lean(SideEdge.LEFT)).endsWith("not at 0 either");
    SideTipWords never = words(press(0.1).withSidePull("rope", 0, 5).withBaseOffset(1));
    assertThat(never.margin())
        .isEqualTo("it stands at no multiple of all sideways effects together");
    SideTipWords back = words(press(0.5).withOffset("press", 0.3).withSidePull("rope", 1, 5));
    assertThat(back.margin("rope"))
        .isEqualTo(
            "it would stand at -10.0 times the level force of rope, acting the other way, which is"
                + " 50.0 N to the left");
    SideTipWords impending = words(press(0.5).withSidePull("rope", 1, 250));
    assertThat(impending.verdict()).startsWith("sideways it is about to give way: sill tips");
  }
}
