package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Nearest;
import leat.quantity.NumberText;
import leat.solution.Crop;
import leat.solution.Crops;
import leat.system.CropsOf;

/** {@code leat crops}: bands of EC and pH, and which crops can share one tank. */
public final class CropsCommand extends Command {
  static final Show EC = Show.MS_CM.digits(2);
  static final Column CROP = Column.plain("crop", "crop");
  static final Column EC_LOW = Column.of("ec_low_mS_cm", "EC from", EC);
  static final Column EC_HIGH = Column.of("ec_high_mS_cm", "to", EC);
  static final Column PH_LOW = Column.number("ph_low", "pH from", 2);
  static final Column PH_HIGH = Column.number("ph_high", "to", 2);
  static final Column SOURCE = Column.plain("source", "source");
  static final Column CAN_SHARE = Column.plain("can_share", "can share");
  static final Column S_EC_LOW = Column.of("shared_ec_low_mS_cm", "shared EC from", EC);
  static final Column S_EC_HIGH = Column.of("shared_ec_high_mS_cm", "to", EC);
  static final Column S_PH_LOW = Column.number("shared_ph_low", "shared pH from", 2);
  static final Column S_PH_HIGH = Column.number("shared_ph_high", "to", 2);
  static final Column ONE = Column.plain("crop", "crop");
  static final Column OTHER = Column.plain("with", "with");
  static final Column EC_GAP = Column.of("ec_gap_mS_cm", "EC apart by", EC);
  static final Column PH_GAP = Column.number("ph_gap", "pH apart by", 2);

  @Override
  public String name() {
    return "crops";
  }

