package leat.command.feed;

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
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.solution.tank.Dose;
import leat.solution.tank.DoseRounding;
import leat.solution.tank.FeedParts;
import leat.system.ConcentrateOf;
import leat.system.TankOf;

/** {@code leat dose}: concentrate for a volume, by EC or by the label. */
public final class DoseCommand extends Command {
  static final Column CONCENTRATE = Column.of("concentrate_mL", "all", Show.ML);
  static final Column PART = Column.of("part_mL", "of each", Show.ML);
  static final Column FINAL_VOLUME = Column.of("final_volume_L", "then in all", Show.L.digits(4));
  static final Column FINAL_EC = Column.of("final_ec_mS_cm", "then at", Show.MS_CM);
  static final Column STATUS = Column.plain("status", "status");
  static final Column PER_LITRE = Column.of("dose_mL_L", "a litre", Show.ML_L);
  static final Column SHARE = Column.of("label_pct", "of the label", Show.PERCENT);
  static final Column FULL_LABEL = Column.of("full_label_ec_mS_cm", "whole label", Show.MS_CM);
  static final Column FIRST = Column.of("first_pour_mL", "pour first", Show.ML);
  static final Column POURED = Column.of("rounded_mL", "by the cup, all", Show.ML);
  static final Column POURED_PART = Column.of("rounded_part_mL", "by the cup, each", Show.ML);
  static final Column POURED_EC = Column.of("rounded_ec_mS_cm", "by the cup", Show.MS_CM);

  private static final Kind EC = Kind.quantity(Dimension.EC);
  private static final Kind VOLUME = Kind.quantity(Dimension.VOLUME);
  private static final Show LABEL_RATE = Show.ML_L.digits(2);

  @Override
  public String name() {
    return "dose";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
          "--volume", "VOLUME", VOLUME, "45 L", "water there; the plan's tank at full otherwise"),
      Flag.of("--from", "EC", EC, "0.3 mS/cm", "its EC at 25 C; the plan's water.ec otherwise"),
      Flag.of("--to", "EC", EC, "1.6 mS/cm", "EC wanted").sets("target.ec"),
      Flag.of(
          "--label",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "50 %",
          "dose by the label instead: this share of its rate; tells the EC it makes"),
      Flag.of(
          "--rate",
          "RATE",
          Kind.quantity(Dimension.VOLUME_RATIO),
          "5 mL/L",
          "label rate, all parts together; with --each the rate of each part"),
      Flag.of("--rate-ec", "EC", EC, "1.9 mS/cm", "what that rate adds to pure water")
          .sets("feed.rate_ec"),
      Flag.of("--parts", "N", Kind.COUNT, "2", "equal bottles that share the rate"),
      Flag.on("--each", "the rate is that of each part: \"5 mL of each\""),
      Flag.of(
          "--step",
          "VOLUME",
          VOLUME,
          "5 mL",
          "mark of the measuring cup or syringe: each part to its nearest mark"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    FeedParts feed = feed(call, plan);
    double volume = volume(call, plan);
    double from = from(call, plan);
    Dose.Answer dose = dose(call, plan, feed, Litres.of(volume), from);
    DoseRounding rounded = rounded(call, dose, feed, Litres.of(volume), from);
    Answer answer = new Answer(columns(feed, rounded != null));
    Row row = row(answer, dose, rounded, feed);
    if (!dose.reached()) {
      refusal(call, answer, plan, dose, from);
      call.withTaken(answer);
      return answer.no();
    }
    sentence(call, answer, dose, volume, from, feed);
    figures(call, answer, row, dose, rounded, feed);
    workings(answer, dose, volume, from, feed, call.has("--label"));
    call.withTaken(answer);
    minds(answer, dose, rounded, feed);
    next(call, answer, dose);
    return answer;
  }

