package leat.command;

import static org.assertj.core.api.Assertions.assertThat;

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
    assertThat(csv.exit()).isZero();
    assertThat(csv.out())
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
    assertThat(Cli.run(args).out()).isEqualTo(Cli.run(CONTRACT).out());
  }

  @Test
  void textSaysWhatIsKept() {
    Cli text = Cli.run(CONTRACT);
    assertThat(text.out())
        .startsWith(
            "90 s every 13.5 min costs 3.27 EUR in 180 days; 15 min/15 min would cost 14.73 EUR, so you keep 11.46 EUR.\n")
        .contains("pump runs             11 %         50 %")
        .contains("relay's 100 000       938 days     2080 days");
  }

  /** Sheet energy-duty.csv DU01: saving_kwh 36.96, saving_cost 11.4576, saving_pct 77.777. */
  @Test
  void jsonHasTheSaving() {
    Cli json = Cli.run(with(CONTRACT, "--format", "json"));
    String second = json.out().substring(json.out().indexOf("15 min/15 min"));
    Cli other = new Cli(0, second, "");
    assertThat(other.number("saving_kwh")).isEqualTo(36.96);
    assertThat(other.number("saving_cost")).isEqualTo(11.4576);
    assertThat(other.number("saving_pct")).isEqualTo(77.7777777778);
  }
}
