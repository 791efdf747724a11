package leat.quantity;

/**
 * A name and its quantity: "N=150", "calcium-nitrate-4h2o=42 g".
 *
 * @param name before the equals sign, without spaces at its ends
 * @param quantity after it
 */
public record NamedQuantity(String name, Quantity quantity) {}
