package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.COULOMB;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SIEMENS;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;
import static tech.units.indriya.unit.Units.WEEK;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.AbstractUnit;

/**
 * Every unit of the table against Indriya, which is given only SI units and the defining numbers:
 * NIST SP 811 (2008) appendix B (inch, pound, standard gravity, horsepower of 550 ft lbf/s, knot),
 * NIST Handbook 44 appendix C (gallon of 231 cubic inches and its parts, 5280 feet to the mile),
 * Weights and Measures Act 1985 (imperial gallon), DIN 38409-6 via sheet solution-tank.md (degrees
 * of hardness, 50.04 mg of CaCO3 a milliequivalent).
 */
class UnitsAgainstIndriyaTest {
  private static final Map<String, Unit<?>> SIMPLE = new HashMap<>();
  private static final Map<Dimension, Unit<?>> BASE = new HashMap<>();

  private static Unit<?> times(Unit<?> unit, double factor) {
    return unit.multiply(factor);
  }

  static {
    Unit<?> one = AbstractUnit.ONE;
    Unit<?> inch = times(METRE, 0.0254);
    Unit<?> foot = inch.multiply(12);
    Unit<?> gallon = inch.pow(3).multiply(231);
    Unit<?> pound = times(KILOGRAM, 0.45359237);
    Unit<?> gravity = times(METRE.divide(SECOND.pow(2)), 9.80665);
    Unit<?> poundForce = pound.multiply(gravity);
    Unit<?> waterMetre =
        times(KILOGRAM.divide(METRE.pow(3)), 1000).multiply(gravity).multiply(METRE);
    Unit<?> mho = SIEMENS;
    put("m", METRE, "mm", MetricPrefix.MILLI(METRE), "cm", MetricPrefix.CENTI(METRE));
    put("km", MetricPrefix.KILO(METRE), "um", MetricPrefix.MICRO(METRE), "in", inch, "ft", foot);
    put("yd", foot.multiply(3), "mil", inch.divide(1000), "mi", foot.multiply(5280));
    put(
        "m2",
        METRE.pow(2),
        "cm2",
        MetricPrefix.CENTI(METRE).pow(2),
        "mm2",
        MetricPrefix.MILLI(METRE).pow(2));
    put("in2", inch.pow(2), "ft2", foot.pow(2), "in3", inch.pow(3), "ft3", foot.pow(3));
    put(
        "m3",
        METRE.pow(3),
        "cm3",
        MetricPrefix.CENTI(METRE).pow(3),
        "mm3",
        MetricPrefix.MILLI(METRE).pow(3));
    put(
        "L",
        LITRE,
        "mL",
        MetricPrefix.MILLI(LITRE),
        "cL",
        MetricPrefix.CENTI(LITRE),
        "dL",
        MetricPrefix.DECI(LITRE));
    put("gal", gallon, "qt", gallon.divide(4), "pt", gallon.divide(8), "cup", gallon.divide(16));
    put("floz", gallon.divide(128), "tbsp", gallon.divide(256), "tsp", gallon.divide(768));
    put("kgal", gallon.multiply(1000), "ccf", METRE.multiply(0.3048).pow(3).multiply(100));
    put("impgal", times(LITRE, 4.54609), "10 L", LITRE.multiply(10), "100 L", LITRE.multiply(100));
    put("kg", KILOGRAM, "g", GRAM, "mg", MetricPrefix.MILLI(GRAM), "ug", MetricPrefix.MICRO(GRAM));
    put("t", KILOGRAM.multiply(1000), "lb", pound, "oz", pound.divide(16));
    put("s", SECOND, "min", MINUTE, "h", HOUR, "d", DAY, "week", WEEK);
    put(
        "Pa",
        PASCAL,
        "hPa",
        MetricPrefix.HECTO(PASCAL),
        "kPa",
        MetricPrefix.KILO(PASCAL),
        "MPa",
        MetricPrefix.MEGA(PASCAL));
    put(
        "bar",
        PASCAL.multiply(100000),
        "mbar",
        PASCAL.multiply(100),
        "psi",
        poundForce.divide(inch.pow(2)));
    // NIST SP 811, appendix B.8: the conventional inch of mercury
    put("inHg", times(PASCAL, 3386.389));
    put("mH2O", waterMetre, "inH2O", times(waterMetre, 0.0254));
    put("mph", foot.multiply(5280).divide(HOUR), "kn", METRE.multiply(1852).divide(HOUR));
    put(
        "W",
        WATT,
        "mW",
        MetricPrefix.MILLI(WATT),
        "kW",
        MetricPrefix.KILO(WATT),
        "hp",
        foot.multiply(poundForce).divide(SECOND).multiply(550));
    put(
        "J",
        JOULE,
        "kJ",
        MetricPrefix.KILO(JOULE),
        "MJ",
        MetricPrefix.MEGA(JOULE),
        "Wh",
        WATT.multiply(HOUR));
    put(
        "kWh",
        MetricPrefix.KILO(WATT).multiply(HOUR),
        "MWh",
        MetricPrefix.MEGA(WATT).multiply(HOUR));
    put(
        "N",
        NEWTON,
        "kN",
        MetricPrefix.KILO(NEWTON),
        "kgf",
        KILOGRAM.multiply(gravity),
        "lbf",
        poundForce);
    put(
        "S",
        SIEMENS,
        "mS",
        MetricPrefix.MILLI(SIEMENS),
        "uS",
        MetricPrefix.MICRO(SIEMENS),
        "dS",
        MetricPrefix.DECI(SIEMENS));
    put("mmho", MetricPrefix.MILLI(mho), "umho", MetricPrefix.MICRO(mho));
    put("CF", MetricPrefix.MILLI(SIEMENS).divide(MetricPrefix.CENTI(METRE)).divide(10));
    put("ppm", MetricPrefix.MILLI(GRAM).divide(LITRE));
    put(
        "ohm",
        OHM,
        "mohm",
        MetricPrefix.MILLI(OHM),
        "kohm",
        MetricPrefix.KILO(OHM),
        "Mohm",
        MetricPrefix.MEGA(OHM));
    put("V", VOLT, "mV", MetricPrefix.MILLI(VOLT), "A", AMPERE, "mA", MetricPrefix.MILLI(AMPERE));
    put("Ah", AMPERE.multiply(HOUR), "mAh", MetricPrefix.MILLI(AMPERE).multiply(HOUR));
    put("rad", RADIAN, "deg", times(RADIAN, Math.PI).divide(180));
    put("%", one.divide(100), "", one, "counts", one, "pieces", one, "seasons", one, "cycles", one);
    Unit<?> milligramsPerLitre = MetricPrefix.MILLI(GRAM).divide(LITRE);
    put(
        "dH",
        times(milligramsPerLitre, 17.85 / 50.04),
        "fH",
        times(milligramsPerLitre, 10 / 50.04));
    put(
        "mg/L as CaCO3",
        times(milligramsPerLitre, 1 / 50.04),
        "mg/L HCO3",
        times(milligramsPerLitre, 1 / 61.016));
    put("meq/L", milligramsPerLitre, "mmol/L as CaCO3", milligramsPerLitre.multiply(2));

    base(Dimension.LENGTH, METRE, Dimension.AREA, METRE.pow(2), Dimension.VOLUME, METRE.pow(3));
    base(
        Dimension.MASS,
        KILOGRAM,
        Dimension.TIME,
        SECOND,
        Dimension.FLOW,
        METRE.pow(3).divide(SECOND));
    base(Dimension.PRESSURE, PASCAL, Dimension.SPEED, METRE.divide(SECOND), Dimension.POWER, WATT);
    base(Dimension.ENERGY, JOULE, Dimension.FORCE, NEWTON, Dimension.RESISTANCE, OHM);
    base(
        Dimension.VOLTAGE,
        VOLT,
        Dimension.CURRENT,
        AMPERE,
        Dimension.CHARGE,
        COULOMB.multiply(3600));
    base(
        Dimension.ANGLE, RADIAN, Dimension.SHARE, one, Dimension.COUNT, one, Dimension.NUMBER, one);
    base(
        Dimension.MONEY,
        one,
        Dimension.MONEY_PER_ENERGY,
        one.divide(SIMPLE.get("kWh")),
        Dimension.MONEY_PER_MASS,
        one.divide(KILOGRAM));
    base(
        Dimension.MONEY_PER_VOLUME,
        one.divide(METRE.pow(3)),
        Dimension.MONEY_PER_TIME,
        one.divide(DAY));
    base(Dimension.EC, MetricPrefix.MILLI(SIEMENS).divide(MetricPrefix.CENTI(METRE)));
    base(
        Dimension.MASS_CONCENTRATION, milligramsPerLitre, Dimension.ALKALINITY, milligramsPerLitre);
    base(
        Dimension.VOLUME_RATIO,
        MetricPrefix.MILLI(LITRE).divide(LITRE),
        Dimension.RATE,
        one.divide(SECOND));
    base(Dimension.TIME_PER_DAY, one, Dimension.HEAD, METRE);
    base(Dimension.RADIATION, SIMPLE.get("MJ").divide(METRE.pow(2)));
  }

