package leat.season;

/**
 * The tank's day, in place: rain, what runs over, thirst, then the evening's service. {@link
 * Season} runs it over a season without a record a day. Letters: V volume, S salt, X overflow, D
 * thirst, E what is drunk of it, K salt that goes with it, Q drained, W water, M concentrate.
 *
 * <p>Source: mass balance of water and salt; EC adds by volume, good to a few per cent at 0.5 to 3
 * mS/cm (common practice). Check values: season-balance-daily.csv, season-rain.csv.
 */
final class Machine {
  /** Marks meet exact volumes; a day is dry or over by more than this, L. */
  static final double SPARE = 1e-9;

  private final double full;
  private final double low;
  private final double air;
  private final double rim;
  private final double heel;
  private final double waterEc;
  private final double target;
  private final double perMl;
  private final double catchL;
  private final double rainEc;
  private final double uptake;
  private final Upkeep upkeep;
  private final Refill.Kind refill;
  private final boolean serves;

  int day;
  double volume;
  double salt;
  int filled;
  int changed;
  double added;
  boolean owed;

  double rain;
  double over;
  double overSalt;
  double use;
  double shortfall;
  double drunkSalt;
  double least;
  double drained;
  double drainedSalt;
  double water;
  double concentrate;
  boolean dry;
  boolean awayDry;
  Service service;

  Machine(TankPlan plan, TankState at) {
    full = plan.marks().fullL();
    low = plan.marks().lowL();
    air = plan.marks().airL();
    rim = plan.marks().rimL();
    heel = plan.marks().heelL();
    waterEc = plan.feeding().waterEcMsCm();
    target = plan.feeding().targetMsCm();
    perMl = plan.feeding().saltPerMl();
    catchL = plan.rain().areaM2() * plan.rain().share();
    rainEc = plan.rain().ecMsCm();
    uptake = plan.uptakeMsCm();
    upkeep = plan.upkeep();
    refill = upkeep.refill().kind();
    serves = upkeep.serves();
    day = at.day();
    volume = at.volumeL();
    salt = at.saltMsCmL();
    filled = at.filledDay();
    changed = at.changedDay();
    added = at.addedL();
    owed = at.owed();
  }

  /** One day; thirst in L, rain in mm. */
  void day(double plants, double open, double rainMm, Attendance who) {
    drained = 0;
    drainedSalt = 0;
    water = 0;
    concentrate = 0;
    service = Service.NONE;
    rain(rainMm);
    thirst(plants, open);
    if (who.away()) {
      owed = true;
    } else if (!serves) {
      owed = false;
    }
    awayDry = dry && owed;
    if (who == Attendance.USUAL) {
      service();
    } else if (who == Attendance.FILLS || who == Attendance.NEIGHBOUR) {
      service = Service.TOP_UP;
      topUp();
    }
    if (service != Service.NONE) {
      owed = false;
    }
    day++;
  }

  private void rain(double mm) {
    rain = mm * catchL;
    volume += rain;
    salt += rain * rainEc;
    over = 0;
    overSalt = 0;
    if (volume > rim) {
      over = volume - rim;
      overSalt = salt * over / volume;
      volume -= over;
      salt -= overSalt;
    }
  }

  private void thirst(double plants, double open) {
    double asked = plants + open;
    use = Math.min(asked, Math.max(0, volume - air));
    shortfall = asked - use;
    drunkSalt = asked > 0 ? Math.min(uptake * plants * use / asked, salt) : 0;
    volume -= use;
    salt -= drunkSalt;
    least = volume;
    dry = shortfall > SPARE;
  }

  private void service() {
    if (changeDue()) {
      service = Service.CHANGE;
      drain(Math.max(0, volume - heel));
      fill();
      changed = day;
      filled = day;
      added = 0;
    } else if (topUpDue()) {
      topUp();
    } else if (volume > 0 && salt / volume < upkeep.doseBelowMsCm()) {
      service = Service.DOSE;
      dose();
    }
  }

  private boolean changeDue() {
    return upkeep.changeDays() > 0 && day - changed >= upkeep.changeDays()
        || added >= upkeep.changeAdded() * full - SPARE;
  }

  private boolean topUpDue() {
    return refill == Refill.Kind.AT_LOW && volume <= low + SPARE
        || refill == Refill.Kind.EVERY && day - filled >= upkeep.refill().days();
  }

  private void topUp() {
    double gap = Math.max(0, full - volume);
    if (tooStrong(gap)) {
      service = Service.DILUTE;
      double over = salt + waterEc * gap - target * (volume + gap);
      drain(Math.min(over / (salt / volume - waterEc), Math.max(0, volume - heel)));
      pour(gap + drained, 0);
    } else {
      service = Service.TOP_UP;
      fill();
    }
    added += water;
    filled = day;
  }

  private boolean tooStrong(double gap) {
    return upkeep.diluteAboveMsCm() < Upkeep.NEVER
        && volume > 0
        && waterEc < target
        && target < salt / volume
        && (salt + waterEc * gap) / (volume + gap) > upkeep.diluteAboveMsCm();
  }

  private void drain(double litres) {
    if (litres > 0) {
      drained = litres;
      drainedSalt = salt * litres / volume;
      volume -= drained;
      salt -= drainedSalt;
    }
  }

  private void fill() {
    double gap = full - volume;
    if (gap <= 0) {
      dose();
      return;
    }
    double ml = (target * full - salt - waterEc * gap) / (perMl - Feeding.LITRES * waterEc);
    double litres = gap - Feeding.LITRES * ml;
    if (ml < 0) {
      pour(gap, 0);
    } else if (litres < 0) {
      dose();
    } else {
      pour(litres, ml);
    }
  }

  private void dose() {
    pour(0, Math.max(0, (target * volume - salt) / (perMl - Feeding.LITRES * target)));
  }

  private void pour(double litres, double ml) {
    water = litres;
    concentrate = ml;
    volume += litres + Feeding.LITRES * ml;
    salt += waterEc * litres + perMl * ml;
  }

  /** Salt that came in with the day's rain, water and concentrate, mS/cm L. */
  double saltIn() {
    return rain * rainEc + waterEc * water + perMl * concentrate;
  }

  /** Empties the tank and fills it for the first time to the full mark at the target. */
  void firstFill() {
    volume = 0;
    salt = 0;
    fill();
  }

  TankState state() {
    return new TankState(day, volume, salt, filled, changed, added, owed);
  }

  /** The day that has just passed. */
  DayRow row() {
    return new DayRow(
        day - 1,
        rain,
        over,
        use,
        shortfall,
        least,
        drained,
        water,
        concentrate,
        volume,
        salt,
        over > SPARE,
        dry,
        awayDry,
        service);
  }
}
