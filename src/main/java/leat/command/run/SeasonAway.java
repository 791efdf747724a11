package leat.command.run;

import java.time.LocalDate;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.quantity.DateWords;
import leat.quantity.Units;
import leat.season.AwayOutcome;
import leat.season.YearRuns;
import leat.system.SeasonOf;

/** What a time away does to the tank, and what would carry it over. */
final class SeasonAway {
  private static final Column DRY = Column.plain("dry", "dry");
  private static final Column DRY_DAYS = Column.plain("days", "days");
  private static final Column MISSED = Column.of("missed_L", "missed", Show.L);
  private static final Column FULL = Column.of("full_L", "full", Show.L);
  private static final Column CROP = Column.plain("crop", "crop");
  private static final Column PLANTS = Column.plain("plants", "pots");
  private static final Column NOW = Column.plain("now", "now");
  private static final Column VISITS = Column.plain("visits", "visits");
  private static final Column BEFORE = Column.plain("before", "before");

  private final SeasonOf season;
  private final YearRuns runs;

  SeasonAway(SeasonOf season, YearRuns runs) {
    this.season = season;
    this.runs = runs;
  }

  void write(Answer answer) {
    AwayOutcome[] all = season.away(runs);
    for (int i = 0; i < all.length; i++) {
      one(answer, all[i]);
    }
  }

  private String label(AwayOutcome away) {
    LocalDate first = SeasonDates.date(season, away.span().first());
    return "away ".concat(DateWords.span(first, SeasonDates.date(season, away.span().last())));
  }

  private void one(Answer answer, AwayOutcome away) {
    String label = label(away);
    if (away.carried()) {
      answer.figure(label, Row.aside(), "the tank carries it over");
      return;
    }
    Row row = row(away);
    answer.figure(
        label,
        row,
        "runs dry on {dry}",
        away.dryDays() == 1
            ? "one dry day, {missed_L} short"
            : "{days} dry days, {missed_L} short");
    if (away.fillBeforeCarries()) {
      answer.figure("", row, "filled up on {before}, before leaving, it lasts");
      return;
    }
    boolean filled = away.span().first() > 0;
    if (away.fullCarriesL() != null) {
      answer.figure(
          "",
          row,
          filled
              ? "a tank of {full_L} would last, filled up on {before}"
              : "a tank of {full_L} would last, full on the first day");
    }
    if (away.plantsCarry() != null) {
      answer.figure(
          "",
          row,
          away.plantsCarry() == 0
              ? "filled up so, it lasts without {crop}"
              : filled
                  ? "filled up on {before}, it lasts with {plants} of the {now} plants of {crop}"
                  : "full on the first day, it lasts with {plants} of the {now} plants of {crop}");
    }
    neighbour(answer, row, away);
  }

  private static void neighbour(Answer answer, Row row, AwayOutcome away) {
    if (away.neighbourDays() == null) {
      answer.figure("", row, "no neighbour comes often enough: the tank does not last a day");
    } else {
      answer.figure(
          "",
          row,
          away.span().first() > 0
              ? "or fill up on {before}, and a neighbour on {visits}"
              : "or a neighbour fills up on {visits}");
    }
  }

  private Row row(AwayOutcome away) {
    int before = away.span().first() - 1;
    Row row = Row.aside(DRY, DRY_DAYS, MISSED, FULL, CROP, PLANTS, NOW, VISITS, BEFORE);
    row.set(DRY, DateWords.day(SeasonDates.date(season, away.driesOn())))
        .set(DRY_DAYS, away.dryDays())
        .set(MISSED, Units.L.toBase(away.shortL()))
        .set(BEFORE, DateWords.day(SeasonDates.date(season, before)));
    if (away.fullCarriesL() != null) {
      row.set(FULL, Units.L.toBase(away.fullCarriesL()));
    }
    if (away.plantsCarry() != null) {
      row.set(CROP, away.crop().name())
          .set(PLANTS, away.plantsCarry())
          .set(NOW, away.crop().plants());
    }
    if (away.neighbourDays() != null) {
      row.set(VISITS, SeasonDates.dates(season, away.neighbourDays()));
    }
    return row;
  }
}
