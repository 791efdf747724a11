package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.plan.Section;
import leat.quantity.NumberText;
import leat.solution.acid.Acid;
import leat.solution.acid.AcidNeed;
import leat.solution.acid.Carbonate;

/** What {@code leat acid} says. */
final class AcidText {
  private static final Column NAME = Column.plain("acid", "acid");
  private static final Column LIMIT = Column.number("limit_pct", "limit", 2);

  private final Call call;
  private final Answer answer;
  private final Row row;
  private final AcidNeed.Answer need;
  private final Acid acid;

  /** Whether the tank had acid before, so that less buffer is left than the fresh water has. */
  private final boolean corrected;

  AcidText(Call call, Answer answer, Row row, AcidNeed.Answer need, Acid acid, boolean corrected) {
    this.call = call;
    this.answer = answer;
    this.need = need;
    this.acid = acid;
    this.corrected = corrected;
    this.row = row.with(Row.aside(NAME).set(NAME, named(acid)));
  }

  private static String named(Acid acid) {
    return acid.isSolid()
        ? "citric acid"
        : NumberText.shortest(acid.percent()) + " % " + acid.kind().word + " acid";
  }

  Answer noneNeeded(boolean under) {
    if (under) {
      answer.sentence(row, "No acid is needed: the water is at pH {ph}, under the {to_ph} wanted.");
      answer.mind(
          "climbs", "acid only lowers a pH; the air lifts it by itself in hours to days: wait.");
    } else {
      answer.sentence(row, "No acid is needed: the water is at pH {ph} already.");
    }
    return answer;
  }

  Answer told(Section water, double celsius, double to) {
    answer.sentence(row, corrected ? afterAcid() : fresh());
    figures();
    brought(AcidCommand.NITROGEN, "count it in your salts");
    brought(AcidCommand.PHOSPHORUS, "count it in your salts");
    brought(AcidCommand.SULFUR, "as sulfate");
    brought(AcidCommand.CHLORIDE, "leaves bear little of it");
    left(celsius);
    acid();
    bottle();
    minds(water, AcidNeed.bufferGone(to));
    next();
    return answer;
  }

  private void figures() {
    answer.figure(
        row,
        AcidCommand.MEQ,
        need.bufferMeqL() > 0
            ? "of {alkalinity_meq_L!}: {alkalinity_left_meq_L} stays as buffer"
            : "of {alkalinity_meq_L!}: no buffer is left");
    answer.figure(
        "after the first pour",
        row,
        "pH {first_pour_ph}",
        need.firstPourPhIfStripHigh() == null
            ? ""
            : "pH {first_pour_ph_if_strip_high} if the strip read a fifth too high");
    answer.figure(
        "then, in halves",
        row,
        acid.isSolid() ? "{half_of_rest_g}" : "{half_of_rest_mL}",
        "and measure each time");
    answer.figure(
        AcidCommand.OPEN.label(),
        row,
        acid.isSolid() ? "{acid_if_open_g}" : "{acid_if_open_mL}",
        "over days; left alone it climbs to pH {ph_open_air_2000ppm} to {ph_open_air_420ppm}");
  }

  private String fresh() {
    return acid.isSolid()
        ? "About {acid_g} of {acid}; dissolve and pour {first_pour_g}, stir, wait an hour, measure, then the rest in halves."
        : "About {acid_mL} of {acid}; pour {first_pour_mL}, stir, wait an hour, measure, then the rest in halves.";
  }

  private String afterAcid() {
    return acid.isSolid()
        ? "About {acid_g} of {acid}, as earlier acid left {alkalinity_meq_L} of the water's {water_alkalinity_meq_L}; dissolve and pour {first_pour_g}, stir, wait an hour, measure, then the rest in halves."
        : "About {acid_mL} of {acid}, as earlier acid left {alkalinity_meq_L} of the water's {water_alkalinity_meq_L}; pour {first_pour_mL}, stir, wait an hour, measure, then the rest in halves.";
  }

  private void brought(Column column, String remark) {
    if ((Double) row.get(column) > 0) {
      answer.figure(row, column, remark);
    }
  }

  private void minds(Section water, boolean bufferGone) {
    answer.safety("acid-handling", handling());
    restricted();
    if (!acid.lasts()) {
      answer.mind(
          "eaten",
          "microbes eat citric acid in days and the pH climbs back; phosphoric, nitric and sulfuric acid last.");
    }
    beforeIt();
    if (bufferGone) {
      answer.mind("all-buffer-gone", "so low no buffer is left: a drop too much bites.");
    }
    if (need.fizzes()) {
      answer.mind(
          "would-fizz",
          "such a water would fizz: alkalinity and pH hardly belong together, measure both again.");
    }
    strips(water.typed("alkalinity"));
  }

  private void strips(String typed) {
    answer.mind(
        "alkalinity-strips",
        typed != null && typed.contains("dH")
            ? "degrees count only as carbonate hardness, not as total hardness; strips are good to 20 %."
            : "strips are good to 20 %; the supplier's report is better.");
  }

