package leat.system;

import java.util.OptionalDouble;
import leat.energy.Cable;
import leat.energy.Copper;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;

/** The low-voltage cable of a plan's pump. */
public final class CableOf {
  /** Conductor temperature taken by default, C. */
  public static final double USUAL_CELSIUS = 20;

  private final String supplyTyped;
  private final String pumpTyped;
  private final String lengthTyped;
  private final double supplyV;
  private final double pumpW;
  private final double lengthM;
  private final double inrush;

  /** Supply, pump and length of a plan; refused with the key that is missing. */
  public CableOf(Plan plan, Taken taken) {
    Section supply = plan.section("pump").section("supply");
    this.supplyTyped = supply.typed("dc");
    this.pumpTyped = plan.section("pump").typed("power");
    this.lengthTyped = supply.section("cable").typed("length");
    this.supplyV = supply.need("dc");
    this.pumpW = plan.section("pump").need("power");
    this.lengthM = supply.section("cable").need("length");
    this.inrush = plan.section("controller").section("relay").get("inrush", taken);
  }

  /** Supply voltage as typed. */
  public String supplyTyped() {
    return supplyTyped;
  }

  /** Power of the pump as typed. */
  public String pumpTyped() {
    return pumpTyped;
  }

  /** Length one way, m. */
  public double length() {
    return lengthM;
  }

  /** Length one way as typed. */
  public String lengthTyped() {
    return lengthTyped;
  }

  /**
   * The cable with a section.
   *
   * @param area section of one core, m2
   * @param strands how it is built
   * @param celsius temperature of the conductor, C
   * @param leastPumpV voltage the pump needs to start, V, 0 when unknown
   */
  public Cable with(double area, Copper.Strands strands, double celsius, double leastPumpV) {
    return Cable.of(
        supplyV, pumpW, lengthM, area, Copper.ohmPerM(strands, area), celsius, inrush, leastPumpV);
  }

  /**
   * The thinnest usual wire gauge within a drop; empty when none is enough.
   *
   * @param celsius temperature of the conductor, C
   * @param leastPumpV voltage the pump needs to start, V, 0 when unknown
   * @param mostDrop drop over the supply that is still good, a share
   */
  public OptionalDouble leastGauge(double celsius, double leastPumpV, double mostDrop) {
    return Cable.leastGauge(supplyV, pumpW, lengthM, celsius, inrush, leastPumpV, mostDrop);
  }

  /**
   * The least size of the tables within a drop; empty when 6 mm2 is not enough.
   *
   * @param strands how it is built
   * @param celsius temperature of the conductor, C
   * @param leastPumpV voltage the pump needs to start, V, 0 when unknown
   * @param mostDrop drop over the supply, above 0 to 1
   */
  public OptionalDouble leastSize(
      Copper.Strands strands, double celsius, double leastPumpV, double mostDrop) {
    return Cable.leastSize(strands, supplyV, pumpW, lengthM, celsius, inrush, leastPumpV, mostDrop);
  }
}
