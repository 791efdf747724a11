package leat.solution.acid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.Sheet;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class MixedWaterTest {
  // second route: charge balance written out from the pK of the sheet's rows at 20 C, bisected
  private static double bisected(double alk, double total, double pk1, double pk2, double pkw) {
    double low = 0;
    double high = 14;
    for (int i = 0; i < 200; i++) {
      double ph = (low + high) / 2;
      double h = Math.pow(10, -ph);
      double ratio1 = Math.pow(10, ph - pk1);
      double ratio2 = ratio1 * Math.pow(10, ph - pk2);
      double charge = total * (ratio1 + 2 * ratio2) / (1 + ratio1 + ratio2);
      double meq = charge + 1000 * (Math.pow(10, -pkw) / h - h);
      if (meq < alk) {
        low = ph;
      } else {
        high = ph;
      }
    }
    return low;
  }

  @Test
  void theMixByASolverOfItsOwn() {
    for (Sheet.Row r : Sheet.of("solution-acid.csv").having("pK1").rows()) {
      double celsius = r.num("temperature_C");
      double water = r.num("alkalinity_meq_L");
      double waterPh = r.num("ph");
      double tankPh = 6.1;
      MixedWater mix = MixedWater.of(31, tankPh, 14, water, waterPh, celsius);
      double h = Math.pow(10, -tankPh);
      double gas = Math.pow(10, Carbonate.at(celsius).logKh()) * 420e-6 * 1000;
      double first = Math.pow(10, tankPh - r.num("pK1"));
      double second = first * Math.pow(10, tankPh - r.num("pK2"));
      double tankTotal = gas * (1 + first + second);
      double tank = gas * (first + 2 * second) + 1000 * (Math.pow(10, -r.num("pKw")) / h - h);
      double alk = (31 * tank + 14 * water) / 45;
      double total = (31 * tankTotal + 14 * r.num("total_carbonate_mmol_L")) / 45;
      assertThat(mix.alkalinityMeqL()).as(r.idAndProvenance()).isCloseTo(alk, within(1e-4));
      assertThat(mix.ph())
          .as(r.idAndProvenance())
          .isCloseTo(bisected(alk, total, r.num("pK1"), r.num("pK2"), r.num("pKw")), within(0.002));
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
