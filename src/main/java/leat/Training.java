package leat;

import java.io.OutputStream;
import java.nio.file.Path;
import leat.command.Run;

/**
 * Runs a few command lines of one kind so that the classes they load go into a class-data archive;
 * the launcher calls it once for each Java.
 */
public final class Training {
  private static final String[][] SUMS = {
    {
      "head",
      "--flow",
      "8 L/min",
      "--lift",
      "1.9 m",
      "--bore",
      "13 mm",
      "--length",
      "2.2 m",
      "--k",
      "2.5",
      "--format",
      "json"
    },
    {
      "pump",
      "--shutoff-head",
      "2.4 m",
      "--max-flow",
      "1000 L/h",
      "--lift",
      "1.7 m",
      "--bore",
      "12 mm",
      "--length",
      "1.9 m"
    },
    {
      "tank",
      "--shape",
      "box",
      "--bottom",
      "540 mm x 360 mm",
      "--height",
      "330 mm",
      "--level",
      "200 mm",
      "--format",
      "csv"
    },
  };
  private static final String[][] PLANS = {
    {"tank", "--plan", "first-tower.yaml", "--level", "200 mm"},
    {"pump", "--plan", "terrace.yaml", "--format", "csv"},
    {"check", "terrace.yaml", "--format", "json"},
  };

  private Training() {}

  /** Arguments: the kind (sum or plan) and the folder of the example plans. */
  public static void main(String[] args) {
    String[][] lines = "plan".equals(args[0]) ? PLANS : SUMS;
    for (int i = 0; i < lines.length; i++) {
      Run.run(
          lines[i],
          Main.terminal(
              OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Path.of(args[1])));
    }
  }
}
