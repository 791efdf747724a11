package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type for what the program calls otherwise is taken, or told with its mend. */
class TypedFormsTest {
  private static Ran run(String line) {
    return Ran.run(line.strip().split("\\|"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        "tank|--shape|box|--bottom|400 mm x 300 mm|--height|5ft3|--level|1 ft # did you mean \"5 ft 3 in\"?",
        "duty|--power|22 W|--run|90 s|--rest|12 min|--price|28 cents/kWh # type \"0.28 EUR/kWh\"",
        "duty|--power|22 W|--run|90 s|--rest|12 min|--price|28 ct/kWh # type \"0.28 EUR/kWh\"",
        "duty|--power|22 W|--run|90 s|--rest|12 min|--price|0,31 EUR/kWh # type \"0.31 EUR/kWh\"",
        "duty|--power|22 W|--run|90 s|--rest|12 min|--price|28 ct/kWh|--plan|first-tower.yaml|--set|currency=USD # type \"0.28 USD/kWh\"",
        "duty|--power|22 W|--run|90 s|--rest|12 min|--price|0.3 EUR/kWh|--time-zone|Europe/Wien # did you mean \"Europe/Vienna\"?",
        "duty backup|--chemistry|SLA|--hours|6 h # did you mean \"lead\"?",
        "duty backup|--chemistry|agm|--hours|6 h # did you mean \"lead\"?",
        "dose salts|--volume|45 L|--ask|NO4=150|--salt|mkp # there is no NO4; nitrate is N-NO3",
        "oxygen|28 # such as \"20 C\"; got \"28\"",
        "pump|--plan|first-tower.yaml|--check-valve|yes # true",
      })
  void isToldWithItsMend(String line, String mend) {
    String[] words = line.strip().split("\\|");
    String[] first = words[0].split(" ");
    String[] args = new String[words.length - 1 + first.length];
    System.arraycopy(first, 0, args, 0, first.length);
    System.arraycopy(words, 1, args, first.length, words.length - 1);
    Ran ran = Ran.run(args);
    assertThat(ran.exit()).as(line).isEqualTo(2);
    assertThat(ran.err()).contains(mend.strip());
  }

  @Test
  void otherNamesAreTaken() {
    Ran usual =
        Ran.run(
            "dose", "salts", "--volume", "45 L", "--ask", "P=50", "--salt", "mkp", "--format=csv");
    assertThat(usual.out()).as(usual.err()).contains("monopotassium-phosphate,");
    assertThat(
            Ran.run("dose", "salts", "--volume", "9 L", "--weighed", "epsom=5", "--format=csv")
                .out())
        .contains("magnesium-sulfate-7h2o");
    Ran percent = acid("phosphoric 30%");
    assertThat(percent.exit()).as(percent.err()).isZero();
    assertThat(percent.json().get("acid_mL"))
        .isEqualTo(acid("phosphoric-30").json().get("acid_mL"));
    assertThat(Ran.run("crops", "pak choi", "lettuce").exit()).isZero();
  }

  private static Ran acid(String name) {
    return Ran.run(
        "acid",
        "--volume=45 L",
        "--alkalinity=180 mg/L",
        "--ph=7.6",
        "--to=5.8",
        "--acid",
        name,
        "--format=json");
  }

  /** NIST SP 811, appendix B.8: 1 inHg (conventional) is 3386.389 Pa; 1 mi is 1609.344 m. */
  @Test
  void inchesOfMercuryAndMiles() {
    Ran mercury = Ran.run("oxygen", "--at=20 C", "--pressure=29.921 inHg", "--format=json");
    Ran pascal = Ran.run("oxygen", "--at=20 C", "--pressure=101324.145 Pa", "--format=json");
    assertThat(mercury.out()).as(mercury.err()).isNotEmpty();
    assertThat(mercury.json().get("saturation_mg_L").asDouble())
        .isCloseTo(
            pascal.json().get("saturation_mg_L").asDouble(),
            org.assertj.core.data.Offset.offset(1e-5));
    Ran miles = head("0.001 miles");
    assertThat(miles.exit()).as(miles.err()).isZero();
    assertThat(miles.json().get("friction_head_m"))
        .isEqualTo(head("1.609344 m").json().get("friction_head_m"));
  }

  private static Ran head(String length) {
    return Ran.run(
        "head",
        "--flow=8 L/min",
        "--lift=1.9 m",
        "--bore=13 mm",
        "--length",
        length,
        "--format=json");
  }
}
