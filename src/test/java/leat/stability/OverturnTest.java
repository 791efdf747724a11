package leat.stability;

import static leat.stability.Rows.same;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OverturnTest {
  static Stream<Row> cases() {
    return Sheet.of("stability-overturn.csv").atLeast(28);
  }

  private static Face face(Row r, String part) {
    return new Face(r.num(part + "_A_m2"), r.num(part + "_z_m"), r.num(part + "_cf"));
  }

  private static double solution(Row r) {
    return r.num("solution_L") * r.num("solution_kg_L");
  }

  private static Standing whole(Row r) {
    return new Standing(
        r.num("tank_empty_kg") + solution(r) + r.num("tower_kg") + r.num("plants_kg"),
        r.num("foot_along_wind_m") / 2,
        Faces.of(List.of(face(r, "tank"), face(r, "tower"), face(r, "plants"))),
        r.num("mu"));
  }

  private static Standing onLid(Row r) {
    return new Standing(
        r.num("tower_kg") + r.num("plants_kg"),
        r.num("tower_foot_radius_m"),
        Faces.of(List.of(face(r, "tower"), face(r, "plants"))).over(r.num("lid_z_m")),
        r.num("mu"));
  }

  private static GuyLines lines(Row r) {
    return new GuyLines(
        (int) r.num("guy_n"),
        r.num("guy_ring_h_m"),
        r.num("guy_run_m"),
        r.text("guy_anchor").equals("ground"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void balanceAgreesWithTheSheet(Row r) {
    double rho = r.num("rho_kg_m3");
    double q = Air.pressure(rho, r.num("v_gust_m_s"));
    Standing whole = whole(r);
    same(r, q, "q_Pa");
    same(r, whole.force(q), "F_wind_N");
    same(r, whole.weight(), "weight_N");
    same(r, whole.overturning(q), "M_over_Nm");
    same(r, whole.righting(), "M_right_Nm");
    same(r, whole.safety(q), "SF_overturn");
    same(r, whole.tipsAt(rho), "v_tip_m_s");
    same(r, whole.utilisation(q), "EQU_util");
    assertThat(whole.passes(q)).as(r.idAndProvenance()).isEqualTo(flag(r, "EQU_pass"));
    same(r, whole.passesTo(rho), "v_EQU_m_s");
    same(r, whole.slideSafety(q, 0, 0), "SF_slide");
    same(r, whole.slidesAt(rho), "v_slide_m_s");
    same(r, onLid(r).overturning(q), "M_over_lid_Nm");
    same(r, onLid(r).righting(), "M_right_lid_Nm");
    same(r, onLid(r).tipsAt(rho), "v_tip_lid_m_s");
  }

  private static boolean flag(Row r, String column) {
    return Boolean.parseBoolean(r.text(column));
  }

  static Stream<Row> guyed() {
    return Sheet.of("stability-overturn.csv").having("guy_n").atLeast(9);
  }

  @ParameterizedTest
  @MethodSource("guyed")
  void linesAgreeWithTheSheet(Row r) {
    double q = Air.pressure(r.num("rho_kg_m3"), r.num("v_gust_m_s"));
    GuyLines lines = lines(r);
    Standing held = lines.toGround() ? whole(r) : onLid(r);
    double plain = Math.max(0, held.overturning(q) - held.righting());
    LineLoad load = lines.under(Equilibrium.residual(held.overturning(q), held.righting()));
    same(r, Math.toDegrees(lines.angle()), "guy_alpha_deg");
    same(r, lines.sharing(), "guy_k_n");
    same(r, plain, "M_res_char_Nm");
    same(r, load.moment(), "M_res_EQU_Nm");
    same(r, lines.under(plain).tension(), "T_char_N");
    same(r, load.tension(), "T_EQU_N");
    same(r, load.pegLevel(), "anchor_horizontal_EQU_N");
    same(r, load.pegUplift(), "anchor_uplift_EQU_N");
    same(r, load.footLoad(), "base_added_EQU_N");
  }

  /** Second route: moment vectors about the leeward edge, the speed by Hipparchus' Brent. */
  @ParameterizedTest
  @MethodSource("cases")
  void tipsWhereTheVectorsBalance(Row r) {
    double mass = r.num("tank_empty_kg") + solution(r) + r.num("tower_kg") + r.num("plants_kg");
    double[] weight = {0, 0, -9.80665 * mass};
    double edge = r.num("foot_along_wind_m") / 2;
    double rho = r.num("rho_kg_m3");
    double tips =
        new BrentSolver(1e-12)
            .solve(
                200,
                v -> {
                  double about = cross(new double[] {-edge, 0, 0.5}, weight)[1];
                  for (String part : new String[] {"tank", "tower", "plants"}) {
                    double f = rho / 2 * v * v * r.num(part + "_A_m2") * r.num(part + "_cf");
                    double[] arm = {-edge, 0, r.num(part + "_z_m")};
                    about += cross(arm, new double[] {f, 0, 0})[1];
                  }
                  return about;
                },
                0.1,
                149);
    assertThat(whole(r).tipsAt(rho)).isCloseTo(tips, withPercentage(1e-6));
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static Standing any(double mass, double lever, double z) {
    return new Standing(
        mass, lever, Faces.of(List.of(new Face(0.3, z, 1.2), new Face(0.2, 0.2, 1.3))), 0.3);
  }

  @Property
  void widerOrHeavierNeverTipsEarlier(
      @ForAll @DoubleRange(min = 5, max = 200) double mass,
      @ForAll @DoubleRange(min = 0.05, max = 1) double lever,
      @ForAll @DoubleRange(min = 0.3, max = 3) double z,
      @ForAll @DoubleRange(min = 1, max = 2) double more) {
    double tips = any(mass, lever, z).tipsAt(1.25);
    assertThat(any(mass, lever * more, z).tipsAt(1.25)).isGreaterThanOrEqualTo(tips);
    assertThat(any(mass * more, lever, z).tipsAt(1.25)).isGreaterThanOrEqualTo(tips);
    assertThat(any(mass, lever, z * more).tipsAt(1.25)).isLessThanOrEqualTo(tips);
  }

  /** v sqrt(SF(v)) is the same gust for every wind chosen. */
  @Property
  void tippingDoesNotHangOnTheWindChosen(
      @ForAll @DoubleRange(min = 1, max = 60) double wind,
      @ForAll @DoubleRange(min = 5, max = 200) double mass) {
    Standing s = any(mass, 0.2, 1.2);
    double q = Air.pressure(1.25, wind);
    assertThat(wind * Math.sqrt(s.safety(q))).isCloseTo(s.tipsAt(1.25), within(1e-9));
    assertThat(wind * Math.sqrt(s.slideSafety(q, 0, 0))).isCloseTo(s.slidesAt(1.25), within(1e-9));
    assertThat(s.passesTo(1.25)).isCloseTo(s.tipsAt(1.25) * Math.sqrt(0.6), within(1e-9));
  }

  /** What would cure it does, and a hair less does not. */
  @Property
  void curesAreSolved(
      @ForAll @DoubleRange(min = 5, max = 200) double mass,
      @ForAll @DoubleRange(min = 5, max = 50) double wind) {
    double q = Air.pressure(1.25, wind);
    Standing s = any(mass, 0.2, 1.2);
    double heavy = s.massToPass(q);
    assertThat(any(heavy * 1.0001, 0.2, 1.2).passes(q)).isTrue();
    assertThat(any(heavy * 0.9999, 0.2, 1.2).passes(q)).isFalse();
    Standing still = any(s.massNotToSlide(q), 0.2, 1.2);
    assertThat(still.slideSafety(q, 0, 0)).isCloseTo(1.5 / 0.9, within(1e-9));
    assertThat(s.frictionNotToSlide(q, 0, 0) / s.friction() * s.slideSafety(q, 0, 0))
        .isCloseTo(1.5 / 0.9, within(1e-9));
  }
}
