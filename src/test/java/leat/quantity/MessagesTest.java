package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The gallery of this package: what is typed, and the exact words, caret and mend it gets. */
class MessagesTest {
  record Case(
      String method,
      String typed,
      Consumer<String> reader,
      String message,
      String caret,
      String mend) {
    @Override
    public String toString() {
      return method + ": " + typed;
    }
  }

  private static Case q(
      String method, Dimension d, String typed, String message, String caret, String mend) {
    return new Case(method, typed, t -> QuantityReader.read(t, d), message, caret, mend);
  }

  private static Case c(
      String method,
      Consumer<String> reader,
      String typed,
      String message,
      String caret,
      String mend) {
    return new Case(method, typed, reader, message, caret, mend);
  }

  private static final String DIGITS = "1".repeat(201);

  static List<Case> cases() {
    Dimension length = Dimension.LENGTH;
    String needsLength = "a length is needed, such as \"13 mm\"";
    return List.of(
        q("nothing", length, "  ", needsLength + "; got nothing", "", null),
        q("tooLong", length, DIGITS, needsLength + "; got 201 characters", DIGITS, null),
        q(
            "ofWhichIon",
            Dimension.MASS_CONCENTRATION,
            "4 meq/l",
            "a concentration is needed, such as \"120 mg/L\"; got \"4 meq/l\": leat ec --ion \"Ca=2 meq/L\" tells an ion's mg/L",
            "meq/l",
            null),
        q(
            "millimolesOfWhat",
            Dimension.ALKALINITY,
            "5.8 mmol/l",
            "mmol/L of what? An acid capacity is \"5.8 mmol/L HCO3\", calcium carbonate \"5.8 mmol/L as CaCO3\", which is twice as much; got \"5.8 mmol/l\"",
            "mmol/l",
            null),
        q(
            "hardness",
            Dimension.ALKALINITY,
            "16 dGH",
            "\"dGH\" counts total hardness, which is no alkalinity: the carbonate hardness is needed, such as \"10 dKH\"; got \"16 dGH\"",
            "dGH",
            null),
        q(
            "wireGauge",
            Dimension.AREA,
            "18 AWG",
            "an area is needed, such as \"0.82 mm2\", which is 18 AWG; other gauges: leat duty cable --gauge; got \"18 AWG\"",
            "AWG",
            null),
        q("noNumber", length, "abc", needsLength + "; got \"abc\"", "abc", null),
        q("noNumber", length, "\u0665 m", needsLength + "; got \"\u0665 m\"", "\u0665 m", null),
        q(
            "notFinite",
            length,
            "NaN m",
            needsLength + "; \"NaN m\" is no number that can be measured",
            "NaN m",
            null),
        q(
            "notFinite",
            length,
            "-Infinity m",
            needsLength + "; \"-Infinity m\" is no number that can be measured",
            "-Infinity m",
            null),
        q(
            "badNumber",
            length,
            "1.2.3 m",
            "\"1.2.3 m\" is no number; " + needsLength,
            "1.2.3",
            null),
        q(
            "tooLarge",
            length,
            "1e999 m",
            "the number is too large for anything here; got \"1e999\"",
            "1e999",
            null),
        q(
            "tooSmall",
            length,
            "1e-999 m",
            "the number is too small for anything here; got \"1e-999\"",
            "1e-999",
            null),
        q("overZero", length, "1/0 in", "a fraction cannot be over 0; got \"1/0 in\"", "1/0", null),
        q(
            "decimalComma",
            Dimension.VOLUME,
            "5,5 L",
            "decimals take a point: type \"5.5 L\"; got \"5,5 L\"",
            "5,5",
            "5.5 L"),
        q(
            "decimalComma",
            Dimension.VOLUME,
            "0,500 L",
            "decimals take a point: type \"0.500 L\"; got \"0,500 L\"",
            "0,500",
            "0.500 L"),
        q(
            "decimalComma",
            Dimension.VOLUME,
            "1.000,5 L",
            "decimals take a point: type \"1000.5 L\"; got \"1.000,5 L\"",
            "1.000,5",
            "1000.5 L"),
        q(
            "twoReadings",
            Dimension.FLOW,
            "1,000 L/h",
            "\"1,000 L/h\" can be read two ways: type \"1000 L/h\" or \"1.000 L/h\"",
            "1,000",
            null),
        q(
            "groupedDigits",
            Dimension.VOLUME,
            "1,000,000 L",
            "digits take no marks between them: type \"1000000 L\"; got \"1,000,000 L\"",
            "1,000,000",
            "1000000 L"),
        q(
            "groupedDigits",
            Dimension.VOLUME,
            "13'000 L",
            "digits take no marks between them: type \"13000 L\"; got \"13'000 L\"",
            "13'000",
            "13000 L"),
        q(
            "noUnit",
            length,
            "13",
            "a length needs its unit, such as \"13 mm\"; got \"13\"",
            "13",
            null),
        q(
            "noUnit",
            Dimension.SHARE,
            "0.85",
            "a share needs its unit, such as \"85 %\"; got \"0.85\"",
            "0.85",
            null),
        q(
            "wrongDimension",
            length,
            "13 L",
            needsLength + "; got \"13 L\", which is a volume",
            "L",
            null),
        q(
            "wrongDimension",
            length,
            "12 EUR",
            needsLength + "; got \"12 EUR\", which is an amount of money",
            "EUR",
            null),
        q(
            "wrongDimension",
            Dimension.MONEY_PER_MASS,
            "13 EUR/L",
            "a price by mass is needed, such as \"22 EUR/kg\"; got \"13 EUR/L\", which is a price by volume",
            "EUR/L",
            null),
        q(
            "metresForMinutes",
            Dimension.TIME,
            "15 m",
            "a time is needed, such as \"90 s\"; m is metres: for minutes type \"15 min\"; got \"15 m\"",
            "m",
            "15 min"),
        q(
            "metresForMinutes",
            Dimension.FLOW,
            "8 L/m",
            "a flow is needed, such as \"8 L/min\"; m is metres: for minutes type \"8 L/min\"; got \"8 L/m\"",
            "L/m",
            "8 L/min"),
        q(
            "ppmForEc",
            Dimension.EC,
            "900 ppm",
            "an EC is needed, such as \"1.6 mS/cm\"; ppm is the EC times 500, 640 or 700 by the meter's scale, and leat ec --scale turns it back; got \"900 ppm\"",
            "ppm",
            null),
        q(
            "ouncesForFluidOunces",
            Dimension.VOLUME,
            "16 oz",
            "a volume is needed, such as \"45 L\"; oz is a mass: for fluid ounces type \"16 floz\"; got \"16 oz\"",
            "oz",
            "16 floz"),
        q(
            "otherCase",
            Dimension.EC,
            "1.8 MS/cm",
            "case counts in units: type \"1.8 mS/cm\"; got \"1.8 MS/cm\"",
            "MS/cm",
            "1.8 mS/cm"),
        q(
            "otherCase",
            Dimension.MONEY_PER_ENERGY,
            "0.31 EUR/kwh",
            "case counts in units: type \"0.31 EUR/kWh\"; got \"0.31 EUR/kwh\"",
            "EUR/kwh",
            "0.31 EUR/kWh"),
        q(
            "unknownUnit",
            Dimension.VOLUME,
            "45 litrs",
            "unknown unit \"litrs\"; did you mean \"45 L\"?",
            "litrs",
            "45 L"),
        q(
            "unknownUnit",
            Dimension.EC,
            "1.8 mS",
            "unknown unit \"mS\"; did you mean \"1.8 mS/cm\"?",
            "mS",
            "1.8 mS/cm"),
        q(
            "unknownUnit",
            Dimension.VOLUME,
            "45 furlongs",
            "unknown unit \"furlongs\"; a volume is needed, such as \"45 L\"",
            "furlongs",
            null),
        q(
            "badParts",
            length,
            "5 ft 30 in",
            "after a larger unit comes a smaller one that does not fill it, as in \"5 ft 3 in\"; got \"5 ft 30 in\"",
            "5 ft 30 in",
            null),
        q(
            "noCurrency",
            Dimension.MONEY,
            "16",
            "an amount of money needs its currency, such as \"16 EUR\"; got \"16\"",
            "16",
            null),
        q(
            "sharedSign",
            Dimension.MONEY,
            "$16",
            "several currencies write \"$\": type the code, such as USD, CAD or AUD; got \"$16\"",
            "$",
            null),
        q(
            "hundredths",
            Dimension.MONEY_PER_ENERGY,
            "28 cents/kWh",
            "\"cents\" names no currency: type \"0.28 EUR/kWh\", with the code of yours; got \"28 cents/kWh\"",
            "cents",
            "0.28 EUR/kWh"),
        q(
            "unknownCurrency",
            Dimension.MONEY,
            "16 eur",
            "unknown currency \"eur\"; did you mean \"16 EUR\"?",
            "eur",
            "16 EUR"),
        q(
            "unknownCurrency",
            Dimension.MONEY,
            "16 pennies",
            "unknown currency \"pennies\"; an amount of money is needed, such as \"16 EUR\"",
            "pennies",
            null),
        c(
            "expectedBeside",
            Compounds::point,
            "600 L/h @ 1.7 L",
            "expected a head after '@', such as \"600 L/h @ 1.7 m\"; got \"1.7 L\"",
            "1.7 L",
            null),
        c(
            "expectedBeside",
            Compounds::size,
            "540 mm x",
            "expected a length after 'x', such as \"540 mm x 360 mm\"; got nothing",
            "",
            null),
        c(
            "noMark",
            Compounds::point,
            "600 L/h 1.7 m",
            "expected '@' between a flow and a head, such as \"600 L/h @ 1.7 m\"; got \"600 L/h 1.7 m\"",
            "600 L/h 1.7 m",
            null),
        c(
            "noMark",
            t -> Compounds.rangeOrOne(t, Dimension.VOLUME),
            "28-34 L",
            "expected '..' between two values, each a volume, such as \"28..34 L\"; got \"28-34 L\"",
            "28-34 L",
            "28..34 L"),
        c(
            "secondMark",
            Compounds::size,
            "5 mm x 3 mm x 2 mm",
            "expected 'x' once, such as \"540 mm x 360 mm\"; got \"5 mm x 3 mm x 2 mm\"",
            "x",
            null),
        c(
            "rangeDown",
            t -> Compounds.range(t, Dimension.VOLUME),
            "34..28 L",
            "a range goes from low to high, such as \"28..34 L\"; got \"34..28 L\"",
            "34..28 L",
            null),
        c(
            "badStep",
            t -> Variation.of(t, Dimension.LENGTH),
            "1..2 m step 0 m",
            "a step must be above 0; got \"0 m\"",
            "step 0 m",
            null),
        c(
            "noStep",
            t -> Variation.of(t, Dimension.LENGTH),
            "1..2 m",
            "expected a list or a range with its step, such as \"0.8..1.4 m step 0.2 m\"; got \"1..2 m\"",
            "1..2 m",
            null),
        c(
            "tooManyValues",
            t -> Variation.of(t, Dimension.LENGTH),
            "0..1e9 m step 1 mm",
            "more than 10000 values; take a larger step; got \"0..1e9 m step 1 mm\"",
            "0..1e9 m step 1 mm",
            null),
        c(
            "noTime",
            Compounds::measured,
            "10 L in 0 s",
            "the time of a bucket must be above 0, such as \"10 L in 65 s\"; got \"0 s\"",
            "0 s",
            null),
        c(
            "notACadence",
            Compounds::cadence,
            "weekly",
            "expected \"at low\", \"daily\" or a time such as \"every 3 d\"; got \"weekly\"",
            "weekly",
            null),
        c(
            "noName",
            t -> Compounds.named(t, Units.MG_L),
            "150",
            "expected a name, '=' and a concentration; got \"150\"",
            "150",
            null),
        // a slip inside a part keeps its own message, and its mend is of the whole text
        c(
            "decimalComma",
            Compounds::size,
            "540,5 mm x 360 mm",
            "decimals take a point: type \"540.5 mm\"; got \"540,5 mm\"",
            "540,5",
            "540.5 mm x 360 mm"),
        c(
            "metresForMinutes",
            Compounds::measured,
            "10 L in 65 m",
            "a time is needed, such as \"90 s\"; m is metres: for minutes type \"65 min\"; got \"65 m\"",
            "m",
            "10 L in 65 min"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void says(Case c) {
    Unreadable e = catchThrowableOfType(Unreadable.class, () -> c.reader().accept(c.typed()));
    assertThat(e).isNotNull();
    assertThat(e.message()).isEqualTo(c.message());
    assertThat(c.typed().substring(e.start(), e.end())).isEqualTo(c.caret());
    assertThat(e.suggestion()).isEqualTo(c.mend());
    if (c.mend() != null) {
      c.reader().accept(c.mend());
    }
  }

  @Test
  void everyMessageIsShown() {
    Set<String> shown = cases().stream().map(Case::method).collect(Collectors.toSet());
    Stream<String> methods =
        Arrays.stream(QuantityErrors.class.getDeclaredMethods())
            .filter(m -> Modifier.isPublic(m.getModifiers()))
            .map(m -> m.getName());
    assertThat(methods.collect(Collectors.toSet())).isEqualTo(shown);
  }
}
