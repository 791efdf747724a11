package leat.quantity;

/**
 * Run and rest of a pump: "15 min/15 min".
 *
 * @param run before the slash, a time
 * @param rest after it, a time
 */
public record RunAndRest(Quantity run, Quantity rest) {}
