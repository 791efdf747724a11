package leat.system;

import leat.energy.Coil;
import leat.energy.Contact;
import leat.energy.Draw;
import leat.energy.Motor;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;

/** What draws power in a plan: pump, controller, coil; and the pump as a load of its relay. */
public final class DrawOf {
  private DrawOf() {}

  /** Pump, controller and coil; what the plan does not name draws nothing. */
  public static Draw of(Plan plan, Taken taken) {
    Section controller = plan.section("controller");
    Section relay = controller.section("relay");
    Double coil = relay.maybe("coil");
    return new Draw(
        plan.section("pump").need("power"),
        or0(controller.maybe("power")),
        or0(coil),
        coil == null ? Coil.NEVER : when(relay.word("coil_when", taken)));
  }

  private static double or0(Double watts) {
    return watts == null ? 0 : watts;
  }

  private static Coil when(String word) {
    switch (word) {
      case "off":
        return Coil.WHILE_RESTING;
      case "never":
        return Coil.NEVER;
      default:
        return Coil.WHILE_RUNNING;
    }
  }

  /** Whether the pump runs on direct current. */
  public static boolean isDirect(Plan plan) {
    return plan.section("pump").section("supply").has("dc");
  }

  /** Whether rating of the contact and voltage are known, so that a relay can be judged. */
  public static boolean isRelayKnown(Plan plan) {
    Section supply = plan.section("pump").section("supply");
    return plan.section("controller").section("relay").has("rated")
        && (supply.has("dc") || supply.has("mains"));
  }

  /** The pump as a load of its contact. */
  public static Motor motor(Plan plan, Taken taken) {
    Section pump = plan.section("pump");
    Section supply = pump.section("supply");
    double inrush = plan.section("controller").section("relay").get("inrush", taken);
    if (supply.has("dc")) {
      return new Motor(
          pump.need("power"), supply.need("dc"), Motor.DIRECT_CURRENT_POWER_FACTOR, inrush);
    }
    return new Motor(
        pump.need("power"), supply.need("mains"), pump.get("power_factor", taken), inrush);
  }

  /** The relay's contact. */
  public static Contact contact(Plan plan, Taken taken) {
    Section relay = plan.section("controller").section("relay");
    return Contact.of(relay.need("rated"), relay.get("cycles", taken));
  }

  /** Operations the relay is rated for. */
  public static double operations(Plan plan, Taken taken) {
    return plan.section("controller").section("relay").get("cycles", taken);
  }
}
