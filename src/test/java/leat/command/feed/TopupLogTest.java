package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Today's line from a log: the second route is {@code leat log} for the tank, and {@code topup}
 * with that volume and EC typed.
 */
class TopupLogTest {
  private static final String[] FEED = {
    "--water-ec", "0.3 mS/cm", "--rate", "5 mL/L", "--rate-ec", "1.9 mS/cm", "--format", "json"
  };

  @TempDir Path folder;

  private static Cli topup(String... args) {
    List<String> all = new ArrayList<>(List.of("topup", "--plan", "logged-tub.yaml"));
    all.addAll(List.of(args));
    all.addAll(List.of(FEED));
    return Cli.run(all.toArray(new String[0]));
  }

  private static Cli log() {
    return Cli.run("log", "week-log.csv", "--plan", "logged-tub.yaml", "--format", "json");
  }

  private String weekLog(java.util.function.UnaryOperator<String> change) throws IOException {
    Path file = folder.resolve("log.csv");
    StringBuilder out = new StringBuilder();
    for (String line : Files.readAllLines(Path.of("examples/week-log.csv"))) {
      out.append(change.apply(line)).append('\n');
    }
    Files.writeString(file, out);
    return file.toString();
  }

  @Test
  void isTheLineForWhatTheLogSays() {
    Cli log = log();
    Cli by = topup("--log", "week-log.csv");
    assertThat(by.exit).isZero();
    assertThat(by.number("volume_low_L")).isEqualTo(log.number("volume_low_L"));
    assertThat(by.number("volume_high_L")).isEqualTo(log.number("volume_high_L"));
    assertThat(by.number("ec_mS_cm")).isEqualTo(log.number("ec_mS_cm"));
    assertThat(by.word("read_at")).isEqualTo(log.word("last"));
    Cli typed =
        topup("--volume", log.number("volume_L") + " L", "--ec", log.number("ec_mS_cm") + " mS/cm");
    assertThat(by.number("water_L")).isCloseTo(typed.number("water_L"), within(1e-6));
    assertThat(by.number("concentrate_mL")).isCloseTo(typed.number("concentrate_mL"), within(1e-6));
    assertThat(by.number("water_low_L")).isLessThan(by.number("water_L"));
    assertThat(by.number("water_high_L")).isGreaterThan(by.number("water_L"));
  }

  @Test
  void anEcThatIsTypedGoesBeforeTheLogs() {
    Cli typed = topup("--log", "week-log.csv", "--ec", "1.9 mS/cm");
    assertThat(typed.number("ec_mS_cm")).isEqualTo(1.9);
    assertThat(typed.number("concentrate_mL"))
        .isLessThan(topup("--log", "week-log.csv").number("concentrate_mL"));
  }

  @Test
  void aLogWithoutEcAsksForIt() throws IOException {
    String file = weekLog(line -> line.replaceFirst("ec_mS_cm", "other"));
    Cli asked = topup("--log", file);
    assertThat(asked.exit).isEqualTo(2);
    assertThat(asked.err).contains("--ec");
    assertThat(topup("--log", file, "--ec", "1.6 mS/cm").exit).isZero();
  }

  @Test
  void aSilentLogIsRefusedByTheClock() {
    assertThat(topup("--log", "week-log.csv", "--now", "2027-06-15T07:00:00+02:00").exit).isZero();
    Cli late = topup("--log", "week-log.csv", "--now", "2027-06-16T07:00:00+02:00");
    assertThat(late.exit).isEqualTo(2);
    assertThat(late.err).contains("log-silent since 15 June 06:50");
  }

  /** A column that is nan since 9 June: no days are counted from it, and the alarm is open. */
  @Test
  void aColumnOfNanIsNoReading() throws IOException {
    String file =
        weekLog(
            line ->
                line.compareTo("2027-06-10") > 0 && line.startsWith("2")
                    ? line.replaceFirst(",[^,]*", ",nan")
                    : line);
    assertThat(topup("--log", file).err).contains("log-silent since 9 June 23:50");
    Cli log = Cli.run("log", file, "--plan", "logged-tub.yaml", "--format", "json");
    assertThat(log.exit).isEqualTo(1);
    assertThat(log.word("status")).isEqualTo("log-silent");
    double use = log().number("use_L_day");
    assertThat(log.number("use_L_day")).isBetween(0.7 * use, 1.2 * use);
  }

  @Test
  void oneWayAtATime() {
    assertThat(topup("--log", "week-log.csv", "--volume", "20 L").exit).isEqualTo(2);
    assertThat(topup("--log", "week-log.csv", "--reading", "100").exit).isEqualTo(2);
  }

  /** The same tank, feed by the gram: grams for the litres of the log. */
  @Test
  void feedByTheGram() {
    List<String> log = new ArrayList<>(List.of("topup", "--plan", "logged-tub.yaml"));
    log.addAll(List.of("--log", "week-log.csv", "--water-ec", "0.3 mS/cm", "--makes", "200 L"));
    log.addAll(List.of("--weigh", "potassium-nitrate=110", "--format", "json"));
    Cli told = Cli.run(log.toArray(new String[0]));
    assertThat(told.exit).isZero();
    assertThat(told.number("volume_low_L")).isEqualTo(log().number("volume_low_L"));
    assertThat(told.word("read_at")).isEqualTo(log().word("last"));
  }
}
