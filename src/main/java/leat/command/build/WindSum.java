package leat.command.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.plan.Plan;
import leat.quantity.Outline;
import leat.stability.Cautions;
import leat.stability.Equilibrium;
import leat.stability.Face;
import leat.stability.Faces;
import leat.stability.GuyLines;
import leat.stability.LineLoad;
import leat.stability.SiteWind;
import leat.stability.Standing;
import leat.stability.Terrain;
import leat.system.TubOf;
import leat.system.WindOf;

/** Answers {@code leat wind} for bare numbers: one body, one wind, lines if there are any. */
final class WindSum {
  private final Call call;
  private final Plan plan;
  private SiteWind wind;
  private double density;
  private double pressure;

  WindSum(Call call) {
    this.call = call;
    this.plan = call.bare();
  }

  Answer answer() {
    Faces faces = faces();
    double mass = needed("--mass");
    double foot = needed("--foot");
    air();
    double friction = TubOf.friction(plan.section("tank"), call.taken());
    Standing whole = Standing.onFoot(mass, foot, faces, friction);
    Standing lid = lid(faces, friction);
    GuyLines lines = lines();
    LineLoad load = load(lines, whole, lid);
    boolean passes = passes(whole, lid, lines);
    Answer answer = new Answer(columns()).csvColumns(WindColumns.states().length - 1);
    Row row = row(answer.row(), whole, lid, mass).set(WindColumns.PASSES, passes);
    if (lines != null) {
      WindAnswer.line(row, lines, load);
    }
    words(answer, row, whole, lid, lines, load);
    StandingWorkings.wind(answer, row);
    call.withTaken(answer);
    json(answer, row, lines);
    return passes ? answer : answer.no();
  }

  private void air() {
    if (!call.has("--gust") && !call.has("--mean")) {
      throw call.needs("--gust");
    }
    wind = WindCommand.wind(call, plan.section("site"));
    density = WindOf.density(plan.section("site"), call.taken());
    pressure = wind.pressure(density);
  }

  private boolean passes(Standing whole, Standing lid, GuyLines lines) {
    boolean held = lines != null && lines.toGround();
    boolean lidHolds = lid == null || lines != null || lid.passes(pressure);
    return (held || whole.passes(pressure)) && lidHolds;
  }

  private double needed(String flag) {
    Double value = call.above0(flag);
    if (value == null) {
      throw call.needs(flag);
    }
    return value;
  }

