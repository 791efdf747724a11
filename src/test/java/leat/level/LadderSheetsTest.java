package leat.level;

import static leat.level.SheetTanks.L;
import static leat.level.SheetTanks.MM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of level-sender-steps.csv, level-sender-sequence.csv and level-sender-gap.csv. */
class LadderSheetsTest {
  static Row senderRow(String id) {
    return Sheet.of("level-senders.csv").where(r -> r.id().equals(id)).atLeast(1).findFirst().get();
  }

  static Tank tank(String senderId) {
    return SheetTanks.byId(senderRow(senderId).text("tank_id"));
  }

  /** A ladder of level-senders.csv with the reeds of level-sender-steps.csv. */
  static Ladder ladder(String id) {
    Row s = senderRow(id);
    List<Row> reeds = Sheet.of("level-sender-steps.csv").where(r -> r.id().equals(id)).rows();
    assertThat(reeds).hasSize((int) s.num("reeds"));
    assertThat(s.text("topology")).isEqualTo("tap2");
    return new Ladder(
        reeds.stream().mapToDouble(r -> r.num("reed_level_mm") * MM).toArray(),
        reeds.stream().mapToDouble(r -> r.num("resistor_towards_return_ohm")).toArray(),
        s.text("return_at").equals("bottom") ? Ladder.ReturnAt.BOTTOM : Ladder.ReturnAt.TOP,
        s.num("pull_in_half_width_mm") * MM,
        s.num("drop_out_half_width_mm") * MM,
        s.num("bottom_stop_level_mm") * MM,
        s.num("top_stop_level_mm") * MM);
  }

  static Limits limits(String id, double lead) {
    Row s = senderRow(id);
    return new Limits(
        s.num("reading_tolerance_ohm"),
        s.num("resistor_tolerance_pct") / 100,
        lead,
        s.num("open_above_ohm"),
        s.num("short_below_ohm"));
  }

  static Stream<Row> steps() {
    return Sheet.of("level-sender-steps.csv").atLeast(76);
  }

  @ParameterizedTest
  @MethodSource("steps")
  void bands(Row r) {
    Staircase s = Staircase.byLadder(tank(r.id()), ladder(r.id()));
    int i = (int) r.num("reed");
    String why = r.idAndProvenance();
    assertThat(s.ohm(i)).as(why).isCloseTo(r.num("ohm_reed_alone"), within(0.001));
    level(why, s.levelLow(i, Motion.RISING), r.num("rising_low_mm"));
    level(why, s.levelHigh(i, Motion.RISING), r.num("rising_high_mm"));
    level(why, s.levelLow(i, Motion.FALLING), r.num("falling_low_mm"));
    level(why, s.levelHigh(i, Motion.FALLING), r.num("falling_high_mm"));
    level(why, s.levelLow(i, Motion.UNKNOWN), r.num("band_low_mm"));
    level(why, s.levelHigh(i, Motion.UNKNOWN), r.num("band_high_mm"));
    assertThat(s.volumeLow(i, Motion.UNKNOWN) / L)
        .as(why)
        .isCloseTo(r.num("band_low_L"), within(1e-5));
    assertThat(s.volumeHigh(i, Motion.UNKNOWN) / L)
        .as(why)
        .isCloseTo(r.num("band_high_L"), within(1e-5));
    assertThat(limits(r.id(), 0).halfWindow(s.ohm(i)))
        .as(why)
        .isCloseTo(r.num("match_half_width_ohm"), within(1e-9));
  }

  private static void level(String why, double level, double mm) {
    assertThat(level / MM).as(why).isCloseTo(mm, within(0.001));
  }

  static Stream<Row> sequences() {
    return Sheet.of("level-sender-sequence.csv").atLeast(138);
  }

  @ParameterizedTest
  @MethodSource("sequences")
  void sequence(Row r) {
    read(r, ladder(r.id()));
  }

  static Stream<Row> gaps() {
    return Sheet.of("level-sender-gap.csv").atLeast(55);
  }

  @ParameterizedTest
  @MethodSource("gaps")
  void gap(Row r) {
    double[] resistors = r.list("resistor_towards_return_ohm_list", ";");
    Ladder ladder =
        new Ladder(
            Ladder.evenReeds(
                (int) r.num("reeds"), r.num("first_reed_level_mm") * MM, r.num("pitch_mm") * MM),
            resistors,
            r.text("return_at").equals("bottom") ? Ladder.ReturnAt.BOTTOM : Ladder.ReturnAt.TOP,
            r.num("pull_in_half_width_mm") * MM,
            r.num("drop_out_half_width_mm") * MM,
            r.num("bottom_stop_level_mm") * MM,
            r.num("top_stop_level_mm") * MM);
    read(r, ladder);
  }

  /** Where the sheet's float reads a reed, that reed's band reaches over it. */
  private static void read(Row r, Ladder ladder) {
    if (r.text("ohm").equals("Infinity")) {
      return;
    }
    int reed = 0;
    while (Math.abs(ladder.node(reed) - r.num("ohm")) > r.num("tol_ohm")) {
      reed++;
    }
    Motion motion = r.text("motion").equals("rising") ? Motion.RISING : Motion.FALLING;
    double rim = Math.max(r.num("level_from_mm"), r.num("level_to_mm")) * MM + 1;
    double low = ladder.levelLow(reed, motion) / MM - 0.001;
    double high = ladder.levelHigh(reed, motion, rim) / MM + 0.001;
    assertThat(r.num("level_from_mm")).as(r.idAndProvenance()).isBetween(low, high);
    assertThat(r.num("level_to_mm")).as(r.idAndProvenance()).isBetween(low, high);
  }
}
