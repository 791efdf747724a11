package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.solution.recipes.LabelledBottle;
import leat.solution.tank.Dose;
import leat.solution.tank.DoseRounding;
import leat.solution.tank.Thinning;
import leat.system.TankOf;

/** What {@code leat dose} says. */
final class DoseText {
  private static final Column ONE = Column.of("one_mL", "one", Show.ML);
  private static final Column TWO = Column.of("two_mL", "two", Show.ML);
  private static final Column NAME_ONE = Column.plain("name_one", "name one");
  private static final Column NAME_TWO = Column.plain("name_two", "name two");
  private static final Column BOTTLES = Column.plain("bottles", "bottles");
  private static final Column SPOONS = Column.number("teaspoons", "teaspoons", 3);

  /** A teaspoon of US kitchens, 4.93 mL, for who reads US units. */
  private static final Column US_SPOONS =
      Column.of("spoons_mL", "US teaspoons", Show.of(Units.ML, Units.TSP, 3));

  private static final Column OFF = Column.number("off_pct", "off by", 2);
  private static final Column PART_OFF = Column.number("part_off_pct", "part off", 2);

  private final Call call;
  private final Answer answer;
  private final Row row;
  private final Dose.Answer dose;

  /** The dose by the marks of a cup, or null. */
  private final DoseRounding rounded;

  private final LabelRate feed;

  /** The bottles by their labels; none when nobody knows them. */
  private final List<LabelledBottle> labels;

  DoseText(
      Call call, Answer answer, Row row, Dose.Answer dose, DoseRounding rounded, LabelRate feed) {
    this.call = call;
    this.answer = answer;
    this.row = row;
    this.dose = dose;
    this.rounded = rounded;
    this.feed = feed;
    this.labels = feed.labels();
  }

  Answer answer() {
    return answer;
  }

  boolean reached() {
    return dose.reached();
  }

  void refusal(Thinning thin) {
    if (dose.status() == Dose.Status.CONCENTRATE_TOO_WEAK) {
      tooWeak();
      return;
    }
    if (thin == null) {
      answer.sentence(
          row,
          "No dose does it: the water is at {from_ec_mS_cm} already, above the {target_ec_mS_cm} wanted, and water of {water_ec_mS_cm} cannot thin it to that.");
      return;
    }
    thinned(runsOver(thin));
    topup();
  }

  private void thinned(boolean runsOver) {
    answer.sentence(
        row,
        runsOver
            ? "No dose does it: the water is at {from_ec_mS_cm} already, above the {target_ec_mS_cm} wanted. To thin it, take out {swap_L} and put in as much water."
            : "No dose does it: the water is at {from_ec_mS_cm} already, above the {target_ec_mS_cm} wanted. To thin it, add {thin_water_L} of water.");
    answer.figure(
        row,
        DoseCommand.THIN,
        "of {water_ec_mS_cm}",
        runsOver ? "{thin_volume_L} then: more than the tank takes" : "{thin_volume_L} then");
    answer.figure(row, DoseCommand.SWAP, "taken out, and as much water put in its place");
  }

  /** Whether water on top would pass the full mark of the plan's tank. */
  private boolean runsOver(Thinning thin) {
    Section tank = call.plan().section("tank");
    return TankOf.isKnown(tank)
        && tank.has("full")
        && thin.finalVolumeL() > Litres.of(TankOf.of(tank, call.taken()).volume(tank.need("full")));
  }

  private void tooWeak() {
    answer.sentence(
        row, "No dose does it: the feed itself is no stronger than the {target_ec_mS_cm} wanted.");
    answer.mind(
        "weak-concentrate",
        row,
        "a label rate of {label_rate_mL_L}: is that for one litre, or for ten?");
  }

  /** The top-up that drains and fills; complete where the plan has the mark. */
  private void topup() {
    boolean mark = call.plan().section("tank").has("full");
    String again =
        call.again(
            "topup", "--volume", "--water-ec", "--rate", "--rate-ec", "--parts", "--scale", "--at");
    answer.next(
        row,
        NextLine.of(again + typed("--target", "--to") + typed("--ec", "--from"))
            + (call.has("--volume") ? "" : " --volume \"{volume_L}\"")
            + (waterKnown() ? "" : " --water-ec ...")
            + (mark
                ? "   what to drain and fill"
                : " --full ...   when there is a full mark: what to drain and fill"));
  }

