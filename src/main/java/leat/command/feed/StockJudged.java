package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.solution.pitzer.MixedBottle;
import leat.solution.pitzer.StockBottle;
import leat.solution.stock.MadeWater;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;

/** The part of {@code leat stock} that judges bottles of own salts. */
final class StockJudged {
  private static final String[] NAMES = {"tank", "bottle 1", "bottle 2"};

  /** For the text alone. */
  private static final Column HOW_MANY = Column.plain("how_many", "bottles");

  private static final Column EACH = Column.plain("each", "each");

  private final Call call;
  private final List<Stock.Weighed> salts;
  private final double bottle;
  private final double coldest;
  private final boolean two;

  /** Whether both bottles have something in them. */
  private final boolean both;

  private final Answer answer = StockRows.empty();
  private final StockRows rows;
  private final StockTank tank;
  private Stock.Verdict worst = Stock.Verdict.CLEAR;
  private boolean doubted;
  private boolean no;

  /** Whether calcium stands with sulfate or phosphate in one bottle. */
  private boolean apart;

  StockJudged(
      Call call,
      List<Stock.Weighed> salts,
      double bottle,
      double coldest,
      double makes,
      Double season) {
    this.call = call;
    this.salts = salts;
    this.bottle = bottle;
    this.coldest = coldest;
    this.two = !call.has("--one-bottle");
    this.both = two && !StockBottles.of(salts, 1).isEmpty() && !StockBottles.of(salts, 2).isEmpty();
    this.rows = new StockRows(answer, MadeWater.rateMlPerL(bottle, makes), makes, season);
    this.tank = new StockTank(call, salts, bottle, coldest, makes);
  }

  Answer answer() {
    bottles();
    List<Stock.Weighed> neither = two ? StockBottles.of(salts, 0) : List.of();
    intoTheTank(neither);
    doubted |= tank.verdict() == Stock.Verdict.DOUBTFUL;
    worst = MixedBottle.worse(tank.verdict(), worst);
    no |= tank.verdict().no;
    Row row = answer.row(0);
    sentence(row.with(words()));
    tank.tell(answer, row, both);
    workings(row);
    if (!call.plan().section("feed").section("stock").has("coldest")) {
      answer.taken(words(), "coldest night {coldest_C}");
    }
    if (call.wantsChart()) {
      answer.chart(StockChart.of(answer));
    }
    call.withTaken(answer);
    minds(neither);
    answer.safety("children", "keep salts and bottles dark, cool and locked away from children.");
    next(row);
    return no ? answer.no() : answer;
  }

  /** What to try where it does not do; a label for what does. */
  private void next(Row row) {
    if (no) {
      answer.next(anew());
    } else {
      answer.next(
          row,
          both
              ? "label each bottle with the date and its rate, {rate_mL_L}"
              : "label the bottle with the date and its rate, {rate_mL_L}");
    }
  }

  private String anew() {
    if (tank.verdict().no) {
      return call.again("stock", "--weigh", "--bottle", "--coldest", "--one-bottle")
          + " --makes ...   the same grams for more tower water";
    }
    return apart
        ? call.again("stock", "--weigh", "--for", "--bottle", "--makes", "--coldest")
            + "   in two bottles"
        : call.again("stock", "--weigh", "--makes", "--coldest", "--one-bottle")
            + " --bottle ...   the same grams in more water";
  }

  private void workings(Row row) {
    answer.working(
        row,
        StockRows.SHARE,
        "share = grams per kg of water / solubility at the coldest",
        "{salt}, {grams}",
        "one salt by itself; together they are judged by their ions",
        "solubilities: handbook tables, see leat dose salts --list");
    answer.working(
        row,
        BottleIons.INDEX,
        "index = log10(activity product / solubility product), for each solid whose ions are there",
        "{worst_solid}; the index is known to {index_band}",
        "strong mixed solutions in the cold; beyond the model's range the band grows",
        "ion interaction model of Pitzer 1973, Harvie, Moller and Weare 1984");
  }

  private void bottles() {
    for (int b = 1; b <= (two ? 2 : 1); b++) {
      List<Stock.Weighed> there = two ? StockBottles.of(salts, b) : salts;
      if (!there.isEmpty()) {
        bottle(there, NAMES[b]);
      }
    }
  }

