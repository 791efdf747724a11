package leat.solution.acid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.Sheet;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class MixedWaterTest {
  @Test
  void theMixByASolverOfItsOwn() {
    for (Sheet.Row r : Sheet.of("solution-acid.csv").having("pK1").rows()) {
      double celsius = r.num("temperature_C");
      double water = r.num("alkalinity_meq_L");
      double waterPh = r.num("ph");
      double tankPh = 6.1;
      MixedWater mix = MixedWater.of(31, tankPh, 14, water, waterPh, celsius);
      // second route: the charge balance written out from the pK of the row, halved
      ChargeBalance balance = new ChargeBalance(r.num("pK1"), r.num("pK2"), r.num("pKw"));
      double gas = Math.pow(10, Carbonate.at(celsius).logKh()) * 420e-6 * 1000;
      double alk = (31 * balance.openMeq(gas, tankPh) + 14 * water) / 45;
      double total =
          (31 * balance.totalHolding(gas, tankPh) + 14 * r.num("total_carbonate_mmol_L")) / 45;
      assertThat(mix.alkalinityMeqL()).as(r.idAndProvenance()).isCloseTo(alk, within(1e-4));
      assertThat(mix.ph())
          .as(r.idAndProvenance())
          .isCloseTo(balance.closedPh(alk, total, ph -> 0), within(0.002));
      assertThat(mix.openPh())
          .as(r.idAndProvenance())
          .isCloseTo(balance.openPh(alk, gas, ph -> 0), within(0.002));
      assertThat(mix.openPh()).isGreaterThan(mix.stuffyPh());
    }
  }

  @Test
  void waterAloneAndTankAloneStayWhatTheyAre() {
    assertThat(MixedWater.of(0, 6, 10, 3.6, 7.6, 20).ph()).isCloseTo(7.6, within(1e-9));
    MixedWater tank = MixedWater.of(10, 5.8, 0, 3.6, 7.6, 20);
    assertThat(tank.ph()).isCloseTo(5.8, within(1e-9));
    assertThat(tank.openPh()).as("a tank in the open is there").isCloseTo(5.8, within(1e-6));
    assertThat(tank.isOver(5.5)).isTrue();
    assertThat(tank.isOver(5.9)).isFalse();
  }

  /**
   * A tenth of a pH is what two readings differ by: only more is clearly over, whether right after
   * stirring or when the carbonic acid has left.
   */
  @Test
  void clearlyOverIsMoreThanATenth() {
    assertThat(new MixedWater(0.5, 6.1, 6.9, 5.9).isOver(6)).isFalse();
    assertThat(new MixedWater(0.5, 5.9, 6.9, 6.1).isOver(6)).isFalse();
    assertThat(new MixedWater(0.5, 6.11, 6.9, 5.9).isOver(6)).isTrue();
    assertThat(new MixedWater(0.5, 5.9, 6.9, 6.11).isOver(6)).isTrue();
  }

  /** Equal parts of one water are that water, and more water never lowers the pH in the open. */
  @Test
  void moreHardWaterClimbsHigher() {
    double before = 0;
    for (double litres = 0; litres <= 40; litres += 5) {
      double open = MixedWater.of(45 - litres, 5.8, litres, 3.6, 7.6, 20).openPh();
      assertThat(open).isGreaterThan(before);
      before = open;
    }
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> MixedWater.of(0, 6, 0, 3, 7.5, 20)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> MixedWater.of(1, 15, 1, 3, 7.5, 20)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> MixedWater.of(1, 6, 1, -3, 7.5, 20)).isInstanceOf(Impossible.class);
  }
}
