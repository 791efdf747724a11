package leat.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.hydraulics.Film;
import leat.hydraulics.Liquid;
import leat.hydraulics.PipeSection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the build sheets but the strainer's, which belongs to the water's way. */
class PartsSheetTest {
  private static void same(Row r, double actual, String column) {
    assertThat(actual)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(r.num(column), withPercentage(100 * r.num("tol_rel")));
  }

  private static void exact(Row r, long actual, String column) {
    assertThat(actual).as(column + " " + r.idAndProvenance()).isEqualTo((long) r.num(column));
  }

  private static void flag(Row r, boolean actual, String column) {
    assertThat(actual)
        .as(column + " " + r.idAndProvenance())
        .isEqualTo(Boolean.parseBoolean(r.text(column)));
  }

  static Stream<Row> towers() {
    return Sheet.of("build-tower.csv").atLeast(14);
  }

  static Tower tower(Row r) {
    Module module =
        new Module(
            (int) r.num("n_modules"),
            r.num("module_h_mm") / 1000,
            r.num("overlap_mm") / 1000,
            r.num("tube_OD_mm") / 1000,
            (int) r.num("pots_per_module"),
            r.num("pot_z_in_module_mm") / 1000,
            Math.toRadians(r.num("offset_deg")));
    return new Tower(
        r.num("stand_h_mm") / 1000,
        r.num("base_h_mm") / 1000,
        List.of(module),
        r.num("cap_h_mm") / 1000);
  }

  @ParameterizedTest
  @MethodSource("towers")
  void towersAgreeWithTheSheet(Row r) {
    Tower tower = tower(r);
    Module module = tower.modules().get(0);
    PotRing ring = module.ring();
    double pot = r.num("net_pot_mm") / 1000;
    double reach = r.num("reach_limit_mm") / 1000;
    same(r, 1000 * tower.height(), "tower_h_mm");
    same(r, 1000 * tower.totalHeight(), "total_h_mm");
    exact(r, tower.pots(), "pots");
    same(r, Math.toDegrees(ring.pitch()), "pot_pitch_deg");
    exact(r, ring.repeat(), "repeat_modules");
    same(r, 1000 * module.sameColumnSpacing(), "same_column_spacing_mm");
    same(r, 1000 * tower.withModules(1).topPot(), "lowest_pot_z_mm");
    same(r, 1000 * tower.topPot(), "top_pot_z_mm");
    flag(r, tower.inReach(reach), "reach_ok");
    exact(r, tower.modulesInReach(reach), "max_modules_in_reach");
    same(r, 1000 * ring.chord(), "chord_mm");
    same(r, 1000 * ring.room(pot), "pot_clearance_mm");
    flag(r, ring.fits(pot), "pots_fit");
  }

