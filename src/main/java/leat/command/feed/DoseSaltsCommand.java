package leat.command.feed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.NamedQuantity;
import leat.quantity.Nearest;
import leat.quantity.Units;
import leat.solution.Element;
import leat.solution.ElementName;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.conductivity.IonEc;
import leat.solution.recipes.Asked;
import leat.solution.recipes.Missed;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.RecipeFit;
import leat.solution.recipes.Weighed;
import leat.system.SaltsOf;

/** {@code leat dose salts}: grams of salts for asked elements, and the forward sum. */
public final class DoseSaltsCommand extends Command {
  static final Column SALT = Column.plain("salt", "salt");
  static final Column GRAMS = Column.number("grams", "grams", 3);

  static final Column ELEMENT = Column.plain("element", "element");
  static final Column ASKED = Column.of("asked_mg_L", "asked", Show.MG_L);
  static final Column GOT = Column.of("got_mg_L", "got", Show.MG_L);
  static final Column MISSED = Column.of("missed_mg_L", "missed by", Show.MG_L);
  static final Column MISSED_PCT = Column.number("missed_pct", "missed by", 2);
  static final Column FROM_WATER = Column.of("from_water_mg_L", "from the water", Show.MG_L);

  static final Column VOLUME = Column.of("volume_L", "into", Show.L);
  static final Column TOTAL = Column.of("total_g", "salts in all", Show.G);
  static final Column EC = Column.of("ec_mS_cm", "EC, about", Show.MS_CM);
  static final Column EC_LOW = Column.of("ec_low_mS_cm", "at least", Show.MS_CM);
  static final Column EC_HIGH = Column.of("ec_high_mS_cm", "at most", Show.MS_CM);
  static final Column CATIONS = Column.of("cations_meq_L", "cations", Show.MEQ_L.digits(3));
  static final Column ANIONS = Column.of("anions_meq_L", "anions", Show.MEQ_L.digits(3));
  static final Column BALANCE =
      Column.of("charge_balance_meq_L", "charge balance", Show.MEQ_L.digits(2));
  static final Column BALANCE_PCT = Column.number("charge_balance_pct", "charge balance", 2);
  static final Column COST = Column.number("cost", "cost", 3);
  static final Column CURRENCY = Column.plain("currency", "currency");
  static final Column EXACT = Column.plain("exact", "exact");
  static final Column UNIQUE = Column.plain("unique", "the only answer");
  static final Column WORST = Column.number("worst_miss_pct", "worst miss", 2);

