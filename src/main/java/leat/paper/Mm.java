package leat.paper;

import leat.quantity.NumberText;

/** Millimetres as SVG and CSS take them, to a thousandth. */
final class Mm {
  private Mm() {}

  static String of(double mm) {
    return NumberText.decimals(mm, 3);
  }
}
