package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.level.ESeries;
import leat.level.Ladder;
import leat.level.LadderDesign;
import leat.level.Limits;
import leat.level.Tank;
import leat.level.TradeRange;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.system.TankOf;

/** {@code leat level ladder}: the resistor chain of a sender of one's own. */
public final class LevelLadderCommand extends Command {
  static final Column REED = Column.plain("reed", "reed");
  static final Column LEVEL = Column.of("level_mm", "at", Show.MM.digits(4));
  static final Column VOLUME = Column.of("volume_L", "litres", Show.L);
  static final Column TARGET = Column.of("wanted_ohm", "wanted", LevelColumns.OHM);
  static final Column RESISTOR = Column.of("resistor_ohm", "resistor", LevelColumns.OHM);
  static final Column NODE = Column.of("node_ohm", "reads", LevelColumns.OHM);
  static final Column ERROR = Column.of("error_ohm", "off by", Show.OHM.digits(2));
  static final Column APART = Column.plain("apart", "told from next");
  static final Column WORST = Column.of("worst_error_ohm", "worst error", Show.OHM.digits(3));

  static final Kind OHM = Kind.quantity(Dimension.RESISTANCE);
  static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);

  @Override
  public String name() {
    return "level ladder";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--empty", "OHM", OHM, "240 ohm", "reading at the lowest reed"),
      Flag.of("--full", "OHM", OHM, "33 ohm", "reading at the highest reed"),
      Flag.of(
          "--range", "RANGE", Kind.TEXT, "240-33", "both from the trade: 0-190, 10-180 or 240-33"),
      Flag.of("--steps", "N", Kind.COUNT, "10", "how many reeds"),
      Flag.of(
          "--series",
          "SERIES",
          Kind.choice("E6", "E12", "E24", "E48", "E96"),
          "E24",
          "resistor values you can buy; E24 unless said"),
      Flag.of(
          "--equal",
          "WHAT",
          Kind.choice("ohms", "litres", "needle"),
          "litres",
          "ohms: even pitch, even ohms; litres: reeds spaced for the same litres a step; needle:"
              + " even pitch, ohms that follow the litres, for a gauge's needle"),
      Flag.of("--first", "LENGTH", LENGTH, "45 mm", "level at the lowest reed"),
      Flag.of("--last", "LENGTH", LENGTH, "280 mm", "level at the highest reed"),
      Flag.of("--pull-in", "LENGTH", LENGTH, "8 mm", "half width at which a reed closes"),
      Flag.of("--drop-out", "LENGTH", LENGTH, "9.5 mm", "half width at which it opens again"),
      Flag.of(
              "--tolerance",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "1 %",
              "tolerance of the resistors")
          .sets("sender.tolerance"),
      Flag.of("--reading", "OHM", OHM, "1.5 ohm", "tolerance of the meter or ADC")
          .sets("sender.reading"),
    };
  }

  private double[] ends(Call call) {
    Double empty = call.from0("--empty");
    Double full = call.from0("--full");
    if (call.has("--range")) {
      TradeRange range = TradeRange.of(call.text("--range"));
      if (range == null) {
        throw new Refused(LevelErrors.noRange(call.text("--range")));
      }
      return new double[] {
        empty == null ? range.empty() : empty, full == null ? range.full() : full
      };
    }
    if (empty == null || full == null) {
      throw new Refused(LevelErrors.noEnds(this));
    }
    return new double[] {empty, full};
  }

  /** Level of the lowest or the highest reed, or null when nothing says. */
  private static Double end(Call call, String flag, String... keys) {
    Double own = call.from0(flag);
    if (own != null) {
      return own;
    }
    Section tank = call.plan().section("tank");
    for (int i = 0; i < keys.length; i++) {
      if (tank.has(keys[i])) {
        tank.took((flag.equals("--first") ? "lowest" : "highest") + " reed at tank." + keys[i]);
        return tank.need(keys[i]);
      }
    }
    return null;
  }

  @Override
  public Answer answer(Call call) {
    double[] ends = ends(call);
    if (!call.has("--steps")) {
      throw call.needs("--steps");
    }
    int steps = (int) (double) call.quantity("--steps");
    String equal = call.has("--equal") ? call.text("--equal") : "ohms";
    Plan plan = call.plan();
    Section section = plan.section("tank");
    Tank tank = TankOf.isKnown(section) ? TankOf.of(section) : null;
    double[] reeds = reeds(call, equal, tank, steps);
    double[] target =
        "needle".equals(equal)
            ? LadderDesign.ohmsByVolume(ends[0], ends[1], tank, reeds)
            : LadderDesign.equalOhms(ends[0], ends[1], steps);
    ESeries series = call.has("--series") ? series(call.text("--series")) : ESeries.E24;
    if (!call.has("--series")) {
      section.took("E24 resistors");
    }
    return answer(call, LadderDesign.of(series, target), reeds, tank, equal);
  }

  static ESeries series(String word) {
    switch (word) {
      case "E6":
        return ESeries.E6;
      case "E12":
        return ESeries.E12;
      case "E48":
        return ESeries.E48;
      case "E96":
        return ESeries.E96;
      default:
        return ESeries.E24;
    }
  }

  private double[] reeds(Call call, String equal, Tank tank, int steps) {
    if (!"ohms".equals(equal) && tank == null) {
      TankOf.of(call.plan().section("tank"));
    }
    Double first = end(call, "--first", "intake", "low");
    Double last = end(call, "--last", "full");
    if (first == null || last == null) {
      if ("ohms".equals(equal)) {
        return null;
      }
      throw new Refused(LevelErrors.noReedLevels(this));
    }
    if ("litres".equals(equal)) {
      return LadderDesign.equalVolumeReeds(tank, first, last, steps);
    }
    return Ladder.evenReeds(steps, first, steps > 1 ? (last - first) / (steps - 1) : 0);
  }

  private Answer answer(Call call, LadderDesign design, double[] reeds, Tank tank, String equal) {
    Answer answer =
        new Answer(REED, LEVEL, VOLUME, TARGET, RESISTOR, NODE, ERROR, APART, WORST).asList();
    Section sender = call.plan().section("sender");
    Limits limits =
        new Limits(
            sender.get("reading"),
            sender.get("tolerance"),
            0,
            Limits.DEFAULT_OPEN_ABOVE,
            Limits.DEFAULT_SHORT_BELOW);
    int n = design.node().length;
    for (int i = 0; i < n; i++) {
      Row row =
          answer
              .row()
              .set(REED, i + 1)
              .set(TARGET, design.target()[i])
              .set(RESISTOR, design.resistor()[i])
              .set(NODE, design.node()[i])
              .set(ERROR, design.error(i))
              .set(WORST, design.maxError());
      if (i + 1 < n) {
        row.set(APART, design.apart(i, limits));
      }
      if (reeds != null) {
        row.set(LEVEL, reeds[i]);
        if (tank != null && reeds[i] <= tank.height()) {
          row.set(VOLUME, tank.volume(reeds[i]));
        }
      }
    }
    sentence(answer, design, n);
    if (reeds == null) {
      answer.table(REED, RESISTOR, NODE, TARGET, ERROR);
    } else if (tank == null) {
      answer.table(REED, LEVEL, RESISTOR, NODE, TARGET, ERROR);
    } else {
      answer.table(REED, LEVEL, VOLUME, RESISTOR, NODE, TARGET, ERROR);
    }
    call.withTaken(answer);
    minds(call, answer, design, reeds, limits);
    return paste(call, answer, design, reeds, equal);
  }

  private static void sentence(Answer answer, LadderDesign design, int n) {
    answer.sentence(
        Phrase.of()
            .count(n)
            .add(" steps from ")
            .addBare(design.node()[0], LevelColumns.OHM)
            .add(" to ")
            .add(design.node()[n - 1], LevelColumns.OHM)
            .add(" in ")
            .add(design.series().name())
            .add(": no step is off by more than ")
            .add(design.maxError(), Show.OHM)
            .add("."));
    answer.figure(
        "worst step off by",
        Phrase.of(design.maxError(), Show.OHM),
        Phrase.of("the least there is in this series; then least squares"));
    answer.figure(
        "rounded one by one",
        Phrase.of(design.separateMaxError(), Show.OHM),
        Phrase.of("errors pile up"));
    answer.figure(
        "return wire",
        Phrase.of(design.returnAt() == Ladder.ReturnAt.BOTTOM ? "at the bottom" : "at the top"),
        Phrase.of("each resistor between its reed's tap and the next towards it; reed 1 lowest"));
  }

  private static void minds(
      Call call, Answer answer, LadderDesign design, double[] reeds, Limits limits) {
    int overlaps = design.overlaps(limits);
    if (overlaps > 0) {
      answer.mind(
          "overlap",
          Phrase.of()
              .count(overlaps)
              .add(
                  overlaps == 1
                      ? " pair of neighbours reads alike"
                      : " pairs of neighbours read alike")
              .add(" with resistors of ")
              .add(limits.tolerance(), Show.PERCENT)
              .add(" and a meter good to ")
              .add(limits.reading(), Show.OHM)
              .add(": closer resistors, fewer steps or a wider range part them."));
    }
    if (Math.min(design.node()[0], design.node()[design.node().length - 1])
        < limits.shortBelow() + limits.reading()) {
      answer.mind(
          "looks-short",
          "a step near 0 ohm and a shorted cable look the same; begin at 10 ohm where you can.");
    }
    Double pullIn = call.above0("--pull-in");
    Double dropOut = call.above0("--drop-out");
    if (reeds != null && pullIn != null && dropOut != null) {
      double widest = Ladder.greatestPitch(reeds);
      if (pullIn + dropOut < widest) {
        answer.mind(
            "open-between",
            Phrase.of("the reeds are up to ")
                .add(widest, Show.MM)
                .add(" apart, but one opens before the next closes over ")
                .add(pullIn + dropOut, Show.MM)
                .add(": the sender would read open in between."));
      }
    } else if (reeds != null) {
      answer.mind(
          "reach",
          Phrase.of("reeds up to ")
              .add(Ladder.greatestPitch(reeds), Show.MM)
              .add(
                  " apart want a magnet whose pull-in and drop-out add up to that, or the sender reads open in between: move the magnet past one reed and measure both."));
    }
  }

  private static Answer paste(
      Call call, Answer answer, LadderDesign design, double[] reeds, String equal) {
    if (reeds == null) {
      return answer.next(
          "leat level ladder ... --first \"45 mm\" --last \"280 mm\"   tells where the reeds go");
    }
    StringBuilder text = new StringBuilder("paste into the plan, with your magnet's widths:\n");
    text.append("  sender:\n    ladder: {reeds: ").append(reeds.length);
    if ("litres".equals(equal)) {
      text.append(", levels: [");
      for (int i = 0; i < reeds.length; i++) {
        text.append(i == 0 ? "" : ", ").append(mm(reeds[i]));
      }
      text.append(']');
    } else {
      text.append(", first: ").append(mm(reeds[0]));
      text.append(", pitch: ").append(mm(reeds[1] - reeds[0]));
    }
    text.append(",\n             resistors: [");
    for (int i = 0; i < reeds.length; i++) {
      text.append(i == 0 ? "" : ", ");
      text.append(NumberText.shortest(design.resistor()[i])).append(" ohm");
    }
    text.append("],\n             return_at: ");
    text.append(design.returnAt() == Ladder.ReturnAt.BOTTOM ? "bottom" : "top");
    text.append(", pull_in: ").append(width(call, "--pull-in", "8 mm"));
    text.append(", drop_out: ").append(width(call, "--drop-out", "9.5 mm"));
    text.append(", stops: ").append(mm(Math.max(0, reeds[0] - 0.006))).append(" to ");
    text.append(mm(reeds[reeds.length - 1] + 0.006)).append('}');
    return answer.next(text.toString());
  }

  private static String width(Call call, String flag, String otherwise) {
    return call.has(flag) ? call.text(flag) : otherwise;
  }

  private static String mm(double level) {
    return NumberText.atMost(Units.MM.fromBase(level), 1) + " mm";
  }
}
