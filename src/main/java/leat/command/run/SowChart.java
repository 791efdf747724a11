package leat.command.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.quantity.DateWords;
import leat.season.Batch;
import leat.system.Sown;

/** A bar a batch: in the nursery, then in the tower. */
final class SowChart {
  private SowChart() {}

  static Chart of(List<Sown> crops) {
    List<SowRows.Line> lines = SowRows.lines(crops);
    String[] names = new String[lines.size()];
    double[] sow = new double[names.length];
    double[] plant = new double[names.length];
    double[] harvest = new double[names.length];
    Phrase[] nursery = new Phrase[names.length];
    Phrase[] tower = new Phrase[names.length];
    boolean anyNursery = false;
    for (int i = 0; i < names.length; i++) {
      Batch batch = lines.get(i).batch();
      String crop = lines.get(i).crop().name();
      names[i] = (crop == null ? "batch" : crop) + " " + batch.number();
      sow[i] = Axis.at(batch.sow());
      plant[i] = Axis.at(batch.transplant());
      harvest[i] = Axis.at(batch.harvest());
      boolean raised = plant[i] > sow[i];
      nursery[i] = Phrase.of("sow " + DateWords.day(batch.sow()));
      if (!raised) {
        plant[i] = sow[i];
        sow[i] = Double.NaN;
      }
      tower[i] = Phrase.of(batch.plants() + " pots, to " + DateWords.day(batch.harvest()));
      anyNursery |= raised;
    }
    Chart chart =
        Chart.of("Batches from seed to harvest", Axis.names("batch", names), Axis.time("day"));
    if (anyNursery) {
      double[] end = plant.clone();
      for (int i = 0; i < end.length; i++) {
        end[i] = Double.isNaN(sow[i]) ? Double.NaN : end[i];
      }
      chart.bars("in the nursery", sow, end, nursery);
    }
    return chart.bars("in the tower", plant, harvest, tower);
  }
}