  /** A flag of this call under the name that it has there. */
  private String typed(String there, String here) {
    return call.has(here) ? " " + there + " " + ShellWord.quoted(call.text(here)) : "";
  }

  private boolean waterKnown() {
    return call.has("--water-ec") || call.plan().section("water").has("ec");
  }

  void sentenceAndFigures() {
    if (dose.concentrateMl() == 0) {
      answer.sentence(row, "Nothing to pour: the water is at {from_ec_mS_cm} already.");
      working();
      return;
    }
    sentence();
    bottles();
    figures();
    if (rounded != null) {
      marks();
    }
    if (!labels.isEmpty()) {
      brings();
    }
    working();
  }

  private void figures() {
    answer.figure(row, DoseCommand.CONCENTRATE, "{dose_mL_L}; the label says {label_rate_mL_L}");
    answer.figure(
        row,
        DoseCommand.FULL_LABEL,
        dose.underLabel()
            ? "would be stronger than this"
            : dose.overLabel() ? "would be weaker than this" : "");
    answer.figure(
        row,
        DoseCommand.FIRST,
        feed.bottles() > 1
            ? "in all: three quarters of each, then measure"
            : "three quarters, then measure");
  }

  /** What this dose brings by the labels of the plan's bottles. */
  private void brings() {
    Answer table =
        LabelTable.of(LabelledBottle.together(labels, dose.partMl(), dose.finalVolumeL()));
    answer.jsonObject(answer).array("label", table);
    LabelTable.tell(answer, table);
    LabelTable.taken(answer, labels);
  }

  /** Whether before and after would print as one number. */
  private boolean readsAlike() {
    String from = Answer.filled(row, "{from_ec_mS_cm}").render(false);
    return from.equals(Answer.filled(row, "{final_ec_mS_cm}").render(false));
  }

  private void sentence() {
    double[] ml = dose.partMl();
    Row words = Row.aside(ONE, TWO, NAME_ONE, NAME_TWO, BOTTLES);
    words.set(ONE, Litres.baseOfMl(ml[0])).set(NAME_ONE, feed.name(0)).set(BOTTLES, ml.length);
    if (ml.length == 2) {
      words.set(TWO, Litres.baseOfMl(ml[1])).set(NAME_TWO, feed.name(1));
    }
    Row all = row.with(words);
    answer.sentence(
        all,
        readsAlike()
            ? "No dose is needed: no meter tells what is in {volume_L} from the {final_ec_mS_cm} wanted."
            : pour(ml.length));
  }

  private String pour(int bottles) {
    switch (bottles) {
      case 1:
        return "Pour {one_mL} of feed into {volume_L}: {from_ec_mS_cm!} becomes {final_ec_mS_cm}.";
      case 2:
        return "Pour {one_mL} of {name_one}, stir, then {two_mL} of {name_two}, into {volume_L}: {from_ec_mS_cm!} becomes {final_ec_mS_cm}.";
      default:
        return feed.alike()
            ? "Pour {one_mL} of each of {bottles} bottles, one after the other, into {volume_L}: {from_ec_mS_cm!} becomes {final_ec_mS_cm}."
            : "Pour {concentrate_mL} of feed from {bottles} bottles, one after the other, into {volume_L}: {from_ec_mS_cm!} becomes {final_ec_mS_cm}.";
    }
  }

  private void bottles() {
    double[] ml = dose.partMl();
    double[] spoons = dose.partTeaspoons();
    for (int i = 0; i < ml.length && ml.length > 1; i++) {
      if (i > 0 && feed.alike()) {
        return;
      }
      Row one = Row.aside(ONE, SPOONS, US_SPOONS).set(SPOONS, spoons[i]);
      one.set(ONE, Litres.baseOfMl(ml[i])).set(US_SPOONS, Litres.baseOfMl(ml[i]));
      answer.figure(
          feed.alike() ? DoseCommand.PART.label() : feed.name(i),
          one,
          "{one_mL}",
          call.us() ? "{spoons_mL!} level teaspoons" : "{teaspoons} level teaspoons");
    }
  }

