package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.tank.Dose;
import leat.solution.tank.DoseRounding;
import leat.solution.tank.Thinning;
import leat.system.TankOf;

/** {@code leat dose}: feed for a volume, by EC or by the label. */
public final class DoseCommand extends Command {
  static final Column CONCENTRATE = Column.of("concentrate_mL", "feed in all", Show.ML);
  static final Column PART = Column.of("part_mL", "of each bottle", Show.ML);
  static final Column FINAL_VOLUME = Column.of("final_volume_L", "then in all", Show.L.digits(4));
  static final Column FINAL_EC = Column.of("final_ec_mS_cm", "EC then", Show.MS_CM);
  static final Column STATUS = Column.plain("status", "status");
  static final Column PER_LITRE = Column.of("dose_mL_L", "feed", Show.ML_L.digits(2));
  static final Column SHARE = Column.of("label_pct", "of the label", Show.PERCENT);
  static final Column FULL_LABEL =
      Column.of("full_label_ec_mS_cm", "the whole label rate", Show.MS_CM);
  static final Column FIRST = Column.of("first_pour_mL", "pour first", Show.ML);
  static final Column VOLUME = Column.of("volume_L", "water there", Show.L);
  static final Column FROM = Column.of("from_ec_mS_cm", "its EC", Show.MS_CM);
  static final Column TARGET = Column.of("target_ec_mS_cm", "wanted", Show.MS_CM);
  static final Column LABEL_RATE = Column.of("label_rate_mL_L", "label rate", Show.ML_L.digits(2));
  static final Column WATER_EC = Column.of("water_ec_mS_cm", "the water's EC", Show.MS_CM);
  static final Column THIN = Column.of("thin_water_L", "water to thin it", Show.L);
  static final Column THIN_VOLUME = Column.of("thin_volume_L", "thinned to", Show.L);
  static final Column SWAP = Column.of("swap_L", "or swap", Show.L);
  static final Column POURED = Column.of("rounded_mL", "by the cup, all", Show.ML);
  static final Column POURED_PART = Column.of("rounded_part_mL", "by the cup, each", Show.ML);
  static final Column POURED_EC = Column.of("rounded_ec_mS_cm", "by the cup", Show.MS_CM);

  private static final Column[] ALWAYS = {
    CONCENTRATE,
    PART,
    FINAL_VOLUME,
    FINAL_EC,
    STATUS,
    PER_LITRE,
    SHARE,
    FULL_LABEL,
    FIRST,
    VOLUME,
    FROM,
    TARGET,
    LABEL_RATE
  };
  private static final Column[] THINNED = {WATER_EC, THIN, THIN_VOLUME, SWAP};
  private static final Column[] ROUNDED = {POURED, POURED_PART, POURED_EC};
  private static final Column[] NONE = {};

  @Override
  public String name() {
    return "dose";
  }

  @Override
  public Flag[] flags() {
    return DoseFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    refuseSalts(call);
    LabelRate feed = LabelRate.of(call, call.has("--each"));
    EcTyped typed = new EcTyped(call);
    double volume = volume(call, call.plan());
    Double wanted = call.has("--label") ? null : (Double) typed.target("--to");
    double from = from(call, call.plan(), typed, wanted);
    Dose.Answer dose = dose(call, feed, Litres.of(volume), from, wanted);
    DoseRounding rounded = rounded(call, dose, feed, Litres.of(volume), from);
    Answer answer = new Answer(columns(dose, rounded, feed));
    Row row = row(answer, dose, rounded, feed);
    row.set(VOLUME, volume).set(FROM, from).set(TARGET, wanted);
    Thinning thin = null;
    if (dose.status() == Dose.Status.ALREADY_STRONGER) {
      double ec = waterEc(call, call.plan(), typed, wanted);
      thin = Thinning.of(Litres.of(volume), from, wanted, ec);
      thinned(row.set(WATER_EC, ec), thin);
    }
    return told(call, typed, new DoseText(call, answer, row, dose, rounded, feed), thin);
  }

  /** Refuses a plan whose feed is weighed, and tells the way to that. */
  private void refuseSalts(Call call) {
    if (!call.has("--rate") && TopupAsked.isWeighed(call.plan())) {
      throw new Refused(MixErrors.doseIsWeighed(this, call.again("topup")));
    }
    LabelRate.refuseSalts(call);
  }