  private void bottle(List<Stock.Weighed> there, String name) {
    StockBottle one = StockBottle.of(there, bottle, coldest);
    worst = MixedBottle.worse(one.verdict(), worst);
    doubted |= one.shares().verdict() == Stock.Verdict.DOUBTFUL;
    no |= one.verdict().no;
    int first = answer.size();
    for (int i = 0; i < one.shares().shares().size(); i++) {
      String label = i == 0 ? name + ": " + one.verdict().word : "";
      share(label, name, one.verdict().word, one.shares().shares().get(i));
    }
    BottleIons.tell(answer, first, one.ions());
    bottleMinds(answer.row(first), one);
  }

  private void share(String label, String name, String verdict, Stock.Share share) {
    Row row = salt(name, share.salt().name(), share.grams(), verdict);
    row.set(StockRows.SHARE, share.share());
    answer.figure(
        label,
        row,
        "{salt}",
        "{grams}",
        share.share() == null
            ? "solubility not known"
            : "{share_of_solubility_pct} of what the cold can hold");
  }

  private Row salt(String name, String salt, double grams, String verdict) {
    Row row =
        rows.row(name)
            .set(StockRows.SALT, salt)
            .set(StockRows.GRAMS, Litres.baseOfG(grams))
            .set(StockRows.VERDICT, verdict);
    tank.fill(row);
    return row;
  }

  /** Salts that belong in neither bottle. */
  private void intoTheTank(List<Stock.Weighed> neither) {
    for (int i = 0; i < neither.size(); i++) {
      Stock.Weighed one = neither.get(i);
      Row row = salt(NAMES[0], one.salt().name(), one.grams(), "neither-bottle");
      answer.figure("into the tank", row, "{salt}", "{grams}");
    }
  }

  private void bottleMinds(Row row, StockBottle one) {
    if (one.calciumMeets()) {
      apart = !two;
      answer.mind(
          "keep-apart",
          row,
          "{bottle}: calcium with sulfate or phosphate makes gypsum or calcium phosphate; two bottles keep them apart.");
    }
    if (one.overfull()) {
      answer.mind(
          "crystals",
          row,
          "{bottle}: more than the cold can hold; make it weaker, or keep it warmer.");
    }
    BottleIons.minds(answer, row, one);
    if (one.hinderEachOther()) {
      answer.mind(
          "common-ion",
          row.with(BottleIons.common(one)),
          "{bottle}: its salts share {common_ion} and hinder each other; expect less to dissolve.");
    }
  }

  private Row words() {
    return Row.aside(StockRows.SIZE, StockRows.COLDEST, HOW_MANY, EACH)
        .set(StockRows.SIZE, Litres.base(bottle))
        .set(StockRows.COLDEST, coldest)
        .set(HOW_MANY, both ? "Two bottles" : "One bottle")
        .set(EACH, both ? "each for" : "for");
  }

  private void sentence(Row row) {
    answer.sentence(row, "{how_many} of {bottle_L}, {each} {makes_L} of tower water: " + ends());
  }

  private String ends() {
    switch (worst) {
      case CRYSTALS:
        return "salt can crystallise at {coldest_C}.";
      case KEEP_APART:
        return "calcium must not share a bottle with sulfate or phosphate.";
      case PRECIPITATES:
        return tank.verdict().no
            ? "something settles out in the tank."
            : "something settles out in a bottle.";
      case DOUBTFUL:
        return "something may settle out.";
      case TIGHT:
        return "at {coldest_C} salt may crystallise: little is to spare.";
      case UNKNOWN:
        return "not all of it can be judged.";
      default:
        return "nothing settles out down to {coldest_C}.";
    }
  }

  private void minds(List<Stock.Weighed> neither) {
    if (!neither.isEmpty()) {
      answer.mind(
          "neither-bottle",
          "gypsum brings calcium and sulfate at once: into neither bottle, weigh it into the tank.");
    }
    tank.minds(answer);
    if (worst == Stock.Verdict.DOUBTFUL && doubted) {
      answer.mind(
          "ion-pairs",
          "it may settle out: the simple sum leaves out ion pairs, up to 0.5 of an index.");
    }
  }
}
