package leat.log.model;

import java.util.Locale;

/**
 * An invented tower for made logs: tank, sender, pump, logger. Written from sheet log.md alone; it
 * knows nothing of the engine that reads the logs.
 */
public record ModelSystem(
    String name,
    double[] tankMm,
    double[] tankL,
    double fullMm,
    double lowMm,
    double[] stepMm,
    double[] stepOhm,
    double hysteresisMm,
    double tolerance,
    boolean counts,
    int bits,
    double seriesOhm,
    double supplyV,
    int runS,
    int restS,
    int nightRunS,
    int nightRestS,
    double holdUpL,
    double thirstL,
    double rainM2,
    int intervalMin,
    double noise,
    String zone,
    String start,
    int days,
    String times,
    double weekGapDays) {

  static double straight(double[] x, double[] y, double at) {
    int i = 1;
    while (i < x.length - 1 && at > x[i]) {
      i++;
    }
    return y[i - 1] + (at - x[i - 1]) / (x[i] - x[i - 1]) * (y[i] - y[i - 1]);
  }

  double litres(double mm) {
    return straight(tankMm, tankL, mm);
  }

  double mm(double litres) {
    return straight(tankL, tankMm, Math.max(0, litres));
  }

  double height() {
    return tankMm[tankMm.length - 1];
  }

  double rimMm() {
    return height() - 8;
  }

  double meanStepL() {
    int n = stepMm.length;
    return (litres(stepMm[n - 1]) - litres(stepMm[0])) / (n - 1);
  }

  /** The plan a user would have. */
  public String plan() {
    StringBuilder p = new StringBuilder();
    p.append("name: ").append(name).append("\nsite: {time_zone: ").append(zone).append("}\n");
    p.append("tank:\n  shape: table\n  table: [");
    for (int i = 0; i < tankMm.length; i++) {
      p.append(i == 0 ? "" : ", ").append(tankMm[i]).append(" mm = ").append(tankL[i]).append(" L");
    }
    p.append("]\n  height: ").append(height()).append(" mm\n  full: ").append(fullMm);
    p.append(" mm\n  low: ").append(lowMm).append(" mm\n  intake: ").append(stepMm[0] - 5);
    p.append(" mm\n  rim_overflow: ").append(rimMm()).append(" mm\n  rain_area: ").append(rainM2);
    p.append(" m2\nsender:\n  steps: [");
    for (int i = 0; i < stepMm.length; i++) {
      p.append(i == 0 ? "" : ", ")
          .append(stepMm[i])
          .append(" mm = ")
          .append(stepOhm[i])
          .append(" ohm");
    }
    p.append("]\n  hysteresis: ").append(hysteresisMm).append(" mm\n  tolerance: ");
    p.append(String.format(Locale.ROOT, "%.1f %%", 100 * tolerance));
    p.append(
        "\n  lead: 0.5 ohm\n  open_above: 1000 ohm\n  short_below: 2 ohm\n  divider: {supply: ");
    p.append(supplyV)
        .append(" V, resistor: ")
        .append(seriesOhm)
        .append(" ohm, bits: ")
        .append(bits);
    p.append(", reference: ").append(supplyV).append(" V}\n");
    p.append("pump: {power: 20 W}\ntiming:\n  - {run: ")
        .append(runS)
        .append(" s, rest: ")
        .append(restS);
    p.append(" s}\n  - {run: ").append(nightRunS).append(" s, rest: ").append(nightRestS);
    p.append(
        " s, from: \"22:00\", to: \"06:00\"}\ndry_limit: {day: 45 min, night: 45 min, alarm: 45 min}\n");
    p.append("cap_sensor: {wet: 1350, dry: 2750}\nhold_up: ").append(holdUpL).append(" L\n");
    return p.toString();
  }

  private static double[] even(double from, double by, int n) {
    double[] all = new double[n];
    for (int i = 0; i < n; i++) {
      all[i] = Math.round(10 * (from + by * i)) / 10.0;
    }
    return all;
  }

  /** Coarse and fine, rising and falling, ohms and counts; rhythm, sampling and noise as named. */
  public static ModelSystem[] all() {
    double[] tubMm = {0, 80, 160, 240, 330};
    double[] tubL = {0, 11.8, 24.5, 38.1, 54.6};
    double[] barrelMm = {0, 100, 200, 300, 400, 500, 560};
    double[] barrelL = {0, 13, 28.6, 45.7, 63.4, 80.2, 88.9};
    double[] smallMm = {0, 100, 200, 260};
    double[] smallL = {0, 9.4, 19.8, 26.6};
    return new ModelSystem[] {
      new ModelSystem(
          "tub-10",
          tubMm,
          tubL,
          285,
          80,
          even(40, 20, 12),
          even(10, 16, 12),
          4,
          0.02,
          false,
          12,
          220,
          3.3,
          90,
          720,
          60,
          1500,
          1.3,
          4.2,
          0.25,
          10,
          1,
          "Europe/Vienna",
          "2027-05-20",
          24,
          "offset",
          0),
      new ModelSystem(
          "barrel-15",
          barrelMm,
          barrelL,
          500,
          110,
          even(60, 25, 18),
          even(240, -12.2, 18),
          5,
          0.01,
          true,
          10,
          330,
          5,
          120,
          1080,
          90,
          2310,
          2.4,
          4.0,
          0.12,
          15,
          1,
          "Europe/Vienna",
          "2027-03-16",
          26,
          "local",
          0),
      new ModelSystem(
          "coarse-5",
          barrelMm,
          barrelL,
          500,
          120,
          even(70, 60, 8),
          even(20, 25, 8),
          9,
          0.03,
          false,
          12,
          220,
          3.3,
          300,
          900,
          180,
          3000,
          3.0,
          8.5,
          0.2,
          5,
          1,
          "America/New_York",
          "2027-06-28",
          24,
          "utc",
          0),
      new ModelSystem(
          "fine-1",
          smallMm,
          smallL,
          235,
          55,
          even(25, 12, 18),
          even(8, 11, 18),
          3,
          0.01,
          true,
          12,
          220,
          3.3,
          45,
          555,
          45,
          1155,
          0.8,
          2.6,
          0.1,
          1,
          1,
          "Europe/Vienna",
          "2027-07-01",
          18,
          "unix",
          0),
      new ModelSystem(
          "hourly-60",
          barrelMm,
          barrelL,
          500,
          110,
          even(60, 25, 18),
          even(15, 12, 18),
          5,
          0.01,
          false,
          12,
          330,
          3.3,
          120,
          1380,
          120,
          3420,
          1.8,
          5.5,
          0.15,
          60,
          1,
          "Europe/Vienna",
          "2027-06-01",
          28,
          "offset",
          0),
      new ModelSystem(
          "noisy-10",
          tubMm,
          tubL,
          285,
          80,
          even(40, 20, 12),
          even(190, -15, 12),
          4,
          0.02,
          false,
          12,
          220,
          3.3,
          90,
          720,
          60,
          1500,
          1.3,
          4.2,
          0.25,
          10,
          2,
          "Pacific/Auckland",
          "2027-09-10",
          26,
          "local",
          0),
      new ModelSystem(
          "week-gap",
          barrelMm,
          barrelL,
          500,
          110,
          even(60, 25, 18),
          even(15, 12, 18),
          5,
          0.01,
          true,
          12,
          330,
          3.3,
          150,
          1350,
          90,
          2700,
          2.0,
          4.0,
          0.15,
          10,
          1,
          "Europe/Vienna",
          "2027-05-25",
          34,
          "utc",
          7),
    };
  }
}
