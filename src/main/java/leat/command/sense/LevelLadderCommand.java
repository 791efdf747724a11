package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.level.ESeries;
import leat.level.LadderDesign;
import leat.level.Limits;
import leat.level.Tank;
import leat.level.TradeRange;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.system.TankOf;

/** {@code leat level ladder}: the resistor chain of a sender of one's own. */
public final class LevelLadderCommand extends Command {
  static final String SERIES_MEANING = "resistor values you can buy (default E24)";

  static final String TOLERANCE_MEANING = "tolerance of the sender's resistors";

  static final Column REED = Column.plain("reed", "reed");
  static final Column LEVEL = Column.of("level_mm", "level", Show.MM.digits(4));
  static final Column VOLUME = Column.of("volume_L", "volume", Show.L);
  static final Column TARGET = Column.of("wanted_ohm", "wanted", LevelColumns.OHM);
  static final Column RESISTOR = Column.of("resistor_ohm", "resistor", LevelColumns.OHM);
  static final Column NODE = Column.of("node_ohm", "reads", LevelColumns.OHM);
  static final Column ERROR = Column.of("error_ohm", "off by", Show.OHM.digits(2));
  static final Column APART = Column.plain("apart", "told from next");
  static final Column WORST = Column.of("worst_error_ohm", "worst error", Show.OHM.digits(3));

  static final Kind OHM = Kind.quantity(Dimension.RESISTANCE);
  static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);

  private static final Flag[] FLAGS = {
    Flag.of("--empty", "OHM", OHM, "240 ohm", "reading at the lowest reed"),
    Flag.of("--full", "OHM", OHM, "33 ohm", "reading at the highest reed"),
    Flag.of(
        "--range",
        "RANGE",
        Kind.TEXT,
        "240-33",
        "both from the trade: 0-190, 10-180, 240-33 or 240-30"),
    Flag.of("--steps", "N", Kind.COUNT, "10", "how many reeds, 2 to 200 (required)"),
    Flag.of(
        "--series", "SERIES", Kind.choice("E6", "E12", "E24", "E48", "E96"), "E24", SERIES_MEANING),
    Flag.of(
        "--equal",
        "WHAT",
        Kind.choice("ohms", "litres", "needle"),
        "litres",
        "ohms: even pitch, even ohms; litres: reeds spaced for the same litres per step; needle:"
            + " even pitch, ohms that follow the litres, for a gauge's needle (default ohms)"),
    Flag.on(
        "--bought", "a sender bought ready, known by its range, length and number of steps only"),
    Flag.of(
        "--length",
        "LENGTH",
        LENGTH,
        "250 mm",
        "distance of the highest step from the lowest, instead of --last"),
    Flag.of("--first", "LENGTH", LENGTH, "45 mm", "level at the lowest reed"),
    Flag.of("--last", "LENGTH", LENGTH, "280 mm", "level at the highest reed"),
    Flag.of("--pull-in", "LENGTH", LENGTH, "8 mm", "half width at which a reed closes"),
    Flag.of("--drop-out", "LENGTH", LENGTH, "9.5 mm", "half width at which it opens again"),
    Flag.of("--tolerance", "SHARE", Kind.quantity(Dimension.SHARE), "1 %", TOLERANCE_MEANING)
        .sets("sender.tolerance"),
    Flag.of("--reading", "OHM", OHM, "1.5 ohm", "tolerance of the meter or ADC")
        .sets("sender.reading"),
  };

  @Override
  public String name() {
    return "level ladder";
  }

  @Override
  public Flag[] flags() {
    return FLAGS;
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

  /** Level of the lowest reed, or null when nothing says. */
  private static Double first(Call call) {
    Double own = call.from0("--first");
    return own != null ? own : mark(call, "lowest reed at tank.", "intake", "low");
  }

  /** Level of the highest reed, or null when nothing says. */
  private Double last(Call call, Double first) {
    Double own = call.above0("--last");
    Double length = call.above0("--length");
    if (own != null && length != null) {
      throw new Refused(CommandErrors.notBoth(this, "--last", "--length"));
    }
    if (length != null) {
      return first == null ? null : Double.valueOf(LadderDesign.lastOf(first, length));
    }
    return own != null ? own : mark(call, "highest reed at tank.", "full");
  }

  private static Double mark(Call call, String said, String... keys) {
    Section tank = call.plan().section("tank");
    for (int i = 0; i < keys.length; i++) {
      if (tank.has(keys[i])) {
        call.taken().note(said + keys[i]);
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
    int steps = (Integer) call.value("--steps");
    String equal = call.has("--equal") ? (String) call.value("--equal") : "ohms";
    Section section = call.plan().section("tank");
    Tank tank = TankOf.isKnown(section) ? TankOf.of(section, call.taken()) : null;
    double[] even = LadderDesign.equalOhms(ends[0], ends[1], steps);
    double[] reeds = reeds(call, equal, tank, steps);
    if (call.has("--bought")) {
      return LevelBought.answer(call, this, even, reeds, tank);
    }
    double[] target =
        "needle".equals(equal) ? LadderDesign.ohmsByVolume(ends[0], ends[1], tank, reeds) : even;
    LadderDesign design = LadderDesign.of(series(call), target);
    Limits limits = limits(call);
    return new LevelLadderWords(call, design, limits, reeds, equal)
        .say(rows(design, limits, reeds, tank), tank != null);
  }

  private static ESeries series(Call call) {
    if (call.has("--series")) {
      return series((String) call.value("--series"));
    }
    call.taken().note("E24 resistors");
    return ESeries.E24;
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
      TankOf.of(call.plan().section("tank"), call.taken());
    }
    Double first = first(call);
    Double last = last(call, first);
    if (first == null || last == null) {
      if ("ohms".equals(equal) && !call.has("--bought")) {
        return null;
      }
      throw new Refused(LevelErrors.noReedLevels(this));
    }
    return "litres".equals(equal)
        ? LadderDesign.equalVolumeReeds(tank, first, last, steps)
        : LadderDesign.evenLevels(first, last, steps);
  }

  private static Limits limits(Call call) {
    Section sender = call.plan().section("sender");
    return new Limits(
        sender.get("reading", call.taken()),
        sender.get("tolerance", call.taken()),
        0,
        Limits.DEFAULT_OPEN_ABOVE,
        Limits.DEFAULT_SHORT_BELOW);
  }

  private static Answer rows(LadderDesign design, Limits limits, double[] reeds, Tank tank) {
    Answer answer =
        new Answer(REED, LEVEL, VOLUME, TARGET, RESISTOR, NODE, ERROR, APART, WORST).asList();
    int n = design.node().length;
    for (int i = 0; i < n; i++) {
      Row row = fill(answer.row(), design, i);
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
    return answer;
  }

  private static Row fill(Row row, LadderDesign design, int i) {
    return row.set(REED, i + 1)
        .set(TARGET, design.target()[i])
        .set(RESISTOR, design.resistor()[i])
        .set(NODE, design.node()[i])
        .set(ERROR, design.error(i))
        .set(WORST, design.maxError());
  }
}
