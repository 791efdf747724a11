package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Subject;
import leat.hydraulics.Bore;
import leat.hydraulics.Bores;
import leat.plan.Section;
import leat.system.Waterway;

/** Changes of a tower that several rules propose. */
final class TowerCures {
  private static final String BALL = "ball";
  private static final int SIZES_TRIED = 3;

  /** Differences that rounding makes: of heights, m, and of a share of a module, -. */
  private static final double ROUNDING = 1e-9;

  private TowerCures() {}

  /** Every key of a tower that is proposed, in one place. */
  private static String key(int t, String name) {
    return RuleOfTowers.key(t, name);
  }

  /** A lower outlet, m over the tank's floor, with fewer modules when the stack is higher. */
  static Cure lowered(Subject subject, int t, double outlet) {
    Cure cure = Cure.atMost(key(t, "outlet"), outlet, Show.M);
    Section tower = RuleOfTowers.towers(subject).get(t);
    double top = ShapeRule.top(tower);
    return top > outlet ? fewer(cure, tower, t, top - outlet) : cure;
  }

  /** Fewer modules, so that the stack is lower by so many m; null when too few are left. */
  static Cure fewerModules(Subject subject, int t, double lower) {
    return fewer(null, RuleOfTowers.towers(subject).get(t), t, lower);
  }

  private static Cure fewer(Cure with, Section tower, int t, double lower) {
    List<Section> modules = tower.sections("modules");
    Cure cure = with;
    double left = lower;
    int dropped = 0;
    for (int m = modules.size() - 1; m >= 0 && left > 0; m--) {
      Section module = modules.get(m);
      double each = module.need("height") - (module.has("overlap") ? module.need("overlap") : 0);
      int count = (int) module.value("count").orElse(1);
      int less = Math.min(count - 1, (int) Math.ceil(left / each - ROUNDING));
      if (less > 0) {
        String key = key(t, "modules[" + m + "].count");
        String now = String.valueOf(count - less);
        cure = cure == null ? Cure.typed(key, now) : cure.andTyped(key, now);
        dropped += less;
        left -= less * each;
      }
    }
    if (left > ROUNDING) {
      return null;
    }
    if (dropped == 0) {
      return with;
    }
    return cure.remark(dropped == 1 ? " (1 module fewer)" : " (" + dropped + " modules fewer)");
  }

  /** A pump with a higher printed shut-off head, m; null when it would be another machine. */
  static Cure strongerPump(Subject subject, double shutoffHead) {
    return subject.waterway().printed().couldBe(shutoffHead)
        ? Cure.atLeast("pump.shutoff_head", shutoffHead, Show.M)
        : null;
  }

  /** A valve where there is none, set to what the plan wants already. */
  static Cure valveOnly(int t) {
    return Cure.typed(key(t, "riser.valve"), BALL);
  }

  /** A valve set to a flow, m3/s; the valve is added where there is none. */
  static Cure valveSet(Subject subject, int t, double flow) {
    return valveSet(null, subject.waterway(), t, flow);
  }

  private static Cure valveSet(Cure with, Waterway way, int t, double flow) {
    Cure cure = with;
    if (!way.tower(t).valved()) {
      String key = key(t, "riser.valve");
      cure = cure == null ? Cure.typed(key, BALL) : cure.andTyped(key, BALL);
    }
    String key = key(t, "wanted");
    return cure == null
        ? Cure.atMost(key, flow, Show.L_MIN)
        : cure.andAtMost(key, flow, Show.L_MIN);
  }

  /** Valves in all towers but one, each set to a share of what it takes; null with one tower. */
  static Cure othersHeldBack(Subject subject, int t, double share) {
    Waterway way = subject.waterway();
    Cure cure = null;
    for (int o = 0; o < way.towers(); o++) {
      double flow = subject.low(o).flow();
      if (o != t && flow > 0) {
        cure = valveSet(cure, way, o, share * flow);
      }
    }
    return cure;
  }

  /** Valves in all towers, each set to a share of what it takes with the tank full. */
  static Cure allHeldBack(Subject subject, double share) {
    Waterway way = subject.waterway();
    Cure cure = null;
    for (int o = 0; o < way.towers(); o++) {
      double flow = subject.full(o).flow();
      if (flow > 0) {
        cure = valveSet(cure, way, o, share * flow);
      }
    }
    return cure;
  }

  /** The next bores that one can buy, not under a bore, m. */
  static void wider(Advice advice, int t, double bore) {
    List<Bore> hoses = Bores.family(Bores.HOSE, false);
    int tried = 0;
    for (int i = 0; i < hoses.size() && tried < SIZES_TRIED; i++) {
      if (hoses.get(i).meets(bore)) {
        advice.cure(Cure.typed(key(t, "riser.bore"), size(hoses.get(i))));
        tried++;
      }
    }
  }

  /** The next bores that one can buy, not over a bore, m. */
  static void narrower(Advice advice, int t, double bore) {
    List<Bore> hoses = Bores.family(Bores.HOSE, false);
    int tried = 0;
    for (int i = hoses.size() - 1; i >= 0 && tried < SIZES_TRIED; i--) {
      if (Bores.notOver(hoses.get(i), bore)) {
        advice.cure(Cure.typed(key(t, "riser.bore"), size(hoses.get(i))));
        tried++;
      }
    }
  }

  /** "16 mm" of a "16 mm hose". */
  private static String size(Bore hose) {
    return hose.name().substring(0, hose.name().lastIndexOf(' '));
  }
}
