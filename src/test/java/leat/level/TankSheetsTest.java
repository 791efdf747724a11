package leat.level;

import static leat.level.SheetTanks.L;
import static leat.level.SheetTanks.MM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of level-tanks.csv, level-tank-volume.csv and level-tank-shapes.csv. */
class TankSheetsTest {
  static Stream<Row> tanks() {
    return Sheet.of("level-tanks.csv").atLeast(4);
  }

  @ParameterizedTest
  @MethodSource("tanks")
  void holdsItsLitres(Row r) {
    assertThat(SheetTanks.upright(r).capacity() / L)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("full_L"), within(1e-6));
  }

  private static Tank shell(Row r) {
    return r.text("shape").equals("strapping_table")
        ? SheetTanks.strapping(r.text("table_id"), r.text("interpolation"))
        : SheetTanks.upright(r);
  }

  private static Tank volumeTank(Row r) {
    Tank shell = shell(r);
    List<Body> bodies = new ArrayList<>();
    for (String d : List.of("disp1", "disp2")) {
      if (r.has(d + "_area_mm2")) {
        bodies.add(
            new Body(
                r.num(d + "_area_mm2") * MM * MM,
                r.num(d + "_from_mm") * MM,
                r.num(d + "_to_mm") * MM));
      }
    }
    return bodies.isEmpty() ? shell : new Displaced(shell, bodies.toArray(new Body[0]));
  }

  static Stream<Row> volumes() {
    return Sheet.of("level-tank-volume.csv")
        .where(r -> r.text("expect").equals("value"))
        .atLeast(42);
  }

  @ParameterizedTest
  @MethodSource("volumes")
  void volumeAndLevel(Row r) {
    Tank tank = volumeTank(r);
    Tank shell = shell(r);
    double level = r.num("level_mm") * MM;
    double net = r.num("net_L") * L;
    if (r.text("given").equals("level")) {
      assertThat(tank.volume(level) / L)
          .as(r.idAndProvenance())
          .isCloseTo(r.num("net_L"), within(r.num("tol_L")));
      assertThat(shell.volume(level) / L)
          .as(r.idAndProvenance())
          .isCloseTo(r.num("gross_L"), within(r.num("tol_L")));
    }
    assertThat(tank.level(net) / MM)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("level_mm"), within(r.num("tol_level_mm")));
    assertThat(shell.volume(tank.level(net)) / L)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("gross_L"), within(r.num("tol_L")));
  }

  static Stream<Row> volumesRefused() {
    return Sheet.of("level-tank-volume.csv")
        .where(r -> r.text("expect").equals("reject"))
        .atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("volumesRefused")
  void refusesVolumes(Row r) {
    assertThatThrownBy(
            () -> {
              Tank tank = volumeTank(r);
              if (r.text("given").equals("level")) {
                tank.volume(r.num("level_mm") * MM);
              } else {
                tank.level(r.num("net_L") * L);
              }
            })
        .as(r.idAndProvenance())
        .isInstanceOf(Impossible.class);
  }

  private static Tank shapeTank(Row r) {
    double h = r.num("height_mm") * MM;
    return switch (r.text("shape")) {
      case "sloping_floor_box" ->
          new SlopingFloorBox(
              r.num("length_mm") * MM,
              r.num("width_mm") * MM,
              h,
              r.num("floor_flat_mm") * MM,
              r.num("floor_rise_mm") * MM);
      case "lying_cylinder" ->
          new LyingCylinder(r.num("diameter_bottom_mm") * MM, r.num("axial_length_mm") * MM);
      case "cone_frustum" ->
          Cone.of(r.num("diameter_bottom_mm") * MM, r.num("diameter_top_mm") * MM, h);
      case "sections" ->
          new Sections(
              SheetTanks.times(r.list("section_height_mm_list", ";"), MM),
              SheetTanks.times(r.list("section_area_cm2_list", ";"), 1e-4),
              r.text("between_sections").equals("straight_area")
                  ? Sections.Between.STRAIGHT_AREA
                  : Sections.Between.STRAIGHT_SIDE);
      default -> throw new IllegalStateException(r.text("shape"));
    };
  }

  static Stream<Row> shapes() {
    return Sheet.of("level-tank-shapes.csv")
        .where(r -> r.text("expect").equals("value"))
        .atLeast(27);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void shape(Row r) {
    Tank tank = shapeTank(r);
    double level = r.num("level_mm") * MM;
    double volume = r.num("volume_L") * L;
    assertThat(tank.volume(level) / L)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("volume_L"), within(r.num("tol_L")));
    assertThat(tank.level(volume) / MM)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("level_mm"), within(r.num("tol_level_mm")));
    String[] digits = r.text("surface_cm2").split("\\.");
    double half = 0.5 * Math.pow(10, digits.length == 1 ? 0 : -digits[1].length());
    assertThat(tank.area(tank.level(volume)) * 1e4)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("surface_cm2"), within(half * 1.001));
  }

  static Stream<Row> shapesRefused() {
    return Sheet.of("level-tank-shapes.csv")
        .where(r -> r.text("expect").equals("reject"))
        .atLeast(5);
  }

  @ParameterizedTest
  @MethodSource("shapesRefused")
  void refusesShapes(Row r) {
    assertThatThrownBy(() -> shapeTank(r).volume(r.num("level_mm") * MM))
        .as(r.idAndProvenance())
        .isInstanceOf(Impossible.class);
  }
}
