package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import leat.Sheet;
import leat.Sheet.Row;
import leat.hydraulics.WallFilms.Wall;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Walls of several widths under one flow: sums of the rows of hydraulics-film.csv. */
class WallFilmsTest {
  private static List<Row> sameFlow() {
    return Sheet.of("hydraulics-film.csv")
        .where(
            r ->
                r.id().startsWith("FM0")
                    && r.has("temperature_C")
                    && r.num("temperature_C") == 20
                    && r.num("flow_L_min") == 6)
        .atLeast(3)
        .toList();
  }

  private static Wall wall(Row r) {
    return new Wall(r.num("inner_diameter_mm") / 1000, r.num("wetted_fraction"), r.num("height_m"));
  }

  @Test
  void theWallsOneUnderTheOtherAreTheSheetsRowsAdded() {
    List<Wall> walls = new ArrayList<>();
    double time = 0;
    double litres = 0;
    for (Row r : sameFlow()) {
      walls.add(wall(r));
      time += r.num("transit_mean_s");
      litres += r.num("film_volume_L");
    }
    WallFilms films = WallFilms.of(6 * L_MIN, Liquid.water(20), walls);
    assertThat(films.films()).hasSize(walls.size());
    assertThat(films.transitTime()).isCloseTo(time, withPercentage(1e-3));
    assertThat(1000 * films.volume()).isCloseTo(litres, withPercentage(1e-3));
    for (int i = 0; i < walls.size(); i++) {
      Row r = sameFlow().get(i);
      assertThat(films.films().get(i).loading() / L_MIN)
          .as(r.idAndProvenance())
          .isCloseTo(r.num("loading_L_min_per_m"), withPercentage(1e-3));
    }
  }

  @Test
  void theWidestWallWantsMostAndTheNarrowestBearsLeast() {
    // hydraulics.md section 8: 11 L/min per m at 20 C closes the film; FM01 prints 11.17236054
    Wall wide = new Wall(0.200, 1, 0.5);
    Wall narrow = new Wall(0.075, 1, 0.5);
    WallFilms.Want want = WallFilms.want(Liquid.water(20), List.of(narrow, wide));
    assertThat(want.closed() / L_MIN).isCloseTo(Math.PI * 0.200 * 11.17236054, within(1e-4));
    assertThat(want.least() / L_MIN).isCloseTo(Math.PI * 0.200 * 5, within(1e-9));
    assertThat(want.usual() / L_MIN).isCloseTo(Math.PI * 0.200 * 10, within(1e-9));
    assertThat(want.most() / L_MIN).isCloseTo(Math.PI * 0.075 * 20, within(1e-9));
    assertThat(want.suitsAll()).isTrue();
    Wall thin = new Wall(0.04, 1, 0.5);
    assertThat(WallFilms.want(Liquid.water(20), List.of(wide, thin)).suitsAll()).isFalse();
    WallFilms.Want one = WallFilms.want(Liquid.water(20), List.of(wide));
    assertThat(WallFilms.of(one.closed(), Liquid.water(20), List.of(wide)).films().get(0).loading())
        .isCloseTo(Film.breaksBelow(Film.CLEAN_PLASTIC, Liquid.water(20)), withPercentage(1e-9));
    assertThatThrownBy(() -> WallFilms.want(Liquid.water(20), List.of()))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> WallFilms.of(1e-4, Liquid.water(20), List.of()))
        .isInstanceOf(Impossible.class);
  }
}
