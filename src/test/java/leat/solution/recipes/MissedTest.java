package leat.solution.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.IonName;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.Salts;
import org.junit.jupiter.api.Test;

/**
 * How a recipe weighed by hand meets what was asked, by a product that is half potassium: 1 g in 10
 * L brings 1000 x 1 x 0.5/10 = 50 mg/L.
 */
class MissedTest {
  private static final Salt HALF = Salt.own("half", Elements.UNKNOWN.with(Element.K, 0.5));

  private static RecipeFit judged(double grams, Ions water, Asked... asked) {
    Recipe recipe = Recipe.mix(List.of(new Weighed(HALF, grams)), 10, water);
    return RecipeFit.judge(List.of(asked), recipe, water);
  }

  private static Missed potassium(double grams, double asked) {
    return judged(grams, Ions.NONE, new Asked(Element.K, asked)).elements().get(0);
  }

  /** 2.5 g bring 125 mg/L, 1.5 g 75: of 100 asked a quarter too much and too little. */
  @Test
  void aQuarterOffEitherWay() {
    Missed over = potassium(2.5, 100);
    assertThat(over.offPct()).isCloseTo(25, within(1e-12));
    assertThat(over.offMgL()).isCloseTo(25, within(1e-12));
    Missed under = potassium(1.5, 100);
    assertThat(under.missedPct()).isCloseTo(-25, within(1e-12));
    assertThat(under.offPct()).isCloseTo(25, within(1e-12));
    assertThat(under.offMgL()).isCloseTo(25, within(1e-12));
  }

  /** "Within 25 %" holds for a miss of 25 % itself: 125 mg/L of 100. */
  @Test
  void theAllowedMissIsAllowed() {
    RecipeFit fit = judged(2.5, Ions.NONE, new Asked(Element.K, 100));
    assertThat(fit.isWithin(25)).isTrue();
    assertThat(fit.isWithin(24.9)).isFalse();
  }

  /** A thousandth of 1000 mg/L is 1: 1000.9 is not worth a word, 1001.1 and 998.9 are. */
  @Test
  void aThousandthIsWorthNaming() {
    assertThat(potassium(20, 1000).isWorthNaming()).isFalse();
    assertThat(potassium(20.018, 1000).isWorthNaming()).isFalse();
    assertThat(potassium(20.022, 1000).isWorthNaming()).isTrue();
    assertThat(potassium(19.978, 1000).isWorthNaming()).isTrue();
  }

  /** Asked at nought it is judged per 1 mg/L: a thousandth is a microgram per litre. */
  @Test
  void askedAtNoughtItIsJudgedPerMilligram() {
    Missed little = potassium(0.000018, 0); // 0.0009 mg/L
    assertThat(little.isWorthNaming()).isFalse();
    Missed more = potassium(0.000022, 0); // 0.0011 mg/L
    assertThat(more.isWorthNaming()).isTrue();
    assertThat(more.hasPct()).isFalse();
    assertThat(more.offPct()).isZero();
    assertThat(more.offMgL()).isCloseTo(0.0011, within(1e-12));
  }

  /**
   * Iron is missing, for nothing offered brings it; phosphorus is not, for none was asked. Of the
   * others potassium is worst, a quarter off.
   */
  @Test
  void whatNothingBringsIsMissingAndTheOthersAreJudgedWithoutIt() {
    RecipeFit fit =
        judged(
            1.5,
            Ions.NONE,
            new Asked(Element.K, 100),
            new Asked(Element.FE, 2),
            new Asked(Element.P, 0));
    assertThat(fit.missing()).containsExactly(Element.FE);
    assertThat(fit.leftOut()).as("nothing here brings iron").isEmpty();
    assertThat(fit.worstOfOthersPct()).isCloseTo(25, within(1e-12));
    assertThat(fit.worstMissPct()).isCloseTo(100, within(1e-12));
  }

