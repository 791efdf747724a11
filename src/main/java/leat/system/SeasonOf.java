package leat.system;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.climate.LeftOutYear;
import leat.climate.Method;
import leat.climate.MonthWeather;
import leat.climate.MonthlyTable;
import leat.climate.OpenWater;
import leat.climate.ReferenceDay;
import leat.climate.SeasonEt0;
import leat.climate.SeasonWeather;
import leat.climate.SeasonYears;
import leat.climate.Site;
import leat.climate.Weather;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.plan.Value;
import leat.quantity.Units;
import leat.season.AwayOutcome;
import leat.season.CropPart;
import leat.season.SeasonDays;
import leat.season.TankPlan;
import leat.season.Thirst;
import leat.season.YearDays;
import leat.season.YearRuns;

/** The season of a plan: its dates, its tank, its crops, and its days in every year of weather. */
public final class SeasonOf {
  private final LocalDate from;
  private final int days;
  private final TankPlan tank;
  private final List<Grown> crops;
  private final double exposure;
  private final double openM2;
  private final List<SeasonWeather> weather = new ArrayList<>();
  private final List<LeftOutYear> leftOut = new ArrayList<>();
  private final List<YearDays> years = new ArrayList<>();
  private final List<SeasonEt0> et0 = new ArrayList<>();
  private final List<List<CropPart>> parts = new ArrayList<>();
  private final List<Method> methods = new ArrayList<>();
  private final Weather file;
  private final SiteOf place;
  private final Value drinks;
  private final Value sown;
  private final Value thirst;
  private final List<int[]> away = new ArrayList<>();
  private Site site;

  private SeasonOf(Plan plan, Weather file, Taken taken) {
    this.file = file;
    place = SiteOf.read(plan, taken);
    drinks = plan.root().value("drinks");
    sown = plan.root().value("crops");
    thirst = plan.root().value("thirst");
    Section season = plan.section("season");
    from = (LocalDate) season.needRaw("from");
    LocalDate to = (LocalDate) season.needRaw("to");
    days = (int) ChronoUnit.DAYS.between(from, to) + 1;
    tank = TankPlanOf.of(plan, taken);
    SeasonYears found = weather(plan, file);
    weather.addAll(found.years());
    leftOut.addAll(found.leftOut());
    boolean litres = !weather.isEmpty() && weather.get(0).plantsL() != null;
    boolean alone = weather.isEmpty() && drinks.isKnown();
    crops = litres || alone ? List.of() : Grown.of(plan, taken);
    exposure = weather.isEmpty() ? 1 : SiteOf.exposure(plan, taken);
    openM2 = ThirstOf.openM2(plan, taken);
    List<Section> spans = season.sections("away");
    for (int i = 0; i < spans.size(); i++) {
      away.add(new int[] {day(spans.get(i), "from"), day(spans.get(i), "to")});
    }
  }

  /** Number of a date among the days of the season. */
  private int day(Section span, String key) {
    return (int) ChronoUnit.DAYS.between(from, (LocalDate) span.needRaw(key));
  }

  /**
   * The season of a plan.
   *
   * @param plan the plan
   * @param file its weather, or null when it names no file
   * @param taken notes the defaults that are taken
   * @throws Refused with the key that is missing; the caller looks at {@link #leftOut} first when
   *     there is no year
   */
  public static SeasonOf of(Plan plan, Weather file, Taken taken) {
    return new SeasonOf(plan, file, taken);
  }

  /**
   * The weather of a plan's season alone, which needs neither crops nor tank.
   *
   * @param plan the plan
   * @param file its weather, or null when it names no file
   */
  public static SeasonYears weather(Plan plan, Weather file) {
    Section season = plan.section("season");
    LocalDate from = (LocalDate) season.needRaw("from");
    int days = (int) ChronoUnit.DAYS.between(from, (LocalDate) season.needRaw("to")) + 1;
    if (file != null) {
      return file.season(from, days);
    }
    return new SeasonYears(
        hasMonths(plan) ? List.of(months(plan).season(from, days)) : List.of(), List.of());
  }

  /**
   * Lays the days of all years.
   *
   * @param taken notes the defaults that are taken
   * @throws Refused when thirst or place is missing
   */
  public SeasonOf laid(Taken taken) {
    if (weather.isEmpty()) {
      year(SeasonWeather.NO_YEAR, null, SeasonEt0.withoutWeather(days));
    }
    for (int i = 0; i < weather.size(); i++) {
      year(weather.get(i).year(), weather.get(i), reference(weather.get(i), taken));
    }
    return this;
  }

  private void year(int year, SeasonWeather of, SeasonEt0 reference) {
    double[] given = of == null ? null : of.plantsL();
    double[] plants = new double[days];
    List<CropPart> own = new ArrayList<>();
    Method method = given != null ? Method.LITRES_FILE : reference.method();
    if (given != null) {
      plants = given;
    } else if (drinksAlone()) {
      Arrays.fill(plants, Units.L_D.fromBase(drinks.need()));
      method = Method.DRINKS;
    } else {
      grown(plants, own, reference.mm());
    }
    double[] open = open(of, reference, method);
    double[] rain = of == null ? new double[days] : of.rainMm();
    et0.add(reference);
    parts.add(own);
    methods.add(method);
    years.add(new YearDays(year, away(SeasonDays.of(plants, open, rain))));
  }

  /** Whether one figure stands for all thirst. */
  private boolean drinksAlone() {
    return crops.isEmpty() && drinks.isKnown();
  }

