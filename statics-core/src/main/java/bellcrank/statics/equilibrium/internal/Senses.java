package bellcrank.statics.equilibrium.internal;

/**
 * On which side of singular each block of a factored system lies: the signs of the determinants.
 * Between two places of one order a block whose sign differs was singular on the way. Not changed
 * after construction.
 */
public final class Senses {

  /** No blocks: nothing differs from it. */
  public static final Senses NONE = new Senses(new int[0], new byte[0]);

  /** The order to which the blocks belong, by identity. */
  private final int[] order;

  private final byte[] ofBlock;

  Senses(int[] order, byte[] ofBlock) {
    this.order = order;
    this.ofBlock = ofBlock;
  }

  /** The first block from a number on whose sign is another one; −1 if there is none. */
  public int firstOther(Senses other, int from) {
    if (order != other.order) {
      return -1;
    }
    for (int block = from; block < ofBlock.length; block++) {
      if (isOther(other, block)) {
        return block;
      }
    }
    return -1;
  }

  /** Whether a block has another sign. */
  public boolean isOther(Senses other, int block) {
    return order == other.order && ofBlock[block] * other.ofBlock[block] < 0;
  }
}