  @Override
  public String operands() {
    return "[CROP...]";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.on("--list", "lists every crop of the table"),
      Flag.on("--widen", "a pH given as one point counts 0.3 either way"),
    };
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--list")) {
      return list();
    }
    List<Crop> crops = crops(call);
    Crops.Shared shared = Crops.share(crops);
    Answer answer =
        new Answer(
            CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH, SOURCE, CAN_SHARE, S_EC_LOW, S_EC_HIGH,
            S_PH_LOW, S_PH_HIGH);
    Answer own = new Answer(CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH, SOURCE);
    for (int i = 0; i < crops.size(); i++) {
      fill(own.row(), crops.get(i));
      share(fill(answer.row(), crops.get(i)), shared);
    }
    Answer figures = new Answer(CAN_SHARE, S_EC_LOW, S_EC_HIGH, S_PH_LOW, S_PH_HIGH);
    share(figures.row(), shared);
    Answer clashes = clashes(shared);
    answer.jsonObject(figures).array("crops", own).array("clashes", clashes);
    sentence(answer, crops, shared);
    text(answer, crops, shared);
    minds(call, answer, crops, shared);
    call.withTaken(answer);
    if (shared.canShare()) {
      answer.next("paste into the plan, or move it a little:\n  " + target(shared));
      return answer;
    }
    answer.next(
        "a second tower with its own tub for the odd one, or another crop: leat crops --list");
    return answer.no();
  }

  private static leat.answer.Row fill(leat.answer.Row row, Crop crop) {
    return row.set(CROP, crop.name())
        .set(EC_LOW, crop.ecLowMsCm())
        .set(EC_HIGH, crop.ecHighMsCm())
        .set(PH_LOW, crop.phLow())
        .set(PH_HIGH, crop.phHigh())
        .set(SOURCE, crop.source());
  }

  private static void share(leat.answer.Row row, Crops.Shared shared) {
    row.set(CAN_SHARE, shared.canShare())
        .set(S_EC_LOW, shared.ecLowMsCm())
        .set(S_EC_HIGH, shared.ecHighMsCm())
        .set(S_PH_LOW, shared.phLow())
        .set(S_PH_HIGH, shared.phHigh());
  }

  private static Answer clashes(Crops.Shared shared) {
    Answer clashes = new Answer(ONE, OTHER, EC_GAP, PH_GAP);
    for (int i = 0; i < shared.clashes().size(); i++) {
      Crops.Clash clash = shared.clashes().get(i);
      clashes
          .row()
          .set(ONE, clash.one().name())
          .set(OTHER, clash.other().name())
          .set(EC_GAP, clash.ecGapMsCm())
          .set(PH_GAP, clash.phGap());
    }
    return clashes;
  }

  private List<Crop> crops(Call call) {
    List<Crop> crops = new ArrayList<>();
    List<String> names = call.operands();
    for (int i = 0; i < names.size(); i++) {
      Crop crop = Crops.find(names.get(i));
      if (crop == null) {
        throw new Refused(EcErrors.noCrop(names.get(i), Nearest.of(names.get(i), Crops.names())));
      }
      if (!crops.contains(crop)) {
        crops.add(crop);
      }
    }
    if (names.isEmpty()) {
      Plan plan = call.plan();
      if (plan.root().sections("crops").isEmpty()) {
        throw call.hasPlan()
            ? plan.root().missing("crops")
            : new Refused(
                CommandErrors.neededOneOf(
                    this, "a crop is needed, such as lettuce; --list shows them all"));
      }
      List<Section> unknown = CropsOf.unknown(plan);
      if (!unknown.isEmpty()) {
        String name = unknown.get(0).text("name");
        throw new Refused(
            unknown
                .get(0)
                .problem(
                    "name",
                    "no-band",
                    EcErrors.noCrop(name, Nearest.of(name, Crops.names())).message()
                        + "; or give it ec_low, ec_high, ph_low and ph_high"));
      }
      crops = CropsOf.known(plan);
    }
    for (int i = 0; i < crops.size() && call.has("--widen"); i++) {
      crops.set(i, Crops.widened(crops.get(i)));
    }
    return crops;
  }

  private static String names(List<Crop> crops) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < crops.size(); i++) {
      out.append(i == 0 ? "" : i == crops.size() - 1 ? " and " : ", ").append(crops.get(i).name());
    }
    out.setCharAt(0, Character.toUpperCase(out.charAt(0)));
    return out.toString();
  }

  private static Phrase ecBand(double low, double high) {
    return low == high
        ? Phrase.of("only at ").add(low, EC)
        : Phrase.of("between ").addBare(low, EC).add(" and ").add(high, EC);
  }

  private static Phrase phBand(double low, double high) {
    return low == high
        ? Phrase.of("pH only at ").number(low, 2)
        : Phrase.of("pH ").number(low, 2).add(" to ").number(high, 2);
  }

  private static void sentence(Answer answer, List<Crop> crops, Crops.Shared shared) {
    Phrase words = Phrase.of(names(crops));
    if (shared.canShare()) {
      words.add(crops.size() == 1 ? " grows " : " can share a tub ");
      words.add(ecBand(shared.ecLowMsCm(), shared.ecHighMsCm()));
      words.add(", ").add(phBand(shared.phLow(), shared.phHigh())).add(".");
      answer.sentence(words);
      return;
    }
    words.add(" cannot share one tub");
    List<Crop> out = crops.size() == 2 ? List.of() : shared.leaveOut();
    for (int i = 0; i < out.size(); i++) {
      words.add(i == 0 ? "; without " : " or ").add(out.get(i).name());
    }
    words.add(out.isEmpty() ? "." : " the rest can.");
    answer.sentence(words);
  }

  private static void text(Answer answer, List<Crop> crops, Crops.Shared shared) {
    for (int i = 0; i < crops.size(); i++) {
      Crop crop = crops.get(i);
      answer.figure(
          crop.name(),
          Phrase.of().addBare(crop.ecLowMsCm(), EC).add(" to ").add(crop.ecHighMsCm(), EC),
          phOf(crop),
          Phrase.of(crop.source()));
    }
    List<Crops.Clash> clashes = shared.clashes();
    if (!clashes.isEmpty()) {
      answer.block();
    }
    for (int i = 0; i < clashes.size(); i++) {
      Crops.Clash clash = clashes.get(i);
      Phrase apart = Phrase.of();
      if (clash.ecGapMsCm() > 0) {
        apart.add(clash.ecGapMsCm(), EC).add(" apart");
      }
      if (clash.phGap() > 0) {
        apart.add(clash.ecGapMsCm() > 0 ? ", " : "").add("pH ").number(clash.phGap(), 2);
        apart.add(" apart");
      }
      answer.figure(clash.one().name() + " and " + clash.other().name(), apart);
    }
  }

  private static Phrase phOf(Crop crop) {
    Phrase words = Phrase.of("pH ").number(crop.phLow(), 2);
    return crop.phIsPoint() ? words : words.add(" to ").number(crop.phHigh(), 2);
  }

  private static void minds(Call call, Answer answer, List<Crop> crops, Crops.Shared shared) {
    boolean points = false;
    boolean memory = false;
    for (int i = 0; i < crops.size(); i++) {
      points |= crops.get(i).phIsPoint();
      memory |= crops.get(i).isUnverified();
      List<Crop> others = Crops.secondOpinions(crops.get(i).name());
      for (int j = 0; j < others.size(); j++) {
        Crop other = others.get(j);
        answer.mind(
            "second-opinion",
            Phrase.of(other.source() + " says ")
                .add(other.name() + ": ")
                .addBare(other.ecLowMsCm(), Show.MS_CM)
                .add(" to ")
                .add(other.ecHighMsCm(), Show.MS_CM)
                .add(", ")
                .add(phOf(other))
                .add("."));
      }
    }
    if (memory) {
      answer.mind(
          "books-differ",
          "the books differ by a third, and these bands are quoted from memory: a start, not a law. In heat stay at the low end.");
    }
    if (points && shared.phLow() == null && !call.has("--widen")) {
      answer.mind(
          "single-ph",
          "a source that gives one pH means about that: --widen takes 0.3 either way.");
    }
    if (call.has("--widen")) {
      answer.taken(Phrase.of("a single pH widened by 0.3 either way"));
    }
  }

  /** The middle of the shared band for the plan; ends only where there is room between them. */
  private static String target(Crops.Shared shared) {
    StringBuilder out = new StringBuilder("target: {ec: ");
    out.append(NumberText.shortest(shared.ecMiddleMsCm())).append(" mS/cm");
    if (!shared.ecOnePoint()) {
      out.append(", ec_low: ").append(NumberText.shortest(shared.ecLowMsCm())).append(" mS/cm");
      out.append(", ec_high: ").append(NumberText.shortest(shared.ecHighMsCm())).append(" mS/cm");
    }
    out.append(", ph: ").append(NumberText.shortest(shared.phMiddle()));
    if (!shared.phOnePoint()) {
      out.append(", ph_low: ").append(NumberText.shortest(shared.phLow()));
      out.append(", ph_high: ").append(NumberText.shortest(shared.phHigh()));
    }
    return out.append('}').toString();
  }

  private static Answer list() {
    Answer answer = new Answer(CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH, SOURCE).asList();
    List<Crop> all = Crops.all();
    for (int i = 0; i < all.size(); i++) {
      fill(answer.row(), all.get(i));
    }
    answer.sentence(Phrase.of().count(all.size()).add(" crops with their bands at 25 C."));
    answer.table(CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH, SOURCE);
    return answer.mind(
        "books-differ",
        "the books differ by a third, and these bands are quoted from memory: a start, not a law.");
  }
}
