package leat.energy;

/**
 * Cautions that every answer touching mains, batteries or cables prints.
 *
 * <p>Source: sheet energy.md, general electrical safety practice.
 */
public final class Cautions {
  /** Mains near water. */
  public static final String MAINS =
      "mains near water kills: a supply with a residual-current device, a drip loop, the pump's own"
          + " unmodified cord, parts rated for the place; never lift a pump by its cord. Local codes"
          + " and licensed people decide.";

  /** Batteries. */
  public static final String BATTERY =
      "fuse the battery at its pole, vent lead-acid, never charge lithium iron phosphate below 0 C.";

  /** Contacts and direct current. */
  public static final String DIRECT_CURRENT_CONTACT =
      "a contact's rating for alternating current says nothing on direct current: take its"
          + " direct-current rating.";

  private Cautions() {}
}