  private Faces faces() {
    List<Object> asked = call.values("--face");
    if (asked.isEmpty()) {
      throw call.needs("--face");
    }
    List<Face> faces = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      Outline one = (Outline) asked.get(i);
      faces.add(new Face(one.area().value(), one.height().value(), one.coefficient().value()));
    }
    return Faces.of(faces);
  }

  /** The tower on its lid; null when no lid is named. */
  private Standing lid(Faces faces, double friction) {
    if (!call.has("--lid") && !call.has("--tower") && !call.has("--foot-radius")) {
      return null;
    }
    Double height = call.from0("--lid");
    if (height == null) {
      throw call.needs("--lid");
    }
    return new Standing(needed("--tower"), needed("--foot-radius"), faces.over(height), friction);
  }

  private GuyLines lines() {
    if (!call.has("--lines") && !call.has("--ring") && !call.has("--run")) {
      return null;
    }
    Integer lines = (Integer) call.value("--lines");
    if (lines == null) {
      throw call.needs("--lines");
    }
    boolean toGround = !"tank".equals(call.value("--anchor"));
    if (!call.has("--anchor")) {
      call.taken().note("lines tied to the ground");
    }
    return new GuyLines(lines, needed("--ring"), needed("--run"), toGround);
  }

  private LineLoad load(GuyLines lines, Standing whole, Standing lid) {
    if (lines == null) {
      return null;
    }
    if (!lines.toGround() && lid == null) {
      throw call.needs("--lid");
    }
    Standing held = lines.toGround() ? whole : lid;
    return lines.under(Equilibrium.residual(held.overturning(pressure), held.righting()));
  }

  private static Column[] columns() {
    List<Column> all = new ArrayList<>();
    add(all, WindColumns.states(), WindColumns.KEEP);
    add(all, WindColumns.site(), WindColumns.PASSES);
    add(all, WindColumns.lines(), WindColumns.TOWER, WindColumns.BEARS);
    return all.toArray(new Column[0]);
  }

  private static void add(List<Column> all, Column[] more, Column... without) {
    List<Column> left = java.util.Arrays.asList(without);
    for (int i = 0; i < more.length; i++) {
      if (!left.contains(more[i])) {
        all.add(more[i]);
      }
    }
  }

  private Row row(Row row, Standing whole, Standing lid, double mass) {
    Double tips = whole.tipsAt(density);
    return site(row)
        .set(WindColumns.STATE, "as typed")
        .set(WindColumns.MASS, mass)
        .set(WindColumns.OVERTURNING, whole.overturning(pressure))
        .set(WindColumns.RIGHTING, whole.righting())
        .set(WindColumns.SAFETY, whole.safety(pressure))
        .set(WindColumns.USE, whole.utilisation(pressure))
        .set(WindColumns.TIPS, tips)
        .set(WindColumns.SLIDES, whole.slidesAt(density))
        .set(WindColumns.LID, lid == null ? null : lid.tipsAt(density))
        .set(WindColumns.MEAN_THERE, wind.meanFor(tips))
        .setAny(WindColumns.BEAUFORT, wind.beaufortFor(tips))
        .set(WindColumns.PASSES_TO, whole.passesTo(density))
        .set(WindColumns.MORE_MASS, whole.massToAdd(pressure));
  }

  private Row site(Row row) {
    Terrain terrain = WindOf.terrain(plan.section("site"));
    return row.set(WindColumns.GUST, wind.gust())
        .set(WindColumns.MEAN, wind.mean())
        .set(WindColumns.TERRAIN, terrain == null ? null : terrain.word())
        .set(WindColumns.FACTOR, wind.gustOverMean())
        .set(WindColumns.DENSITY, leat.quantity.Units.KG_M3.toBase(density));
  }

  private void words(
      Answer answer, Row row, Standing whole, Standing lid, GuyLines lines, LineLoad load) {
    boolean held = lines != null && lines.toGround();
    sentence(answer, row, whole, held);
    figures(answer, row, lid, lines);
    answer.safety("wind", Cautions.WIND);
    if (lines != null && !held) {
      answer.mind(
          "tied-to-tank",
          "lines tied to the tank add nothing against tipping: they only hold the tower to it.");
    }
    if (held) {
      double pull = load.ringPull();
      WindLimits.footMind(answer, whole.slideSafety(pressure, pull, lines.pressed(pull)));
    }
    if (!whole.passes(pressure) && !held) {
      answer.next(
          row,
          "{more_mass_kg} more in the foot let it pass; or --lines 3 --ring ... --run ... to the ground");
    }
  }

  private void sentence(Answer answer, Row row, Standing whole, boolean held) {
    if (whole.passes(pressure)) {
      Double slides = (Double) row.get(WindColumns.SLIDES);
      answer.sentence(
          row,
          row.get(WindColumns.TIPS) == null
              ? "Nothing pushes it, so nothing tips it."
              : !held && slides < wind.gust()
                  ? "It does not tip in a gust of {gust_m_s}, one of {tips_at_m_s} tips it, but one of {slides_at_m_s} shifts it."
                  : "It stands in a gust of {gust_m_s}: one of {tips_at_m_s} tips it, and up to {passes_to_m_s} passes.");
    } else if (held) {
      answer.sentence(
          row,
          "Its lines hold it in a gust of {gust_m_s}, {tension_N} in the worst: alone it tips at {tips_at_m_s}.");
    } else {
      answer.sentence(
          row,
          whole.safety(pressure) > 1
              ? "It does not tip in a gust of {gust_m_s} but at {tips_at_m_s}: too little margin, up to {passes_to_m_s} passes."
              : "A gust of {gust_m_s} tips it: it goes over at {tips_at_m_s}.");
    }
  }

  private static void figures(Answer answer, Row row, Standing lid, GuyLines lines) {
    Row least = Row.aside(WindColumns.LEAST_SAFETY);
    least.set(WindColumns.LEAST_SAFETY, Equilibrium.LEAST_SAFETY);
    answer.figure(row.with(least), WindColumns.SAFETY, "wants {least_safety}");
    answer.figure(row, WindColumns.OVERTURNING);
    answer.figure(row, WindColumns.RIGHTING);
    answer.figure(row, WindColumns.TIPS);
    answer.figure(row, WindColumns.SLIDES);
    if (lid != null) {
      answer.figure(row, WindColumns.LID);
    }
    if (row.get(WindColumns.MEAN_THERE) != null) {
      answer.figure(row, WindColumns.MEAN_THERE, "Beaufort {beaufort}");
    }
    if (lines != null) {
      lines(answer, row);
    }
  }

  private static void lines(Answer answer, Row row) {
    answer.figure(row, WindColumns.TENSION, "buy {breaking_N} breaking load");
    answer.figure(row, WindColumns.UPLIFT);
    answer.figure(row, WindColumns.LEVEL);
    answer.figure(row, WindColumns.LENGTH, "{angle_deg} from the level");
  }

  /** The row is the object; states and lines repeat it, as a plan's answer has them. */
  private static void json(Answer answer, Row row, GuyLines lines) {
    Answer states = new Answer(WindColumns.states());
    copy(row, states.row(), WindColumns.states(), WindColumns.KEEP, null);
    Answer all = new Answer(WindColumns.lines());
    if (lines != null) {
      copy(row, all.row(), WindColumns.lines(), WindColumns.TOWER, WindColumns.BEARS);
    }
    answer
        .jsonObject(answer)
        .array("states", states)
        .array("joints", new Answer(WindColumns.joints()))
        .array("lines", all);
  }

  private static void copy(Row from, Row to, Column[] columns, Column without, Column withoutThis) {
    for (int i = 0; i < columns.length; i++) {
      if (columns[i] != without && columns[i] != withoutThis) {
        to.setAny(columns[i], from.get(columns[i]));
      }
    }
  }
}
