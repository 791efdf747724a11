package leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * One flow down walls of several widths: modules for small and for large pots above each other. All
 * get the same litres a minute, so the widest wall decides what is too little and the narrowest
 * what is too much.
 *
 * <p>Source: {@link Film} for each wall (sheet hydraulics.md section 8); steps between modules and
 * pot sockets are not modelled.
 *
 * @param films one a wall, in order
 * @param transitTime of the front down all walls, s
 * @param volume hanging on all walls, m3
 */
public record WallFilms(List<Film> films, double transitTime, double volume) {
  /**
   * A stretch of wall.
   *
   * @param innerDiameter m, above 0
   * @param wettedShare of it, -, above 0 to 1
   * @param height m, above 0
   */
  public record Wall(double innerDiameter, double wettedShare, double height) {
    /** Flow that loads this wall by {@code loading} m2/s, m3/s; see {@link Film#LOADING_LOW}. */
    public double flowFor(double loading) {
      return Film.flowForLoading(loading, innerDiameter, wettedShare);
    }

    /** Least flow to aim at on this wall, m3/s. */
    public double least() {
      return flowFor(Film.LOADING_LOW);
    }

    /** Greatest flow to aim at on this wall, m3/s. */
    public double most() {
      return flowFor(Film.LOADING_HIGH);
    }

    /** Flow from which a dry spot on clean plastic closes on this wall, m3/s. */
    public double flowForClosedFilm(Liquid liquid) {
      return flowFor(Film.breaksBelow(Film.CLEAN_PLASTIC, liquid));
    }
  }

  /**
   * What the walls together want.
   *
   * @param closed flow from which the film closes on every wall, m3/s
   * @param least flow that loads every wall enough, m3/s
   * @param usual flow by the usual loading of the widest wall, m3/s
   * @param most flow that floods none, m3/s
   */
  public record Want(double closed, double least, double usual, double most) {
    /** Some flow suits all walls; otherwise the widths differ too much. */
    public boolean suitsAll() {
      return least <= most;
    }
  }

  /**
   * The films.
   *
   * @param flow m3/s, above 0
   * @param liquid what falls
   * @param walls from the top, at least one
   * @return one film a wall, and their sums
   * @throws Impossible as {@link Film#of}, or without a wall
   */
  public static WallFilms of(double flow, Liquid liquid, List<Wall> walls) {
    accept(walls);
    List<Film> films = new ArrayList<>();
    double time = 0;
    double volume = 0;
    for (int i = 0; i < walls.size(); i++) {
      Wall wall = walls.get(i);
      Film film = Film.of(flow, wall.innerDiameter(), wall.wettedShare(), wall.height(), liquid);
      films.add(film);
      time += film.transitTime();
      volume += film.volume();
    }
    return new WallFilms(films, time, volume);
  }

  /** What the walls want; at least one. */
  public static Want want(Liquid liquid, List<Wall> walls) {
    accept(walls);
    double closed = 0;
    double least = 0;
    double usual = 0;
    double most = Double.POSITIVE_INFINITY;
    for (int i = 0; i < walls.size(); i++) {
      Wall wall = walls.get(i);
      closed = Math.max(closed, wall.flowForClosedFilm(liquid));
      least = Math.max(least, wall.flowFor(Film.LOADING_LOW));
      usual = Math.max(usual, wall.flowFor(Film.LOADING_USUAL));
      most = Math.min(most, wall.flowFor(Film.LOADING_HIGH));
    }
    return new Want(closed, least, usual, most);
  }

  private static void accept(List<Wall> walls) {
    if (walls.isEmpty()) {
      throw new Impossible("wall", "a film needs a wall");
    }
  }
}
