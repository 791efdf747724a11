package leat.stability;

/**
 * Cautions that every answer about wind prints.
 *
 * <p>Source: sheet stability-build.md, sections 3, 4 and 8; common practice.
 */
public final class Cautions {
  /** How far an estimate goes, and who decides. */
  public static final String WIND =
      "an estimate for planning, good to a third at best. Where somebody can be hurt, local codes"
          + " and a qualified person decide. Take it down or indoors before a storm, whatever this"
          + " says. A railing is no anchor until somebody who may say so does.";

  /** Plastic under load. */
  public static final String LID =
      "a plastic lid sags over weeks under a tower's weight or the pull of lines: stand the tower on"
          + " a block from the tank's floor, or bridge the rim.";

  private Cautions() {}
}
