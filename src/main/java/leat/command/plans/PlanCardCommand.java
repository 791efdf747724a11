package leat.command.plans;

import java.time.LocalDate;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.paper.PaperSize;
import leat.paper.Strip;
import leat.plan.Checksum;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;

/** {@code leat plan card}: one side to hang by the tower, and a dipstick to cut out. */
public final class PlanCardCommand extends Command {
  private static final Column PLAN = Column.plain("plan", "plan");
  private static final Column CHECKSUM = Column.plain("plan_sha256", "checksum of the plan");
  private static final Column DATE = Column.plain("date", "day");
  private static final Column PAPER = Column.plain("paper", "paper");
  private static final Column SHEETS = Column.plain("sheets", "sheets");
  private static final Column HELD = Column.plain("held", "it holds");

  /** A name longer than this is cut on paper. */
  private static final int LONGEST_NAME = 60;

  @Override
  public String name() {
    return "plan card";
  }

  @Override
  public String operands() {
    return "[PLAN]";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
              "--paper",
              "SIZE",
              Kind.choice("a4", "letter"),
              "letter",
              "paper that it is printed on")
          .byDefault("a4"),
      Flag.on("--dipstick", "a strip in true scale to cut out and tape to the tank instead"),
      Flag.of("--date", "DATE", Kind.DATE, "2027-04-02", "date on the card; today otherwise"),
    };
  }

  /** A name as there is room for on paper. */
  static String shortened(String name) {
    return shortened(name, LONGEST_NAME);
  }

  /** A name of at most so many signs. */
  static String shortened(String name, int most) {
    return name.length() <= most ? name : name.substring(0, most - 3) + "...";
  }

  @Override
  public Answer answer(Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    Plan plan = call.plan();
    return call.has("--dipstick") ? strip(call, plan) : card(call, plan);
  }

  private static boolean asPage(Call call) {
    String format = call.format().name;
    return "text".equals(format) || "html".equals(format);
  }

  private static PaperSize paper(Call call) {
    return PaperSize.of((String) call.value("--paper"));
  }

  private static LocalDate date(Call call) {
    Object typed = call.value("--date");
    return typed == null ? LocalDate.now(call.terminal.clock()) : (LocalDate) typed;
  }

  private static Row said(Call call, Plan plan, int sheets, String held) {
    return Row.aside(PLAN, PAPER, SHEETS, HELD)
        .set(PLAN, shortened(plan.title()))
        .set(PAPER, paper(call).word())
        .set(SHEETS, sheets)
        .set(HELD, held);
  }

  private static Answer figures(Call call, Plan plan, int sheets) {
    Answer figures = new Answer(PLAN, CHECKSUM, DATE, PAPER, SHEETS);
    figures
        .row()
        .set(PLAN, plan.title())
        .set(CHECKSUM, Checksum.of(plan))
        .set(DATE, date(call).toString())
        .set(PAPER, paper(call).word())
        .set(SHEETS, sheets);
    return figures;
  }

  private static Answer card(Call call, Plan plan) {
    CardParts parts = new CardParts(call, plan, paper(call), date(call), call.format().us);
    String page = parts.page();
    Answer answer;
    if (asPage(call)) {
      answer = Answer.page(page);
    } else {
      answer = lists(call, plan, parts);
    }
    answer.sentence(
        said(call, plan, 1, parts.left.made()), "A card for {plan}, one side of {paper}: {held}.");
    parts.left.minds(answer);
    return call.withTaken(answer);
  }

  private static Answer lists(Call call, Plan plan, CardParts parts) {
    Answer answer = parts.amounts();
    Answer left = new Answer(LeftOut.PART, LeftOut.GIVEN, LeftOut.NEEDS);
    parts.left.rows(left);
    return answer
        .jsonObject(figures(call, plan, 1))
        .array("amounts", answer)
        .array("marks", parts.marks)
        .array("parts", left);
  }

  private static Answer strip(Call call, Plan plan) {
    StripOf of = new StripOf(plan, paper(call), date(call), call.format().us, call.taken());
    Strip strip = of.strip();
    boolean page = asPage(call);
    Answer answer = page ? Answer.page(strip.write()) : of.marks();
    if (!page) {
      answer.jsonObject(figures(call, plan, strip.size())).array("marks", answer);
    }
    answer.sentence(
        said(call, plan, strip.size(), ""),
        strip.size() == 1
            ? "A dipstick for {plan} on one sheet of {paper}."
            : "A dipstick for {plan} on {sheets} sheets of {paper}.");
    minds(answer, of);
    return call.withTaken(answer);
  }

  private static void minds(Answer answer, StripOf of) {
    if (!of.hasLevels()) {
      answer.mind(
          "no-shape",
          "the tank's shape is not known: the strip tells litres by what the sender reads, not by height.");
    }
    answer.mind(
        "true-scale", "print at 100 %, then hold a ruler to the line of 100 mm on each sheet.");
  }

  /** Lines at the foot of what is printed. */
  static List<String> made(Call call, Plan plan, LocalDate date) {
    String sets =
        call.texts("--set").isEmpty() ? "" : "; over it: " + String.join(", ", call.texts("--set"));
    return List.of(
        "Made on "
            + date
            + " by leat plan card from "
            + shortened(new java.io.File(plan.fileName()).getName())
            + ", whose sha256sum begins "
            + Checksum.of(plan).substring(0, 12)
            + shortened(sets)
            + ".");
  }
}
