package leat.controller;

import leat.level.CapSensor;

/**
 * The moisture sensor in the caps: thresholds, and how long after the start of the pump it may be
 * judged.
 *
 * <p>Source: {@link CapSensor}.
 */
public final class CapTable {
  private final CapSensor sensor;
  private final String[] towers;
  private final double[] wetAfter;

  /**
   * @param sensor the sensor, or null when its counts are not known
   * @param towers names of the towers; none when their water is not known
   * @param wetAfter s from the pump's start until water is at each cap, at the refill mark; NaN
   *     where it never is
   */
  public CapTable(CapSensor sensor, String[] towers, double[] wetAfter) {
    this.sensor = sensor;
    this.towers = towers.clone();
    this.wetAfter = wetAfter.clone();
  }

  void write(StringBuilder out) {
    out.append("\n/* The sensor in the cap. */\n");
    if (sensor != null) {
      CText.define(out, "TOWER_HAS_CAP", 1);
      CText.define(out, "TOWER_CAP_WET_COUNTS", CText.u32(sensor.wetAt()), side(true));
      CText.define(out, "TOWER_CAP_DRY_COUNTS", CText.u32(sensor.dryAt()), side(false));
      out.append("\n/* Counts between the two say nothing yet. */\n");
      compare(out, "tower_cap_is_wet", "TOWER_CAP_WET_COUNTS", sensor.fewerIsWet());
      compare(out, "tower_cap_is_dry", "TOWER_CAP_DRY_COUNTS", !sensor.fewerIsWet());
    }
    if (towers.length > 0) {
      waits(out);
    }
  }

  private String side(boolean wet) {
    boolean fewer = wet == sensor.fewerIsWet();
    String what = wet ? "water runs" : "the cap is dry";
    return what + (fewer ? " at this or fewer" : " at this or more");
  }

  private static void compare(StringBuilder out, String name, String limit, boolean fewer) {
    out.append("static inline int ").append(name).append("(uint32_t counts) {\n  return counts ");
    out.append(fewer ? "<= " : ">= ").append(limit).append(";\n}\n");
  }

  private void waits(StringBuilder out) {
    out.append(
        "\n/* Seconds from the start of the pump until water is at the cap, the tank at its");
    out.append(
        "\n   refill mark, and until a dry cap may be called a failure; 0: it never comes. */");
    out.append(
        "\ntypedef struct {\n  uint32_t wet_ms;\n  uint16_t judge_s;\n} tower_cap_wait;\n\n");
    CText.define(out, "TOWER_TOWERS", towers.length);
    out.append("static const tower_cap_wait tower_cap_waits[] = {\n");
    for (int t = 0; t < towers.length; t++) {
      boolean comes = !Double.isNaN(wetAfter[t]);
      out.append("  {").append(CText.u32(comes ? (long) Math.ceil(1000 * wetAfter[t]) : 0));
      out.append(", ").append(comes ? CapSensor.judgeAfter(wetAfter[t]) : 0);
      out.append("}, /* ").append(CText.comment(towers[t])).append(" */\n");
    }
    out.append("};\n");
  }
}
