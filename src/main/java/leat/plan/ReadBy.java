package leat.plan;

/**
 * Which commands ask for which key, as measured: {@code ReadByTest} runs every command over plans
 * and examples, and writes this table with {@code -Dleat.docs=write}. A key that stands not here is
 * accepted, because a later command will read it, and shown in no manual.
 */
final class ReadBy {
  private static final String TABLE =
      """
      currency: dose duty check
      units: head pump tank level ec dose stock topup acid crops oxygen clean duty check
      site.time_zone: duty check
      site.altitude: oxygen
      site.terrain: wind check
      site.height_above_ground: wind check
      site.wind.speed: wind check
      site.wind.is: wind check
      site.shelter: wind check
      site.gust_factor: wind check
      site.air_density: wind check
      tank.shape: tank wind parts level dose stock topup acid clean check
      tank.bottom: tank wind parts level dose stock topup acid clean check
      tank.top: tank wind parts level dose stock topup acid clean check
      tank.diameter: tank parts level dose stock topup acid clean check
      tank.length: tank level dose stock topup acid clean check
      tank.height: tank wind parts level dose stock topup acid clean check
      tank.corner: tank wind parts level dose stock topup acid clean check
      tank.corner_top: tank wind parts level dose stock topup acid clean check
      tank.table: tank level dose stock topup acid clean check
      tank.between: tank level dose stock topup acid clean check
      tank.bodies[].area: tank level dose stock topup acid clean check
      tank.bodies[].from: tank level dose stock topup acid clean check
      tank.bodies[].to: tank level dose stock topup acid clean check
      tank.holds: level check
      tank.holds_full: level check
      tank.full: pump tank wind parts level dose stock topup acid check
      tank.low: head pump tank wind level clean duty check
      tank.intake: pump level clean check
      tank.rim_overflow: check
      tank.wall.thickness: wind check
      tank.warmest: check
      tank.mass: wind parts check
      tank.foot: wind parts check
      tank.stand: wind parts check
      tank.ground: wind check
      tank.friction: wind check
      tank.rain_area: tank topup check
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
      pump.derate: pump duty check
      pump.speed: head pump duty check
      pump.measured: pump duty check
      pump.power: pump duty check
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
      towers[].name: head pump wind parts duty check
      towers[].count: head pump wind parts duty check
      towers[].riser.bore: head pump parts duty check
      towers[].riser.length: head pump parts duty check
      towers[].riser.material: head pump duty check
      towers[].riser.roughness: head pump duty check
      towers[].riser.k: head pump duty check
      towers[].riser.fittings: head pump duty check
      towers[].riser.valve: head pump duty check
      towers[].outlet: head pump duty check
      towers[].wanted: pump parts check
      towers[].base.height: wind parts check
      towers[].modules[].name: parts
      towers[].modules[].count: pump wind parts duty check
      towers[].modules[].height: pump wind parts duty check
      towers[].modules[].overlap: pump wind parts duty check
      towers[].modules[].diameter: pump wind parts duty check
      towers[].modules[].wall: pump wind parts duty check
      towers[].modules[].pots: wind parts check
      towers[].modules[].pot_at: parts check
      towers[].modules[].pot: parts check
      towers[].modules[].turn: parts check
      towers[].modules[].mass: wind parts check
      towers[].modules[].print_time: parts
      towers[].cap.mass: pump wind parts check
      towers[].cap.height: wind parts check
      towers[].cap.spreader: check
      towers[].cap.gap: check
      towers[].cap.plate: check
      towers[].cap.clearance: pump check
      towers[].cap.grip: pump check
      towers[].cap.print_time: parts
      towers[].guys.lines: wind check
      towers[].guys.ring: wind check
      towers[].guys.run: wind check
      towers[].guys.anchor: wind check
      towers[].guys.breaking: wind check
      towers[].grown.mass: wind parts check
      towers[].grown.width: wind check
      towers[].tie: wind check
      towers[].material: parts
      towers[].foot_radius: wind check
      towers[].fastened: wind check
      strainer.aperture: check
      strainer.wire: check
      strainer.diameter: check
      strainer.clogged: check
      strainer.freeboard: check
      timing[].run: duty check
      timing[].rest: duty check
      timing[].from: duty check
      timing[].to: duty check
      timing[].months: duty check
      timing[].days: duty check
      wetting: duty check
      dry_limit.day: duty check
      dry_limit.night: duty check
      dry_limit.alarm: duty
      controller.power: duty check
      controller.relay.rated: duty check
      controller.relay.coil: duty check
      controller.relay.coil_when: duty check
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
      tariff.price: parts duty check
      tariff.standing: duty check
      tariff.bands[].from: duty check
      tariff.bands[].to: duty check
      tariff.bands[].months: duty check
      tariff.bands[].days: duty check
      tariff.bands[].price: duty check
      water.ec: dose stock topup check
      water.alkalinity: ec dose stock acid check
      water.ph: acid check
      water.nitrate: ec dose stock
      water.phosphorus: ec dose stock
      water.potassium: ec dose stock
      water.calcium: ec dose stock
      water.magnesium: ec dose stock
      water.sulfate: ec dose stock
      water.sodium: ec dose stock check
      water.chloride: ec dose stock check
      water.temperature: acid check
      rain.ec: topup
      feed.parts[].name: dose stock topup
      feed.parts[].rate: dose stock topup
      feed.rate_ec: dose stock topup
      feed.acid.name: acid check
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
      target.ec: dose topup check
      target.ph: stock acid check
      thirst: stock
      drinks: stock check
      crops[].name: crops check
      crops[].tower: parts
      crops[].pots: parts stock check
      crops[].water: stock check
      crops[].ec_low: crops check
      crops[].ec_high: crops check
      crops[].ph_low: crops check
      crops[].ph_high: crops check
      season.from: stock duty check
      season.to: stock duty check
      season.change.every: stock check
      season.change.or_added: check
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
      limits: parts check
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
