package leat.season;

/** Who looks after the tank on an evening. */
public enum Attendance {
  /** The owner, by the rules of {@link Upkeep}. */
  USUAL,
  /** Nobody: away. */
  NOBODY,
  /** Away, but a neighbour fills up to the full mark at the target. */
  NEIGHBOUR,
  /** The owner fills up to the full mark at the target, whatever the rules say. */
  FILLS,
  /** The season's last day: drained afterwards, not topped up. */
  CLOSING;

  /** Whether the owner is away. */
  public boolean away() {
    return this == NOBODY || this == NEIGHBOUR;
  }
}
