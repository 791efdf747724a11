package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.feed.MixErrors;
import leat.hydraulics.TankDrain;
import leat.level.Dipstick;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.system.DrainOf;
import leat.system.HeldWater;
import leat.system.TankOf;

/** {@code leat tank}: litres at a level and back, dipstick tables, size for a thirst. */
public final class TankCommand extends Command {
  static final Show MM = Show.MM.digits(4);
  static final Column LEVEL = Column.of("level_mm", "level", MM);
  static final Column VOLUME = Column.of("volume_L", "holds", Show.L);
  static final Column ABOVE_LOW = Column.of("above_low_L", "above low", Show.L);
  static final Column MM_PER_L = Column.number("mm_per_L", "mm per litre", 3);
  static final Column TO_FULL = Column.of("to_full_L", "to full", Show.L);
  static final Column TO_RIM = Column.of("to_rim_L", "to the rim", Show.L);
  static final Column AREA = Column.of("surface_cm2", "surface", Show.CM2);
  static final Column DRAIN = Column.of("drain_s", "out by the drain", Show.S);
  static final Column LEFT = Column.of("left_L", "left under the drain", Show.L);

  private static final Column OVERFLOW = Column.of("overflow_mm", "overflow", Show.MM);
  private static final Column FULL = Column.of("full_mm", "full", Show.MM);
  private static final String[] SHAPE = {
    "--shape",
    "--top",
    "--bottom",
    "--diameter",
    "--length",
    "--height",
    "--corner",
    "--corner-top",
    "--floor-rise",
    "--floor-flat",
    "--surface",
    "--table",
    "--full",
    "--low"
  };
  private static final Column RAIN = Column.of("downpour_L", "downpour", Show.L);
  private static final Column SIGHT = Column.of("under_low_L", "below low", Show.L);
  private static final Column DEPTH = Column.of("depth_mm", "rain", Show.MM.digits(2));
  private static final Column POURED = Column.of("poured_L", "poured", Show.L.digits(1));
  private static final Column RISE = Column.of("rise_mm", "rise", Show.MM);

  static final String DRAWN_SIZES =
      "from drawn sizes; a filled wall bulges, 1 to 3 % more at the top. Pour known amounts to know.";

  @Override
  public String name() {
    return "tank";
  }

  @Override
  public boolean eachPlan() {
    return true;
  }

