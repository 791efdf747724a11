package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.stability.Cautions;
import leat.stability.Equilibrium;
import leat.stability.SiteWind;
import leat.system.StandingOf;

/** The gusts that tank, joints and lines of a plan take, and what to mind of them. */
final class WindLimits {
  private final StandingOf standing;
  private final SiteWind wind;
  private final double pressure;

  WindLimits(StandingOf standing, SiteWind wind, double pressure) {
    this.standing = standing;
    this.wind = wind;
    this.pressure = pressure;
  }

  void write(Answer answer, Row site, Answer joints, Answer lines) {
    figures(answer, site);
    joints(answer, joints);
    lines(answer, lines);
    minds(answer, lines);
    if (standing.heldByLines()) {
      footMind(answer, standing.slideSafety(pressure));
    }
  }

  private void figures(Answer answer, Row site) {
    each(answer, "tank", "{state}", null);
    each(answer, "solution", "{solution_L}", null);
    each(answer, "tips at (gust)", "{tips_at_m_s}", null);
    if (wind.gustOverMean() != null) {
      each(answer, "as mean wind", "{mean_wind_m_s}, Beaufort {beaufort}", "10 min, open country");
    }
    each(answer, "safety factor", "{safety_factor}", wanted());
    each(answer, "slides at (gust)", "{slides_at_m_s}", null);
    if (answer.row(0).get(WindColumns.LID) != null) {
      each(answer, "off its lid at", "{lid_tips_at_m_s}", lidRemark());
    }
    answer.block();
    answer.figure(
        "the site's wind",
        site,
        wind.mean() == null
            ? "{gust_m_s} gust"
            : "{gust_m_s} gust, {mean_m_s} mean in open country: {gust_over_mean} times");
  }

  private static String wanted() {
    Row least = Row.aside(WindColumns.LEAST_SAFETY);
    least.set(WindColumns.LEAST_SAFETY, Equilibrium.LEAST_SAFETY);
    return Answer.filled(least, "wants {least_safety}").render(false);
  }

  private String lidRemark() {
    for (int t = 0; t < standing.towers(); t++) {
      if (!standing.fastened(t) && standing.lines(t) == null) {
        return "merely standing on it";
      }
    }
    return "if it merely stood; it is held";
  }

  private static void each(Answer answer, String label, String template, String remark) {
    int n = answer.size();
    Phrase[] cells = new Phrase[remark == null ? n : n + 1];
    for (int i = 0; i < n; i++) {
      cells[i] = Answer.filled(answer.row(i), template);
    }
    if (remark != null) {
      cells[n] = Phrase.of(remark);
    }
    answer.figure(label, cells);
  }

  private void joints(Answer answer, Answer joints) {
    for (int t = 0, first = 0; t < standing.towers(); t++) {
      int n = standing.joints(t).size();
      if (!standing.fastened(t)) {
        Row row = joints.row(least(joints, first, n, WindColumns.OPENS));
        answer.figure(
            "joints of " + standing.name(t),
            row,
            row.get(WindColumns.OPENS) == null
                ? "no wind opens them"
                : "number {joint} opens at {opens_at_m_s}, rolls off at {rolls_at_m_s}; a tie of {tie_to_stay_shut_N} keeps it shut");
      }
      first += n;
    }
  }

  /** The row of a tower's joints in which a column is least; the first where it is in none. */
  static int least(Answer joints, int first, int n, Column column) {
    int weakest = first;
    for (int i = first; i < first + n; i++) {
      Double at = (Double) joints.row(i).get(column);
      Double least = (Double) joints.row(weakest).get(column);
      if (at != null && (least == null || at < least)) {
        weakest = i;
      }
    }
    return weakest;
  }

  private static void lines(Answer answer, Answer lines) {
    for (int i = 0; i < lines.size(); i++) {
      Row row = lines.row(i);
      answer.figure(
          "lines of " + row.get(WindColumns.TOWER),
          row,
          row.get(WindColumns.TENSION) == null
              ? "{line} lines to the {anchor}, {line_length_m} each"
              : "{line} lines to the {anchor}, {line_length_m} each: {tension_N} in the worst, {peg_uplift_N} up and {peg_horizontal_N} sideways at its peg; buy {breaking_N} breaking load");
    }
  }

  private void minds(Answer answer, Answer lines) {
    answer.safety("wind", Cautions.WIND);
    lineMinds(answer, lines);
    if (answer.row(0).get(WindColumns.LID) != null) {
      answer.safety("lid", Cautions.LID);
    }
    if (standing.assembly().squat()) {
      answer.mind("squat", "its foot is wider than it is tall: sliding comes before tipping.");
    }
    if (wind.mean() == null) {
      answer.mind(
          "no-terrain",
          "without site.terrain and site.height_above_ground no mean wind and no Beaufort number belong to a gust.");
    } else {
      answer.mind(
          "beaufort",
          "Beaufort numbers and forecasts of mean wind are for open country at 10 m; a forecast gust needs no factor any more. Edges and corners of a building are not in it.");
    }
  }

  private void lineMinds(Answer answer, Answer lines) {
    for (int i = 0; i < lines.size(); i++) {
      if ("tank".equals(lines.row(i).get(WindColumns.ANCHOR))) {
        answer.mind(
            "tied-to-tank",
            "lines tied to the tank add nothing against tipping: they only hold the tower to it. Tie them to the ground.");
      }
    }
    for (int t = 0; t < standing.towers(); t++) {
      if (standing.load(t, pressure) != null && standing.breaking(t) == null) {
        answer.mind(
            "breaking-unknown",
            "whether the lines bear it is not judged: towers[].guys.breaking is not known.");
      }
    }
  }

  /** Says so when a foot held upright by lines may slide from under them. */
  static void footMind(Answer answer, Double safety) {
    if (safety != null && safety < Equilibrium.LEAST_SAFETY) {
      Row row = Row.aside(WindColumns.SLIDE_SAFETY, WindColumns.LEAST_SAFETY);
      row.set(WindColumns.SLIDE_SAFETY, safety);
      row.set(WindColumns.LEAST_SAFETY, Equilibrium.LEAST_SAFETY);
      answer.safety(
          "foot-slides",
          row,
          "its lines hold it upright, not its foot: friction and lines are {slide_safety} times what the gust pushes, {least_safety} is wanted. A mat that grips, or a stop on the ground, keeps the foot in its place.");
    }
  }
}
