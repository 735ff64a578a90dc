package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Strut;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/** The page of signs says what README says, and its figures show what the library answers. */
final class SignsTest {

  private static final String FOLDER = "bellcrank.statics/bellcrank/statics/device/doc-files/";

  private static final String PAGE = Shipped.text(Shipped.JAVADOC, FOLDER + "signs.html");

  @Test
  void everySentenceOfTheReadmeStandsOnThePage() throws IOException {
    String readme = Files.readString(Path.of("..", "..", "README.md"));
    String section = readme.substring(readme.indexOf("\n## Signs\n") + 1);
    section = section.substring(0, section.indexOf("\n## "));
    List<String> sentences = List.of(section.split("\n- ", -1));
    assertThat(sentences).hasSizeGreaterThan(9);
    String page = plain(PAGE.replaceAll("<[^>]*>", ""));
    for (String sentence : sentences.subList(1, sentences.size())) {
      assertThat(page).contains(plain(sentence.replaceAll("[*`]", "")));
    }
  }

  @Test
  void everyFigureOfThePageIsThereAndWellFormedAndNoneIsLeftOver()
      throws IOException, ParserConfigurationException, SAXException {
    Set<String> shown = new TreeSet<>();
    Pattern.compile("<img src=\"([^\"]+)\" alt=\"[^\"]{10,}\">")
        .matcher(PAGE)
        .results()
        .forEach(one -> shown.add(FOLDER + one.group(1)));
    assertThat(Shipped.names(Shipped.JAVADOC))
        .filteredOn(name -> name.endsWith(".svg"))
        .containsExactlyInAnyOrderElementsOf(shown);
    assertThat(shown).hasSize(8);
    for (String figure : shown) {
      String text = Shipped.text(Shipped.JAVADOC, figure);
      Document document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
      assertThat(document.getElementsByTagName("title").getLength()).as(figure).isEqualTo(1);
      assertThat(text).as(figure).doesNotContain("<script", "href", "url(");
    }
  }

  @Test
  void directionAndMoment() {
    double degrees = Math.toDegrees(Direction.from(-60, 158).angle());
    shows("direction", number(degrees, 1) + " deg", "158 N", "−60 N");
    double pound = 4.4482216152605; // N in a lbf, NIST SP 811, Appendix B.8
    Balance balance =
        balance(
            Device.named("a force beside a point")
                .point("point", 0, 0)
                .point("grip", 1.5 * 0.3048, 0)
                .member("lever", "point", "grip")
                .clamp("root", "point", "lever", "ground")
                .force("hand", "lever", "grip", Vector.of(0, -130 * pound)));
    double moment = value(balance, "resultant.moment about point") / (pound * 0.3048);
    shows("moment", number(moment, 0) + " lbf·ft", "130 lbf", "1.5 ft");
  }

  @Test
  void whoseForce() {
    Balance press =
        balance(
            Device.named("press lever")
                .point("hinge", 0, 0)
                .point("ram", 0.25, 0)
                .point("middle", 0.8, 0.05)
                .point("grip", 1.6, 0.1)
                .member("lever", "hinge", "ram", "grip")
                .pin("hinge", "hinge", "lever", "ground")
                .force("hand", "lever", "grip", Vector.of(0, -220))
                .force("own weight", "lever", "middle", Vector.of(0, -60))
                .sought("ram", "lever", "ram", Direction.UP));
    shows(
        "whose-force",
        "hinge.y " + signed(value(press, "hinge.y"), "N"),
        "hinge.y on ground " + signed(value(press, "hinge.y on ground"), "N"),
        "ram " + signed(value(press, "ram"), "N"));
  }

