package leat.check;

import leat.hydraulics.Derate;
import leat.hydraulics.ManifoldFlow;
import leat.level.Sender;
import leat.level.Tank;
import leat.plan.Named;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.QuantityReader;
import leat.quantity.Unreadable;
import leat.system.SenderOf;
import leat.system.TankOf;
import leat.system.Waterway;

/** A plan under judgement, with its models solved once for all rules. */
public final class Subject {
  private final Plan plan;
  private Tank tank;
  private Waterway waterway;
  private Sender sender;
  private ManifoldFlow flowsLow;
  private ManifoldFlow flowsFull;

  /** The plan to judge. */
  public Subject(Plan plan) {
    this.plan = plan;
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** A section of the plan. */
  public Section section(String name) {
    return plan.section(name);
  }

  /** The tank. */
  public Tank tank() {
    if (tank == null) {
      tank = TankOf.of(plan.section("tank"));
    }
    return tank;
  }

  /** The sender in its tank. */
  public Sender sender() {
    if (sender == null) {
      sender = SenderOf.of(plan);
    }
    return sender;
  }

  /** The water's way, solved at the low mark and at full. */
  public Waterway waterway() {
    if (waterway == null) {
      waterway = Waterway.judged(plan);
    }
    return waterway;
  }

  /** Share of the printed head on which verdicts rest; null when no rule came to ask for it. */
  public Derate believed() {
    return waterway == null ? null : waterway.believed();
  }

  /** Flows with the tank at its refill mark. */
  public ManifoldFlow flowsLow() {
    if (flowsLow == null) {
      flowsLow = waterway().flows(waterway().low());
    }
    return flowsLow;
  }

  /** Flows with the tank full. */
  public ManifoldFlow flowsFull() {
    if (flowsFull == null) {
      flowsFull = waterway().flows(waterway().full());
    }
    return flowsFull;
  }

  /** Whether the plan sets a limit of its own for a rule. */
  public boolean hasOwnLimit(Rule rule) {
    return ownLimit(rule) != null;
  }

  /** The plan's own limit for a rule, in the rule's base unit, or null. */
  public Double ownLimit(Rule rule) {
    Object text = plan.root().named("limits").get(rule.id());
    if (text == null) {
      return null;
    }
    return readLimit(rule, (String) text);
  }

  /** The plan's own limit for a rule, else the value of a key that is the limit. */
  public double limitOr(Rule rule, Section section, String key) {
    Double own = ownLimit(rule);
    return own != null ? own : section.need(key);
  }

  private Double readLimit(Rule rule, String text) {
    try {
      return rule.show() == null
          ? null
          : Double.valueOf(QuantityReader.read(text, rule.show().metric().dimension()).value());
    } catch (Unreadable e) {
      throw new Refused(
          CheckErrors.badLimit(plan.root().named("limits"), rule.id(), e.message(), e.code()));
    }
  }

  /** Refuses names in {@code limits} that are no rule's id. */
  void checkLimits() {
    Named limits = plan.root().named("limits");
    for (int i = 0; i < limits.size(); i++) {
      if (Rules.find(limits.name(i)) == null) {
        throw new Refused(CheckErrors.unknownRule(limits, i));
      }
    }
  }
}
