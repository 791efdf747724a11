package leat.plan;

import leat.quantity.Unreadable;

/** Reads the value of a flag or an operand as a kind of the plan, with the same messages. */
public final class KindReader {
  private KindReader() {}

  /** Whether a text is a value of a kind. */
  public static boolean reads(Kind kind, String typed) {
    try {
      kind.read(typed, true);
      return true;
    } catch (Unreadable e) {
      return false;
    }
  }

  /**
   * The value.
   *
   * @throws Refused with the flag's name and the reason
   */
  public static Object read(Kind kind, String flag, String typed) {
    try {
      return kind.read(typed, true);
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag(flag, typed), "", e));
    }
  }
}
