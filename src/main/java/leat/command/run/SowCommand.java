package leat.command.run;

import java.time.LocalDate;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Problem;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.season.Batches;
import leat.season.PotUse;
import leat.season.Sizes;
import leat.season.Sowing;
import leat.system.PotsOf;
import leat.system.Sown;

/** {@code leat sow}: what to sow when. */
public final class SowCommand extends Command {
  private static final Kind SHARE = Kind.quantity(Dimension.SHARE);
  private static final String[] OWN = {
    "--pots",
    "--first",
    "--nursery",
    "--growing",
    "--every",
    "--until",
    "--loss",
    "--germination",
    "--turnaround",
    "--sizes",
    "--earliest-transplant",
    "--latest-harvest"
  };

  @Override
  public String name() {
    return "sow";
  }

  @Override
  public String operands() {
    return "[PLAN]";
  }

  @Override
  public String[] formats() {
    return new String[] {"text", "csv", "json", "html", "ics"};
  }

  @Override
  public Flag[] flags() {
    return SowFlags.all();
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = plan(call);
    List<Sown> crops =
        plan == null
            ? List.of(new Sown(0, null, null, Batches.of(fromFlags(call))))
            : Sown.of(plan, call.taken());
    List<List<Sown>> towers = plan == null ? List.of(crops) : PotsOf.of(plan).together(crops);
    Problem over = plan == null ? null : PotsOf.overfull(plan, crops);
    if (over != null) {
      throw new Refused(over);
    }
    return "ics".equals(call.text("--format"))
        ? SowCalendar.of(plan, crops)
        : rows(call, plan, crops, towers);
  }

  /** The plan of the crops; null when the call's own flags tell one. */
  private Plan plan(Call call) {
    String own = own(call);
    if (own == null && !call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    if (own != null && call.namesPlan()) {
      throw new Refused(CommandErrors.notBoth(this, "--plan", own));
    }
    return own == null ? call.plan() : null;
  }

  private static Answer rows(Call call, Plan plan, List<Sown> crops, List<List<Sown>> towers) {
    Answer answer = SowRows.answer(crops);
    SowWeather weather = plan == null ? null : SowWeather.of(plan, crops);
    Answer sums = SowSums.answer(crops, towers, weather);
    answer.jsonObject(sums).array("crops", SowSums.crops(crops)).array("batches", answer);
    new SowText(call, crops, towers).write(answer, sums.row(0));
    if (weather != null) {
      weather.minds(answer);
    }
    judge(answer, crops, towers);
    if (call.wantsChart()) {
      answer.chart(SowChart.of(crops));
    }
    return call.withTaken(answer);
  }

  /** No plants at all, or a tower long without one. */
  private static void judge(Answer answer, List<Sown> crops, List<List<Sown>> towers) {
    int plants = 0;
    for (int i = 0; i < crops.size(); i++) {
      plants += crops.get(i).batches().plants();
    }
    if (plants == 0) {
      answer.no();
    }
    for (int i = 0; i < towers.size(); i++) {
      PotUse use = PotsOf.use(towers.get(i));
      if (!use.empty() && use.longestEmpty().tooLong()) {
        answer.no();
      }
    }
  }

  /** The first of its own flags that was given, or null. */
  private static String own(Call call) {
    for (int i = 0; i < OWN.length; i++) {
      if (call.has(OWN[i])) {
        return OWN[i];
      }
    }
    return null;
  }

  private Sowing fromFlags(Call call) {
    int pots = (Integer) need(call, "--pots");
    LocalDate first = (LocalDate) need(call, "--first");
    int nursery = days(call, "--nursery", 0);
    need(call, "--growing");
    int growing = days(call, "--growing", 0);
    int turnaround = days(call, "--turnaround", 0);
    double success = Sowing.success(share(call, "--germination", 1), share(call, "--loss", 0));
    LocalDate earliest = (LocalDate) call.value("--earliest-transplant");
    LocalDate latest = (LocalDate) call.value("--latest-harvest");
    if (!call.has("--every") && !call.has("--until")) {
      return Sowing.once(pots, first, nursery, growing, turnaround, success, earliest, latest);
    }
    need(call, "--every");
    return new Sowing(
        pots,
        first,
        (LocalDate) need(call, "--until"),
        nursery,
        growing,
        turnaround,
        days(call, "--every", 0),
        success,
        "equal".equals(call.text("--sizes")) ? Sizes.EQUAL : Sizes.SPREAD,
        earliest,
        latest);
  }

  private static Object need(Call call, String flag) {
    Object value = call.value(flag);
    if (value == null) {
      throw call.needs(flag);
    }
    return value;
  }

  private static double share(Call call, String flag, double otherwise) {
    Double share = call.from0(flag);
    return share == null ? otherwise : share;
  }

  private static int days(Call call, String flag, int otherwise) {
    Double days = call.from0(flag);
    if (days == null) {
      return otherwise;
    }
    if (!NumberText.isWhole(days) || days > Integer.MAX_VALUE) {
      throw new Refused(CommandErrors.wholeDays(flag, call.text(flag)));
    }
    return days.intValue();
  }
}