  /** How so little is measured, and what the tank had before. */
  private void beforeIt() {
    if (acid.isSolid()) {
      SmallPours.mindOfSolid(answer, need.firstPour().g());
    } else {
      SmallPours.mindOfAcid(answer, need.firstPour().ml());
    }
    if (corrected) {
      answer.mind(
          "corrected",
          acid.lasts()
              ? "the tank's pH is under the water's own, so it had acid before; for fresh water leave --ph out."
              : "the tank's pH is under the water's own, so it had acid before; where microbes ate that acid, the buffer is back: measure it and type --alkalinity.");
    }
  }

  private void restricted() {
    if (acid.isOverHousehold()) {
      answer.mind(
          "no-household-good",
          Row.aside(LIMIT).set(LIMIT, Acid.HOUSEHOLD_PCT),
          "over {limit_pct} % is no household good: a weaker one does the same with more of it. In some countries it may not be sold to you: ask there.");
    } else if (acid.isRestricted() && acid.kind() == Acid.Kind.NITRIC) {
      answer.mind(
          "restricted",
          Row.aside(LIMIT).set(LIMIT, Acid.NITRIC_RESTRICTED_PCT),
          "nitric acid over {limit_pct} % is restricted for the public in the EU: ask what holds where you live, or take citric or phosphoric.");
    } else if (acid.isRestricted()) {
      answer.mind(
          "restricted",
          Row.aside(LIMIT).set(LIMIT, Acid.SULFURIC_RESTRICTED_PCT),
          "sulfuric acid over {limit_pct} % is restricted for the public in the EU: ask what holds where you live.");
    }
  }

  private String handling() {
    if (acid.isSolid()) {
      return "gloves and goggles; dissolve it in a cup of water first; never near bleach: chlorine gas. Keep it locked away.";
    }
    switch (acid.kind()) {
      case NITRIC:
        return "acid into water, never water into acid. Goggles, gloves, outdoors; never near bleach: chlorine gas. Keep it locked away; what its label says comes first. Nitric acid fumes, stains and feeds fire.";
      case SULFURIC:
        return "acid into water, never water into acid. Goggles, gloves, outdoors; never near bleach: chlorine gas. Keep it locked away; what its label says comes first. Sulfuric acid heats as it mixes.";
      default:
        return "acid into water, never water into acid. Goggles, gloves, outdoors; never near bleach: chlorine gas. Keep it locked away; what its label says comes first.";
    }
  }

  private void next() {
    if (TopupAsked.isWeighed(call.plan())) {
      answer.next(
          NextLine.of(call.again("topup"))
              + " --volume ... --ec READING   acid comes first, then the salts; the pH last");
      return;
    }
    String again = NextLine.of(call.again("dose"));
    answer.next(
        row,
        call.hasPlan()
            ? again
                + " --volume \"{volume_L}\" --from READING   acid comes first, then feed; the pH last"
            : again
                + " --volume \"{volume_L}\" --from READING ...   acid comes first, then feed; the pH last");
  }

  /** Workings: the buffer that is left, the acid for the rest, and the bottle. */
  private void left(double celsius) {
    Phrase constants =
        Phrase.of("CT = ")
            .number(need.totalCarbonateMmolL(), 4)
            .add(" mmol/L, pK1 = ")
            .number(need.pk1(), 4)
            .add(", pK2 = ")
            .number(need.pk2(), 5);
    answer.working(
        Working.of(
            "buffer left at the target",
            "left = CT (a1 + 2 a2) + Kw/h - h,  CT from the first pH",
            constants.add(" at ").add(celsius, Show.C),
            need.leftMeqL(),
            Show.MEQ_L.digits(4),
            carbonateRange(),
            "Plummer and Busenberg 1982"));
  }

  private static String carbonateRange() {
    return Phrase.of("water ")
        .add(Carbonate.VALID.low(0), Show.C)
        .add(" to ")
        .add(Carbonate.VALID.high(0), Show.C)
        .add("; activities left out, 2 % at 0.01 mol/L")
        .render(false);
  }

  private void acid() {
    answer.working(
        Working.of(
            "acid, closed",
            "meq/L = alkalinity - left;  mmol/L = meq/n",
            Phrase.of("n = ").number(need.protons(), 4).add(" protons a molecule at the target"),
            need.needMeqL(),
            Show.MEQ_L.digits(4),
            Phrase.of("target pH ")
                .number(AcidNeed.VALID.low(0), 2)
                .add(" to ")
                .number(AcidNeed.VALID.high(0), 2)
                .render(false),
            "charge balance"));
  }

  private void bottle() {
    if (need.acidMolPerL() != null) {
      answer.working(
          Working.of(
              "by volume",
              "mL = mmol/L V / (mol/L of the bottle);  mol/L = 10 p density / M",
              Phrase.of("bottle ").number(need.acidMolPerL(), 4).add(" mol/L"),
              Litres.baseOfMl(need.acid().ml()),
              Show.ML.digits(4),
              "density at 20 C",
              "handbook densities"));
    }
  }
}