  private FeedParts feed(Call call, Plan plan) {
    Section section = plan.section("feed");
    Double rate = call.above0("--rate");
    Double parts = call.above0("--parts");
    if (rate == null && (parts != null || call.has("--each"))) {
      throw call.needs("--rate");
    }
    if (rate == null && !section.has("parts")) {
      throw call.hasPlan() ? section.missing("parts") : call.needs("--rate");
    }
    if (!section.has("rate_ec")) {
      throw call.hasPlan() ? section.missing("rate_ec") : call.needs("--rate-ec");
    }
    if (rate == null) {
      return ConcentrateOf.of(section);
    }
    int n = parts == null ? 1 : parts.intValue();
    double ec = section.need("rate_ec");
    return call.has("--each") ? FeedParts.each(rate, n, ec) : FeedParts.sharing(rate, n, ec);
  }

  static double volume(Call call, Plan plan) {
    Double volume = call.above0("--volume");
    if (volume != null) {
      return volume;
    }
    Section tank = plan.section("tank");
    if (!call.hasPlan() || !TankOf.isKnown(tank)) {
      throw call.needs("--volume");
    }
    plan.taken().note("the tank at its full mark");
    return TankOf.of(tank).volume(tank.need("full"));
  }

  private static double from(Call call, Plan plan) {
    Double from = call.from0("--from");
    if (from != null) {
      return from;
    }
    Section water = plan.section("water");
    if (!water.has("ec")) {
      throw call.needs("--from");
    }
    plan.taken().note("fresh water at the plan's water.ec");
    return water.need("ec");
  }

  private Dose.Answer dose(Call call, Plan plan, FeedParts feed, double litres, double from) {
    Double share = call.from0("--label");
    if (share != null) {
      if (call.has("--to")) {
        throw new Refused(CommandErrors.notBoth(this, "--to", "--label"));
      }
      return Dose.byLabel(litres, from, share, feed);
    }
    Section target = plan.section("target");
    if (!target.has("ec") && !call.hasPlan()) {
      throw call.needs("--to");
    }
    return Dose.byEc(litres, from, target.need("ec"), feed);
  }

  private static DoseRounding rounded(
      Call call, Dose.Answer dose, FeedParts feed, double litres, double from) {
    Double step = call.above0("--step");
    return step == null || !dose.reached()
        ? null
        : DoseRounding.of(dose, litres, from, feed, Units.ML.fromBase(step));
  }

  private static boolean equal(FeedParts feed) {
    double[] rates = feed.ratesMlPerL();
    for (int i = 1; i < rates.length; i++) {
      if (rates[i] != rates[0]) {
        return false;
      }
    }
    return true;
  }

  private static Column part(int i) {
    return Column.of("part_" + (i + 1) + "_mL", "part " + (i + 1), Show.ML);
  }

  private static Column[] columns(FeedParts feed, boolean rounded) {
    Column[] always = {
      CONCENTRATE, PART, FINAL_VOLUME, FINAL_EC, STATUS, PER_LITRE, SHARE, FULL_LABEL, FIRST
    };
    int parts = equal(feed) ? 0 : feed.ratesMlPerL().length;
    int more = rounded ? 3 : 0;
    Column[] columns = java.util.Arrays.copyOf(always, always.length + parts + more);
    if (rounded) {
      columns[always.length] = POURED;
      columns[always.length + 1] = POURED_PART;
      columns[always.length + 2] = POURED_EC;
    }
    for (int i = 0; i < parts; i++) {
      columns[always.length + more + i] = part(i);
    }
    return columns;
  }

