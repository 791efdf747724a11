package leat.controller;

/**
 * What the last checks of the meters found.
 *
 * <p>Source: definitions: true EC is slope times shown, true pH is shown plus offset.
 *
 * @param ecSlope true EC over shown EC, or null
 * @param phOffset true pH less shown pH, or null
 */
public record MeterFactors(Double ecSlope, Double phOffset) {
  void write(StringBuilder out) {
    if (ecSlope != null) {
      out.append("\n/* The EC meter. */\n");
      CText.define(out, "TOWER_EC_SLOPE", CText.real(ecSlope), "true EC over shown EC");
      out.append("static inline float tower_true_ec(float shown) {\n");
      out.append("  return TOWER_EC_SLOPE * shown;\n}\n");
    }
    if (phOffset != null) {
      out.append("\n/* The pH meter. */\n");
      CText.define(out, "TOWER_PH_OFFSET", CText.real(phOffset), "true pH less shown pH");
      out.append("static inline float tower_true_ph(float shown) {\n");
      out.append("  return shown + TOWER_PH_OFFSET;\n}\n");
    }
  }
}
