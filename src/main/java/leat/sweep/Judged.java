package leat.sweep;

import leat.check.Rule;

/**
 * A design, judged and measured.
 *
 * @param design which
 * @param passes findings that pass
 * @param fails findings that fail
 * @param warns findings that warn
 * @param unknowns findings that could not be judged
 * @param worst the rule of the worst finding; null when all pass
 * @param measures values in base units; NaN for unknown
 * @param refused why it cannot be at all; null otherwise
 */
public record Judged(
    Design design,
    int passes,
    int fails,
    int warns,
    int unknowns,
    Rule worst,
    double[] measures,
    String refused) {
  /** Whether nothing fails. */
  public boolean isFine() {
    return refused == null && fails == 0;
  }
}
