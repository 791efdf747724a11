package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlantThirstTest {
  static Stream<Row> rows() {
    // the logistic curve's rows are not told in a plan
    return Sheet.of("season-plant-water.csv")
        .where(r -> !r.text("model").equals("logistic"))
        .atLeast(13);
  }

  static Stream<Row> crops() {
    return Sheet.of("season-kc.csv").atLeast(9);
  }

  private static Growth growth(Row r) {
    int initial = (int) r.num("days_initial");
    int development = (int) r.num("days_development");
    return r.has("days_late")
        ? new GrowthStages(
            initial,
            development,
            (int) r.num("days_mid"),
            (int) r.num("days_late"),
            r.num("g_start"),
            r.num("g_end"))
        : GrowthStages.of(initial, development, r.num("g_start"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asTheSheet(Row r) {
    boolean given = r.text("model").equals("given");
    int day = given ? 0 : (int) r.num("day_since_transplant");
    double g = given ? 1 : growth(r).share(day);
    double tol = r.num("tol_rel");
    assertThat(g).isCloseTo(r.num("growth"), within(1e-12 + tol * r.num("growth")));
    double one = r.num("demand_area_m2") * g * r.num("et0_mm") * r.num("exposure");
    assertThat(one)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("litres_per_plant_day"), within(tol * one));
    assertThat(one * r.num("plants")).isCloseTo(r.num("litres_day"), within(tol * 10));
    if (!given && day >= 0) {
      double[] litres = new double[day + 1];
      double[] et0 = new double[day + 1];
      java.util.Arrays.fill(et0, r.num("et0_mm"));
      Planting planting =
          new Planting((int) r.num("plants"), r.num("demand_area_m2"), growth(r), 0, day + 1);
      PlantThirst.add(litres, planting, et0, r.num("exposure"));
      assertThat(litres[day]).isCloseTo(r.num("litres_day"), within(1e-9 * (1 + litres[day])));
    }
  }

  /**
   * The rows of the plan's own water: 0.12 L on a day of 4 mm; its notes name a day of 5 mm too.
   */
  @Test
  void waterIsMeantOnADayOfFourMillimetres() {
    assertThat(DemandArea.ofWaterM2(0.12)).isCloseTo(0.03, within(1e-15));
    double c = DemandArea.ofWaterM2(0.25);
    double[] litres = new double[3];
    SeasonEt0 none = SeasonEt0.withoutWeather(3);
    PlantThirst.add(litres, new Planting(1, c, GrowthStages.of(0, 0, 1), 0, 3), none.mm(), 1);
    assertThat(litres).containsExactly(0.25, 0.25, 0.25);
    assertThat(none.method().word()).isEqualTo("drinks");
  }

  @ParameterizedTest
  @MethodSource("crops")
  void cropTable(Row r) {
    CropWater crop = CropWaters.find(r.text("crop"));
    assertThat(crop.kcInitial()).isEqualTo(r.num("kc_ini"));
    assertThat(crop.kcMid()).isEqualTo(r.num("kc_mid"));
    assertThat(crop.kcEnd()).isEqualTo(r.num("kc_end"));
    assertThat(crop.kcbMid()).isEqualTo(r.num("kcb_mid"));
    assertThat(crop.kcKnown()).isEqualTo(r.text("kc_known"));
    assertThat(crop.stagesKnown()).isEqualTo(r.text("stages_known"));
    assertThat(crop.canopyM2()).isEqualTo(r.num("canopy_area_full_m2"));
    // The sheet prints four digits.
    assertThat(crop.demandM2()).isCloseTo(r.num("demand_area_full_m2"), within(0.5001e-4));
    assertThat(crop.lowL()).isEqualTo(r.num("litres_day_full_low"));
    assertThat(crop.highL()).isEqualTo(r.num("litres_day_full_high"));
    assertThat(crop.note()).isEqualTo(r.text("note"));
    if (r.has("fao_days_initial")) {
      assertThat(crop.fieldDays())
          .containsExactly(
              (int) r.num("fao_days_initial"),
              (int) r.num("fao_days_development"),
              (int) r.num("fao_days_mid"),
              (int) r.num("fao_days_late"));
    } else {
      assertThat(crop.fieldDays()).isNull();
    }
    assertThat(suits(crop, crop.demandM2(), 1)).isTrue();
    assertThat(suits(crop, crop.demandM2() * 20, 1)).isFalse();
    assertThat(suits(crop, crop.demandM2() / 20, 1)).isFalse();
  }

  @Test
  void everyCropOfTheTableIsInTheSheet() {
    assertThat(CropWaters.all()).hasSize((int) crops().count());
    assertThat(CropWaters.find("pepper").name()).isEqualTo("sweet-pepper");
    assertThat(CropWaters.find("oak")).isNull();
  }

  private static double season(String name, int days, double et0, double exposure) {
    return season(name, days, et0, exposure, Usual.stages(days));
  }

  private static double season(String name, int days, double et0, double exposure, Growth growth) {
    double[] litres = new double[days];
    double[] mm = new double[days];
    java.util.Arrays.fill(mm, et0);
    CropWater crop = CropWaters.find(name);
    PlantThirst.add(litres, new Planting(1, crop.demandM2(), growth, 0, days), mm, exposure);
    return java.util.Arrays.stream(litres).sum();
  }

  /**
   * Barbosa and others 2015: 20 +- 3.8 L for a kg of lettuce; PMC7885021 Table 2: 41.7 to 103 L a
   * tomato plant under cover. The sheet's own sums are 3.9 L a head, 108 L and 70 L a plant; the
   * tomato's with the stages of its row PW10, 20 and 40 days from 0.05, not with the usual ones.
   */
  @Test
  void sanityBandsOfTheSheet() {
    double head = season("lettuce", 35, 4, 1);
    assertThat(head).isCloseTo(3.9, within(0.05));
    assertThat(head / 0.18)
        .isBetween(
            CropWaters.LETTUCE_L_PER_KG - CropWaters.LETTUCE_SPREAD_L_PER_KG,
            CropWaters.LETTUCE_L_PER_KG + CropWaters.LETTUCE_SPREAD_L_PER_KG);
    Growth early = GrowthStages.of(20, 40, 0.05);
    assertThat(season("tomato", 120, 3, 1, early)).isCloseTo(108, within(0.5));
    assertThat(season("tomato", 120, 3, 0.65, early)).isCloseTo(70, within(0.5));
    double covered = season("tomato", 120, 3, Exposure.GLASS.factor());
    assertThat(covered).isBetween(CropWaters.TOMATO_LOW_L, CropWaters.TOMATO_HIGH_L);
  }

  /** Weather to litres, end to end: the sheet's inputs of SB08 are rounded to 1E-6 L. */
  @Test
  void seattleSeasonFromWeather() {
    List<Row> days =
        Sheet.of("season-balance-daily.csv")
            .where(r -> r.id().equals("SB08"))
            .atLeast(164)
            .toList();
    LocalDate first = LocalDate.parse(days.get(0).text("date"));
    SeasonWeather season = Seattle.from(first, days.size());
    double[] et0 = SeasonEt0.of(season, Site.of(Seattle.LATITUDE, 0)).mm();
    double[] plants = new double[days.size()];
    Sheet.of("season-balance-crops.csv")
        .atLeast(22)
        .forEach(
            r ->
                PlantThirst.add(
                    plants,
                    new Planting(
                        (int) r.num("plants"),
                        r.num("demand_area_m2"),
                        GrowthStages.of(
                            (int) r.num("days_initial"),
                            (int) r.num("days_development"),
                            r.num("g_start")),
                        day(first, r.text("transplant")),
                        day(first, r.text("harvest"))),
                    et0,
                    r.num("exposure")));
    double[] open = OpenWater.litres(et0, 0.02, 1);
    for (int i = 0; i < days.size(); i++) {
      Row r = days.get(i);
      assertThat(season.rainMm()[i]).isEqualTo(r.num("in_rain_mm"));
      assertThat(plants[i]).as(r.text("date")).isCloseTo(r.num("in_plants_L"), within(0.5001e-6));
      assertThat(open[i]).isCloseTo(r.num("in_open_L"), within(0.5001e-6));
    }
  }

  private static int day(LocalDate first, String date) {
    return (int) (LocalDate.parse(date).toEpochDay() - first.toEpochDay());
  }

  @Test
  void stagesRoundDownAndRefuse() {
    assertThat(Usual.stages(35)).isEqualTo(GrowthStages.of(5, 19, 0.1));
    assertThat(Usual.stages(20)).isEqualTo(GrowthStages.of(3, 11, 0.1));
    assertThat(GrowthStages.inPot(150, 20, 40, 30, 0.05, 0.7))
        .isEqualTo(new GrowthStages(20, 40, 60, 30, 0.05, 0.7));
    assertThat(GrowthStages.inPot(35, 5, 19, 0, 0.1, 0.7)).isEqualTo(GrowthStages.of(5, 19, 0.1));
    assertThat(GrowthStages.inPot(36, 20, 10, 6, 0.1, 0.7))
        .as("no full day between rise and decline")
        .isEqualTo(new GrowthStages(20, 10, 0, 6, 0.1, 0.7));
    assertThatThrownBy(() -> GrowthStages.inPot(35, 20, 16, 0, 0.1, 1))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> GrowthStages.of(-1, 3, 0.1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> GrowthStages.of(1, 3, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> GrowthStages.of(1, 3, 1.1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Planting(1, 1, Usual.stages(9), 5, 4))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(
            () ->
                PlantThirst.add(
                    new double[2], new Planting(1, 1, Usual.stages(9), 0, 4), new double[3], 1))
        .isInstanceOf(Impossible.class);
  }

  /** Two days small, a rise over four, three full, a decline over two: the ends of each stage. */
  @Test
  void theStagesMeet() {
    GrowthStages g = new GrowthStages(2, 4, 3, 2, 0.2, 0.6);
    double[] shares = {0, 0.2, 0.2, 0.2, 0.4, 0.6, 0.8, 1, 1, 1, 1, 0.8, 0.6, 0.6};
    for (int day = -1; day < shares.length - 1; day++) {
      assertThat(g.share(day)).as("day " + day).isCloseTo(shares[day + 1], within(1e-12));
    }
    assertThat(new GrowthStages(2, 4, 3, 0, 0.2, 0.6).share(9)).as("at once").isEqualTo(0.6);
  }

  /** A full plant of 0.125 m2 on the hot day of 6 mm drinks 0.75 L: both ends belong to it. */
  /** Whether a full plant drinks within its band on a hot day, ET0 of 6 mm (sheet, section 2). */
  private static boolean suits(CropWater crop, double demandM2, double exposure) {
    double litres = demandM2 * 6 * exposure;
    return litres >= crop.lowL() && litres <= crop.highL();
  }

  @Test
  void exposures() {
    assertThat(Exposure.of("alone").factor()).isEqualTo(1.2);
    assertThat(Exposure.of("glass").hasRoof()).isTrue();
    assertThat(Exposure.of("open").hasRoof()).isFalse();
    assertThat(Exposure.of("moon")).isNull();
    // sheet season.md section 2: 1 to 1.5 alone, 0.5 to 0.8 under glass or film
    assertThat(Exposure.of("alone").factor()).isBetween(1.0, 1.5);
    assertThat(Exposure.of("glass").factor()).isBetween(0.5, 0.8);
    for (Exposure one : Exposure.values()) {
      assertThat(Exposure.of(one.name().toLowerCase(java.util.Locale.ROOT))).isSameAs(one);
    }
  }
}
