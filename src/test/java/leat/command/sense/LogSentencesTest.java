package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a log says of now, to the letter. When something began is held against the events of the
 * sheets' logs (yard.truth.json, terrace.truth.json); the other logs are made here.
 */
class LogSentencesTest {
  private static final String YARD = LogFiles.text("yard.csv");
  private static final String TERRACE = LogFiles.text("terrace.csv");

  @TempDir Path folder;

  private static String until(String log, String time) {
    return log.substring(0, log.indexOf('\n' + time) + 1);
  }

  private Cli yard(String time, String... more) {
    return new LogFiles(folder).run("yard", until(YARD, time), more);
  }

  /** 0.55 L/h from 23 March 20:00 in the sheet: told from the edge before. */
  @Test
  void waterIsLost() {
    Cli leak = yard("2027-03-24T20:00");
    assertThat(leak.out)
        .contains(
            "  leak                  water is lost since 23 March 14:07: look for a puddle, then at hoses and drain\n");
    assertThat(leak.exit).isEqualTo(1);
  }

  /** The same leak with the cap dry meanwhile: a hose came off. */
  @Test
  void aHoseIsOff() {
    StringBuilder dry = new StringBuilder();
    for (String line : until(YARD, "2027-03-24T20:00").split("\n")) {
      boolean leaking = line.compareTo("2027-03-23T21") > 0 && line.compareTo("2027-03-24T03") < 0;
      String[] cells = line.split(";", -1);
      cells[5] = leaking ? "2740" : cells[5];
      dry.append(String.join(";", cells)).append('\n');
    }
    Cli leak = new LogFiles(folder).run("yard", dry.toString());
    assertThat(leak.out)
        .contains("water is lost since 23 March 14:07 (hose off): look for a puddle")
        .containsPattern("23 March 14:07 +water lost +goes on +10.3 L, hose off\n")
        .containsPattern("23 March 20:45 +no water at the cap +to 24 March 03:00 +hose off\n");
  }

  /** From 13:00, 06:30 and 22:00 of the day before in the sheets. */
  @Test
  void theSenderIsShortedOpenOrStuck() {
    assertThat(yard("2027-04-08T14:00").out)
        .containsPattern(
            "sensor-short +the sender's wires touch since 8 April 13:00: look for water in its plug\n");
    assertThat(new LogFiles(folder).run("terrace", until(TERRACE, "2027-06-16T09:00")).out)
        .containsPattern(
            "sensor-open +the sender's wire is open since 16 June 06:30: look at its plug\n");
    assertThat(yard("2027-04-06T12:00").out)
        .containsPattern(
            "stuck-float +the float has not moved since 2 April 13:30, though the plants drink: tap the sender\n");
  }

  @Test
  void theMarkAndTheBandAreLeft() {
    assertThat(yard("2027-03-28T15:00", "--set", "tank.low=260 mm").out)
        .containsPattern(
            "below-low +below the refill mark since 24 March 21:45, 25.2 L left: fill up\n");
    Cli week =
        Cli.run(
            "log",
            "week-log.csv",
            "--plan",
            "logged-tub.yaml",
            "--set",
            "target.ec_high=1.52 mS/cm");
    assertThat(week.out)
        .containsPattern(
            "ec-out-of-band +the EC is 1.67 mS/cm, out of the target's band since 5 June 00:50: see leat topup\n");
  }

  /** The meter reads 0.004 mS/cm more each day: 0.12 in 30 days, on top of none (-0.0007). */
  @Test
  void theMeterDrifts() {
    StringBuilder creeping = new StringBuilder();
    LocalDate first = null;
    for (String line : TERRACE.split("\n")) {
      String[] cells = line.split(",", -1);
      if (cells.length > 2 && cells[2].matches("[0-9.]+")) {
        LocalDate day = LocalDate.parse(line.substring(0, 10));
        first = first == null ? day : first;
        double ec = Double.parseDouble(cells[2]) + 0.004 * ChronoUnit.DAYS.between(first, day);
        cells[2] = String.valueOf(ec);
      }
      creeping.append(String.join(",", cells)).append('\n');
    }
    assertThat(new LogFiles(folder).run("terrace", creeping.toString()).out)
        .contains(
            "Mind: the EC after pourings moves by 0.12 mS/cm in 30 days: if you pour the same, check the meter (leat ec --standard).\n");
    assertThat(new LogFiles(folder).run("terrace", TERRACE).out)
        .doesNotContain("the EC after pourings moves");
  }

