package leat.solution.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.Ion;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.Salts;
import org.junit.jupiter.api.Test;

/** Amounts on the scale: steps, too little to weigh, other volumes, prices. */
class WeighedTest {
  private static final Salt NITRATE = Salts.of("potassium-nitrate");
  private static final Salt IRON = Salts.of("iron-dtpa-11");

  private static Recipe mix(double litres, double... grams) {
    List<Weighed> salts = new ArrayList<>();
    for (double g : grams) {
      salts.add(new Weighed(salts.isEmpty() ? NITRATE : IRON, g));
    }
    return Recipe.mix(salts, litres, Ions.NONE);
  }

  /** As the scale shows them: 0.31 g is 0.3 on a scale of 0.1, not 0.30000000000000004. */
  @Test
  void roundedToWhatTheScaleShows() {
    assertThat(new Weighed(NITRATE, 0.31).rounded(0.1).grams()).isEqualTo(0.3);
    assertThat(new Weighed(NITRATE, 0.574).rounded(0.01).grams()).isEqualTo(0.57);
    assertThat(new Weighed(NITRATE, 17.4).rounded(1).grams()).isEqualTo(17);
    assertThat(new Weighed(NITRATE, 17.4).rounded(5).grams()).isEqualTo(15);
    // 0.3 g is no whole part of a gram: 4 steps are 1.2
    assertThat(new Weighed(NITRATE, 1.3).rounded(0.3).grams()).isCloseTo(1.2, within(1e-12));
  }

  /** A home scale weighs from 0.1 g (common practice), 0.1 g included. */
  @Test
  void aTenthOfAGramCanBeWeighed() {
    assertThat(new Weighed(NITRATE, 0.1).isTooLittle()).isFalse();
    assertThat(new Weighed(NITRATE, 0.099).isTooLittle()).isTrue();
    assertThat(mix(100, 20, 0.1).hasTooLittle()).isFalse();
    assertThat(mix(100, 20, 0.09).hasTooLittle()).isTrue();
    assertThat(mix(100, 20, 0).hasTooLittle()).isFalse();
  }

  /** 45 g and 3 g in 60 L are 0.75 and 0.05 g/L: for 20 L 15 g and 1 g. */
  @Test
  void theSameSolutionInAnotherVolume() {
    Recipe recipe = mix(60, 45, 3);
    assertThat(recipe.gramsFor(0, 20)).isCloseTo(15, within(1e-12));
    assertThat(recipe.gramsFor(1, 20)).isCloseTo(1, within(1e-12));
    assertThat(recipe.gramsFor(20)).isCloseTo(16, within(1e-12));
    // 0.05 g/L: 0.15 g in 3 L can be weighed, 0.075 g in 1.5 L cannot
    assertThat(recipe.scaledTooSmall(3)).isFalse();
    assertThat(recipe.scaledTooSmall(1.5)).isTrue();
  }

  /** 20 g at 4 per kilogram cost 0.08; the iron has no price, and none is missed when it is 0 g. */
  @Test
  void theCostIsCompleteWhenAllThatIsWeighedHasAPrice() {
    Weighed priced = new Weighed(NITRATE.withPrice(4), 20);
    Recipe some = Recipe.mix(List.of(priced, new Weighed(IRON, 1)), 45, Ions.NONE);
    assertThat(some.cost()).isCloseTo(0.08, within(1e-12));
    assertThat(some.costComplete()).isFalse();
    Recipe first = Recipe.mix(List.of(new Weighed(IRON, 1), priced), 45, Ions.NONE);
    assertThat(first.costComplete()).isFalse();
    Recipe all = Recipe.mix(List.of(priced, new Weighed(IRON, 0)), 45, Ions.NONE);
    assertThat(all.costComplete()).isTrue();
  }

  /** A product that hides its nitrogen's form hides nothing when 0 g of it are weighed. */
  @Test
  void nothingOfAProductHidesNothing() {
    Salt hidden = Salt.own("hidden", Elements.UNKNOWN.with(Element.N, 0.2));
    Recipe recipe =
        Recipe.mix(List.of(new Weighed(NITRATE, 10), new Weighed(hidden, 0)), 10, Ions.NONE);
    assertThat(recipe.ionsComplete()).isTrue();
    assertThat(recipe.total().knows(Element.N_NO3)).isTrue();
    // 14.007/101.10 of a gram per litre
    assertThat(recipe.total().of(Element.N_NO3)).isCloseTo(138.55, within(0.02));
  }

  /** From 1 mL to 1000 m3. */
  @Test
  void aVolumeIsAMillilitreToAThousandCubicMetres() {
    assertThat(mix(0.001, 0.0001).litres()).isEqualTo(0.001);
    assertThat(mix(1e6, 1).litres()).isEqualTo(1e6);
    assertThatThrownBy(() -> mix(0.0009, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> mix(1.1e6, 1)).isInstanceOf(Impossible.class);
  }

  /** The sum holds to an ionic strength of 0.5 mol/L: 500 mmol/L of sodium chloride. */
  @Test
  void aBrineOfHalfAMoleStillHasAnEc() {
    assertThat(brine(500).ec()).isNotNull();
    assertThat(brine(501).ec()).isNull();
  }

  private static Recipe brine(double mmolL) {
    return Recipe.mix(List.of(), 1, Ions.NONE.and(Ion.NA, mmolL).and(Ion.CL, mmolL));
  }
}
