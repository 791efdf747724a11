package leat.check;

import java.util.List;
import leat.climate.SeasonWeather;
import leat.energy.Dates;
import leat.energy.DryLimit;
import leat.energy.Overlap;
import leat.energy.Timetable;
import leat.energy.Windows;
import leat.hydraulics.Derate;
import leat.hydraulics.ManifoldFlow;
import leat.level.Sender;
import leat.level.Tank;
import leat.parts.BuildList;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.season.YearRuns;
import leat.stability.SiteWind;
import leat.system.BuildOf;
import leat.system.DeckOf;
import leat.system.DerateOf;
import leat.system.DutyOf;
import leat.system.MoneyOf;
import leat.system.PartsOf;
import leat.system.SeasonOf;
import leat.system.SenderOf;
import leat.system.SetValves;
import leat.system.StandingOf;
import leat.system.TankOf;
import leat.system.TimetableOf;
import leat.system.TowerAt;
import leat.system.Waterway;
import leat.system.WindOf;
import leat.system.ZoneOf;
import leat.weather.SeasonFile;
import leat.weather.WeatherFile;

/** A plan under judgement, with its models solved once for all rules. */
public final class Subject {
  private final Plan plan;
  private final Taken taken = new Taken();
  private Derate believed;
  private OwnLimits limits;
  private Tank tank;
  private Waterway waterway;
  private Sender sender;
  private SetValves valves;
  private ManifoldFlow flowsLow;
  private ManifoldFlow flowsFull;
  private TowerAt[] low;
  private TowerAt[] full;
  private TowerAt[] openLow;
  private TowerAt[] openFull;
  private Timetable timetable;
  private StandingOf standing;
  private SiteWind wind;
  private Dates season;
  private Overlap dayAndNight;
  private List<SeasonWeather> seasonWeather;
  private WeatherFile weatherFile;
  private SeasonOf seasonLaid;
  private YearRuns seasonRuns;
  private MoneyOf money;
  private PartsOf parts;
  private BuildList build;
  private DeckOf deck;
  private DutyOf duty;
  private Designs designs;

  /** The plan to judge. */
  public Subject(Plan plan) {
    this(plan, null);
  }

  /** The same with a derate that was found before, on the tower as written; null to find it. */
  public Subject(Plan plan, Derate believed) {
    this.plan = plan;
    this.believed = believed;
  }

