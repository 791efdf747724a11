package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.stability.SiteWind;
import leat.stability.Situation;
import leat.stability.StackJoint;
import leat.system.StandingOf;

/** Whether what a plan describes stands in the site's wind, what fails first, and what helps. */
final class WindVerdict {
  private final Call call;
  private final StandingOf standing;
  private final SiteWind wind;
  private final double pressure;
  private final double density;

  WindVerdict(Call call, StandingOf standing, SiteWind wind, double pressure, double density) {
    this.call = call;
    this.standing = standing;
    this.wind = wind;
    this.pressure = pressure;
    this.density = density;
  }

  void write(Answer answer, Row site, Answer joints, Answer lines) {
    int worst = worst();
    sentence(answer, answer.row(worst).with(site), joints, lines);
    new WindLimits(standing, wind, pressure).write(answer, site, joints, lines);
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
      int least = WindLimits.least(joints, from, stack.size(), WindColumns.ROLLS);
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
}
