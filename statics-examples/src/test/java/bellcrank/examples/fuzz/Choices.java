package bellcrank.examples.fuzz;

/** Choices that bytes make; when they are used up, what was used decides. */
final class Choices {

  private final byte[] bytes;
  private int used;
  private int sum;

  Choices(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  boolean isUsedUp() {
    return used >= bytes.length;
  }

  /** A number from 0 to below the bound. */
  int below(int bound) {
    int value = next();
    for (int reach = 256; reach < bound; reach *= 256) {
      value = value * 256 + next();
    }
    return Math.floorMod(value, bound);
  }

  private int next() {
    int value = isUsedUp() ? sum >> 8 : bytes[used++];
    sum = 31 * sum + value + 101;
    return value & 0xFF;
  }

  /** What is left, as it is. */
  byte[] rest() {
    byte[] rest = new byte[bytes.length - used];
    System.arraycopy(bytes, used, rest, 0, rest.length);
    used = bytes.length;
    return rest;
  }
}
