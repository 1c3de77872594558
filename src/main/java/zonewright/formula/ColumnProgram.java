package zonewright.formula;

/**
 * A formula, or a condition, made ready for one unit system and one workspace. Serves one thread at
 * a time.
 */
public final class ColumnProgram {
  private final Kernel kernel;

  private ColumnProgram(Kernel kernel) {
    this.kernel = kernel;
  }

  /** Makes a formula of plain numbers ready; see {@link Expressed}. */
  public static ColumnProgram of(Formula plain, Workspace workspace) {
    return new ColumnProgram(plain.accept(new Kernels(workspace)));
  }

  /**
   * Makes a formula of plain numbers ready that gives 0 where the question just does not arise, so
   * that no number is left only where something lacks or is wrong.
   */
  public static ColumnProgram lacking(Formula plain, Workspace workspace) {
    return new ColumnProgram(plain.accept(new Kernels(workspace, 0)));
  }

  /**
   * Makes a condition of plain numbers ready: 1 where it is so, 0 where not, no number where that
   * cannot be said.
   */
  public static ColumnProgram of(Condition plain, Workspace workspace) {
    return new ColumnProgram(plain.accept(new Kernels(workspace)));
  }

  /** Fetches what does not change from row to row; to be called before a run over any blocks. */
  public void prepare() {
    kernel.prepare();
  }

  /** Calculates one block into {@code target}. */
  public void run(int block, int rows, double[] target) {
    double[] result = kernel.run(block, rows, target);
    if (result != target) {
      System.arraycopy(result, 0, target, 0, rows);
    }
  }
}
