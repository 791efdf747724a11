package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.solution.Crop;
import leat.solution.Crops;

/** What {@code leat crops} says. */
final class CropsText {
  private static final Column NAMES = Column.plain("crops", "crops");

  private static final Column OUT = Column.plain("leave_out", "leave out");
  private static final Column COUNT = Column.plain("count", "count");
  private static final Column MEMORY = Column.plain("from_memory", "from memory");
  private static final Column PRACTICE = Column.plain("common_practice", "common practice");
  private static final Column WIDENED = Column.number("widened_ph", "widened by", 1);

  /** A second source may be finer than the table. */
  private static final Column FINE_LOW =
      Column.of("other_ec_low_mS_cm", "another source from", Show.MS_CM);

  private static final Column FINE_HIGH = Column.of("other_ec_high_mS_cm", "to", Show.MS_CM);

  private CropsText() {}

  private static Row opinion(Crop other) {
    return Row.aside(
            CropsCommand.CROP,
            FINE_LOW,
            FINE_HIGH,
            CropsCommand.PH_LOW,
            CropsCommand.PH_HIGH,
            CropsCommand.SOURCE)
        .set(CropsCommand.CROP, other.name())
        .set(FINE_LOW, other.ecLowMsCm())
        .set(FINE_HIGH, other.ecHighMsCm())
        .set(CropsCommand.PH_LOW, other.phLow())
        .set(CropsCommand.PH_HIGH, other.phHigh())
        .set(CropsCommand.SOURCE, other.source());
  }

  static void ofList(Answer answer, List<Crop> all) {
    answer.sentence(
        Row.aside(COUNT).set(COUNT, all.size()).with(EcCommand.reference()),
        "{count} crops with their bands of EC at {reference_C} and of pH.");
    howKnown(answer, all);
  }

