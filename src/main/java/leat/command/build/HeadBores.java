package leat.command.build;

import java.util.List;
import java.util.Optional;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.hydraulics.Bore;
import leat.hydraulics.BoreTable;
import leat.hydraulics.Bores;
import leat.hydraulics.HeadLoss;

/** Answers {@code leat head --bores}: the head with each tube that one can buy. */
final class HeadBores {
  static final Column LOST = Column.of("lost_head_m", "lost", Show.M);
  static final Column TOTAL = Column.of("total_head_m", "head in all", Show.M);
  static final Column POOREST = Column.of("poorest_total_head_m", "with a tight one", Show.M);
  static final Column STATUS = Column.plain("status", "status");
  static final Column FLOW = Column.of("flow_L_min", "flow", Show.L_MIN);
  private static final Column[] COLUMNS = {
    PumpBores.TUBE,
    PumpBores.FAMILY,
    PumpBores.BORE,
    PumpBores.VELOCITY,
    LOST,
    TOTAL,
    POOREST,
    STATUS,
    PumpBores.PRESENT,
    FLOW,
    TubePrices.PRICE
  };

  private HeadBores() {}

  static Answer answer(Call call, HeadInput input, double flow) {
    int section = input.riser().line().size() - 1;
    double present = input.riser().line().section(section).bore();
    String family = call.has("--family") ? call.text("--family") : Bores.familyOf(present);
    List<Bore> bores = Bores.family(family, false);
    List<BoreTable.Head> rows =
        BoreTable.heads(input.common(), input.total(), input.riser(), section, flow, bores);
    Answer answer = new Answer(COLUMNS).asList();
    TubePrices prices = new TubePrices(call.plan());
    fill(answer, rows, prices, present, flow);
    Optional<BoreTable.Head> best = BoreTable.narrowestThatSuits(rows);
    Row row = answer.row(best.isPresent() ? rows.indexOf(best.get()) : rows.size() - 1);
    answer.sentence(row, sentence(best.isPresent()));
    prices.table(answer, bores, PumpBores.TUBE, PumpBores.VELOCITY, LOST, TOTAL, POOREST, STATUS);
    prices.mind(answer);
    working(answer.mind("family", family + ": " + Bores.about(family) + "."), row);
    input.taken(answer);
    next(call, call.withTaken(answer), input);
    return best.isPresent() ? answer : answer.no();
  }

  private static void fill(
      Answer answer, List<BoreTable.Head> rows, TubePrices prices, double present, double flow) {
    for (int i = 0; i < rows.size(); i++) {
      fill(answer.row(), rows.get(i), present, flow);
      answer.row(i).set(TubePrices.PRICE, prices.of(rows.get(i).bore()));
    }
  }

  private static void next(Call call, Answer answer, HeadInput input) {
    answer.next(
        call.again("head", "--flow", "--lift", "--length", "--temperature", "--tower")
            + (call.hasPlan()
                ? " --set \"towers[" + input.tower() + "].riser.bore=...\"   to see one of them"
                : " --bore ...   to see one of them"));
  }

  private static void working(Answer answer, Row row) {
    answer.working(
        row,
        LOST,
        "h = (f L/D + sum K) v^2/(2 g)",
        "v = {velocity_m_s}, bore {bore_mm}",
        "tubes of 4 to 50 mm; K good to 30 %",
        "Darcy and Weisbach; f by Colebrook 1939; inside sizes of the tubes' standards");
  }

  private static String sentence(boolean suits) {
    return suits
        ? "The narrowest tube that suits {flow_L_min} is {tube}: {total_head_m} of head, water at {velocity_m_s}."
        : "No tube of this kind suits {flow_L_min}: even in the widest, {tube}, the water is fast or much head is lost.";
  }

  private static void fill(Row row, BoreTable.Head tube, double present, double flow) {
    row.set(PumpBores.TUBE, tube.bore().name())
        .set(PumpBores.FAMILY, tube.bore().family())
        .set(PumpBores.BORE, tube.bore().bore())
        .set(POOREST, PumpCommand.orNull(tube.poorestHead()))
        .set(STATUS, status(tube))
        .set(PumpBores.PRESENT, Bores.same(tube.bore(), present))
        .set(FLOW, flow);
    if (tube.passes()) {
      HeadLoss loss = tube.loss();
      row.set(PumpBores.VELOCITY, loss.sections().get(loss.sections().size() - 1).velocity())
          .set(LOST, loss.lostHead())
          .set(TOTAL, loss.totalHead());
    }
  }

  private static String status(BoreTable.Head tube) {
    if (!tube.passes()) {
      return "too-narrow";
    }
    if (tube.suits()) {
      return "suits";
    }
    return tube.loss().fastest().fast() ? "fast" : "heavy-loss";
  }
}
