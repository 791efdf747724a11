package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leat.cli.Cli;
import org.junit.jupiter.api.Test;

class DutyCapTest {
  private static final String[] LINE = {
    "duty", "cap", "--plan", "first-tower.yaml", "--wet", "1350", "--dry", "2750"
  };

  /**
   * The wait is the riser's fill time that `pump` gives at the same marks; the thresholds are 1350
   * + 0.5 x 1400 and 1350 + 0.8 x 1400 (dryness 0.50 and 0.80, common practice).
   */
  @Test
  void thresholdAndWait() {
    Cli cap = Cli.run(DutyCommandTest.with(LINE, "--format", "json"));
    assertThat(cap.exit).isZero();
    assertThat(cap.number("wet_counts")).isEqualTo(2050);
    assertThat(cap.number("dry_counts")).isEqualTo(2470);
    String[] pump = {"pump", "--plan", "first-tower.yaml", "-f", "json", "--level"};
    double low = Cli.run(DutyCommandTest.with(pump, "90 mm")).number("fill_time_s");
    assertThat(cap.number("wet_after_low_s")).isCloseTo(low, within(1e-9));
    assertThat(cap.number("judge_after_s")).isEqualTo(Math.ceil(2 * low));
    assertThat(cap.number("wet_after_full_s")).isLessThan(low);
    assertThat(Cli.run(LINE).out)
        .startsWith("Water runs at 2050 counts or fewer; it is at the cap 1.5 s after");
  }

  @Test
  void bothSensesWork() {
    String[] line = LINE.clone();
    line[5] = "2750";
    line[7] = "1350";
    Cli cap = Cli.run(DutyCommandTest.with(line, "--format", "json"));
    assertThat(cap.number("wet_counts")).isEqualTo(2050);
    assertThat(cap.number("dry_counts")).isEqualTo(1630);
    assertThat(cap.out).contains("\"wet_side\": \"at-or-over\"");
  }

  @Test
  void aRunThatEndsBeforeItCanBeJudgedIsANo() {
    Cli cap = Cli.run(DutyCommandTest.with(LINE, "--set", "timing=[{run: 3 s, rest: 12 min}]"));
    assertThat(cap.exit).isEqualTo(1);
    assertThat(cap.out).startsWith("The shortest run, 3.0 s, ends before");
    Cli dry =
        Cli.run(DutyCommandTest.with(LINE, "--set", "pump.measured=", "--set", "pump.derate=40 %"));
    assertThat(dry.exit).isEqualTo(1);
    assertThat(dry.out).startsWith("No water reaches the cap of balcony");
  }

  /** One and a half of the longest rest, 45 min at least; an own alarm in a rest is told. */
  @Test
  void theAlarmIsLongerThanARest() {
    String night =
        "timing=[{run: 90 s, rest: 12 min}, {run: 60 s, rest: 60 min, from: \"22:00\", to: \"06:00\"}]";
    String[] line = DutyCommandTest.with(LINE, "--set", night);
    String[] json = DutyCommandTest.with(line, "--format", "json");
    assertThat(Cli.run(json).number("alarm_after_min")).isEqualTo(90);
    assertThat(Cli.run(DutyCommandTest.with(LINE, "-f", "json")).number("alarm_after_min"))
        .isEqualTo(45);
    String[] header = {"plan", "header", "first-tower.yaml", "--set", night};
    assertThat(Cli.run(header).out).contains("TOWER_DRY_ALARM_S 5400");
    String[] own = DutyCommandTest.with(line, "--set", "dry_limit.alarm=60 min");
    assertThat(Cli.run(own).out)
        .contains("Mind: dry_limit.alarm is no longer than the longest rest of timing");
    own[own.length - 1] = "dry_limit.alarm=61 min";
    assertThat(Cli.run(own).out).doesNotContain("dry_limit.alarm is no longer");
  }

  @Test
  void refusals() {
    String[] line = LINE.clone();
    line[7] = "1355";
    Cli near = Cli.run(line);
    assertThat(near.exit).isEqualTo(2);
    assertThat(near.err).contains("wet and dry must lie at least 20 counts apart");
    assertThat(Cli.run("duty", "cap", "--plan", "first-tower.yaml").err)
        .contains("cap_sensor.wet: needed");
  }
}