  /** Rows every ten minutes and a pump that runs for two of them: the dip has a low end only. */
  @Test
  void whatARunKeepsIsHalfKnown() {
    Cli locked =
        Cli.run(
            "log",
            "week-log.csv",
            "--plan",
            "logged-tub.yaml",
            "--set",
            "timing=[{run: 2 min, rest: 8 min}]");
    assertThat(locked.out)
        .contains(
            "Mind: a run keeps 1.2 L or more above the tank; how much is not known, because the logger reads always at the same moments of a run. Mark the level, let the pump run, mark it again (leat tank): the litres between are hold_up.\n");
    assertThat(
            new LogFiles(folder)
                .run("terrace", TERRACE, "--set", "hold_up=", "--set", "sender.hysteresis=")
                .out)
        .contains(
            "Mind: a run keeps 0.43 L or more above the tank; how much is not known while the plan has no sender.hysteresis (leat level fit --drained).\n");
  }

  /**
   * A sender with a step every 0.5 mm over 100 mm x 100 mm: its band is 0.005 L, so both ends print
   * alike. By hand: 250 mm less 30 mm in three days is 220 mm, 2.2 L.
   */
  @Test
  void aFineSenderTellsOneNumber() throws IOException {
    Cli fine = fine(0.01, 0.5, 0.1, 0.1, 0.1);
    assertThat(fine.out)
        .startsWith("About 2.20 L now; the plants drink 0.0996 L per day (0.0993 to 0.100);");
    assertThat(fine.out).doesNotContain("Alarm:");
  }

  /**
   * Two days of little and one of much: the mean is 2.1 L and one such day may be none at all, so
   * the days left have no upper end (sheet log.md section 5: m^2 is below z^2 s^2/n).
   */
  @Test
  void anUnsteadyThirstHasNoLastDay() throws IOException {
    Cli fine = fine(0.04, 2, 0.15, 0.15, 6);
    assertThat(fine.out)
        .containsPattern("days left +0\\.[0-9]+ or more +if thirst stays; pour today\n");
  }

  /** A tank of so many litres to a millimetre, a step each so many, and what each day drinks. */
  private Cli fine(double litresPerMm, double stepMm, double... drunk) throws IOException {
    List<String> steps = new ArrayList<>();
    double bottom = 260 - 110 * stepMm;
    for (int i = 0; i <= 120; i++) {
      steps.add(bottom + stepMm * i + " mm = " + (10 + 6 * i) + " ohm");
    }
    String side = litresPerMm < 0.02 ? "100 mm x 100 mm" : "200 mm x 200 mm";
    Path plan =
        Files.writeString(
            folder.resolve("fine.yaml"),
            "site: {time_zone: UTC}\ntank: {shape: box, bottom: "
                + side
                + ", height: 330 mm, full: 280 mm, low: 60 mm, intake: 30 mm}\nsender: {steps: ["
                + String.join(", ", steps)
                + "], hysteresis: 0.1 mm, tolerance: 0 %, lead: 0 ohm}\n");
    StringBuilder rows = new StringBuilder("time,ohm\n");
    double level = 250;
    for (int day = 0; day < drunk.length; day++) {
      for (int row = 0; row < 144; row++) {
        double hour = row / 6.0;
        double bright = Math.min(Math.max(hour - 6, 0), 14);
        double share = (bright + 0.1 * (hour - bright)) / 15;
        int step = (int) ((level - drunk[day] / litresPerMm * share - bottom) / stepMm);
        rows.append(
            String.format(
                "2027-06-%02dT%02d:%d0:00Z,%d%n", day + 1, row / 6, row % 6, 10 + 6 * step));
      }
      level -= drunk[day] / litresPerMm;
    }
    rows.append(
        String.format(
            "2027-06-%02dT00:00:00Z,%d%n",
            drunk.length + 1, 10 + 6 * (int) ((level - bottom) / stepMm)));
    Path log = Files.writeString(folder.resolve("fine.csv"), rows.toString());
    return Cli.run(
        "log",
        log.toString(),
        "--plan",
        plan.toString(),
        "--set",
        "log.thresholds.leak_steps=200",
        "--set",
        "log.thresholds.stuck_steps=20");
  }
}