  static Stream<Row> prints() {
    return Sheet.of("build-print.csv").atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("prints")
  void printsAgreeWithTheSheet(Row r) {
    double[] times = new double[(int) r.num("n_parts")];
    java.util.Arrays.fill(times, 3600 * r.num("print_h_per_part"));
    Printer printer =
        new Printer(
            (int) r.num("n_printers"),
            r.num("jobs_per_printer_day"),
            r.num("printer_W"),
            3600 * r.num("changeover_h"));
    PrintRun run = PrintRun.of(times, printer);
    same(r, run.machineTime() / 3600, "machine_hours");
    exact(r, run.jobsOnBusiest(), "jobs_on_busiest_printer");
    // Equal parts: the busiest printer prints one after the other.
    double each = r.num("print_h_per_part") + r.num("changeover_h");
    same(r, run.jobsOnBusiest() * each - r.num("changeover_h"), "makespan_h");
    exact(r, run.days(), "calendar_days");
    same(r, run.energy() / 3.6e6, "energy_kWh");
    same(r, run.energyCost(r.num("energy_price_per_kWh")), "energy_cost");
  }

  static Stream<Row> filaments() {
    return Sheet.of("build-filament.csv").atLeast(8);
  }

  /** A tube's wall, exact. */
  private static double wallVolume(double diameter, double wall, double height) {
    return Math.PI * (diameter - wall) * wall * height;
  }

  @ParameterizedTest
  @MethodSource("filaments")
  void filamentAgreesWithTheSheet(Row r) {
    assertThat(Material.named(r.text("material"))).isNotNull();
    double density = 1000 * r.num("density_g_cm3");
    double wall =
        wallVolume(
            r.num("tube_OD_mm") / 1000, r.num("wall_mm") / 1000, r.num("module_h_mm") / 1000);
    double mass = (wall + r.num("extra_cm3_per_module") / 1e6) * density;
    same(r, 1e6 * wall, "wall_cm3");
    same(r, 1000 * mass, "module_g");
    int count = (int) r.num("n_modules");
    Filament all = new Filament(count * mass, r.num("waste_fraction"), r.num("spool_kg"));
    same(r, all.net(), "net_kg");
    same(r, all.gross(), "gross_kg");
    exact(r, all.spools(), "spools");
    same(r, all.costByMass(r.num("price_per_kg")), "cost_by_mass");
    same(r, all.costBySpool(r.num("price_per_kg")), "cost_by_spool");
    double metre = density * Math.PI / 4 * 0.00175 * 0.00175;
    same(r, all.gross() / metre, "length_1p75_m");
    // The same through the list that the command prints.
    BuildList list =
        new BuildList(
            List.of(new Part("module", count, mass, null, 0)),
            List.of(
                new BuildList.Stock(
                    "PETG", r.num("waste_fraction"), r.num("spool_kg"), r.num("price_per_kg"))),
            new Printer(1, 2, 120, 0),
            null,
            Collections.emptyList());
    exact(r, list.spools(), "spools");
    assertThat(list.filamentCost()).isCloseTo(r.num("cost_by_spool"), within(0.005001));
    assertThat(list.filamentCostByMass()).isCloseTo(r.num("cost_by_mass"), within(0.0051));
  }

  static Stream<Row> wet() {
    return Sheet.of("build-wet-mass.csv").atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("wet")
  void wetMassAgreesWithTheSheet(Row r) {
    double rho = r.num("rho_kg_m3");
    Film film =
        Film.of(
            r.num("flow_L_min") / 60000,
            (r.num("tube_OD_mm") - 2 * r.num("wall_mm")) / 1000,
            r.num("wetted_fraction"),
            r.num("film_length_m"),
            new Liquid(rho, r.num("mu_Pa_s"), 0.072));
    PipeSection riser =
        new PipeSection(r.num("riser_length_m"), r.num("riser_bore_mm") / 1000, 0, 0);
    double plants = r.num("n_plants") * (r.num("plant_kg") + r.num("pot_medium_wet_kg"));
    WetMass mass =
        new WetMass(
            r.num("dry_tower_kg"),
            plants,
            rho * film.volume(),
            rho * riser.area() * riser.length());
    same(r, film.massLoading(), "gamma_kg_m_s");
    same(r, film.reynolds(), "film_Re");
    same(r, 1000 * film.thickness(), "film_mm");
    same(r, mass.film(), "film_kg");
    same(r, mass.riser(), "riser_water_kg");
    same(r, mass.plants(), "plants_kg");
    same(r, mass.off(), "pump_off_kg");
    same(r, mass.on(), "pump_on_kg");
    flowByIntegration(r, film, rho);
  }

  /** Second route: Nusselt's profile of speed over the film, summed up, is the flow. */
  private static void flowByIntegration(Row r, Film film, double rho) {
    int n = 2000;
    double flow = 0;
    double dy = film.thickness() / n;
    for (int i = 0; i < n; i++) {
      double y = (i + 0.5) * dy;
      double u = rho * 9.80665 / r.num("mu_Pa_s") * (film.thickness() * y - y * y / 2);
      flow += u * dy * film.perimeter();
    }
    assertThat(flow).isCloseTo(r.num("flow_L_min") / 60000, withPercentage(0.01));
  }
}
