package bellcrank.statics.equilibrium.internal;

/**
 * Solves the square part block after block. A single unknown is a division; a small block goes to a
 * dense LU factor with row exchanges, a large one to a sparse one. Factors are kept, so that
 * several right sides can be solved; all storage is reused when the numbers change.
 */
final class BlockSolver {

  /** Blocks above this size are factored sparsely. */
  static final int LARGEST_DENSE = 64;

  private final Order order;
  private final OrderedRows rows;
  private final double zero;

  /** One over the pivot of each block of one unknown: a product is sooner there than a quotient. */
  private final double[] inverse;

  // one entry for each block, of which only those of its own kind are filled
  private final DenseBlock[] dense;
  private final SparseBlock[] sparse;
  private final InverseBlock[] inverses;

  /**
   * A solver.
   *
   * @param zero bound at or below which a pivot counts as zero
   */
  BlockSolver(OrderedRows rows, double zero) {
    this(rows, zero, false);
  }

  /**
   * A solver for many right sides: small blocks are inverted, and refused where the inverse is
   * large.
   *
   * @param zero bound at or below which a pivot counts as zero
   */
  static BlockSolver byInverses(OrderedRows rows, double zero) {
    return new BlockSolver(rows, zero, true);
  }

  private BlockSolver(OrderedRows rows, double zero, boolean byInverses) {
    this.rows = rows;
    this.zero = zero;
    order = rows.order;
    inverse = new double[order.column.length];
    boolean single = order.largestBlock <= 1;
    dense = new DenseBlock[single ? 0 : order.blocks];
    sparse = new SparseBlock[order.largestBlock > LARGEST_DENSE ? order.blocks : 0];
    inverses = new InverseBlock[single || !byInverses ? 0 : order.blocks];
    for (int block = 0; block < dense.length; block++) {
      int from = order.blockStart[block];
      int size = order.blockStart[block + 1] - from;
      if (size > LARGEST_DENSE) {
        sparse[block] = new SparseBlock(rows, from, size);
      } else if (isInverted(size)) {
        inverses[block] = new InverseBlock(rows, from, size);
      } else if (size > 1) {
        dense[block] = new DenseBlock(rows, from, size, zero);
      }
    }
  }

  private boolean isInverted(int size) {
    return inverses.length > 0 && size > 1 && size <= InverseBlock.MOST;
  }

  /**
   * Factors all blocks with the present numbers.
   *
   * @return false if a pivot is zero to rounding, so that no right side can be solved
   */
  boolean factor() {
    if (dense.length == 0) {
      return singles();
    }
    boolean regular = true;
    for (int block = 0; block < order.blocks && regular; block++) {
      int from = order.blockStart[block];
      int size = order.blockStart[block + 1] - from;
      if (size == 1) {
        inverse[from] = 1 / rows.value[rows.start[from]];
        regular = Math.abs(rows.value[rows.start[from]]) > zero;
      } else if (isInverted(size)) {
        regular = inverses[block].factor();
      } else {
        regular = size > LARGEST_DENSE ? sparse[block].factor() : dense[block].factor();
      }
    }
    return regular;
  }

  private boolean singles() {
    boolean regular = true;
    for (int i = 0; i < inverse.length; i++) {
      double pivot = rows.value[rows.start[i]];
      regular &= Math.abs(pivot) > zero;
      inverse[i] = 1 / pivot;
    }
    return regular;
  }

  /** Signs of the determinants of the blocks last factored. */
  Senses senses() {
    byte[] senses = new byte[order.blocks];
    for (int block = 0; block < order.blocks; block++) {
      int from = order.blockStart[block];
      int size = order.blockStart[block + 1] - from;
      double determinant =
          size == 1
              ? inverse[from]
              : size > LARGEST_DENSE ? sparse[block].sense() : dense[block].determinant();
      senses[block] = (byte) Math.signum(determinant);
    }
    return new Senses(order.blockStart, senses);
  }

  /**
   * Solves for the unknowns of the square part. Unknowns of the over-determined part must be in
   * {@code x} already.
   *
   * @param b right side by rows
   * @param x unknowns by columns; those of the square part are written
   */
  void solve(double[] b, double[] x) {
    if (dense.length == 0) {
      for (int i = 0; i < inverse.length; i++) {
        single(i, b, x);
      }
      return;
    }
    for (int block = 0; block < order.blocks; block++) {
      int from = order.blockStart[block];
      int size = order.blockStart[block + 1] - from;
      if (size == 1) {
        single(from, b, x);
      } else if (isInverted(size)) {
        inverses[block].solve(b, x);
      } else if (size > LARGEST_DENSE) {
        sparse[block].solve(b, x);
      } else {
        dense[block].solve(b, x);
      }
    }
  }

  private void single(int i, double[] b, double[] x) {
    int pivot = rows.start[i];
    double sum = b[order.row[i]];
    for (int k = pivot + 1; k < rows.start[i + 1]; k++) {
      sum -= rows.value[k] * x[rows.column[k]];
    }
    x[rows.column[pivot]] = sum * inverse[i];
  }

  /**
   * Known part of a block's right side: b minus what unknowns outside the block contribute. Inside
   * the block x is zeroed first, so that one loop serves.
   */
  static void gather(OrderedRows rows, int from, int size, double[] b, double[] x, double[] out) {
    for (int i = from; i < from + size; i++) {
      x[rows.order.column[i]] = 0;
    }
    for (int i = from; i < from + size; i++) {
      double sum = b[rows.order.row[i]];
      for (int k = rows.start[i]; k < rows.start[i + 1]; k++) {
        sum -= rows.value[k] * x[rows.column[k]];
      }
      out[i - from] = sum;
    }
  }
}
