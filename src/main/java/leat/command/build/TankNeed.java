package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.level.Dipstick;
import leat.level.Tank;
import leat.plan.Section;
import leat.quantity.Units;
import leat.system.DrinksOf;

/** {@code leat tank --days}: whether the tank is large enough for so many days. */
final class TankNeed {
  static final Column NEEDED = Column.of("needed_L", "must hold at full", Show.L);
  static final Column DRUNK = Column.of("drunk_L", "drunk", Show.L);
  static final Column BELOW_LOW = Column.of("below_low_L", "below the refill mark", Show.L);
  static final Column FITS = Column.plain("fits", "fits");
  static final Column LASTS = Column.of("lasts_d", "a full tank lasts", Show.of(Units.D, 2));
  static final Column SCALE =
      Column.of("every_length_pct", "just enough would be", Show.PERCENT.digits(3));
  static final Column THIRST = Column.of("drinks_L_d", "the plants drink", Show.L_D);
  private static final Column DAYS = Column.number("days", "days", 3);

  private TankNeed() {}

  static Answer answer(Call call, Section section, Tank tank) {
    Double days = call.above0("--days");
    if (days == null) {
      throw call.needs("--days");
    }
    double thirst = thirst(call);
    double full = section.need("full");
    double low = section.need("low");
    Dipstick.Need need = Dipstick.need(tank, low, full, thirst, Units.D.toBase(days));
    Answer answer = new Answer(NEEDED, DRUNK, BELOW_LOW, FITS, LASTS, SCALE, THIRST);
    Row row = answer.row().set(THIRST, thirst);
    fill(row, need);
    sentence(answer, row, need.fits(), days);
    figures(call, answer, row);
    call.withTaken(answer);
    answer.mind(
        "thirst-grows",
        "a grown plant on a hot day drinks twice its mean; size for the hottest week.");
    return need.fits() ? answer : answer.no();
  }

  /** What the plants drink: as typed, else as the plan says. */
  private static double thirst(Call call) {
    Double typed = call.from0("--thirst");
    if (typed != null) {
      return typed;
    }
    if (!call.hasPlan() && !call.has("--set")) {
      throw call.needs("--thirst");
    }
    return DrinksOf.perSecond(call.plan());
  }

  private static void fill(Row row, Dipstick.Need need) {
    row.set(NEEDED, need.needed())
        .set(DRUNK, need.drunk())
        .set(BELOW_LOW, need.unusable())
        .set(FITS, need.fits())
        .set(LASTS, need.lasts())
        .set(SCALE, need.scale());
  }

  private static void figures(Call call, Answer answer, Row row) {
    answer.figure(row, DRUNK, call.has("--thirst") ? "" : "{drinks_L_d}, as the plan says");
    answer.figure(row, BELOW_LOW, "");
    answer.figure(row, LASTS, "");
    answer.figure(row, SCALE, "of every length: the same shape");
  }

  private static void sentence(Answer answer, Row row, boolean fits, Double days) {
    Object told = days == days.intValue() ? (Object) days.intValue() : days;
    Row said = row.with(Row.aside(DAYS).setAny(DAYS, told));
    answer.sentence(
        said,
        fits
            ? "It is large enough: {days} days need {needed_L} at full, {below_low_L} of it below the refill mark."
            : "It is too small: {days} days need {needed_L} at full, {below_low_L} of it below the refill mark.");
    answer.working(
        said,
        NEEDED,
        "V = thirst x days + volume at the refill mark",
        "{drunk_L} drunk in {days} days, {below_low_L} below the mark",
        "the same thirst every day",
        "definition");
  }
}
