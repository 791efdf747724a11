package leat;

import java.io.OutputStream;
import java.nio.file.Path;
import leat.command.Commands;

/**
 * Runs a few command lines of one kind so that the classes they load go into a class-data archive;
 * the launcher calls it once for each Java.
 */
public final class Training {
  private static final String[][] SUMS = {
    // one line that goes through picocli, so that its classes are in the archive, too
    {"head", "-fcsv", "--flow=8 L/min", "--lift=1.9 m", "--bore=13 mm", "--length=2.2 m"},
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
    {"ec", "1.85 mS/cm", "--at", "18 C", "--format", "json"},
    {
      "dose",
      "--volume",
      "9 L",
      "--from",
      "0 mS/cm",
      "--to",
      "1 mS/cm",
      "--rate",
      "5 mL/L",
      "--rate-ec",
      "2 mS/cm"
    },
    {
      "dose",
      "salts",
      "--volume",
      "9 L",
      "--ask",
      "N=150",
      "--salt",
      "potassium-nitrate",
      "--format",
      "csv"
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
    {
      "topup",
      "--volume",
      "28..34 L",
      "--ec",
      "2.1 mS/cm",
      "--full",
      "45 L",
      "--target",
      "1.6 mS/cm",
      "--water-ec",
      "0.3 mS/cm",
      "--rate",
      "5 mL/L",
      "--rate-ec",
      "1.9 mS/cm"
    },
    {
      "acid",
      "--volume",
      "45 L",
      "--alkalinity",
      "180 mg/L",
      "--ph",
      "7.6",
      "--to",
      "5.8",
      "--acid",
      "nitric-38"
    },
    {
      "duty",
      "--power",
      "22 W",
      "--run",
      "90 s",
      "--rest",
      "12 min",
      "--price",
      "0.31 EUR/kWh",
      "--days",
      "180",
      "--against",
      "15 min/15 min"
    },
    {
      "stock",
      "--weigh",
      "calcium-nitrate-4h2o=180",
      "--weigh",
      "potassium-nitrate=134",
      "--weigh",
      "potassium-sulfate=66.8",
      "--bottle",
      "1 L",
      "--makes",
      "200 L",
      "--coldest",
      "5 C"
    },
  };
  private static final String[][] PLANS = {
    {"tank", "-pfirst-tower.yaml", "--level=200 mm"},
    {"topup", "--plan", "hard-water.yaml", "--reading", "119", "--ec", "1.9 mS/cm"},
    {"tank", "--plan", "first-tower.yaml", "--level", "200 mm"},
    {"pump", "--plan", "terrace.yaml", "--format", "csv"},
    {"level", "83", "--plan", "sender-tub.yaml"},
    {"check", "terrace.yaml", "--format", "json"},
    {"duty", "--plan", "night-rate.yaml"},
    {"log", "week-log.csv", "--plan", "logged-tub.yaml"},
  };

  /** Long work: loaded for season and sweep only, with what is banned from other starts. */
  private static final String[][] MANY = {
    {"sweep", "first-tower.yaml", "--vary", "towers[*].riser.bore=10mm,13mm", "--format", "csv"},
    {
      "sweep",
      "first-tower.yaml",
      "--vary",
      "towers[*].riser.bore=10mm,13mm",
      "--rank",
      "margin_pct"
    },
    {"season", "balcony.yaml", "--by", "month"},
  };

  private Training() {}

  /** Arguments: the kind (sum, plan or many) and the folder of the example plans. */
  public static void main(String[] args) {
    String[][] lines = "plan".equals(args[0]) ? PLANS : "many".equals(args[0]) ? MANY : SUMS;
    for (int i = 0; i < lines.length; i++) {
      Commands.run(
          lines[i],
          Main.terminal(
              OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Path.of(args[1])));
    }
  }
}
