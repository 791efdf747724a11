package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.hydraulics.Bores;
import leat.hydraulics.HeadLoss;
import leat.hydraulics.Line;
import leat.hydraulics.Regime;
import leat.hydraulics.Water;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.quantity.Dimension;

/** {@code leat head}: head lost in a riser at a flow. */
public final class HeadCommand extends Command {
  static final Column FLOW = Column.of("flow_L_min", "flow", Show.L_MIN);
  static final Column VELOCITY = Column.of("velocity_m_s", "speed", Show.M_S);
  static final Column REYNOLDS = Column.number("reynolds", "Reynolds number", 3);
  static final Column REGIME = Column.plain("regime", "regime");
  static final Column FRICTION_FACTOR = Column.number("friction_factor", "friction factor", 3);
  static final Column STATIC = Column.of("static_head_m", "climb", Show.M);
  static final Column FRICTION = Column.of("friction_head_m", "rubbing in the pipe", Show.M);
  static final Column FITTING = Column.of("fitting_head_m", "bends and ends", Show.M);
  static final Column LOST = Column.of("lost_head_m", "lost", Show.M);
  static final Column STATIC_SHARE = Column.of("static_share_pct", "climb, share", Show.PERCENT);
  static final Column FRICTION_SHARE = Column.of("friction_share_pct", "rubbing", Show.PERCENT);
  static final Column FITTING_SHARE = Column.of("fitting_share_pct", "bends", Show.PERCENT);
  static final Column TOTAL = Column.of("total_head_m", "head in all", Show.M);
  static final Column OTHER =
      Column.of("total_head_churchill_m", "head by Churchill's formula", Show.M);

  static final Column FITTINGS_K = Column.number("fittings_k", "K of the bends and ends", 4);
  static final Column COMMON_FLOW =
      Column.of("common_flow_L_min", "flow in the common pipe", Show.L_MIN);
  private static final Column[] COLUMNS = {
    VELOCITY,
    REYNOLDS,
    REGIME,
    FRICTION_FACTOR,
    STATIC,
    FRICTION,
    FITTING,
    TOTAL,
    OTHER,
    FLOW,
    LOST,
    STATIC_SHARE,
    FRICTION_SHARE,
    FITTING_SHARE,
    COMMON_FLOW,
    FITTINGS_K
  };

