package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Whatever a file holds, the reader answers with a device or with problems, and in little time. */
class DeviceFileFuzzTest {

  private static final long SEED = 20_260_101L;
  private static final int FILES = 10_000;
  private static final Duration LONGEST = Duration.ofMinutes(2);

  private static final List<String> TOKENS =
      List.of(
          "ground",
          "[",
          "]",
          "{",
          "}",
          ":",
          ",",
          "\"",
          "'",
          "#",
          "- ",
          "&a",
          "*a",
          "!!str",
          "|",
          ">",
          "1e999",
          "-0",
          "NaN",
          "1/0",
          "1e-400",
          "lbf",
          "kg",
          "12 kg",
          "90 deg",
          "\t",
          "y",
          "on",
          "null",
          "~",
          "[[[[",
          "{{{{",
          "? ",
          "---",
          "...",
          "%",
          "pin",
          "joins",
          "count: 0",
          "friction: 2",
          "friction: {table: x, take: lowest}",
          "side view",
          "sizing: {method: allowable}",
          "section: {tube: [60 mm, 40 mm, 3 mm]}",
          "material: S235 (EN 10025-2)",
          "parts",
          "welds",
          "driving",
          "leave out: [a]",
          "[0, 0]",
          "{from: A, toward: A}",
          "advantage",
          "\u2028",
          "\uD83D\uDE00",
          "–",
          "∞",
          "''",
          "format: 1",
          "truss: [[A, A]]",
          "<<: {}",
          "\\x00",
          "2147483648");

  @Test
  void mutatedFilesAreReadOrRefused() {
    List<String> texts = SharedFiles.devices().stream().map(SharedFiles::text).toList();
    assertThat(texts).hasSizeGreaterThan(50);
    Random random = new Random(SEED);
    int[] read = new int[1];
    Assertions.assertTimeout(
        LONGEST,
        () -> {
          for (int i = 0; i < FILES; i++) {
            byte[] bytes = mutated(texts.get(random.nextInt(texts.size())), random);
            ReadResult result = read(bytes, i);
            if (result instanceof ReadResult.Refused refused) {
              assertThat(refused.problems()).isNotEmpty();
              refused.problems().forEach(DeviceFileFuzzTest::checkProblem);
            } else {
              read[0]++;
            }
          }
        });
    // both kinds of answer must have been met, else the mutations are too weak or too strong
    assertThat(read[0]).isBetween(FILES / 50, FILES * 9 / 10);
  }

  private static ReadResult read(byte[] bytes, int number) {
    try {
      return DeviceFileReader.read(bytes, "mutated.yaml");
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(
          "file " + number + ":\n" + new String(bytes, StandardCharsets.UTF_8), e);
    }
  }

  private static void checkProblem(FileProblem problem) {
    assertThat(problem.line()).isPositive();
    assertThat(problem.column()).isPositive();
    assertThat(problem.sentence().lines().count()).isEqualTo(1);
    assertThat(problem.found()).isNotBlank();
    assertThat(problem.wanted()).isNotBlank();
    assertThat(problem.sentence()).doesNotContain("Exception");
  }

  private static byte[] mutated(String text, Random random) {
    String changed = text;
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes; i++) {
      changed =
          switch (random.nextInt(5)) {
            case 0 -> swapLines(changed, random);
            case 1 -> replaceToken(changed, random);
            case 2 -> changed.substring(0, random.nextInt(changed.length() + 1));
            case 3 -> swapTokens(changed, random);
            default -> changed;
          };
    }
    byte[] bytes = changed.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(3) == 0 && bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  private static String swapLines(String text, Random random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.size() > 1) {
      Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size()));
    }
    return String.join("\n", lines);
  }

  private static String replaceToken(String text, Random random) {
    int[] span = token(text, random);
    return text.substring(0, span[0])
        + TOKENS.get(random.nextInt(TOKENS.size()))
        + text.substring(span[1]);
  }

  private static String swapTokens(String text, Random random) {
    int[] from = token(text, random);
    int[] to = token(text, random);
    return text.substring(0, to[0]) + text.substring(from[0], from[1]) + text.substring(to[1]);
  }

  /** Begin and end of a word, or of one sign. */
  private static int[] token(String text, Random random) {
    if (text.isEmpty()) {
      return new int[] {0, 0};
    }
    int begin = random.nextInt(text.length());
    int end = begin;
    while (begin > 0 && Character.isLetterOrDigit(text.charAt(begin - 1))) {
      begin--;
    }
    while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
      end++;
    }
    return new int[] {begin, Math.max(end, Math.min(text.length(), begin + 1))};
  }

  @Test
  void hostileTextsAreRefusedQuickly() {
    String begin = "format: 1\ndevice: x\n";
    List<String> hostile =
        List.of(
            "[".repeat(1_000_000),
            "{a: ".repeat(200_000),
            "- ".repeat(400_000),
            "? ".repeat(400_000),
            "a: [" + "1,".repeat(400_000) + "]",
            begin + "points: {" + "a".repeat(1_000_000) + ": [0, 0]}",
            begin + "points: {a: [" + "9".repeat(1_000_000) + ", 0]}",
            begin + "ask: [" + "group(".repeat(150_000) + "]",
            begin + "\"".repeat(900_001),
            "&a [*a, *a]",
            bomb(),
            begin + "points:\n" + circle(4000),
            begin + "points:\n" + chain(4000),
            begin + "connections:\n" + unknown(3000),
            "\u0000",
            "%TAG ! tag:x,2000:\n---\n!a b",
            " ".repeat(1_000_000),
            "\n".repeat(1_000_000),
            "#".repeat(1_000_000),
            "x".repeat(FileText.LARGEST + 1));
    for (String text : hostile) {
      Assertions.assertTimeout(
          Duration.ofSeconds(20),
          () ->
              assertThat(DeviceFileReader.read(text, "hostile.yaml"))
                  .isInstanceOf(ReadResult.Refused.class),
          () -> text.substring(0, Math.min(60, text.length())));
    }
  }

  private static String bomb() {
    StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 60; i++) {
      text.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
    }
    return text.toString();
  }

  private static String circle(int size) {
    return chain(size) + "  p" + size + ": {from: p0, right: 1}\n";
  }

  /** Points of which each is measured from the next; the last of them is missing. */
  private static String chain(int size) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < size; i++) {
      text.append("  p%d: {from: p%d, right: 1}\n".formatted(i, i + 1));
    }
    return text.toString();
  }

  private static String unknown(int size) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < size; i++) {
      text.append("  %s%d: {pin: q%d, joins: [a%d, b]}\n".formatted("long name ", i, i, i));
    }
    return text.toString();
  }

  @Test
  void everyDeviceFileIsReadFromDisk() {
    for (Path file : SharedFiles.devices()) {
      assertThat(DeviceFileReader.read(file))
          .as(file.toString())
          .isInstanceOf(ReadResult.Read.class);
    }
  }
}
