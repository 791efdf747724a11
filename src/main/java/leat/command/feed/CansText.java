package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.solution.tank.Cans;

/** The water of a top-up in cans. */
final class CansText {
  private static final Column FULL_CANS = Column.plain("full_cans", "full cans");
  private static final Column LAST_CUP = Column.of("last_can_mL", "last can", leat.answer.Show.ML);

  private CansText() {}

  /** Fills the row's columns; null where no can is known. */
  static void fill(Row row, Cans cans) {
    if (cans != null) {
      row.set(TopupColumns.CANS, cans.count())
          .set(TopupColumns.LAST_CAN, Litres.base(cans.lastL()));
    }
  }

  /** Says what to carry; nothing where no can is known or no water is poured. */
  static void tell(Answer answer, Row row, Cans cans) {
    if (cans == null || cans.count() == 0) {
      return;
    }
    Row aside =
        Row.aside(LAST_CUP, FULL_CANS)
            .set(LAST_CUP, Litres.base(cans.lastL()))
            .set(FULL_CANS, cans.full());
    answer.figure("carry", row.with(aside), carried(cans));
  }

  private static String carried(Cans cans) {
    if (cans.lastIsACup()) {
      return cans.full() == 1
          ? "1 full can and a splash, {last_can_mL}"
          : "{full_cans} full cans and a splash, {last_can_mL}";
    }
    if (cans.lastL() > 0 && cans.full() > 0) {
      return "{cans} cans, the last with {last_can_L}";
    }
    if (cans.lastL() > 0) {
      return "1 can with {last_can_L}";
    }
    return cans.count() == 1 ? "1 can" : "{cans} cans";
  }
}
