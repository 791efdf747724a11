package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.tank.Ballast;
import leat.system.DrinksOf;

/** The tank is changed before the water's own salts have built up. */
final class ChangeInterval extends DeclaredRule {
  private static final Show DAYS = Show.of(Units.D, 2);

  ChangeInterval() {
    super(
        "change-interval",
        AT_MOST,
        DAYS,
        null,
        "half of the target EC: common practice; sodium and chloride: FAO Irrigation and Drainage Paper 29 (1985)",
        "season.change water.ec water.sodium water.chloride drinks crops tank.full target.ec",
        "Days between changes against the day on which salts that come with every can and are not eaten reach 69 mg/L of sodium or 142 mg/L of chloride; where neither is known, on which half of the water's EC, left behind, takes half of the target EC.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section water = subject.section("water");
    Section tank = subject.section("tank");
    double full = Units.L.fromBase(subject.tank().volume(tank.need("full")));
    double drinks = Units.L_D.fromBase(DrinksOf.perSecond(subject.plan()));
    Section change = subject.section("season").section("change");
    if (drinks <= 0 && change.has("or_added") && !change.has("every")) {
      return List.of();
    }
    double every = every(change, full, drinks);
    Double days = days(water, "sodium", Ballast.SODIUM_MG_L, drinks, full);
    String which = "sodium is at 69 mg/L then";
    Double chloride = days(water, "chloride", Ballast.CHLORIDE_MG_L, drinks, full);
    if (chloride != null && (days == null || chloride < days)) {
      days = chloride;
      which = "chloride is at 142 mg/L then";
    }
    if (!water.has("sodium") && !water.has("chloride")) {
      double unused = Ballast.UNUSED_SHARE * water.need("ec");
      double most = Ballast.EC_SHARE * subject.section("target").need("ec");
      days = Ballast.days(unused, most, drinks, full);
      which =
          "about half of the target EC is tap salt then; water.sodium and water.chloride would tell better";
    }
    Double own = subject.ownLimit(this);
    if (own == null && days == null) {
      return List.of(Finding.valueOnly(this, Verdict.PASS, Units.D.toBase(every), Phrase.of()));
    }
    double limit = own != null ? own : Units.D.toBase(days);
    Phrase advice =
        limit < Units.D.toBase(1)
            ? Phrase.of(
                "no interval helps: the fresh water is over it; thin it with rain, half and half")
            : Phrase.of("season.change.every of ")
                .count((long) Math.floor(Units.D.fromBase(limit)))
                .add(" d" + (own == null ? ": " + which : ""));
    return List.of(atMost(Units.D.toBase(every), limit, Verdict.WARN, advice));
  }

  private static Double days(Section water, String ion, double limit, double drinks, double full) {
    Double in = water.maybe(ion);
    return in == null ? null : Ballast.days(in, limit, drinks, full);
  }

  /** Days between changes by the plan's days or litres, whichever comes first. */
  private static double every(Section change, double full, double drinks) {
    Double share = change.maybe("or_added");
    if (share == null || drinks <= 0) {
      return Units.D.fromBase(change.need("every"));
    }
    double byLitres = share * full / drinks;
    Double every = change.maybe("every");
    return every == null ? byLitres : Math.min(byLitres, Units.D.fromBase(every));
  }
}