  @Override
  public Flag[] flags() {
    return TankFlags.all();
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    Section section = plan.section("tank");
    Tank tank = call.has("--dipstick") ? TankDipstick.read(call) : TankOf.of(section, call.taken());
    if (call.has("--thirst") || call.has("--days")) {
      return TankNeed.answer(call, section, tank);
    }
    if (call.has("--every")) {
      return TankDipstick.answer(call, section, tank);
    }
    if (!call.has("--level") && !call.has("--volume")) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this,
              "--level, --volume, --every or --days says what is asked, such as --level \"200 mm\""));
    }
    return levels(call, section, tank);
  }

  private Answer levels(Call call, Section section, Tank tank) {
    Answer answer =
        new Answer(LEVEL, VOLUME, ABOVE_LOW, TO_FULL, TO_RIM, MM_PER_L, AREA, DRAIN, LEFT);
    rows(call, answer, section, tank);
    Row first = answer.row(0);
    sentence(answer, first);
    if (answer.size() > 1) {
      answer.table(LEVEL, VOLUME, ABOVE_LOW, TO_FULL, TO_RIM);
    } else {
      toFull(answer, first, section);
      rise(call, answer, first);
      figures(answer, first, section);
    }
    over(answer, section);
    working(answer, first, isPoured(call, section));
    chart(call, answer, tank, section);
    return drawn(call, call.withTaken(answer));
  }

  private static void working(Answer answer, Row row, boolean poured) {
    if (poured) {
      answer.working(
          row,
          VOLUME,
          "through the rows of levels and amounts",
          "level {level_mm}",
          "from the lowest row to the highest",
          "amounts poured in and levels read");
      return;
    }
    answer.working(
        row,
        VOLUME,
        "V = integral of A(z) from the floor to the level, bodies in it taken away",
        "level {level_mm}",
        "inside sizes as drawn; a filled wall bulges 1 to 3 %",
        "solid geometry: prisms, frustums, caps");
  }

  private void rows(Call call, Answer answer, Section section, Tank tank) {
    List<Object> asked = call.values("--level");
    for (int i = 0; i < asked.size(); i++) {
      row(answer, section, tank, (Double) asked.get(i), call.taken());
    }
    List<Object> volumes = call.values("--volume");
    for (int i = 0; i < volumes.size(); i++) {
      row(answer, section, tank, level(call, tank, (Double) volumes.get(i), i), call.taken());
    }
  }

  /** Whether levels and litres were poured and read, so that no wall bulges beside them. */
  static boolean isPoured(Call call, Section section) {
    return call.has("--dipstick") || "table".equals(section.text("shape"));
  }

  /** What the tank's shape comes from: rows of a dipstick, or drawn sizes. */
  private static Answer drawn(Call call, Answer answer) {
    if (call.has("--dipstick")) {
      return TankDipstick.taken(call, answer);
    }
    if (!isPoured(call, call.plan().section("tank"))) {
      answer.mind("drawn-sizes", DRAWN_SIZES);
    }
    return answer.next(
        call.again("tank", SHAPE)
            + (call.us() ? " --every 1in" : " --every 10mm")
            + " --format csv -o dipstick.csv");
  }

  static void chart(Call call, Answer answer, Tank tank, Section section) {
    if (call.wantsChart()) {
      answer.chart(TankChart.of(answer, tank, section, !call.has("--every")));
    }
  }

  /** Level of a volume, which must go in: up to the rim. */
  private static double level(Call call, Tank tank, double volume, int i) {
    if (volume > tank.capacity()) {
      throw new Refused(
          MixErrors.overTheRim(
              "--volume", call.texts("--volume").get(i), tank.capacity(), call.us()));
    }
    return tank.level(volume);
  }

  /** Water over the full mark, or over the overflow. */
  private static void over(Answer answer, Section section) {
    Double overflow = section.maybe("rim_overflow");
    Double full = section.maybe("full");
    for (int i = 0; i < answer.size(); i++) {
      Double level = (Double) answer.row(i).get(LEVEL);
      Row marks =
          answer.row(i).with(Row.aside(OVERFLOW, FULL).set(OVERFLOW, overflow).set(FULL, full));
      if (overflow != null && level > overflow) {
        answer.mind(
            "over-overflow",
            marks,
            "{volume_L} stand at {level_mm}, over the overflow at {overflow_mm}: it spills before.");
      } else if (full != null && level > full) {
        answer.mind(
            "over-full", marks, "{volume_L} stand at {level_mm}, over the full mark at {full_mm}.");
      }
    }
  }

  private static void figures(Answer answer, Row row, Section section) {
    Double rain = section.maybe("rain_area");
    if (rain == null) {
      answer.figure(row, TO_RIM, "");
    } else {
      Row wet =
          row.with(
              Row.aside(RAIN, DEPTH)
                  .set(RAIN, HeldWater.downpour(rain))
                  .set(DEPTH, HeldWater.DOWNPOUR));
      answer.figure(
          TO_RIM.label(),
          wet,
          "{to_rim_L}",
          "a downpour of {depth_mm} on the lid brings {downpour_L}");
    }
    if (row.get(DRAIN) != null) {
      answer.figure("out by the drain", row, "about {drain_s:duration}", "{left_L} stay under it");
    }
  }

  private static void rise(Call call, Answer answer, Row row) {
    Double slope = (Double) row.get(MM_PER_L);
    if (slope != null) {
      double poured = call.us() ? Units.GALLON.toBase(1) : Dipstick.POURED;
      answer.figure(
          "more water",
          Row.aside(POURED, RISE).set(POURED, poured).set(RISE, Dipstick.rise(slope, poured)),
          "{poured_L} lifts the level by {rise_mm}");
    }
  }

  private static void toFull(Answer answer, Row row, Section section) {
    Double full = section.maybe("full");
    if (full == null) {
      answer.figure(TO_FULL.label(), row, "-", "needs tank.full");
      return;
    }
    Double rest = (Double) row.get(TO_FULL);
    boolean over = rest != null && rest < 0;
    Row marks =
        Row.aside(FULL, SIGHT).set(FULL, full).set(SIGHT, over ? Double.valueOf(-rest) : null);
    answer.figure(
        TO_FULL.label(),
        row.with(marks),
        over ? "{under_low_L} over it" : "{to_full_L}",
        "at {full_mm}");
  }

  private static void row(Answer answer, Section section, Tank tank, double level, Taken taken) {
    Double low = section.maybe("low");
    Double full = section.maybe("full");
    Dipstick.Mark mark = Dipstick.at(tank, level, low);
    answer
        .row()
        .set(LEVEL, mark.level())
        .set(VOLUME, mark.volume())
        .set(ABOVE_LOW, mark.aboveLow())
        .set(TO_FULL, full == null ? null : Double.valueOf(Dipstick.between(tank, level, full)))
        .set(TO_RIM, Dipstick.between(tank, level, tank.height()))
        .set(MM_PER_L, mark.levelPerVolume())
        .set(AREA, mark.area());
    Section drain = section.section("drain");
    TankDrain out = drain.has("bore") ? DrainOf.from(drain, tank, level, taken) : null;
    if (out != null) {
      answer.row(answer.size() - 1).set(DRAIN, out.seconds()).set(LEFT, out.volumeLeft());
    }
  }

  private static void sentence(Answer answer, Row row) {
    Double above = (Double) row.get(ABOVE_LOW);
    if (above == null) {
      answer.sentence(row, "At {level_mm} the tank holds {volume_L}.");
    } else if (above >= 0) {
      answer.sentence(
          row, "At {level_mm} the tank holds {volume_L}: {above_low_L} above the refill mark.");
    } else {
      answer.sentence(
          row.with(Row.aside(SIGHT).set(SIGHT, -above)),
          "At {level_mm} the tank holds {volume_L}: {under_low_L} below the refill mark.");
    }
  }
}
