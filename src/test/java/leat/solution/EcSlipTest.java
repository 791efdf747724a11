package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;

import leat.Sheet;
import org.junit.jupiter.api.Test;

class EcSlipTest {
  @Test
  void theHighestCropIsTheSheets() {
    double highest = 0;
    for (Sheet.Row row : Sheet.of("solution-crops.csv").rows()) {
      highest = Math.max(highest, row.num("ec_high_mS_cm"));
    }
    assertThat(EcSlip.highestOfAnyCrop()).isEqualTo(highest);
  }

  /** No band of the sheet is asked back by its own target, and ten times each is. */
  @Test
  void everyBandOfTheSheetIsTakenAndItsSlipIsNot() {
    for (Sheet.Row row : Sheet.of("solution-crops.csv").rows()) {
      double low = row.num("ec_low_mS_cm");
      double high = row.num("ec_high_mS_cm");
      double most = EcSlip.mostAimedAt(EcSlip.highestOfAnyCrop());
      assertThat(high).isLessThanOrEqualTo(most);
      assertThat(10 * high).as("a slipped point").isGreaterThan(EcSlip.mostRead(high));
      assertThat(2 * high).as("after a hot week").isLessThan(EcSlip.mostRead(high));
      assertThat(EcSlip.meant(10 * low))
          .isEqualTo(low, org.assertj.core.api.Assertions.within(1e-12));
    }
  }
}
