package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of hydraulics-balance.csv (SciPy and python-fluids, see its provenance column). */
class BalanceTest {
  /** One case of the sheet: rows, pump and risers. */
  record Case(List<Row> rows, Row first, PumpCurve printed, Line common, Riser[] atZero) {
    static Case of(String id) {
      List<Row> rows = Sheet.of("hydraulics-balance.csv").where(r -> r.id().equals(id)).rows();
      Row first = rows.get(0);
      assertThat(rows).hasSize((int) first.num("riser_count"));
      Liquid water = Cases.water(first);
      Line common = null;
      if (first.num("common_length_m") > 0) {
        common = new Line(water, pipe(first, "common_"));
      }
      Riser[] risers = new Riser[rows.size()];
      for (int i = 0; i < risers.length; i++) {
        Row r = rows.get(i);
        risers[i] = new Riser(new Line(water, pipe(r, "riser_")), r.num("outlet_m"));
      }
      PumpCurve printed = Cases.printed(first).atSpeed(first.num("speed_ratio"));
      return new Case(rows, first, printed, common, risers);
    }

    private static PipeSection pipe(Row r, String of) {
      return new PipeSection(
          r.num(of + "length_m"),
          r.num(of + "bore_mm") / 1000,
          r.num(of + "rough_mm") / 1000,
          r.num(of + "K_sum"));
    }

    Manifold at(double level) {
      return Pipes.lifted(new Manifold(common, atZero), -level);
    }

    Manifold at(String mark) {
      return at(first.num(mark + "_m"));
    }

    Manifold set() {
      return at(first.text("set_at"));
    }

    PumpCurve now() {
      return printed.derated(first.num("head_derate"));
    }

    PumpCurve worn() {
      return printed.derated(first.num("head_derate_worn"));
    }

    double[] wants() {
      return rows.stream().mapToDouble(r -> r.num("wanted_L_min") * L_MIN).toArray();
    }

    Balance solve() {
      return first.text("mode").equals("equal")
          ? Balance.equal(now(), set())
          : Balance.wanted(now(), set(), wants());
    }
  }

