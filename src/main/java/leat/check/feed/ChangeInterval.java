package leat.check.feed;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.tank.Ballast;
import leat.system.DrinksOf;

/** The tank is changed before the water's own salts have built up. */
final class ChangeInterval extends DeclaredRule {
  private static final Show DAYS = Show.of(Units.D, 2);
  private static final String EVERY = "season.change.every";

  ChangeInterval() {
    super(
        "change-interval",
        AT_MOST,
        DAYS,
        null,
        "half of the target EC: common practice; sodium and chloride: FAO Irrigation and Drainage Paper 29 (1985)",
        "season.change water.ec water.sodium water.chloride target.ec tank.full"
            + ReadKeys.DRINKS
            + ReadKeys.TANK,
        "Days between changes against the day on which salts that come with every can and are not eaten reach 69 mg/L of sodium or 142 mg/L of chloride; where neither is known, on which half of the water's EC, left behind, takes half of the target EC.");
  }

  /** What fills the tank with salts nobody eats: the day it is too much, and what it is. */
  private record Bound(Double days, String what) {}

  private static double full(Subject subject) {
    return Units.L.fromBase(subject.tank().volume(subject.section("tank").need("full")));
  }

  private static double drinks(Subject subject) {
    return Units.L_D.fromBase(DrinksOf.perSecond(subject.plan()));
  }

  @Override
  public List<Finding> measure(Subject subject) {
    double full = full(subject);
    double drinks = drinks(subject);
    Section change = subject.section("season").section("change");
    if (drinks <= 0 && change.has("or_added") && !change.has("every")) {
      return List.of();
    }
    double every = Units.D.toBase(every(change, full, drinks));
    Bound bound = bound(subject, full, drinks);
    Double own = subject.ownLimit(this);
    if (own == null && bound.days() == null) {
      return List.of(Finding.valueOnly(this, Verdict.PASS, every));
    }
    double limit = own != null ? own : Units.D.toBase(bound.days());
    return List.of(atMost(every, limit, Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    if (finding.limit() <= 0) {
      return Advice.of(
          "no interval helps: the fresh water is over it; thin it with rain, half and half");
    }
    Bound bound = bound(subject, full(subject), drinks(subject));
    String why = subject.ownLimit(this) == null ? ": " + bound.what() : "";
    double days = Math.floor(Units.D.fromBase(finding.limit()));
    Cure sooner =
        days < 1
            ? Cure.atMost(EVERY, finding.limit(), Show.H)
            : Cure.typed(EVERY, (long) days + " d");
    return Advice.none().cure(sooner.remark(why));
  }

  private static Bound bound(Subject subject, double full, double drinks) {
    Section water = subject.section("water");
    if (!water.has("sodium") && !water.has("chloride")) {
      double unused = Ballast.UNUSED_SHARE * water.need("ec");
      double most = Ballast.EC_SHARE * subject.section("target").need("ec");
      return new Bound(
          Ballast.days(unused, most, drinks, full),
          "about half of the target EC is tap salt then; water.sodium and water.chloride would tell better");
    }
    Double sodium = days(water, "sodium", Ballast.SODIUM_MG_L, drinks, full);
    Double chloride = days(water, "chloride", Ballast.CHLORIDE_MG_L, drinks, full);
    return chloride != null && (sodium == null || chloride < sodium)
        ? new Bound(chloride, "chloride is at 142 mg/L then")
        : new Bound(sodium, "sodium is at 69 mg/L then");
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
