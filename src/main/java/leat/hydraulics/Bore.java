package leat.hydraulics;

import java.util.OptionalDouble;

/**
 * A tube, pipe or barb that one can buy.
 *
 * <p>Source: sheet hydraulics-bores.md; each row names its own.
 *
 * @param family such as hose, pe, barb
 * @param name of the ware, metric or inch as it is sold
 * @param say how to ask for it
 * @param bore to compute with, m
 * @param least bore that such a tube may have, m; empty when not known
 * @param greatest bore that it may have, m; empty when not known
 * @param outside diameter, m; empty when it is sold by its inside
 * @param wall thickness, m; empty when it is sold by its inside
 * @param usual in shops (practice; no shop was asked); otherwise rare
 * @param known V seen in the public text named, C computed from it, M memory, P practice
 * @param source in words
 * @param note blank for none
 */
public record Bore(
    String family,
    String name,
    String say,
    double bore,
    OptionalDouble least,
    OptionalDouble greatest,
    OptionalDouble outside,
    OptionalDouble wall,
    boolean usual,
    String known,
    String source,
    String note) {

  /** The poor case: the least bore where it is known, else the one to compute with, m. */
  public double poorest() {
    return least.orElse(bore);
  }

  /** Whether its bore meets a wanted one, with {@link Bores#TO_SPARE}; m. */
  public boolean meets(double wanted) {
    return bore >= wanted - Bores.TO_SPARE;
  }
}
