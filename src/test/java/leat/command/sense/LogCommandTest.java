package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command prints in each form, and its exit codes. */
class LogCommandTest {
  private static final String YARD = LogFiles.text("yard.csv");

  @TempDir Path folder;

  private Cli yard(String text, String... more) {
    return new LogFiles(folder).run("yard", text, more);
  }

  private static String until(String time) {
    return YARD.substring(0, YARD.indexOf('\n' + time) + 1);
  }

  @Test
  void keysOfTheContract() {
    JsonNode told = LogFiles.json(yard(YARD, "--format", "json").out);
    assertThat(told.fieldNames())
        .toIterable()
        .startsWith(
            "rows",
            "bad_cells",
            "duplicates",
            "late_rows",
            "gaps",
            "first",
            "last",
            "status",
            "volume_L",
            "volume_low_L",
            "volume_high_L",
            "use_L_day",
            "use_low_L_day",
            "use_high_L_day",
            "days_left",
            "days_left_low",
            "days_left_high",
            "topup_by",
            "thirst_pct",
            "dip_mm")
        .contains("events", "days");
    assertThat(names(told.get("events").get(0)))
        .contains("kind", "start", "end", "litres", "litres_low", "litres_high", "mm", "cause");
    assertThat(names(told.get("days").get(0)))
        .containsExactly(
            "date",
            "use_L",
            "refill_L",
            "rain_L",
            "ec_start_mS_cm",
            "ec_end_mS_cm",
            "by_concentration",
            "by_dilution",
            "by_salt",
            "sure");
  }

  /** A column that looks like a known one is passed over, and told; likewise in time,name,value. */
  @Test
  void columnsThatArePassedOverAreNamed() {
    assertThat(yard(YARD.replace("ec_mS_cm", "ec_uS_cm")).out)
        .contains("Mind: the column ec_uS_cm is passed over: the EC is looked for in ec_mS_cm");
    assertThat(yard(YARD.replace("water_C", "water_F")).out)
        .contains("Mind: the column water_F is passed over")
        .contains("log: {temperature: water_F}");
    assertThat(yard(YARD.replace("rain_mm", "rain_in")).out)
        .contains("Mind: the column rain_in is passed over");
    assertThat(yard(YARD).out).doesNotContain("passed over");
    StringBuilder each = new StringBuilder("time,name,value\n");
    for (int i = 0; i < 6; i++) {
      String time = "2027-06-04T00:" + i + "0:00+02:00";
      each.append(time).append(",counts,155\n").append(time).append(",ec,1650\n");
    }
    Cli cli = yard(each.toString(), "--set", "log={name: name, ec: ec}");
    assertThat(cli.out).contains("Mind: no cell of ec can be an EC in mS/cm: is it in uS/cm");
  }

  /** Every value of a column in another unit: the column is named, with what it may be. */
  @Test
  void columnsInAnotherUnitAreNamed() {
    Cli ec = yard(with("ec_mS_cm", "1650,0"));
    assertThat(ec.out).contains("no cell of ec_mS_cm can be an EC in mS/cm: is it in uS/cm");
    Cli warm = yard(with("water_C", "70,3"));
    assertThat(warm.out).contains("no cell of water_C can be a solution's temperature in Celsius");
    Cli pump = yard(with("pump", "5"));
    assertThat(pump.out).contains("no cell of pump is 0 or 1");
    Cli rain = yard(with("rain_mm", "-3"));
    assertThat(rain.out).contains("no cell of rain_mm is a depth in mm of 0 or more");
    Cli cap = yard(with("cap_counts", "dry"));
    assertThat(cap.out).contains("no cell of cap_counts can be a reading of its sensor");
    assertThat(yard(YARD).out).doesNotContain("no cell of");
  }

  private static String with(String column, String value) {
    StringBuilder all = new StringBuilder();
    int at = -1;
    for (String line : YARD.split("\n")) {
      String[] cells = line.split(";", -1);
      if (at < 0) {
        at = List.of(cells).indexOf(column);
        assertThat(at).as(column).isNotNegative();
      } else if (!cells[0].equals("time")) {
        cells[at] = value;
      }
      all.append(String.join(";", cells)).append('\n');
    }
    return all.toString();
  }

  private static final String TUB =
      """
      site: {time_zone: Europe/Vienna}
      tank: {shape: box, bottom: 500 mm x 300 mm, height: 330 mm, full: 280 mm, low: 80 mm}
      sender:
        steps: [40 mm = 10 ohm, 100 mm = 110 ohm, 160 mm = 180 ohm, 220 mm = 240 ohm]
        tolerance: 2 %
      """;

