package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.RowTable;
import leat.command.run.DutyCommand;
import leat.hydraulics.TankDrain;
import leat.level.Dipstick;
import leat.level.Pours;
import leat.level.StrappingTable;
import leat.level.Tank;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
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
  static final Column MM_PER_L = Column.number("mm_per_L", "mm a litre", 3);
  static final Column TO_FULL = Column.of("to_full_L", "to full", Show.L);
  static final Column TO_RIM = Column.of("to_rim_L", "to the rim", Show.L);
  static final Column AREA = Column.of("surface_cm2", "surface", Show.CM2);
  static final Column DRAIN = Column.of("drain_s", "out by the drain", Show.S);
  static final Column LEFT = Column.of("left_L", "left under the drain", Show.L);
  static final Column NEEDED = Column.of("needed_L", "must hold at full", Show.L);
  static final Column DRUNK = Column.of("drunk_L", "drunk", Show.L);
  static final Column BELOW_LOW = Column.of("below_low_L", "below the refill mark", Show.L);
  static final Column FITS = Column.plain("fits", "fits");
  static final Column LASTS = Column.of("lasts_d", "a full tank lasts", Show.of(Units.D, 2));
  static final Column SCALE =
      Column.of("every_length_pct", "every length times", Show.PERCENT.digits(3));

  static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);

  @Override
  public String name() {
    return "tank";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--level", "LENGTH", LENGTH, "200 mm", "level over the inside of the floor")
          .repeatable(),
      Flag.of(
              "--volume",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "20 L",
              "litres whose level is asked")
          .repeatable(),
      Flag.of(
          "--every", "STEP", LENGTH, "10 mm", "dipstick table, a row every so many millimetres"),
      Flag.of(
          "--thirst",
          "FLOW",
          Kind.quantity(Dimension.FLOW),
          "8 L/d",
          "what the plants drink: the size that is needed"),
      Flag.of("--days", "N", Kind.DAYS, "7", "days it must last, with --thirst"),
      Flag.of(
              "--shape",
              "SHAPE",
              Kind.choice("box", "tapered-box", "cylinder", "cone", "lying-cylinder", "table"),
              "tapered-box",
              "shape of the inside")
          .sets("tank.shape"),
      Flag.of("--top", "SIZE", Kind.SIZE, "540 mm x 360 mm", "inside at the rim").sets("tank.top"),
      Flag.of("--bottom", "SIZE", Kind.SIZE, "480 mm x 300 mm", "inside at the floor")
          .sets("tank.bottom"),
      Flag.of("--diameter", "LENGTH", LENGTH, "450 mm", "inside diameter of a cylinder")
          .sets("tank.diameter"),
      Flag.of("--length", "LENGTH", LENGTH, "800 mm", "inside length of a lying cylinder")
          .sets("tank.length"),
      Flag.of("--height", "LENGTH", LENGTH, "330 mm", "inside height").sets("tank.height"),
      Flag.of("--corner", "LENGTH", LENGTH, "40 mm", "radius of the upright corners")
          .sets("tank.corner"),
      Flag.of("--corner-top", "LENGTH", LENGTH, "60 mm", "radius of the corners at the rim")
          .sets("tank.corner_top"),
      Flag.of("--table", "ROW", Kind.STRAP, "100 mm = 12.4 L", "a row of a strapping table")
          .sets("tank.table")
          .repeatable(),
      Flag.of(
          "--dipstick",
          "FILE",
          Kind.TEXT,
          "dipstick.csv",
          "levels and litres as --every prints them, instead of the shape; - is standard input"),
      Flag.of(
              "--drain-bore",
              "LENGTH",
              LENGTH,
              "19 mm",
              "inside diameter of the drain: how long it takes to empty")
          .sets("tank.drain.bore"),
      Flag.of("--drain-height", "LENGTH", LENGTH, "12 mm", "level of the drain's centre")
          .sets("tank.drain.height"),
      Flag.of("--full", "LENGTH", LENGTH, "280 mm", "level when full").sets("tank.full"),
      Flag.of("--low", "LENGTH", LENGTH, "80 mm", "refill mark").sets("tank.low"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    Section section = plan.section("tank");
    Tank tank = call.has("--dipstick") ? dipstick(call) : TankOf.of(section);
    if (call.has("--thirst")) {
      return need(call, section, tank);
    }
    if (call.has("--every")) {
      return table(call, section, tank);
    }
    if (!call.has("--level") && !call.has("--volume")) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this,
              "--level, --volume, --every or --thirst says what is asked, such as --level \"200 mm\""));
    }
    return levels(call, section, tank);
  }

  /** A tank from a file of level_mm and volume_L, in any order of rows. */
  private static Tank dipstick(Call call) {
    RowTable table = new RowTable(call, call.text("--dipstick"));
    int levelAt = table.column("level_mm", "mm", "level");
    int volumeAt = table.column("volume_L", "litres", "L", "volume");
    double[] levels = new double[table.size()];
    double[] volumes = new double[table.size()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = table.quantity(i, levelAt, Units.MM);
      volumes[i] = table.quantity(i, volumeAt, Units.L);
    }
    int[] order = Pours.order(levels);
    try {
      return new StrappingTable(
          Pours.inOrder(levels, order),
          Pours.inOrder(volumes, order),
          "smooth".equals(call.plan().section("tank").text("between"))
              ? StrappingTable.Between.MONOTONE_CUBIC
              : StrappingTable.Between.LINEAR);
    } catch (Impossible e) {
      throw table.bad(e);
    }
  }

  private Answer levels(Call call, Section section, Tank tank) {
    Answer answer =
        new Answer(LEVEL, VOLUME, ABOVE_LOW, TO_FULL, TO_RIM, MM_PER_L, AREA, DRAIN, LEFT);
    List<Object> asked = call.values("--level");
    for (int i = 0; i < asked.size(); i++) {
      row(answer, section, tank, (Double) asked.get(i));
    }
    List<Object> volumes = call.values("--volume");
    for (int i = 0; i < volumes.size(); i++) {
      row(answer, section, tank, tank.level((Double) volumes.get(i)));
    }
    Row first = answer.row(0);
    answer.sentence(sentence(first));
    if (answer.size() > 1) {
      answer.table(LEVEL, VOLUME, ABOVE_LOW, TO_FULL, TO_RIM);
    } else {
      answer.figure(first, TO_FULL, at(section, "full"));
      answer.figure(first, MM_PER_L);
      figures(answer, first, section);
    }
    call.withTaken(answer);
    if (call.has("--dipstick")) {
      answer.taken(Phrase.of("straight between the rows of ").add(call.text("--dipstick")));
      return answer;
    }
    answer.mind(
        "drawn-sizes",
        "from drawn sizes; a filled wall bulges, 1 to 3 % more at the top. Pour known litres to know.");
    answer.next("leat tank " + again(call) + "--every \"10 mm\" -o dipstick.csv");
    return answer;
  }

  private static void figures(Answer answer, Row row, Section section) {
    Double rain = section.maybe("rain_area");
    answer.figure(
        row,
        TO_RIM,
        rain == null
            ? Phrase.of()
            : Phrase.of("a 50 mm downpour on the lid brings ")
                .add(HeldWater.downpour(rain), Show.L));
    if (row.get(DRAIN) != null) {
      answer.figure(
          "out by the drain",
          Phrase.of("about ").duration((Double) row.get(DRAIN)),
          Phrase.of((Double) row.get(LEFT), Show.L).add(" stay under it"));
    }
  }

  private static String again(Call call) {
    return call.hasPlan() ? "--plan " + call.planName() + " " : "... ";
  }

  private static Phrase at(Section section, String name) {
    Double level = section.maybe(name);
    return level == null ? Phrase.of("needs tank." + name) : Phrase.of("at ").add(level, Show.MM);
  }

  private static void row(Answer answer, Section section, Tank tank, double level) {
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
    TankDrain out = drain.has("bore") ? DrainOf.from(drain, tank, level) : null;
    if (out != null) {
      answer.row(answer.size() - 1).set(DRAIN, out.seconds()).set(LEFT, out.volumeLeft());
    }
  }

  private static Phrase sentence(Row row) {
    Phrase words =
        Phrase.of("At ")
            .add((Double) row.get(LEVEL), MM)
            .add(" the tank holds ")
            .add((Double) row.get(VOLUME), Show.L);
    Double above = (Double) row.get(ABOVE_LOW);
    if (above != null && above >= 0) {
      words.add(": ").add(above, Show.L).add(" above the refill mark");
    } else if (above != null) {
      words.add(": ").add(-above, Show.L).add(" below the refill mark");
    }
    return words.add(".");
  }

  private Answer table(Call call, Section section, Tank tank) {
    Answer answer = new Answer(LEVEL, VOLUME, ABOVE_LOW, MM_PER_L).asList();
    List<Dipstick.Mark> marks = Dipstick.marks(tank, call.above0("--every"), section.maybe("low"));
    for (int i = 0; i < marks.size(); i++) {
      Dipstick.Mark mark = marks.get(i);
      answer
          .row()
          .set(LEVEL, mark.level())
          .set(VOLUME, mark.volume())
          .set(ABOVE_LOW, mark.aboveLow())
          .set(MM_PER_L, mark.levelPerVolume());
    }
    answer.sentence(
        Phrase.of("Dipstick: ")
            .count(marks.size())
            .add(" marks, ")
            .add(tank.capacity(), Show.L)
            .add(" to the rim."));
    answer.table(LEVEL, VOLUME, ABOVE_LOW, MM_PER_L);
    call.withTaken(answer);
    return answer.mind(
        "drawn-sizes",
        "from drawn sizes; a filled wall bulges, 1 to 3 % more at the top. Pour known litres to know.");
  }

  private Answer need(Call call, Section section, Tank tank) {
    Double days = call.above0("--days");
    if (days == null) {
      throw call.needs("--days");
    }
    double full = section.need("full");
    double low = section.need("low");
    Dipstick.Need need =
        Dipstick.need(tank, low, full, call.from0("--thirst"), Units.D.toBase(days));
    Answer answer = new Answer(NEEDED, DRUNK, BELOW_LOW, FITS, LASTS, SCALE);
    Row row =
        answer
            .row()
            .set(NEEDED, need.needed())
            .set(DRUNK, need.drunk())
            .set(BELOW_LOW, need.unusable())
            .set(FITS, need.fits())
            .set(LASTS, need.lasts())
            .set(SCALE, need.scale());
    answer.sentence(
        Phrase.of(need.fits() ? "It is large enough: " : "It is too small: ")
            .add(DutyCommand.whole(days, 3))
            .add(" days need ")
            .add(need.needed(), Show.L)
            .add(" at full, ")
            .add(need.unusable(), Show.L)
            .add(" of it below the refill mark."));
    answer.figure(row, DRUNK);
    answer.figure(row, BELOW_LOW);
    answer.figure(row, LASTS);
    answer.figure(row, SCALE, Phrase.of("the same shape, just enough"));
    call.withTaken(answer);
    answer.mind(
        "thirst-grows",
        "a grown plant on a hot day drinks twice its mean; size for the hottest week.");
    return need.fits() ? answer : answer.no();
  }
}