  private static Row row(Answer answer, Dose.Answer dose, DoseRounding rounded, FeedParts feed) {
    Row row =
        answer
            .row()
            .set(CONCENTRATE, Litres.baseOfMl(dose.concentrateMl()))
            .set(FINAL_VOLUME, Litres.base(dose.finalVolumeL()))
            .set(FINAL_EC, dose.finalEcMsCm())
            .set(STATUS, dose.status().word)
            .set(PER_LITRE, dose.mlPerLitreOfWater())
            .set(SHARE, dose.labelShare())
            .set(FULL_LABEL, dose.fullLabelEcMsCm())
            .set(FIRST, Litres.baseOfMl(dose.firstPourMl()));
    if (!dose.reached()) {
      return row;
    }
    if (equal(feed)) {
      row.set(PART, Litres.baseOfMl(dose.partMl()[0]));
    } else {
      Column[] columns = answer.columns();
      int n = dose.partMl().length;
      for (int i = 0; i < n; i++) {
        row.set(columns[columns.length - n + i], Litres.baseOfMl(dose.partMl()[i]));
      }
    }
    if (rounded != null) {
      row.set(POURED, Litres.baseOfMl(rounded.concentrateMl()))
          .set(POURED_PART, equal(feed) ? Litres.baseOfMl(rounded.partMl()[0]) : null)
          .set(POURED_EC, rounded.finalEcMsCm());
    }
    return row;
  }

  private static void refusal(Call call, Answer answer, Plan plan, Dose.Answer dose, double from) {
    Section target = plan.section("target");
    if (dose.status() == Dose.Status.ALREADY_STRONGER) {
      answer.sentence(
          Phrase.of("No dose does it: the water is at ")
              .add(from, Show.MS_CM)
              .add(" already, above the ")
              .add(target.need("ec"), Show.MS_CM)
              .add(" wanted. Feed only lifts the EC."));
      answer.next("leat topup   to see how much to drain and fill with weaker water");
    } else {
      answer.sentence(
          Phrase.of("No dose does it: the concentrate itself is no stronger than the ")
              .add(target.need("ec"), Show.MS_CM)
              .add(" wanted."));
      answer.mind(
          "weak-concentrate",
          Phrase.of("a label rate of ")
              .add(dose.totalRateMlPerL(), LABEL_RATE)
              .add(": is that mL for a litre or for ten?"));
    }
  }

  private static String partName(Call call, int i) {
    return call.has("--rate")
        ? "part " + (i + 1)
        : ConcentrateOf.name(call.plan().section("feed"), i);
  }

  private static void sentence(
      Call call, Answer answer, Dose.Answer dose, double volume, double from, FeedParts feed) {
    if (dose.concentrateMl() == 0) {
      answer.sentence(
          Phrase.of("Nothing to pour: the water is at ").add(from, Show.MS_CM).add(" already."));
      return;
    }
    double[] parts = dose.partMl();
    Phrase words = Phrase.of("Pour ");
    if (parts.length == 1) {
      words.add(Litres.baseOfMl(parts[0]), Show.ML).add(" of feed");
    } else if (equal(feed) && parts.length > 2) {
      words
          .add(Litres.baseOfMl(parts[0]), Show.ML)
          .add(" of each of ")
          .count(parts.length)
          .add(" parts, one after the other,");
    } else {
      for (int i = 0; i < parts.length; i++) {
        words
            .add(i == 0 ? "" : ", stir, then ")
            .add(Litres.baseOfMl(parts[i]), Show.ML)
            .add(" of ")
            .add(partName(call, i));
      }
      words.add(",");
    }
    words
        .add(" into ")
        .add(volume, Show.L)
        .add(": ")
        .addBare(from, Show.MS_CM)
        .add(" becomes ")
        .add(dose.finalEcMsCm(), Show.MS_CM)
        .add(".");
    answer.sentence(words);
  }

  private static Phrase spoons(double ml) {
    return Phrase.of().number(ml / Dose.TEASPOON_ML, 3).add(" teaspoons of 5 mL");
  }

