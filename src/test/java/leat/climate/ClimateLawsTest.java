package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class ClimateLawsTest {
  /**
   * Mirror of the year: what one hemisphere has of day the other has of night, and the radiation of
   * the two differs by the term that changes its sign with the latitude.
   */
  @Property
  void theOtherHemisphere(
      @ForAll @DoubleRange(min = 0, max = 89) double latitude,
      @ForAll @IntRange(min = 1, max = 366) int day) {
    assertThat(DayLength.hours(latitude, day) + DayLength.hours(-latitude, day))
        .isCloseTo(24, within(1e-9));
    double delta = SunPosition.declinationRad(day);
    double term =
        1440
            * 0.0820
            * SunPosition.inverseDistance(day)
            * Math.sin(Math.toRadians(latitude))
            * Math.sin(delta);
    assertThat(
            ExtraterrestrialRadiation.mjM2(latitude, day)
                - ExtraterrestrialRadiation.mjM2(-latitude, day))
        .isCloseTo(term, within(1e-9));
  }

  /** Half a year on (182.5 days, so the middle of two) the south has the north's day length. */
  @Property
  void halfAYearOn(
      @ForAll @DoubleRange(min = 0, max = 55) double latitude,
      @ForAll @IntRange(min = 1, max = 182) int day) {
    double middle =
        (DayLength.hours(latitude, day + 182) + DayLength.hours(latitude, day + 183)) / 2;
    assertThat(DayLength.hours(-latitude, day)).isCloseTo(middle, within(0.002));
  }

  /** More net radiation, drier air, a hotter afternoon: never less water. */
  @Property
  void moreAsksMore(
      @ForAll @DoubleRange(min = -5, max = 40) double mean,
      @ForAll @DoubleRange(min = -2, max = 20) double net,
      @ForAll @DoubleRange(min = 0, max = 10) double more,
      @ForAll @DoubleRange(min = 0, max = 8) double wind,
      @ForAll @DoubleRange(min = 0, max = 1) double humid) {
    double es = SaturationVapour.kPa(mean);
    double ea = humid * es;
    double one = PenmanMonteith.mmDay(mean, net, 0, wind, es, ea, 0.0665);
    assertThat(PenmanMonteith.mmDay(mean, net + more, 0, wind, es, ea, 0.0665))
        .isGreaterThanOrEqualTo(one);
    assertThat(PenmanMonteith.mmDay(mean, net, 0, wind, es, ea * 0.9, 0.0665))
        .isGreaterThanOrEqualTo(one - 1e-12);
    double h = HargreavesSamani.mmDay(mean - 5, mean + 5, 30);
    assertThat(HargreavesSamani.mmDay(mean - 5, mean + 5 + more, 30)).isGreaterThanOrEqualTo(h);
    assertThat(HargreavesSamani.mmDay(mean - 5, mean + 5, 30 + more)).isGreaterThanOrEqualTo(h);
    assertThat(h).isNotNegative();
  }

  /**
   * FAO-56 on equation 39: Rs/Rso is held at 1, so a reading over the clear sky changes nothing.
   */
  @Property(tries = 50)
  void noBrighterThanClear(
      @ForAll @DoubleRange(min = 1, max = 30) double clear,
      @ForAll @DoubleRange(min = 0, max = 10) double over) {
    assertThat(NetRadiation.longMjM2(8, 20, 1.2, clear + over, clear))
        .isEqualTo(NetRadiation.longMjM2(8, 20, 1.2, clear, clear));
    assertThat(NetRadiation.longMjM2(8, 20, 1.2, clear * 0.8, clear))
        .isLessThan(NetRadiation.longMjM2(8, 20, 1.2, clear, clear));
  }

  /** The best data come first, and each way of reading the same air gives the same pressure. */
  @Property
  void humidityWaysAgreeInStillAir(
      @ForAll @DoubleRange(min = -20, max = 40) double t,
      @ForAll @DoubleRange(min = 5, max = 100) double rh) {
    double ea = SaturationVapour.kPa(t) * rh / 100;
    LocalDate date = LocalDate.of(2027, 6, 1);
    WeatherDay day = WeatherDay.of(date, t, t, 0);
    double no = Double.NaN;
    WeatherDay[] ways = {
      day.withHumidity(DewPoint.celsius(ea), 1, 2, 3),
      day.withHumidity(no, rh, rh, 3),
      day.withHumidity(no, no, rh, 3),
      day.withHumidity(no, no, no, rh)
    };
    for (WeatherDay way : ways) {
      assertThat(ActualVapour.bestKPa(way)).isCloseTo(ea, within(1e-9 * ea));
    }
    assertThat(ActualVapour.bestKPa(day)).isEqualTo(SaturationVapour.kPa(t));
  }

  /** A season cut in two and joined is the season. */
  @Property(tries = 100)
  void thirstAddsUp(
      @ForAll @IntRange(min = -30, max = 60) int transplant,
      @ForAll @IntRange(min = 0, max = 90) int growing,
      @ForAll @IntRange(min = 0, max = 60) int cut) {
    double[] et0 = SeasonEt0.withoutWeather(60).mm();
    double[] whole = new double[60];
    double[] parts = new double[60];
    Growth growth = Usual.stages(growing);
    PlantThirst.add(whole, new Planting(3, 0.05, growth, transplant, transplant + growing), et0, 1);
    double[] first = new double[cut];
    double[] second = new double[60 - cut];
    PlantThirst.add(
        first,
        new Planting(3, 0.05, growth, transplant, transplant + growing),
        java.util.Arrays.copyOf(et0, cut),
        1);
    PlantThirst.add(
        second,
        new Planting(3, 0.05, growth, transplant - cut, transplant - cut + growing),
        java.util.Arrays.copyOf(et0, 60 - cut),
        1);
    System.arraycopy(first, 0, parts, 0, cut);
    System.arraycopy(second, 0, parts, cut, 60 - cut);
    assertThat(parts).containsExactly(whole);
    for (int i = 0; i < 60; i++) {
      boolean stands = i >= transplant && i < transplant + growing;
      assertThat(whole[i] > 0).isEqualTo(stands);
    }
  }
}
