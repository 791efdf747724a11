package leat.solution.pitzer;

/**
 * The solids that the ions of a bottle can make, and how far each is from falling out.
 *
 * <pre>index = (ln ion product - ln K)/ln 10</pre>
 *
 * <p>Every solid whose ions are all there counts, not only the salts that were weighed. An index is
 * good to 0.1, 12 % of the strength of a salt of two ions, 8 % of potassium sulfate's.
 *
 * <p>Source: {@link Pitzer}, {@link Solid}. Check values: solution-mixed.csv.
 */
final class Brine {
  private static final double LN_10 = Math.log(10);

  private final Pitzer model;
  private final Solid[] solids;
  private final double[] lnConstant;

  /**
   * @param ions which are there, mol or mol/kg
   * @param celsius temperature, C; over 30 C as at 30, where all of them dissolve less or alike
   */
  Brine(double[] ions, double celsius) {
    double judged = Math.min(celsius, MixedBottle.WARMEST);
    model = new Pitzer(judged);
    int present = 0;
    for (int i = 0; i < Solid.size(); i++) {
      present += Solid.at(i).presentIn(ions) ? 1 : 0;
    }
    solids = new Solid[present];
    lnConstant = new double[present];
    int next = 0;
    for (int i = 0; i < Solid.size(); i++) {
      if (Solid.at(i).presentIn(ions)) {
        solids[next] = Solid.at(i);
        lnConstant[next++] = Solid.at(i).lnConstant(judged, model);
      }
    }
  }

  int size() {
    return solids.length;
  }

  Solid solid(int i) {
    return solids[i];
  }

  /** The index of one solid at these molalities, mol/kg. */
  double index(int i, double[] molality) {
    return (solids[i].lnProduct(molality, model.at(molality)) - lnConstant[i]) / LN_10;
  }

  /** The indices of all its solids at these molalities, mol/kg. */
  double[] indices(double[] molality) {
    Pitzer.Activities activities = model.at(molality);
    double[] indices = new double[solids.length];
    for (int i = 0; i < indices.length; i++) {
      indices[i] = (solids[i].lnProduct(molality, activities) - lnConstant[i]) / LN_10;
    }
    return indices;
  }

  /** The place of the largest index; -1 when there is none. */
  static int worst(double[] indices) {
    int worst = -1;
    for (int i = 0; i < indices.length; i++) {
      if (worst < 0 || indices[i] > indices[worst]) {
        worst = i;
      }
    }
    return worst;
  }

  /** The largest index; null when there is no solid. */
  Double worstIndex(double[] molality) {
    double[] indices = indices(molality);
    int worst = worst(indices);
    return worst < 0 ? null : Double.valueOf(indices[worst]);
  }
}
