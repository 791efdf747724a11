package leat.energy;

import static leat.energy.DutyTest.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CableTest {
  private static final Copper.Strands FLEXIBLE = Copper.Strands.FLEXIBLE;

  static Stream<Row> rows() {
    return Sheet.of("energy-cable.csv").atLeast(11);
  }

  private static double ohmPerM(Row r, double area) {
    return switch (r.text("resistance_from")) {
      case "class5" -> Copper.ohmPerM(FLEXIBLE, area);
      case "class2" -> Copper.ohmPerM(Copper.Strands.SOLID_OR_STRANDED, area);
      case "resistivity" -> Copper.byResistivity(area);
      default -> throw new IllegalArgumentException(r.text("resistance_from"));
    };
  }

  private static OptionalDouble percent(OptionalDouble share) {
    return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double area = r.has("awg") ? Copper.gaugeArea(r.num("awg")) : r.num("area_mm2") * 1e-6;
    Close.to(r, "area_mm2", area * 1e6);
    Cable c =
        Cable.of(
            r.num("supply_V"),
            r.num("pump_W"),
            r.num("one_way_length_m"),
            area,
            ohmPerM(r, area),
            r.num("conductor_C"),
            r.num("inrush_multiple"),
            r.num("least_pump_V"));
    Close.to(r, "ohm_per_km_20C", c.ohmPerM() * 1000);
    Close.to(r, "loop_ohm", c.loopOhm());
    Close.to(r, "drop_V_constant_current", c.dropV());
    Close.to(r, "drop_pct_constant_current", 100 * c.dropShare());
    assertThat(c.feeds()).isEqualTo(Boolean.parseBoolean(r.text("constant_power_possible")));
    Close.toOrEmpty(r, "pump_V", c.pumpV());
    Close.toOrEmpty(r, "pump_A", c.pumpA());
    Close.toOrEmpty(r, "drop_pct", percent(c.pumpDropShare()));
    Close.toOrEmpty(r, "cable_loss_W", c.lossW());
    Close.to(r, "pump_V_at_inrush", c.pumpVAtInrush());
    assertThat(c.starts()).isEqualTo(Boolean.parseBoolean(r.text("starts")));
    Close.to(r, "area_for_5pct_mm2", c.areaFor5Pct() * 1e6);
    Close.toOrEmpty(r, "fuse_A", c.fuseA());
    Close.toOrEmpty(r, "cord_limit_A", c.cordLimitA());
    Cable.Cord cord =
        !r.has("fuse_protects_cord")
            ? Cable.Cord.UNKNOWN
            : Boolean.parseBoolean(r.text("fuse_protects_cord"))
                ? Cable.Cord.PROTECTED
                : Cable.Cord.UNPROTECTED;
    assertThat(c.cord()).isEqualTo(cord);
  }

  /** Sheet energy.md section 6: every size of both tables, ohm/km. */
  @Test
  void theTablesOfTheStandard() {
    double[] mm2 = {0.5, 0.75, 1, 1.5, 2.5, 4, 6};
    double[] solid = {36.0, 24.5, 18.1, 12.1, 7.41, 4.61, 3.08};
    double[] flexible = {39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30};
    assertThat(Copper.tableSizes()).hasSameSizeAs(mm2);
    for (int i = 0; i < mm2.length; i++) {
      double area = mm2[i] * 1e-6;
      assertThat(Copper.tableSizes()[i]).isCloseTo(area, within(1e-15));
      assertThat(1000 * Copper.ohmPerM(Copper.Strands.SOLID_OR_STRANDED, area))
          .isCloseTo(solid[i], within(1e-9));
      assertThat(1000 * Copper.ohmPerM(FLEXIBLE, area)).isCloseTo(flexible[i], within(1e-9));
      double under = 1 - 1000 * Copper.byResistivity(area) / flexible[i];
      assertThat(under).as("the table is a maximum").isBetween(0.0, 0.14);
    }
    assertThat(Copper.ohmPerM(FLEXIBLE, 2e-6)).isEqualTo(Copper.byResistivity(2e-6));
  }

  @Test
  void wireGauges() {
    assertThat(Copper.gaugeArea(18) * 1e6).isCloseTo(0.823, within(0.0005));
    assertThat(Copper.gaugeArea(22) * 1e6).isCloseTo(0.326, within(0.0005));
    assertThat(Copper.gaugeArea(36) * 1e6).isCloseTo(Math.PI / 4 * 0.127 * 0.127, within(1e-12));
    // gauge 0 is 8.2515 mm by definition of the series (0.3249 in)
    assertThat(Math.sqrt(Copper.gaugeArea(0) * 4 / Math.PI) * 1000).isCloseTo(8.2515, within(5e-4));
  }

  @Test
  void fusesAndCords() {
    assertThat(Fuse.sizeA(6)).hasValue(7.5);
    assertThat(Fuse.sizeA(0)).hasValue(1);
    assertThat(Fuse.sizeA(24)).hasValue(30);
    assertThat(Fuse.sizeA(24.1)).isEmpty();
    assertThat(Fuse.cordLimitA(1.5e-6)).hasValue(16);
    assertThat(Fuse.cordLimitA(4e-6)).isEmpty();
    assertThat(Fuse.cordCarriesAtLeastA(4e-6)).isEqualTo(20);
    assertThat(Fuse.cordCarriesAtLeastA(0.823e-6)).isEqualTo(6);
    assertThat(Fuse.cordCarriesAtLeastA(0.3e-6)).isZero();
  }

  @Test
  void verdictsOnTheDrop() {
    Cable good = cable(12, 18, 5, 0.75e-6);
    assertThat(good.drop()).isEqualTo(Cable.Drop.GOOD);
    assertThat(good.differ()).as("3.36 against 3.25 per cent").isFalse();
    Cable much = cable(12, 18, 10, 0.75e-6);
    assertThat(much.drop()).isEqualTo(Cable.Drop.MUCH);
    Cable tooMuch = cable(12, 18, 15, 0.75e-6);
    assertThat(tooMuch.drop()).isEqualTo(Cable.Drop.TOO_MUCH);
    assertThat(tooMuch.differ()).as("10.9 against 9.75 per cent").isTrue();
    assertThat(cable(12, 60, 25, 0.5e-6).drop()).isEqualTo(Cable.Drop.TOO_MUCH);
  }

  private static Cable cable(double volts, double watts, double metres, double area) {
    return Cable.of(volts, watts, metres, area, Copper.ohmPerM(FLEXIBLE, area), 20, 4, 9);
  }

  @Test
  void theLeastSizeIsTheFirstThatDoes() {
    assertThat(Cable.leastSize(FLEXIBLE, 12, 18, 15, 20, 4, 9, Cable.GOOD_DROP)).hasValue(2.5e-6);
    assertThat(Cable.leastSize(FLEXIBLE, 12, 18, 5, 20, 4, 9, Cable.GOOD_DROP)).hasValue(0.75e-6);
    assertThat(Cable.leastSize(FLEXIBLE, 12, 60, 100, 20, 4, 9, Cable.GOOD_DROP)).isEmpty();
    // no drop at all: the fuse of 12.5 A then asks for a cord that carries 15 A
    assertThat(Cable.leastSize(FLEXIBLE, 12, 120, 0, 20, 4, 9, Cable.GOOD_DROP)).hasValue(1.5e-6);
  }

  @Test
  void refusesWhatCannotBe() {
    refused("length", () -> cable(12, 18, -1, 1e-6));
    refused("power", () -> cable(12, -18, 1, 1e-6));
    refused("supply", () -> cable(0, 18, 1, 1e-6));
    refused("cross-section", () -> cable(12, 18, 1, 0));
    refused("gauge", () -> Copper.gaugeArea(41));
    refused("conductor", () -> Copper.temperatureFactor(-200));
    refused("current", () -> Fuse.sizeA(-1));
    refused("drop", () -> Cable.leastSize(FLEXIBLE, 12, 18, 5, 20, 4, 9, 0));
  }

  /** Power in is power out plus loss; the fixed point U - I R agrees. */
  @Property(tries = 300)
  void energyIsConserved(
      @ForAll @DoubleRange(min = 5, max = 48) double volts,
      @ForAll @DoubleRange(min = 0, max = 60) double watts,
      @ForAll @DoubleRange(min = 0, max = 30) double metres) {
    Cable c = cable(volts, watts, metres, 1.5e-6);
    if (c.feeds()) {
      double amperes = c.pumpA().getAsDouble();
      assertThat(amperes * volts)
          .isCloseTo(watts + c.lossW().getAsDouble(), within(1e-9 * (1 + watts)));
      assertThat(volts - amperes * c.loopOhm())
          .isCloseTo(c.pumpV().getAsDouble(), within(1e-9 * volts));
      assertThat(c.pumpDropShare().getAsDouble())
          .isGreaterThanOrEqualTo(c.dropShare() * (1 - 1e-9) - 1e-12);
    }
  }
}
