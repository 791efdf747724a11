package leat.command.sense;

import java.util.List;
import leat.level.Divider;
import leat.level.LookupTable;
import leat.level.Status;
import leat.quantity.NumberText;

/** The lookup table of a sender as C for a microcontroller: an array and a search in it. */
final class LevelArray {
  private final List<LookupTable.Row> rows;
  private final Divider divider;
  private final String plan;
  private final StringBuilder out = new StringBuilder();

  /** {@code divider} null gives ohms instead of counts. */
  LevelArray(List<LookupTable.Row> rows, Divider divider, String plan) {
    this.rows = rows;
    this.divider = divider;
    this.plan = plan;
  }

  String text() {
    head();
    struct();
    out.append("static const struct level_row level_table[] = {\n");
    int n = divider == null ? ohms() : counts();
    out.append("};\n\n");
    out.append("enum { LEVEL_ROWS = ").append(n).append(" };\n\n");
    lookUp();
    return out.toString();
  }

  private void head() {
    out.append("/* Stepped float sender of ")
        .append(comment(plan))
        .append(": what a reading says.\n");
    out.append(
        "   The tank holds from low_mL to high_mL; both are 0 where the status has no litres.\n");
    out.append("   Made by leat level table --c. */\n\n");
    out.append("enum level_status {\n");
    Status[] all = Status.values();
    for (int i = 0; i < all.length; i++) {
      out.append("  ").append(constant(all[i])).append(i + 1 < all.length ? ",\n" : "\n");
    }
  }

  private void struct() {
    out.append("};\n\nstruct level_row {\n");
    out.append(
        divider == null
            ? "  float below; /* ohm as the meter shows, lead included */\n"
            : "  unsigned long last; /* counts of the ADC */\n");
    out.append(
        "  unsigned char status;\n  unsigned long low_mL;\n  unsigned long high_mL;\n};\n\n");
  }

  private void lookUp() {
    String unit = divider == null ? "ohm" : "counts";
    out.append("/* The row of a reading in ").append(unit).append(". */\n");
    out.append("static const struct level_row *level_of(")
        .append(divider == null ? "float ohm" : "unsigned long counts")
        .append(") {\n  int i = 0;\n  while (i < LEVEL_ROWS - 1 && ")
        .append(divider == null ? "ohm >= level_table[i].below" : "counts > level_table[i].last")
        .append(") {\n    i++;\n  }\n  return &level_table[i];\n}\n");
  }

  /** A plan's name cannot end the comment it stands in. */
  private static String comment(String name) {
    return name.replace("*/", "* /").replace('\n', ' ');
  }

  private static String constant(Status status) {
    return "LEVEL_" + status.word().toUpperCase(java.util.Locale.ROOT).replace('-', '_');
  }

  private int ohms() {
    for (int i = 0; i < rows.size(); i++) {
      Double to = rows.get(i).ohmTo();
      String below = to == null ? "3.4e38f" : decimal(to) + "f";
      row(below, rows.get(i));
    }
    return rows.size();
  }

  private static String decimal(double ohm) {
    String text = NumberText.shortest(ohm);
    return text.indexOf('.') < 0 && text.indexOf('E') < 0 ? text + ".0" : text;
  }

  /** In order of counts, which is the other way round when the sender is on the supply's side. */
  private int counts() {
    int n = 0;
    boolean up = divider.side() == Divider.Side.LOW;
    for (int k = 0; k < rows.size(); k++) {
      LookupTable.Row stretch = rows.get(up ? k : rows.size() - 1 - k);
      if (stretch.countsFrom() >= 0) {
        row(stretch.countsTo() + "UL", stretch);
        n++;
      }
    }
    return n;
  }

  private void row(String until, LookupTable.Row stretch) {
    boolean band = stretch.reading().hasBand();
    out.append("  {").append(until).append(", ").append(constant(stretch.reading().status()));
    out.append(", ").append(band ? LookupTable.millilitresLow(stretch.reading()) : 0);
    out.append("UL, ").append(band ? LookupTable.millilitresHigh(stretch.reading()) : 0);
    out.append("UL},\n");
  }
}
