package leat.level;

import java.util.List;
import leat.Sheet;
import leat.Sheet.Row;

/** Tanks as the sheets name them. */
final class SheetTanks {
  static final double MM = 1e-3;
  static final double L = 1e-3;

  private SheetTanks() {}

  /** A tank of level-tanks.csv by its id. */
  static Tank byId(String id) {
    return upright(
        Sheet.of("level-tanks.csv").where(r -> r.id().equals(id)).atLeast(1).findFirst().get());
  }

  /** A box, tub, bucket or cylinder of level-tanks.csv or level-tank-volume.csv. */
  static Tank upright(Row r) {
    double h = r.num("height_mm") * MM;
    return switch (r.text("shape")) {
      case "box" ->
          TaperedBox.box(
              r.num("length_bottom_mm") * MM,
              r.num("width_bottom_mm") * MM,
              h,
              r.num("corner_bottom_mm") * MM);
      case "tapered_tub" ->
          TaperedBox.of(
              r.num("length_bottom_mm") * MM,
              r.num("width_bottom_mm") * MM,
              r.num("corner_bottom_mm") * MM,
              r.num("length_top_mm") * MM,
              r.num("width_top_mm") * MM,
              r.num("corner_top_mm") * MM,
              h);
      case "tapered_bucket" ->
          Cone.of(r.num("diameter_bottom_mm") * MM, r.num("diameter_top_mm") * MM, h);
      case "vertical_cylinder" -> Cone.cylinder(r.num("diameter_bottom_mm") * MM, h);
      case "horizontal_cylinder" ->
          new LyingCylinder(r.num("diameter_bottom_mm") * MM, r.num("axial_length_mm") * MM);
      default -> throw new IllegalStateException(r.text("shape"));
    };
  }

  static Tank strapping(String table, String interpolation) {
    List<Row> rows = Sheet.of("level-strapping.csv").where(r -> r.id().equals(table)).rows();
    return new StrappingTable(
        rows.stream().mapToDouble(r -> r.num("level_mm") * MM).toArray(),
        rows.stream().mapToDouble(r -> r.num("litres") * L).toArray(),
        interpolation.equals("pchip")
            ? StrappingTable.Between.MONOTONE_CUBIC
            : StrappingTable.Between.LINEAR);
  }

  static double[] times(double[] values, double factor) {
    double[] out = values.clone();
    for (int i = 0; i < out.length; i++) {
      out[i] *= factor;
    }
    return out;
  }
}
