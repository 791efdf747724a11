/**
 * The nutrient solution: what a conductivity reading means, what salts and labels bring, and what
 * to weigh, pour or drain.
 *
 * <p>Two halves. Conductivity and salts: {@link leat.solution.conductivity.EcReading}, {@link
 * leat.solution.conductivity.Compensation}, {@link leat.solution.conductivity.KclStandard}, {@link
 * leat.solution.conductivity.MeterCheck}, {@link leat.solution.conductivity.IonConductivity},
 * {@link leat.solution.Salts}, {@link leat.solution.Label}, {@link leat.solution.recipes.Recipe},
 * {@link leat.solution.recipes.RecipeFit} (sheets solution-ec-*.csv, solution-salts.csv,
 * solution-labels.csv, solution-recipe*.csv). The tank: top-up, dose, stock bottles, acid, crops,
 * oxygen, cleaning (sheets solution-topup.csv and its neighbours).
 *
 * <p>Units: EC in mS/cm, at 25 C unless the name says otherwise; mg/L of the element, never of the
 * oxide or the ion; mmol/L of ions; meq/L of charge and alkalinity; litres, grams, degrees Celsius.
 * Depends on leat.numeric and the JDK only. Start with {@link leat.solution.recipes.Recipe}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution;
