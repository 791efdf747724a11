package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;

/** Bottles of a season by its forecast; second route: the season's own sums of feed. */
class StockSeasonTest {
  private static JsonNode first(Cli cli) throws Exception {
    JsonNode told = new ObjectMapper().readTree(cli.out);
    return told.isArray() ? told.get(0) : told;
  }

  /** 5 mL of both bottles for a litre: the feed of first fill and top-ups over 5 mL/L. */
  @Test
  void isTheFeedOfTheSeason() throws Exception {
    JsonNode stock = first(Cli.run("stock", "--plan", "balcony.yaml", "--format", "json"));
    JsonNode season = first(Cli.run("season", "balcony.yaml", "--format", "json"));
    double ml =
        season.get("first_fill_concentrate_mL").asDouble()
            + season.get("topup_concentrate_mL").asDouble();
    assertThat(stock.get("season_L").asDouble()).isCloseTo(ml / 5, within(1e-6));
    Cli text = Cli.run("stock", "--plan", "balcony.yaml");
    assertThat(text.out).contains("feed for the season by its forecast").contains("half more");
  }

  @Test
  void roughlyWhereTheSeasonCannotBeRun() {
    Cli rough =
        Cli.run(
            "stock",
            "--plan",
            "balcony.yaml",
            "--set",
            "site.weather=none-such.csv",
            "--set",
            "drinks=3 L/d");
    assertThat(rough.exit).isZero();
    assertThat(rough.out).contains("the season roughly, by its days: no such weather file");
  }

  @Test
  void anAskedSeasonGoesFirst() throws Exception {
    Cli asked = Cli.run("stock", "--plan", "balcony.yaml", "--season", "900 L", "--format", "json");
    assertThat(first(asked).get("season_L").asDouble()).isEqualTo(900);
  }

  /**
   * Marks of season-light.md section 3: lettuce 10 low, 17 good, seen; leek is not in the table.
   */
  @Test
  void cropsTellTheirLight() throws Exception {
    JsonNode lettuce =
        new ObjectMapper().readTree(Cli.run("crops", "lettuce", "--format", "json").out);
    JsonNode crop = lettuce.get("crops").get(0);
    assertThat(crop.get("dli_low_mol_m2").asDouble()).isEqualTo(10);
    assertThat(crop.get("dli_good_mol_m2").asDouble()).isEqualTo(17);
    assertThat(crop.get("dli_known").asText()).isEqualTo("seen-in-print");
    assertThat(Cli.run("crops", "lettuce").out).contains("light from 10.0 mol/m2 per day");
  }

  /** Weather alone: no crops, no feed, no tank. */
  @Test
  void warmthAndFrostNeedOnlyWeather(@org.junit.jupiter.api.io.TempDir java.nio.file.Path folder)
      throws Exception {
    String month = "    - {tmin: -9 C, tmax: 59 C}\n";
    java.nio.file.Path plan = folder.resolve("bare.yaml");
    java.nio.file.Files.writeString(
        plan, "season: {from: 2027-04-01, to: 2027-09-30}\nsite:\n  months:\n" + month.repeat(12));
    Cli check = Cli.run("check", plan.toString(), "--format", "csv");
    assertThat(check.out).containsPattern("frost-pipes,[^\n]*warn");
    assertThat(check.out).containsPattern("tank-warm,[^\n]*warn");
  }

  /** A plan whose feed is weighed has no bottles that a season could be run with. */
  @Test
  void roughlyWhereTheFeedIsWeighed() {
    Cli rough =
        Cli.run(
            "stock",
            "--plan",
            "balcony.yaml",
            "--set",
            "feed={stock: {bottle: 1 L, makes: 200 L, grams: {potassium-nitrate: 80 g}}}",
            "--set",
            "drinks=3 L/d");
    assertThat(rough.exit).as(rough.err).isZero();
    assertThat(rough.out)
        .contains("the season roughly, by its days: leat season wants feed.parts")
        .doesNotContain("needed (");
  }

  /** What a forecast's feed would make at label strength is not what the towers drink. */
  @Test
  void theSeasonsFeedIsToldAsFeed() {
    Cli forecast = Cli.run("stock", "--plan", "balcony.yaml");
    assertThat(forecast.out)
        .startsWith("Bottles of ")
        .contains("; the season's feed would make ")
        .doesNotContain("the season takes");
    Cli asked = Cli.run("stock", "--plan", "balcony.yaml", "--season", "900 L");
    assertThat(asked.out)
        .contains("; the season takes 900 L.")
        .doesNotContain("most towers take less");
  }
}
