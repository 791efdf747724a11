package leat.cli;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Format;
import leat.plan.Kind;
import leat.plan.KindReader;
import leat.plan.Origin;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.PlanFile;
import leat.plan.PlanHint;
import leat.plan.Refused;
import leat.plan.Source;
import leat.plan.Taken;

/**
 * One call of a command: the typed flags as quantities, and the plan with the flags laid over it.
 */
public final class Call extends TypedLine {
  /** Value of LEAT_DEBUG that tells which keys of its plans a command asks for. */
  private static final String READS = "reads";

  public final Terminal terminal;
  private final List<String> others = new ArrayList<>();
  private final List<String> plans = new ArrayList<>();
  private Plan plan;
  private String unitsOfPlan;
  private final List<Plan> read = new ArrayList<>();
  private final Taken taken = new Taken();
  private boolean blankValue;

  Call(TypedLine line, Terminal terminal) {
    super(line);
    this.terminal = terminal;
    boolean plansApart = command.takesPlan() && command.operands().indexOf("PLAN") < 0;
    for (int i = 0; i < operands.size(); i++) {
      String operand = operands.get(i);
      boolean isPlan = command.planIsOperand() || plansApart && isPlanName(operand);
      (isPlan && !isFlag(operand) ? plans : others).add(operand);
    }
    checkOperands();
    checkPlans();
    refuseWithoutQuestion();
    refuseOtherWords();
  }

  /** The same call with one of its plans alone. */
  Call of(String name) {
    return new Call(with(name), terminal);
  }

  /** Whether a word is the name of a plan: nothing else that is typed ends so. */
  public static boolean isPlanName(String word) {
    return word.endsWith(".yaml") || word.endsWith(".yml");
  }

  private void checkPlans() {
    if (!plans.isEmpty() && text("--plan") != null) {
      throw new Refused(CommandErrors.onePlan(command, plans.get(0)));
    }
    if (plans.size() > 1 && !command.severalPlans() && !command.eachPlan()) {
      throw new Refused(CommandErrors.onePlan(command, plans.get(1)));
    }
  }

  /** Whether a plan was named on the command line, with or without --plan. */
  public boolean namesPlan() {
    return !plans.isEmpty() || text("--plan") != null;
  }

  /** Names of the plans: the operands that are plans, else the one of --plan or LEAT_PLAN. */
  public List<String> planNames() {
    List<String> names = new ArrayList<>(plans);
    if (names.isEmpty() && planName() != null) {
      names.add(planName());
    }
    return names;
  }

  private void checkOperands() {
    for (int i = 0; i < others.size(); i++) {
      String operand = others.get(i);
      if (isFlag(operand)) {
        throw new Refused(CommandErrors.unknownFlag(command, operand, flags));
      }
    }
    if (command.operands().isEmpty() && !others.isEmpty()) {
      throw new Refused(CommandErrors.noOperands(command, others.get(0)));
    }
  }

  /** Whether a word was meant as a flag: no plan is named so. */
  private static boolean isFlag(String word) {
    return word.length() > 1 && word.charAt(0) == '-' && !startsNumber(word);
  }

  private static boolean startsNumber(String text) {
    char c = text.charAt(1);
    return c >= '0' && c <= '9' || c == '.';
  }

  /** Operands as typed, without those that are plans. */
  public List<String> operands() {
    return others;
  }

  /**
   * Where a quantity that the trade refuses came from: the flag as typed, else the command and the
   * quantity.
   */
  public String place(String quantity) {
    String name = "--" + quantity.replace(' ', '-').replace('_', '-');
    Flag flag = named(name);
    if (flag == null || !has(flag)) {
      return "leat " + command.name() + ": " + quantity;
    }
    return flag.hasValue() ? name + " \"" + String.join("\" \"", texts(name)) + "\"" : name;
  }

  /**
   * The start of a command line that goes on with what this call was about: its plan, its {@code
   * --set}, its units, and the named flags as they were typed; quoted so that a shell takes it as
   * it stands.
   */
  public String again(String name, String... kept) {
    StringBuilder line = new StringBuilder("leat ").append(name);
    if (command.takesPlan()) {
      if (hasPlan()) {
        line.append(" --plan ").append(ShellWord.quoted(planName()));
      }
      again(line, "--set");
    }
    again(line, kept);
    again(line, "--units");
    return line.toString();
  }

  /**
   * Tells how values get into the plan: the command that writes them, and the lines to change by
   * hand. Without a plan file, what to write in one.
   *
   * @param keysAndValues a key, such as {@code pump.measured}, and what one would type; and so on
   */
  public Answer intoPlan(Answer answer, String... keysAndValues) {
    return new IntoPlan(this).tell(answer, PlanHint.of(keysAndValues));
  }

