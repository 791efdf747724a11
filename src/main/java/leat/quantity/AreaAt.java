package leat.quantity;

/** A section of a tank: a level and the area of the water's surface there. */
public record AreaAt(Quantity level, Quantity area) {}
