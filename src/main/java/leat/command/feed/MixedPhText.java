package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.plan.Section;
import leat.solution.acid.Carbonate;
import leat.solution.acid.MixedWater;

/** The pH of the tank once the water of a top-up is stirred in; told when the water is known. */
final class MixedPhText {
  static final Column PH = Column.number("ph_mixed", "pH when stirred", 3);
  static final Column OPEN = Column.number("ph_open_air_420ppm", "pH in open air", 2);
  static final Column STUFFY = Column.number("ph_open_air_2000ppm", "pH in stuffy air", 2);

  private final MixedWater mix;
  private final double wanted;

  private MixedPhText(MixedWater mix, double wanted) {
    this.mix = mix;
    this.wanted = wanted;
  }

  /** The pH of a mix; null when no water is poured, or water or tank are not known. */
  static MixedPhText of(Call call, Double keptL, Double waterL) {
    Section water = call.plan().section("water");
    Section target = call.plan().section("target");
    Double typed = call.quantity("--ph");
    boolean poured = keptL != null && waterL != null && waterL != 0;
    if (!poured || !water.has("alkalinity") || !water.has("ph")) {
      return null;
    }
    if (typed == null && !target.has("ph")) {
      return null;
    }
    double tank = typed == null ? target.need("ph") : typed;
    if (typed == null && keptL > 0) {
      call.taken().note("the tank at its target pH");
    }
    return new MixedPhText(
        mix(water, keptL, tank, waterL), target.has("ph") ? target.need("ph") : tank);
  }

  private static MixedWater mix(Section water, double keptL, double tank, double waterL) {
    Double celsius = water.maybe("temperature");
    return MixedWater.of(
        keptL,
        tank,
        waterL,
        water.need("alkalinity"),
        water.need("ph"),
        celsius == null ? Carbonate.USUAL_CELSIUS : celsius);
  }

  /** Columns with those of the pH behind them. */
  static Column[] with(Column[] columns, MixedPhText ph) {
    if (ph == null) {
      return columns;
    }
    Column[] all = java.util.Arrays.copyOf(columns, columns.length + 3);
    all[columns.length] = PH;
    all[columns.length + 1] = OPEN;
    all[columns.length + 2] = STUFFY;
    return all;
  }

  /** Fills the row and says it. */
  void figure(Answer answer, Row row) {
    row.set(PH, mix.ph()).set(OPEN, mix.openPh()).set(STUFFY, mix.stuffyPh());
    answer.figure(
        row,
        PH,
        mix.isOver(wanted)
            ? "climbs to pH {ph_open_air_2000ppm} to {ph_open_air_420ppm} in days without acid; feed holds it a little lower"
            : "stays near there");
  }
}
