package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.ReadResult;
import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.DrawingOptions;
import bellcrank.statics.drawing.ForcePolygon;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;

/** Every sample device is drawn, whole and body by body, without a label on another. */
final class SampleDrawingsTest {

  private static final Pattern BOX = Pattern.compile(" data-box=\"([^\"]*)\"");
  private static final Pattern VIEW = Pattern.compile(" viewBox=\"([^\"]*)\"");

  static List<Path> samples() throws IOException {
    Path folder = YamlFiles.device("barrel-derrick").getParent();
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void theSampleIsDrawn(Path sample) throws Exception {
    ReadResult result = DeviceFileReader.read(Files.readAllBytes(sample), sample.toString());
    assertThat(result).isInstanceOf(ReadResult.Read.class);
    DeviceFile file = ((ReadResult.Read) result).file();
    Device device = file.device();
    DrawingOptions options = DrawingOptions.USUAL.withUnits(file.units());
    isWellMade(DeviceDrawing.of(device).with(options).svg());
    List<String> bodies = new ArrayList<>();
    device.members().forEach(member -> bodies.add(member.name()));
    device.joints().forEach(joint -> bodies.add(joint.name()));
    for (var loadCase : device.cases()) {
      Balance balance = Balance.of(device, loadCase.name());
      isWellMade(FreeBodyDrawing.of(balance).with(options).svg());
      isWellMade(ForcePolygon.of(balance).with(options).svg());
      for (String body : bodies) {
        FreeBodyDrawing alone = FreeBodyDrawing.of(balance, List.of(body)).with(options);
        isWellMade(alone.svg());
        isWellMade(alone.with(options.withComponents()).svg());
        isWellMade(ForcePolygon.of(balance, List.of(body)).with(options).svg());
      }
    }
  }

  private static void isWellMade(String svg) throws Exception {
    assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThan(200_000);
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
    Matcher view = VIEW.matcher(svg);
    assertThat(view.find()).isTrue();
    double[] sheet = numbers(view.group(1));
    List<double[]> boxes = new ArrayList<>();
    Matcher matcher = BOX.matcher(svg);
    while (matcher.find()) {
      double[] box = numbers(matcher.group(1));
      assertThat(box[0]).isGreaterThanOrEqualTo(sheet[0]);
      assertThat(box[1]).isGreaterThanOrEqualTo(sheet[1]);
      assertThat(box[2]).isLessThanOrEqualTo(sheet[0] + sheet[2]);
      assertThat(box[3]).isLessThanOrEqualTo(sheet[1] + sheet[3]);
      for (double[] other : boxes) {
        boolean apart =
            box[0] >= other[2] || other[0] >= box[2] || box[1] >= other[3] || other[1] >= box[3];
        assertThat(apart).as(svg).isTrue();
      }
      boxes.add(box);
    }
    assertThat(boxes).isNotEmpty();
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
