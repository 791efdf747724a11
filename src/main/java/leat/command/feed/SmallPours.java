package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.solution.SmallPour;

/** How to measure an amount that a cup does not show. */
final class SmallPours {
  private static final Column DROPS = Column.plain("drops", "drops");
  private static final Column PARTS = Column.plain("parts", "parts");
  private static final Column THINNED = Column.of("thinned_mL", "thinned", Show.ML);

  private static final Column WEIGHED = Column.of("weighed_g", "weighed", SaltGrams.SHOW.digits(2));
  private static final Column FILLED = Column.of("filled_mL", "filled up", Show.ML);

  private SmallPours() {}

  /** Says it for the amount of one bottle; nothing for an amount that a cup shows. */
  static void mind(Answer answer, double ml) {
    if (!SmallPour.isSmall(ml)) {
      return;
    }
    SmallPour small = SmallPour.of(ml);
    Row row = row(small);
    answer.mind("a-drop", row, ofDrops(small.drops()));
  }

  private static String ofDrops(int drops) {
    switch (drops) {
      case 0:
        return "that is less than half a drop: leave it, or fill 1 part of the bottle up to {parts} parts with water and pour {thinned_mL} of that.";
      case 1:
        return "so little is about 1 drop; better fill 1 part of the bottle up to {parts} parts with water and pour {thinned_mL} of that.";
      default:
        return "so little is about {drops} drops, or fill 1 part of the bottle up to {parts} parts with water and pour {thinned_mL} of that.";
    }
  }

  /** The same for an acid, which goes into water and never the other way round. */
  static void mindOfAcid(Answer answer, double ml) {
    if (!SmallPour.isSmall(ml)) {
      return;
    }
    SmallPour small = SmallPour.of(ml);
    Row row = row(small);
    answer.mind(
        "a-drop",
        row,
        small.drops() < 2
            ? "so little is a drop or less: put 1 part of the acid into water, fill up to {parts} parts in all, and pour {thinned_mL} of that first."
            : "so little is about {drops} drops: better put 1 part of the acid into water, fill up to {parts} parts in all, and pour {thinned_mL} of that first.");
  }

  private static Row row(SmallPour small) {
    return Row.aside(DROPS, PARTS, THINNED)
        .set(DROPS, small.drops())
        .set(PARTS, small.parts())
        .set(THINNED, Litres.baseOfMl(small.thinnedMl()));
  }

  /** The same for an acid that is weighed. */
  static void mindOfSolid(Answer answer, double grams) {
    if (!SmallPour.isSmallWeight(grams)) {
      return;
    }
    answer.mind(
        "a-pinch",
        Row.aside(THINNED, WEIGHED, FILLED)
            .set(THINNED, Litres.baseOfMl(SmallPour.ofStockMl(grams)))
            .set(WEIGHED, Litres.baseOfG(SmallPour.STOCK_G))
            .set(FILLED, Litres.baseOfMl(SmallPour.STOCK_ML)),
        "a kitchen scale is too coarse for so little: dissolve {weighed_g} in water, fill up to {filled_mL}, and pour {thinned_mL} of that first.");
  }
}
