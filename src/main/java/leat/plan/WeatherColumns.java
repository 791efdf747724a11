package leat.plan;

/** Columns of a weather file: the key that names another one, and the usual name. */
public final class WeatherColumns {
  private static final String[][] COLUMNS = {
    {"date", "date"},
    {"tmin", "tmin_C"},
    {"tmax", "tmax_C"},
    {"rain", "rain_mm"},
    {"dew_point", "dew_point_C"},
    {"rh_min", "rh_min_pct"},
    {"rh_max", "rh_max_pct"},
    {"rh_mean", "rh_mean_pct"},
    {"sun", "sun_h"},
    {"radiation", "radiation_MJ_m2"},
    {"wind", "wind_m_s"},
    {"et0", "et0_mm"},
    {"plants", "plants_L"},
    {"open", "open_L"},
  };

  private WeatherColumns() {}

  /** The keys, date first. */
  public static String[] keys() {
    String[] keys = new String[COLUMNS.length];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = COLUMNS[i][0];
    }
    return keys;
  }

  /** The usual name of column {@code i} of {@link #keys}. */
  public static String usual(int i) {
    return COLUMNS[i][1];
  }
}
