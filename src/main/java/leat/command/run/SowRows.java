package leat.command.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.season.Batch;
import leat.system.Sown;

/** The batches, a row each, by sowing date. */
final class SowRows {
  static final Column CROP = Column.plain("crop", "crop");
  static final Column TOWER = Column.plain("tower", "tower");
  static final Column BATCH = Column.plain("batch", "batch");
  static final Column SOW = Column.plain("sow", "sow");
  static final Column TRANSPLANT = Column.plain("transplant", "to tower");
  static final Column HARVEST = Column.plain("harvest", "harvest");
  static final Column PLANTS = Column.plain("plants", "pots");
  static final Column SEEDS = Column.plain("seeds", "seeds");
  static final Column SEEDS_90 = Column.plain("seeds_90", "to be sure");

  private SowRows() {}

  /** A batch and its crop. */
  record Line(Sown crop, Batch batch) {}

  /** All batches with plants, by sowing date; crops of one day in the plan's order. */
  static List<Line> lines(List<Sown> crops) {
    List<Line> lines = new ArrayList<>();
    for (Sown crop : crops) {
      for (Batch batch : crop.batches().batches()) {
        lines.add(new Line(crop, batch));
      }
    }
    lines.sort(Comparator.comparing(line -> line.batch().sow()));
    return lines;
  }

  static Answer answer(List<Sown> crops) {
    Answer answer =
        new Answer(CROP, TOWER, BATCH, SOW, TRANSPLANT, HARVEST, PLANTS, SEEDS, SEEDS_90);
    for (Line line : lines(crops)) {
      Batch batch = line.batch();
      answer
          .row()
          .set(CROP, line.crop().name())
          .set(TOWER, line.crop().tower())
          .set(BATCH, batch.number())
          .set(SOW, batch.sow().toString())
          .set(TRANSPLANT, batch.transplant().toString())
          .set(HARVEST, batch.harvest().toString())
          .set(PLANTS, batch.plants())
          .set(SEEDS, batch.seeds())
          .set(SEEDS_90, batch.seeds90());
    }
    return answer;
  }
}