  /** 100 asked: 125 mg/L are over it, 75 are not; 99.95 are as much as salts are pure. */
  @Test
  void atLeastWhatWasAsked() {
    Asked asked = new Asked(Element.K, 100);
    assertThat(judged(2.5, Ions.NONE, asked).isOver()).isTrue();
    assertThat(judged(2, Ions.NONE, asked).isOver()).isTrue();
    assertThat(judged(1.999, Ions.NONE, asked).isOver()).isTrue();
    assertThat(judged(1.5, Ions.NONE, asked).isOver()).isFalse();
    assertThat(judged(2.5, Ions.NONE, asked, new Asked(Element.FE, 2)).isOver())
        .as("no iron at all")
        .isFalse();
    assertThat(judged(2.5, Ions.NONE, new Asked(Element.FE, 2), asked).isOver()).isFalse();
  }

  /** Iron is missing; potassium beside it is met with 2 g for 100 mg/L, and not with 1.5 or 2.5. */
  @Test
  void theOthersAreMetOrNot() {
    Asked iron = new Asked(Element.FE, 2);
    Asked potassium = new Asked(Element.K, 100);
    assertThat(judged(2, Ions.NONE, iron, potassium).othersMet()).isTrue();
    assertThat(judged(1.5, Ions.NONE, potassium, iron).othersMet()).isFalse();
    assertThat(judged(2.5, Ions.NONE, iron, potassium).othersMet()).isFalse();
  }

  /** Weighed at 0 g there is no potassium, though the product would bring it. */
  @Test
  void whatWasWeighedAtNoughtIsMissing() {
    RecipeFit fit = judged(0, Ions.NONE, new Asked(Element.K, 100));
    assertThat(fit.unbrought()).isEmpty();
    assertThat(fit.missing()).containsExactly(Element.K);
    assertThat(fit.leftOut()).containsExactly(Element.K);
    assertThat(fit.worstOfOthersPct()).isZero();
  }

  /** Water of 62 mg/L calcium is short of 100 and no product brings it; for 62 and 50 it does. */
  @Test
  void waterAloneMayBringIt() {
    Ions water = Ions.NONE.andMilligrams(IonName.of("Ca"), 62);
    assertThat(judged(1, water, new Asked(Element.CA, 100)).missing()).containsExactly(Element.CA);
    RecipeFit enough = judged(1, water, new Asked(Element.CA, 50), new Asked(Element.K, 50));
    assertThat(enough.missing()).isEmpty();
    assertThat(enough.worstOfOthersPct()).isCloseTo(24, within(1e-9));
  }

  @Test
  void refusesWhatCannotBeJudged() {
    assertThatThrownBy(
            () -> judged(1, Ions.NONE, new Asked(Element.K, 100), new Asked(Element.K, 50)))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> judged(1, Ions.NONE)).isInstanceOf(Impossible.class);
    Salt hidden = Salt.own("hidden", Elements.UNKNOWN.with(Element.N, 0.2));
    Recipe recipe = Recipe.mix(List.of(new Weighed(hidden, 1)), 10, Ions.NONE);
    assertThatThrownBy(
            () -> RecipeFit.judge(List.of(new Asked(Element.N_NO3, 20)), recipe, Ions.NONE))
        .hasMessageContaining("hidden");
  }

  /** The volume is named, not the sum that fails of it. */
  @Test
  void aVolumeOfNothingIsRefusedByItsName() {
    for (double litres : new double[] {0, -45, Double.NaN, 0.0005, 2e6}) {
      assertThatThrownBy(
              () ->
                  RecipeFit.solve(
                      List.of(new Asked(Element.K, 100)),
                      List.of(Salts.of("potassium-nitrate")),
                      litres,
                      Ions.NONE))
          .as("%s L", litres)
          .isInstanceOfSatisfying(
              Impossible.class, no -> assertThat(no.quantity()).isEqualTo("volume"));
    }
  }
}