  private String makes() {
    return rounded.ecOffPct() < 0
        ? "makes {rounded_ec_mS_cm}, {off_pct} % less"
        : "makes {rounded_ec_mS_cm}, {off_pct} % more";
  }

  private void marks() {
    double[] ml = rounded.partMl();
    Row off =
        Row.aside(OFF, PART_OFF)
            .set(OFF, Math.abs(rounded.ecOffPct()))
            .set(PART_OFF, Math.abs(rounded.worstPartOffPct()));
    String makes = makes();
    Column mark = Column.of("mark_mL", "mark", Show.of(cup(), 4));
    if (feed.alike()) {
      Row one = Row.aside(mark).set(mark, Litres.baseOfMl(ml[0]));
      answer.figure(
          "by the mark",
          row.with(off).with(one),
          ml.length > 1 ? "{mark_mL} of each" : "{mark_mL}",
          makes);
      return;
    }
    answer.figure("by the mark", row.with(off), "{rounded_mL}", makes);
    for (int i = 0; i < ml.length; i++) {
      answer.figure(
          "  " + feed.name(i), Row.aside(mark).set(mark, Litres.baseOfMl(ml[i])), "{mark_mL}");
    }
  }

  /** The unit of the marks on the cup, whatever the other units. */
  private Unit cup() {
    return QuantityReader.read(call.text("--step"), Dimension.VOLUME).unit();
  }

  private void working() {
    answer.working(
        Working.of(
            "feed, all bottles",
            call.has("--label") ? "M = share r V" : "M = V (b - a) / (q - 0.001 b), q = g/r",
            Phrase.of("g = ")
                .add(feed.parts.gainMsCm(), Show.MS_CM)
                .add(", ")
                .add(
                    Answer.filled(
                        row,
                        "V = {volume_L}, a = {from_ec_mS_cm}, b = {final_ec_mS_cm}, r = {label_rate_mL_L}")),
            Litres.baseOfMl(dose.concentrateMl()),
            Show.ML.digits(5),
            EcRange.words(),
            "mass balance"));
  }

  Answer mindsAndNext() {
    if (dose.concentrateMl() == 0) {
      return answer;
    }
    if (feed.bottles() > 1) {
      answer.mind(
          "undiluted",
          "never mix the bottles undiluted. Pour three quarters, wait ten minutes, measure: labels differ by 10 to 20 %.");
    } else {
      answer.mind(
          "labels-differ",
          "pour three quarters, wait ten minutes, measure: labels differ by 10 to 20 %.");
    }
    if (!dose.inRange()) {
      answer.mind("strong", "so strong, the real EC comes out lower than this sum: measure.");
    }
    coarse();
    LabelTable.minds(answer, labels);
    SmallPours.mind(answer, feed.parts.smallest(dose.concentrateMl()));
    answer.mind("order", "acid, where the water needs it, comes first, then feed; the pH last.");
    next();
    return answer;
  }

  private void coarse() {
    if (rounded != null && rounded.aPartVanishes()) {
      answer.mind(
          "coarse-step", "one bottle rounds to nothing: this cup is too coarse, take a syringe.");
    } else if (rounded != null && rounded.isCoarse()) {
      answer.mind(
          "coarse-step",
          Row.aside(PART_OFF).set(PART_OFF, Math.abs(rounded.worstPartOffPct())),
          "by this mark one bottle is off by {part_off_pct} %: take a finer cup or a syringe.");
    }
  }

  private void next() {
    String again =
        NextLine.of(
            call.again(
                "dose",
                "--volume",
                "--to",
                "--water-ec",
                "--rate",
                "--rate-ec",
                "--parts",
                "--each",
                "--step",
                "--scale",
                "--at"));
    answer.next(
        row,
        call.has("--label")
            ? again + " --from READING --to \"{final_ec_mS_cm}\"   for the rest, when it is stirred"
            : again + " --from READING   for the rest, when it is stirred");
  }
}
