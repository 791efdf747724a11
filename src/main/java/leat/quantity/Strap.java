package leat.quantity;

/** A row of a tank's strapping table: a level and the litres poured in up to it. */
public record Strap(Quantity level, Quantity volume) {}