  private static void figures(
      Call call, Answer answer, Row row, Dose.Answer dose, DoseRounding rounded, FeedParts feed) {
    double[] parts = dose.partMl();
    if (parts.length > 1 && equal(feed)) {
      answer.figure(row, PART, spoons(parts[0]));
    }
    for (int i = 0; i < parts.length && !equal(feed); i++) {
      answer.figure(
          partName(call, i), Phrase.of(Litres.baseOfMl(parts[i]), Show.ML), spoons(parts[i]));
    }
    answer.figure(
        row,
        CONCENTRATE,
        Phrase.of(dose.mlPerLitreOfWater(), LABEL_RATE)
            .add("; the label says ")
            .add(dose.totalRateMlPerL(), LABEL_RATE));
    answer.figure(
        row,
        FULL_LABEL,
        dose.labelShare() < 0.95
            ? Phrase.of("would be stronger than this")
            : dose.labelShare() > 1.05 ? Phrase.of("would be weaker than this") : Phrase.of());
    answer.figure(
        row,
        FIRST,
        Phrase.of(
            parts.length > 1
                ? "in all: three quarters, then measure"
                : "three quarters, then measure"));
    if (rounded == null) {
      return;
    }
    Phrase each = Phrase.of();
    double[] poured = rounded.partMl();
    boolean same = equal(feed);
    for (int i = 0; i < (same ? 1 : poured.length); i++) {
      each.add(i == 0 ? "" : " + ").add(Litres.baseOfMl(poured[i]), Show.ML.digits(4));
    }
    answer.figure(
        "by the mark",
        each.add(same && poured.length > 1 ? " of each" : ""),
        Phrase.of("makes ")
            .add(rounded.finalEcMsCm(), Show.MS_CM)
            .add(", ")
            .number(Math.abs(rounded.ecOffPct()), 2)
            .add(rounded.ecOffPct() < 0 ? " % less" : " % more"));
  }

  private static void workings(
      Answer answer,
      Dose.Answer dose,
      double volume,
      double from,
      FeedParts feed,
      boolean byLabel) {
    answer.working(
        Working.of(
            "concentrate, all parts",
            byLabel ? "M = share r V" : "M = V (b - a) / (q - 0.001 b), q = g/r",
            Phrase.of("V = ")
                .add(volume, Show.L)
                .add(", a = ")
                .add(from, Show.MS_CM)
                .add(", b = ")
                .add(dose.finalEcMsCm(), Show.MS_CM)
                .add(", g = ")
                .add(feed.gainMsCm(), Show.MS_CM)
                .add(", r = ")
                .add(dose.totalRateMlPerL(), LABEL_RATE),
            Litres.baseOfMl(dose.concentrateMl()),
            Show.ML.digits(5),
            "EC mixes by volume: a few per cent below 3 mS/cm",
            "mass balance"));
  }

  private static void minds(Answer answer, Dose.Answer dose, DoseRounding rounded, FeedParts feed) {
    if (feed.ratesMlPerL().length > 1) {
      answer.mind(
          "undiluted",
          "never mix the bottles undiluted. Pour three quarters, wait ten minutes, measure: labels differ by 10 to 20 %.");
    } else {
      answer.mind(
          "labels-differ",
          "pour three quarters, wait ten minutes, measure: labels differ by 10 to 20 %.");
    }
    if (dose.finalEcMsCm() > 3) {
      answer.mind("strong", "over 3 mS/cm the real EC comes out lower than this sum.");
    }
    if (rounded != null && rounded.aPartVanishes()) {
      answer.mind(
          "coarse-step", "a part rounds to nothing: this cup is too coarse, take a syringe.");
    } else if (rounded != null && Math.abs(rounded.worstPartOffPct()) > 10) {
      answer.mind(
          "coarse-step",
          Phrase.of("by this mark a part is off by ")
              .number(Math.abs(rounded.worstPartOffPct()), 2)
              .add(" %: take a finer cup or a syringe."));
    }
  }

  private static void next(Call call, Answer answer, Dose.Answer dose) {
    if (dose.concentrateMl() == 0) {
      return;
    }
    answer.next(
        call.hasPlan()
            ? "leat dose --plan "
                + call.planName()
                + (call.has("--volume") ? " --volume \"" + call.text("--volume") + "\"" : "")
                + " --from READING   for the rest; then leat acid"
            : "leat dose --volume \""
                + call.text("--volume")
                + "\" --from READING ...   for the rest; then leat acid");
  }
}
