package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leat.cli.Cli;
import org.junit.jupiter.api.Test;

class DutyCommandTest {
  private static final String[] CONTRACT = {
    "duty",
    "--power",
    "22 W",
    "--run",
    "90 s",
    "--rest",
    "12 min",
    "--price",
    "0.31 EUR/kWh",
    "--days",
    "180",
    "--against",
    "15 min/15 min"
  };

  static String[] with(String[] args, String... more) {
    String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return all;
  }

  /** Sheet energy-duty.csv, rows DU01 and DU02, exact arithmetic. */
  @Test
  void theContractsLine() {
    Cli csv = Cli.run(with(CONTRACT, "--format", "csv"));
    assertThat(csv.exit).isZero();
    assertThat(csv.out)
        .isEqualTo(
            "timing,run_s,rest_s,run_share_pct,starts_per_day,kwh_day,cost_day,kwh_total,cost_total\n"
                + "90 s/12 min,90,720,11.1111111111,106.666666667,0.0586666666667,0.0181866666667,10.56,3.2736\n"
                + "15 min/15 min,900,900,50,48,0.264,0.08184,47.52,14.7312\n");
  }

  @Test
  void onAndOffAreRunAndRest() {
    String[] args = CONTRACT.clone();
    args[3] = "--on";
    args[5] = "--off";
    assertThat(Cli.run(args).out).isEqualTo(Cli.run(CONTRACT).out);
  }

  @Test
  void textSaysWhatIsKept() {
    Cli text = Cli.run(CONTRACT);
    assertThat(text.out)
        .startsWith(
            "90 s on, 12 min off costs 3.27 EUR in 180 days; 15 min on, 15 min off would cost 14.73 EUR, so you keep 11.46 EUR.\n")
        .containsPattern("pump runs +11 % +50 %")
        .containsPattern(
            "relay life +938 days .100 000 operations. +2080 days .100 000 operations.");
  }

  /** Sheet energy-duty.csv DU01: saving_kwh 36.96, saving_cost 11.4576, saving_pct 77.777. */
  @Test
  void jsonHasTheSavingAgainstEachOther() {
    String json = Cli.run(with(CONTRACT, "--format", "json")).out;
    String second = json.substring(json.indexOf("15 min/15 min"));
    assertThat(second)
        .contains("\"saving_kwh\": 36.96,")
        .contains("\"saving_cost\": 11.4576,")
        .contains("\"saving_pct\": 77.7777777778,");
    assertThat(json.substring(0, json.indexOf("15 min/15 min")))
        .contains("\"saving_kwh\": null")
        .contains("\"currency\": \"EUR\"")
        .contains("\"relay_days\": 937.5");
  }

  @Test
  void oneTimingIsOneObject() {
    Cli json =
        Cli.run("duty", "--power", "22 W", "--run", "90 s", "--rest", "12 min", "-f", "json");
    assertThat(json.out).startsWith("{");
    assertThat(json.number("cost_total")).isNull();
    assertThat(json.number("days")).isEqualTo(365);
  }

  @Test
  void usesMoreIsSaidPlainly() {
    String[] args = CONTRACT.clone();
    args[4] = "30 min";
    args[6] = "10 min";
    assertThat(Cli.run(args).out)
        .startsWith(
            "30 min on, 10 min off costs 22.10 EUR in 180 days; 15 min on, 15 min off would cost")
        .contains("so this one costs 7.37 EUR more.");
  }

