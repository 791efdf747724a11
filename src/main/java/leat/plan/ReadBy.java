package leat.plan;

/**
 * Which commands ask for which key, as measured: {@code ReadByTest} runs every command over plans
 * and examples, and writes this table with {@code -Dleat.docs=write}. A key that stands not here is
 * accepted: it is for the plan's reader alone.
 */
final class ReadBy {
  private static final String TABLE =
      """
      name: sow season plan
      currency: dose duty season check sweep
      units: head pump tank wind parts level log ec dose stock topup acid crops oxygen clean duty sow season check sweep plan
      site.time_zone: log topup duty season check sweep
      site.latitude: stock sow season check sweep
      site.altitude: stock oxygen season check sweep
      site.terrain: wind check sweep
      site.height_above_ground: wind check sweep
      site.wind.speed: wind check sweep
      site.wind.is: wind check sweep
      site.shelter: wind check sweep
      site.gust_factor: wind check sweep
      site.air_density: wind check sweep
      site.weather: log stock sow season check sweep
      site.weather_columns: stock sow season check sweep
      site.months[].tmin: stock season check sweep
      site.months[].tmax: stock season check sweep
      site.months[].rain: stock season check sweep
      site.months[].rain_days: stock season check sweep
      site.exposure: log stock topup season check sweep
      site.coast: stock season check sweep
      site.wind_height: stock season check sweep
      site.light.transmission: season
      site.light.shade: season
      tank.shape: tank wind parts level log dose stock topup acid clean season check sweep plan
      tank.bottom: tank wind parts level log dose stock topup acid clean season check sweep plan
      tank.top: tank wind parts level log dose stock topup acid clean season check sweep plan
      tank.diameter: tank parts level log dose stock topup acid clean season check sweep plan
      tank.length: tank level log dose stock topup acid clean season check sweep plan
      tank.height: tank wind parts level log dose stock topup acid clean season check sweep plan
      tank.corner: tank wind parts level log dose stock topup acid clean season check sweep plan
      tank.corner_top: tank wind parts level log dose stock topup acid clean season check sweep plan
      tank.floor_rise: tank level log dose stock topup acid clean season check sweep plan
      tank.floor_flat: tank level log dose stock topup acid clean season check sweep plan
      tank.sections: tank level log dose stock topup acid clean season check sweep plan
      tank.table: tank level log dose stock topup acid clean season check sweep plan
      tank.between: tank level log dose stock topup acid clean season check sweep plan
      tank.bodies[].area: tank level log dose stock topup acid clean season check sweep plan
      tank.bodies[].from: tank level log dose stock topup acid clean season check sweep plan
      tank.bodies[].to: tank level log dose stock topup acid clean season check sweep plan
      tank.holds: level log check sweep plan
      tank.holds_full: level log check sweep plan
      tank.full: pump tank wind parts level log dose stock topup acid clean duty season check sweep plan
      tank.low: head pump tank wind level log stock topup duty season check sweep plan
      tank.intake: pump level log stock topup clean season check sweep plan
      tank.rim_overflow: tank log stock topup season check sweep plan
      tank.wall.thickness: wind check sweep
      tank.warmest: check sweep
      tank.mass: wind parts check sweep
      tank.foot: wind parts check sweep
      tank.stand: wind parts check sweep
      tank.ground: wind check sweep
      tank.friction: wind check sweep
      tank.rain_area: tank log stock topup season check sweep
      tank.rain_share: log stock topup season check sweep
      tank.open_area: log stock season check sweep
      tank.heel: log stock season check sweep
      tank.drain.bore: tank
      tank.drain.height: tank
      tank.drain.length: tank
      tank.drain.drop: tank
      sender.steps: level log topup season check sweep plan
      sender.edges: level log topup season check sweep plan
      sender.ladder.pull_in: check sweep
      sender.below: level log topup season check sweep plan
      sender.hysteresis: level log topup season check sweep plan
      sender.hysteresis_volume: level log topup season check sweep plan
      sender.edge_error: level log topup check sweep plan
      sender.tolerance: level log topup check sweep plan
      sender.reading: level log topup check sweep plan
      sender.lead: level log topup check sweep plan
      sender.open_above: level log topup check sweep plan
      sender.short_below: level log topup check sweep plan
      sender.divider.supply: level check sweep plan
      sender.divider.resistor: level check sweep plan
      sender.divider.sender_side: level check sweep plan
      sender.divider.bits: level check sweep plan
      sender.divider.reference: level check sweep plan
      sender.divider.resistor_tolerance: level check sweep plan
      sender.divider.supply_tolerance: level
      sender.divider.reference_tolerance: level
      sender.divider.adc_error: level check sweep plan
      sender.divider.blind: level check sweep
      sender.divider.ratiometric: level check sweep plan
      pump.curve: head pump duty check sweep plan
      pump.shutoff_head: head pump duty check sweep plan
      pump.max_flow: head pump duty check sweep plan
      pump.derate: pump duty check sweep plan
      pump.speed: head pump duty check sweep plan
      pump.measured: pump duty check sweep plan
      pump.power: pump duty season check sweep
      pump.power_factor: duty check sweep
      pump.supply.mains: duty check sweep
      pump.supply.dc: level duty check sweep plan
      pump.supply.cable.length: duty check sweep
      pump.supply.cable.section: duty check sweep
      pump.check_valve: pump duty check sweep plan
      cap_sensor.wet: log topup duty plan
      cap_sensor.dry: log topup duty plan
      hold_up: pump level log stock topup clean season check sweep
      pipe.bore: head pump duty check sweep plan
      pipe.length: head pump duty check sweep plan
      pipe.material: head pump duty check sweep plan
      pipe.roughness: head pump duty check sweep plan
      pipe.ridges: head pump duty check sweep plan
      pipe.k: head pump duty check sweep plan
      pipe.fittings: head pump duty check sweep plan
      pipe.valve: head pump duty check sweep plan
      towers[].name: head pump wind parts duty sow season check sweep plan
      towers[].count: head pump wind parts log stock duty sow season check sweep plan
      towers[].riser.bore: head pump parts duty check sweep plan
      towers[].riser.length: head pump parts duty check sweep plan
      towers[].riser.material: head pump duty check sweep plan
      towers[].riser.roughness: head pump duty check sweep plan
      towers[].riser.ridges: head pump duty check sweep plan
      towers[].riser.k: head pump duty check sweep plan
      towers[].riser.fittings: head pump duty check sweep plan
      towers[].riser.valve: head pump duty check sweep plan
      towers[].outlet: head pump duty check sweep plan
      towers[].wanted: pump parts duty check sweep plan
      towers[].base.height: wind parts check sweep
      towers[].modules[].name: head pump parts duty check sweep plan
      towers[].modules[].count: pump wind parts duty sow season check sweep
      towers[].modules[].height: pump wind parts duty check sweep
      towers[].modules[].overlap: pump wind parts duty check sweep
      towers[].modules[].diameter: pump wind parts duty check sweep
      towers[].modules[].wall: pump wind parts duty check sweep
      towers[].modules[].pots: wind parts sow season check sweep
      towers[].modules[].pot_at: parts check sweep
      towers[].modules[].pot: parts check sweep
      towers[].modules[].turn: parts check sweep
      towers[].modules[].mass: wind parts season check sweep
      towers[].modules[].print_time: parts sweep
      towers[].cap.mass: pump wind parts check sweep
      towers[].cap.height: wind parts check sweep
      towers[].cap.spreader: check sweep
      towers[].cap.gap: check sweep
      towers[].cap.plate: check sweep
      towers[].cap.clearance: pump check sweep
      towers[].cap.grip: pump check sweep
      towers[].cap.print_time: parts sweep
      towers[].guys.lines: wind check sweep
      towers[].guys.ring: wind check sweep
      towers[].guys.run: wind check sweep
      towers[].guys.anchor: wind check sweep
      towers[].guys.breaking: wind check sweep
      towers[].grown.mass: wind parts check sweep
      towers[].grown.width: wind check sweep
      towers[].tie: wind check sweep
      towers[].material: parts sweep
      towers[].foot_radius: wind check sweep
      towers[].fastened: wind check sweep
      strainer.aperture: check sweep
      strainer.wire: check sweep
      strainer.diameter: check sweep
      strainer.clogged: check sweep
      strainer.freeboard: check sweep
      timing[].run: log topup duty season check sweep plan
      timing[].rest: log topup duty season check sweep plan
      timing[].from: log topup duty season check sweep plan
      timing[].to: log topup duty season check sweep plan
      timing[].months: duty season check sweep plan
      timing[].days: duty season check sweep plan
      wetting: duty check sweep
      dry_limit.day: duty season check sweep plan
      dry_limit.night: duty season check sweep plan
      dry_limit.alarm: log topup duty season plan
      controller.power: duty season check sweep
      controller.relay.rated: duty check sweep
      controller.relay.coil: duty season check sweep
      controller.relay.coil_when: duty season check sweep
      controller.relay.cycles: duty check sweep
      controller.relay.inrush: duty check sweep
      backup.hours: duty check sweep
      backup.battery: duty check sweep
      backup.capacity: duty check sweep
      backup.chemistry: duty check sweep
      backup.depth: duty check sweep
      backup.reserve: duty check sweep
      backup.inverter: duty check sweep
      backup.idle: duty check sweep
      tariff.price: parts duty season check sweep
      tariff.standing: duty season check sweep
      tariff.bands[].from: duty season check sweep
      tariff.bands[].to: duty season check sweep
      tariff.bands[].months: duty season check sweep
      tariff.bands[].days: duty season check sweep
      tariff.bands[].price: duty season check sweep
      water.ec: log dose stock topup season check sweep plan
      water.alkalinity: ec dose stock topup acid season check sweep
      water.ph: topup acid season check sweep
      water.nitrate: ec dose stock
      water.phosphorus: ec dose stock
      water.potassium: ec dose stock
      water.calcium: ec dose stock
      water.magnesium: ec dose stock
      water.sulfate: ec dose stock
      water.sodium: ec dose stock check sweep
      water.chloride: ec dose stock check sweep
      water.temperature: topup acid season check sweep
      water.price: season
      rain.ec: log stock topup season check sweep
      feed.parts[].name: dose stock topup plan
      feed.parts[].rate: log dose stock topup season check sweep plan
      feed.parts[].label: dose stock
      feed.parts[].density: dose stock
      feed.parts[].price: season
      feed.rate_ec: log ec dose stock topup acid season check sweep plan
      feed.acid.name: topup acid season check sweep
      feed.acid.price: season
      feed.stock.bottle: stock
      feed.stock.makes: stock topup
      feed.stock.coldest: stock
      feed.stock.grams: ec stock acid check sweep
      feed.salts[].name: ec dose topup
      feed.salts[].elements: ec dose topup
      feed.salts[].price: ec dose topup
      meters.ec.slope: ec dose topup check sweep plan
      meters.ec.checked: check plan
      meters.ec.compensates: ec dose topup
      meters.ec.scale: ec dose topup
      meters.ph.offset: check sweep plan
      meters.ph.checked: check plan
      target.ec: log dose stock topup season check sweep plan
      target.ec_low: log stock topup season check sweep plan
      target.ec_high: log dose stock topup season check sweep plan
      target.ph: stock topup acid season check sweep plan
      target.ph_low: plan
      target.ph_high: plan
      thirst: tank log stock season check sweep
      drinks: tank log stock season check sweep
      crops[].name: dose stock topup crops sow season check sweep
      crops[].tower: parts stock sow season check sweep
      crops[].pots: tank parts stock sow season check sweep
      crops[].sow: stock sow season check sweep
      crops[].until: stock sow season check sweep
      crops[].every: stock sow season check sweep
      crops[].nursery: stock sow season check sweep
      crops[].growing: stock sow season check sweep
      crops[].germination: stock sow season check sweep
      crops[].loss: stock sow season check sweep
      crops[].harvest: stock season check sweep
      crops[].water: tank stock season check sweep
      crops[].area: stock season check sweep
      crops[].initial: stock season check sweep
      crops[].development: stock season check sweep
      crops[].late: stock season check sweep
      crops[].start_share: stock season check sweep
      crops[].end_share: stock season check sweep
      crops[].turnaround: stock sow season check sweep
      crops[].sizes: stock sow season check sweep
      crops[].earliest_transplant: stock sow season check sweep
      crops[].latest_harvest: stock sow season check sweep
      crops[].warmth: sow
      crops[].ec_low: dose topup crops check sweep
      crops[].ec_high: dose topup crops check sweep
      crops[].ph_low: dose topup crops check sweep
      crops[].ph_high: dose topup crops check sweep
      crops[].seed_price: stock season check sweep
      crops[].shop_price: stock season check sweep
      season.from: log stock duty sow season check sweep plan
      season.to: log stock duty season check sweep plan
      season.refill: log stock season check sweep
      season.start.volume: log stock season check sweep
      season.start.ec: log stock season check sweep
      season.start.changed: log stock season check sweep
      season.uptake: log stock season check sweep plan
      season.dose_below: log stock season check sweep
      season.dilute_above: log stock season check sweep
      season.change.every: log stock season check sweep plan
      season.change.or_added: log stock season check sweep
      season.away[].from: stock season check sweep
      season.away[].to: stock season check sweep
      season.catch: topup season
      lamp.power: season
      lamp.efficacy: season
      lamp.lumens: season
      lamp.share: season
      lamp.hours: season
      lamp.area: season
      prices.filament: parts season sweep
      prices.filaments: parts season sweep
      prices.spool: parts sweep
      prices.tubes: head pump
      prices.pump: parts season sweep
      prices.tank: parts season sweep
      prices.sender: parts season sweep
      prices.controller: parts season sweep
      prices.other: parts season sweep
      printer.power: parts sweep
      printer.count: parts sweep
      printer.jobs: parts sweep
      printer.changeover: parts sweep
      printer.waste: parts sweep
      clean.with: clean
      clean.strength: clean
      clean.aim: clean
      clean.contact: clean
      limits: parts check sweep
      log.time: log topup
      log.reading: log topup
      log.reading_in: log topup
      log.ec: log topup
      log.temperature: log topup
      log.pump: log topup
      log.cap: log topup
      log.rain: log topup
      log.name: log topup
      log.value: log topup
      log.delimiter: log topup
      log.keeper: log topup
      log.thresholds.disorder: log topup
      log.thresholds.rest: log topup
      log.thresholds.clock_jump: log topup
      log.thresholds.gap: log topup
      log.thresholds.fault: log topup
      log.thresholds.refill_steps: log topup
      log.thresholds.refill_within: log topup
      log.thresholds.change_above: log topup
      log.thresholds.change_below: log topup
      log.thresholds.change_fall: log topup
      log.thresholds.change_refill: log topup
      log.thresholds.rain_join: log topup
      log.thresholds.rain_least: log topup
      log.thresholds.rain_ec: log topup
      log.thresholds.leak_factor: log topup
      log.thresholds.leak_steps: log topup
      log.thresholds.leak_join: log topup
      log.thresholds.dry: log topup
      log.thresholds.dry_intervals: log topup
      log.thresholds.stuck_steps: log topup
      log.thresholds.stuck_jump_steps: log topup
      log.thresholds.stuck_jump: log topup
      log.thresholds.wilt: log topup
      log.thresholds.use_days: log topup
      log.thresholds.use_least_days: log topup
      log.thresholds.weekday_days: log topup
      log.thresholds.day_from: log topup
      log.thresholds.day_to: log topup
      log.thresholds.night: log topup
      log.thresholds.ec_rows: log topup
      log.thresholds.silent: log topup
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
