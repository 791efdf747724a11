package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.plan.Section;
import leat.solution.recipes.LabelledBottle;
import leat.solution.stock.MadeWater;
import leat.solution.stock.StockBottles;
import leat.system.ConcentrateOf;
import leat.system.LabelsOf;

/** The part of {@code leat stock} for a plan whose bottles are bought. */
final class StockBought {
  private static final Column WATER = Column.of("water_ec_mS_cm", "the water's EC", Show.MS_CM);
  private static final Column RATE_EC =
      Column.of("rate_ec_mS_cm", "the whole label rate", Show.MS_CM);

  private final Call call;
  private final Section feed;
  private final Double season;

  /** The bottles by their labels; none when the plan has no label. */
  private final List<LabelledBottle> bottles;

  StockBought(Call call, Double season) {
    this.call = call;
    this.feed = call.plan().section("feed");
    this.season = season;
    this.bottles = LabelsOf.isKnown(feed) ? LabelsOf.of(feed) : List.of();
  }

  Answer answer() {
    double bottle = bottle();
    Double ec = ec();
    Answer brought = LabelTable.of(LabelledBottle.together(bottles));
    Answer answer = rows(bottle, ec, brought);
    if (ec != null) {
      answer.figure("at label rate", answer.row(0), "all bottles together make {ec_mS_cm}");
    }
    LabelTable.tell(answer, brought);
    workings(answer, bottle, brought);
    LabelTable.taken(answer, bottles);
    call.withTaken(answer);
    LabelTable.minds(answer, bottles);
    minds(answer);
    return answer.next(call.again("topup") + " ...   what a can takes");
  }

  /** A row for each bottle, and the sentence over them. */
  private Answer rows(double bottle, Double ec, Answer brought) {
    Column[] elements = LabelTable.columns(brought);
    Answer answer = StockRows.empty(elements);
    List<Section> parts = feed.sections("parts");
    double least = Double.MAX_VALUE;
    for (int i = 0; i < parts.size(); i++) {
      double rate = parts.get(i).need("rate");
      double makes = StockBottles.towerWaterL(bottle, rate);
      least = makes < least ? makes : least;
      Row row = new StockRows(answer, rate, makes, season).row(ConcentrateOf.name(feed, i));
      row.set(StockRows.EC, ec);
      LabelTable.fill(row, elements, brought);
      tell(answer, row);
    }
    Row least0 =
        Row.aside(StockRows.SIZE, StockRows.MAKES)
            .set(StockRows.SIZE, Litres.base(bottle))
            .set(StockRows.MAKES, Litres.base(least));
    sentence(answer, answer.row(0).with(least0), least0);
    return answer;
  }

  private void workings(Answer answer, double bottle, Answer brought) {
    Row size = Row.aside(StockRows.SIZE).set(StockRows.SIZE, Litres.base(bottle));
    for (int i = 0; i < answer.size(); i++) {
      Row row = answer.row(i).with(size);
      answer.working(
          row,
          StockRows.MAKES,
          "water = bottle / rate",
          "{bottle}: {bottle_L} at {rate_mL_L}",
          "the rate is for a litre of finished solution",
          "definition");
    }
    ec(answer);
    if (brought.size() > 0) {
      LabelTable.working(answer, brought, bottles);
    }
  }

  private void ec(Answer answer) {
    Row first = answer.row(0).with(water());
    answer.working(
        first,
        StockRows.EC,
        "EC = EC of the water + what all bottles add at label rate",
        "{water_ec_mS_cm} and {rate_ec_mS_cm}",
        EcRange.words(),
        "EC taken to mix by volume");
  }

  private Row water() {
    Double water = call.plan().section("water").maybe("ec");
    return Row.aside(WATER, RATE_EC)
        .set(WATER, water == null ? 0 : water)
        .set(RATE_EC, feed.maybe("rate_ec"));
  }

  private double bottle() {
    Section stock = feed.section("stock");
    if (stock.has("bottle")) {
      return Litres.of(stock.need("bottle"));
    }
    call.taken().note("bottles of 1 L");
    return 1;
  }

  /** EC of the tower water at label rate, or null. */
  private Double ec() {
    Double rateEc = feed.maybe("rate_ec");
    if (rateEc == null) {
      return null;
    }
    Double water = call.plan().section("water").maybe("ec");
    return MadeWater.labelEc(rateEc, water == null ? 0 : water);
  }

  private static void tell(Answer answer, Row row) {
    String name = (String) row.get(StockRows.BOTTLE);
    if (row.get(StockRows.BOTTLES) == null) {
      answer.figure(name, row, "{rate_mL_L}", "makes {makes_L}");
    } else {
      answer.figure(name, row, "{rate_mL_L}", "makes {makes_L}", "{bottles_season} for a season");
    }
  }

  private void sentence(Answer answer, Row row, Row least) {
    Row words = least.with(row);
    if (season == null) {
      answer.sentence(
          words,
          "Bottles of {bottle_L} each make {makes_L} of tower water or more at label strength.");
    } else {
      answer.sentence(
          words,
          isForecast()
              ? "Bottles of {bottle_L} each make {makes_L} of tower water or more at label strength; the season's feed would make {season_L} of it."
              : "Bottles of {bottle_L} each make {makes_L} of tower water or more at label strength; the season takes {season_L}.");
    }
  }

  /** Whether the season's feed is by its forecast: its litres are then those at label strength. */
  private boolean isForecast() {
    return call.taken().words().contains(StockSeason.TAKEN);
  }

  private void minds(Answer answer) {
    answer.mind(
        "parts-apart", "never mix the bottles undiluted: what settles out never dissolves again.");
    if (season != null && isForecast()) {
      answer.mind(
          "season-forecast",
          "the season's feed is a forecast of the middle year: thirst may be half more. leat season tells its range.");
    } else if (season != null && !call.has("--season")) {
      answer.mind(
          "season-guess",
          "first fill, changes and what the plants drink, all at label strength: most towers take"
              + " less.");
    }
  }
}
