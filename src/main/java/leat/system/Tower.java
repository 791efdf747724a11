package leat.system;

import leat.hydraulics.Line;
import leat.plan.Section;
import leat.plan.Taken;
import leat.plan.Value;

/**
 * A kind of tower of a plan, in values.
 *
 * @param number its number in the plan, from 0
 * @param name the plan's, else its number
 * @param count how many equal ones there are
 * @param outlet height of the riser's outlet over the tank's floor, m
 * @param wanted flow of one such tower, m3/s
 * @param valved whether its riser has a valve that can be set
 * @param riser the pipe
 * @param stack its modules on their base
 * @param top its cap and spreader
 */
public record Tower(
    int number,
    String name,
    int count,
    double outlet,
    Value wanted,
    boolean valved,
    Line riser,
    Stack stack,
    TopPiece top) {

  static Tower of(Section tower, int number, Line riser, double outlet, Taken taken) {
    String own = tower.text("name");
    String valve = tower.section("riser").text("valve");
    return new Tower(
        number,
        own == null ? "tower " + (number + 1) : own,
        (int) tower.value("count").orElse(1),
        outlet,
        tower.value("wanted"),
        valve != null && !"none".equals(valve),
        riser,
        Stack.of(tower),
        TopPiece.of(tower.section("cap"), taken));
  }
}