  private static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);

  private static final Flag[] FLAGS = {
    Flag.of("--flow", "FLOW", Kind.quantity(Dimension.FLOW), "8 L/min", "flow in the riser"),
    Flag.of(
        "--lift",
        "HEIGHT",
        LENGTH,
        "1.9 m",
        "height of the outlet over the water, at its lowest working level"),
    Flag.of("--bore", "LENGTH", LENGTH, "13 mm", PipeWords.BORE).repeatable(),
    Flag.of("--length", "LENGTH", LENGTH, "2.2 m", PipeWords.LENGTH).repeatable(),
    Flag.of("--roughness", "LENGTH", LENGTH, "0.0015 mm", PipeWords.ROUGHNESS).repeatable(),
    Flag.of("--ridges", "LENGTH", LENGTH, "4 mm", PipeWords.RIDGES).repeatable(),
    Flag.of("--k", "K", Kind.NUMBER, "2.5", PipeWords.K).repeatable(),
    Flag.of(
            "--fitting",
            "NAME=COUNT",
            Kind.FITTING,
            "elbow=2",
            "a fitting by name and how many, in the last bore, behind @ its size where it has one, such as \"bend=1 @ 60 mm\"; entrance and exit come on top unless they are named; instead of --k")
        .repeatable(),
    Flag.of(
        "--temperature",
        "TEMP",
        Kind.quantity(Dimension.TEMPERATURE),
        "20 C",
        "temperature of the water"),
    Flag.of("--tower", "NAME", Kind.TEXT, "north", "tower of the plan; the first otherwise"),
    Flag.of(
        "--all-towers",
        "FLOW",
        Kind.quantity(Dimension.FLOW),
        "12 L/min",
        "flow in the plan's common pipe; otherwise every tower takes --flow"),
    Flag.on("--bores", PipeWords.BORES),
    Flag.of(
            "--family",
            "KIND",
            Kind.choice(Bores.families()),
            "hose",
            "with --bores: kind of tube; otherwise the kind of the present one")
        .belongsTo("--bores"),
  };

  @Override
  public String name() {
    return "head";
  }

  @Override
  public Flag[] flags() {
    return FLAGS;
  }

  @Override
  public Answer answer(Call call) {
    Double flow = call.above0("--flow");
    if (flow == null) {
      throw call.needs("--flow");
    }
    if (call.has("--tower") && !call.hasPlan()) {
      throw new Refused(CommandErrors.towerOfNoPlan(this, call.text("--tower")));
    }
    HeadInput input = HeadInput.of(call, flow);
    if (call.has("--bores")) {
      return HeadBores.answer(call, input, flow);
    }
    Answer answer = new Answer(COLUMNS);
    HeadLoss loss = HeadLoss.behind(input.common(), input.total(), input.riser(), flow);
    write(call, answer, input, loss);
    input.taken(answer);
    call.withTaken(answer);
    return answer;
  }

  private static Row fill(Row row, HeadInput input, HeadLoss loss) {
    HeadLoss.OfSection fastest = loss.fastest();
    Line line = input.riser().line();
    return row.set(VELOCITY, fastest.velocity())
        .set(REYNOLDS, fastest.reynolds())
        .set(REGIME, word(fastest.regime()))
        .set(FRICTION_FACTOR, fastest.frictionFactor())
        .set(STATIC, loss.staticHead())
        .set(FRICTION, loss.frictionHead())
        .set(FITTING, loss.fittingHead())
        .set(TOTAL, loss.totalHead())
        .set(OTHER, loss.totalHeadChurchill())
        .set(FLOW, loss.flow())
        .set(LOST, loss.lostHead())
        .set(STATIC_SHARE, loss.share(loss.staticHead()))
        .set(FRICTION_SHARE, loss.share(loss.frictionHead()))
        .set(FITTING_SHARE, loss.share(loss.fittingHead()))
        .set(FITTINGS_K, line.section(line.size() - 1).fittingsK());
  }

  private static void write(Call call, Answer answer, HeadInput input, HeadLoss loss) {
    Row row = fill(answer.row(), input, loss);
    if (input.common() != null) {
      row.set(COMMON_FLOW, input.total());
    }
    say(answer, row, input.common() != null, loss.sections().size() > 1);
    HeadWords.minds(answer, row, loss, input.riser());
    Double celsius = call.quantity("--temperature");
    if (celsius != null && !Water.USUAL.holds(celsius)) {
      answer.mind("temperature-range", "outside 5 to 35 C roots suffer, whatever the pipe does.");
    }
    HeadWords.workings(answer, loss);
    next(call, answer, row);
  }

  private static void say(Answer answer, Row row, boolean common, boolean several) {
    answer.sentence(
        row,
        "Lifting {flow_L_min} takes {total_head_m} of head: {static_head_m} to climb, {lost_head_m} lost on the way.");
    answer.figure(row, STATIC, "{static_share_pct}");
    answer.figure(row, FRICTION, "{friction_share_pct}");
    answer.figure(row, FITTING, "{fitting_share_pct}");
    answer.figure(
        row,
        VELOCITY,
        several ? "{regime}, Re {reynolds}, where it runs fastest" : "{regime}, Re {reynolds}");
    if (common) {
      answer.figure(row, COMMON_FLOW, "");
    }
  }

  private static void next(Call call, Answer answer, Row row) {
    String[] kept = {
      "--lift", "--bore", "--length", "--k", "--roughness", "--ridges", "--temperature"
    };
    String pump = " --shutoff-head ... --max-flow ...   to see what your pump gives";
    if (call.hasPlan()) {
      answer.next(call.again("pump", "--lift", "--temperature") + "   to see what your pump gives");
    } else if (call.texts("--bore").size() > 1) {
      answer.next(
          "write the pipes into a plan as pipe and riser, then  leat pump --plan ...   to see what your pump gives");
    } else if (call.has("--fitting")) {
      String again = call.again("pump", kept);
      answer.next(
          row.with(Row.aside(NeededAnswer.COMMAND).set(NeededAnswer.COMMAND, again)),
          "{command} --k {fittings_k} --shutoff-head ... --max-flow ...   to see what your pump gives");
    } else {
      answer.next(call.again("pump", kept) + pump);
    }
  }

  static String word(Regime regime) {
    switch (regime) {
      case LAMINAR:
        return "laminar";
      case TURBULENT:
        return "turbulent";
      default:
        return "transitional";
    }
  }
}
