package leat.html;

import java.util.List;

/** Command lines over the examples whose pages are looked at: one of each command that draws. */
final class Drawn {
  private Drawn() {}

  static List<String[]> lines() {
    return List.of(
        line("pump", "--plan", "first-tower.yaml"),
        line("tank", "--plan", "first-tower.yaml", "--level", "200 mm"),
        line("wind", "--plan", "roof.yaml"),
        line("level", "83", "--plan", "sender-tub.yaml"),
        line("log", "week-log.csv", "--plan", "logged-tub.yaml"),
        line("topup", "--plan", "hard-water.yaml", "--reading", "119", "--ec", "1.9 mS/cm"),
        line(
            "topup",
            "--plan",
            "weighed-salts.yaml",
            "--volume",
            "30 L",
            "--ec",
            "1.2 mS/cm",
            "--weigh",
            "leaf-mix=110",
            "--weigh",
            "calcium-nitrate-4h2o=90",
            "--makes",
            "200 L"),
        line(
            "stock",
            "--weigh",
            "calcium-nitrate-4h2o=180",
            "--weigh",
            "potassium-nitrate=80",
            "--weigh",
            "magnesium-sulfate-7h2o=95",
            "--bottle",
            "1 L",
            "--makes",
            "200 L",
            "--coldest",
            "10 C"),
        line("duty", "--plan", "night-rate.yaml"),
        line("sow", "balcony.yaml"),
        line("season", "balcony.yaml"),
        line("check", "terrace.yaml"),
        line(
            "sweep",
            "first-tower.yaml",
            "--vary",
            "towers[*].riser.bore=10mm,13mm,16mm",
            "--vary",
            "pump.derate=70%,85%",
            "--all"),
        line("sweep", "terrace.yaml", "--nudge", "--measure", "flow_low_L_min"));
  }

  private static String[] line(String... words) {
    return words;
  }
}
