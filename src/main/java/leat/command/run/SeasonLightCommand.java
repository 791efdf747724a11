package leat.command.run;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.climate.Cover;
import leat.climate.DailyLight;
import leat.climate.Lamp;
import leat.climate.LampDay;
import leat.climate.LightNeed;
import leat.climate.MonthLight;
import leat.climate.Site;
import leat.climate.WindowSill;
import leat.plan.Refused;
import leat.quantity.Size;
import leat.quantity.Units;
import leat.system.LightOf;
import leat.system.SeasonOf;
import leat.system.SiteOf;
import leat.weather.LightMonths;
import leat.weather.WeatherFile;

/** {@code leat season light}: the day's light by month against what the crops need. */
public final class SeasonLightCommand extends Command {

  static final Column MONTH = Column.plain("month", "month");
  static final Column RA = Column.number("ra_MJ_m2", "above the air MJ/m2", 3);
  static final Column DAYLIGHT = Column.of("daylight_h", "daylight", Show.H);
  static final Column RS = Column.number("rs_MJ_m2", "on the ground MJ/m2", 3);
  static final Column CLEAR = Column.number("dli_clear_mol_m2", "clear sky mol/m2", 2);
  static final Column OPEN = Column.number("dli_open_mol_m2", "in the open mol/m2", 2);
  static final Column DLI = Column.number("dli_mol_m2", "at the plants mol/m2", 2);
  static final Column SKY = Column.of("sky_share_pct", "share of the sky", Show.PERCENT);
  static final Column CROP = Column.plain("crop", "crop");
  static final Column LOW = Column.number("low_mol_m2", "low mol/m2", 2);
  static final Column GOOD = Column.number("good_mol_m2", "good mol/m2", 2);
  static final Column ENOUGH = Column.plain("enough", "enough");
  static final Column MISSING = Column.number("missing_mol_m2", "missing mol/m2", 2);
  static final Column STATUS = Column.plain("lamp", "lamp");
  static final Column HOURS = Column.of("lamp_h", "lamp burns", Show.H);
  static final Column KWH = Column.of("lamp_day_kWh", "lamp, a day", Show.KWH);
  static final Column WATTS = Column.of("lamp_needed_W", "lamp that would do", Show.W);
  static final Column PPFD = Column.number("ppfd_umol_m2_s", "by the meter umol/m2 s", 1);
  static final Column LAMP_PPFD = Column.number("lamp_ppfd_umol_m2_s", "lamp umol/m2 s", 1);
  static final Column WITH = Column.number("dli_with_lamp_mol_m2", "with the lamp mol/m2", 2);

  @Override
  public String name() {
    return "season light";
  }

  @Override
  public Flag[] flags() {
    return LightFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    refuseBoth(call);
    TypedLight typed = TypedLight.of(this, call);
    List<LightNeed> needs = CropLight.needs(call);
    Answer answer =
        new Answer(
            MONTH, RA, DAYLIGHT, RS, CLEAR, OPEN, DLI, SKY, CROP, LOW, GOOD, ENOUGH, MISSING,
            STATUS, HOURS, KWH, WATTS, WITH, PPFD, LAMP_PPFD);
    if (typed != null) {
      typed(call, answer, typed, needs);
    } else {
      for (MonthLight month : months(call, SiteOf.of(call.plan(), false, true, call.taken()))) {
        row(call, answer, month, needs);
      }
    }
    LightText.write(answer);
    return call.withTaken(answer);
  }

  private void refuseBoth(Call call) {
    if (call.has("--cover") && call.has("--transmission")) {
      throw new Refused(CommandErrors.notBoth(this, "--cover", "--transmission"));
    }
    if (call.has("--lamp-efficacy") && call.has("--lamp-lumens")) {
      throw new Refused(CommandErrors.notBoth(this, "--lamp-efficacy", "--lamp-lumens"));
    }
    if (call.has("--window") != call.has("--distance")) {
      throw call.needs(call.has("--window") ? "--distance" : "--window");
    }
  }

