package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.stability.Cautions;
import leat.stability.Equilibrium;
import leat.stability.SiteWind;
import leat.stability.Situation;
import leat.stability.StackJoint;
import leat.system.StandingOf;

/** The words of {@code leat wind} for a plan. */
final class WindText {
  private final Call call;
  private final StandingOf standing;
  private final SiteWind wind;
  private final double pressure;
  private final double density;

  WindText(Call call, StandingOf standing, SiteWind wind, double pressure, double density) {
    this.call = call;
    this.standing = standing;
    this.wind = wind;
    this.pressure = pressure;
    this.density = density;
  }

  void write(Answer answer, Row site, Answer joints, Answer lines) {
    int worst = worst();
    sentence(answer, answer.row(worst).with(site), joints, lines);
    figures(answer, site);
    joints(answer, joints);
    lines(answer, lines);
    minds(answer, site, lines);
    if (standing.heldByLines()) {
      footMind(answer, standing.slideSafety(pressure));
    }
    next(answer, answer.row(worst));
  }

  /** The state that uses most of what holds. */
  private int worst() {
    int worst = 0;
    for (int i = 1; i < standing.states().size(); i++) {
      if (use(i) > use(worst)) {
        worst = i;
      }
    }
    return worst;
  }

  private double use(int i) {
    return standing.assembly().worst(standing.states().get(i)).utilisation(pressure);
  }

  private void sentence(Answer answer, Row row, Answer joints, Answer lines) {
    Situation state = standing.states().get(worst());
    boolean alone = standing.assembly().worst(state).passes(pressure);
    int weak = weak();
    if (row.get(WindColumns.TIPS) == null || pressure == 0) {
      answer.sentence(row, "No wind blows, so nothing tips it.");
    } else if (weak >= 0) {
      answer.sentence(
          row.with(lines.row(lineRow(weak))),
          "It fails: the worst line of {tower} sees {tension_N}, more than a fifth of its breaking load.");
    } else if (loose() != null) {
      answer.sentence(
          loose().with(row),
          "It fails: a gust of {lid_tips_at_m_s} tips {name} off its lid; the site's gust is {gust_m_s}.");
    } else if (!alone && !standing.heldByLines()) {
      answer.sentence(row, tips(state));
    } else {
      stands(answer, row, alone, rolling(joints));
    }
  }

  private void stands(Answer answer, Row row, boolean alone, Row rolling) {
    Row slides = slides(answer);
    if (rolling != null) {
      answer.sentence(
          rolling.with(row),
          "It fails: its foot stands, but a gust of {rolls_at_m_s} rolls the modules of {tower} off at joint {joint}; the site's gust is {gust_m_s}. Tie, screw or glue them.");
    } else if (!alone) {
      answer.sentence(
          row,
          "It stands by its lines: alone a gust of {tips_at_m_s} would tip it ({state}); the site's gust is {gust_m_s}.");
    } else if (slides != null && !standing.heldByLines()) {
      answer.sentence(
          slides.with(row),
          "It does not tip, but a gust of {slides_at_m_s} shifts it ({state}); the site's gust is {gust_m_s}.");
    } else {
      answer.sentence(
          row,
          "It stands: the site's gust is {gust_m_s}, and it takes one of {tips_at_m_s} to tip it at its worst ({state}).");
    }
  }

  /** The state that a gust under the site's shifts first, lines left away; or null. */
  private Row slides(Answer answer) {
    Row first = null;
    for (int i = 0; i < answer.size(); i++) {
      Double at = (Double) answer.row(i).get(WindColumns.SLIDES);
      boolean sooner = first == null || at != null && at < (Double) first.get(WindColumns.SLIDES);
      if (at != null && at < wind.gust() && sooner) {
        first = answer.row(i);
      }
    }
    return first;
  }

  /** The joint of towers held by nothing else that rolls off first in the site's wind; or null. */
  private Row rolling(Answer joints) {
    Row first = null;
    for (int t = 0, from = 0; t < standing.towers(); t++) {
      List<StackJoint> stack = standing.joints(t);
      int least = least(joints, from, stack.size(), WindColumns.ROLLS);
      if (standing.merelyStacked(t)
          && !stack.isEmpty()
          && stack.get(least - from).rolls(pressure)) {
        Row row = joints.row(least);
        first = first == null || rollsAt(row) < rollsAt(first) ? row : first;
      }
      from += stack.size();
    }
    return first;
  }

  private static Double rollsAt(Row joint) {
    return (Double) joint.get(WindColumns.ROLLS);
  }

  private String tips(Situation state) {
    Double safety = standing.assembly().worst(state).safety(pressure);
    return safety != null && safety > 1
        ? "It fails for want of margin: a gust of {tips_at_m_s} tips it ({state}), the site's gust is {gust_m_s}, and up to {passes_to_m_s} would pass."
        : "It fails: a gust of {tips_at_m_s} tips it ({state}); the site's gust is {gust_m_s}.";
  }

  /** The tower that leaves its lid at the least gust of those that do not pass; null for none. */
  private Row loose() {
    Row least = null;
    for (int i = 0; i < standing.states().size(); i++) {
      for (int t = 0; t < standing.towers(); t++) {
        Situation state = standing.states().get(i);
        if (!standing.keepsToLid(t, state, pressure)) {
          Double at = standing.onLid(t, state).tipsAt(density);
          if (least == null || at < (Double) least.get(WindColumns.LID)) {
            least =
                Row.aside(WindColumns.NAME, WindColumns.LID)
                    .set(WindColumns.NAME, standing.name(t))
                    .set(WindColumns.LID, at);
          }
        }
      }
    }
    return least;
  }

  /** The first tower whose lines do not bear, or -1. */
  private int weak() {
    for (int t = 0; t < standing.towers(); t++) {
      if (!standing.linesBear(t, pressure)) {
        return t;
      }
    }
    return -1;
  }

  private int lineRow(int tower) {
    int row = 0;
    for (int t = 0; t < tower; t++) {
      row += standing.lines(t) == null ? 0 : 1;
    }
    return row;
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
  private static int least(Answer joints, int first, int n, Column column) {
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

  private void minds(Answer answer, Row site, Answer lines) {
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

  /** The check of the same wind and ground: flags of this command are keys of its plan. */
  private String check() {
    StringBuilder line = new StringBuilder(call.again("check"));
    set(line, "--gust", "site.wind={speed: ", ", is: gust}");
    set(line, "--mean", "site.wind={speed: ", ", is: mean}");
    set(line, "--terrain", "site.terrain=", "");
    set(line, "--height-above-ground", "site.height_above_ground=", "");
    set(line, "--density", "site.air_density=", "");
    set(line, "--friction", "tank.friction=", "");
    return line.toString();
  }

  private void set(StringBuilder line, String flag, String before, String behind) {
    if (call.has(flag)) {
      line.append(" --set ").append(ShellWord.quoted(before + call.text(flag) + behind));
    }
  }

  private void next(Answer answer, Row worst) {
    boolean alone = standing.assembly().worst(standing.states().get(worst())).passes(pressure);
    if (!alone && !standing.heldByLines()) {
      answer.next(
          worst,
          worst.get(WindColumns.KEEP) == null
              ? "{more_mass_kg} more in the foot let it pass, or three lines to the ground: towers[].guys"
              : "keep {keep_L} in the tank, or {more_mass_kg} more in the foot, or three lines to the ground: towers[].guys");
    }
    answer.next(check() + "   judges it with all other rules");
  }
}
