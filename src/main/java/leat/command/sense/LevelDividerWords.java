package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.level.Divider;
import leat.level.DividerDesign;
import leat.quantity.NumberText;
import leat.system.DrawOf;

/** A divider in words: how far its closest steps lie apart, what it draws, what to mind. */
final class LevelDividerWords {
  private static final Column FIXED = Column.of("resistor_ohm", "resistor", LevelColumns.OHM);
  private static final Column ONE = Column.of("one_ohm", "one step", LevelColumns.OHM);
  private static final Column OTHER = Column.of("other_ohm", "the next", LevelColumns.OHM);
  private static final Column GAP = Column.number("gap_counts", "closest two", 3);
  private static final Column MOST_CURRENT =
      Column.of("most_mA", "current", LevelDividerCommand.MA);
  private static final Column MOST_POWER = Column.of("most_mW", "heat", LevelDividerCommand.MW);
  private static final Column BLIND = Column.plain("blind_counts", "blind");
  private static final Column BITS = Column.plain("bits", "bits");
  private static final Column SUPPLY = Column.of("supply_V", "supply", Show.V);
  private static final Column REFERENCE = Column.of("reference_V", "reference", Show.V);

  private final Call call;
  private final Answer answer;
  private final DividerDesign design;
  private final boolean own;
  private final Row row;
  private boolean better;

  /**
   * @param own whether the resistor was named, and is judged
   */
  LevelDividerWords(Call call, Answer answer, DividerDesign design, boolean own) {
    this.call = call;
    this.answer = answer;
    this.design = design;
    this.own = own;
    Divider divider = design.divider();
    this.row =
        Row.aside(FIXED, ONE, OTHER, GAP, MOST_CURRENT, MOST_POWER, BITS, SUPPLY, REFERENCE)
            .set(FIXED, divider.fixed())
            .set(ONE, design.gapLow())
            .set(OTHER, design.gapHigh())
            .set(GAP, design.gap())
            .set(MOST_CURRENT, design.greatestCurrent())
            .set(MOST_POWER, design.greatestPower())
            .set(BITS, divider.bits())
            .set(SUPPLY, divider.supply())
            .set(REFERENCE, divider.reference());
  }

  /**
   * Sentence and figures.
   *
   * @param yours the plan's own resistor, where another one is better; null otherwise
   */
  void say(DividerDesign yours) {
    Double most = call.above0("--max-current");
    boolean over = yours != null && most != null && yours.greatestCurrent() > most;
    better = yours == null || over || design.isWorthMoreThan(yours);
    answer.sentence(row, sentence());
    if (yours != null) {
      planned(yours, over);
    }
    answer.figure("in the sender", row, "up to {most_mA}", "up to {most_mW} of heat");
  }

  private void planned(DividerDesign yours, boolean over) {
    answer.figure(
        "the plan's resistor",
        Row.aside(FIXED, GAP, MOST_CURRENT)
            .set(FIXED, yours.divider().fixed())
            .set(GAP, yours.gap())
            .set(MOST_CURRENT, yours.greatestCurrent()),
        "{resistor_ohm}",
        over
            ? "{gap_counts} counts apart, but up to {most_mA} in the sender: more than asked"
            : design.isWorthMoreThan(yours)
                ? "{gap_counts} counts apart"
                : "{gap_counts} counts apart: as good, leave it");
  }

  private String sentence() {
    if (own) {
      return design.allApart()
          ? "With {resistor_ohm} the closest two steps, {one_ohm!} and {other_ohm}, lie {gap_counts} counts apart; every step can be told from the next, at the worst."
          : "With {resistor_ohm} the closest two steps, {one_ohm!} and {other_ohm}, lie {gap_counts} counts apart; not every step can be told from the next, at the worst.";
    }
    return design.allApart()
        ? "Take {resistor_ohm}: the closest two steps, {one_ohm!} and {other_ohm}, lie {gap_counts} counts apart; every step can be told from the next, at the worst."
        : "Take {resistor_ohm}: the closest two steps, {one_ohm!} and {other_ohm}, lie {gap_counts} counts apart; not every step can be told from the next, at the worst.";
  }

  /**
   * Doubts, the formula and what to do next.
   *
   * @param ownReference whether the ADC's own reference is taken as exact
   */
  Answer mindAndGoOn(int blind, boolean ownReference) {
    doubts(blind);
    answer.mind(
        "power-while-reading",
        "switch the divider on only while you read: less heat in the float's stem and less electrolysis at a wet plug. 100 nF across the sender and the median of some readings quieten it.");
    if (DrawOf.isDirect(call.plan())) {
      answer.mind(
          "shared-earth",
          "the sender's wires hang in the pump's water: feed both from an isolated low-voltage supply. Unplug the pump before you reach in.");
    } else {
      mains();
    }
    if (ownReference) {
      answer.mind(
          "own-reference",
          "an ADC's own reference may be off by 5 to 10 %: say so with --reference-tolerance, or feed divider and reference from one supply.");
    }
    working();
    return next();
  }

  private void doubts(int blind) {
    if (!design.allApart()) {
      answer.mind("not-apart", pairs());
    }
    if (design.isBlind()) {
      answer.mind(
          "blind",
          Row.aside(BLIND).set(BLIND, blind),
          "a step falls under the {blind_counts} counts that the ADC cannot read: put the sender on the other side.");
    }
    if (design.overloadsPin()) {
      answer.mind(
          "pin-current",
          row,
          "{most_mA} is more than a controller's pin should feed: take it from the supply through a transistor, or ask with --max-current \"10 mA\".");
    }
  }

  private void mains() {
    answer.mind(
        "shared-earth",
        "the sender's wires hang in the same water as a mains pump: an isolated low-voltage supply, a residual-current device, and the local code decide. Unplug the pump before you reach in.");
  }

  private Phrase pairs() {
    Phrase pairs = Phrase.of("these can be taken for each other: ");
    boolean several = false;
    for (int i = 0; i < design.apart().length; i++) {
      if (!design.apart()[i]) {
        Row pair =
            Row.aside(ONE, OTHER)
                .set(ONE, design.steps()[i].ohm())
                .set(OTHER, design.steps()[i + 1].ohm());
        pairs.add(several ? "; " : "").add(Answer.filled(pair, "{one_ohm!} and {other_ohm}"));
        several = true;
      }
    }
    return pairs.add(
        design.divider().ratiometric()
            ? ". More bits, closer resistors or fewer steps part them."
            : ". Feed the divider from the ADC's own reference, so that both tolerances cancel.");
  }

  private void working() {
    answer.working(
        Working.number(
            "gap of the closest two steps",
            "gap = 2^N (Vs/Vref) Rf (b - a)/((Rf + a)(Rf + b))",
            Answer.filled(
                row,
                "Rf = {resistor_ohm}, a = {one_ohm}, b = {other_ohm}, lead on top; N = {bits}, Vs = {supply_V}, Vref = {reference_V}"),
            design.gap(),
            4,
            "counts of a linear ADC, first transition at half a count",
            "Ohm's law"));
  }

  private Answer next() {
    if (!call.hasPlan()) {
      return answer.next(
          "leat level table --plan PLAN --c   the counts as an array for your controller");
    }
    if (!own && better && design.divider().fixed() != planned()) {
      call.intoPlan(
          answer,
          "sender.divider.resistor",
          NumberText.shortest(design.divider().fixed()) + " ohm");
    }
    return answer.next(
        call.again("level table") + " --c   then, the counts as an array for your controller");
  }

  private double planned() {
    Double planned = call.plan().section("sender").section("divider").maybe("resistor");
    return planned == null ? 0 : planned;
  }
}
