package leat.cli;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Format;
import leat.plan.Kind;
import leat.plan.KindReader;
import leat.plan.Origin;
import leat.plan.Plan;
import leat.plan.PlanEdit;
import leat.plan.PlanFile;
import leat.plan.PlanHint;
import leat.plan.Refused;
import leat.plan.Source;
import leat.plan.Taken;

/**
 * One call of a command: the typed flags as quantities, and the plan with the flags laid over it.
 */
public final class Call {
  /** Value of LEAT_DEBUG that tells which keys of its plans a command asks for. */
  private static final String READS = "reads";

  public final Command command;
  public final Terminal terminal;
  private final CommandLines.Typed typed;
  private final Flag[] flags;
  private final List<String> operands;
  private final List<String> plans;
  private Plan plan;
  private String unitsOfPlan;
  private final List<Plan> read = new ArrayList<>();
  private final Taken taken = new Taken();
  private boolean blankValue;

  Call(Command command, CommandLines.Typed typed, Terminal terminal) {
    this.command = command;
    this.typed = typed;
    this.terminal = terminal;
    this.flags = CommonFlags.all(command);
    this.operands = new ArrayList<>();
    this.plans = new ArrayList<>();
    boolean plansApart = command.takesPlan() && command.operands().indexOf("PLAN") < 0;
    for (int i = 0; i < typed.operands.size(); i++) {
      String operand = typed.operands.get(i);
      boolean isPlan = command.planIsOperand() || plansApart && isPlanName(operand);
      (isPlan ? plans : operands).add(operand);
    }
    checkOperands();
    checkPlans();
    checkQuestions();
  }

