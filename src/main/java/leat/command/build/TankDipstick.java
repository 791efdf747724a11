package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.RowTable;
import leat.level.Dipstick;
import leat.level.Pours;
import leat.level.StrappingTable;
import leat.level.Tank;
import leat.numeric.Impossible;
import leat.plan.Section;
import leat.quantity.Units;

/**
 * Dipstick tables of {@code leat tank}: {@code --every} writes one, {@code --dipstick} reads it.
 */
final class TankDipstick {
  /** In text of US units in place of mm per litre. */
  private static final Column PER_GALLON =
      Column.of("rise_per_gallon_mm", "rise per gallon", Show.MM);

  private static final Column MARKS = Column.number("marks", "marks", 5);
  private static final Column FILE = Column.plain("file", "file");

  private TankDipstick() {}

  /** A tank from a file of level_mm and volume_L, in any order of rows. */
  static Tank read(Call call) {
    RowTable table = new RowTable(call, call.text("--dipstick"));
    int levelAt = table.column("level_mm", "mm", "level");
    int volumeAt = table.column("volume_L", "litres", "L", "volume");
    double[] levels = new double[table.size()];
    double[] volumes = new double[table.size()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = table.quantity(i, levelAt, Units.MM);
      volumes[i] = table.quantity(i, volumeAt, Units.L);
    }
    return strapping(call, table, levels, volumes);
  }

  private static Tank strapping(Call call, RowTable table, double[] levels, double[] volumes) {
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

  /** Says which rows a tank was read from. */
  static Answer taken(Call call, Answer answer) {
    String file = call.text("--dipstick");
    return answer.taken(
        Row.aside(FILE).set(FILE, "-".equals(file) ? "standard input" : file),
        "straight between the rows of {file}");
  }

  static Answer answer(Call call, Section section, Tank tank) {
    Column rise = call.us() ? PER_GALLON : TankCommand.MM_PER_L;
    Answer answer =
        new Answer(TankCommand.LEVEL, TankCommand.VOLUME, TankCommand.ABOVE_LOW, rise).asList();
    List<Dipstick.Mark> marks = Dipstick.marks(tank, call.above0("--every"), section.maybe("low"));
    fill(answer, marks, rise);
    answer.sentence(
        Row.aside(MARKS, TankCommand.VOLUME)
            .set(MARKS, marks.size())
            .set(TankCommand.VOLUME, tank.capacity()),
        "Dipstick: {marks} marks, {volume_L} to the rim.");
    answer.table(TankCommand.LEVEL, TankCommand.VOLUME, TankCommand.ABOVE_LOW, rise);
    TankCommand.chart(call, answer, tank, section);
    call.withTaken(answer);
    return TankCommand.isPoured(call, section)
        ? answer
        : answer.mind("drawn-sizes", TankCommand.DRAWN_SIZES);
  }

  private static void fill(Answer answer, List<Dipstick.Mark> marks, Column rise) {
    for (int i = 0; i < marks.size(); i++) {
      Dipstick.Mark mark = marks.get(i);
      answer
          .row()
          .set(TankCommand.LEVEL, mark.level())
          .set(TankCommand.VOLUME, mark.volume())
          .set(TankCommand.ABOVE_LOW, mark.aboveLow())
          .set(rise, rise == PER_GALLON ? perGallon(mark.levelPerVolume()) : mark.levelPerVolume());
    }
  }

  private static Double perGallon(Double levelPerVolume) {
    return levelPerVolume == null
        ? null
        : Double.valueOf(Dipstick.rise(levelPerVolume, Units.GALLON.toBase(1)));
  }
}
