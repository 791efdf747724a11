package leat.quantity;

/**
 * How many, and of which size: "2", "2 @ 60 mm", "1 @ 50 %", "1 @ 20 deg".
 *
 * @param count how many
 * @param size a length, share or angle; null when none is named
 */
public record CountAt(Quantity count, Quantity size) {}