  /** The same call with one of its plans alone. */
  Call of(String name) {
    return new Call(command, typed.with(name), terminal);
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

  private void checkQuestions() {
    for (int i = 0; i < flags.length; i++) {
      String[] questions = flags[i].questions;
      boolean asked = questions.length == 0 || !typed.has(flags[i]);
      for (int k = 0; k < questions.length && !asked; k++) {
        asked = has(questions[k]);
      }
      if (!asked) {
        throw new Refused(CommandErrors.withoutItsQuestion(command, flags[i].name, questions));
      }
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
    for (int i = 0; i < operands.size(); i++) {
      String operand = operands.get(i);
      if (operand.length() > 1 && operand.charAt(0) == '-' && !startsNumber(operand)) {
        throw new Refused(CommandErrors.unknownFlag(command, operand, flags));
      }
    }
    if (command.operands().isEmpty() && !operands.isEmpty()) {
      throw new Refused(CommandErrors.noOperands(command, operands.get(0)));
    }
  }

  private static boolean startsNumber(String text) {
    char c = text.charAt(1);
    return c >= '0' && c <= '9' || c == '.';
  }

  private Flag flag(String name) {
    for (int i = 0; i < flags.length; i++) {
      if (flags[i].name.equals(name)) {
        return flags[i];
      }
    }
    throw new IllegalArgumentException(name + " is not a flag of " + command.name());
  }

  /** Operands as typed. */
  public List<String> operands() {
    return operands;
  }

  /** Whether a flag was given. */
  public boolean has(String name) {
    return typed.has(flag(name));
  }

  /** The text of a flag, or null. */
  public String text(String name) {
    List<String> values = typed.values.get(flag(name).name);
    return values == null || values.isEmpty() ? null : values.get(0);
  }

  /** The texts of a repeatable flag. */
  public List<String> texts(String name) {
    List<String> values = typed.values.get(flag(name).name);
    return values == null ? new ArrayList<>() : values;
  }

  /** The value of a flag as its kind reads it, or null. */
  public Object value(String name) {
    String text = text(name);
    return text == null ? null : KindReader.read(flag(name).kind, name, text);
  }

  /** The values of a repeatable flag as its kind reads them. */
  public List<Object> values(String name) {
    List<String> all = texts(name);
    List<Object> result = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      result.add(KindReader.read(flag(name).kind, name, all.get(i)));
    }
    return result;
  }

  /** A quantity in its base unit, or null. */
  public Double quantity(String name) {
    Object value = value(name);
    return value == null ? null : Double.valueOf(((Number) value).doubleValue());
  }

  /** A quantity above 0, or null. */
  public Double above0(String name) {
    Double value = quantity(name);
    if (value != null && !(value > 0)) {
      throw new Refused(CommandErrors.mustBeAbove0(name, text(name)));
    }
    return value;
  }

  /** A quantity from 0, or null. */
  public Double from0(String name) {
    Double value = quantity(name);
    if (value != null && value < 0) {
      throw new Refused(CommandErrors.cannotBeNegative(name, text(name)));
    }
    return value;
  }

  /**
   * Where a quantity that the trade refuses came from: the flag as typed, else the command and the
   * quantity.
   */
  public String place(String quantity) {
    String name = "--" + quantity.replace(' ', '-').replace('_', '-');
    for (int i = 0; i < flags.length; i++) {
      if (flags[i].name.equals(name) && typed.has(flags[i])) {
        return flags[i].hasValue() ? name + " \"" + String.join("\" \"", texts(name)) + "\"" : name;
      }
    }
    return "leat " + command.name() + ": " + quantity;
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
        line.append(" --plan ").append(quoted(planName()));
      }
      typedAgain(line, "--set");
    }
    for (int i = 0; i < kept.length; i++) {
      if (isAskedBy(kept, flag(kept[i]))) {
        typedAgain(line, kept[i]);
      }
    }
    typedAgain(line, "--units");
    return line.toString();
  }

  /** Whether a flag stands alone, or its question is kept, too. */
  private boolean isAskedBy(String[] kept, Flag flag) {
    boolean asked = flag.questions.length == 0;
    for (int i = 0; i < flag.questions.length; i++) {
      for (int k = 0; k < kept.length; k++) {
        asked |= kept[k].equals(flag.questions[i]) && has(kept[k]);
      }
    }
    return asked;
  }

  private void typedAgain(StringBuilder line, String name) {
    Flag flag = flag(name);
    if (!typed.has(flag)) {
      return;
    }
    if (!flag.hasValue()) {
      line.append(' ').append(name);
      return;
    }
    List<String> all = texts(name);
    for (int i = 0; i < all.size(); i++) {
      line.append(' ').append(name).append(' ').append(quoted(all.get(i)));
    }
  }

  /** A word of a command line as a POSIX shell takes it: plain, in double quotes, or in single. */
  public static String quoted(String word) {
    boolean plain = !word.isEmpty();
    boolean easy = true;
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      plain &= Character.isLetterOrDigit(c) || "._-+/:,%=@".indexOf(c) >= 0;
      easy &= "\"\\$`!".indexOf(c) < 0;
    }
    if (plain) {
      return word;
    }
    return easy ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
  }

  /**
   * The refusal for flags that this question cannot do without: those of them that were not given,
   * all at once.
   */
  public Refused needs(String... names) {
    List<leat.plan.Problem> missing = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      if (names.length == 1 || !has(names[i])) {
        missing.add(CommandErrors.needed(command, flag(names[i])));
      }
    }
    return new Refused(missing);
  }

  /**
   * Tells how values get into the plan: the command that writes them, and the lines to change by
   * hand. Without a plan file, what to write in one.
   *
   * @param keysAndValues a key, such as {@code pump.measured}, and what one would type; and so on
   */
  public Answer intoPlan(Answer answer, String... keysAndValues) {
    PlanHint hint = PlanHint.of(keysAndValues);
    String name = hasPlan() ? planName() : null;
    if (name == null || "-".equals(name)) {
      return nexts(answer, "in the plan write  ", hint.lines());
    }
    PlanEdit edit = PlanEdit.of(name, PlanFile.text(name, terminal.file(name), null));
    List<String> sets = hint.sets(edit);
    if (!sets.isEmpty()) {
      StringBuilder line = new StringBuilder("leat plan set ").append(quoted(name));
      for (int i = 0; i < sets.size(); i++) {
        line.append(' ').append(quoted(sets.get(i)));
      }
      answer.next(line.toString());
    }
    return nexts(answer, sets.isEmpty() ? "" : "or by hand: ", hint.byHand(edit, !sets.isEmpty()));
  }

  private static Answer nexts(Answer answer, String start, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      answer.next(start + lines.get(i));
    }
    return answer;
  }

  /** Whether it answers in text of US customary units; csv and json are metric always. */
  public boolean us() {
    return "us".equals(units()) && "text".equals(valueOr("--format", "text"));
  }

  /** Writes a file anew, whole or not at all. */
  public void rewrite(String name, String text) {
    new Output(terminal, name).write(text);
  }

  /** Standard input, which can be taken once. */
  public java.io.InputStream input() {
    return terminal.takeInput();
  }

  /** The plan that LEAT_PLAN names, or null. */
  public String fallbackPlan() {
    String fallback = terminal.environment.get("LEAT_PLAN");
    return fallback == null || fallback.isEmpty() ? null : fallback;
  }

  /** An operand read as a kind. */
  public Object operand(int i, Kind kind) {
    return KindReader.read(kind, "operand " + (i + 1), operands.get(i));
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
    List<String> sets = texts("--set");
    for (int i = 0; i < sets.size(); i++) {
      String set = sets.get(i);
      int equals = set.indexOf('=');
      if (equals <= 0) {
        throw new Refused(leat.plan.PlanErrors.badSet(Origin.flag("--set " + set, set)));
      }
      String path = set.substring(0, equals).strip();
      draft.set(path, Source.flag("--set " + path, set.substring(equals + 1)));
    }
    for (int i = 0; i < flags.length; i++) {
      if (flags[i].planPath != null) {
        draft.flag(flags[i].planPath, flags[i].name);
      }
      lay(flags[i], draft);
    }
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

  private void lay(Flag flag, Plan.Draft draft) {
    if (flag.planPath == null || !typed.has(flag)) {
      return;
    }
    List<String> given = typed.values.get(flag.name);
    if (flag.repeatable) {
      draft.setList(flag.planPath, flag.name, given);
    } else {
      draft.setText(flag.planPath, flag.name, given.get(0));
    }
  }

  /** The defaults that the answer takes. */
  public Taken taken() {
    return taken;
  }

  /** Lays the defaults that were taken into an answer. */
  public Answer withTaken(Answer answer) {
    return plan == null ? answer : answer.taken(taken.words());
  }

  /** The key of --value, whose values alone are asked for, or null. */
  String valueKey() {
    String key = text("--value");
    for (int i = 0; key != null && i < flags.length; i++) {
      String other = flags[i].name;
      if (("--format".equals(other) || "--chart".equals(other)) && typed.has(flags[i])) {
        throw new Refused(CommandErrors.notBoth(command, "--value", other));
      }
    }
    return key;
  }

  /** Whether charts are drawn, in text or in a page: only then an answer declares them. */
  public boolean wantsChart() {
    return command.draws() && (has("--chart") || "html".equals(text("--format")));
  }

  /** Refuses a chart or a page where rows are written as they come. */
  void wantsRowsOnly() {
    if (wantsChart() || "html".equals(text("--format"))) {
      throw new Refused(CommandErrors.noPageOfRows(command));
    }
  }

  /** The words behind the command, as typed. */
  List<String> words() {
    return typed.words;
  }

  /** The plans that were read. */
  List<Plan> plansRead() {
    return read;
  }

  /** The format asked for. */
  public Format format() {
    String format = valueKey() != null ? Format.VALUE : (String) valueOr("--format", "text");
    char delimiter = character("--delimiter", ',');
    char decimal = character("--decimal", '.');
    if (delimiter == decimal) {
      throw new Refused(CommandErrors.sameSeparators(delimiter));
    }
    Format asked =
        new Format(
            format,
            "us".equals(units()),
            has("--quiet"),
            has("--explain"),
            has("--raw"),
            delimiter,
            decimal);
    boolean toScreen = text("--output") == null;
    String color = (String) valueOr("--color", "auto");
    boolean painted = "always".equals(color) || "auto".equals(color) && terminal.wantsColor();
    if (command.draws() && has("--chart")) {
      if (!"text".equals(format) && !"html".equals(format)) {
        throw new Refused(CommandErrors.chartInText(command, format));
      }
      asked.charted(terminal.takesBoxes());
    }
    return asked.on(toScreen ? terminal.columns() : 0, toScreen && painted);
  }

  /** Units of text: those of the flag, else of the plan that was read, else of LEAT_UNITS. */
  private String units() {
    String asked = (String) value("--units");
    if (asked != null || unitsOfPlan != null) {
      return asked != null ? asked : unitsOfPlan;
    }
    String usual = terminal.environment.get("LEAT_UNITS");
    if (usual == null || usual.isEmpty()) {
      return "metric";
    }
    return (String) KindReader.read(flag("--units").kind, "LEAT_UNITS", usual);
  }

  private Object valueOr(String name, Object otherwise) {
    Object value = value(name);
    return value == null ? otherwise : value;
  }

  private char character(String name, char otherwise) {
    String text = text(name);
    if (text == null) {
      return otherwise;
    }
    if ("\\t".equals(text) || "tab".equals(text)) {
      return '\t';
    }
    if (text.length() != 1 || Character.isLetterOrDigit(text.charAt(0)) || text.charAt(0) == '"') {
      throw new Refused(CommandErrors.notACharacter(name, text));
    }
    return text.charAt(0);
  }

  /** Shows how far a long run is, where somebody watches and no {@code --quiet} is said. */
  public Progress progress(boolean rows, long all) {
    return new Progress(terminal, terminal.isWatched(rows) && !has("--quiet"), all);
  }
}
