package bellcrank.examples;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Makes names of files from names of parts: plain characters, each name once in any case. */
final class PictureNames {

  /** Longest name of a part that is kept; file systems take 255 bytes. */
  private static final int LONGEST = 40;

  private final String stem;
  private final Set<String> given = new HashSet<>();

  /**
   * Names that begin like a device file.
   *
   * @param deviceFile name of the file, with or without folders
   */
  PictureNames(String deviceFile) {
    Path last = Path.of(deviceFile).getFileName();
    String name = last == null ? "device" : last.toString();
    int dot = name.lastIndexOf('.');
    stem = plain(dot > 0 ? name.substring(0, dot) : name);
  }

  /** The name of a file for this picture; another one each time. */
  String of(String picture) {
    String name = stem + "-" + plain(picture);
    String free = name;
    for (int i = 2; !given.add(free.toLowerCase(Locale.ROOT)); i++) {
      free = name + "-" + i;
    }
    return free + ".svg";
  }

  /** Letters and digits of any script; hyphens for everything else. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .limit(LONGEST)
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c)) {
                plain.appendCodePoint(c);
              } else if (!plain.isEmpty() && plain.charAt(plain.length() - 1) != '-') {
                plain.append('-');
              }
            });
    int end = plain.length();
    return end > 0 && plain.charAt(end - 1) == '-' ? plain.substring(0, end - 1) : plain.toString();
  }
}
