package leat.season;

/** How pots are shared out between batches. */
public enum Sizes {
  /** So that the batches in the pots at once fill them all: sizes differ by one at most. */
  SPREAD,
  /** All batches of one size; pots may be left over for ever. */
  EQUAL
}
