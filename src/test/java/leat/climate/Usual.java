package leat.climate;

/** The usual stages of a crop, as a plan without any of its own has them. */
final class Usual {
  private Usual() {}

  static GrowthStages stages(int growingDays) {
    return GrowthStages.of(
        GrowthStages.usualInitial(growingDays),
        GrowthStages.usualDevelopment(growingDays),
        GrowthStages.USUAL_START);
  }
}
