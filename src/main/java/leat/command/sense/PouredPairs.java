package leat.command.sense;

import java.util.List;
import leat.cli.Call;
import leat.cli.RowTable;
import leat.level.Pours;
import leat.numeric.Impossible;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.quantity.Unreadable;

/** Pairs of litres and ohms from a file, in the order of the motion. */
public final class PouredPairs {
  private static final String[] LITRES = {
    "litres", "liters", "volume_L", "L", "poured_L", "added_L", "gal", "gallons", "volume_gal",
    "poured_gal", "added_gal", "qt", "quarts", "mL", "ml", "volume_mL", "poured_mL", "added_mL"
  };
  private static final Dimension[] OTHERS = {
    Dimension.LENGTH, Dimension.MASS, Dimension.TIME, Dimension.RESISTANCE, Dimension.TEMPERATURE
  };

  private final Call call;
  private final RowTable table;
  private final boolean cumulative;
  final String name;
  final Unit unit;
  double[] litres;
  double[] ohms;
  int[] rows;
  int left;

  PouredPairs(Call call, String file, boolean falling) {
    this.call = call;
    this.table = new RowTable(call, file);
    this.name = table.name();
    this.cumulative = call.has("--cumulative");
    String named = call.text("--litres-column");
    int litresAt = named == null ? table.column(LITRES) : table.column(named);
    this.unit = unit(named == null ? header(litresAt) : named);
    int ohmAt = ohmAt();
    double[] poured = new double[table.size()];
    double[] read = new double[table.size()];
    for (int i = 0; i < table.size(); i++) {
      row(i, litresAt, ohmAt, poured, read);
    }
    leaveOut(read);
    if (cumulative) {
      poured = totals(poured);
    }
    keep(poured, read, falling);
  }

  private int ohmAt() {
    String ohmColumn = call.text("--ohm-column");
    return ohmColumn == null
        ? table.column("ohm", "ohms", "reading_ohm", "reading")
        : table.column(ohmColumn);
  }

  private String header(int at) {
    for (int i = 0; i < LITRES.length; i++) {
      if (table.has(LITRES[i]) && table.column(LITRES[i]) == at) {
        return LITRES[i];
      }
    }
    return LITRES[0];
  }

  private void row(int i, int litresAt, int ohmAt, double[] poured, double[] read) {
    String cell = table.cell(i, litresAt);
    if (cell.isEmpty() && !cumulative) {
      read[i] = Double.NaN;
      return;
    }
    poured[i] = cell.isEmpty() ? 0 : table.quantity(i, litresAt, unit);
    if (poured[i] < 0 && !cumulative) {
      throw table.bad(i, litresAt, "litres in the tank cannot be negative");
    }
    try {
      read[i] = SenderReading.ohms(table.cell(i, ohmAt));
    } catch (Unreadable e) {
      throw table.bad(i, ohmAt, e.message());
    }
  }

  /** The unit of volume that a column's name ends in: "gal", "added_L"; null for none. */
  public static Unit volumeUnit(String column) {
    return unit(lastWord(column), Dimension.VOLUME);
  }

  private static String lastWord(String column) {
    int to = column.length();
    while (to > 0 && !Character.isLetterOrDigit(column.charAt(to - 1))) {
      to--;
    }
    int from = to;
    while (from > 0 && Character.isLetterOrDigit(column.charAt(from - 1))) {
      from--;
    }
    return column.substring(from, to);
  }

  /** Whether a column's name ends in a unit of length, as level_mm: no sender reads that. */
  public static boolean isLength(String column) {
    return unit(lastWord(column), Dimension.LENGTH) != null;
  }

  /** The unit that a column's name ends in; litres when it names none. */
  private Unit unit(String column) {
    String word = lastWord(column);
    Unit volume = unit(word, Dimension.VOLUME);
    if (volume != null) {
      return volume;
    }
    for (int i = 0; i < OTHERS.length; i++) {
      if (unit(word, OTHERS[i]) != null) {
        throw new Refused(LevelErrors.notAVolume(name, column));
      }
    }
    return Units.L;
  }

  private static Unit unit(String word, Dimension dimension) {
    try {
      return word.isEmpty() ? null : QuantityReader.read("1 " + word, dimension).unit();
    } catch (Unreadable e) {
      return null;
    }
  }

  private void leaveOut(double[] read) {
    List<Object> left = call.values("--leave-out");
    for (int i = 0; i < left.size(); i++) {
      int row = (Integer) left.get(i);
      if (row < 1 || row > read.length) {
        throw new Refused(LevelErrors.noRow(name, row, read.length));
      }
      read[row - 1] = Double.NaN;
    }
  }

  private double[] totals(double[] poured) {
    Double start = call.from0("--start");
    try {
      return Pours.runningTotals(start == null ? 0 : start, poured);
    } catch (Impossible e) {
      throw table.bad(e);
    }
  }

  private void keep(double[] poured, double[] read, boolean falling) {
    int n = closed(read);
    left = read.length - n;
    double[] volumes = new double[n];
    double[] values = new double[n];
    int[] at = new int[n];
    int k = 0;
    for (int i = 0; i < read.length; i++) {
      if (Math.abs(read[i]) < Double.POSITIVE_INFINITY) {
        volumes[k] = poured[i];
        values[k] = read[i];
        at[k++] = i + 1;
      }
    }
    if (!cumulative && !call.has("--totals") && Pours.looksLikeAdditions(volumes, values)) {
      throw new Refused(LevelErrors.additionsOrTotals(name));
    }
    inOrder(volumes, values, at, falling);
  }

  /** How many readings are not of an open wire, nor left out. */
  private static int closed(double[] read) {
    int n = 0;
    for (int i = 0; i < read.length; i++) {
      n += Math.abs(read[i]) < Double.POSITIVE_INFINITY ? 1 : 0;
    }
    return n;
  }

  private void inOrder(double[] volumes, double[] values, int[] at, boolean falling) {
    int n = at.length;
    int[] order = Pours.order(volumes);
    litres = new double[n];
    ohms = new double[n];
    rows = new int[n];
    for (int i = 0; i < n; i++) {
      int to = falling ? n - 1 - i : i;
      litres[to] = volumes[order[i]];
      ohms[to] = values[order[i]];
      rows[to] = at[order[i]];
    }
  }
}
