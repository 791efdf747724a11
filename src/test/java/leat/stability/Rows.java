package leat.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import leat.Sheet.Row;

/** Compares with a cell of a sheet at the row's own tolerance; a blank means "does not apply". */
final class Rows {
  private Rows() {}

  static void same(Row r, Double actual, String column) {
    same(r, actual, column, r.num("tol_rel"));
  }

  static void same(Row r, Double actual, String column, double tolerance) {
    if (!r.has(column)) {
      assertThat(actual).as(column + " " + r.idAndProvenance()).isNull();
      return;
    }
    assertThat(actual)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(r.num(column), withPercentage(100 * tolerance));
  }
}
