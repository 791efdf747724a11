package leat.command.build;

import leat.answer.Column;
import leat.answer.Show;
import leat.quantity.Units;

/** Columns of {@code leat wind}. */
final class WindColumns {
  static final Show WIND = Show.of(Units.M_S, Units.MPH, 3);
  static final Show FORCE = Show.N.digits(3);

  static final Column GUST = Column.of("gust_m_s", "gust at the tower", WIND);
  static final Column MEAN = Column.of("mean_m_s", "mean in open country", WIND);
  static final Column TERRAIN = Column.plain("terrain", "terrain");
  static final Column PASSES = Column.plain("passes", "passes");
  static final Column FACTOR = Column.number("gust_over_mean", "gust over mean", 3);
  static final Column DENSITY = Column.of("air_kg_m3", "air", Show.of(Units.KG_M3, 3));

  static final Column STATE = Column.plain("state", "state");
  static final Column SOLUTION = Column.of("solution_L", "solution", Show.L);
  static final Column MASS = Column.of("total_mass_kg", "mass in all", Show.KG);
  static final Column OVERTURNING = Column.number("overturning_Nm", "wind's moment, N m", 3);
  static final Column RIGHTING = Column.number("righting_Nm", "weight's moment, N m", 3);
  static final Column SAFETY = Column.number("safety_factor", "safety factor", 3);
  static final Column USE = Column.number("utilisation", "use, 1 is the limit", 3);
  static final Column TIPS = Column.of("tips_at_m_s", "tips at (gust)", WIND);
  static final Column SLIDES = Column.of("slides_at_m_s", "slides at (gust)", WIND);
  static final Column LID = Column.of("lid_tips_at_m_s", "tower off its lid at", WIND);
  static final Column MEAN_THERE = Column.of("mean_wind_m_s", "as mean wind", WIND);
  static final Column BEAUFORT = Column.plain("beaufort", "Beaufort");

  static final Column TOWER = Column.plain("tower", "tower");
  static final Column JOINT = Column.plain("joint", "joint");
  static final Column HEIGHT = Column.of("height_m", "height", Show.M);
  static final Column OPENS = Column.of("opens_at_m_s", "opens at (gust)", WIND);
  static final Column ROLLS = Column.of("rolls_at_m_s", "rolls off at (gust)", WIND);
  static final Column TIE = Column.of("tie_to_stay_shut_N", "tie to stay shut", FORCE);

  static final Column LINE = Column.plain("line", "lines");
  static final Column TENSION = Column.of("tension_N", "pull in the worst line", FORCE);
  static final Column UPLIFT = Column.of("peg_uplift_N", "its peg, upwards", FORCE);
  static final Column LEVEL = Column.of("peg_horizontal_N", "its peg, sideways", FORCE);
  static final Column LENGTH = Column.of("line_length_m", "length of a line", Show.M);
  static final Column ANGLE = Column.of("angle_deg", "angle from the level", Show.of(Units.DEG, 3));
  static final Column ANCHOR = Column.plain("anchor", "tied to");
  static final Column BREAKING = Column.of("breaking_N", "breaking load to buy", FORCE);
  static final Column BEARS = Column.plain("bears", "bears it");

  /** Values that the text alone tells. */
  static final Column NAME = Column.plain("name", "name");

  static final Column COUNT = Column.plain("count", "count");
  static final Column LEAST_SAFETY = Column.number("least_safety", "least safety", 4);
  static final Column SLIDE_SAFETY = Column.number("slide_safety", "safety against sliding", 3);
  static final Column PASSES_TO = Column.of("passes_to_m_s", "passes to", WIND);
  static final Column MORE_MASS = Column.of("more_mass_kg", "mass to add in the foot", Show.KG);
  static final Column KEEP = Column.of("keep_L", "litres to keep", Show.L);
  static final Column FULL = Column.of("full_L", "full", Show.L);

  private WindColumns() {}

  static Column[] site() {
    return new Column[] {GUST, MEAN, TERRAIN, PASSES, FACTOR, DENSITY};
  }

  static Column[] states() {
    return new Column[] {
      STATE,
      SOLUTION,
      MASS,
      OVERTURNING,
      RIGHTING,
      SAFETY,
      USE,
      TIPS,
      SLIDES,
      LID,
      MEAN_THERE,
      BEAUFORT,
      PASSES,
      PASSES_TO,
      MORE_MASS,
      KEEP
    };
  }

  static Column[] joints() {
    return new Column[] {TOWER, JOINT, HEIGHT, OPENS, ROLLS, TIE};
  }

  static Column[] lines() {
    return new Column[] {
      TOWER, LINE, TENSION, UPLIFT, LEVEL, LENGTH, ANGLE, ANCHOR, BREAKING, BEARS
    };
  }
}
