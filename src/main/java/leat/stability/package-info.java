/**
 * Will it stand: wind at the tower, drag, overturning and sliding, guy lines, joints of a stack.
 * Metres, kg, N, Pa, m/s; heights count from the foot plane unless a name says otherwise.
 *
 * <p>All answers are estimates for planning: wind forces on a planted tower are uncertain by a
 * third or more. Where people or property can be hurt, local codes and a qualified person decide.
 * Not modelled: resonance, sloshing, tilt of a soft deck, a person leaning on it, a tank that pours
 * out while it tips, towers that shelter each other, masses off the middle.
 *
 * <p>Depends on {@link leat.numeric}. Start with {@link leat.stability.Assembly} for a plan, with
 * {@link leat.stability.Standing} for bare numbers.
 *
 * <p>Neighbours: numeric.
 */
package leat.stability;
