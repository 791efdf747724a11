package leat.plan;

/**
 * Which commands ask for which key, as measured: {@code ReadByTest} runs every command over plans
 * and examples, and writes this table with {@code -Dleat.docs=write}. A key that stands not here is
 * accepted, because a later command will read it, and shown in no manual.
 */
final class ReadBy {
  private static final String TABLE =
      """
      currency: dose duty check sweep
      units: head pump tank wind parts level ec dose stock topup acid crops oxygen clean duty check sweep
      site.time_zone: duty check sweep
      site.altitude: oxygen
      site.terrain: wind check sweep
      site.height_above_ground: wind check sweep
      site.wind.speed: wind check sweep
      site.wind.is: wind check sweep
      site.shelter: wind check sweep
      site.gust_factor: wind check sweep
      site.air_density: wind check sweep
      tank.shape: tank wind parts level dose stock topup acid clean check sweep
      tank.bottom: tank wind parts level dose stock topup acid clean check sweep
      tank.top: tank wind parts level dose stock topup acid clean check sweep
      tank.diameter: tank parts level dose stock topup acid clean check sweep
      tank.length: tank level dose stock topup acid clean check sweep
      tank.height: tank wind parts level dose stock topup acid clean check sweep
      tank.corner: tank wind parts level dose stock topup acid clean check sweep
      tank.corner_top: tank wind parts level dose stock topup acid clean check sweep
      tank.floor_rise: tank level dose stock topup acid clean check sweep
      tank.floor_flat: tank level dose stock topup acid clean check sweep
      tank.sections: tank level dose stock topup acid clean check sweep
      tank.table: tank level dose stock topup acid clean check sweep
      tank.between: tank level dose stock topup acid clean check sweep
      tank.bodies[].area: tank level dose stock topup acid clean check sweep
      tank.bodies[].from: tank level dose stock topup acid clean check sweep
      tank.bodies[].to: tank level dose stock topup acid clean check sweep
      tank.holds: level check sweep
      tank.holds_full: level check sweep
      tank.full: pump tank wind parts level dose stock topup acid clean duty check sweep
      tank.low: head pump tank wind level duty check sweep
      tank.intake: pump level clean check sweep
      tank.rim_overflow: tank check sweep
      tank.wall.thickness: wind check sweep
      tank.warmest: check sweep
      tank.mass: wind parts check sweep
      tank.foot: wind parts check sweep
      tank.stand: wind parts check sweep
      tank.ground: wind check sweep
      tank.friction: wind check sweep
      tank.rain_area: tank topup check sweep
      tank.drain.bore: tank
      tank.drain.height: tank sweep
      tank.drain.length: tank
      tank.drain.drop: tank
      sender.steps: level topup check sweep
      sender.edges: level topup check sweep
      sender.ladder.pull_in: sweep
      sender.below: level topup check sweep
      sender.hysteresis: level topup check sweep
      sender.hysteresis_volume: level topup check sweep
      sender.edge_error: level topup check sweep
      sender.tolerance: level topup check sweep
      sender.reading: level topup check sweep
      sender.lead: level topup check sweep
      sender.open_above: level topup check sweep
      sender.short_below: level topup check sweep
      sender.divider.supply: level check sweep
      sender.divider.resistor: level check sweep
      sender.divider.sender_side: level check sweep
      sender.divider.bits: level check sweep
      sender.divider.reference: level check sweep
      sender.divider.resistor_tolerance: level check sweep
      sender.divider.supply_tolerance: level
      sender.divider.reference_tolerance: level
      sender.divider.adc_error: level check sweep
      sender.divider.blind: level check sweep
      sender.divider.ratiometric: level check sweep
      pump.curve: head pump duty check sweep
      pump.shutoff_head: head pump duty check sweep
      pump.max_flow: head pump duty check sweep
      pump.derate: pump duty check sweep
      pump.speed: head pump duty check sweep
      pump.measured: pump duty check sweep
      pump.power: pump duty check sweep
      pump.power_factor: duty check sweep
      pump.supply.mains: duty check sweep
      pump.supply.dc: duty check sweep
      pump.supply.cable.length: duty check sweep
      pump.supply.cable.section: duty check sweep
      pump.check_valve: pump duty check sweep
      cap_sensor.wet: duty sweep
      cap_sensor.dry: duty sweep
      hold_up: pump level topup clean check sweep
      pipe.bore: head pump duty check sweep
      pipe.length: head pump duty check sweep
      pipe.material: head pump duty check sweep
      pipe.roughness: head pump duty check sweep
      pipe.k: head pump duty check sweep
      pipe.fittings: head pump duty check sweep
      pipe.valve: head pump duty check sweep
      towers[].name: head pump wind parts duty check sweep
      towers[].count: head pump wind parts duty check sweep
      towers[].riser.bore: head pump parts duty check sweep
      towers[].riser.length: head pump parts duty check sweep
      towers[].riser.material: head pump duty check sweep
      towers[].riser.roughness: head pump duty check sweep
      towers[].riser.k: head pump duty check sweep
      towers[].riser.fittings: head pump duty check sweep
      towers[].riser.valve: head pump duty check sweep
      towers[].outlet: head pump duty check sweep
      towers[].wanted: pump parts check sweep
      towers[].base.height: wind parts check sweep
      towers[].modules[].name: head pump parts duty check sweep
      towers[].modules[].count: pump wind parts duty check sweep
      towers[].modules[].height: pump wind parts duty check sweep
      towers[].modules[].overlap: pump wind parts duty check sweep
      towers[].modules[].diameter: pump wind parts duty check sweep
      towers[].modules[].wall: pump wind parts duty check sweep
      towers[].modules[].pots: wind parts check sweep
      towers[].modules[].pot_at: parts check sweep
      towers[].modules[].pot: parts check sweep
      towers[].modules[].turn: parts check sweep
      towers[].modules[].mass: wind parts check sweep
      towers[].modules[].print_time: parts
      towers[].cap.mass: pump wind parts check sweep
      towers[].cap.height: wind parts check sweep
      towers[].cap.spreader: check sweep
      towers[].cap.gap: check sweep
      towers[].cap.plate: check sweep
      towers[].cap.clearance: pump check sweep
      towers[].cap.grip: pump check sweep
      towers[].cap.print_time: parts
      towers[].guys.lines: wind check sweep
      towers[].guys.ring: wind check sweep
      towers[].guys.run: wind check sweep
      towers[].guys.anchor: wind check sweep
      towers[].guys.breaking: wind check sweep
      towers[].grown.mass: wind parts check sweep
      towers[].grown.width: wind check sweep
      towers[].tie: wind check sweep
      towers[].material: parts
      towers[].foot_radius: wind check sweep
      towers[].fastened: wind check sweep
      strainer.aperture: check sweep
      strainer.wire: check sweep
      strainer.diameter: check sweep
      strainer.clogged: check sweep
      strainer.freeboard: check sweep
      timing[].run: duty check sweep
      timing[].rest: duty check sweep
      timing[].from: duty check sweep
      timing[].to: duty check sweep
      timing[].months: duty check sweep
      timing[].days: duty check sweep
      wetting: duty check sweep
      dry_limit.day: duty check sweep
      dry_limit.night: duty check sweep
      dry_limit.alarm: duty
      controller.power: duty check sweep
      controller.relay.rated: duty check sweep
      controller.relay.coil: duty check sweep
      controller.relay.coil_when: duty check sweep
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
      tariff.price: parts duty check sweep
      tariff.standing: duty check sweep
      tariff.bands[].from: duty check sweep
      tariff.bands[].to: duty check sweep
      tariff.bands[].months: duty check sweep
      tariff.bands[].days: duty check sweep
      tariff.bands[].price: duty check sweep
      water.ec: dose stock topup check sweep
      water.alkalinity: ec dose stock topup acid check sweep
      water.ph: topup acid check sweep
      water.nitrate: ec dose stock
      water.phosphorus: ec dose stock
      water.potassium: ec dose stock
      water.calcium: ec dose stock
      water.magnesium: ec dose stock
      water.sulfate: ec dose stock
      water.sodium: ec dose stock check sweep
      water.chloride: ec dose stock check sweep
      water.temperature: topup acid check sweep
      rain.ec: topup
      feed.parts[].name: dose stock topup
      feed.parts[].rate: dose stock topup
      feed.rate_ec: dose stock topup
      feed.acid.name: acid check sweep
      feed.stock.bottle: stock
      feed.stock.makes: stock topup
      feed.stock.coldest: stock
      feed.stock.grams: stock check sweep
      feed.salts[].name: ec dose topup
      feed.salts[].elements: ec dose topup sweep
      feed.salts[].price: ec dose topup
      meters.ec.slope: ec dose topup check sweep
      meters.ec.checked: check
      meters.ec.compensates: ec dose topup
      meters.ec.scale: ec dose topup sweep
      meters.ph.offset: check sweep
      meters.ph.checked: check
      target.ec: dose topup check sweep
      target.ec_low: sweep
      target.ec_high: dose topup sweep
      target.ph: stock topup acid check sweep
      target.ph_low: sweep
      target.ph_high: sweep
      thirst: stock check sweep
      drinks: stock check sweep
      crops[].name: dose topup crops check sweep
      crops[].tower: parts sweep
      crops[].pots: parts stock check sweep
      crops[].sow: sweep
      crops[].until: sweep
      crops[].water: stock check sweep
      crops[].ec_low: dose topup crops check sweep
      crops[].ec_high: dose topup crops check sweep
      crops[].ph_low: dose topup crops check sweep
      crops[].ph_high: dose topup crops check sweep
      season.from: stock duty check sweep
      season.to: stock duty check sweep
      season.change.every: stock check sweep
      season.change.or_added: check sweep
      season.away[].from: sweep
      season.away[].to: sweep
      season.catch: topup
      prices.filament: parts
      prices.filaments: parts
      prices.spool: parts
      prices.pump: parts
      prices.tank: parts
      prices.sender: parts
      prices.controller: parts
      prices.other: parts
      printer.power: parts
      printer.count: parts
      printer.jobs: parts
      printer.changeover: parts
      printer.waste: parts
      clean.with: clean
      clean.strength: clean
      clean.aim: clean
      clean.contact: clean
      limits: parts check sweep
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