  private void grown(double[] plants, List<CropPart> own, double[] mm) {
    if (crops.isEmpty()) {
      sown.need();
    }
    for (int c = 0; c < crops.size(); c++) {
      Grown crop = crops.get(c);
      double[] litres = crop.litres(from, mm, exposure);
      for (int t = 0; t < days; t++) {
        plants[t] += litres[t];
      }
      own.add(new CropPart(crop.name(), crop.batches().sowing().pots(), litres));
    }
  }

  private double[] open(SeasonWeather of, SeasonEt0 reference, Method method) {
    double[] given = of == null ? null : of.openL();
    if (given != null) {
      return given;
    }
    boolean dry = of == null || method == Method.DRINKS || reference == null;
    return dry ? new double[days] : OpenWater.litres(reference.mm(), openM2, exposure);
  }

  /** The season's reference evapotranspiration; null when the file gives litres alone. */
  private SeasonEt0 reference(SeasonWeather of, Taken taken) {
    boolean bare = true;
    boolean given = true;
    for (int i = 0; i < of.size(); i++) {
      bare &= ReferenceDay.methodOf(of.day(i)) == Method.DRINKS;
      given &= ReferenceDay.methodOf(of.day(i)) == Method.ET0_FILE;
    }
    boolean litres = of.plantsL() != null;
    if (litres && (bare || of.openL() != null || !place.latitude().isKnown())) {
      return null;
    }
    return SeasonEt0.of(of, given ? Site.of(0, 0) : site(taken));
  }

  private SeasonDays away(SeasonDays all) {
    SeasonDays result = all;
    for (int i = 0; i < away.size(); i++) {
      result = result.away(away.get(i)[0], away.get(i)[1]);
    }
    return result;
  }

  /** The place; refused without a latitude. */
  private Site site(Taken taken) {
    if (site == null) {
      site = place.site(!Double.isNaN(weather.get(0).day(0).windMs()), false, taken);
    }
    return site;
  }

  /** First day. */
  public LocalDate from() {
    return from;
  }

  /** Last day. */
  public LocalDate to() {
    return from.plusDays(days - 1L);
  }

  /** Number of days. */
  public int days() {
    return days;
  }

  /** The tank. */
  public TankPlan tank() {
    return tank;
  }

  /** The crops; empty when others say what is drunk. */
  public List<Grown> crops() {
    return crops;
  }

  /** Factor of the place on the thirst, -. */
  public double exposure() {
    return exposure;
  }

  /** Years of the weather file that do not cover the season. */
  public List<LeftOutYear> leftOut() {
    return leftOut;
  }

  /** The weather file's rows; null without a file. */
  public Weather file() {
    return file;
  }

  /** Whether there is weather of any kind. */
  public boolean hasWeather() {
    return !weather.isEmpty();
  }

  /** Days of every year. */
  public List<YearDays> years() {
    return years;
  }

  /** Weather of a year; null without any. */
  public SeasonWeather weather(int i) {
    return weather.isEmpty() ? null : weather.get(i);
  }

  /** The crops' parts in the thirst of a year. */
  public List<CropPart> parts(int i) {
    return parts.get(i);
  }

  /** How the thirst of a year was found. */
  public Method method(int i) {
    return methods.get(i);
  }

  /** Reference evapotranspiration of a year; null when the file gives litres alone. */
  public SeasonEt0 et0(int i) {
    return et0.get(i);
  }

  /** The doubt about the thirst. */
  public Thirst thirst() {
    return ThirstOf.doubt(thirst);
  }

  /**
   * Thirst of a date at a factor of 1, L, in the weather of its own year when the file has it, else
   * the mean of all years; NaN outside the season.
   */
  public double thirstL(LocalDate date) {
    long t = ChronoUnit.DAYS.between(from, date);
    if (t < 0 || t >= days) {
      return Double.NaN;
    }
    double sum = 0;
    for (int y = 0; y < years.size(); y++) {
      SeasonDays one = years.get(y).days();
      double litres = one.plantsL((int) t) + one.openL((int) t);
      if (years.get(y).year() == from.getYear()) {
        return litres;
      }
      sum += litres;
    }
    return sum / years.size();
  }

  /** What each time away does in the shown year. */
  public AwayOutcome[] away(YearRuns runs) {
    return AwayOutcome.of(tank, runs.days(), runs.thirst().middle(), parts(shown(runs)));
  }

  /** Place of the shown year among all years. */
  public int shown(YearRuns runs) {
    int i = 0;
    while (years.get(i).year() != runs.year()) {
      i++;
    }
    return i;
  }

  /** Whether the plan has a climate table. */
  public static boolean hasMonths(Plan plan) {
    return plan.section("site").has("months");
  }

  /** The climate table of a plan. */
  public static MonthlyTable months(Plan plan) {
    Section site = plan.section("site");
    List<Section> rows = site.sections("months");
    if (rows.size() != 12) {
      throw new Refused(SeasonErrors.twelveMonths(site, rows.size()));
    }
    List<MonthWeather> months = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Section row = rows.get(i);
      Double rain = row.maybe("rain");
      Double days = row.maybe("rain_days");
      months.add(
          new MonthWeather(
              row.need("tmin"),
              row.need("tmax"),
              rain == null ? 0 : Units.MM.fromBase(rain),
              days == null ? MonthWeather.UNKNOWN : days.intValue()));
    }
    return new MonthlyTable(months);
  }
}
