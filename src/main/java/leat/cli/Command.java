package leat.cli;

import leat.answer.Answer;

/**
 * One command: its flags, declared once, and what it answers. No formulas, no formatting of
 * numbers. Summary, manual, examples and see-also stand in a text file beside its class ({@link
 * Prose}).
 */
public abstract class Command {
  private Prose prose;

  /** Name as typed, such as {@code head} or {@code duty backup}. */
  public abstract String name();

  /** One line that says what it answers. */
  public final String summary() {
    return prose().summary;
  }

  private Prose prose() {
    if (prose == null) {
      prose = Prose.of(this);
    }
    return prose;
  }

  /** What the operands are called in help, such as {@code PLAN...}; empty for none. */
  public String operands() {
    return "";
  }

  /** Its own flags, besides those every command has. */
  public abstract Flag[] flags();

  /** Paragraphs of the manual, after the summary. */
  public final String[] manual() {
    return prose().manual.toArray(new String[0]);
  }

  /** Command lines shown in help and run in the manual, without the leading {@code leat}. */
  public final String[] examples() {
    return prose().examples.toArray(new String[0]);
  }

  /** Whether it takes {@code --plan} and {@code --set}. */
  public boolean takesPlan() {
    return true;
  }

  /** Whether several plans may be named as operands, and each is answered by itself. */
  public boolean eachPlan() {
    return false;
  }

  /** Whether several plans may be named as operands, see {@link Call#planNames}. */
  public boolean severalPlans() {
    return false;
  }

  /** Whether the one operand is a plan, however it is named. */
  public final boolean planIsOperand() {
    return "[PLAN]".equals(operands());
  }

  /** The formats it answers in. */
  public String[] formats() {
    return new String[] {"text", "csv", "json", "html"};
  }

  /** Whether it has charts to draw, and so {@code --chart}. */
  public boolean draws() {
    return false;
  }

  /** Where to look further, names of other pages. */
  public final String[] seeAlso() {
    return prose().seeAlso.toArray(new String[0]);
  }

  /** The answer to a call. */
  public abstract Answer answer(Call call);

  /** Answers by writing rows as it reads them; returns -1 when this call is no stream. */
  public int stream(Call call, Output output) {
    return -1;
  }
}
