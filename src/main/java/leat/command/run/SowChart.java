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
    for (int i = 0; i < names.length; i++) {
      String crop = lines.get(i).crop().name();
      names[i] = (crop == null ? "batch" : crop) + " " + lines.get(i).batch().number();
    }
    Chart chart =
        Chart.of("Batches from seed to harvest", Axis.names("batch", names), Axis.time("day"));
    nursery(chart, lines);
    return tower(chart, lines);
  }

  /** Batches that are raised apart, where any is. */
  private static void nursery(Chart chart, List<SowRows.Line> lines) {
    double[] sow = new double[lines.size()];
    double[] plant = new double[sow.length];
    Phrase[] words = new Phrase[sow.length];
    boolean any = false;
    for (int i = 0; i < sow.length; i++) {
      Batch batch = lines.get(i).batch();
      boolean raised = isRaised(batch);
      sow[i] = raised ? Axis.at(batch.sow()) : Double.NaN;
      plant[i] = raised ? Axis.at(batch.transplant()) : Double.NaN;
      words[i] = Phrase.of("sow " + DateWords.day(batch.sow()));
      any |= raised;
    }
    if (any) {
      chart.bars("in the nursery", sow, plant, words);
    }
  }

  private static Chart tower(Chart chart, List<SowRows.Line> lines) {
    double[] plant = new double[lines.size()];
    double[] harvest = new double[plant.length];
    Phrase[] words = new Phrase[plant.length];
    for (int i = 0; i < plant.length; i++) {
      Batch batch = lines.get(i).batch();
      plant[i] = Axis.at(isRaised(batch) ? batch.transplant() : batch.sow());
      harvest[i] = Axis.at(batch.harvest());
      words[i] = Phrase.of(batch.plants() + " pots, to " + DateWords.day(batch.harvest()));
    }
    return chart.bars("in the tower", plant, harvest, words);
  }

  private static boolean isRaised(Batch batch) {
    return Axis.at(batch.transplant()) > Axis.at(batch.sow());
  }
}
