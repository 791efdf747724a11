package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.climate.LightNeed;
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
  static final String LIST_MEANING = "lists the whole table that leat knows";

  static final Show EC = Show.MS_CM.digits(2);
  static final Column CROP = Column.plain("crop", "crop");
  static final Column EC_LOW = Column.of("ec_low_mS_cm", "EC from", EC);
  static final Column EC_HIGH = Column.of("ec_high_mS_cm", "to", EC);
  static final Column PH_LOW = Column.number("ph_low", "pH from", 2);
  static final Column PH_HIGH = Column.number("ph_high", "to", 2);
  static final Column SOURCE = Column.plain("source", "source");
  static final Column KNOWN = Column.plain("known", "band is");
  static final Column LIGHT_LOW = Column.number("dli_low_mol_m2", "light from", 3);
  static final Column LIGHT_GOOD = Column.number("dli_good_mol_m2", "good", 3);
  static final Column LIGHT_KNOWN = Column.plain("dli_known", "light is");
  private static final Column[] OF_ONE = {
    CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH, SOURCE, KNOWN, LIGHT_LOW, LIGHT_GOOD, LIGHT_KNOWN
  };
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
      Flag.on("--list", LIST_MEANING),
      Flag.on("--widen", "a pH given as one point counts 0.3 either way"),
    };
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--list")) {
      return list(call);
    }
    List<Crop> crops = crops(call);
    Crops.Shared shared = Crops.share(crops);
    Answer answer = new Answer(COLUMNS);
    Answer own = new Answer(OF_ONE);
    for (int i = 0; i < crops.size(); i++) {
      fill(own.row(), crops.get(i));
      share(fill(answer.row(), crops.get(i)), shared);
    }
    Answer figures = new Answer(CAN_SHARE, S_EC_LOW, S_EC_HIGH, S_PH_LOW, S_PH_HIGH);
    share(figures.row(), shared);
    Answer clashes = clashes(shared);
    answer.jsonObject(figures).array("crops", own).array("clashes", clashes);
    CropsText.sentence(answer, figures.row(0), crops, shared);
    CropsText.figures(answer, own, clashes);
    CropsText.minds(call, answer, crops, shared);
    workings(answer, figures.row(0));
    return next(call.withTaken(answer), call, shared);
  }

  private static Answer next(Answer answer, Call call, Crops.Shared shared) {
    if (shared.canShare()) {
      return call.intoPlan(answer, target(shared));
    }
    answer.next(
        "a second tower with its own tank for the odd one, or another crop: leat crops --list");
    return answer.no();
  }

  private static void workings(Answer answer, Row shared) {
    answer.working(
        shared,
        S_EC_LOW,
        "greatest of the low ends of the crops' bands",
        "",
        "EC at 25 C; the books differ by a third",
        "named beside each crop");
    answer.working(
        shared,
        S_EC_HIGH,
        "least of the high ends of the crops' bands",
        "",
        "EC at 25 C; the books differ by a third",
        "named beside each crop");
  }

  private static final Column[] COLUMNS = {
    CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH,
    SOURCE, CAN_SHARE, S_EC_LOW, S_EC_HIGH, S_PH_LOW,
    S_PH_HIGH, KNOWN, LIGHT_LOW, LIGHT_GOOD, LIGHT_KNOWN,
  };

  static Row fill(Row row, Crop crop) {
    LightNeed light = LightNeed.find(crop.name());
    if (light != null) {
      row.set(LIGHT_LOW, light.lowMolM2())
          .set(LIGHT_GOOD, light.goodMolM2())
          .set(LIGHT_KNOWN, lightKnown(light.known()));
    }
    return row.set(CROP, crop.name())
        .set(EC_LOW, crop.ecLowMsCm())
        .set(EC_HIGH, crop.ecHighMsCm())
        .set(PH_LOW, crop.phLow())
        .set(PH_HIGH, crop.phHigh())
        .set(SOURCE, crop.source())
        .set(KNOWN, known(crop));
  }

  /** V seen in print, M from memory, P common practice; both marks apart where they differ. */
  private static String lightKnown(String known) {
    switch (known) {
      case "V":
        return "seen-in-print";
      case "P":
        return "common-practice";
      case "low V, good M":
        return "low seen-in-print, good from-memory";
      case "low V, good P":
        return "low seen-in-print, good common-practice";
      default:
        return "from-memory";
    }
  }

  private static String known(Crop crop) {
    return crop.isFromMemory()
        ? "from-memory"
        : crop.isCommonPractice() ? "common-practice" : "own";
  }

  private static void share(Row row, Crops.Shared shared) {
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
    List<Crop> crops = call.operands().isEmpty() ? ofPlan(call) : named(call.operands());
    for (int i = 0; i < crops.size() && call.has("--widen"); i++) {
      crops.set(i, Crops.widened(crops.get(i)));
    }
    return crops;
  }

  private static List<Crop> named(List<String> names) {
    List<Crop> crops = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Crop crop = Crops.find(names.get(i));
      if (crop == null) {
        throw new Refused(EcErrors.noCrop(names.get(i), near(names.get(i))));
      }
      if (!crops.contains(crop)) {
        crops.add(crop);
      }
    }
    return crops;
  }

  private List<Crop> ofPlan(Call call) {
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
      throw noBand(unknown.get(0));
    }
    return CropsOf.known(plan);
  }

  private static Refused noBand(Section crop) {
    String name = crop.text("name");
    return new Refused(
        crop.problem(
            "name",
            "no-band",
            EcErrors.noCrop(name, near(name)).message()
                + "; or give it ec_low, ec_high, ph_low and ph_high"));
  }

  /** The middle of the shared band for the plan; ends only where there is room between them. */
  private static String[] target(Crops.Shared shared) {
    List<String> keys = new ArrayList<>();
    ec(keys, "target.ec", shared.ecMiddleMsCm());
    if (!shared.ecOnePoint()) {
      ec(keys, "target.ec_low", shared.ecLowMsCm());
      ec(keys, "target.ec_high", shared.ecHighMsCm());
    }
    ph(keys, "target.ph", shared.phMiddle());
    if (!shared.phOnePoint()) {
      ph(keys, "target.ph_low", shared.phLow());
      ph(keys, "target.ph_high", shared.phHigh());
    }
    return keys.toArray(new String[0]);
  }

  private static void ec(List<String> keys, String path, double msCm) {
    keys.add(path);
    keys.add(NumberText.shortest(msCm) + " mS/cm");
  }

  private static void ph(List<String> keys, String path, double ph) {
    keys.add(path);
    keys.add(NumberText.shortest(ph));
  }

  private static Answer list(Call call) {
    Answer answer = new Answer(OF_ONE).asList();
    List<Crop> all = Crops.all();
    for (int i = 0; i < all.size(); i++) {
      fill(answer.row(), all.get(i));
    }
    CropsText.ofList(answer, all);
    answer.table(CROP, EC_LOW, EC_HIGH, PH_LOW, PH_HIGH, SOURCE, KNOWN, LIGHT_LOW, LIGHT_GOOD);
    return call.withTaken(answer);
  }

  /** The nearest name; where other names of one crop are as near, that of the table. */
  private static String near(String typed) {
    String near = Nearest.of(typed, Crops.names());
    if (near != null) {
      return near;
    }
    List<String> table = new ArrayList<>();
    for (int i = 0; i < Crops.all().size(); i++) {
      table.add(Crops.all().get(i).name());
    }
    return Nearest.of(typed, table);
  }
}
