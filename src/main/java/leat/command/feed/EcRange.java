package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.solution.tank.Topup;

/** The range in which EC adds up by volume, in words. */
final class EcRange {
  private static final Column MOST = Column.of("most_mS_cm", "most", Show.MS_CM.digits(1));

  private EcRange() {}

  private static Row row() {
    return Row.aside(MOST).set(MOST, Topup.VALID.high(0));
  }

  static String words() {
    return Answer.filled(row(), "EC up to {most_mS_cm}, where it mixes by volume to a few per cent")
        .render(false);
  }

  static void mind(Answer answer) {
    answer.mind(
        "ec-range",
        row(),
        "over {most_mS_cm} EC no longer adds up by volume; the true EC ends lower: measure.");
  }
}
