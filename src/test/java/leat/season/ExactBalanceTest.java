package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Second route: the sheet's seasons in decimals of 60 digits, written from the rules alone, with
 * the doses searched by halving instead of solved.
 */
class ExactBalanceTest {
  private static final MathContext DIGITS = new MathContext(60);
  private static final BigDecimal ZERO = BigDecimal.ZERO;

  static Stream<Row> seasons() {
    return Sheet.of("season-balance.csv").atLeast(8);
  }

  private Row in;
  private BigDecimal v;
  private BigDecimal s;
  private BigDecimal w;
  private BigDecimal m;
  private BigDecimal q;

  @ParameterizedTest
  @MethodSource("seasons")
  void agreesToTheLastDigits(Row season) {
    in = season;
    List<DayRow> rows = Season.run(Cases.plan(season), Cases.days(season.id()), 1).days();
    List<Row> daily = Cases.daily(season.id());
    v = num("volume_start_L");
    s = v.multiply(num("ec_start_mS_cm"));
    int filled = -1;
    int changed = -1;
    BigDecimal added = ZERO;
    for (int t = 0; t < daily.size(); t++) {
      w = ZERO;
      m = ZERO;
      q = ZERO;
      rainAndThirst(daily.get(t));
      if (t < daily.size() - 1) {
        if (changeDue(t - changed, added)) {
          drain(v.subtract(num("heel_L")));
          fill();
          changed = t;
          filled = t;
          added = ZERO;
        } else if (topUpDue(t - filled)) {
          topUp();
          added = added.add(w);
          filled = t;
        } else if (season.has("dose_below_mS_cm") && ec().compareTo(num("dose_below_mS_cm")) < 0) {
          dose();
        }
      }
      DayRow row = rows.get(t);
      near(t, row.volumeL(), v);
      near(t, row.saltMsCmL(), s);
      near(t, row.waterL(), w);
      near(t, row.concentrateMl(), m);
      near(t, row.drainedL(), q);
    }
  }

  private void near(int t, double value, BigDecimal exact) {
    assertThat(value).as(in.id() + " day " + t).isCloseTo(exact.doubleValue(), within(1e-9));
  }

  private BigDecimal num(String column) {
    return new BigDecimal(in.text(column));
  }

  private BigDecimal ec() {
    return s.divide(v, DIGITS);
  }

  private void rainAndThirst(Row day) {
    BigDecimal rain =
        new BigDecimal(day.text("in_rain_mm")).multiply(num("rain_area_m2")).multiply(num("catch"));
    v = v.add(rain);
    s = s.add(rain.multiply(num("rain_ec_mS_cm")));
    BigDecimal over = v.subtract(num("rim_L"));
    if (over.signum() > 0) {
      s = s.subtract(over.multiply(ec()));
      v = num("rim_L");
    }
    BigDecimal plants = new BigDecimal(day.text("in_plants_L"));
    BigDecimal asked = plants.add(new BigDecimal(day.text("in_open_L")));
    BigDecimal use = asked.min(v.subtract(num("intake_L")).max(ZERO));
    if (asked.signum() > 0) {
      BigDecimal drunk = plants.multiply(use).divide(asked, DIGITS);
      s = s.subtract(num("uptake_ec_mS_cm").multiply(drunk).min(s));
    }
    v = v.subtract(use);
    s = s.round(DIGITS);
  }

  private boolean changeDue(int days, BigDecimal added) {
    return in.has("change_days") && days >= (int) in.num("change_days")
        || in.has("change_added")
            && added.compareTo(num("change_added").multiply(num("full_L"))) >= 0;
  }

  private boolean topUpDue(int days) {
    return in.text("refill").equals("low") && v.compareTo(num("low_L")) <= 0
        || in.text("refill").equals("every") && days >= (int) in.num("refill_days");
  }

  private void drain(BigDecimal litres) {
    if (litres.signum() > 0) {
      s = s.subtract(s.multiply(litres).divide(v, DIGITS));
      v = v.subtract(litres);
      q = litres;
    }
  }

  private void topUp() {
    BigDecimal gap = num("full_L").subtract(v).max(ZERO);
    BigDecimal ecw = num("water_ec_mS_cm");
    BigDecimal target = num("target_ec_mS_cm");
    BigDecimal plain = s.add(ecw.multiply(gap)).divide(v.add(gap), DIGITS);
    boolean dilute =
        in.has("dilute_above_mS_cm")
            && ecw.compareTo(target) < 0
            && target.compareTo(ec()) < 0
            && plain.compareTo(num("dilute_above_mS_cm")) > 0;
    if (!dilute) {
      fill();
      return;
    }
    BigDecimal room = v.add(gap);
    BigDecimal strong = ec();
    BigDecimal low = ZERO;
    BigDecimal high = v.subtract(num("heel_L"));
    for (int i = 0; i < 150; i++) {
      BigDecimal out = low.add(high).divide(BigDecimal.valueOf(2), DIGITS);
      BigDecimal salt = strong.multiply(v.subtract(out)).add(ecw.multiply(gap.add(out)));
      if (salt.divide(room, DIGITS).compareTo(target) > 0) {
        low = out;
      } else {
        high = out;
      }
    }
    drain(low);
    pour(gap.add(low), ZERO);
  }

  /** Searches the concentrate that makes the full tank the target. */
  private void fill() {
    BigDecimal gap = num("full_L").subtract(v);
    if (gap.signum() <= 0 || atFull(gap, gap.multiply(thousand())).signum() < 0) {
      dose();
    } else if (atFull(gap, ZERO).signum() > 0) {
      pour(gap, ZERO);
    } else {
      BigDecimal ml = ZERO;
      BigDecimal high = gap.multiply(thousand());
      for (int i = 0; i < 170; i++) {
        BigDecimal half = ml.add(high).divide(BigDecimal.valueOf(2), DIGITS);
        if (atFull(gap, half).signum() < 0) {
          ml = half;
        } else {
          high = half;
        }
      }
      pour(gap.subtract(ml.movePointLeft(3)), ml);
    }
  }

  private static BigDecimal thousand() {
    return BigDecimal.valueOf(1000);
  }

  private BigDecimal atFull(BigDecimal gap, BigDecimal ml) {
    BigDecimal water = gap.subtract(ml.movePointLeft(3));
    return s.add(num("water_ec_mS_cm").multiply(water))
        .add(strength().multiply(ml))
        .subtract(num("target_ec_mS_cm").multiply(num("full_L")));
  }

  private BigDecimal strength() {
    return num("rate_ec_mS_cm").divide(num("rate_mL_L"), DIGITS);
  }

  private void dose() {
    BigDecimal target = num("target_ec_mS_cm");
    BigDecimal ml = ZERO;
    BigDecimal high = v.multiply(thousand());
    for (int i = 0; i < 170; i++) {
      BigDecimal half = ml.add(high).divide(BigDecimal.valueOf(2), DIGITS);
      BigDecimal made =
          s.add(strength().multiply(half)).divide(v.add(half.movePointLeft(3)), DIGITS);
      if (made.compareTo(target) < 0) {
        ml = half;
      } else {
        high = half;
      }
    }
    pour(ZERO, ml);
  }

  private void pour(BigDecimal litres, BigDecimal ml) {
    w = litres;
    m = ml;
    v = v.add(litres).add(ml.movePointLeft(3));
    s = s.add(num("water_ec_mS_cm").multiply(litres)).add(strength().multiply(ml)).round(DIGITS);
  }
}
