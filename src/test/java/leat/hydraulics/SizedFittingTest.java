package leat.hydraulics;

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

/** Fittings as they are typed, by name and size, against the rows of the sheet. */
class SizedFittingTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-fittings.csv").atLeast(154).filter(r -> name(r) != null);
  }

  /** How the fitting of a row is typed; null for those whose size cannot be. */
  static String name(Row r) {
    String fitting = r.text("fitting");
    if (fitting.equals("smooth bend")) {
      return r.num("angle_deg") == 90
          ? "bend"
          : r.num("angle_deg") == 45 ? "bend-45" : r.num("angle_deg") == 180 ? "bend-180" : null;
    }
    boolean cone = fitting.startsWith("conical") && r.num("angle_deg") == 45;
    if (cone) {
      return fitting.contains("reducer") ? "reducer" : "diffuser";
    }
    return fitting.startsWith("woven screen")
        ? "screen"
        : fitting.startsWith("square-edge")
            ? "screen-punched"
            : fitting.startsWith("plug cock")
                ? "plug-cock"
                : fitting.equals("entrance rounded")
                    ? "entrance-rounded"
                    : fitting.startsWith("dividing tee branch")
                        ? "tee-branch"
                        : fitting.startsWith("dividing tee run")
                            ? "tee-run"
                            : fitting.equals("straight hose barb in tube")
                                ? "barb"
                                : fitting.equals("sudden expansion")
                                    ? "widening"
                                    : fitting.equals("sudden contraction")
                                            && r.text("method").startsWith("Crane")
                                        ? "narrowing"
                                        : null;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    String tol = r.text("tol_rel");
    String name = name(r);
    double share = name.startsWith("tee") ? r.num("const1") : 0;
    // a tee's K is printed for the velocity before it; ours is on the pipe behind it
    double carried = name.equals("tee-branch") ? share : 1 - share;
    double want = r.num("K") / (carried * carried);
    double allowed = tol.equals("exact") ? 1e-12 : Double.parseDouble(tol) * Math.abs(want);
    assertThat(ours(r, name)).as(r.idAndProvenance()).isCloseTo(want, within(allowed));
  }

  private static double ours(Row r, String name) {
    double d1 = r.text("D1_mm").isEmpty() ? 0.016 : r.num("D1_mm") / 1000;
    return switch (name) {
      case "bend", "bend-45", "bend-180" -> {
        double f = Colebrook.frictionFactor(r.num("reynolds"), 0.0015e-3 / d1);
        yield SizedFitting.atFriction(name, r.num("r_over_D") * d1, d1, f);
      }
      case "entrance-rounded" -> SizedFitting.k(name, r.num("r_over_D") * d1, d1, 0);
      case "plug-cock" -> SizedFitting.k(name, Math.toRadians(r.num("angle_deg")), d1, 0);
      case "reducer", "narrowing" -> SizedFitting.k(name, d1, r.num("D2_mm") / 1000, 0);
      case "diffuser", "widening", "barb" -> SizedFitting.k(name, r.num("D2_mm") / 1000, d1, 0);
      default -> SizedFitting.k(name, r.num("const1"), d1, 0);
    };
  }

  @Test
  void everyNameHasARowAndWords() {
    List<String> held = rows().map(SizedFittingTest::name).distinct().toList();
    assertThat(held)
        .as("each name has a row of the sheet, and a line in name and ours above")
        .containsExactlyInAnyOrder(SizedFitting.names());
    for (String name : SizedFitting.names()) {
      assertThat(SizedFitting.about(name)).isNotBlank();
      assertThat(Fitting.allNames()).contains(name);
    }
    assertThat(Fitting.allNames()).doesNotHaveDuplicates().contains(Fitting.names());
    assertThatThrownBy(() -> SizedFitting.k("elbow", 1, 0.013, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> SizedFitting.k("tee-branch", 0, 0.013, 0))
        .isInstanceOf(Impossible.class);
  }

  /** Straight and branched water have together what the tee lost: both K on the flow before it. */
  @Property
  void aTeeMovedBackIsAsPrinted(@ForAll @DoubleRange(min = 0.02, max = 0.98) double share) {
    double branch = SizedFitting.k("tee-branch", share, 0.013, 0) * share * share;
    double run = SizedFitting.k("tee-run", share, 0.013, 0) * (1 - share) * (1 - share);
    assertThat(branch).isCloseTo(DividingTee.branch(share), within(1e-12));
    assertThat(run).isCloseTo(DividingTee.run(share), within(1e-12));
  }

  /**
   * Ridges rub as the sheet's equal friction factor, whatever the flow, or the wall if that is
   * more.
   */
  @Test
  void ridgesRubAsTheirEqualFactor() {
    Sheet.of("hydraulics-fittings.csv")
        .atLeast(154)
        .filter(r -> r.text("fitting").startsWith("corrugated"))
        .forEach(
            r -> {
              double bore = r.num("D1_mm") / 1000;
              double pitch = r.num("const1") / 1000;
              Liquid water = Liquid.water(20);
              Line line = new Line(water, new PipeSection(2, bore, 1.5e-6, 0, pitch));
              Line plain = new Line(water, new PipeSection(2, bore, 1.5e-6, 0));
              double flow = line.section(0).area(); // 1 m/s
              assertThat(line.frictionFactor(0, flow)).isCloseTo(r.num("const2"), within(1e-9));
              double loss = line.frictionLoss(flow);
              // one K for each ridge
              double v2 = 1 / (2 * Liquid.GRAVITY);
              assertThat(loss).isCloseTo(2 / pitch * r.num("K") * v2, within(1e-9));
              assertThat(line.flowAt(loss)).isCloseTo(flow, within(1e-12));
              assertThat(line.loss(flow / 1000)).isEqualTo(plain.loss(flow / 1000));
            });
  }
}
