package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sowing through the command line: sheets season-sow.csv and season-sow-batches.csv. */
class SowCommandTest {
  private static final String[] SUMS = {
    "batches_at_once",
    "batches_kept",
    "batches_with_plants",
    "batches_too_early",
    "batches_too_late",
    "plants_total",
    "seeds_total",
    "seeds_total_90",
    "pots_max_in_use",
    "longest_harvest_gap_days",
    "pot_days_used",
    "pot_days_available",
    "days_tower_empty"
  };

  @TempDir Path folder;

  static Stream<Row> sowings() {
    return Sheet.of("season-sow.csv").atLeast(6);
  }

  private static String[] line(Row r, String format) {
    List<String> args = new ArrayList<>(List.of("sow"));
    add(args, "--pots", r.text("pots"));
    add(args, "--first", r.text("first_sow"));
    add(args, "--nursery", r.text("nursery_days") + " d");
    add(args, "--growing", r.text("growing_days") + " d");
    add(args, "--turnaround", r.text("turnaround_days"));
    add(args, "--every", r.text("every_days") + " d");
    add(args, "--until", r.text("sow_until"));
    add(args, "--loss", 100 * r.num("loss") + " %");
    add(args, "--sizes", r.text("rule"));
    if (r.has("earliest_transplant")) {
      add(args, "--earliest-transplant", r.text("earliest_transplant"));
    }
    if (r.has("latest_harvest")) {
      add(args, "--latest-harvest", r.text("latest_harvest"));
    }
    add(args, "--format", format);
    return args.toArray(new String[0]);
  }

  private static void add(List<String> args, String flag, String value) {
    args.add(flag);
    args.add(value);
  }

  private static String plan(Row r) {
    String limits =
        (r.has("earliest_transplant")
                ? ", earliest_transplant: " + r.text("earliest_transplant")
                : "")
            + (r.has("latest_harvest") ? ", latest_harvest: " + r.text("latest_harvest") : "");
    return "crops:\n  - {name: lettuce, pots: "
        + r.text("pots")
        + ", sow: "
        + r.text("first_sow")
        + ", until: "
        + r.text("sow_until")
        + ", every: "
        + r.text("every_days")
        + " d, nursery: "
        + r.text("nursery_days")
        + " d, growing: "
        + r.text("growing_days")
        + " d, turnaround: "
        + r.text("turnaround_days")
        + " d, loss: "
        + 100 * r.num("loss")
        + " %, sizes: "
        + r.text("rule")
        + limits
        + "}\n";
  }

