package leat.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leat.answer.Column;
import leat.answer.Show;
import leat.check.Subject;
import leat.energy.Bill;
import leat.energy.Overlap;
import leat.hydraulics.Derate;
import leat.plan.Refused;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.RunNeeds;
import leat.system.TariffOf;
import leat.system.TowerAt;

/** The one list of measures, in the order they are shown; several towers give their worst. */
public final class Measures {
  private Measures() {}

  private static Measure of(
      String command, boolean up, Column column, ToDoubleFunction<Subject> value) {
    return new Measure(command, up, column) {
      @Override
      public double of(Subject subject) {
        return value.applyAsDouble(subject);
      }
    };
  }

  /** Least or most of a value over the towers at the refill mark. */
  private static double worst(Subject subject, boolean least, ToDoubleFunction<TowerAt> value) {
    double worst = Double.NaN;
    for (int t = 0; t < subject.waterway().towers(); t++) {
      double own = value.applyAsDouble(subject.low(t));
      if (Double.isNaN(own)) {
        return own;
      }
      worst = Double.isNaN(worst) ? own : least ? Math.min(worst, own) : Math.max(worst, own);
    }
    return worst;
  }

  /** All measures. */
  public static List<Measure> all() {
    List<Measure> all = new ArrayList<>();
    water(all);
    tank(all);
    running(all);
    return all;
  }

  private static void water(List<Measure> all) {
    all.add(
        of(
            "pump",
            true,
            Column.of("flow_low_L_min", "flow at low", Show.L_MIN),
            s -> worst(s, true, TowerAt::flow)));
    all.add(
        of(
            "pump",
            true,
            Column.of("flow_full_L_min", "flow when full", Show.L_MIN),
            s -> {
              double least = Double.NaN;
              for (int t = 0; t < s.waterway().towers(); t++) {
                double own = s.full(t).flow();
                least = Double.isNaN(least) ? own : Math.min(least, own);
              }
              return least;
            }));
    all.add(
        of(
            "pump",
            true,
            Column.of("margin_m", "margin", Show.M),
            s -> worst(s, true, TowerAt::margin)));
    all.add(
        of(
            "pump",
            true,
            Column.of("margin_pct", "margin", Show.PERCENT),
            s -> worst(s, true, t -> t.marginShare().orElse(Double.NaN))));
    all.add(
        of(
            "pump",
            false,
            Column.of("fill_time_s", "fill time", Show.S),
            s -> worst(s, false, t -> t.fillTime().orElse(Double.NaN))));
    all.add(
        of(
            "pump",
            false,
            Column.of("velocity_m_s", "speed", Show.M_S),
            s -> worst(s, false, TowerAt::velocity)));
    all.add(
        of(
            "pump",
            false,
            Column.of("drain_back_L", "drains back", Show.L),
            s -> {
              double sum = 0;
              for (int t = 0; t < s.waterway().towers(); t++) {
                sum += s.low(t).drainBack() * s.low(t).count();
              }
              return sum;
            }));
    all.add(
        of(
            "pump",
            true,
            Column.of("derate_pct", "derate", Show.PERCENT),
            s -> s.believed().kind() == Derate.Kind.NO_FLOW ? Double.NaN : s.waterway().derate()));
  }

  private static void tank(List<Measure> all) {
    all.add(
        of(
            "tank",
            true,
            Column.of("usable_L", "usable", Show.L),
            s ->
                s.tank().volume(s.section("tank").need("full"))
                    - s.tank().volume(s.section("tank").need("low"))));
    all.add(
        of("tank", true, Column.of("capacity_L", "to the rim", Show.L), s -> s.tank().capacity()));
  }

  private static void running(List<Measure> all) {
    all.add(
        of(
            "duty",
            false,
            Column.of("least_run_s", "least run", Show.S),
            s -> {
              RunNeeds needs = RunNeeds.of(s.plan(), s.waterway(), s.flowsLow());
              return needs.dryTower() != null ? Double.NaN : needs.least().seconds();
            }));
    all.add(
        of(
            "duty",
            false,
            Column.of("kwh_day", "energy a day", Show.KWH),
            s -> bill(s).totalJDay()));
    all.add(
        of(
            "duty",
            false,
            Column.number("starts_per_day", "starts a day", 3),
            s -> bill(s).startsPerDay()));
    all.add(
        of(
            "duty",
            false,
            Column.of("cost_electricity", "electricity", Show.of(Units.MONEY_UNIT, 3)),
            s -> bill(s).cost()));
  }

  /** Electricity of the season. */
  private static Bill bill(Subject subject) {
    subject.section("season").needRaw("from");
    subject.section("season").needRaw("to");
    subject.section("tariff").need("price");
    TariffOf price = TariffOf.of(subject.plan(), 0);
    Overlap overlap =
        Overlap.of(subject.season(), subject.timetable().windows(), price.tariff().windows());
    return Bill.of(overlap, subject.timetable(), price.tariff(), DrawOf.of(subject.plan()));
  }

  /** Names of all measures. */
  public static List<String> names() {
    List<String> names = new ArrayList<>();
    for (Measure measure : all()) {
      names.add(measure.name());
    }
    return names;
  }

  /**
   * The measure of a name.
   *
   * @throws Refused with the nearest name
   */
  public static Measure find(String name) {
    for (Measure measure : all()) {
      if (measure.name().equals(name)) {
        return measure;
      }
    }
    throw new Refused(SweepErrors.noMeasure(name, names()));
  }
}