  /** Neither a zone nor its rules: they cost a tenth of a start. */
  @Test
  void aFlatPriceAndDaysLoadNoTimeZone() throws Exception {
    java.util.List<String> line =
        new java.util.ArrayList<>(
            java.util.List.of(
                System.getProperty("java.home") + "/bin/java",
                "-verbose:class",
                "-cp",
                System.getProperty("java.class.path"),
                "leat.Main"));
    line.addAll(java.util.List.of(CONTRACT));
    Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes());
    assertThat(process.waitFor()).isZero();
    assertThat(out).contains("leat.energy.Duty ").doesNotContain("java.time.Zone");
  }

  private static void refused(String message, String... args) {
    Cli cli = Cli.run(args);
    assertThat(cli.exit).as(cli.out + cli.err).isEqualTo(2);
    assertThat(cli.out).isEmpty();
    assertThat(cli.err).isEqualTo(message + "\n");
  }

  private static String[] changed(int at, String value) {
    String[] args = CONTRACT.clone();
    args[at] = value;
    return args;
  }

  @Test
  void refusals() {
    refused("--run: it must be above 0; got \"0 s\"", changed(4, "0 s"));
    refused("--power: it must be above 0, such as \"22 W\"; got \"-22 W\"", changed(2, "-22 W"));
    refused(
        "--price: a price of energy needs its currency, such as \"0.31 EUR/kWh\"; got \"0.31\"",
        changed(8, "0.31"));
    refused(
        "--against: expected a time after '/', such as \"15 min/15 min\"; got \"15\"",
        changed(12, "15/15"));
    refused(
        "--standing: a plan has one currency: this is CHF, tariff.price says EUR",
        with(CONTRACT, "--standing", "1 CHF/d"));
    refused(
        "leat duty: --to is needed (last day of the period), such as --to \"2027-10-15\"",
        "duty",
        "--power",
        "22 W",
        "--run",
        "90 s",
        "--rest",
        "12 min",
        "--from",
        "2027-04-10");
    refused(
        "leat duty: --days and --to ask for different things; give one of them",
        with(CONTRACT, "--to", "2027-10-15"));
    refused(
        "--time-zone: no time zone \"Europe/Viena\"; did you mean \"Europe/Vienna\"?",
        with(CONTRACT, "--time-zone", "Europe/Viena"));
    refused(
        "leat duty: a plan is needed: name a file, or set LEAT_PLAN; `leat plan new` writes one to start from",
        "duty",
        "--suggest");
  }

  @Test
  void aPeriodThatEndsBeforeItStarts() {
    Cli cli =
        Cli.run("duty", "--plan", "night-rate.yaml", "--from", "2027-10-15", "--to", "2027-04-10");
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err).contains("it ends before it starts");
  }

  private static final String[] PLAN = {"duty", "--plan", "night-rate.yaml"};

  @Test
  void refusalsOfAPlan() {
    refused(
        "--set timing[2].months: it must lie between 1 and 12, such as \"[6, 7, 8]\"; got \"13\"",
        with(PLAN, "--set", "timing[2].months=[13]"));
    assertThat(Cli.run(with(PLAN, "--set", "timing[1].to=")).err)
        .startsWith(
            "night-rate.yaml:42:38: timing[1].from: \"from\" needs \"to\" beside it, such as to: \"06:00\"\n");
    refused(
        "--set timing[0].months: the first timing holds whenever no later one does, so it has no hours, months or days of its own; put one before it, such as \"- {run: 90 s, rest: 12 min}\"",
        with(PLAN, "--set", "timing[0].months=[5]"));
    refused(
        "--set tariff.bands: this entry never holds: a later one covers all of it, and the last that matches wins",
        with(
            PLAN,
            "--set",
            "tariff.bands=[{from: \"10:00\", to: \"11:00\", price: 0.2 EUR/kWh}, {from: \"09:00\", to: \"12:00\", price: 0.3 EUR/kWh}]"));
    refused(
        "--days: where the timing or the price changes by the clock a period has whole days; got \"10.5\"",
        with(PLAN, "--days", "10.5"));
    refused(
        "night-rate.yaml: season.from: needed (first day), such as \"from: 2027-04-10\"",
        with(PLAN, "--set", "season=", "--days", "30"));
  }

  @Test
  void theDayAsALineOf24Hours() {
    Cli text = Cli.run(with(PLAN, "--against", "15 min/15 min"));
    assertThat(text.exit).isZero();
    assertThat(text.out)
        .contains("hours of 2027-07-13   0     6     12    18\n")
        .contains(
            "timing                bbbbbbaaaaaccccccaaaaabb  a = 90 s/12 min 11 %, b = 60 s/25 min 3.8 %, c = 2 min/10 min 17 %\n")
        .contains(
            "price                 222222111111111111111122  1 = 0.31 EUR per kWh, 2 = 0.22 EUR per kWh");
  }

  /**
   * Sheet energy-tariff.csv rows TF01 to TF03 (Vienna; an ordinary day, two bands, the spring day
   * of 23 h).
   */
  @Test
  void bandsAndTheSpringDay() {
    day("2027-05-12", 0.0885333333, 0.0247893333);
    day("2027-03-28", 0.0848444444, 0.0239777778);
  }

  private static void day(String date, double kwh, double cost) {
    Cli json =
        Cli.run(
            "duty",
            "--power",
            "22 W",
            "--run",
            "90 s",
            "--rest",
            "12 min",
            "--price",
            "0.31 EUR/kWh",
            "--controller",
            "1.2 W",
            "--coil",
            "0.4 W",
            "--set",
            "tariff.bands=[{from: \"22:00\", to: \"06:00\", price: 0.22 EUR/kWh}]",
            "--time-zone",
            "Europe/Vienna",
            "--from",
            date,
            "--to",
            date,
            "--format",
            "json");
    assertThat(json.number("kwh_total")).isCloseTo(kwh, within(kwh * 1e-6));
    assertThat(json.number("cost_total")).isCloseTo(cost, within(cost * 1e-6));
  }

  @Test
  void aRestOverTheDryLimitIsANo() {
    Cli long2 = Cli.run("duty", "--power", "22 W", "--run", "90 s", "--rest", "31 min");
    assertThat(long2.exit).isEqualTo(1);
    assertThat(long2.out)
        .contains(
            "Mind: a rest of 31 min is over the dry limit of 30 min by day, 06:00 to 22:00: ");
    assertThat(Cli.run("duty", "--power", "22 W", "--run", "90 s", "--rest", "30 min").exit)
        .isZero();
    Cli night = Cli.run(with(PLAN, "--set", "timing[1].rest=61 min"));
    assertThat(night.exit).isEqualTo(1);
    assertThat(night.out)
        .contains(
            "timing[1]: a rest of 61 min is over the dry limit of 60 min at night, 22:00 to 06:00: ");
  }

  @Test
  void aRunTooShortIsSaid() {
    Cli text = Cli.run(with(PLAN, "--run", "10 s"));
    assertThat(text.exit).isEqualTo(1);
    assertThat(text.out)
        .startsWith("The run is too short: 10 s, and the lowest pot of shed needs 28 s. 10 s on,")
        .contains("--suggest   finds a timing that keeps the roots wet");
    assertThat(text.out).contains("a run of 10 s does not water the lowest pot: 28 s are needed.");
  }

  @Test
  void standingChargeCountsOnlyItsShare() {
    double without = number(with(PLAN, "--format", "json"), "cost_total");
    double half = number(with(PLAN, "--standing-share", "50 %", "--format", "json"), "cost_total");
    assertThat(half - without).isCloseTo(0.5 * 0.29 * 189, within(1e-9));
  }

  private static double number(String[] args, String key) {
    return Cli.run(args).number(key);
  }
}
