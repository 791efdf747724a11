package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class QuantityPropertiesTest {
  private static final Map<Dimension, Pattern> PATTERNS = new EnumMap<>(Dimension.class);

  private static Pattern pattern(Dimension d) {
    return PATTERNS.computeIfAbsent(d, k -> Pattern.compile(SchemaPattern.of(k)));
  }

  @Provide
  Arbitrary<Unit> units() {
    return Arbitraries.of(Units.all());
  }

  @Property(tries = 20000)
  void printedReadsBackAsTheSame(
      @ForAll("units") Unit unit, @ForAll @DoubleRange(min = -1e6, max = 1e6) double number) {
    Quantity made =
        unit.dimension().isMoney()
            ? Quantity.money(number, "EUR", unit)
            : Quantity.of(number, unit);
    Quantity read = QuantityReader.read(made.text(), unit.dimension());
    assertThat(read.unit()).isSameAs(unit);
    double base = Math.max(Math.abs(made.value()), Math.abs(unit.toBase(1)));
    assertThat(read.value()).isCloseTo(made.value(), within(1e-11 * base));
    assertThat(read.text()).isEqualTo(made.text());
    assertThat(made.text()).matches(pattern(unit.dimension()));
  }

  /** Short decimals, as people type them, come back digit by digit through the base. */
  @Property(tries = 20000)
  void typedDecimalsComeBack(@ForAll("units") Unit unit, @ForAll("decimals") String number) {
    String currency = unit.dimension().isMoney() ? "EUR" : "";
    String typed = (number + " " + currency + unit.symbol()).trim();
    assertThat(QuantityReader.read(typed, unit.dimension()).text().trim()).isEqualTo(typed);
  }

  @Provide
  Arbitrary<String> decimals() {
    return Arbitraries.integers()
        .between(-999999, 999999)
        .map(i -> NumberText.shortest(i / 1000.0));
  }

  @Test
  void everySpellingOfEveryUnitIsReadAndFitsItsPattern() {
    for (Unit unit : Units.all()) {
      List<String> spellings = new ArrayList<>(unit.aliases());
      spellings.add(unit.symbol());
      for (String spelling : spellings) {
        for (String written :
            List.of(spelling, dressed(spelling), spelling.replace("/", " per "))) {
          String typed = (unit.dimension().isMoney() ? "2 EUR" : "2 ") + written;
          Quantity q = QuantityReader.read(typed, unit.dimension());
          assertThat(q.unit()).as(typed).isSameAs(unit);
          assertThat(typed).matches(pattern(unit.dimension()));
          assertThat(unit.dimension().isMoney() || Units.find(unit.dimension(), written) == unit)
              .isTrue();
        }
      }
    }
  }

  private static String dressed(String ascii) {
    return ascii
        .replace("uS", "\u00b5S")
        .replace("um", "\u03bcm")
        .replace("ohm", "\u03a9")
        .replace("m2", "m\u00b2")
        .replace("m3", "m\u00b3")
        .replace("CO3", "CO\u2083")
        .replace("W h", "W\u00b7h")
        .replace("'", "\u2032")
        .replace("/", "\u2044");
  }

  /** Whatever is typed is read as a finite value that fits its pattern, or refused in words. */
  @Test
  void nothingElseCanHappen() {
    int cases = Integer.getInteger("leat.fuzz.cases", 100000);
    Random random = new Random(20270308);
    String[] bits = {
      "1",
      "0",
      "12",
      "000",
      ".",
      ",",
      "-",
      "+",
      "e",
      "E",
      "/",
      " ",
      "x",
      "@",
      "=",
      "..",
      "to",
      "in",
      "step",
      "mm",
      "m",
      "L",
      "L/h",
      "s",
      "min",
      "ohm",
      "\u03a9",
      "\u00bd",
      "%",
      "EUR",
      "\u20ac",
      "$",
      "/kWh",
      "C",
      "\u00b0",
      "'",
      "\"",
      "\u00a0",
      "NaN",
      "Infinity",
      "every",
      "at low",
      "1e999",
      "\ud83d",
      "\u0000",
      "per",
      "\u2044",
      "ft",
      "h",
      "\u2026",
      "mS/cm",
      "\u00b5",
      "^",
      "\u00b7",
      "mL/10 L",
      "999999999999"
    };
    for (int i = 0; i < cases; i++) {
      StringBuilder typed = new StringBuilder();
      int n = 1 + random.nextInt(7);
      for (int k = 0; k < n; k++) {
        typed.append(bits[random.nextInt(bits.length)]);
      }
      one(
          typed.toString(),
          Dimension.values()[random.nextInt(Dimension.values().length)],
          random.nextInt(10));
    }
  }

  private static String quantity(Random random) {
    String[] numbers = {
      "1", "12.5", "1/2", "1 1/2", "\u00bd", "-3", "1e-3", "13 000", "5.", ".5", "1,5", ""
    };
    String[] units = {
      "mm", " m", "L", " L/h", "s", " min", " ohm", "%", " EUR/kWh", " C", "'", "\"", "", " \u03a9"
    };
    return numbers[random.nextInt(numbers.length)] + units[random.nextInt(units.length)];
  }

  private static void one(String typed, Dimension d, int which) {
    try {
      Quantity q = QuantityReader.read(typed, d);
      assertThat(q.value()).isFinite();
      assertThat(typed).as(d.name()).matches(pattern(d));
    } catch (Unreadable e) {
      sound(e, typed);
      if (e.suggestion() != null) {
        assertThat(e.suggestion()).isNotEqualTo(typed);
      }
    }
    try {
      finite(typed, d, which);
    } catch (Unreadable e) {
      sound(e, typed);
    }
  }

  private static final Map<String, Pattern> COMPOUND = new java.util.HashMap<>();

  private static void fits(String typed, String pattern) {
    assertThat(typed).matches(COMPOUND.computeIfAbsent(pattern, Pattern::compile));
  }

  private static void finite(String typed, Dimension d, int which) {
    switch (which) {
      case 0 -> {
        Compounds.size(typed);
        fits(typed, SIZE);
      }
      case 1 -> {
        Compounds.point(typed);
        fits(typed, POINT);
      }
      case 2 -> {
        Compounds.step(typed);
        fits(typed, STEP);
      }
      case 3 -> Compounds.timing(typed);
      case 4 -> {
        assertThat(Compounds.measured(typed).flow().value()).isFinite();
        fits(typed, MEASURED);
      }
      case 5 -> {
        Span span = Compounds.rangeOrOne(typed, d);
        assertThat(span.middle()).isFinite();
        if (span.low() != span.high()) {
          fits(typed, RANGES.computeIfAbsent(d, SchemaPattern::range));
        }
      }
      case 6 -> {
        Compounds.cadence(typed);
        fits(typed, CADENCE);
      }
      case 7 -> Variation.of(typed, d);
      default -> Compounds.named(typed, Units.MG_L);
    }
  }

  private static final String SIZE = SchemaPattern.size();
  private static final String POINT = SchemaPattern.point();
  private static final String STEP = SchemaPattern.step();
  private static final String MEASURED = SchemaPattern.measured();
  private static final String CADENCE = SchemaPattern.cadence();
  private static final Map<Dimension, String> RANGES = new EnumMap<>(Dimension.class);

  private static void sound(Unreadable e, String typed) {
    assertThat(e.start()).isBetween(0, typed.length());
    assertThat(e.end()).isBetween(e.start(), typed.length());
    assertThat(e.message()).isNotBlank().doesNotContain("null").doesNotContain("\n");
  }
}
