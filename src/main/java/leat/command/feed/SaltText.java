package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.solution.Element;
import leat.solution.recipes.LabelledBottle;
import leat.solution.recipes.Missed;
import leat.solution.recipes.MixEc;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.RecipeFit;
import leat.solution.recipes.Weighed;

/** The sentence and the figures of {@code leat dose salts}. */
final class SaltText {
  static final Column COUNT = Column.plain("count", "count");
  private static final Column ONE = Column.of("one_g", "one", StockRows.SCALE);
  private static final Column ONE_NAME = Column.plain("one", "one");
  private static final Column TWO = Column.of("two_g", "two", StockRows.SCALE);
  private static final Column TWO_NAME = Column.plain("two", "two");
  private static final Column MISSING = Column.plain("missing", "missing");
  private static final Column OTHERS = Column.number("others_pct", "the others within", 2);
  private static final Column ALLOWED = Column.of("allowed_pct", "allowed", Show.PERCENT);
  private static final Column OFF = Column.of("off_mg_L", "off by", Show.MG_L);
  private static final Column OFF_PCT = Column.number("off_pct", "off by", 2);
  private static final Column NOTE = Column.plain("note", "note");

  private final Recipe recipe;
  private final RecipeFit fit;
  private final MixEc ec;
  private final LiquidFeed liquid;
  private final Row whole;
  private final List<Weighed> some = new ArrayList<>();

  SaltText(Recipe recipe, RecipeFit fit, MixEc ec, LiquidFeed liquid, Row whole) {
    this.recipe = recipe;
    this.fit = fit;
    this.ec = ec;
    this.liquid = liquid;
    this.whole = whole;
    for (int i = 0; i < recipe.salts().size(); i++) {
      if (recipe.salts().get(i).grams() > 0) {
        some.add(recipe.salts().get(i));
      }
    }
  }

  private Row words(Double allowed) {
    Row row =
        Row.aside(COUNT, ONE, ONE_NAME, TWO, TWO_NAME, MISSING, OTHERS, ALLOWED)
            .set(COUNT, some.size())
            .set(MISSING, fit == null ? null : names(fit.missing()))
            .set(OTHERS, fit == null ? null : (Double) fit.worstOfOthersPct())
            .set(ALLOWED, allowed);
    if (!some.isEmpty()) {
      row.set(ONE, Litres.baseOfG(some.get(0).grams())).set(ONE_NAME, some.get(0).salt().name());
    }
    if (some.size() > 1) {
      row.set(TWO, Litres.baseOfG(some.get(1).grams())).set(TWO_NAME, some.get(1).salt().name());
    }
    return whole.with(liquid == null ? row : row.with(liquid.words()));
  }

