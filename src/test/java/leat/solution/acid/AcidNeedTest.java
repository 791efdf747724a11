package leat.solution.acid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AcidNeedTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-acid.csv").atLeast(10);
  }

  static AcidNeed.Answer answer(Row r) {
    return AcidNeed.of(
        r.num("volume_L"),
        r.num("alkalinity_meq_L"),
        r.num("ph"),
        r.num("to_ph"),
        r.num("temperature_C"),
        Acids.named(r.text("acid")));
  }

  static void close(Row r, String column, Double got) {
    if (!r.has(column)) {
      assertThat(got).as(r.idAndProvenance() + " " + column).isNull();
      return;
    }
    double want = r.num(column);
    assertThat(got)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(want, offset(r.num("tol_rel") * Math.abs(want)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    AcidNeed.Answer a = answer(r);
    assertThat(a.status()).isEqualTo(AcidNeed.Status.DOSE);
    close(r, "pK1", a.pk1());
    close(r, "pK2", a.pk2());
    close(r, "pKw", a.pkw());
    close(r, "total_carbonate_mmol_L", a.totalCarbonateMmolL());
    close(r, "alkalinity_left_meq_L", a.leftMeqL());
    close(r, "acid_meq_L", a.needMeqL());
    close(r, "protons_per_molecule", a.protons());
    close(r, "acid_mmol_L", a.acidMmolL());
    close(r, "acid_mol_L", a.acidMolPerL());
    close(r, "acid_mL", a.acid().ml());
    close(r, "acid_g", a.acid().g());
    close(r, "first_pour_mL", a.firstPour().ml());
    close(r, "first_pour_g", a.firstPour().g());
    close(r, "acid_if_open_meq_L", a.openNeedMeqL());
    close(r, "acid_if_open_mL", a.open().ml());
    close(r, "acid_if_open_g", a.open().g());
    close(r, "N_mg_L", a.nitrogenMgL());
    close(r, "P_mg_L", a.phosphorusMgL());
    close(r, "S_mg_L", a.sulfurMgL());
    assertThat(a.openPh())
        .as(r.idAndProvenance())
        .isCloseTo(r.num("ph_open_air_420ppm"), offset(r.num("tol_ph")));
    assertThat(a.stuffyPh())
        .as(r.idAndProvenance())
        .isCloseTo(r.num("ph_open_air_2000ppm"), offset(r.num("tol_ph")));
  }

  /**
   * The forward sum, a solver of the tests' own with the pK of the row, finds the target again; the
   * first pour stops above it. pK of the weak acids: handbook values (from memory).
   */
  @ParameterizedTest
  @MethodSource("rows")
  void forwardAndBack(Row r) {
    AcidNeed.Answer a = answer(r);
    ChargeBalance water = new ChargeBalance(r.num("pK1"), r.num("pK2"), r.num("pKw"));
    double meq = r.num("alkalinity_meq_L");
    double total = water.total(meq, r.num("ph"));
    assertThat(water.closedPh(meq, total, taken(r, a.acid())))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("to_ph"), offset(1e-6));
    assertThat(a.firstPourPh())
        .as(r.idAndProvenance())
        .isCloseTo(water.closedPh(meq, total, taken(r, a.firstPour())), offset(1e-6));
    assertThat(a.firstPourPh()).isBetween(r.num("to_ph"), r.num("ph"));
    assertThat(a.firstPourPhIfStripHigh()).isGreaterThan(r.num("to_ph"));
    double gas = Math.pow(10, Carbonate.at(r.num("temperature_C")).logKh()) * 420e-6 * 1000;
    // the sheet prints nine digits of some 4 meq/L, and 0.006 meq/L hold a pH in the open
    assertThat(water.openPh(meq, gas, taken(r, a.open())))
        .as("held in the open")
        .isCloseTo(r.num("to_ph"), offset(1e-5));
  }

  /** What an amount in the row's volume takes at a pH, meq/L. */
  private static DoubleUnaryOperator taken(Row r, AcidPour.Amount amount) {
    String acid = r.text("acid");
    double mmol =
        amount.ml() == null
            ? 1000 * amount.g() / Acids.named(acid).kind().gPerMol
            : amount.ml() * r.num("acid_mol_L");
    double perL = mmol / r.num("volume_L");
    double[] phosphoric = {2.15, 7.20, 12.35};
    double[] citric = {3.13, 4.76, 6.40};
    if (acid.startsWith("phosphoric") || acid.startsWith("citric")) {
      double[] pk = acid.startsWith("citric") ? citric : phosphoric;
      return ph -> perL * ChargeBalance.protons(pk, ph);
    }
    return ph -> perL * (acid.startsWith("sulfuric") ? 2 : 1);
  }

  @Property
  void theFirstPourCannotOvershoot(
      @ForAll @DoubleRange(min = 0.05, max = 8) double alkalinity,
      @ForAll @DoubleRange(min = 6.3, max = 8.4) double ph,
      @ForAll @DoubleRange(min = 4.5, max = 6.2) double to,
      @ForAll @DoubleRange(min = 0, max = 35) double celsius) {
    if (!Carbonate.at(celsius).canBe(0.8 * alkalinity, ph)) {
      return;
    }
    for (String name : Acids.names()) {
      AcidNeed.Answer a = AcidNeed.of(45, alkalinity, ph, to, celsius, Acids.named(name));
      assertThat(a.firstPourPh()).isGreaterThan(to);
      assertThat(a.firstPourPhIfStripHigh()).as(name).isGreaterThan(to);
      assertThat(a.leftMeqL() + a.needMeqL()).isCloseTo(alkalinity, offset(1e-12));
      assertThat(a.openNeedMeqL()).isGreaterThan(a.needMeqL() - 1e-12);
      assertThat(a.openPh()).isGreaterThan(a.stuffyPh());
      if (!Acids.named(name).isSolid()) {
        assertThat(a.firstPour().ml() + 2 * a.half().ml())
            .isCloseTo(a.acid().ml(), withPercentage(1e-9));
      }
    }
  }

  /**
   * Published: one US fluid ounce of 93 % sulfuric acid (1.835 kg/L) in 100 US gallons takes 136
   * mg/L of CaCO3 away and brings 43.6 mg/L of sulfur (a university's greenhouse acid table).
   */
  @Test
  void aPublishedAcidTable() {
    Acid acid = Acid.liquid(Acid.Kind.SULFURIC, 93, 1.835);
    double mmol = 29.5735 * acid.molPerL() / 378.541;
    assertThat(mmol * acid.protons(5.8) * 50.04).isCloseTo(136, offset(0.5));
    assertThat(mmol * acid.sulfurMgPerMmol()).isCloseTo(43.6, offset(0.05));
  }

  /** Published: pK at 25 C, Plummer and Busenberg 1982: 6.352, 10.329; water 14.000; KH -1.468. */
  @Test
  void publishedConstants() {
    Carbonate water = Carbonate.at(25);
    assertThat(water.pk1()).isCloseTo(6.352, offset(0.0005));
    assertThat(water.pk2()).isCloseTo(10.329, offset(0.0005));
    assertThat(water.pkw()).isCloseTo(14.000, offset(0.003));
    assertThat(water.logKh()).isCloseTo(-1.468, offset(0.0005));
  }

  /** Pure water in open air of 420 ppm: the textbook pH of clean rain, 5.6. */
  @Test
  void cleanRain() {
    assertThat(Carbonate.at(25).openPh(0, 420)).isCloseTo(5.6, offset(0.03));
  }

  /**
   * Mean protons: phosphoric 1.04 at 5.8 and 1.17 at 6.5, citric 2.12 at 5.8 (the sheet, section
   * 4).
   */
  @Test
  void protonsOfWeakAcids() {
    Acid phosphoric = Acids.named("phosphoric-85");
    assertThat(phosphoric.protons(5.8)).isCloseTo(1.04, offset(0.005));
    assertThat(phosphoric.protons(6.5)).isCloseTo(1.17, offset(0.005));
    assertThat(Acids.named("citric").protons(5.8)).isCloseTo(2.12, offset(0.005));
    assertThat(phosphoric.protons(0)).isBetween(0.0, 0.01);
    assertThat(phosphoric.protons(14)).isBetween(2.9, 3.0);
  }

  /** Laboratory acids, mol/L as every supplier's table rounds them. */
  @Test
  void densitiesGiveTheUsualMolarities() {
    assertThat(Acids.named("nitric-70").molPerL()).isCloseTo(15.7, offset(0.1));
    assertThat(Acids.named("nitric-65").molPerL()).isCloseTo(14.4, offset(0.1));
    assertThat(Acids.named("hydrochloric-37").molPerL()).isCloseTo(12.0, offset(0.1));
    assertThat(Acids.named("sulfuric-96").molPerL()).isCloseTo(18.0, offset(0.1));
    assertThat(Acids.named("phosphoric-85").molPerL()).isCloseTo(14.7, offset(0.1));
    // battery acid of 37 %: 1.28 kg/L
    assertThat(Acids.named("sulfuric-37").densityKgL()).isCloseTo(1.28, offset(0.005));
    assertThat(Acids.named("sulphuric-93").densityKgL()).isEqualTo(1.8279);
  }

  /** A strength between two rows of the table, and a density from the label. */
  @Test
  void anyStrengthMayBeNamed() {
    Acid acid = Acids.named("nitric-53.5");
    assertThat(acid.percent()).isEqualTo(53.5);
    assertThat(acid.densityKgL()).isBetween(1.310, 1.3667);
    assertThat(Acids.named("nitric-53.5", 1.333).densityKgL()).isEqualTo(1.333);
    assertThat(Acids.named("vinegar-5")).isNull();
    for (String name : Acids.names()) {
      assertThat(Acids.named(name)).as(name).isNotNull();
    }
    assertThatThrownBy(() -> Acids.named("nitric")).hasMessageContaining("strength");
    assertThatThrownBy(() -> Acids.named("nitric-")).hasMessageContaining("per cent");
    assertThatThrownBy(() -> Acids.named("nitric-1.2.3")).hasMessageContaining("per cent");
    assertThatThrownBy(() -> Acids.named("nitric-x")).hasMessageContaining("per cent");
    assertThatThrownBy(() -> Acids.named("nitric-0")).hasMessageContaining("above 0");
    assertThatThrownBy(() -> Acids.named("nitric-120")).hasMessageContaining("100 %");
    assertThatThrownBy(() -> Acids.named("nitric-90")).hasMessageContaining("density");
    assertThatThrownBy(() -> Acid.liquid(Acid.Kind.CITRIC, 50, 1.2)).hasMessageContaining("solid");
    assertThatThrownBy(() -> Acid.solid(Acid.Kind.NITRIC)).hasMessageContaining("liquid");
  }

  @Test
  void cautionsFollowTheStrength() {
    assertThat(Acids.named("nitric-60").isOverHousehold()).isTrue();
    assertThat(Acids.named("nitric-38").isOverHousehold()).isFalse();
    assertThat(Acids.named("nitric-38").isRestricted()).isTrue();
    assertThat(Acids.named("sulfuric-14").isRestricted()).isFalse();
    assertThat(Acids.named("phosphoric-85").isRestricted()).isFalse();
    assertThat(Acids.named("citric").isOverHousehold()).isFalse();
  }

  @Test
  void noAcidForWaterThatIsThereAlready() {
    Acid acid = Acids.named("nitric-38");
    for (double to : new double[] {5.8, 6.5}) {
      AcidNeed.Answer a = AcidNeed.of(45, 0.3, 5.8, to, 20, acid);
      assertThat(a.status()).isEqualTo(AcidNeed.Status.NO_ACID_NEEDED);
      assertThat(a.acid()).isEqualTo(new AcidPour.Amount(0.0, 0));
      assertThat(a.open().ml()).isZero();
      assertThat(a.firstPourPh()).isCloseTo(5.8, offset(1e-9));
      assertThat(a.leftMeqL()).isEqualTo(0.3);
    }
    assertThat(AcidNeed.isSour(4)).isFalse();
    assertThat(AcidNeed.isSour(1.6)).as("an EC").isTrue();
    assertThat(AcidNeed.bufferGone(4.5)).isFalse();
    assertThat(AcidNeed.bufferGone(4.4)).isTrue();
    assertThat(AcidNeed.wasCorrected(6.4, 7.5)).isTrue();
    assertThat(AcidNeed.wasCorrected(7.3, 7.5)).as("a meter's error").isFalse();
    assertThat(AcidNeed.wasCorrected(7.7, 8)).as("three tenths, still the meter's").isFalse();
    assertThat(AcidNeed.wasCorrected(7.6, 8)).isTrue();
  }

  @Test
  void doubtsAreMarked() {
    Acid acid = Acids.named("nitric-38");
    assertThat(AcidNeed.of(45, 3.6, 7.6, 4.4, 20, acid).targetOutside()).isTrue();
    assertThat(AcidNeed.of(45, 3.6, 7.6, 5.8, 20, acid).targetOutside()).isFalse();
    assertThat(AcidNeed.of(45, 3.6, 7.6, 5.8, 20, acid).fizzes()).isFalse();
    assertThat(AcidNeed.of(45, 8, 5.5, 5.2, 20, acid).fizzes()).isTrue();
    // all the alkalinity is only hydroxide: a fifth less cannot have that pH
    assertThat(AcidNeed.of(45, 0.02, 9, 6, 20, acid).firstPourPhIfStripHigh()).isNotNull();
    assertThat(AcidNeed.of(45, 0.0075, 9, 6, 20, acid).firstPourPhIfStripHigh()).isNull();
  }

  @Test
  void refusesWhatCannotBe() {
    Acid acid = Acids.named("nitric-38");
    assertThatThrownBy(() -> AcidNeed.of(0, 3.6, 7.6, 5.8, 20, acid))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> AcidNeed.of(45, -1, 7.6, 5.8, 20, acid)).hasMessageContaining("neg");
    assertThatThrownBy(() -> AcidNeed.of(45, 3.6, 15, 5.8, 20, acid)).hasMessageContaining("14");
    assertThatThrownBy(() -> AcidNeed.of(45, 3.6, 7.6, -1, 20, acid)).hasMessageContaining("14");
    assertThatThrownBy(() -> AcidNeed.of(45, 3.6, 7.6, 5.8, 95, acid)).hasMessageContaining("90");
    assertThatThrownBy(() -> AcidNeed.of(45, 0.01, 11, 5.8, 20, acid))
        .hasMessageContaining("measure both");
    assertThatThrownBy(() -> AcidNeed.of(45, 3.6, 3, 2, 20, acid)).hasMessageContaining("soda");
  }

  /** Over 100 meq/L it is a lye: refused wherever an alkalinity is told. */
  @Test
  void aLyeIsNoWater() {
    Acid acid = Acids.named("nitric-38");
    assertThat(AcidNeed.of(45, 100, 8.3, 6, 20, acid).needMeqL()).isPositive();
    assertThatThrownBy(() -> AcidNeed.of(45, 100.1, 8.3, 6, 20, acid)).hasMessageContaining("lye");
    assertThatThrownBy(() -> AcidNeed.leftBehind(101, 8.3, 6, 20)).hasMessageContaining("lye");
    assertThatThrownBy(() -> AcidPour.alkalinityAfterTopups(45, 101, 1, 3))
        .hasMessageContaining("lye");
    assertThatThrownBy(() -> AcidPour.alkalinityAfterTopups(45, 3, 1, 101))
        .hasMessageContaining("lye");
    assertThatThrownBy(() -> MixedWater.of(31, 6, 14, 101, 8.3, 20)).hasMessageContaining("lye");
  }

  /** The buffer of an ordinary target is the sheet's "alkalinity left". */
  @ParameterizedTest
  @MethodSource("rows")
  void theBufferIsWhatIsLeft(Row r) {
    close(r, "alkalinity_left_meq_L", answer(r).bufferMeqL());
  }

  /** Topped up with its own volume of the same water, a tank holds twice the alkalinity. */
  @Test
  void toppingUpBringsAlkalinity() {
    double twice = AcidPour.alkalinityAfterTopups(45, 3, 45, 3);
    assertThat(twice).isCloseTo(6, offset(1e-12));
    assertThat(AcidPour.alkalinityAfterTopups(45, 0.8, 14, 3.6))
        .isCloseTo(0.8 + 3.6 * 14 / 45, offset(1e-12));
    Carbonate water = Carbonate.at(20);
    assertThat(water.openPh(twice, 420)).isGreaterThan(water.openPh(3, 420));
    Acid acid = Acids.named("nitric-38");
    assertThat(water.openPh(3 - 1, 420)).isCloseTo(water.openPh(3, 420, acid, 1), offset(1e-9));
    // all alkalinity gone and 1 mmol/L of strong acid over: pH 3
    assertThat(water.openPh(-1, 420)).isCloseTo(3, offset(0.01));
    assertThatThrownBy(() -> AcidPour.alkalinityAfterTopups(0, 1, 1, 1))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Acid.liquid(Acid.Kind.NITRIC, 1e-300, 1))
        .hasMessageContaining("water, not acid");
  }

  /** Nothing accepted gives NaN or an infinity. */
  @Property
  void alwaysFinite(
      @ForAll @DoubleRange(min = 0, max = 100) double alkalinity,
      @ForAll @DoubleRange(min = 0, max = 14) double ph,
      @ForAll @DoubleRange(min = 0, max = 14) double to,
      @ForAll @DoubleRange(min = 0, max = 90) double celsius) {
    for (String name : new String[] {"nitric-38", "phosphoric-75", "citric"}) {
      AcidNeed.Answer a;
      try {
        a = AcidNeed.of(45, alkalinity, ph, to, celsius, Acids.named(name));
      } catch (Impossible refused) {
        return;
      }
      assertThat(Double.isFinite(a.needMeqL() + a.acid().g() + a.open().g())).isTrue();
      assertThat(Double.isFinite(a.openPh() + a.stuffyPh() + a.firstPourPh())).isTrue();
      assertThat(a.needMeqL()).isNotNegative();
    }
  }

  /** What is left behind is the sheet's own "alkalinity left" of the first correction. */
  @Test
  void whatEarlierAcidLeft() {
    for (leat.Sheet.Row r : leat.Sheet.of("solution-acid.csv").rows()) {
      if (r.num("to_ph") < r.num("ph")) {
        double left = r.num("alkalinity_left_meq_L");
        assertThat(
                AcidNeed.leftBehind(
                    r.num("alkalinity_meq_L"), r.num("ph"), r.num("to_ph"), r.num("temperature_C")))
            .isCloseTo(left, org.assertj.core.api.Assertions.within(1e-4 * left + 1e-9));
      }
    }
  }

  /** At pH 4 strong acid is over: the buffer is 0, never below. */
  @Test
  void noBufferIsNegative() {
    AcidNeed.Answer need = AcidNeed.of(45, 3.6, 7.6, 4, 20, Acids.named("nitric-38"));
    assertThat(need.leftMeqL()).isNegative();
    assertThat(need.bufferMeqL()).isZero();
    assertThat(need.needMeqL()).isGreaterThan(3.6);
  }
}
