package leat.plan;

/**
 * Which commands ask for which key, as measured: {@code ReadByTest} runs every command over plans
 * and examples, and writes this table with {@code -Dleat.docs=write}. A key that stands not here is
 * accepted, because a later command will read it, and shown in no manual.
 */
final class ReadBy {
  private static final String TABLE =
      """
      name: sow season
      currency: dose duty season check
      site.time_zone: duty season check
      site.latitude: sow season check
      site.altitude: oxygen season check
      site.weather: sow season check
      site.weather_columns: sow season check
      site.months[].tmin: season check
      site.months[].tmax: season check
      site.months[].rain: season check
      site.months[].rain_days: season check
      site.exposure: season check
      site.coast: season check
      site.wind_height: season check
      site.light.transmission: season
      site.light.shade: season
      tank.shape: tank level dose stock topup acid clean season check
      tank.bottom: tank level dose stock topup acid clean season check
      tank.top: tank level dose stock topup acid clean season check
      tank.diameter: tank level dose stock topup acid clean season check
      tank.length: tank level dose stock topup acid clean season check
      tank.height: tank level dose stock topup acid clean season check
      tank.corner: tank level dose stock topup acid clean season check
      tank.corner_top: tank level dose stock topup acid clean season check
      tank.table: tank level dose stock topup acid clean season check
      tank.between: tank level dose stock topup acid clean season check
      tank.bodies[].area: tank level dose stock topup acid clean season check
      tank.bodies[].from: tank level dose stock topup acid clean season check
      tank.bodies[].to: tank level dose stock topup acid clean season check
      tank.holds: level check
      tank.holds_full: level check
      tank.full: pump tank level dose stock topup acid season check
      tank.low: head pump tank level clean duty season check
      tank.intake: pump level clean season check
      tank.rim_overflow: season check
      tank.warmest: check
      tank.rain_area: tank topup season check
      tank.rain_share: season check
      tank.open_area: season check
      tank.heel: season check
      tank.drain.bore: tank
      tank.drain.height: tank
      tank.drain.length: tank
      tank.drain.drop: tank
      sender.steps: level topup check
      sender.edges: level topup check
      sender.below: level topup check
      sender.hysteresis: level topup check
      sender.hysteresis_volume: level topup check
      sender.edge_error: level topup check
      sender.tolerance: level topup check
      sender.reading: level topup check
      sender.lead: level topup check
      sender.open_above: level topup check
      sender.short_below: level topup check
      sender.divider.supply: level check
      sender.divider.resistor: level check
      sender.divider.sender_side: level check
      sender.divider.bits: level check
      sender.divider.reference: level check
      sender.divider.resistor_tolerance: level check
      sender.divider.supply_tolerance: level
      sender.divider.reference_tolerance: level
      sender.divider.adc_error: level check
      sender.divider.blind: level check
      sender.divider.ratiometric: level check
      pump.curve: head pump duty check
      pump.shutoff_head: head pump duty check
      pump.max_flow: head pump duty check
      pump.derate: head pump duty check
      pump.speed: head pump duty check
      pump.measured: head pump duty check
      pump.power: pump duty season check
      pump.power_factor: duty check
      pump.supply.mains: duty check
      pump.supply.dc: duty check
      pump.supply.cable.length: duty check
      pump.supply.cable.section: duty check
      pump.check_valve: pump duty check
      hold_up: pump level topup clean check
      pipe.bore: head pump duty check
      pipe.length: head pump duty check
      pipe.material: head pump duty check
      pipe.roughness: head pump duty check
      pipe.k: head pump duty check
      pipe.fittings: head pump duty check
      pipe.valve: head pump duty check
      towers[].name: head pump duty sow season check
      towers[].count: head pump duty sow season check
      towers[].riser.bore: head pump duty check
      towers[].riser.length: head pump duty check
      towers[].riser.material: head pump duty check
      towers[].riser.roughness: head pump duty check
      towers[].riser.k: head pump duty check
      towers[].riser.fittings: head pump duty check
      towers[].riser.valve: head pump duty check
      towers[].outlet: head pump duty check
      towers[].wanted: pump check
      towers[].base.height: check
      towers[].modules[].count: pump duty sow season check
      towers[].modules[].height: pump duty check
      towers[].modules[].overlap: pump duty check
      towers[].modules[].diameter: pump duty check
      towers[].modules[].wall: pump duty check
      towers[].modules[].pots: sow season
      towers[].cap.mass: pump check
      towers[].cap.spreader: check
      towers[].cap.gap: check
      towers[].cap.plate: check
      towers[].cap.clearance: pump check
      towers[].cap.grip: pump check
      strainer.aperture: check
      strainer.wire: check
      strainer.diameter: check
      strainer.clogged: check
      strainer.freeboard: check
      timing[].run: duty season check
      timing[].rest: duty season check
      timing[].from: duty season check
      timing[].to: duty season check
      timing[].months: duty season check
      timing[].days: duty season check
      wetting: duty check
      dry_limit.day: duty check
      dry_limit.night: duty check
      dry_limit.alarm: duty
      controller.power: duty season check
      controller.relay.rated: duty check
      controller.relay.coil: duty season check
      controller.relay.coil_when: duty season check
      controller.relay.cycles: duty check
      controller.relay.inrush: duty check
      backup.hours: duty check
      backup.battery: duty check
      backup.capacity: duty check
      backup.chemistry: duty check
      backup.depth: duty check
      backup.reserve: duty check
      backup.inverter: duty check
      backup.idle: duty check
      tariff.price: duty season check
      tariff.standing: duty season check
      tariff.bands[].from: duty season check
      tariff.bands[].to: duty season check
      tariff.bands[].months: duty season check
      tariff.bands[].days: duty season check
      tariff.bands[].price: duty season check
      water.ec: dose topup season check
      water.alkalinity: ec dose stock acid season check
      water.ph: acid season check
      water.nitrate: ec dose
      water.phosphorus: ec dose
      water.potassium: ec dose
      water.calcium: ec dose stock
      water.magnesium: ec dose stock
      water.sulfate: ec dose stock
      water.sodium: ec dose check
      water.chloride: ec dose check
      water.temperature: acid season check
      water.price: season
      rain.ec: topup season check
      feed.parts[].name: dose stock topup
      feed.parts[].rate: dose stock topup season check
      feed.parts[].price: season
      feed.rate_ec: dose topup season check
      feed.acid.name: acid season check
      feed.acid.price: season
      feed.stock.bottle: stock
      feed.stock.makes: stock
      feed.stock.coldest: stock
      feed.stock.grams: stock check
      feed.salts[].name: ec dose
      feed.salts[].elements: ec dose
      feed.salts[].price: ec dose
      meters.ec.slope: ec check
      meters.ec.checked: check
      meters.ec.compensates: ec
      meters.ec.scale: ec
      meters.ph.offset: check
      meters.ph.checked: check
      target.ec: dose topup season check
      target.ec_low: season check
      target.ec_high: season check
      target.ph: stock acid season check
      thirst: stock season check
      drinks: stock season check
      crops[].name: crops sow season check
      crops[].tower: sow season check
      crops[].pots: stock sow season check
      crops[].sow: sow season check
      crops[].until: sow season check
      crops[].every: sow season check
      crops[].nursery: sow season check
      crops[].growing: sow season check
      crops[].germination: sow season check
      crops[].loss: sow season check
      crops[].harvest: season check
      crops[].water: stock season check
      crops[].area: season check
      crops[].initial: season check
      crops[].development: season check
      crops[].late: season check
      crops[].start_share: season check
      crops[].end_share: season check
      crops[].turnaround: sow season check
      crops[].sizes: sow season check
      crops[].earliest_transplant: sow season check
      crops[].latest_harvest: sow season check
      crops[].warmth: sow
      crops[].ec_low: crops check
      crops[].ec_high: crops check
      crops[].ph_low: crops check
      crops[].ph_high: crops check
      crops[].seed_price: season check
      crops[].shop_price: season check
      season.from: stock duty sow season check
      season.to: stock duty season check
      season.refill: season check
      season.start.volume: season check
      season.start.ec: season check
      season.uptake: season check
      season.dose_below: season check
      season.dilute_above: season check
      season.change.every: stock season check
      season.change.or_added: season check
      season.catch: topup season
      lamp.power: season
      lamp.efficacy: season
      lamp.hours: season
      lamp.area: season
      prices.pump: season
      prices.tank: season
      prices.sender: season
      prices.controller: season
      prices.other: season
      clean.with: clean
      clean.strength: clean
      clean.aim: clean
      clean.contact: clean
      limits: check
      """;

  private ReadBy() {}

  /** The commands that read a key, separated by spaces; empty for none. */
  static String of(String path) {
    int at = TABLE.startsWith(path + ": ") ? 0 : TABLE.indexOf("\n" + path + ": ") + 1;
    if (at == 0 && !TABLE.startsWith(path + ": ")) {
      return "";
    }
    return TABLE.substring(at + path.length() + 2, TABLE.indexOf('\n', at));
  }
}