  private Cli tub(String plan, String column, double... readings) {
    StringBuilder log = new StringBuilder("time," + column + "\n");
    for (int i = 0; i < readings.length; i++) {
      log.append("2027-06-04T10:").append(10 + 10 * i).append(":00,").append(readings[i]);
      log.append('\n');
    }
    LogFiles files = new LogFiles(folder);
    String name = files.write("tub.yaml", plan);
    return Cli.run("log", files.write("tub.csv", log.toString()), "--plan", name);
  }

  /** 0.24 for 240 ohm is a meter's kilo-ohm rather than two wires that touch. */
  @Test
  void kiloOhmIsNoShort() {
    Cli kilo = tub(TUB, "ohm", 0.24, 0.24, 0.24);
    assertThat(kilo.exit).isEqualTo(1);
    assertThat(kilo.out)
        .contains("ohm reads like kilo-ohm, not ohm, since 4 June 10:10")
        .contains("let the logger write ohm, 240 where it writes 0.24")
        .contains("sender shorted")
        .contains("reads like kilo-ohm")
        .doesNotContain("since 4 June 10:10: look for water in its plug");
    Cli named = tub(TUB + "log: {reading: float_k}\n", "float_k", 0.18, 0.18, 0.11);
    assertThat(named.out)
        .contains("float_k reads like kilo-ohm")
        .contains("110 where it writes 0.11");
    for (Cli wires : List.of(tub(TUB, "ohm", 240, 0, 0), tub(TUB, "ohm", 0.9, 0.8, 0.9))) {
      assertThat(wires.out)
          .contains("the sender's wires touch since")
          .contains("look for water in its plug")
          .doesNotContain("kilo");
    }
  }

  /** Readings too high for a short that belong to no step either. */
  @Test
  void kiloOhmOfALargeSenderIsToldToo() {
    String large =
        TUB.replace("110 ohm", "4000 ohm")
            .replace("10 ohm", "2000 ohm")
            .replace("180 ohm", "6000 ohm")
            .replace("240 ohm", "8000 ohm")
            .replace("tolerance: 2 %", "tolerance: 2 %\n  open_above: 20000 ohm");
    Cli kilo = tub(large, "ohm", 6, 6, 6, 8);
    assertThat(kilo.out)
        .contains("let the logger write ohm, 8000 where it writes 8")
        .doesNotContain("belong to no step of the plan's sender.");
  }

  /** One clock with an offset and one without: it is asked whether they are one. */
  @Test
  void timesOfTwoKindsAreTold() {
    String[] lines = YARD.split("\n");
    for (int i = 1; i < 40; i += 2) {
      lines[i] = lines[i].replaceFirst(";", "+01:00;");
    }
    Cli mixed = yard(String.join("\n", lines) + "\n");
    assertThat(mixed.out).contains("rows have a time without an offset").contains("one clock");
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new java.util.ArrayList<>();
    for (Iterator<String> it = object.fieldNames(); it.hasNext(); ) {
      names.add(it.next());
    }
    return names;
  }

  @Test
  void csvOfEventsDaysAndRows() {
    Cli events = yard(YARD, "--format", "csv");
    assertThat(events.out).startsWith("kind,start,end,litres,litres_low,litres_high,cause\n");
    assertThat(events.out.lines()).hasSize(8);
    assertThat(yard(YARD, "--events", "--format", "csv").out).isEqualTo(events.out);
    assertThat(yard(YARD, "--days", "--format", "csv").out.lines()).hasSize(25);
    Cli rows = yard(YARD, "--rows");
    assertThat(rows.out)
        .startsWith("time,step,step_read,volume_L,volume_low_L,volume_high_L,flags\n");
    assertThat(rows.out.lines()).hasSize(1 + 2248 - 4);
    assertThat(rows.out).contains(",short\n").contains(",pump\n");
    assertThat(LogFiles.json(yard(YARD, "--rows", "--format", "json").out)).hasSize(2248 - 4);
  }

  @Test
  void alarmIsSilentWhenAllIsWell() {
    Cli well = yard(YARD, "--alarm");
    assertThat(well.out + well.err).isEmpty();
    assertThat(well.exit).isZero();
    assertThat(yard(YARD, "--alarm", "--days-left", "13").out).isEmpty();
    Cli left = yard(YARD, "--alarm", "--days-left", "14");
    assertThat(left.out).startsWith("days-left: ").hasLineCount(1);
    assertThat(left.exit).isEqualTo(1);
  }