  static Stream<String> cases() {
    return Sheet.of("hydraulics-balance.csv")
        .where(r -> r.text("riser").equals("1"))
        .atLeast(24)
        .map(Row::id);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theValvesAgreeWithTheSheet(String id) {
    Case c = Case.of(id);
    Balance b = c.solve();
    Row f = c.first();
    assertThat(b.status().word().replace('-', '_')).isEqualTo(f.text("status"));
    if (f.has("limiting_riser")) {
      assertThat(b.limiting() + 1).isEqualTo((int) f.num("limiting_riser"));
      assertThat(b.valves()[b.limiting()].head().getAsDouble()).isEqualTo(0.0);
    } else {
      assertThat(b.limiting()).isEqualTo(-1);
    }
    same(f, b.share(), "share_of_wanted");
    same(f, litres(b.leftForOthers()), "left_for_others_L_min");
    same(f, b.totalFlow() / L_MIN, "pump_flow_L_min");
    same(f, b.manifoldHead(), "manifold_head_m");
    for (int i = 0; i < c.rows().size(); i++) {
      Row r = c.rows().get(i);
      SetValve v = b.valves()[i];
      assertThat(v.state().word()).as(r.idAndProvenance()).isEqualTo(r.text("valve"));
      same(r, v.openFlow() / L_MIN, "open_flow_L_min");
      same(r, v.flow() / L_MIN, "set_flow_L_min");
      same(r, v.head(), "valve_head_m");
      same(r, v.k(), "valve_K");
      // "A valve K over 1000 (BA34, BA35) wants a screw clamp"
      assertThat(v.wantsClamp()).isEqualTo(r.has("valve_K") && r.num("valve_K") > 1000);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatTheyGetLaterAgreesWithTheSheet(String id) {
    Case c = Case.of(id);
    Balance b = c.solve();
    ManifoldFlow full = b.flows(c.at("full"), c.now());
    ManifoldFlow low = b.flows(c.at("low"), c.now());
    ManifoldFlow wornFull = b.flows(c.at("full"), c.worn());
    ManifoldFlow wornLow = b.flows(c.at("low"), c.worn());
    double jug = c.first().num("jug_L") / 1000;
    for (int i = 0; i < c.rows().size(); i++) {
      Row r = c.rows().get(i);
      same(r, full.flow(i) / L_MIN, "full_flow_L_min");
      same(r, low.flow(i) / L_MIN, "low_flow_L_min");
      same(r, wornFull.flow(i) / L_MIN, "worn_full_flow_L_min");
      same(r, wornLow.flow(i) / L_MIN, "worn_low_flow_L_min");
      same(r, Balance.secondsFor(jug, b.valves()[i].flow()), "jug_set_s");
      same(r, Balance.secondsFor(jug, full.flow(i)), "jug_full_s");
      same(r, Balance.secondsFor(jug, low.flow(i)), "jug_low_s");
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theRoundsByHandAgreeWithTheSheet(String id) {
    Case c = Case.of(id);
    Balance b = c.solve();
    int[] order = b.order();
    for (int i = 0; i < c.rows().size(); i++) {
      Row r = c.rows().get(i);
      int place = 0;
      for (int n = 0; n < order.length; n++) {
        place = order[n] == i ? n + 1 : place;
      }
      assertThat(r.has("hand_order") ? (int) r.num("hand_order") : 0).isEqualTo(place);
    }
    JugRounds right = JugRounds.of(c.now(), c.set(), b, order, 3);
    for (int round = 0; round < right.flows().length; round++) {
      for (int i = 0; i < c.rows().size(); i++) {
        same(c.rows().get(i), right.flows()[round][i] / L_MIN, "hand_" + (round + 1) + "_L_min");
      }
    }
    if (b.rounds() == 1 && right.flows().length > 0) {
      // "With two towers only one valve is to be set and nothing drifts"
      assertThat(right.worst()[0]).isLessThan(1e-9);
    }
    assertThat(right.flows().length).isEqualTo(c.first().has("hand_1_L_min") ? 3 : 0);
    if (b.active() > 1 && right.flows().length > 0) {
      JugRounds wrong = JugRounds.of(c.now(), c.set(), b, backwards(order), 2);
      for (int n = 1; n <= 3; n++) {
        same(c.first(), 100 * right.worst()[n - 1], "hand_worst_" + n + "_pct");
      }
      for (int n = 1; n <= 2; n++) {
        same(c.first(), 100 * wrong.worst()[n - 1], "wrong_order_worst_" + n + "_pct");
      }
    }
  }

  private static int[] backwards(int[] order) {
    int[] other = new int[order.length];
    for (int n = 0; n < order.length; n++) {
      other[n] = order[order.length - 1 - n];
    }
    return other;
  }

  private static OptionalDouble litres(OptionalDouble flow) {
    return flow.isPresent() ? OptionalDouble.of(flow.getAsDouble() / L_MIN) : flow;
  }

  private static void same(Row r, OptionalDouble ours, String column) {
    assertThat(ours.isPresent())
        .as(column + " told, " + r.idAndProvenance())
        .isEqualTo(r.has(column));
    if (ours.isPresent()) {
      same(r, ours.getAsDouble(), column);
    }
  }

  /** Tolerance of the sheet: 1E-5, 1E-6 L/min; *_pct 1E-3 (sheet section 5); 0 is 0. */
  private static void same(Row r, double ours, String column) {
    double want = r.num(column);
    double tolerance = r.num("tol_rel") * Math.abs(want);
    if (column.endsWith("_L_min")) {
      tolerance = Math.max(tolerance, r.num("tol_abs"));
    } else if (column.endsWith("_pct")) {
      tolerance = 1e-3;
    }
    if (want == 0 && !column.endsWith("_pct")) {
      assertThat(ours).as(column + " " + r.idAndProvenance()).isEqualTo(0.0);
    } else {
      assertThat(ours).as(column + " " + r.idAndProvenance()).isCloseTo(want, within(tolerance));
    }
  }

  /** Guards the guards: the columns that the three tests above walk through are filled. */
  @ParameterizedTest
  @MethodSource("filled")
  void theSheetTellsEnough(String column, int least) {
    assertThat(Sheet.of("hydraulics-balance.csv").having(column).atLeast(least)).isNotNull();
  }

  static Stream<Object[]> filled() {
    List<Object[]> all = new ArrayList<>();
    all.add(new Object[] {"valve_K", 53});
    all.add(new Object[] {"jug_low_s", 50});
    all.add(new Object[] {"left_for_others_L_min", 4});
    all.add(new Object[] {"hand_3_L_min", 50});
    all.add(new Object[] {"wrong_order_worst_2_pct", 44});
    return all.stream();
  }
}
