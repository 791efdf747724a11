package leat.check;

import leat.hydraulics.Derate;
import leat.hydraulics.ManifoldFlow;
import leat.plan.Plan;
import leat.plan.Taken;
import leat.system.DerateOf;
import leat.system.SetValves;
import leat.system.TowerAt;
import leat.system.Waterway;

/** What runs through the towers of a plan under judgement, solved once for all rules. */
final class SubjectWater {
  private final Plan plan;
  private final Taken taken;
  private Derate believed;
  private Waterway waterway;
  private SetValves valves;
  private ManifoldFlow flowsLow;
  private ManifoldFlow flowsFull;
  private TowerAt[] low;
  private TowerAt[] full;
  private TowerAt[] openLow;
  private TowerAt[] openFull;

  SubjectWater(Plan plan, Derate believed, Taken taken) {
    this.plan = plan;
    this.believed = believed;
    this.taken = taken;
  }

  /** The water's way, all valves open. */
  Waterway waterway() {
    if (waterway == null) {
      waterway = Waterway.judged(plan, believed(), taken);
    }
    return waterway;
  }

  /** How much of the printed head is believed, on the tower as written. */
  Derate believed() {
    if (believed == null) {
      believed = DerateOf.forVerdict(plan, taken);
    }
    return believed;
  }

  /** The same when some rule has asked for it, else null. */
  Derate believedSoFar() {
    return believed;
  }

  /** The valves of the plan, set at the refill mark to the flows that are wanted. */
  SetValves valves() {
    if (valves == null) {
      valves = SetValves.of(waterway());
    }
    return valves;
  }

  /** Flows that really run with the tank at its refill mark. */
  ManifoldFlow flowsLow() {
    if (flowsLow == null) {
      flowsLow = valves().low(waterway());
    }
    return flowsLow;
  }

  /** Flows that really run with the tank full. */
  ManifoldFlow flowsFull() {
    if (flowsFull == null) {
      flowsFull = valves().flows(waterway(), waterway().full());
    }
    return flowsFull;
  }

  /** A tower with the tank at its refill mark. */
  TowerAt low(int t) {
    if (low == null) {
      low = towers(flowsLow());
    }
    return low[t];
  }

  /** A tower with the tank full. */
  TowerAt full(int t) {
    if (full == null) {
      full = towers(flowsFull());
    }
    return full[t];
  }

  /** A tower at the refill mark with all valves open, as {@code leat pump} tells it. */
  TowerAt openLow(int t) {
    if (openLow == null) {
      openLow = valves().any() ? towers(waterway().flows(waterway().low())) : towers(flowsLow());
    }
    return openLow[t];
  }

  /** The same with the tank full. */
  TowerAt openFull(int t) {
    if (openFull == null) {
      openFull = valves().any() ? towers(waterway().flows(waterway().full())) : towers(flowsFull());
    }
    return openFull[t];
  }

  private TowerAt[] towers(ManifoldFlow flows) {
    TowerAt[] towers = new TowerAt[waterway().towers()];
    for (int t = 0; t < towers.length; t++) {
      towers[t] = new TowerAt(waterway(), t, flows);
    }
    return towers;
  }
}