  @Test
  void anOpenFailureIsOneLineUntilItIsKnown() {
    String open = until("2027-03-31T17:00");
    Cli alarm = yard(open, "--alarm");
    assertThat(alarm.out)
        .startsWith("no-water-at-cap: ")
        .hasLineCount(1)
        .contains("31 March 11:15");
    assertThat(alarm.exit).isEqualTo(1);
    assertThat(yard(open).exit).isEqualTo(1);
    assertThat(yard(open).out).contains("Alarm:").contains("no water at the cap since");
    assertThat(yard(open, "--alarm", "--since", "2027-03-31T11:00").exit).isEqualTo(1);
    Cli later = yard(open, "--alarm", "--since", "2027-03-31T16:00+02:00");
    assertThat(later.out).isEmpty();
    assertThat(later.exit).isZero();
    JsonNode json = LogFiles.json(yard(open, "--format", "json").out);
    assertThat(json.get("status").asText()).isEqualTo("no-water-at-cap");
  }

  @Test
  void aSilentLogIsSeenByTheClockOnly() {
    assertThat(yard(YARD, "--alarm", "--now", "2027-04-11T00:25:00+02:00").out).isEmpty();
    assertThat(yard(YARD, "--alarm", "--now", "2027-04-11T00:31:00+02:00").out)
        .startsWith("log-silent: ");
    assertThat(yard(YARD, "--alarm", "--now", "1807396260").out).startsWith("log-silent: ");
  }

  @Test
  void tooShortToSay() {
    Cli young = yard(until("2027-03-20T10:00"));
    assertThat(young.out).contains("the log is too short to say what the plants drink: 2 of 3");
    assertThat(young.exit).isZero();
    JsonNode one = LogFiles.json(yard(until("2027-03-18T00:15"), "--format", "json").out);
    assertThat(one.get("rows").asInt()).isEqualTo(1);
    assertThat(one.get("status").asText()).isEqualTo("too-short");
    assertThat(one.get("days_left").isNull()).isTrue();
    assertThat(one.get("volume_L").isNull()).isFalse();
  }

  /** By hand: 3.956 L a day in the log, 3 L/d in the plan; 124 % of it is the plan's own thirst. */
  @Test
  void thirstIsAgainstWhatThePlanSays() {
    JsonNode told = LogFiles.json(yard(YARD, "--set", "drinks=3 L/d", "--format", "json").out);
    double use = told.get("use_L_day").asDouble();
    assertThat(told.get("thirst_pct").asDouble())
        .isCloseTo(100 * use / 3, org.assertj.core.api.Assertions.within(1e-6));
    assertThat(yard(YARD, "--set", "drinks=3 L/d").out).contains("thirst=132 %");
    assertThat(yard(YARD, "--set", "drinks=3.2 L/d", "--set", "thirst=124 %").out)
        .doesNotContain("Next: set in the plan");
  }

  @Test
  void thresholdsAreThePlans() {
    assertThat(yard(YARD, "--format", "csv", "--set", "log.thresholds.gap=2000").out)
        .doesNotContain("\ngap,");
    assertThat(yard(YARD, "--format", "csv", "--set", "log.thresholds.leak_steps=50").out)
        .doesNotContain("\nleak,");
  }

  @Test
  void aDayBackwardsAndOtherOddTimes() {
    String odd =
        until("2027-03-20T10:00")
            + "2027-03-18T10:00:00;155;1,4;17;0;1648;0\n"
            + "1970-01-01T00:00:10;155;1,4;17;0;1648;0\n"
            + "2027-03-20T23:59:60;155;1,4;17;0;1648;0\n"
            + "04/06/2027 10:00;155;1,4;17;0;1648;0\n"
            + ";155;1,4;17;0;1648;0\n";
    JsonNode told = LogFiles.json(yard(odd, "--format", "json").out);
    assertThat(told.get("clock_not_set").asInt()).isEqualTo(1);
    assertThat(told.get("late_rows").asInt()).isEqualTo(1);
    assertThat(told.get("last").asText()).isEqualTo("2027-03-21T00:00:00+01:00");
  }

  @Test
  void countsWhereOhmsAreSaid() {
    Cli told = yard(YARD, "--set", "log.reading=counts", "--set", "log.reading_in=ohm");
    assertThat(told.out).contains("belong to no step of the plan's sender");
  }

  @Test
  void anotherZoneThanTheLogs() {
    String log = LogFiles.text("terrace.csv");
    LogFiles files = new LogFiles(folder);
    assertThat(files.run("terrace", log, "--set", "site.time_zone=Asia/Tokyo").out)
        .contains("the times carry an offset that site.time_zone does not have");
    assertThat(files.run("terrace", log).out).doesNotContain("carry an offset");
  }

  @Test
  void withoutAReadingColumnTheLevelIsUnknown() {
    Cli told = yard(YARD.replaceFirst("counts", "x"));
    assertThat(told.out).startsWith("No level can be read").contains("name it in the plan");
    assertThat(told.exit).isZero();
  }
}
