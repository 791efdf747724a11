package leat.quantity;

/**
 * Where a sender's reading begins: "40 mm = 10 ohm" or "20.1 L = 21.5 ohm".
 *
 * @param at a level (length) or a volume
 * @param reading a resistance
 */
public record SenderStep(Quantity at, Quantity reading) {}
