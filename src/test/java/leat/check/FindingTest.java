package leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A finding's numbers, by hand. */
class FindingTest {
  private static final Rule LEAST = Rules.find("pump-margin");
  private static final Rule MOST = Rules.find("reach");
  private static final Rule MORE = Rules.find("tower-fed");
  private static final Rule WORDS = Rules.find("guy-anchor");

  private static double margin(Rule rule, double value, double limit) {
    return Finding.of(rule, Verdict.PASS, value, limit).margin();
  }

  /** 30 % over a limit of 20 % is half as much again; 1.5 m under 2 m is a quarter. */
  @Test
  void theMarginIsAShareOfTheLimitOnTheGoodSide() {
    assertThat(margin(LEAST, 0.3, 0.2)).isCloseTo(0.5, within(1e-12));
    assertThat(margin(LEAST, 0.1, 0.2)).isCloseTo(-0.5, within(1e-12));
    assertThat(margin(MOST, 1.5, 2)).isCloseTo(0.25, within(1e-12));
    assertThat(margin(MOST, 2.5, 2)).isCloseTo(-0.25, within(1e-12));
    assertThat(margin(MORE, 3, 2)).isCloseTo(0.5, within(1e-12));
    // under zero, as of frost: -1 is a half over -2
    assertThat(margin(LEAST, -1, -2)).isCloseTo(0.5, within(1e-12));
    assertThat(margin(LEAST, 1, 0)).isNaN();
    assertThat(margin(WORDS, 1, 2)).isNaN();
    assertThat(Finding.valueOnly(LEAST, Verdict.PASS, 1).margin()).isNaN();
    assertThat(Finding.words(LEAST, Verdict.PASS, 3).margin()).isNaN();
  }

  @Test
  void twoFindingsAreLikeWhenRoundingAloneIsBetweenThem() {
    Finding one = Finding.of(LEAST, Verdict.PASS, 2, 1);
    assertThat(one.isLike(Finding.of(LEAST, Verdict.PASS, 2 + 1e-9, 1))).isTrue();
    assertThat(one.isLike(Finding.of(LEAST, Verdict.PASS, 2 - 1e-9, 1))).isTrue();
    assertThat(one.isLike(Finding.of(LEAST, Verdict.PASS, 2 + 3e-9, 1))).isFalse();
    assertThat(one.isLike(Finding.of(LEAST, Verdict.FAIL, 2, 1))).isFalse();
    assertThat(one.isLike(Finding.words(LEAST, Verdict.PASS, 0))).isFalse();
    Finding words = Finding.words(WORDS, Verdict.PASS, 1);
    assertThat(words.isLike(Finding.words(WORDS, Verdict.PASS, 1))).isTrue();
    assertThat(words.isLike(Finding.words(WORDS, Verdict.PASS, 0))).isFalse();
  }

  @Test
  void whatAFindingHas() {
    Finding number = Finding.of(LEAST, Verdict.FAIL, 2, 1).at(3);
    assertThat(number.hasValue()).isTrue();
    assertThat(number.hasLimit()).isTrue();
    assertThat(number.part()).isEqualTo(3);
    assertThat(number.isBreach()).isTrue();
    assertThat(Finding.of(LEAST, Verdict.WARN, 2, 1).isBreach()).isTrue();
    assertThat(Finding.valueOnly(LEAST, Verdict.PASS, 2).hasLimit()).isFalse();
    assertThat(Finding.words(LEAST, Verdict.PASS, 3).saying()).isEqualTo(3);
    assertThat(Finding.off(LEAST).isBreach()).isFalse();
    assertThat(Finding.off(LEAST).lacksKeys()).isFalse();
    assertThat(Finding.lacking(LEAST, "tank.full").lacksKeys()).isTrue();
    assertThat(Finding.lacking(LEAST, "tank.full").reason()).isEqualTo("needs tank.full");
    assertThat(Finding.unknown(LEAST).lacksKeys()).isTrue();
    assertThat(Finding.refused(LEAST, "lift: too high").lacksKeys()).isFalse();
    assertThat(Finding.refused(LEAST, "lift: too high").reason()).isEqualTo("lift: too high");
    assertThat(number.isSameAs(Finding.unknown(LEAST).at(3))).isTrue();
    assertThat(number.isSameAs(Finding.unknown(LEAST))).isFalse();
    assertThat(number.isSameAs(Finding.unknown(MOST).at(3))).isFalse();
  }

  @Test
  void everyOldNameLeadsToARuleOfToday() {
    assertThat(OldNames.now("tower-starved")).isEqualTo("tower-fed");
    assertThat(OldNames.now("meter-guess")).isEqualTo("meters-checked");
    assertThat(OldNames.now("tower-fed")).isNull();
    for (String old : new String[] {"run-out", "film-flood", "gap-clogs", "riser-fast"}) {
      assertThat(Rules.find(OldNames.now(old))).isNotNull();
    }
  }
}
