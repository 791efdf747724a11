package leat.command.feed;

import leat.answer.Show;
import leat.quantity.Units;

/** Salts stay in grams in US units too: kitchen and gram scales show them everywhere. */
final class SaltGrams {
  static final Show SHOW = Show.of(Units.G, 3);

  private SaltGrams() {}
}
