package leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * Bores that one can buy, and the next one up or down. Advice names one of these, never 13.37 mm.
 *
 * <p>Source: sheet hydraulics-bores.md and its rows; check values: hydraulics-bores.csv. "Usual" is
 * practice: no shop was asked.
 */
public final class Bores {
  /** Sold by their inside: what is taken when the present tube is of no known family. */
  public static final String HOSE = "hose";

  /** The bore through a barb, named by the hose it is for; no tube. */
  public static final String BARB = "barb";

  /** Inch and metric names differ by 0.2 mm: 12.52 mm is met by a 12.5 mm hose, m. */
  public static final double TO_SPARE = 0.05e-3;

  /** Less gain in flow than this is not worth another tube, - (practice). */
  public static final double LEAST_GAIN = 0.01;

  private static final String[] FAMILY = {
    HOSE, "inch-tube", "silicone", "vinyl", "pe", "drip", "pex-us", "pex", "sch40", "pvc-u", BARB
  };

  private static final String[] ABOUT = {
    "hose of PVC or rubber, garden hose: the number is the inside",
    "vinyl tube or garden hose in inches: the number is the inside",
    "silicone tube: the number is the inside",
    "clear PVC hose, inside x outside",
    "PE pipe after EN 12201 and ISO 4427: the number is the outside",
    "irrigation pipe: 16 mm is the outside, 1/2 in is a name",
    "PEX in inches, SDR 9: the number is a name",
    "PEX, outside x wall",
    "schedule 40 PVC: the number is a name; the mean bore",
    "PVC-U, outside x wall",
    "bore through a hose barb"
  };

  private static final int OF_ROW = 9;
  private static final int FIRST_ROW = 4;

  private Bores() {}

  /** Names of the families, kebab-case. */
  public static String[] families() {
    return FAMILY.clone();
  }

  /**
   * What the number of a family means, in words.
   *
   * @throws Impossible for an unknown family
   */
  public static String about(String family) {
    return ABOUT[known(family)];
  }

  /** All rows, families in the order of {@link #families()}. */
  public static List<Bore> all() {
    List<Bore> all = new ArrayList<>();
    for (String[] group : BoreSizes.GROUPS) {
      read(group, all);
    }
    return all;
  }

  /**
   * The rows of a family, from the narrowest.
   *
   * @param family one of {@link #families()}
   * @param rareToo also those that are hard to find
   * @throws Impossible for an unknown family
   */
  public static List<Bore> family(String family, boolean rareToo) {
    known(family);
    List<Bore> rows = new ArrayList<>();
    for (String[] group : BoreSizes.GROUPS) {
      if (group[0].equals(family)) {
        read(group, rows);
      }
    }
    List<Bore> sorted = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Bore row = rows.get(i);
      if (row.usual() || rareToo) {
        int at = sorted.size();
        while (at > 0 && sorted.get(at - 1).bore() > row.bore()) {
          at--;
        }
        sorted.add(at, row);
      }
    }
    return sorted;
  }

  /**
   * The family of a tube by its bore: the first with a usual row within {@link #TO_SPARE}, hose
   * when there is none (our choice).
   *
   * @param bore of the present tube, m
   * @return name of the family
   */
  public static String familyOf(double bore) {
    for (String family : FAMILY) {
      if (!family.equals(BARB) && holds(family(family, false), bore)) {
        return family;
      }
    }
    return HOSE;
  }

  private static boolean holds(List<Bore> rows, double bore) {
    for (int i = 0; i < rows.size(); i++) {
      if (same(rows.get(i), bore)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a tube is not wider than a bore.
   *
   * @param tube the tube
   * @param bore m
   * @return yes or no
   */
  public static boolean notOver(Bore tube, double bore) {
    return tube.bore() <= bore + TO_SPARE;
  }

  /**
   * Whether a tube is the present one.
   *
   * @param tube the tube
   * @param present bore of the present one, m
   * @return yes or no
   */
  public static boolean same(Bore tube, double present) {
    return Math.abs(tube.bore() - present) <= TO_SPARE;
  }

  private static void read(String[] group, List<Bore> into) {
    for (int i = FIRST_ROW; i < group.length; i++) {
      String[] cell = cells(group[i]);
      into.add(
          new Bore(
              group[0],
              cell[0],
              cell[1],
              metres(cell[2]).getAsDouble(),
              metres(cell[3]),
              metres(cell[4]),
              metres(cell[5]),
              metres(cell[6]),
              cell[7].equals("usual"),
              group[1],
              group[2],
              cell[8].isEmpty() ? group[3] : cell[8]));
    }
  }

  private static String[] cells(String row) {
    String[] cells = new String[OF_ROW];
    int from = 0;
    for (int i = 0; i < OF_ROW - 1; i++) {
      int to = row.indexOf('|', from);
      cells[i] = row.substring(from, to);
      from = to + 1;
    }
    cells[OF_ROW - 1] = row.substring(from);
    return cells;
  }

  private static OptionalDouble metres(String millimetres) {
    return millimetres.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(millimetres) / 1000);
  }

  private static int known(String family) {
    int i = index(family);
    if (i < 0) {
      throw new Impossible("family", "no such family of tubes is known");
    }
    return i;
  }

  private static int index(String family) {
    for (int i = 0; i < FAMILY.length; i++) {
      if (FAMILY[i].equals(family)) {
        return i;
      }
    }
    return -1;
  }
}