  private static String names(List<Crop> crops, String last) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < crops.size(); i++) {
      out.append(i == 0 ? "" : i == crops.size() - 1 ? last : ", ").append(crops.get(i).name());
    }
    return out.toString();
  }

  private static Row words(List<Crop> crops, Crops.Shared shared) {
    String all = names(crops, " and ");
    String out = crops.size() == 2 ? "" : names(shared.leaveOut(), " or ");
    return Row.aside(NAMES, OUT)
        .set(NAMES, Character.toUpperCase(all.charAt(0)) + all.substring(1))
        .set(OUT, out.isEmpty() ? null : out);
  }

  static void sentence(Answer answer, Row shares, List<Crop> crops, Crops.Shared shared) {
    Row row = shares.with(words(crops, shared));
    if (shared.canShare()) {
      answer.sentence(row, crops.size() == 1 ? grows(shared) : share(shared));
      return;
    }
    answer.sentence(
        row,
        crops.size() == 2 || shared.leaveOut().isEmpty()
            ? "{crops} cannot share one tank."
            : "{crops} cannot share one tank; without {leave_out} the rest can.");
  }

  private static String grows(Crops.Shared shared) {
    return shared.phOnePoint()
        ? "{crops} grows between {shared_ec_low_mS_cm!} and {shared_ec_high_mS_cm}, at a pH of {shared_ph_low}."
        : "{crops} grows between {shared_ec_low_mS_cm!} and {shared_ec_high_mS_cm}, pH {shared_ph_low} to {shared_ph_high}.";
  }

  private static String share(Crops.Shared shared) {
    if (shared.ecOnePoint()) {
      return shared.phOnePoint()
          ? "{crops} can share one tank only at {shared_ec_low_mS_cm}, pH only at {shared_ph_low}."
          : "{crops} can share one tank only at {shared_ec_low_mS_cm}, pH {shared_ph_low} to {shared_ph_high}.";
    }
    return shared.phOnePoint()
        ? "{crops} can share one tank between {shared_ec_low_mS_cm!} and {shared_ec_high_mS_cm}, pH only at {shared_ph_low}."
        : "{crops} can share one tank between {shared_ec_low_mS_cm!} and {shared_ec_high_mS_cm}, pH {shared_ph_low} to {shared_ph_high}.";
  }

  static void figures(Answer answer, Answer own, Answer clashes) {
    for (int i = 0; i < own.size(); i++) {
      Row row = own.row(i);
      answer.figure(
          (String) row.get(CropsCommand.CROP),
          row,
          "{ec_low_mS_cm..ec_high_mS_cm}",
          row.get(CropsCommand.PH_LOW).equals(row.get(CropsCommand.PH_HIGH))
              ? "pH {ph_low}"
              : "pH {ph_low} to {ph_high}",
          "{source}",
          "({known})");
      if (row.get(CropsCommand.LIGHT_LOW) != null) {
        answer.figure(
            "",
            row,
            "light from {dli_low_mol_m2} mol/m2 per day, good {dli_good_mol_m2}",
            "({dli_known})");
      }
    }
    clashes(answer, clashes);
  }

  private static void clashes(Answer answer, Answer clashes) {
    if (clashes.size() > 0) {
      answer.block();
    }
    for (int i = 0; i < clashes.size(); i++) {
      Row row = clashes.row(i);
      boolean ec = (Double) row.get(CropsCommand.EC_GAP) > 0;
      boolean ph = (Double) row.get(CropsCommand.PH_GAP) > 0;
      answer.figure(
          row.get(CropsCommand.ONE) + " and " + row.get(CropsCommand.OTHER),
          row,
          ec && ph
              ? "{ec_gap_mS_cm} apart, pH {ph_gap} apart"
              : ec ? "{ec_gap_mS_cm} apart" : "pH {ph_gap} apart");
    }
  }

  static void minds(Call call, Answer answer, List<Crop> crops, Crops.Shared shared) {
    boolean points = false;
    for (int i = 0; i < crops.size(); i++) {
      points |= crops.get(i).phIsPoint();
      List<Crop> others = Crops.secondOpinions(crops.get(i).name());
      for (int j = 0; j < others.size(); j++) {
        answer.mind(
            "second-opinion",
            opinion(others.get(j)),
            "{source} says {crop}: {other_ec_low_mS_cm..other_ec_high_mS_cm}, pH {ph_low} to {ph_high}, quoted from memory.");
      }
    }
    howKnown(answer, crops);
    singlePh(call, answer, points && shared.phLow() == null);
  }

  private static void singlePh(Call call, Answer answer, boolean clash) {
    if (clash && !call.has("--widen")) {
      answer.mind(
          "single-ph",
          widened(),
          "a source that gives one pH means about that: --widen takes {widened_ph} either way.");
    }
    if (call.has("--widen")) {
      answer.taken(widened(), "a single pH widened by {widened_ph} either way");
    }
  }

  private static Row widened() {
    return Row.aside(WIDENED).set(WIDENED, Crops.POINT_WIDENING_PH);
  }

  private static String unchecked(Crops.Kinds kinds, int crops) {
    if (kinds.fromMemory() == crops) {
      return "no band here was checked against its printed source: all are quoted from memory.";
    }
    return "of these {count} bands, {from_memory} from memory and {common_practice} from common practice were not checked against a printed source.";
  }

  /** Which bands were checked against a printed source, and which are of common knowledge. */
  private static void howKnown(Answer answer, List<Crop> crops) {
    Crops.Kinds kinds = Crops.kinds(crops);
    Row row =
        Row.aside(COUNT, MEMORY, PRACTICE)
            .set(COUNT, crops.size())
            .set(MEMORY, kinds.fromMemory())
            .set(PRACTICE, kinds.commonPractice());
    if (kinds.fromMemory() + kinds.commonPractice() == 0) {
      return;
    }
    answer.mind("bands-unchecked", row, unchecked(kinds, crops.size()));
    answer.mind(
        "books-differ",
        "the books differ by a third: a start, not a law. In heat stay at the low end.");
  }
}
