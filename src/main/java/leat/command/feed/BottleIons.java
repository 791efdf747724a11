package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.solution.pitzer.MixedBottle;
import leat.solution.stock.Stock;

/** What {@code leat stock} tells of a bottle's ions: the worst solid, its index, what falls out. */
final class BottleIons {
  static final Column SOLID = Column.plain("worst_solid", "closest to crystallising");
  static final Column INDEX = Column.number("worst_index", "its index", 2);
  static final Column BAND = Column.number("index_band", "the index is known to", 2);
  static final Column FALLS_OUT = Column.of("falls_out_g", "falls out", Show.G);

  private BottleIons() {}

  /**
   * Sets the columns in the rows of one bottle, from the first on; a bottle that is not clear gets
   * a line of text.
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
          Phrase.of("worst: " + ions.worstSolid()),
          Phrase.of("index ").number(ions.worstIndex(), 2),
          Phrase.of("known to ").number(ions.band(), 2).add("; over 0 it can crystallise"));
    }
  }

  /** What crystallises, and which of the salts bring it. */
  static void minds(Answer answer, MixedBottle.Answer ions, String name) {
    if (ions.verdict() == Stock.Verdict.DOUBTFUL) {
      answer.mind(
          "struvite", name + ": ammonium, magnesium and HPO4 can make struvite; not computed.");
    }
    if (ions.verdict() == Stock.Verdict.UNKNOWN) {
      answer.mind(
          "not-judged",
          name + ": holds much of what cannot be judged; try a little of it in a glass first.");
    }
    if (ions.verdict() != Stock.Verdict.CRYSTALS && ions.verdict() != Stock.Verdict.TIGHT
        || ions.worstSolid() == null) {
      return;
    }
    Phrase words = Phrase.of(name + ": ");
    List<MixedBottle.Fallen> fallen = ions.fallen();
    for (int i = 0; i < fallen.size(); i++) {
      words.add(i == 0 ? "" : " and ").add(Litres.baseOfG(fallen.get(i).grams()), Show.G);
      words.add(" of ").add(fallen.get(i).solid());
    }
    words.add(fallen.isEmpty() ? ions.worstSolid() : "").add(" can crystallise out of ");
    words.add(list(ions.ions())).add(" that ").add(list(ions.salts()));
    words.add(ions.salts().size() == 1 ? " brings" : " bring");
    answer.mind("ions-together", words.add("; make it weaker, or keep it warmer."));
  }

  private static String list(List<String> words) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      out.append(i == 0 ? "" : i == words.size() - 1 ? " and " : ", ").append(words.get(i));
    }
    return out.toString();
  }
}
