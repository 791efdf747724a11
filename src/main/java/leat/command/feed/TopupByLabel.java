package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.command.sense.LoggedTank;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupAsk;
import leat.solution.tank.TopupBand;

/** {@code leat topup} for feed that is poured: mL by the rate of its label. */
final class TopupByLabel {
  private final Call call;
  private final TopupAsked asked;
  private final Held held;
  private final TopupAsk ask;

  /** The answers over a band, or null for one volume. */
  private final TopupBand band;

  private final Topup.Answer one;

  TopupByLabel(TopupAsked asked, Held held) {
    this.call = asked.call;
    this.asked = asked;
    this.held = held;
    this.ask = asked.ask(held.middle, asked.ec(held));
    this.band =
        held.isBand() ? TopupBand.solve(ask, Litres.of(held.low), Litres.of(held.high)) : null;
    this.one = band == null ? Topup.solve(ask) : band.middle();
  }

  Answer answer() {
    MixedPhText ph = MixedPhText.of(call, one.reached() ? one.keptL() : null, one.waterL());
    Column[] columns = TopupColumns.of(band != null, asked.feed);
    RainSeenText rain = RainSeenText.of(call, Litres.of(held.middle), asked.ec(held), asked.target);
    Answer answer =
        new Answer(
            RainSeenText.with(MixedPhText.with(LoggedTank.with(columns, held.log), ph), rain));
    Row row = answer.row();
    TopupColumns.fill(row, columns, asked, one);
    if (band != null) {
      TopupColumns.fillBand(row, band, held);
    }
    tell(answer, row, ph, rain);
    if (call.wantsChart() && one.reached()) {
      answer.chart(TopupChart.of(row));
    }
    return one.reached() ? answer : answer.no();
  }

  private void tell(Answer answer, Row row, MixedPhText ph, RainSeenText rain) {
    TopupText text = new TopupText(answer, row, one, band, asked);
    text.sentenceAndFigures();
    if (held.log != null) {
      held.log.tell(answer, row, asked.ec(held));
    }
    if (ph != null) {
      ph.figure(answer, row);
    }
    if (rain != null) {
      rain.tell(answer, row);
    }
    text.workings(ask);
    asked.typed.taken(answer, "--ec");
    call.withTaken(answer);
    TopupCommand.readingMinds(answer, call.plan(), held);
    text.minds();
    text.next();
  }
}