  /** The months of the plan's season. */
  private List<MonthLight> season(Call call, Site site) {
    if (!call.hasPlan()) {
      throw call.needs("--month");
    }
    if (!WeatherFile.isNamed(call.plan()) && !SeasonOf.hasMonths(call.plan())) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this,
              "the plan has no weather to tell the light: name --month with --tmin and --tmax, or site.weather or site.months in the plan; or what was measured at the place, --light or --lux"));
    }
    return LightMonths.of(call.plan(), site);
  }

  private List<MonthLight> months(Call call, Site site) {
    if (!call.has("--month")) {
      return season(call, site);
    }
    Double tmin = call.quantity("--tmin");
    Double tmax = call.quantity("--tmax");
    if ((tmin == null) != (tmax == null)) {
      throw call.needs(tmin == null ? "--tmin" : "--tmax");
    }
    double none = Double.NaN;
    return List.of(
        MonthLight.of(
            site,
            (Integer) call.value("--month"),
            tmin == null ? none : tmin,
            tmax == null ? none : tmax));
  }

  private void row(Call call, Answer answer, MonthLight month, List<LightNeed> needs) {
    Row row =
        answer
            .row()
            .set(MONTH, month.month())
            .set(RA, month.raMjM2())
            .set(DAYLIGHT, Units.H.toBase(month.daylightHours()))
            .set(RS, SeasonRows.known(month.rsMjM2()))
            .set(CLEAR, month.clearMolM2())
            .set(OPEN, SeasonRows.known(month.molM2()));
    LightNeed need = need(row, needs);
    if (!Double.isNaN(month.molM2())) {
      atThePlants(call, row, natural(call, row, month.molM2()), need);
    }
  }

  private void typed(Call call, Answer answer, TypedLight typed, List<LightNeed> needs) {
    Row row = answer.row();
    LightNeed need = need(row, needs);
    if (typed.isMetered()) {
      row.set(PPFD, typed.ppfd());
      atThePlants(call, row, typed.molM2(), need);
    } else {
      row.set(OPEN, typed.molM2());
      atThePlants(call, row, natural(call, row, typed.molM2()), need);
    }
  }

  private static LightNeed need(Row row, List<LightNeed> needs) {
    LightNeed need = LightNeed.neediest(needs);
    if (need != null) {
      row.setAny(CROP, need.isTyped() ? null : need.name())
          .set(LOW, need.lowMolM2())
          .set(GOOD, need.goodMolM2());
    }
    return need;
  }

  private static void atThePlants(Call call, Row row, double natural, LightNeed need) {
    row.set(DLI, natural);
    if (need != null) {
      row.set(ENOUGH, natural >= need.lowMolM2()).set(MISSING, need.missingMolM2(natural));
      lamp(call, row, natural, need);
    }
  }

  private static double natural(Call call, Row row, double open) {
    Cover cover = call.has("--cover") ? Cover.of(call.text("--cover")) : null;
    double under = cover == null ? open : DailyLight.shadedMolM2(open, cover.transmission(), 0);
    double shaded = LightOf.inside(call.plan(), under, call.taken());
    if (!call.has("--window")) {
      return shaded;
    }
    Size pane = (Size) call.value("--window");
    if (pane.width() == null) {
      throw call.needs("--window");
    }
    double share =
        WindowSill.skyShare(
            pane.length().value(), pane.width().value(), call.quantity("--distance"));
    row.set(SKY, share);
    return WindowSill.molM2(shaded, share, 1);
  }

  private static void lamp(Call call, Row row, double natural, LightNeed need) {
    if (!LightOf.hasLamp(call.plan())) {
      return;
    }
    Lamp lamp = LightOf.lamp(call.plan(), call.taken());
    LampDay day = lamp.day(natural, need.goodMolM2(), LightOf.hours(call.plan(), need.lampHours()));
    row.set(STATUS, day.status().word())
        .set(HOURS, Units.H.toBase(day.hours()))
        .set(KWH, Units.KWH.toBase(day.kwhDay()))
        .set(WATTS, day.wattsNeeded())
        .set(WITH, day.reachedMolM2())
        .set(LAMP_PPFD, SeasonRows.known(lamp.ppfdUmolM2S()));
  }
}
