package leat.quantity;

/**
 * A flow that was measured, as a flow or with a bucket, and the tank's level at the time: "9.2
 * L/min @ 330 mm", "10 L in 65 s".
 *
 * @param flow as typed, or made from the bucket
 * @param bucket null when a flow was typed
 * @param level a length; null when it was not said
 */
public record MeasuredFlow(Quantity flow, Bucket bucket, Quantity level) {}
