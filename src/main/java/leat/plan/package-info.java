/**
 * The plan: one declaration a key ({@link leat.plan.Keys}), a reader of YAML that keeps places
 * ({@code YamlComposer}), the binder that checks every value and gathers every mistake, and the
 * read values ({@link leat.plan.Section}). JSON Schema, {@code plan new}, {@code plan keys} and the
 * manual follow the keys.
 *
 * <p>Depends on {@code leat.quantity} and the YAML parser; the classes named Plan... that build the
 * trade's records depend on the trade. Start with {@link leat.plan.Plan.Draft}.
 *
 * <p>Neighbours: numeric, quantity, the trade.
 */
package leat.plan;