  @ParameterizedTest
  @MethodSource("sowings")
  void sumsByFlagsAndByPlan(Row r) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan(r));
    sums(r, Cli.run(line(r, "json")));
    sums(r, Cli.run("sow", file.toString(), "--format", "json"));
  }

  private static void sums(Row r, Cli json) {
    for (String key : SUMS) {
      assertThat(json.number(key)).as(r.idAndProvenance() + " " + key).isEqualTo(r.num(key));
    }
    assertThat(json.word("first_harvest")).isEqualTo(r.text("first_harvest"));
    assertThat(json.word("last_harvest")).isEqualTo(r.text("last_harvest"));
  }

  @ParameterizedTest
  @MethodSource("sowings")
  void batches(Row r) {
    List<Row> wanted =
        Sheet.of("season-sow-batches.csv")
            .where(b -> b.id().equals(r.id()) && b.num("plants") > 0)
            .rows();
    String[] lines = Cli.run(line(r, "csv")).out.split("\n");
    assertThat(lines[0]).isEqualTo("crop,tower,batch,sow,transplant,harvest,plants,seeds,seeds_90");
    assertThat(lines).hasSize(wanted.size() + 1);
    for (int i = 0; i < wanted.size(); i++) {
      Row b = wanted.get(i);
      assertThat(lines[i + 1])
          .as(b.idAndProvenance())
          .isEqualTo(
              ",,"
                  + b.text("batch")
                  + ","
                  + b.text("sow")
                  + ","
                  + b.text("transplant")
                  + ","
                  + b.text("harvest")
                  + ","
                  + b.text("plants")
                  + ","
                  + b.text("seeds")
                  + ","
                  + b.text("seeds_90"));
    }
  }

  private Cli sow(String plan, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    String[] args =
        Stream.concat(Stream.of("sow", file.toString()), Stream.of(more)).toArray(String[]::new);
    return Cli.run(args);
  }

  /** The contract's germination counts beside the loss: 4 plants at 0.8 x 0.9 want 6 seeds. */
  @Test
  void germinationCounts() throws IOException {
    Cli csv =
        sow(
            "crops: [{name: basil, pots: 4, sow: 2027-05-01, growing: 60 d, germination: 80 %, loss: 10 %}]\n",
            "--format", "csv");
    assertThat(csv.out).contains("basil,,1,2027-05-01,2027-05-01,2027-06-30,4,6,");
  }

  /** Where nothing is lost, seeds are enough, and it is said what was taken. */
  @Test
  void seedsAreEnoughWhereNothingIsLost() throws IOException {
    String crop =
        "crops: [{name: basil, pots: 4, sow: 2027-05-01, growing: 60 d, every: 20 d, until: 2027-07-01%s}]\n";
    assertThat(sow(String.format(crop, "")).out)
        .contains("every seed becomes a plant where germination and loss are not named")
        .doesNotContain("too few about half the time");
    assertThat(sow(String.format(crop, ", loss: 10 %")).out)
        .doesNotContain("every seed becomes a plant")
        .contains("too few about half the time");
  }

  /** No other word than the two. */
  @Test
  void sizesOfNoSuchWord() {
    Cli typo =
        Cli.run(
            "sow", "--pots", "9", "--first", "2027-03-01", "--growing", "35 d", "--sizes", "eqal");
    assertThat(typo.exit).isEqualTo(2);
    assertThat(typo.err).contains("--sizes: one of spread, equal is needed");
  }

  /** No pots, at its key. */
  @Test
  void noPots() throws IOException {
    Cli none = sow("crops: [{name: basil, pots: 0, sow: 2027-05-01, growing: 60 d}]\n");
    assertThat(none.exit).isEqualTo(2);
    assertThat(none.err).contains("crops[0].pots: it must lie between 1 and 100000");
  }

  /** Nothing at all is no; what the user's own limit drops is not. */
  @Test
  void exitCodes() throws IOException {
    String crop = "crops: [{name: chard, pots: 4, sow: 2027-05-01, growing: 60 d%s}]\n";
    assertThat(sow(String.format(crop, "")).exit).isZero();
    Cli none = sow(String.format(crop, ", latest_harvest: 2027-05-20"));
    assertThat(none.exit).isEqualTo(1);
    assertThat(none.out).contains("The last sowing that works is 2027-03-21.");
    String two =
        "crops:\n  - {name: chard, pots: 4, sow: 2027-04-01, growing: 30 d}\n"
            + "  - {name: basil, pots: 4, sow: %s, growing: 30 d}\n";
    assertThat(sow(String.format(two, "2027-05-15")).exit).isZero();
    Cli gap = sow(String.format(two, "2027-05-17"));
    assertThat(gap.exit).isEqualTo(1);
    assertThat(gap.out).contains("from 2027-05-01 on no plant stands in the tower for 16 days");
  }

  @Test
  void tooManyPlantsOnADayAreRefusedWithTheDay() throws IOException {
    String plan =
        "towers: [{name: north, modules: [{count: 2, pots: 4}]}]\n"
            + "crops:\n  - {name: lettuce, tower: north, pots: 6, sow: 2027-04-01, growing: 40 d}\n"
            + "  - {name: basil, tower: north, pots: 4, sow: %s, growing: 40 d}\n";
    assertThat(sow(String.format(plan, "2027-05-11")).exit).isZero();
    Cli over = sow(String.format(plan, "2027-05-10"));
    assertThat(over.exit).isEqualTo(2);
    assertThat(over.err).contains("tower north has 8 pots, and on 2027-05-10 its crops want 10");
  }

  /** Seattle's frosts of the sheet season-frost.csv: the latest spring and earliest autumn. */
  @Test
  void frostOfTheWorstYear() {
    Cli json = Cli.run("sow", "balcony.yaml", "--format", "json");
    assertThat(json.word("last_spring_frost")).isEqualTo("2027-03-19");
    assertThat(json.word("first_autumn_frost")).isEqualTo("2027-11-10");
  }

  /** Where nothing is told of losses, seeds are as many as plants, and that is taken. */
  @Test
  void everySeedIsTakenToLive() {
    String[] line = {
      "sow", "--pots", "8", "--first", "2027-03-01", "--growing", "35 d", "--nursery", "21 d"
    };
    Cli all = Cli.run(line);
    assertThat(all.out)
        .contains("every seed becomes a plant where germination and loss are not named")
        .doesNotContain("too few about half the time");
    String[] some = java.util.Arrays.copyOf(line, line.length + 2);
    some[line.length] = "--germination";
    some[line.length + 1] = "85 %";
    assertThat(Cli.run(some).out)
        .contains("too few about half the time")
        .doesNotContain("every seed becomes");
  }
}
