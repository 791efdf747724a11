package leat.check;

import java.util.List;
import leat.climate.SeasonWeather;
import leat.energy.Dates;
import leat.energy.Overlap;
import leat.energy.Timetable;
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

/** A plan under judgement, with its models solved once for all rules. */
public final class Subject {
  private final Plan plan;
  private final Taken taken = new Taken();
  private final SubjectWater water;
  private final SubjectSeason season;
  private OwnLimits limits;
  private Tank tank;
  private Sender sender;
  private Timetable timetable;
  private StandingOf standing;
  private SiteWind wind;
  private PartsOf parts;
  private BuildList build;
  private DeckOf deck;
  private DutyOf duty;

  /** The plan to judge. */
  public Subject(Plan plan) {
    this(plan, null);
  }

  /** The same with a derate that was found before, on the tower as written; null to find it. */
  public Subject(Plan plan, Derate believed) {
    this(plan, believed, null);
  }

  /** One of many designs of a plan, which hold what all of them share; null for one alone. */
  Subject(Plan plan, Derate believed, Designs designs) {
    this.plan = plan;
    this.water = new SubjectWater(plan, believed, taken);
    this.season = new SubjectSeason(this, designs);
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
    return water.waterway();
  }

  /** How much of the printed head is believed, on the tower as written. */
  public Derate believed() {
    return water.believed();
  }

  /** The valves of the plan, set at the refill mark to the flows that are wanted. */
  public SetValves valves() {
    return water.valves();
  }

  /** Flows that really run with the tank at its refill mark. */
  public ManifoldFlow flowsLow() {
    return water.flowsLow();
  }

  /** Flows that really run with the tank full. */
  public ManifoldFlow flowsFull() {
    return water.flowsFull();
  }

  /** A tower with the tank at its refill mark. */
  public TowerAt low(int t) {
    return water.low(t);
  }

  /** A tower with the tank full. */
  public TowerAt full(int t) {
    return water.full(t);
  }

  /** A tower at the refill mark with all valves open, as {@code leat pump} tells it. */
  public TowerAt openLow(int t) {
    return water.openLow(t);
  }

  /** The same with the tank full. */
  public TowerAt openFull(int t) {
    return water.openFull(t);
  }

  /** The season's dates. */
  public Dates season() {
    return season.dates();
  }

  /** Seconds of the season in which each timing is in force, by day and at night. */
  public Overlap dayAndNight() {
    return season.dayAndNight();
  }

  /**
   * The season's days in every year of its weather.
   *
   * @throws leat.numeric.Impossible when its weather cannot be read
   */
  public SeasonOf seasonLaid() {
    return season.laid();
  }

  /**
   * The season's weather in every year, which needs neither crops nor tank.
   *
   * @throws leat.numeric.Impossible when it cannot be read
   */
  public List<SeasonWeather> seasonWeather() {
    return season.weather();
  }

  /** The runs of the season. */
  public YearRuns seasonRuns() {
    return season.runs();
  }

  /** Energy and money of the season. */
  public MoneyOf money() {
    return season.money();
  }

  /** The same when some rule has asked for it, else null. */
  public Derate believedSoFar() {
    return water.believedSoFar();
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
