package leat.command.run;

import leat.answer.Answer;
import leat.answer.Row;

/** What a season's answer says of the harvest, and of the tower that it pays back. */
final class SeasonHarvest {
  private SeasonHarvest() {}

  static void write(Answer answer, Row sums, Row all) {
    boolean kg = sums.get(SeasonSums.HARVEST) != null;
    boolean value = sums.get(SeasonSums.VALUE.middle()) != null;
    if (kg && value) {
      answer.figure(
          "harvest",
          all,
          "{harvest_kg}",
          "{harvest_value:money} {currency} in a shop",
          "{plants_harvested} plants");
    } else if (kg) {
      answer.figure("harvest", all, "{harvest_kg}", "{plants_harvested} plants");
    }
    if (sums.get(SeasonSums.PAYBACK.middle()) != null) {
      boolean ends =
          sums.get(SeasonSums.PAYBACK.low()) != null && sums.get(SeasonSums.PAYBACK.high()) != null;
      answer.figure(
          "tower and tank",
          all,
          "{cost_bought:money} {currency}",
          ends
              ? "paid back after {payback_seasons} seasons ({payback_seasons_low} to {payback_seasons_high})"
              : "paid back after {payback_seasons} seasons, in a thirsty year perhaps never");
    } else if (value && sums.get(SeasonSums.BOUGHT) != null) {
      answer.figure(
          "tower and tank", all, "{cost_bought:money} {currency}", "not paid back at these prices");
    }
  }
}
