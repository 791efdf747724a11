package leat.sweep;

import static leat.sweep.Measure.Better.LESS;
import static leat.sweep.Measure.Better.MORE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import leat.answer.Show;
import leat.check.Subject;
import leat.parts.Tower;
import leat.quantity.Units;
import leat.system.PartsOf;

/** What {@code leat parts} answers. */
final class BuildMeasures {
  private static final Show MM = Show.MM.digits(4);
  private static final String PARTS = "parts";

  private BuildMeasures() {}

  static List<Measure> all() {
    return List.of(
        Measure.number("pots", PARTS, "pots", MORE, "pots", s -> s.parts().pots()),
        of("height_mm", "height_mm", LESS, "base to cap", MM, s -> most(s.parts(), Tower::height)),
        of(
            "total_height_mm",
            "total_height_mm",
            LESS,
            "with the stand",
            MM,
            s -> most(s.parts(), Tower::totalHeight)),
        of(
            "top_pot_mm",
            "top_pot_mm",
            LESS,
            "highest pot",
            MM,
            s -> most(s.parts(), t -> Measure.orNaN(t.topPot()))),
        of(
            "pot_spacing_mm",
            "same_column_spacing_mm",
            MORE,
            "pots of one line apart",
            MM,
            s -> -most(s.parts(), t -> -Measure.orNaN(t.sameColumnSpacing()))),
        of(
            "filament_kg",
            "filament_gross_kg",
            LESS,
            "filament with waste",
            Show.KG,
            s -> s.build().gross()),
        of("print_h", "print_h", LESS, "printing", Show.H, s -> s.build().run().machineTime()),
        number("print_days", "print_days", LESS, "days", s -> s.build().run().days()),
        number("spools", "spools", LESS, "spools", s -> s.build().spools()),
        number(
            "cost_filament",
            "cost_filament",
            LESS,
            "filament by spools",
            s -> Measure.orNaN(s.build().filamentCost())),
        number(
            "cost_parts",
            "cost_total",
            LESS,
            "to build in all",
            s -> Measure.orNaN(s.build().total())),
        of("mass_wet_kg", "mass_wet_on_kg", LESS, "running", Show.KG, s -> wet(s.parts())),
        of(
            "deck_kPa",
            "deck_kPa",
            LESS,
            "on the deck",
            Show.of(Units.KPA, Units.PSI, 3),
            s -> Measure.orNaN(s.deck().pressure())));
  }

  private static double wet(PartsOf parts) {
    return parts.runs() ? parts.mass().on() : Double.NaN;
  }

  private static Measure of(
      String name,
      String reads,
      Measure.Better better,
      String label,
      Show show,
      ToDoubleFunction<Subject> value) {
    return Measure.of(name, PARTS, reads, better, label, show, value);
  }

  private static Measure number(
      String name,
      String reads,
      Measure.Better better,
      String label,
      ToDoubleFunction<Subject> value) {
    return Measure.number(name, PARTS, reads, better, label, value);
  }

  /** The most of all towers that tell it; NaN when none does. */
  private static double most(PartsOf parts, ToDoubleFunction<Tower> value) {
    double most = Double.NaN;
    for (int t = 0; t < parts.size(); t++) {
      double own = value.applyAsDouble(parts.tower(t));
      most = Double.isNaN(most) || own > most ? own : most;
    }
    return most;
  }
}
