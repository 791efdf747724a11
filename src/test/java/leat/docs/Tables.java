package leat.docs;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Command lines that read a table, and tables with damaged bytes, cells and lines. */
final class Tables {
  /** A table, and lines that read it; what stands for the table is {@link Trial#FILE}. */
  private static final String[][] READERS = {
    {"week-log.csv", "log FILE --plan logged-tub.yaml"},
    {"week-log.csv", "log FILE --plan logged-tub.yaml --days --format csv"},
    {"week-log.csv", "log FILE --plan logged-tub.yaml --rows --format csv"},
    {"week-log.csv", "log FILE --plan logged-tub.yaml --alarm --days-left 2"},
    {"week-log.csv", "ec --column ec_mS_cm --unit mS/cm --prefix x_ --rows FILE"},
    {"week-log.csv", "topup --plan logged-tub.yaml --column ohm --ec-column ec_mS_cm --rows FILE"},
    {"sender-log.csv", "level --plan sender-tub.yaml --column ohm --rows FILE"},
    {"sender-log.csv", "level --plan sender-tub.yaml --column ohm --rows FILE --strict"},
    {"sender-log.csv", "ec --column ohm --unit ppm --scale 500 --rows FILE --format json"},
    {"dipstick.csv", "tank --dipstick FILE --level 185mm"},
    {"dipstick.csv", "tank --dipstick FILE --volume 20L --format json"},
    {"pours.csv", "level fit FILE"},
    {"pours.csv", "level fit FILE --plan sender-tub.yaml --format csv"},
    {"designs", "sweep first-tower.yaml --rows FILE --all --format csv"},
    {"weather-seattle.csv", "season balcony.yaml --set site.weather=FILE --by month --format csv"},
    {"weather-seattle.csv", "season balcony.yaml --set site.weather=FILE --format json"},
    {"weather-seattle.csv", "sow balcony.yaml --set site.weather=FILE"}
  };

  private static final String DESIGNS =
      "towers[*].riser.bore,pump.derate\n10 mm,70 %\n13 mm,85 %\n16 mm,0.8\n";

  private static final String[] SCRAPS = {
    ",",
    ";",
    "\t",
    "\"",
    "\"\"",
    "\r",
    "\r\n",
    "\n",
    "\n\n",
    " ",
    "'",
    "\u0000",
    "\u001b[2J",
    "\u00ef\u00bb\u00bf",
    "\u00ff",
    "\u00c2",
    "\u00e2\u0080\u00ae",
    "nan",
    "inf",
    "-",
    "--",
    "1e999",
    "-0.0",
    "1e-320",
    "1,5",
    "0x1F",
    "open",
    "#",
    "=1+1",
    "@x",
    "999999999999999999999",
    "2027-02-30",
    "2027-03-28T02:30:00+01:00",
    "24:00",
    "9999-12-31",
    "0",
    "-1"
  };

  private final Random random;
  private final Map<String, String> files;

  Tables(Random random, Map<String, String> files) {
    this.random = random;
    this.files = files;
  }

  Trial next() {
    String[] reader = READERS[random.nextInt(READERS.length)];
    String table = reader[0].equals("designs") ? DESIGNS : some(files.get(reader[0]));
    List<String> args =
        new ArrayList<>(Arrays.asList(reader[1].replace("FILE", Trial.FILE).split(" ")));
    for (int n = random.nextInt(5); n > 0; n--) {
      table = random.nextInt(3) == 0 ? bytes(table) : cells(table);
    }
    return new Trial(args, table);
  }

  /** The header and some lines in a row: whole files would only be slow. */
  private String some(String table) {
    String[] lines = table.split("\n", -1);
    int count = lines.length < 60 ? lines.length - 1 : 1 + random.nextInt(60);
    // Weather wants years to be of use.
    count = random.nextInt(8) == 0 ? lines.length - 1 : count;
    int from = 1 + random.nextInt(lines.length - count);
    StringBuilder out = new StringBuilder(lines[0]);
    for (int i = from; i < from + count; i++) {
      out.append('\n').append(lines[i]);
    }
    return out.append(random.nextInt(6) == 0 ? "" : "\n").toString();
  }

  private String scrap() {
    return SCRAPS[random.nextInt(SCRAPS.length)];
  }

  private String bytes(String table) {
    int at = random.nextInt(table.length() + 1);
    switch (random.nextInt(6)) {
      case 0:
        return table.substring(0, at);
      case 1:
        return table.substring(0, at) + scrap() + table.substring(at);
      case 2:
        return table.substring(0, at) + (char) random.nextInt(256) + table.substring(at);
      case 3:
        return table.substring(Math.min(at, 40)) + table;
      case 4:
        return table.substring(0, at) + table.substring(Math.min(table.length(), at + 9));
      default:
        return table.replace(",", scrap()).replace("\n", random.nextBoolean() ? "\r\n" : "\n");
    }
  }

  private String cells(String table) {
    List<String> lines = new ArrayList<>(Arrays.asList(table.split("\n", -1)));
    int at = random.nextInt(3) == 0 ? 0 : random.nextInt(lines.size());
    String[] cells = lines.get(at).split(",", -1);
    int cell = random.nextInt(cells.length);
    switch (random.nextInt(7)) {
      case 0:
        cells[cell] = scrap();
        break;
      case 1:
        cells[cell] = "\"" + cells[cell] + scrap();
        break;
      case 2:
        cells[cell] = cells[random.nextInt(cells.length)];
        break;
      case 3:
        cells[cell] = Mutations.of(random, cells[cell]);
        break;
      case 4:
        lines.add(at, lines.get(random.nextInt(lines.size())));
        return String.join("\n", lines);
      case 5:
        lines.remove(at);
        return String.join("\n", lines);
      default:
        cells = Arrays.copyOf(cells, Math.max(1, cells.length + random.nextInt(3) - 1));
        cells[cells.length - 1] = String.valueOf(random.nextInt(1000));
    }
    lines.set(at, String.join(",", cells));
    // A cell may have got letters beyond one byte.
    return Trial.latin(utf8(String.join("\n", lines)));
  }

  private static byte[] utf8(String text) {
    for (char c : text.toCharArray()) {
      if (c > 255) {
        return text.getBytes(StandardCharsets.UTF_8);
      }
    }
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