  @Test
  void axialForces() {
    for (int sense : List.of(-1, 1)) {
      Balance prop =
          balance(
              Device.named("prop")
                  .point("foot", 0, 0)
                  .point("head", 0, 2)
                  .point("wall", -2, 2)
                  .member("beam", "wall", "head")
                  .pin("wall", "wall", "beam", "ground")
                  .connect(new Strut("prop", End.of("beam", "head"), End.of("ground", "foot"), 0))
                  .force("load", "beam", "head", Vector.of(0, sense * 1170)));
      shows(
          "axial",
          (sense < 0 ? "pressed" : "pulled")
              + ": tension "
              + signed(value(prop, "prop.tension"), "N"),
          "compression " + signed(value(prop, "prop.compression"), "N"));
    }
  }

  @Test
  void contactsAndBases() {
    Balance pushed =
        balance(
            Device.named("pushed box")
                .point("foot", 0, 0)
                .point("side", 0, 0.5)
                .member("box", "foot", "side")
                .connect(base(Direction.UP))
                .force("own weight", "box", "foot", Vector.of(0, -250))
                .force("push", "box", "side", Vector.of(100, 0)));
    shows(
        "contact",
        "normal",
        number(value(pushed, "base.normal"), 0) + " N",
        signed(value(pushed, "base.friction"), "N"),
        "offset " + (value(pushed, "base.offset") > 0 ? "+" : "−") + "0.2 m");
    assertThat(number(Math.abs(value(pushed, "base.offset")), 1)).isEqualTo("0.2");
    // on a wall that pushes to the right, the wall's friction holds a weight up: that is negative
    Balance held =
        balance(
            Device.named("held box")
                .point("foot", 0, 0)
                .point("side", 0.1, 0)
                .member("box", "foot", "side")
                .connect(base(Direction.RIGHT))
                .force("own weight", "box", "foot", Vector.of(0, -80))
                .force("push", "box", "side", Vector.of(-300, 0)));
    assertThat(number(value(held, "base.normal"), 0)).isEqualTo("300");
    assertThat(number(value(held, "base.friction"), 0)).isEqualTo("−80");
  }

  @Test
  void slotsAndGuides() {
    Balance slider =
        balance(
            Device.named("slider")
                .point("middle", 0, 0)
                .point("edge", 0.1, 0)
                .member("slider", "middle", "edge")
                .connect(new Guide("slot", "middle", "slider", "ground", Direction.RIGHT))
                .force("load", "slider", "middle", Vector.of(0, -50)));
    shows("slot", "force on the slider " + signed(value(slider, "slot.normal"), "N"), "load 50 N");
  }

  @Test
  void insideABar() {
    Balance beam =
        balance(
            Device.named("beam")
                .point("left", 0, 0)
                .point("load", 1, 0)
                .point("right", 4, 0)
                .member("beam", "left", "right")
                .pin("left", "left", "beam", "ground")
                .roller("right", "right", "beam", "ground", Direction.UP)
                .force("load", "beam", "load", Vector.of(0, -600))
                .force("pull", "beam", "right", Vector.of(200, 0)));
    String place = " at 0.5 m of left–right";
    shows(
        "cut-bar",
        "N "
            + signed(value(beam, "beam.normal" + place), "N")
            + ", V "
            + signed(value(beam, "beam.shear" + place), "N")
            + ", M "
            + signed(value(beam, "beam.moment" + place), "N·m"),
        number(value(beam, "left.y"), 0) + " N up",
        number(-value(beam, "left.x"), 0) + " N to the left",
        number(value(beam, "right"), 0) + " N up");
  }

  private static ContactBase base(Direction push) {
    return new ContactBase("base", "foot", "box", "ground", push, 1, 0.5, 0.5);
  }

  private static Balance balance(DeviceBuilder device) {
    return Balance.of(device.build());
  }

  private static double value(Balance balance, String ask) {
    return balance.number(ask).orElseThrow(() -> new AssertionError(ask + " is open"));
  }

  private static void shows(String figure, String... labels) {
    assertThat(Shipped.text(Shipped.JAVADOC, FOLDER + figure + ".svg")).contains(labels);
  }

  private static String signed(double value, String unit) {
    return (value > 0 ? "+" : "") + number(value, 0) + " " + unit;
  }

  private static String number(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value).replace('-', '−');
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
