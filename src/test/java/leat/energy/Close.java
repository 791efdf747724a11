package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import leat.Sheet.Row;

/** Compares with a sheet's cell by the row's own relative tolerance. */
final class Close {
  private Close() {}

  static void to(Row row, String column, double value) {
    double wanted = row.num(column);
    double tolerance = row.num("tol_rel") * Math.abs(wanted);
    assertThat(Math.abs(value - wanted))
        .as("%s %s: %s, sheet says %s", row.idAndProvenance(), column, value, wanted)
        .isLessThanOrEqualTo(tolerance + 1e-15);
  }

  static void toOrEmpty(Row row, String column, OptionalDouble value) {
    assertThat(value.isPresent())
        .as(row.idAndProvenance() + " " + column)
        .isEqualTo(row.has(column));
    if (value.isPresent()) {
      to(row, column, value.getAsDouble());
    }
  }

  static void toEach(Row row, String column, double[] values) {
    double[] wanted = row.list(column, ";");
    assertThat(values).as(row.idAndProvenance() + " " + column).hasSameSizeAs(wanted);
    for (int i = 0; i < wanted.length; i++) {
      assertThat(Math.abs(values[i] - wanted[i]))
          .as(
              "%s %s[%d]: %s, sheet says %s",
              row.idAndProvenance(), column, i, values[i], wanted[i])
          .isLessThanOrEqualTo(row.num("tol_rel") * Math.abs(wanted[i]) + 1e-15);
    }
  }

  static double[] kwh(double[] joules) {
    double[] kwh = new double[joules.length];
    for (int i = 0; i < kwh.length; i++) {
      kwh[i] = joules[i] / Cells.J_PER_KWH;
    }
    return kwh;
  }
}
