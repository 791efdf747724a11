package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Row;
import leat.cli.Call;
import leat.plan.Plan;
import leat.stability.Assembly;
import leat.stability.GuyLines;
import leat.stability.LineLoad;
import leat.stability.SiteWind;
import leat.stability.Situation;
import leat.stability.StackJoint;
import leat.stability.Standing;
import leat.stability.Terrain;
import leat.system.StandingOf;
import leat.system.WindOf;

/** Answers {@code leat wind} for a plan: the rows; the words are {@link WindVerdict}'s. */
final class WindAnswer {
  private final Call call;
  private final Plan plan;
  private final StandingOf standing;
  private final SiteWind wind;
  private final double density;
  private final double pressure;

  WindAnswer(Call call, Plan plan, StandingOf standing, SiteWind wind) {
    this.call = call;
    this.plan = plan;
    this.standing = standing;
    this.wind = wind;
    this.density = WindOf.density(plan.section("site"), call.taken());
    this.pressure = wind.pressure(density);
  }

  Answer answer() {
    Answer states = new Answer(WindColumns.states()).asList();
    boolean passes = true;
    for (int i = 0; i < standing.states().size(); i++) {
      Situation state = standing.states().get(i);
      state(states.row(), state);
      passes &= standing.passes(state, pressure);
    }
    Answer figures = new Answer(WindColumns.site());
    Row site = site(figures.row(), WindOf.terrain(plan.section("site")));
    site.set(WindColumns.PASSES, passes);
    Answer joints = joints();
    Answer lines = lines();
    states
        .jsonObject(figures)
        .array("states", states)
        .array("joints", joints)
        .array("lines", lines);
    new WindVerdict(call, standing, wind, pressure, density).write(states, site, joints, lines);
    end(states, site);
    return passes ? states : states.no();
  }

  private void end(Answer states, Row site) {
    for (int i = 0; i < states.size(); i++) {
      StandingWorkings.wind(states, states.row(i).with(site));
    }
    if (call.wantsChart()) {
      states.chart(WindChart.of(standing, pressure));
    }
    call.withTaken(states);
  }

  private Row site(Row row, Terrain terrain) {
    return row.set(WindColumns.GUST, wind.gust())
        .set(WindColumns.MEAN, wind.mean())
        .set(WindColumns.TERRAIN, terrain == null ? null : terrain.word())
        .set(WindColumns.FACTOR, wind.gustOverMean())
        .set(WindColumns.DENSITY, leat.quantity.Units.KG_M3.toBase(density));
  }

  private void state(Row row, Situation state) {
    Assembly whole = standing.assembly();
    Standing worst = whole.worst(state);
    Double tips = worst.tipsAt(density);
    row.set(WindColumns.STATE, state.word())
        .set(WindColumns.SOLUTION, state.volume())
        .set(WindColumns.MASS, whole.mass(state))
        .set(WindColumns.OVERTURNING, worst.overturning(pressure))
        .set(WindColumns.RIGHTING, worst.righting())
        .set(WindColumns.SAFETY, worst.safety(pressure))
        .set(WindColumns.USE, worst.utilisation(pressure))
        .set(WindColumns.TIPS, tips)
        .set(WindColumns.SLIDES, whole.slidesAt(state, density))
        .set(WindColumns.LID, standing.lidTipsAt(state, density))
        .set(WindColumns.MEAN_THERE, wind.meanFor(tips))
        .setAny(WindColumns.BEAUFORT, wind.beaufortFor(tips))
        .set(WindColumns.PASSES, standing.passes(state, pressure))
        .set(WindColumns.PASSES_TO, worst.passesTo(density))
        .set(WindColumns.MORE_MASS, whole.massInFoot(state, pressure))
        .set(WindColumns.KEEP, standing.volumeToKeep(state, pressure));
  }

  private Answer joints() {
    Answer answer = new Answer(WindColumns.joints());
    for (int t = 0; t < standing.towers(); t++) {
      List<StackJoint> joints = standing.joints(t);
      for (int i = 0; i < joints.size(); i++) {
        StackJoint joint = joints.get(i);
        answer
            .row()
            .set(WindColumns.TOWER, standing.name(t))
            .set(WindColumns.JOINT, i + 1)
            .set(WindColumns.HEIGHT, joint.height())
            .set(WindColumns.OPENS, joint.opensAt(density))
            .set(WindColumns.ROLLS, joint.rollsAt(density))
            .set(WindColumns.TIE, joint.tieToStayShut(pressure));
      }
    }
    return answer;
  }

  private Answer lines() {
    Answer answer = new Answer(WindColumns.lines());
    for (int t = 0; t < standing.towers(); t++) {
      GuyLines lines = standing.lines(t);
      if (lines != null) {
        Row row = answer.row().set(WindColumns.TOWER, standing.name(t));
        line(row, lines, standing.load(t, pressure));
        Double breaking = standing.breaking(t);
        if (breaking != null && row.get(WindColumns.TENSION) != null) {
          row.set(WindColumns.BEARS, standing.linesBear(t, pressure));
        }
      }
    }
    return answer;
  }

  /** What one of a tower's lines sees. */
  static void line(Row row, GuyLines lines, LineLoad load) {
    row.set(WindColumns.LINE, lines.lines())
        .set(WindColumns.LENGTH, lines.length())
        .set(WindColumns.ANGLE, lines.angle())
        .set(WindColumns.ANCHOR, lines.toGround() ? "ground" : "tank");
    if (load != null) {
      row.set(WindColumns.TENSION, load.tension())
          .set(WindColumns.UPLIFT, load.pegUplift())
          .set(WindColumns.LEVEL, load.pegLevel())
          .set(WindColumns.BREAKING, load.breakingNeeded());
    }
  }
}