  @Override
  public String name() {
    return "dose salts";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "finished solution; the plan's tank at full otherwise"),
      Flag.of(
              "--ask",
              "ELEMENT=MG_L",
              Kind.TEXT,
              "N=150",
              "an element wanted, in mg/L; N-NO3 and N-NH4 apart; oxides such as K2O too")
          .repeatable(),
      Flag.of(
              "--salt",
              "NAME",
              Kind.TEXT,
              "potassium-nitrate",
              "a salt that may be weighed; feed.salts of the plan otherwise")
          .repeatable(),
      Flag.of(
              "--weighed",
              "SALT=GRAMS",
              Kind.TEXT,
              "potassium-nitrate=21 g",
              "the other way round: a salt that was weighed")
          .repeatable(),
      Flag.of(
          "--within",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "5 %",
          "exit code 1 when an asked element is missed by more"),
      Flag.of(
          "--scale-step",
          "STEP",
          Kind.quantity(Dimension.MASS),
          "0.1 g",
          "smallest step of the scale: every salt to its nearest step"),
      Flag.on("--list", "lists the salts with formula, elements and solubility"),
    };
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--list")) {
      return SaltList.answer(call);
    }
    Plan plan = call.plan();
    boolean forward = call.has("--weighed");
    if (forward && call.has("--salt")) {
      throw new Refused(CommandErrors.notBoth(this, "--weighed", "--salt"));
    }
    if (!forward && !call.has("--ask")) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this,
              "--ask says what is wanted, such as --ask N=150; --weighed what was weighed; --list shows the salts"));
    }
    List<Asked> asked = asked(call);
    double volume = DoseCommand.volume(call, plan);
    Ions water = SaltsOf.water(plan);
    Double step = call.above0("--scale-step");
    RecipeFit fit = null;
    Recipe recipe;
    if (forward) {
      recipe = Recipe.mix(EcPrediction.weighed(call), Litres.of(volume), water);
      recipe = step == null ? recipe : recipe.rounded(Units.G.fromBase(step), water);
      fit = asked.isEmpty() ? null : RecipeFit.judge(asked, recipe, water);
    } else {
      fit = RecipeFit.solve(asked, offered(call), Litres.of(volume), water);
      fit = step == null ? fit : fit.rounded(Units.G.fromBase(step));
      recipe = fit.recipe();
    }
    return answer(call, plan, recipe, fit, volume);
  }

  private static List<Asked> asked(Call call) {
    List<String> typed = call.texts("--ask");
    List<Asked> all = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      NamedQuantity one = EcPrediction.named("--ask", typed.get(i), Units.MG_L);
      try {
        ElementName.of(one.name());
      } catch (Impossible e) {
        String near = Nearest.of(one.name(), Arrays.asList(ElementName.names()));
        throw new Refused(EcErrors.noElement("--ask", one.name(), e.getMessage(), near));
      }
      all.add(Asked.of(one.name(), one.quantity().value()));
    }
    return all;
  }

  private static List<Salt> offered(Call call) {
    List<String> names = call.texts("--salt");
    List<Salt> salts = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      salts.add(EcPrediction.salt(call, "--salt", names.get(i)));
    }
    if (salts.isEmpty()) {
      salts = SaltsOf.own(call.plan());
      if (salts.isEmpty()) {
        throw call.needs("--salt");
      }
      call.plan().taken().note("the plan's own salts, all of them");
    }
    return salts;
  }

  private Answer answer(Call call, Plan plan, Recipe recipe, RecipeFit fit, double volume) {
    Answer answer = new Answer(SALT, GRAMS);
    for (int i = 0; i < recipe.salts().size(); i++) {
      Weighed one = recipe.salts().get(i);
      answer.row().set(SALT, one.salt().name()).set(GRAMS, one.grams());
    }
    Answer figures = figures(plan, recipe, fit, volume);
    Answer elements = elements(recipe, fit);
    answer.jsonObject(figures).array("salts", answer).array("elements", elements);
    Double within = call.from0("--within");
    boolean missed = within != null && fit != null && !fit.isWithin(Units.PERCENT.fromBase(within));
    sentence(answer, recipe, fit, volume, missed ? within : null, call.has("--weighed"));
    text(answer, recipe, fit, figures, elements, plan);
    answer.taken(Phrase.of(SaltsOf.hasWater(plan) ? "the ions of the plan's water" : "pure water"));
    call.withTaken(answer);
    minds(answer, recipe, fit);
    next(call, answer);
    workings(answer, fit);
    return missed ? answer.no() : answer;
  }

  private static Answer figures(Plan plan, Recipe recipe, RecipeFit fit, double volume) {
    Answer figures =
        new Answer(
            VOLUME,
            TOTAL,
            EC,
            EC_LOW,
            EC_HIGH,
            CATIONS,
            ANIONS,
            BALANCE,
            BALANCE_PCT,
            COST,
            CURRENCY,
            EXACT,
            UNIQUE,
            WORST);
    IonEc ec = recipe.ec();
    boolean tap = recipe.tapWater();
    boolean priced = recipe.cost() > 0;
    figures
        .row()
        .set(VOLUME, volume)
        .set(TOTAL, Litres.baseOfG(recipe.totalGrams()))
        .set(EC, ec == null ? null : (Double) ec.ec25())
        .set(EC_LOW, ec == null ? null : (Double) ec.low(tap))
        .set(EC_HIGH, ec == null ? null : (Double) ec.high(tap))
        .set(CATIONS, recipe.ions().cations())
        .set(ANIONS, recipe.ions().anions())
        .set(BALANCE, recipe.ions().balance())
        .set(BALANCE_PCT, recipe.ions().balancePct())
        .set(COST, priced ? (Double) recipe.cost() : null)
        .set(CURRENCY, priced ? plan.root().text("currency") : null)
        .setAny(EXACT, fit == null ? null : (Object) fit.exact())
        .setAny(UNIQUE, fit == null ? null : (Object) fit.unique())
        .set(WORST, fit == null ? null : (Double) fit.worstMissPct());
    return figures;
  }

  private static Answer elements(Recipe recipe, RecipeFit fit) {
    Answer elements = new Answer(ELEMENT, ASKED, GOT, MISSED, MISSED_PCT, FROM_WATER);
    boolean[] done = new boolean[Element.count()];
    for (int i = 0; fit != null && i < fit.elements().size(); i++) {
      Missed one = fit.elements().get(i);
      done[one.element().ordinal()] = true;
      elements
          .row()
          .set(ELEMENT, one.element().label())
          .set(ASKED, one.asked())
          .set(GOT, one.got())
          .set(MISSED, one.missed())
          .set(MISSED_PCT, one.hasPct() ? (Double) one.missedPct() : null)
          .set(FROM_WATER, one.fromWater());
    }
    for (int i = 0; i < done.length; i++) {
      Element element = Element.at(i);
      double got = recipe.total().orElse(element, 0);
      if (!done[i] && got > 0) {
        elements
            .row()
            .set(ELEMENT, element.label())
            .set(GOT, got)
            .set(FROM_WATER, recipe.fromWater().orElse(element, 0));
      }
    }
    return elements;
  }

  private static void sentence(
      Answer answer,
      Recipe recipe,
      RecipeFit fit,
      double volume,
      Double breached,
      boolean forward) {
    Phrase words = Phrase.of(fit == null ? "These " : "Weigh ");
    List<Weighed> some = new ArrayList<>();
    for (int i = 0; i < recipe.salts().size(); i++) {
      if (recipe.salts().get(i).grams() > 0) {
        some.add(recipe.salts().get(i));
      }
    }
    if (fit != null && !some.isEmpty() && some.size() <= 2) {
      for (int i = 0; i < some.size(); i++) {
        words
            .add(i == 0 ? "" : " and ")
            .add(Litres.baseOfG(some.get(i).grams()), Show.G)
            .add(" of ")
            .add(some.get(i).salt().name());
      }
    } else {
      words.add(Litres.baseOfG(recipe.totalGrams()), Show.G).add(" of ");
      if (some.size() == 1) {
        words.add(some.get(0).salt().name());
      } else {
        words.count(some.size()).add(" salts");
      }
    }
    words.add(fit == null ? " in " : " into ").add(volume, Show.L);
    if (fit == null && recipe.ec() == null) {
      words.add(" are a stock bottle, too strong for the sum of an EC.");
    } else if (fit == null) {
      words.add(" make an EC of about ").add(recipe.ec().ec25(), Show.MS_CM).add(".");
    } else if (breached != null) {
      words
          .add(
              forward
                  ? ": it misses by up to "
                  : ": no weighing comes nearer, and it misses by up to ")
          .number(fit.worstMissPct(), 2)
          .add(" %, over the ")
          .add(breached, Show.PERCENT)
          .add(" allowed.");
    } else if (fit.exact()) {
      words.add(": all that was asked is met.");
    } else {
      words.add(": all that was asked within ").number(fit.worstMissPct(), 2).add(" %.");
    }
    answer.sentence(words);
  }

  private static void text(
      Answer answer, Recipe recipe, RecipeFit fit, Answer figures, Answer elements, Plan plan) {
    for (int i = 0; i < recipe.salts().size(); i++) {
      Weighed one = recipe.salts().get(i);
      answer.figure(
          one.salt().name(),
          Phrase.of(Litres.baseOfG(one.grams()), Show.G),
          Phrase.of(one.salt().note()));
    }
    answer.block();
    for (int i = 0; i < elements.size(); i++) {
      Row row = elements.row(i);
      Double asked = (Double) row.get(ASKED);
      boolean missed = asked != null && fit.elements().get(i).isWorthNaming();
      if (fit == null || missed) {
        answer.figure(
            (String) row.get(ELEMENT), element(row, fit == null ? null : fit.elements().get(i)));
      }
    }
    answer.block();
    Row row = figures.row(0);
    answer.figure(
        row,
        EC,
        recipe.ec() == null
            ? Phrase.of("too strong for the sum: a stock bottle")
            : Phrase.of()
                .addBare((Double) row.get(EC_LOW), Show.MS_CM)
                .add(" to ")
                .add((Double) row.get(EC_HIGH), Show.MS_CM));
    answer.figure(
        "charge",
        Phrase.of((Double) row.get(CATIONS), CATIONS.show()).add(" positive"),
        Phrase.of((Double) row.get(ANIONS), ANIONS.show()).add(" negative"));
    if (row.get(COST) != null) {
      String currency = plan.root().text("currency");
      answer.figure(
          "cost",
          Phrase.of(recipe.costComplete() ? "" : "at least ")
              .number(recipe.cost(), 3)
              .add(currency == null ? "" : " " + currency));
    }
  }

  private static Phrase[] element(Row row, Missed missed) {
    Phrase got = Phrase.of((Double) row.get(GOT), Show.MG_L);
    double water = (Double) row.get(FROM_WATER);
    Phrase fromWater =
        water > 0 ? Phrase.of().add(water, Show.MG_L).add(" of it from the water") : Phrase.of();
    if (missed == null) {
      return new Phrase[] {got, fromWater};
    }
    Phrase off = Phrase.of();
    if (missed.hasPct()) {
      off.number(Math.abs(missed.missedPct()), 2).add(" %");
    } else {
      off.add(Math.abs(missed.missed()), Show.MG_L);
    }
    off.add(missed.missed() < 0 ? " too little" : " too much");
    return new Phrase[] {got.add(", asked ").addBare(missed.asked(), Show.MG_L), off, fromWater};
  }

  private static void minds(Answer answer, Recipe recipe, RecipeFit fit) {
    for (int i = 0; fit != null && i < fit.unbrought().size(); i++) {
      answer.mind(
          "unbrought",
          "no salt here brings "
              + fit.unbrought().get(i).label()
              + ": leat dose salts --list shows which do.");
    }
    for (int i = 0; fit != null && i < fit.idle().size(); i++) {
      answer.mind("idle", fit.idle().get(i).name() + " brings nothing that was asked.");
    }
    if (fit != null && !fit.unique()) {
      StringBuilder names = new StringBuilder();
      for (int i = 0; i < fit.leaveOut().size(); i++) {
        names.append(i == 0 ? "" : ", ").append(fit.leaveOut().get(i).name());
      }
      answer.mind(
          "not-unique",
          "other weighings do as well; this one is the lightest. Ask one element more, or leave out "
              + names
              + ".");
    }
    if (recipe.hasTooLittle()) {
      answer.mind(
          "too-little",
          "under 0.1 g no home scale weighs: dissolve a hundred times as much in a litre and pour 10 mL of it.");
    }
    if (recipe.saltIons().of(leat.solution.Ion.CA) > 0
        && (recipe.fromSalts().orElse(Element.S, 0) > 0
            || recipe.fromSalts().orElse(Element.P, 0) > 0)) {
      answer.mind(
          "calcium-apart",
          "dissolve the calcium salt apart and pour it in last: strong, it falls out with sulfate and phosphate.");
    }
    boolean hides = recipe.saltIons().isDoubtful() && recipe.ionsComplete();
    if (hides) {
      answer.mind(
          "label-ions",
          Phrase.of("the charges of the salts miss each other by ")
              .number(Math.abs(recipe.saltIons().balancePct()), 2)
              .add(
                  " %: a label does not print all that is in the bag, and the EC comes out too low."));
    } else if (recipe.ions().isDoubtful() && recipe.ionsComplete()) {
      answer.mind(
          "charge-balance",
          Phrase.of("the charges miss each other by ")
              .number(Math.abs(recipe.ions().balancePct()), 2)
              .add(" %: the water's analysis lacks an ion."));
    }
    if (!recipe.ionsComplete()) {
      answer.mind(
          "hidden-ions",
          "one product does not say what form its nitrogen has: EC and charge come out too low.");
    }
  }

  private static void next(Call call, Answer answer) {
    answer.next(
        call.has("--scale-step")
            ? "weigh, dissolve one after the other, then  leat ec READING  to compare"
            : "the same with --scale-step \"0.1 g\"   to see what your scale makes of it");
  }

  private static void workings(Answer answer, RecipeFit fit) {
    if (fit != null) {
      answer.working(
          Working.number(
              "sum of squared misses",
              "minimise sum ((got - asked)/asked)^2 over grams >= 0",
              Phrase.of().count(fit.elements().size()).add(" asked"),
              fit.exact() ? 0 : fit.sumSqRelMiss(),
              4,
              "any",
              "non-negative least squares, Lawson and Hanson 1974; weights of IUPAC 2021"));
    }
  }
}