  /** One of many designs of a plan, which hold what all of them share. */
  Subject(Plan plan, Derate believed, Designs designs) {
    this(plan, believed);
    this.designs = designs;
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** The defaults that its judgement takes. */
  public Taken taken() {
    return taken;
  }

  /** A section of the plan. */
  public Section section(String name) {
    return plan.section(name);
  }

  /** The tank. */
  public Tank tank() {
    if (tank == null) {
      tank = TankOf.of(plan.section("tank"), taken);
    }
    return tank;
  }

  /** The sender in its tank. */
  public Sender sender() {
    if (sender == null) {
      sender = SenderOf.of(plan, taken);
    }
    return sender;
  }

  /** The water's way, all valves open. */
  public Waterway waterway() {
    if (waterway == null) {
      waterway = Waterway.judged(plan, believed(), taken);
    }
    return waterway;
  }

  /** How much of the printed head is believed, on the tower as written. */
  public Derate believed() {
    if (believed == null) {
      believed = DerateOf.forVerdict(plan, taken);
    }
    return believed;
  }

  /** The same when some rule has asked for it, else null. */
  public Derate believedSoFar() {
    return believed;
  }

  /** The valves of the plan, set at the refill mark to the flows that are wanted. */
  public SetValves valves() {
    if (valves == null) {
      valves = SetValves.of(waterway());
    }
    return valves;
  }

  /** Flows that really run with the tank at its refill mark. */
  public ManifoldFlow flowsLow() {
    if (flowsLow == null) {
      flowsLow = valves().low(waterway());
    }
    return flowsLow;
  }

  /** Flows that really run with the tank full. */
  public ManifoldFlow flowsFull() {
    if (flowsFull == null) {
      flowsFull = valves().flows(waterway(), waterway().full());
    }
    return flowsFull;
  }

  /** A tower with the tank at its refill mark. */
  public TowerAt low(int t) {
    if (low == null) {
      low = towers(flowsLow());
    }
    return low[t];
  }

  /** A tower with the tank full. */
  public TowerAt full(int t) {
    if (full == null) {
      full = towers(flowsFull());
    }
    return full[t];
  }

  /** A tower at the refill mark with all valves open, as {@code leat pump} tells it. */
  public TowerAt openLow(int t) {
    if (openLow == null) {
      openLow = valves().any() ? towers(waterway().flows(waterway().low())) : towers(flowsLow());
    }
    return openLow[t];
  }

  /** The same with the tank full. */
  public TowerAt openFull(int t) {
    if (openFull == null) {
      openFull = valves().any() ? towers(waterway().flows(waterway().full())) : towers(flowsFull());
    }
    return openFull[t];
  }

  private TowerAt[] towers(ManifoldFlow flows) {
    TowerAt[] towers = new TowerAt[waterway().towers()];
    for (int t = 0; t < towers.length; t++) {
      towers[t] = new TowerAt(waterway(), t, flows);
    }
    return towers;
  }

  /** Tank and towers before the wind. */
  public StandingOf standing() {
    if (standing == null) {
      standing = StandingOf.of(plan, taken);
    }
    return standing;
  }

  /** The site's wind. */
  public SiteWind wind() {
    if (wind == null) {
      wind = WindOf.of(plan.section("site"), taken);
    }
    return wind;
  }

  /** Density of the air, kg/m3. */
  public double airDensity() {
    return WindOf.density(plan.section("site"), taken);
  }

  /** Pressure of the site's gust, Pa. */
  public double windPressure() {
    return wind().pressure(airDensity());
  }

  /** The timings. */
  public Timetable timetable() {
    if (timetable == null) {
      timetable = TimetableOf.of(plan);
    }
    return timetable;
  }

  /** The season's dates. */
  public Dates season() {
    if (season == null) {
      season = ZoneOf.season(plan, taken);
    }
    return season;
  }

  /** Seconds of the season in which each timing is in force, by day and at night. */
  public Overlap dayAndNight() {
    if (dayAndNight == null) {
      Windows parts = Windows.dayAndNight(DryLimit.usualNight());
      dayAndNight = Overlap.of(season(), timetable().windows(), parts);
    }
    return dayAndNight;
  }

  /**
   * The season's days in every year of its weather.
   *
   * @throws leat.numeric.Impossible when its weather cannot be read
   */
  public SeasonOf seasonLaid() {
    if (seasonLaid == null) {
      seasonLaid = SeasonFile.judged(plan, weatherFile(), taken);
    }
    return seasonLaid;
  }

  /**
   * The season's weather in every year, which needs neither crops nor tank.
   *
   * @throws leat.numeric.Impossible when it cannot be read
   */
  public List<SeasonWeather> seasonWeather() {
    if (seasonWeather == null) {
      seasonWeather = SeasonFile.judgedWeather(plan, weatherFile());
    }
    return seasonWeather;
  }

  /** The weather file, read once for all rules; null when the plan names none. */
  private WeatherFile weatherFile() {
    if (weatherFile == null) {
      WeatherFile read = designs == null ? null : designs.weather();
      weatherFile = read == null ? SeasonFile.judgedFile(plan) : read;
    }
    return weatherFile;
  }

  /** The runs of the season. */
  public YearRuns seasonRuns() {
    if (seasonRuns == null) {
      seasonRuns = YearRuns.of(seasonLaid().tank(), seasonLaid().years(), seasonLaid().thirst());
    }
    return seasonRuns;
  }

  /** Energy and money of the season. */
  public MoneyOf money() {
    if (money == null) {
      money = MoneyOf.of(plan, seasonLaid(), taken);
    }
    return money;
  }

  /** What the towers take to build. */
  public PartsOf parts() {
    if (parts == null) {
      parts = PartsOf.of(plan, null, taken);
    }
    return parts;
  }

  /** The list of their parts. */
  public BuildList build() {
    if (build == null) {
      build = BuildOf.of(plan, parts().towers(), taken);
    }
    return build;
  }

  /** What stands on the deck. */
  public DeckOf deck() {
    if (deck == null) {
      deck = DeckOf.of(plan, parts(), taken);
    }
    return deck;
  }

  /** What the timings do over the season, else over a year. */
  public DutyOf duty() {
    if (duty == null) {
      duty = DutyOf.of(plan, timetable(), taken);
    }
    return duty;
  }

  private OwnLimits limits() {
    if (limits == null) {
      limits = OwnLimits.of(plan.root().named("limits"));
    }
    return limits;
  }

  /** Refuses limits of rules that there are not, and what is no limit. */
  void checkLimits() {
    limits();
  }

  /** Whether the plan switches a rule off. */
  public boolean isOff(Rule rule) {
    return limits().isOff(rule);
  }

  /**
   * The plan's own limit for a rule, in the rule's base unit, or null.
   *
   * @throws leat.numeric.Impossible when it cannot be kept
   */
  public Double ownLimit(Rule rule) {
    return limits().of(rule);
  }

  /** The plan's own limit for a rule, else the value of a key that is the limit. */
  public double limitOr(Rule rule, Section section, String key) {
    Double own = ownLimit(rule);
    return own != null ? own : section.need(key);
  }
}
