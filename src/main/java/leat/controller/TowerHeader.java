package leat.controller;

import java.util.ArrayList;
import java.util.List;

/** The whole header: what it was made from, what it lacks, and its pieces. */
public final class TowerHeader {
  private static final int LINE = 96;

  private final List<String> about = new ArrayList<>();
  private final StringBuilder pieces = new StringBuilder();
  private final String checksum;

  /**
   * @param checksum of the plan's text
   */
  public TowerHeader(String checksum) {
    this.checksum = checksum;
  }

  /** A line of the comment at the top; names from a plan are made harmless. */
  public TowerHeader about(String line) {
    about.add(CText.comment(line));
    return this;
  }

  /** The sender. */
  public TowerHeader add(SenderTable sender) {
    sender.write(pieces);
    return this;
  }

  /** The caps. */
  public TowerHeader add(CapTable cap) {
    cap.write(pieces);
    return this;
  }

  /** The timing. */
  public TowerHeader add(TimingTable timing) {
    timing.write(pieces);
    return this;
  }

  /** The meters. */
  public TowerHeader add(MeterFactors meters) {
    meters.write(pieces);
    return this;
  }

  /** A mark of the tank. */
  public TowerHeader mark(String name, long millilitres, String meaning) {
    CText.define(pieces, "TOWER_" + name + "_ML", CText.u32(millilitres), meaning);
    return this;
  }

  /** The header. */
  public String text() {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < about.size(); i++) {
      wrap(out, i == 0 ? "/* " : "   ", about.get(i));
    }
    out.append("   C99; it needs stdint.h alone. */\n#ifndef TOWER_H\n#define TOWER_H\n\n");
    out.append("#include <stdint.h>\n\n");
    CText.define(out, "TOWER_PLAN_SHA256", '"' + checksum + '"', "of the plan, as sha256sum");
    return out.append(pieces).append("\n#endif\n").toString();
  }

  private static void wrap(StringBuilder out, String indent, String words) {
    int column = indent.length();
    out.append(indent);
    for (String word : words.split(" ")) {
      if (column > indent.length() && column + word.length() + 1 > LINE) {
        out.append("\n     ");
        column = 5;
      } else if (column > indent.length()) {
        out.append(' ');
      }
      out.append(word);
      column += word.length() + 1;
    }
    out.append('\n');
  }
}
