package leat.check.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.solution.conductivity.MeterCheck;

/** The EC and pH meters were checked against standards. */
public final class MeterGuess extends DeclaredRule {
  public MeterGuess() {
    super(
        "meter-guess",
        MEASURED,
        null,
        null,
        "over 10 % off clean or replace the probe: common practice",
        "meters.ec.slope meters.ec.checked meters.ph.offset meters.ph.checked",
        "Whether the meters were checked. A cheap EC meter is off by a tenth out of the box, a pH probe by half a unit after a dry winter; every dose hangs on them.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section ec = subject.section("meters").section("ec");
    Section ph = subject.section("meters").section("ph");
    List<Finding> found = new ArrayList<>();
    if (!ec.has("slope")) {
      found.add(
          Finding.words(
                  this,
                  Verdict.WARN,
                  "not checked",
                  Phrase.of(
                      "leat ec READING --standard \"1.413 mS/cm\" --at TEMPERATURE, then meters.ec.slope"))
              .at("EC"));
    } else {
      found.add(slope(ec).at("EC"));
    }
    found.add(
        ph.has("offset")
            ? Finding.words(this, Verdict.PASS, "checked" + day(ph), Phrase.of()).at("pH")
            : Finding.words(
                    this,
                    Verdict.WARN,
                    "not checked",
                    Phrase.of(
                        "hold it in a fresh buffer of pH 7, then one of 4; then meters.ph.offset"))
                .at("pH"));
    return found;
  }

  private Finding slope(Section ec) {
    if (!MeterCheck.isCorrectable(ec.need("slope"))) {
      return Finding.words(
          this,
          Verdict.WARN,
          "over 10 % off",
          Phrase.of("clean the probe, check again with fresh standard, or replace it"));
    }
    return Finding.words(this, Verdict.PASS, "checked" + day(ec), Phrase.of());
  }

  private static String day(Section meter) {
    return meter.has("checked") ? " " + meter.typed("checked") : "";
  }
}
