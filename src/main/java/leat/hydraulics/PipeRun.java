package leat.hydraulics;

/**
 * Pieces of pipe in series with the losses that belong to no piece: a sharp entrance on the first
 * bore, the exit on the last, and where the bore changes a contraction or an expansion on the
 * narrower of the two.
 *
 * <p>Source: sheet hydraulics.md sections 3 and 4; {@link BoreChange} (Crane; Borda and Carnot) and
 * {@link Fitting}. Checked in the tests against the sum by hand of a published kind: each K on its
 * own velocity head.
 */
public final class PipeRun {
  /** Fitting at the start. */
  private static final String ENTRANCE = "entrance";

  /** Fitting at the end. */
  private static final String EXIT = "exit";

  private PipeRun() {}

  /**
   * The pieces with every change of bore between them.
   *
   * @param pieces from the pump outwards
   * @return the same pieces, K added to the narrower one at each change
   */
  public static PipeSection[] joined(PipeSection... pieces) {
    PipeSection[] joined = pieces.clone();
    for (int i = 1; i < pieces.length; i++) {
      double before = pieces[i - 1].bore();
      double after = pieces[i].bore();
      int narrow = after < before ? i : i - 1;
      joined[narrow] = joined[narrow].withMoreK(changeK(before, after));
    }
    return joined;
  }

  /**
   * Loss of a sudden change of bore.
   *
   * @param before bore the water comes from, m, above 0
   * @param after bore it goes into, m, above 0
   * @return K on the narrower bore, -; 0 for equal bores
   * @throws leat.numeric.Impossible unless both are above 0
   */
  public static double changeK(double before, double after) {
    return after < before
        ? BoreChange.contraction(before, after)
        : BoreChange.expansion(before, after);
  }

  /** The pieces with a sharp entrance on the first. */
  public static PipeSection[] withEntrance(PipeSection... pieces) {
    PipeSection[] more = pieces.clone();
    more[0] = more[0].withMoreK(Fitting.k(ENTRANCE));
    return more;
  }

  /** The pieces with the exit on the last. */
  public static PipeSection[] withExit(PipeSection... pieces) {
    PipeSection[] more = pieces.clone();
    int last = more.length - 1;
    more[last] = more[last].withMoreK(Fitting.k(EXIT));
    return more;
  }
}
