package leat.season;

/** What a season should be like: a question of its sums. */
public interface Goal {
  /** So many evenings in a row outside the band are no more than weather (common practice). */
  int EVENINGS_OUTSIDE = 3;

  /** Whether a season is so. */
  boolean met(Totals totals);

  /** It never runs dry, but for away. */
  Goal NEVER_DRY =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.counts().dryOutsideAway() == 0;
        }
      };

  /** It never runs dry because of away. */
  Goal AWAY_CARRIED =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.counts().awayDryDays() == 0;
        }
      };

  /** Never long above the band. */
  Goal EC_NOT_HIGH =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.evenings().above().days() <= EVENINGS_OUTSIDE;
        }
      };

  /** Never long under the band. */
  Goal EC_NOT_LOW =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.evenings().below().days() <= EVENINGS_OUTSIDE;
        }
      };

  /** Never long outside the band. */
  Goal EC_IN_BAND =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.evenings().outside().days() <= EVENINGS_OUTSIDE;
        }
      };

  /** It never runs over. */
  Goal NO_OVERFLOW =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.counts().overflowDays() == 0;
        }
      };

  /** The tap water's salt stays under the share at which a change is advised. */
  Goal TAP_SALT_LOW =
      new Goal() {
        @Override
        public boolean met(Totals totals) {
          return totals.tapSalt().most() <= Totals.TapSalt.ADVISE_CHANGE;
        }
      };
}
