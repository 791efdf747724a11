package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CapTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-cap.csv").atLeast(21);
  }

  private static void same(Row r, double ours, String column) {
    double want = r.num(column);
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(want, within(Math.abs(want) * r.num("tol_rel")));
  }

  private static void flag(Row r, boolean ours, String column) {
    assertThat(ours ? "yes" : "no")
        .as(column + " " + r.idAndProvenance())
        .isEqualTo(r.text(column));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double flow = r.num("flow_L_min") * L_MIN;
    double turn = r.num("turn_angle_deg");
    if (!r.has("riser_bore_mm")) {
      double speed = r.num("velocity_at_plate_m_s");
      same(r, Jet.force(r.num("rho_kg_m3"), flow, speed, turn), "jet_force_N");
      return;
    }
    Liquid water = Cases.water(r);
    double bore = r.num("riser_bore_mm") / 1000;
    Jet jet = Jet.of(flow, bore, r.num("plate_height_above_outlet_mm") / 1000, turn, water);
    same(r, jet.velocity(), "outlet_velocity_m_s");
    same(r, jet.reynolds(), "outlet_reynolds");
    same(r, jet.height() * 1000, "jet_height_mm");
    flag(r, jet.reaches(), "reaches_plate");
    same(r, jet.plateSpeed(), "velocity_at_plate_m_s");
    same(r, jet.force(), "jet_force_N");
    double gapForce = checkGap(r, flow, bore, water);
    double grip = r.numOr("grip_N", 0);
    Cap cap = Cap.of(jet, r.num("cap_mass_g") / 1000, grip);
    same(r, cap.weight(), "cap_weight_N");
    same(r, cap.jetForce() / cap.weight(), "lift_ratio");
    flag(r, Cap.of(jet, r.num("cap_mass_g") / 1000, 0).liftsAgainstGrip(), "lifts");
    flag(r, cap.jetForce() + gapForce > cap.weight(), "lifts_with_gap_pressure");
    if (r.has("hold_down_N")) {
      same(r, cap.holdDown(), "hold_down_N");
      flag(r, cap.liftsAgainstGrip(), "lifts_against_grip");
    }
  }

  /** The row's gap; force with which the pressure in it lifts the cap, N. */
  private static double checkGap(Row r, double flow, double bore, Liquid water) {
    double width = r.num("gap_mm") / 1000;
    double spreader = r.num("spreader_diameter_mm") / 1000;
    double cd = r.num("discharge_coefficient");
    if (!r.text("gap_kind").equals("disc_gap")) {
      double plate = r.num("plate_thickness_mm") / 1000;
      checkGap(r, Gap.slot(flow, width, spreader, plate, cd, water));
      return 0;
    }
    DiscGap discs = DiscGap.of(flow, width, spreader, bore, cd, water);
    checkGap(r, discs.slot());
    if (r.has("gap_pressure_force_N")) {
      same(r, discs.pressureForce(), "gap_pressure_force_N");
    }
    if (r.has("inner_edge_velocity_head_mm")) {
      same(r, discs.innerEdgeHead() * 1000, "inner_edge_velocity_head_mm");
    }
    return discs.pressureForce();
  }

  private static void checkGap(Row r, Gap gap) {
    same(r, gap.area() * 1e6, "gap_area_mm2");
    same(r, gap.velocity(), "gap_velocity_m_s");
    same(r, gap.reynolds(), "gap_reynolds");
    assertThat(gap.reynolds() < 2000 ? "laminar" : "turbulent").isEqualTo(r.text("gap_regime"));
    same(r, gap.orificeHead() * 1000, "gap_head_orifice_mm");
    same(r, gap.viscousHead() * 1000, "gap_head_viscous_mm");
    same(r, gap.totalHead() * 1000, "gap_head_total_mm");
    if (r.has("gap_rule")) {
      // sheet hydraulics.md section 9: under a tenth the orifice rules, over nine the viscous part
      double share = gap.viscousHead() / gap.totalHead();
      same(r, share, "gap_viscous_share");
      assertThat(share < 0.1 ? "orifice" : share > 0.9 ? "laminar" : "both")
          .isEqualTo(r.text("gap_rule"));
    }
    if (r.has("edge_head_mm")) {
      same(r, gap.edgeHead() * 1000, "edge_head_mm");
      assertThat(gap.standingDepth()).isEqualTo(Math.max(gap.edgeHead(), gap.totalHead()));
    }
  }

  @Test
  void slotForDepthPutsTheDepthBack() {
    Liquid water = Liquid.water(20);
    double w = Mend.slotForDepth(0.005, 6 * L_MIN, 0.096, 0.003, 0.62, water).getAsDouble();
    assertThat(Gap.slot(6 * L_MIN, w, 0.096, 0.003, 0.62, water).totalHead())
        .isCloseTo(0.005, withPercentage(1e-6));
  }

  @Test
  void refusesNonsense() {
    Liquid water = Liquid.water(20);
    assertThatThrownBy(() -> Jet.of(0, 0.01, 0, 90, water)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Jet.of(1e-4, 0.01, 0, 181, water)).isInstanceOf(Impossible.class);
    Jet jet = Jet.of(1e-4, 0.01, 0, 90, water);
    assertThatThrownBy(() -> Cap.of(jet, 0, 0)).isInstanceOf(Impossible.class);
  }
}