  private static void put(Object... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      SIMPLE.put((String) pairs[i], (Unit<?>) pairs[i + 1]);
    }
  }

  private static void base(Object... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      BASE.put((Dimension) pairs[i], (Unit<?>) pairs[i + 1]);
    }
  }

  static List<leat.quantity.Unit> scales() {
    return Units.all().stream()
        .filter(u -> u.dimension() != Dimension.TEMPERATURE)
        .filter(u -> u.dimension() != Dimension.TEMPERATURE_DIFFERENCE)
        .toList();
  }

  private static Unit<?> theirs(String symbol) {
    int slash = symbol.indexOf('/');
    if (SIMPLE.containsKey(symbol) || slash < 0) {
      assertThat(SIMPLE.containsKey(symbol))
          .as("no factor for %s: put it above, made of SI units and defining numbers", symbol)
          .isTrue();
      return SIMPLE.get(symbol);
    }
    return theirs(symbol.substring(0, slash)).divide(theirs(symbol.substring(slash + 1)));
  }

  @ParameterizedTest
  @MethodSource("scales")
  void everyFactor(leat.quantity.Unit unit) throws Exception {
    Unit<?> theirs = theirs(unit.symbol());
    Unit<?> base = BASE.get(unit.dimension());
    if (unit.dimension() == Dimension.HEAD && !theirs.isCompatible(METRE)) {
      base = SIMPLE.get("mH2O");
    }
    double expected = theirs.getConverterToAny(base).convert(1.0);
    assertThat(unit.toBase(1)).as(unit.name()).isCloseTo(expected, withPercentage(1e-12));
    assertThat(unit.fromBase(expected)).isCloseTo(1, withPercentage(1e-12));
  }

  @Test
  void temperatures() throws Exception {
    for (double c : new double[] {-40, 0, 17.5, 100}) {
      double k = CELSIUS.getConverterToAny(KELVIN).convert(c);
      assertThat(Units.KELVIN.toBase(k))
          .isCloseTo(c, org.assertj.core.api.Assertions.within(1e-12));
      Unit<?> fahrenheit = KELVIN.multiply(5).divide(9).shift(459.67);
      double f = CELSIUS.getConverterToAny(fahrenheit).convert(c);
      assertThat(Units.F.toBase(f)).isCloseTo(c, org.assertj.core.api.Assertions.within(1e-11));
      assertThat(Units.C.toBase(c)).isEqualTo(c);
    }
    assertThat(Units.F_DIFFERENCE.toBase(9)).isEqualTo(5);
    assertThat(Units.K.toBase(9)).isEqualTo(9);
    assertThat(Units.C_DIFFERENCE.toBase(9)).isEqualTo(9);
  }

  @Test
  void theTableIsSound() {
    assertThat(Units.all()).hasSizeGreaterThan(150);
    for (Dimension d : Dimension.values()) {
      List<String> spellings = QuantityReader.spellings(d);
      assertThat(spellings).as(d.name()).isNotEmpty().doesNotHaveDuplicates();
      assertThat(QuantityReader.read(d.example(), d).typed()).isEqualTo(d.example());
      assertThat(Units.of(d)).extracting(leat.quantity.Unit::key).doesNotHaveDuplicates();
    }
    assertThat(Units.all())
        .isSortedAccordingTo(java.util.Comparator.comparing(leat.quantity.Unit::dimension));
    for (leat.quantity.Unit u : Units.all()) {
      assertThat(u.key()).matches("[A-Za-z0-9_]*");
      assertThat(Units.inUs(u).dimension()).isEqualTo(u.dimension());
    }
    assertThat(
            List.of(
                Units.L_MIN.key(), Units.MS_CM.key(), Units.PERCENT.key(), Units.MG_L_CACO3.key()))
        .containsExactly("L_min", "mS_cm", "pct", "mg_L_CaCO3");
    assertThat(List.of(Units.MG_L_HCO3.key(), Units.ML_10L.key(), Units.PER_D.key()))
        .containsExactly("mg_L_HCO3", "mL_10L", "per_d");
  }

  @Test
  void currenciesAreThoseOfTheJdk() {
    List<String> theirs =
        java.util.Currency.getAvailableCurrencies().stream().map(c -> c.getCurrencyCode()).toList();
    assertThat(theirs)
        .containsAll(
            Currencies.codes().stream().filter(c -> !List.of("SLE", "VED").contains(c)).toList());
    assertThat(Currencies.codes())
        .isSorted()
        .doesNotHaveDuplicates()
        .contains("EUR", "USD", "GBP", "CHF");
    assertThat(Currencies.isCode("D A")).isFalse();
    assertThat(Currencies.isCode("ED ")).isFalse();
    assertThat(Currencies.isCode("DAF")).isFalse();
  }
}
