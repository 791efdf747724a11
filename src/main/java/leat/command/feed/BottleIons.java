package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.solution.pitzer.MixedBottle;
import leat.solution.pitzer.StockBottle;
import leat.solution.stock.Stock;

/** What {@code leat stock} tells of a bottle's ions: the worst solid, its index, what falls out. */
final class BottleIons {
  static final Column SOLID = Column.plain("worst_solid", "closest to crystallising");
  static final Column INDEX = Column.number("worst_index", "its index", 2);
  static final Column BAND = Column.number("index_band", "the index is known to", 2);
  static final Column FALLS_OUT = Column.of("falls_out_g", "falls out", StockRows.SCALE);

  /** For the text alone. */
  private static final Column SOLIDS = Column.plain("solids", "solids");

  private static final Column FALLEN = Column.of("fallen_g", "of it", StockRows.SCALE);
  private static final Column IONS = Column.plain("ions", "ions");
  private static final Column SALTS = Column.plain("salts", "salts");
  private static final Column COMMON = Column.plain("common_ion", "common ion");

  private BottleIons() {}

  static Column[] columns() {
    return new Column[] {SOLID, INDEX, BAND, FALLS_OUT};
  }

  /**
   * Sets the columns in the rows of one bottle, from the first on; a bottle that is not clear gets
   * lines of text.
   */
  static void tell(Answer answer, int first, MixedBottle.Answer ions) {
    for (int i = first; i < answer.size(); i++) {
      answer
          .row(i)
          .set(SOLID, ions.worstSolid())
          .set(INDEX, ions.worstIndex())
          .set(BAND, ions.band())
          .set(FALLS_OUT, Litres.baseOfG(ions.fallsOutG()));
    }
    if (ions.worstIndex() != null && ions.verdict() != Stock.Verdict.CLEAR) {
      answer.figure(
          "",
          answer.row(first),
          "worst: {worst_solid}",
          "index {worst_index}",
          "known to {index_band}; over 0 it can crystallise");
    }
    fallen(answer, ions);
  }

  private static void fallen(Answer answer, MixedBottle.Answer ions) {
    for (int i = 0; i < ions.fallen().size() && ions.fallen().size() > 1; i++) {
      MixedBottle.Fallen one = ions.fallen().get(i);
      answer.figure(
          "",
          Row.aside(SOLIDS, FALLEN)
              .set(SOLIDS, one.solid())
              .set(FALLEN, Litres.baseOfG(one.grams())),
          "{solids}",
          "{fallen_g}",
          "falls out");
    }
  }

  /** The ion that hinders. */
  static Row common(StockBottle one) {
    return Row.aside(COMMON).set(COMMON, one.shares().commonIon());
  }

  /** What crystallises, and which of the salts bring it. */
  static void minds(Answer answer, Row row, StockBottle bottle) {
    MixedBottle.Answer ions = bottle.ions();
    if (ions.verdict() == Stock.Verdict.DOUBTFUL) {
      answer.mind(
          "struvite",
          row,
          "{bottle}: ammonium, magnesium and HPO4 can make struvite; not computed.");
    }
    if (ions.verdict() == Stock.Verdict.UNKNOWN) {
      answer.mind(
          "not-judged",
          row,
          "{bottle}: holds much of what cannot be judged; try a little of it in a glass first.");
    }
    if (bottle.ionsCrystallise()) {
      together(answer, row.with(words(ions)), ions);
    }
  }

  private static Row words(MixedBottle.Answer ions) {
    List<String> solids = new ArrayList<>();
    for (int i = 0; i < ions.fallen().size(); i++) {
      solids.add(ions.fallen().get(i).solid());
    }
    return Row.aside(SOLIDS, IONS, SALTS)
        .set(SOLIDS, list(solids))
        .set(IONS, list(ions.ions()))
        .set(SALTS, list(ions.salts()));
  }

  private static void together(Answer answer, Row row, MixedBottle.Answer ions) {
    boolean one = ions.salts().size() == 1;
    if (ions.fallen().isEmpty()) {
      answer.mind(
          "ions-together",
          row,
          one
              ? "{bottle}: {worst_solid} can crystallise out of {ions} that {salts} brings; make it weaker, or keep it warmer."
              : "{bottle}: {worst_solid} can crystallise out of {ions} that {salts} bring; make it weaker, or keep it warmer.");
    } else {
      answer.mind(
          "ions-together",
          row,
          one
              ? "{bottle}: {falls_out_g} of {solids} can crystallise out of {ions} that {salts} brings; make it weaker, or keep it warmer."
              : "{bottle}: {falls_out_g} of {solids} can crystallise out of {ions} that {salts} bring; make it weaker, or keep it warmer.");
    }
  }

  private static String list(List<String> words) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      out.append(i == 0 ? "" : i == words.size() - 1 ? " and " : ", ").append(words.get(i));
    }
    return out.toString();
  }
}