  /** Whether it answers in text of US customary units; csv and json are metric always. */
  public boolean us() {
    return CommonFlags.isUsText(this);
  }

  /** Writes a file anew, whole or not at all. */
  public void rewrite(String name, String text) {
    new Output(terminal, name).write(text);
  }

  /** The plan that LEAT_PLAN names, or null. */
  public String fallbackPlan() {
    String fallback = terminal.environment.get("LEAT_PLAN");
    return fallback == null || fallback.isEmpty() ? null : fallback;
  }

  /** An operand read as a kind. */
  public Object operand(int i, Kind kind) {
    return KindReader.read(kind, "operand " + (i + 1), others.get(i));
  }

  /** The file named by --plan, else by LEAT_PLAN when no other way to a plan is used, else null. */
  public String planName() {
    String named = plans.isEmpty() ? text("--plan") : plans.get(0);
    return named != null ? named : fallbackPlan();
  }

  /** Whether a plan file is named. */
  public boolean hasPlan() {
    return planName() != null;
  }

  /**
   * The plan with --set and the flags laid over it; an empty one with the flags when none is named.
   */
  public Plan plan() {
    if (plan == null) {
      plan = plan(planName());
    }
    return plan;
  }

  /** The flags and --set alone, without the plan that LEAT_PLAN names. */
  public Plan bare() {
    plan = plan(null);
    return plan;
  }

  /** A named plan with --set and the flags laid over it; null for flags alone. */
  public Plan plan(String name) {
    Plan.Draft draft =
        name == null
            ? Plan.Draft.empty()
            : PlanFile.read(
                name, terminal.file(name), "-".equals(name) ? terminal.takeInput() : null);
    laySets(draft);
    lay(draft);
    if (READS.equals(terminal.environment.get("LEAT_DEBUG"))) {
      draft.record();
    }
    Plan plan = draft.read();
    if (unitsOfPlan == null) {
      unitsOfPlan = plan.units();
    }
    read.add(plan);
    return plan;
  }

  private void laySets(Plan.Draft draft) {
    List<String> sets = texts("--set");
    List<String> paths = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      String set = sets.get(i);
      int equals = set.indexOf('=');
      if (equals <= 0) {
        throw new Refused(PlanErrors.badSet(Origin.flag("--set " + set, set)));
      }
      paths.add(set.substring(0, equals).strip());
    }
    for (int i = 0; i < sets.size(); i++) {
      String path = paths.get(i);
      String value = sets.get(i).substring(sets.get(i).indexOf('=') + 1);
      draft.refuseLone(paths, i, Origin.flag("--set " + path, value));
      draft.set(path, Source.flag("--set " + path, value));
    }
  }

  /** A row of a stream had nothing under the key of --value. */
  void sawBlankValue() {
    blankValue = true;
  }

  /** Whether a row of a stream had nothing there. */
  boolean hasBlankValue() {
    return blankValue;
  }

  /** The keys of its plans that the command asked for, a line each; empty unless they were kept. */
  String asked() {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < read.size(); i++) {
      List<String> asked = read.get(i).asked();
      for (int k = 0; k < asked.size(); k++) {
        lines.append("asked ").append(asked.get(k)).append('\n');
      }
    }
    return lines.toString();
  }

  /** The defaults that the answer takes. */
  public Taken taken() {
    return taken;
  }

  /** Lays the defaults that were taken into an answer. */
  public Answer withTaken(Answer answer) {
    return plan == null ? answer : answer.taken(taken.words());
  }

  /** Whether charts are drawn, in text or in a page: only then an answer declares them. */
  public boolean wantsChart() {
    return command.draws() && (has("--chart") || "html".equals(text("--format")));
  }

  /** Refuses a chart or a page where rows are written as they come. */
  void wantsRowsOnly() {
    if (wantsChart() || "html".equals(text("--format"))) {
      throw new Refused(RowErrors.noPageOfRows(command));
    }
  }

  /** The plans that were read. */
  List<Plan> plansRead() {
    return read;
  }

  /** The format asked for. */
  public Format format() {
    return CommonFlags.formatOf(this);
  }

  /** The units that the plan that was read first names, or null. */
  String unitsOfPlan() {
    return unitsOfPlan;
  }

  /** Shows how far a long run is, where somebody watches and no {@code --quiet} is said. */
  public Progress progress(boolean rows, long all) {
    return new Progress(terminal, terminal.isWatched(rows) && !has("--quiet"), all);
  }
}
