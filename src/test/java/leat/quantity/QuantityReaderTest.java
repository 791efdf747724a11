package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityReaderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH|13 mm|0.013",
        "LENGTH|12mm|0.012",
        "LENGTH|1/2 in|0.0127",
        "LENGTH|1 1/2 in|0.0381",
        "LENGTH|1-1/2 in|0.0381",
        "LENGTH|½ in|0.0127",
        "LENGTH|1½\"|0.0381",
        "LENGTH|5 ft 3 in|1.6002",
        "LENGTH|5'3\"|1.6002",
        "LENGTH|1e-3 m|0.001",
        "LENGTH|+.5 m|0.5",
        "LENGTH|5. m|5",
        "LENGTH|-3 mm|-0.003",
        "LENGTH|\u22123 mm|-0.003",
        "LENGTH|13\u00a0mm|0.013",
        "LENGTH|13\u202fmm|0.013",
        "VOLUME|13 000 L|13",
        "VOLUME|13\u2009000 L|13",
        "VOLUME|45 l|0.045",
        "VOLUME|1 gal|0.003785411784",
        "VOLUME|1 impgal|0.00454609",
        "FLOW|240 GPH|0.0002523607856",
        "FLOW|240 gph|0.0002523607856",
        "FLOW|60 lpm|0.001",
        "FLOW|3600 LPH|0.001",
        "FLOW|3600 l/h|0.001",
        "FLOW|3600 litres per hour|0.001",
        "FLOW|3600 L / hour|0.001",
        "FLOW|1 m³/h|0.000277777777777778",
        "TIME|1 h 30 min|5400",
        "TIME|1h30min|5400",
        "TIME|2 hrs|7200",
        "HEAD|9806.65 Pa|1",
        "HEAD|98.0665 mbar|1",
        "HEAD|10 ft|3.048",
        "EC|1800 µS/cm|1.8",
        "EC|1800 μS/cm|1.8",
        "EC|180 mS/m|1.8",
        "EC|18 CF|1.8",
        "TEMPERATURE|64.4 °F|18",
        "TEMPERATURE|20 ° C|20",
        "TEMPERATURE|20 ℃|20",
        "TEMPERATURE|-5 C|-5",
        "RESISTANCE|240 Ω|240",
        "RESISTANCE|1 kΩ|1000",
        "SHARE|85%|0.85",
        "ANGLE|180°|3.141592653589793",
        "ENERGY|1 kW·h|3600000",
        "AREA|1 m^2|1",
        "ALKALINITY|50.04 mg/L CaCO₃|1",
        "ALKALINITY|1 mmol/L HCO3|1",
        "VOLUME_RATIO|25 mL/10 L|2.5",
        "TIME_PER_DAY|6 h/d|0.25",
        "RADIATION|22 MJ/m2|22",
        "RADIATION|5 kWh/m²|18",
        "RATE|86400 per day|1",
        "COUNT|1350|1350",
        "COUNT|5 seasons|5",
        "NUMBER|5.8|5.8",
        "MASS|2 lb 8 oz|1.133980925",
      })
  void reads(Dimension dimension, String typed, double base) {
    Quantity q = QuantityReader.read(typed, dimension);
    assertThat(q.value()).isCloseTo(base, within(Math.abs(base) * 1e-14));
    assertThat(q.typed()).isEqualTo(typed);
    assertThat(q.dimension()).isEqualTo(dimension);
    assertThat(typed).matches(Pattern.compile(SchemaPattern.of(dimension)));
  }

  @ParameterizedTest
  @CsvSource({
    "MONEY,16 EUR,16,EUR",
    "MONEY,EUR 16,16,EUR",
    "MONEY,€16,16,EUR",
    "MONEY,16 €,16,EUR",
    "MONEY,-3 CHF,-3,CHF",
    "MONEY_PER_ENERGY,0.31 EUR/kWh,0.31,EUR",
    "MONEY_PER_ENERGY,€0.31/kWh,0.31,EUR",
    "MONEY_PER_ENERGY,0.31 GBP per kWh,0.31,GBP",
    "MONEY_PER_VOLUME,4.20 EUR/m3,4.2,EUR",
    "MONEY_PER_VOLUME,13 EUR/L,13000,EUR",
    "MONEY_PER_VOLUME,13 EUR/litre,13000,EUR",
    "MONEY_PER_VOLUME,3785.411784 USD/1000gal,1000,USD",
    "MONEY_PER_VOLUME,3785.411784 USD/kgal,1000,USD",
    "MONEY_PER_VOLUME,2.8316846592 USD/CCF,1,USD",
    "MONEY_PER_MASS,22 EUR/kg,22,EUR",
    "MONEY_PER_TIME,7 USD/week,1,USD"
  })
  void readsMoney(Dimension dimension, String typed, double base, String currency) {
    Quantity q = QuantityReader.read(typed, dimension);
    assertThat(q.value()).isEqualTo(base);
    assertThat(q.currency()).isEqualTo(currency);
    assertThat(typed).matches(Pattern.compile(SchemaPattern.of(dimension)));
    assertThat(QuantityReader.read(q.text(), dimension).value()).isEqualTo(base);
  }

  @Test
  void aBareNumberMayMeanAUnitByNature() {
    assertThat(QuantityReader.read("83", Units.OHM).value()).isEqualTo(83);
    assertThat(QuantityReader.read("0.083 kohm", Units.OHM).value()).isEqualTo(83);
    assertThat(QuantityReader.read("180", Units.D).value()).isEqualTo(180 * 86400);
    assertThat(QuantityReader.number("5.8")).isEqualTo(5.8);
    assertThatThrownBy(() -> QuantityReader.read("83 mm", Units.OHM))
        .isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> QuantityReader.number("5.8 mm")).isInstanceOf(Unreadable.class);
  }

  /** Every form of value that a plan holds, as it is written there. */
  @ParameterizedTest
  @CsvSource({
    "ANGLE,47.9 deg",
    "LENGTH,310 m",
    "SPEED,18 m/s",
    "TIME_PER_DAY,5 h/d",
    "MASS,3.6 kg",
    "MASS,260 g",
    "AREA,0.03 m2",
    "AREA,1.5 mm2",
    "RESISTANCE,21.5 ohm",
    "SHARE,2 %",
    "VOLTAGE,3.3 V",
    "POWER,24 W",
    "VOLUME,2.4 L",
    "FORCE,2 N",
    "TIME,12 min",
    "TIME,6 h",
    "TIME,21 d",
    "CURRENT,10 A",
    "COUNT,100000",
    "MONEY_PER_ENERGY,0.31 EUR/kWh",
    "EC,0.45 mS/cm",
    "ALKALINITY,180 mg/L as CaCO3",
    "NUMBER,7.6",
    "MASS_CONCENTRATION,62 mg/L",
    "TEMPERATURE,16 C",
    "MONEY_PER_VOLUME,4.20 EUR/m3",
    "VOLUME_RATIO,2.5 mL/L",
    "MONEY_PER_VOLUME,13 EUR/L",
    "FLOW,0.12 L/d",
    "MONEY,0.03 EUR",
    "MONEY_PER_MASS,22 EUR/kg",
    "COUNT,5 seasons",
    "RATE,2 /d",
    "FLOW,211 gal/h",
    "FLOW,240 GPH",
    "TEMPERATURE,64 F",
    "HEAD,3.0 m",
    "HEAD,0 m",
    "LENGTH,1/2 in"
  })
  void readsWhatPlansHold(Dimension dimension, String typed) {
    Quantity q = QuantityReader.read(typed, dimension);
    assertThat(QuantityReader.read(q.text(), dimension).value()).isEqualTo(q.value());
  }

  @Test
  void minusZeroIsZero() {
    assertThat(Double.doubleToRawLongBits(QuantityReader.read("-0 m", Dimension.LENGTH).value()))
        .isZero();
  }

  @Test
  void aQuantityConvertsWithinItsDimension() {
    Quantity q = QuantityReader.read("8 L/min", Dimension.FLOW);
    assertThat(q.in(Units.L_H)).isEqualTo(480);
    assertThat(Quantity.of(8, Units.L_MIN).typed()).isEqualTo("8 L/min");
    assertThatThrownBy(() -> q.in(Units.M)).isInstanceOf(IllegalArgumentException.class);
  }

  /** Turkish has a dotless i, German a decimal comma, Arabic its own digits. */
  @ParameterizedTest
  @CsvSource({"tr-TR", "de-DE", "ar-EG"})
  void everyLocaleReadsAndPrintsTheSame(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      for (Unit unit : Units.all()) {
        String text =
            unit.dimension().isMoney() ? "12.5 INR" + unit.symbol() : "12.5 " + unit.symbol();
        Quantity q = QuantityReader.read(text, unit.dimension());
        assertThat(q.text().trim()).isEqualTo(text.trim());
      }
      assertThat(QuantityReader.read("1 IN", Units.INCH)).isNull();
    } catch (Unreadable e) {
      assertThat(e.suggestion()).isEqualTo("1 in");
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource({"litre,litres", "riser,riser", "bore,bor", "MM,mm", "head,haed"})
  void nearestFinds(String known, String typed) {
    assertThat(Nearest.of(typed, java.util.List.of("x", known, "quite-another"))).isEqualTo(known);
  }

  /** A word typed by half is found before another that two edits make of it, and one run on. */
  @Test
  void nearestFindsHalfAWord() {
    List<String> flags = List.of("--help", "--temperature", "--bore", "--bores");
    assertThat(Nearest.of("--temp", flags)).isEqualTo("--temperature");
    assertThat(Nearest.of("--bor", flags)).isEqualTo("--bore");
    assertThat(Nearest.of("overlapping", List.of("name", "overlap"))).isEqualTo("overlap");
  }

  @Test
  void nearestIsSilentWhenFar() {
    assertThat(Nearest.of("furlong", java.util.List.of("m", "cm", "litre"))).isNull();
    assertThat(Nearest.of("q", java.util.List.of("m", "cm"))).isNull();
    assertThat(Nearest.of("", java.util.List.of("m"))).isNull();
    assertThat(Nearest.of("zone", java.util.List.of("m", "time_zone"))).isEqualTo("time_zone");
    assertThat(Nearest.of("zone", java.util.List.of("time_zone", "zone-name"))).isNull();
    assertThat(Nearest.of("--vol", java.util.List.of("--plan", "--volume"))).isEqualTo("--volume");
    assertThat(Nearest.of("--wat", java.util.List.of("--water", "--water-ec"))).isNull();
    assertThat(Nearest.of("on", java.util.List.of("time_on"))).isNull();
    assertThat(Nearest.of("bore", java.util.List.of("BORE", "bores"))).isEqualTo("BORE");
    assertThat(Nearest.edits("ca", "abc")).isEqualTo(3);
    assertThat(Nearest.edits("abcd", "acbd")).isEqualTo(1);
  }

  /** Spellings of water reports and meters; a cubic decimetre is a litre. */
  @Test
  void spellingsOfReports() {
    assertThat(QuantityReader.read("45 dm\u00b3", Dimension.VOLUME).unit()).isSameAs(Units.L);
    assertThat(QuantityReader.read("3.6 mval/l", Dimension.ALKALINITY).unit())
        .isSameAs(Units.MEQ_L);
    assertThat(QuantityReader.read("10 \u00b0KH", Dimension.ALKALINITY).unit()).isSameAs(Units.DH);
    assertThat(QuantityReader.read("2.1 mS cm-1", Dimension.EC).unit()).isSameAs(Units.MS_CM);
    assertThat(mend("2.1 mS cm\u207b\u00b9", Dimension.EC)).isEqualTo("2.1 mS/cm");
    assertThat(QuantityReader.read("2.1 dS m-1", Dimension.EC).unit()).isSameAs(Units.DS_M);
    assertThat(mend("2.1 ms", Dimension.EC)).isEqualTo("2.1 mS/cm");
    assertThat(mend("2100us", Dimension.EC)).isEqualTo("2100 uS/cm");
  }

  private static String mend(String typed, Dimension wanted) {
    try {
      QuantityReader.read(typed, wanted);
      return null;
    } catch (Unreadable e) {
      return e.suggestion();
    }
  }
}