  private static Answer told(Call call, EcTyped typed, DoseText text, Thinning thin) {
    if (text.reached()) {
      text.sentenceAndFigures();
    } else {
      text.refusal(thin);
    }
    typed.taken(text.answer(), "--from");
    call.withTaken(text.answer());
    typed.minds(text.answer());
    return text.reached() ? text.mindsAndNext() : text.answer().no();
  }

  static double volume(Call call, Plan plan) {
    Double volume = call.above0("--volume");
    if (volume != null) {
      return volume;
    }
    Section tank = plan.section("tank");
    if (!call.hasPlan() || !TankOf.isKnown(tank)) {
      throw call.needs("--volume");
    }
    call.taken().note("the tank at its full mark");
    return TankOf.of(tank, call.taken()).volume(tank.need("full"));
  }

  private static double from(Call call, Plan plan, EcTyped typed, Double wanted) {
    Double from = typed.reading("--from");
    if (from == null) {
      Section water = plan.section("water");
      if (!water.has("ec")) {
        throw call.needs("--from");
      }
      call.taken().note("fresh water at the plan's water.ec");
      return water.need("ec");
    }
    return wanted == null ? from : typed.believed("--from", from, wanted);
  }

  private static double waterEc(Call call, Plan plan, EcTyped typed, double wanted) {
    Section water = plan.section("water");
    if (water.has("ec") || call.has("--water-ec")) {
      return typed.water("--water-ec", wanted);
    }
    call.taken().note("rain or filtered water without salt");
    return 0;
  }

  private Dose.Answer dose(Call call, LabelRate feed, double litres, double from, Double wanted) {
    Double share = call.from0("--label");
    if (share == null) {
      return Dose.byEc(litres, from, wanted, feed.parts);
    }
    if (call.has("--to")) {
      throw new Refused(CommandErrors.notBoth(this, "--to", "--label"));
    }
    return Dose.byLabel(litres, from, share, feed.parts);
  }

  private static DoseRounding rounded(
      Call call, Dose.Answer dose, LabelRate feed, double litres, double from) {
    Double step = call.above0("--step");
    return step == null || !dose.reached()
        ? null
        : DoseRounding.of(dose, litres, from, feed.parts, Units.ML.fromBase(step));
  }

  private static Column[] columns(Dose.Answer dose, DoseRounding rounded, LabelRate feed) {
    Column[] more =
        rounded != null ? ROUNDED : dose.status() == Dose.Status.ALREADY_STRONGER ? THINNED : NONE;
    Column[] bottles = feed.columns();
    Column[] columns =
        java.util.Arrays.copyOf(ALWAYS, ALWAYS.length + more.length + bottles.length);
    System.arraycopy(more, 0, columns, ALWAYS.length, more.length);
    System.arraycopy(bottles, 0, columns, ALWAYS.length + more.length, bottles.length);
    return columns;
  }

  private static Row row(Answer answer, Dose.Answer dose, DoseRounding rounded, LabelRate feed) {
    Row row =
        answer
            .row()
            .set(CONCENTRATE, Litres.baseOfMl(dose.concentrateMl()))
            .set(FINAL_VOLUME, Litres.base(dose.finalVolumeL()))
            .set(FINAL_EC, dose.finalEcMsCm())
            .set(STATUS, dose.status().word)
            .set(PER_LITRE, dose.mlPerLitreOfWater())
            .set(SHARE, dose.labelShare())
            .set(FULL_LABEL, dose.fullLabelEcMsCm())
            .set(FIRST, Litres.baseOfMl(dose.firstPourMl()))
            .set(LABEL_RATE, dose.totalRateMlPerL());
    if (dose.reached()) {
      feed.fill(row, PART, answer.columns(), dose.partMl());
    }
    rounded(row, rounded, feed);
    return row;
  }

  private static void rounded(Row row, DoseRounding rounded, LabelRate feed) {
    if (rounded != null) {
      row.set(POURED, Litres.baseOfMl(rounded.concentrateMl()))
          .set(POURED_PART, feed.alike() ? Litres.baseOfMl(rounded.partMl()[0]) : null)
          .set(POURED_EC, rounded.finalEcMsCm());
    }
  }

  private static void thinned(Row row, Thinning thin) {
    if (thin != null) {
      row.set(THIN, Litres.base(thin.waterL()))
          .set(THIN_VOLUME, Litres.base(thin.finalVolumeL()))
          .set(SWAP, Litres.base(thin.swapL()));
    }
  }
}