  static String names(List<Element> elements) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < elements.size(); i++) {
      out.append(i == 0 ? "" : i == elements.size() - 1 ? " and " : ", ");
      out.append(elements.get(i).label());
    }
    return out.toString();
  }

  void sentence(Answer answer, Double allowed, boolean forward) {
    Row row = words(allowed);
    if (fit == null) {
      answer.sentence(row, brings());
    } else {
      answer.sentence(
          row,
          fit.missing().size() == fit.elements().size()
              ? "None of these salts brings {missing}."
              : some.isEmpty() && fit.missing().isEmpty()
                  ? nothing()
                  : weigh() + met(allowed, forward));
    }
  }

  /** What weighed salts, or a feed by its label, make. */
  private String brings() {
    if (ec == null) {
      return "These {total_g} of {count} salts in {volume_L} are a stock bottle, too strong for the sum of an EC.";
    }
    if (liquid != null && liquid.bottles().size() > 1) {
      return "{poured_mL} of feed from {bottles} bottles in {volume_L} make an EC of about {ec_mS_cm}.";
    }
    if (liquid != null) {
      return some.size() == 1
          ? "{poured_mL} of this feed in {volume_L} make an EC of about {ec_mS_cm}."
          : "{poured_mL} of this feed and the salts in {volume_L} make an EC of about {ec_mS_cm}.";
    }
    if (ec.waterEc() != null) {
      return some.size() == 1
          ? "These {total_g} of {one} in {volume_L} make an EC of about {ec_mS_cm}, over water of {water_ec_mS_cm}."
          : "These {total_g} of {count} salts in {volume_L} make an EC of about {ec_mS_cm}, over water of {water_ec_mS_cm}.";
    }
    return some.size() == 1
        ? "These {total_g} of {one} in {volume_L} make an EC of about {ec_mS_cm}."
        : "These {total_g} of {count} salts in {volume_L} make an EC of about {ec_mS_cm}.";
  }

  private String weigh() {
    if (liquid != null && liquid.bottles().size() > 1) {
      return "Pour {poured_mL} of feed from {bottles} bottles into {volume_L}: ";
    }
    if (liquid != null) {
      return some.size() == 1
          ? "Pour {poured_mL} of this feed into {volume_L}: "
          : "Pour {poured_mL} of this feed and weigh the salts into {volume_L}: ";
    }
    switch (some.size()) {
      case 1:
        return "Weigh {one_g} of {one} into {volume_L}: ";
      case 2:
        return "Weigh {one_g} of {one} and {two_g} of {two} into {volume_L}: ";
      default:
        return "Weigh {total_g} of {count} salts into {volume_L}: ";
    }
  }

  private String met(Double allowed, boolean forward) {
    if (!fit.missing().isEmpty()) {
      return missing();
    }
    if (allowed != null) {
      return forward
          ? "it misses by up to {worst_miss_pct} %, over the {allowed_pct} allowed."
          : "no weighing comes nearer, and it misses by up to {worst_miss_pct} %, over the {allowed_pct} allowed.";
    }
    return fit.exact()
        ? "all that was asked is met."
        : "all that was asked within {worst_miss_pct} %.";
  }

  /** Where no salt is weighed: the water alone is what comes nearest. */
  private String nothing() {
    if (fit.exact()) {
      return "Nothing is to be weighed: the water alone brings all that was asked.";
    }
    return fit.isOver()
        ? "Nothing is to be weighed: the water alone brings more than was asked."
        : "Nothing is to be weighed: no weighing comes nearer than the water alone, which misses by up to {worst_miss_pct} %.";
  }

  private String missing() {
    if (!fit.leftOut().isEmpty()) {
      return fit.othersMet()
          ? "it has no {missing} at all; the rest is met."
          : "it has no {missing} at all; the rest is met within {others_pct} %.";
    }
    return fit.othersMet()
        ? "nothing here brings {missing}; the rest is met."
        : "nothing here brings {missing}; the rest is met within {others_pct} %.";
  }

  void figures(Answer answer, Answer elements) {
    for (int i = 0; i < recipe.salts().size(); i++) {
      salt(answer, i);
    }
    answer.block();
    for (int i = 0; i < elements.size(); i++) {
      element(answer, elements.row(i), i);
    }
    answer.block();
    if (ec == null) {
      answer.figure(whole, SaltRows.EC, "too strong for the sum: a stock bottle");
    } else if (ec.waterEc() == null) {
      answer.figure(whole, SaltRows.EC, "{ec_low_mS_cm..ec_high_mS_cm}");
    } else {
      answer.figure(
          whole, SaltRows.EC, "{ec_low_mS_cm..ec_high_mS_cm}", "the water alone {water_ec_mS_cm}");
    }
    answer.figure("charge", whole, "{cations_meq_L} positive", "{anions_meq_L} negative");
    cost(answer);
  }

  private void salt(Answer answer, int i) {
    Weighed one = recipe.salts().get(i);
    LabelledBottle bottle = liquid == null ? null : liquid.bottle(i, recipe);
    Row row =
        Row.aside(ONE, NOTE).set(ONE, Litres.baseOfG(one.grams())).set(NOTE, one.salt().note());
    if (bottle != null) {
      answer.figure(bottle.name(), liquid.words(bottle), "{poured_mL}", "{rate_mL_L}");
    } else {
      answer.figure(one.salt().name(), row, "{one_g}", "{note}");
    }
  }

  private void element(Answer answer, Row row, int i) {
    boolean asked = row.get(SaltRows.ASKED) != null;
    if (!asked && fit != null) {
      return;
    }
    String water =
        (Double) row.get(SaltRows.FROM_WATER) > 0 ? "{from_water_mg_L} of it from the water" : "";
    String label = (String) row.get(SaltRows.ELEMENT);
    if (!asked) {
      answer.figure(label, row, "{got_mg_L}", water);
      return;
    }
    Missed one = fit.elements().get(i);
    Row off = Row.aside(OFF, OFF_PCT).set(OFF, one.offMgL()).set(OFF_PCT, one.offPct());
    answer.figure(label, row.with(off), "{got_mg_L}, asked {asked_mg_L!}", off(one), water);
  }

  private static String off(Missed one) {
    if (!one.isWorthNaming()) {
      return "met";
    }
    if (one.hasPct()) {
      return one.missed() < 0 ? "{off_pct} % too little" : "{off_pct} % too much";
    }
    return "{off_mg_L} too much";
  }

  private void cost(Answer answer) {
    if (whole.get(SaltRows.COST) == null) {
      return;
    }
    boolean named = whole.get(SaltRows.CURRENCY) != null;
    if (recipe.costComplete()) {
      answer.figure("cost", whole, named ? "{cost} {currency}" : "{cost}");
    } else {
      answer.figure("cost", whole, named ? "at least {cost} {currency}" : "at least {cost}");
    }
  }
}
