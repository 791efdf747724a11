package leat.sweep;

import static leat.sweep.Measure.Better.LESS;
import static leat.sweep.Measure.Better.MORE;

import java.util.List;
import leat.answer.Show;
import leat.check.Subject;
import leat.level.Motion;
import leat.level.Staircase;

/** What {@code leat tank} and {@code leat level} answer. */
final class TankMeasures {
  private static final Show MM = Show.MM.digits(4);
  private static final String TABLE = "level table";
  private static final String RISING = "level table --motion rising";

  private TankMeasures() {}

  static List<Measure> all() {
    return List.of(
        Measure.of(
            "usable_L",
            "tank --level FULL",
            "above_low_L",
            MORE,
            "from low to full",
            Show.L,
            s -> at(s, "full") - at(s, "low")),
        Measure.of(
            "full_L", "tank --level FULL", "volume_L", MORE, "full", Show.L, s -> at(s, "full")),
        Measure.of(
            "capacity_L",
            "tank --every 10mm",
            "volume_L",
            MORE,
            "to the rim",
            Show.L,
            s -> s.tank().capacity()),
        Measure.of(
            "tank_height_mm",
            "tank --every 10mm",
            "level_mm",
            LESS,
            "tank's height",
            MM,
            s -> s.tank().height()),
        Measure.of(
            "litres_per_step",
            TABLE,
            "volume_high_L",
            LESS,
            "widest step",
            Show.L,
            s -> s.sender().staircase().widestMiddleBand()),
        Measure.of(
            "blind_bottom_L",
            TABLE,
            "volume_high_L",
            LESS,
            "unseen at the bottom",
            Show.L,
            s -> s.sender().staircase().volumeHigh(0, Motion.UNKNOWN)),
        Measure.of(
            "top_step_L",
            RISING,
            "volume_low_L",
            MORE,
            "top step begins at",
            Show.L,
            TankMeasures::topBegins),
        Measure.of(
            "blind_top_L",
            RISING,
            "volume_low_L",
            LESS,
            "unseen under full",
            Show.L,
            s -> Math.max(0, s.sender().fullVolume() - topBegins(s))),
        Measure.number(
            "sender_steps",
            TABLE,
            "status",
            MORE,
            "steps of the sender",
            s -> s.sender().staircase().size()));
  }

  private static double at(Subject subject, String mark) {
    return subject.tank().volume(subject.section("tank").need(mark));
  }

  private static double topBegins(Subject subject) {
    Staircase stairs = subject.sender().staircase();
    return stairs.volumeLow(stairs.size() - 1, Motion.RISING);
  }
}
