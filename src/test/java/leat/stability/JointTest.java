package leat.stability;

import static leat.stability.Rows.same;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JointTest {
  static Stream<Row> rows() {
    return Sheet.of("stability-joint.csv").atLeast(12);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double outer = r.num("joint_OD_mm") / 1000;
    double inner = outer - 2 * r.num("wall_mm") / 1000;
    Faces above = Faces.of(List.of(new Face(r.num("cA_above_m2"), r.num("arm_m"), 1)));
    Joint joint =
        new Joint(0.35, outer, inner, r.num("mass_above_kg"), above, r.num("tie_preload_N"));
    double rho = r.num("rho_kg_m3");
    double q = Air.pressure(rho, r.num("v_gust_m_s"));
    same(r, joint.moment(q), "M_joint_Nm");
    same(r, joint.pressed(), "N_joint_N");
    same(r, 1000 * joint.moment(q) / joint.pressed(), "eccentricity_mm");
    same(r, 1000 * joint.core(), "kern_mm");
    same(r, joint.opensAt(rho), "v_gap_m_s");
    same(r, joint.rollsAt(rho), "v_rim_tip_m_s");
    assertThat(joint.tieToStayShut(q) > joint.tie())
        .isEqualTo(Boolean.parseBoolean(r.text("gap_opens")));
    assertThat(joint.rolls(q)).isEqualTo(Boolean.parseBoolean(r.text("rim_tips")));
    same(r, joint.tieToStayShut(q), "preload_no_gap_N");
    double tie = r.num("preload_no_tip_N");
    assertThat(tied(joint, tie * (1 + r.num("tol_rel")) + 1e-9).rolls(q)).isFalse();
    assertThat(tie == 0 || tied(joint, tie * (1 - r.num("tol_rel"))).rolls(q)).isTrue();
  }

  private static Joint tied(Joint joint, double tie) {
    return new Joint(
        joint.height(), joint.outer(), joint.inner(), joint.mass(), joint.above(), tie);
  }

  /** Second route: at the opening moment, N/A - M Ro/I is nought at the windward edge. */
  @Property
  void opensWhereTheEdgesPressIsNought(
      @ForAll @DoubleRange(min = 0.08, max = 0.3) double outer,
      @ForAll @DoubleRange(min = 0.5, max = 0.98) double share,
      @ForAll @DoubleRange(min = 1, max = 40) double mass) {
    double inner = share * outer;
    Joint joint = new Joint(0, outer, inner, mass, Faces.of(List.of(new Face(0.4, 0.8, 1.2))), 50);
    double area = Math.PI / 4 * (outer * outer - inner * inner);
    double second = Math.PI / 64 * (Math.pow(outer, 4) - Math.pow(inner, 4));
    double moment = joint.moment(Air.pressure(1.25, joint.opensAt(1.25)));
    double press = joint.pressed() / area;
    assertThat(press - moment * outer / 2 / second).isCloseTo(0, within(1e-9 * press));
  }

  @Property
  void theTieKeepsItShutAndAHairLessDoesNot(
      @ForAll @DoubleRange(min = 6, max = 40) double wind,
      @ForAll @DoubleRange(min = 1, max = 12) double mass) {
    double q = Air.pressure(1.25, wind);
    Faces above = Faces.of(List.of(new Face(0.4, 0.8, 1.2)));
    double tie = new Joint(0, 0.15, 0.144, mass, above, 0).tieToStayShut(q);
    if (tie > 0) {
      assertThat(new Joint(0, 0.15, 0.144, mass, above, tie * 1.0001 + 1e-6).opensAt(1.25))
          .isGreaterThan(wind);
      assertThat(new Joint(0, 0.15, 0.144, mass, above, tie * 0.9999 - 1e-6).opensAt(1.25))
          .isLessThan(wind);
    }
  }

  @Test
  void refusesWhatIsNoRing() {
    Faces none = Faces.of(List.of());
    assertThatThrownBy(() -> new Joint(0, 0, 0, 1, none, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Joint(0, 0.1, 0.11, 1, none, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Joint(0, 0.1, 0.09, 1, none, -1)).isInstanceOf(Impossible.class);
    assertThat(new Joint(0, 0.1, 0.09, 1, none, 0).opensAt(1.25)).isNull();
  }
}
