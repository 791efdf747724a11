package leat.system;

import java.time.LocalDate;
import leat.plan.Section;
import leat.plan.Taken;
import leat.season.Batches;
import leat.season.Sizes;
import leat.season.Sowing;

/** The sowings of a crop of a plan. */
public final class SowingOf {
  private SowingOf() {}

  /** Share of the seeds that become plants: what comes up, less what is lost after. */
  public static double success(Section crop) {
    Double germination = crop.maybe("germination");
    Double loss = crop.maybe("loss");
    return Sowing.success(germination == null ? 1 : germination, loss == null ? 0 : loss);
  }

  /** When, how far apart, in how many pots; refused with the key that is missing. */
  public static Sowing of(Section crop, Taken taken) {
    int pots = (int) crop.need("pots");
    LocalDate first = (LocalDate) crop.needRaw("sow");
    int nursery = WholeDays.or(crop, "nursery", 0);
    if (!crop.has("nursery")) {
      taken.note("sown into their pots, no nursery");
    }
    int growing = WholeDays.need(crop, "growing");
    int turnaround = WholeDays.get(crop, "turnaround", taken);
    double success = success(crop);
    LocalDate earliest = (LocalDate) crop.raw("earliest_transplant");
    LocalDate latest = (LocalDate) crop.raw("latest_harvest");
    if (!crop.has("every") && !crop.has("until")) {
      return Sowing.once(pots, first, nursery, growing, turnaround, success, earliest, latest);
    }
    return new Sowing(
        pots,
        first,
        (LocalDate) crop.needRaw("until"),
        nursery,
        growing,
        turnaround,
        WholeDays.need(crop, "every"),
        success,
        "equal".equals(crop.word("sizes", taken)) ? Sizes.EQUAL : Sizes.SPREAD,
        earliest,
        latest);
  }

  /** Its batches. */
  public static Batches batches(Section crop, Taken taken) {
    return Batches.of(of(crop, taken));
  }
}
