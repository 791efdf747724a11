#compdef leat
# Completion of leat for zsh: source it behind compinit, or put it on the fpath as _leat.
# Made from the declarations of the program; change those.

_leat_keys=('name=' 'about=' 'currency=' 'units=' 'site.time_zone=' 'site.latitude=' 'site.altitude=' 'site.terrain=' 'site.height_above_ground=' 'site.wind.speed=' 'site.wind.is=' 'site.shelter=' 'site.gust_factor=' 'site.air_density=' 'site.weather=' 'site.weather_columns=' 'site.months[0].tmin=' 'site.months[0].tmax=' 'site.months[0].rain=' 'site.months[0].rain_days=' 'site.exposure=' 'site.coast=' 'site.wind_height=' 'site.light.transmission=' 'site.light.shade=' 'site.sun_on_tank=' 'tank.shape=' 'tank.bottom=' 'tank.top=' 'tank.diameter=' 'tank.length=' 'tank.height=' 'tank.corner=' 'tank.corner_top=' 'tank.floor_rise=' 'tank.floor_flat=' 'tank.sections=' 'tank.table=' 'tank.between=' 'tank.bodies[0].name=' 'tank.bodies[0].area=' 'tank.bodies[0].from=' 'tank.bodies[0].to=' 'tank.holds=' 'tank.holds_full=' 'tank.full=' 'tank.low=' 'tank.intake=' 'tank.rim_overflow=' 'tank.wall.thickness=' 'tank.wall.colour=' 'tank.wall.insulation=' 'tank.warmest=' 'tank.mass=' 'tank.foot=' 'tank.stand=' 'tank.ground=' 'tank.friction=' 'tank.rain_area=' 'tank.rain_share=' 'tank.open_area=' 'tank.heel=' 'tank.drain.bore=' 'tank.drain.height=' 'tank.drain.length=' 'tank.drain.drop=' 'sender.steps=' 'sender.edges=' 'sender.ladder.reeds=' 'sender.ladder.first=' 'sender.ladder.pitch=' 'sender.ladder.levels=' 'sender.ladder.resistors=' 'sender.ladder.empty=' 'sender.ladder.full=' 'sender.ladder.return_at=' 'sender.ladder.pull_in=' 'sender.ladder.drop_out=' 'sender.ladder.stops=' 'sender.below=' 'sender.hysteresis=' 'sender.hysteresis_volume=' 'sender.edge_error=' 'sender.tolerance=' 'sender.reading=' 'sender.lead=' 'sender.open_above=' 'sender.short_below=' 'sender.divider.supply=' 'sender.divider.resistor=' 'sender.divider.sender_side=' 'sender.divider.bits=' 'sender.divider.reference=' 'sender.divider.resistor_tolerance=' 'sender.divider.supply_tolerance=' 'sender.divider.reference_tolerance=' 'sender.divider.adc_error=' 'sender.divider.blind=' 'sender.divider.ratiometric=' 'pump.curve=' 'pump.shutoff_head=' 'pump.max_flow=' 'pump.derate=' 'pump.speed=' 'pump.measured=' 'pump.power=' 'pump.power_factor=' 'pump.supply.mains=' 'pump.supply.dc=' 'pump.supply.cable.length=' 'pump.supply.cable.section=' 'pump.check_valve=' 'pump.body=' 'cap_sensor.wet=' 'cap_sensor.dry=' 'hold_up=' 'pipe.bore=' 'pipe.length=' 'pipe.material=' 'pipe.roughness=' 'pipe.ridges=' 'pipe.k=' 'pipe.fittings=' 'pipe.valve=' 'towers[0].name=' 'towers[0].count=' 'towers[0].riser.bore=' 'towers[0].riser.length=' 'towers[0].riser.material=' 'towers[0].riser.roughness=' 'towers[0].riser.ridges=' 'towers[0].riser.k=' 'towers[0].riser.fittings=' 'towers[0].riser.valve=' 'towers[0].outlet=' 'towers[0].wanted=' 'towers[0].base.height=' 'towers[0].modules[0].name=' 'towers[0].modules[0].count=' 'towers[0].modules[0].height=' 'towers[0].modules[0].overlap=' 'towers[0].modules[0].diameter=' 'towers[0].modules[0].wall=' 'towers[0].modules[0].pots=' 'towers[0].modules[0].pot_at=' 'towers[0].modules[0].pot=' 'towers[0].modules[0].turn=' 'towers[0].modules[0].mass=' 'towers[0].modules[0].print_time=' 'towers[0].cap.mass=' 'towers[0].cap.height=' 'towers[0].cap.spreader=' 'towers[0].cap.gap=' 'towers[0].cap.plate=' 'towers[0].cap.clearance=' 'towers[0].cap.grip=' 'towers[0].cap.print_time=' 'towers[0].guys.lines=' 'towers[0].guys.ring=' 'towers[0].guys.run=' 'towers[0].guys.anchor=' 'towers[0].guys.breaking=' 'towers[0].grown.mass=' 'towers[0].grown.width=' 'towers[0].tie=' 'towers[0].material=' 'towers[0].foot_radius=' 'towers[0].fastened=' 'strainer.aperture=' 'strainer.wire=' 'strainer.diameter=' 'strainer.clogged=' 'strainer.freeboard=' 'timing[0].run=' 'timing[0].rest=' 'timing[0].from=' 'timing[0].to=' 'timing[0].months=' 'timing[0].days=' 'wetting=' 'dry_limit.day=' 'dry_limit.night=' 'dry_limit.alarm=' 'controller.power=' 'controller.relay.rated=' 'controller.relay.coil=' 'controller.relay.coil_when=' 'controller.relay.cycles=' 'controller.relay.inrush=' 'backup.hours=' 'backup.battery=' 'backup.capacity=' 'backup.chemistry=' 'backup.depth=' 'backup.reserve=' 'backup.inverter=' 'backup.idle=' 'tariff.price=' 'tariff.standing=' 'tariff.bands[0].from=' 'tariff.bands[0].to=' 'tariff.bands[0].months=' 'tariff.bands[0].days=' 'tariff.bands[0].price=' 'water.ec=' 'water.alkalinity=' 'water.ph=' 'water.nitrate=' 'water.phosphorus=' 'water.potassium=' 'water.calcium=' 'water.magnesium=' 'water.sulfate=' 'water.sodium=' 'water.chloride=' 'water.temperature=' 'water.price=' 'rain.ec=' 'feed.parts[0].name=' 'feed.parts[0].rate=' 'feed.parts[0].label=' 'feed.parts[0].density=' 'feed.parts[0].price=' 'feed.rate_ec=' 'feed.acid.name=' 'feed.acid.price=' 'feed.stock.bottle=' 'feed.stock.makes=' 'feed.stock.coldest=' 'feed.stock.grams=' 'feed.salts[0].name=' 'feed.salts[0].elements=' 'feed.salts[0].price=' 'meters.ec.slope=' 'meters.ec.checked=' 'meters.ec.compensates=' 'meters.ec.scale=' 'meters.ph.offset=' 'meters.ph.checked=' 'target.ec=' 'target.ec_low=' 'target.ec_high=' 'target.ph=' 'target.ph_low=' 'target.ph_high=' 'thirst=' 'drinks=' 'crops[0].name=' 'crops[0].tower=' 'crops[0].pots=' 'crops[0].sow=' 'crops[0].until=' 'crops[0].every=' 'crops[0].nursery=' 'crops[0].growing=' 'crops[0].germination=' 'crops[0].loss=' 'crops[0].harvest=' 'crops[0].water=' 'crops[0].area=' 'crops[0].initial=' 'crops[0].development=' 'crops[0].late=' 'crops[0].start_share=' 'crops[0].end_share=' 'crops[0].turnaround=' 'crops[0].sizes=' 'crops[0].earliest_transplant=' 'crops[0].latest_harvest=' 'crops[0].base=' 'crops[0].upper=' 'crops[0].warmth=' 'crops[0].ec_low=' 'crops[0].ec_high=' 'crops[0].ph_low=' 'crops[0].ph_high=' 'crops[0].seed_price=' 'crops[0].shop_price=' 'season.from=' 'season.to=' 'season.refill=' 'season.start.volume=' 'season.start.ec=' 'season.start.changed=' 'season.start.filled=' 'season.start.added=' 'season.uptake=' 'season.dose_below=' 'season.dilute_above=' 'season.change.every=' 'season.change.or_added=' 'season.away[0].from=' 'season.away[0].to=' 'season.catch=' 'lamp.power=' 'lamp.efficacy=' 'lamp.lumens=' 'lamp.share=' 'lamp.hours=' 'lamp.area=' 'prices.filament=' 'prices.filaments=' 'prices.spool=' 'prices.tubes=' 'prices.pump=' 'prices.tank=' 'prices.sender=' 'prices.controller=' 'prices.other=' 'prices.life=' 'printer.power=' 'printer.count=' 'printer.jobs=' 'printer.changeover=' 'printer.waste=' 'clean.with=' 'clean.strength=' 'clean.aim=' 'clean.contact=' 'limits=' 'log.time=' 'log.reading=' 'log.reading_in=' 'log.ec=' 'log.ph=' 'log.temperature=' 'log.pump=' 'log.cap=' 'log.rain=' 'log.name=' 'log.value=' 'log.delimiter=' 'log.decimal=' 'log.keeper=' 'log.thresholds.disorder=' 'log.thresholds.rest=' 'log.thresholds.clock_jump=' 'log.thresholds.gap=' 'log.thresholds.fault=' 'log.thresholds.refill_steps=' 'log.thresholds.refill_within=' 'log.thresholds.change_above=' 'log.thresholds.change_below=' 'log.thresholds.change_fall=' 'log.thresholds.change_refill=' 'log.thresholds.rain_join=' 'log.thresholds.rain_least=' 'log.thresholds.rain_ec=' 'log.thresholds.leak_factor=' 'log.thresholds.leak_steps=' 'log.thresholds.leak_join=' 'log.thresholds.dry=' 'log.thresholds.dry_intervals=' 'log.thresholds.stuck_steps=' 'log.thresholds.stuck_jump_steps=' 'log.thresholds.stuck_jump=' 'log.thresholds.wilt=' 'log.thresholds.use_days=' 'log.thresholds.use_least_days=' 'log.thresholds.weekday_days=' 'log.thresholds.day_from=' 'log.thresholds.day_to=' 'log.thresholds.night=' 'log.thresholds.ec_rows=' 'log.thresholds.silent=')
_leat_rules=(reaches-top pump-margin tower-fed flow-wanted valve-needed pump-on-curve outlet-over-top reach no-siphon freeboard intake-covered cap-lift film-closed film-not-flooding gap-carries gap-clear riser-not-fast riser-not-slow strainer-head strainer-holds pump-measured wind-tip wind-slide wind-lid wind-joint wind-line guy-anchor pots-fit same-column-spacing deck-load steps-resolvable low-above-step intake-seen full-seen step-under-thirst dip-seen sender-fitted run-covers rest-day rest-night starts-per-hour relay-life cost-season backup-hours cable-drop crops-share target-in-band target-above-water oxygen meters-checked water-alkalinity change-interval parts-compatible acid-household season-dry season-ec-high season-ec-low season-overflow away-dry tank-warm frost-pipes)
_leat_commands=(
  'head:head lost in a riser at a flow'
  'pump:where a pump'\''s curve meets the riser(s): flow, margin, throttle, fill time'
  'tank:litres at a level and back; dipstick table; size for a thirst'
  'wind:will it stand: tip speed, safety factor, guy lines, joints'
  'parts:what a tower takes to build: height, pots, printing, filament, cost, mass'
  'level:ohms or counts of a stepped float sender to litres'
  'log:what a logger'\''s rows say: litres now, use per day, the next can, what went wrong'
  'ec:EC, ppm scales, temperature; meter check against a standard; EC predicted from ions'
  'dose:feed for a volume, by EC or label rate; `dose salts`: grams for asked elements'
  'stock:what to weigh into two bottles; solubility and precipitation'
  'topup:what to drain and add to reach a volume and an EC: the daily line'
  'acid:acid to bring water of an alkalinity to a pH'
  'crops:EC and pH bands with sources; which crops can share one tank'
  'oxygen:oxygen the water can hold at a temperature and altitude'
  'clean:sanitiser dilution for closing the season'
  'duty:pump timing: kWh, cost, starts, relay life; compares and proposes timings'
  'sow:what to sow when: sowing and harvest calendar for the pots'
  'season:the year before it happens: litres, feed, money, harvest, day by day'
  'check:every design rule over one or many plans: pass, warn, fail, unknown'
  'sweep:one plan with keys varied: every design judged, measured and ranked'
  'plan:what can be done with a plan: start one, change it, show it, look up its keys'
  'units:what can be typed: every unit, by what it measures'
)

_leat_plan_files() { _files -g '*.y(a|)ml' }
_leat_key() { compadd -S '' -- $_leat_keys }
_leat_rule() { compadd -- $_leat_rules }
_leat_plan_or_rule() {
  if [[ $words[CURRENT-1] == --explain ]]; then _leat_rule; else _leat_plan_files; fi
}
_leat_plan_or_key() {
  if (( CURRENT > 4 )); then _leat_key; else _leat_plan_files; fi
}

_leat() {
  local command=${words[2]}
  if (( CURRENT == 2 )); then
    _describe command _leat_commands
    return
  fi
  case "${words[2]} ${words[3]}" in
    'level table'|'level ladder'|'level divider'|'level fit'|'dose salts'|'duty backup'|'duty cable'|'duty cap'|'season day'|'season light'|'plan new'|'plan set'|'plan schema'|'plan show'|'plan card'|'plan header'|'plan keys') command="${words[2]} ${words[3]}" ;;
  esac
  case $command in
    'head')
      _arguments \
        --flow'[flow in the riser]:FLOW: ' \
        --lift'[height of the outlet over the water, at its lowest working level]:HEIGHT: ' \
        '*'--bore'[inside diameter of the pipe; `head` takes several, one behind the other]:LENGTH: ' \
        '*'--length'[length of the pipe, one for each bore]:LENGTH: ' \
        '*'--roughness'[roughness of the pipe'\''s wall, one or one for each bore]:LENGTH: ' \
        '*'--ridges'[distance from ridge to ridge of a corrugated hose, one or one for each bore]:LENGTH: ' \
        '*'--k'[sum of the loss factors of the pipe'\''s fittings, one for each bore]:K: ' \
        '*'--fitting'[a fitting by name and how many, in the last bore, behind @ its size where it has one, such as "bend=1 @ 60 mm"; entrance and exit come on top unless they are named; instead of --k]:NAME=COUNT:(entrance= entrance-inward= entrance-rounded= exit= elbow= elbow-long= elbow-smooth= elbow-45= bend-180= tee-run= tee-branch= union= coupling= push-elbow= barb= swing-check= lift-check=)' \
        --temperature'[temperature of the water]:TEMP: ' \
        --tower'[tower of the plan; the first otherwise]:NAME: ' \
        --all-towers'[flow in the plan'\''s common pipe; otherwise every tower takes --flow]:FLOW: ' \
        --bores'[table over the tubes that one can buy, in place of the riser or the last bore]' \
        --family'[with --bores; kind of tube; otherwise the kind of the present one]:KIND:(hose inch-tube silicone vinyl pe drip pex-us pex sch40 pvc-u barb)' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'pump')
      _arguments \
        --shutoff-head'[printed greatest head, at no flow]:HEAD: ' \
        --max-flow'[printed greatest flow, at no head]:FLOW: ' \
        '*'--point'[a point of the printed curve, from no flow on]:POINT: ' \
        --derate'[share of the printed head that is left]:SHARE: ' \
        --speed'[speed against the printed one]:SHARE: ' \
        --power'[electrical power of the pump while it runs]:POWER: ' \
        --lift'[height of the outlet over the water, at its lowest working level]:HEIGHT: ' \
        --level'[one level of the tank instead of low and full]:LENGTH: ' \
        --bore'[inside diameter of the pipe; `head` takes several, one behind the other]:LENGTH: ' \
        --length'[length of the pipe, one for each bore]:LENGTH: ' \
        --roughness'[roughness of the pipe'\''s wall, one or one for each bore]:LENGTH: ' \
        --ridges'[distance from ridge to ridge of a corrugated hose, one or one for each bore]:LENGTH: ' \
        --k'[sum of the loss factors of the pipe'\''s fittings, one for each bore]:K: ' \
        --temperature'[temperature of the water]:TEMP: ' \
        --check-valve'[whether a check valve keeps the riser full]:YES: ' \
        --throttle-to'[flow that a valve in the riser should leave]:FLOW: ' \
        --measured'[flow caught in a bucket, all towers together, @ LEVEL for the tank'\''s level then; finds the derate]:FLOW: ' \
        --balance'[sets the towers'\'' valves; each at its wanted flow, or all equal and as much as possible]:HOW:(wanted equal)' \
        --jug'[with --balance; the jug that is held under an outlet]:VOLUME: ' \
        --at'[with --balance; how full the tank is while the valves are set]:MARK:(low full)' \
        --needed'[the least head and flow on the box of a pump that would do]' \
        --bores'[table over the tubes that one can buy, in place of the riser or the last bore]' \
        --family'[with --bores; kind of tube; otherwise the kind of the present one]:KIND:(hose inch-tube silicone vinyl pe drip pex-us pex sch40 pvc-u barb)' \
        --tower'[with --bores; the tower whose riser changes; the first otherwise]:NAME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'tank')
      _arguments \
        '*'--level'[level over the inside of the floor]:LENGTH: ' \
        '*'--volume'[litres whose level is asked]:VOLUME: ' \
        --every'[dipstick table, a row every so many millimetres]:STEP: ' \
        --thirst'[what the plants drink; the size that is needed; drinks or the crops of the plan otherwise]:FLOW: ' \
        --days'[days it must last from full to the refill mark]:N: ' \
        --shape'[shape of the inside]:SHAPE:(box tapered-box cylinder cone lying-cylinder sloping-floor sections table)' \
        --top'[inside at the rim]:SIZE: ' \
        --bottom'[inside at the floor]:SIZE: ' \
        --diameter'[inside diameter of a cylinder]:LENGTH: ' \
        --length'[inside length of a lying cylinder]:LENGTH: ' \
        --height'[inside height]:LENGTH: ' \
        --corner'[radius of the upright corners]:LENGTH: ' \
        --corner-top'[radius of the corners at the rim]:LENGTH: ' \
        --floor-rise'[how far a sloping floor rises to its far end]:LENGTH: ' \
        --floor-flat'[flat stretch at the deep end of it]:LENGTH: ' \
        '*'--surface'[surface of the water at a level]:ROW: ' \
        '*'--table'[a row of a strapping table]:ROW: ' \
        --dipstick'[levels and litres as --every prints them, instead of the shape; - is standard input]:FILE:_files' \
        --drain-bore'[inside diameter of the drain; how long it takes to empty]:LENGTH: ' \
        --drain-height'[level of the drain'\''s centre]:LENGTH: ' \
        --full'[level when full]:LENGTH: ' \
        --low'[refill mark]:LENGTH: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'wind')
      _arguments \
        '*'--state'[another state; solution in the tank, and how far the plants are grown]:VOLUME @ SHARE: ' \
        --gust'[gust at the tower, instead of the plan'\''s wind]:SPEED: ' \
        --mean'[mean wind of 10 min at 10 m in open country, instead of the plan'\''s wind]:SPEED: ' \
        --terrain'[ground around]:WORD:(coast flat open suburb city)' \
        --height-above-ground'[height of the place above the street]:LENGTH: ' \
        --density'[density of the air, 1.25 kg/m3 otherwise]:DENSITY: ' \
        --friction'[friction of the foot on the ground]:NUMBER: ' \
        --mass'[without a plan; mass of all, tank and towers]:MASS: ' \
        --foot'[the foot'\''s size along the wind]:LENGTH: ' \
        '*'--face'[what the wind meets; area, height of its centre, drag coefficient]:AREA @ HEIGHT x CF: ' \
        --lid'[height of the lid that a tower stands on]:LENGTH: ' \
        --tower'[mass of tower and plants on the lid]:MASS: ' \
        --foot-radius'[radius of the tower'\''s foot on the lid]:LENGTH: ' \
        --lines'[guy lines, evenly round]:N: ' \
        --ring'[height of their ring over the anchors]:LENGTH: ' \
        --run'[distance of the anchors from the axis]:LENGTH: ' \
        --anchor'[what the lines are tied to, the ground otherwise]:WORD:(ground tank)' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'parts')
      _arguments \
        --modules'[each tower with so many modules instead]:N: ' \
        --reach'[height you reach; the most modules whose pots stay under it]:LENGTH: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'level')
      (( CURRENT == 3 )) && compadd -- table ladder divider fit
      _arguments \
        --counts'[the reading is counts of the ADC, through sender.divider]' \
        --motion'[which way the level has moved since the reading last changed]:WAY:(unknown rising falling)' \
        --at-least'[ends with exit code 1 unless the low end of the band is at least this]:VOLUME: ' \
        --column'[reads rows from standard input (or --rows) and answers for this column of each]:NAME: ' \
        --rows'[file of rows instead of standard input, with --column]:FILE:_files' \
        --prefix'[put before the answer'\''s column names, where they clash]:TEXT: ' \
        --strict'[stops with exit code 2 at the first bad row]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'level table')
      _arguments \
        --every'[a row every so many ohms, interpolated; smooth for a display, no finer than the steps]:OHM: ' \
        --c'[a C array for a microcontroller]' \
        --cutoff'[only the reading at which the controller stops the pump; sure of the refill mark before it]' \
        --at-least'[water that must be there for sure at the cut-off, instead of the refill mark]:VOLUME: ' \
        --motion'[which way the level has moved since the reading last changed]:WAY:(unknown rising falling)' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'level ladder')
      _arguments \
        --empty'[reading at the lowest reed]:OHM: ' \
        --full'[reading at the highest reed]:OHM: ' \
        --range'[both from the trade; 0-190, 10-180, 240-33 or 240-30]:RANGE: ' \
        --steps'[how many reeds, 2 to 200 (required)]:N: ' \
        --series'[resistor values you can buy (default E24)]:SERIES:(E6 E12 E24 E48 E96)' \
        --equal'[ohms; even pitch, even ohms; litres; reeds spaced for the same litres per step; needle; even pitch, ohms that follow the litres, for a gauge'\''s needle (default ohms)]:WHAT:(ohms litres needle)' \
        --bought'[a sender bought ready, known by its range, length and number of steps only]' \
        --length'[distance of the highest step from the lowest, instead of --last]:LENGTH: ' \
        --first'[level at the lowest reed]:LENGTH: ' \
        --last'[level at the highest reed]:LENGTH: ' \
        --pull-in'[half width at which a reed closes]:LENGTH: ' \
        --drop-out'[half width at which it opens again]:LENGTH: ' \
        --tolerance'[tolerance of the sender'\''s resistors]:SHARE: ' \
        --reading'[tolerance of the meter or ADC]:OHM: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'level divider')
      _arguments \
        '*'--ohm'[a step of the sender, when no plan has them]:OHM: ' \
        --supply'[supply of the divider]:VOLTAGE: ' \
        --reference'[reference of the ADC; the supply unless said]:VOLTAGE: ' \
        --bits'[bits of the ADC]:N: ' \
        --sender-side'[low; the sender goes to ground; high; to the supply]:SIDE:(low high)' \
        --resistor'[judges this resistor instead of choosing one]:OHM: ' \
        --series'[resistor values you can buy (default E24)]:SERIES:(E6 E12 E24 E48 E96 any)' \
        --max-current'[greatest current wanted in the sender]:CURRENT: ' \
        --adc-error'[error of the ADC in counts]:COUNTS: ' \
        --resistor-tolerance'[tolerance of the fixed resistor]:SHARE: ' \
        --supply-tolerance'[tolerance of the supply]:SHARE: ' \
        --reference-tolerance'[tolerance of the ADC'\''s reference]:SHARE: ' \
        --blind'[counts near 0 that the ADC cannot read]:COUNTS: ' \
        --lead'[resistance of the lead, there and back]:OHM: ' \
        --tolerance'[tolerance of the sender'\''s resistors]:SHARE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'level fit')
      _arguments \
        --cumulative'[the column is what was poured in each time, to be summed up]' \
        --totals'[the column is what the tank holds, however it looks (default)]' \
        --start'[litres in the tank before the first pour, with --cumulative]:VOLUME: ' \
        --litres-column'[column of the litres; one that ends in gal, qt or mL is read in that]:NAME: ' \
        --ohm-column'[column of the ohms]:NAME: ' \
        --motion'[rising when poured in (unless said), falling when drained]:WAY:(rising falling)' \
        --drained'[pairs while draining, for the hysteresis]:FILE:_files' \
        --same-within'[readings nearer than this are one step; half the smallest gap]:OHM: ' \
        '*'--leave-out'[leaves a row out, as a slip]:ROW: ' \
        --paste'[prints the sender section alone, to paste or redirect into the plan]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'log')
      _arguments \
        --alarm'[one line for each open alarm, and nothing at all when there is none]' \
        --since'[tells only alarms that opened after it]:TIME: ' \
        --now'[what the clock says; without it, the time of the newest row]:TIME: ' \
        --days-left'[alarm when the refill mark is fewer days away]:DAYS: ' \
        --events'[one row an event; csv is this without it, too]' \
        --days'[one row a day]' \
        --rows'[every row with its step, litres, band and flags]' \
        --name-column'[column of the sensor'\''s name, in a file of time, name, value]:NAME: ' \
        --value-column'[column of the value, in a file of time, name, value]:NAME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'ec')
      _arguments \
        --at'[temperature of a reading without compensation; leave it out when the meter says ATC]:TEMPERATURE: ' \
        --scale'[ppm scale of the meter; meters.ec.scale of the plan otherwise]:500|640|700: ' \
        --coefficient'[change of the EC per degree Celsius, instead of 1.91 %]:SHARE: ' \
        --natural-water'[function of ISO 7888 for tap and well water, 0 to 35.9 C]' \
        --standard'[checks the meter; the value on the bottle of potassium chloride standard, at 25 C]:EC: ' \
        --compensates'[whether the meter brings its readings to 25 C itself (ATC)]:YES: ' \
        '*'--ion'[an ion of the solution, in mg/L, mmol/L or meq/L; predicts the EC; N-NO3 counts the nitrogen only]:NAME=MG_L: ' \
        '*'--weighed'[a salt that was weighed into --volume, to tell what it makes]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --volume'[finished solution, with --weighed]:VOLUME: ' \
        --unit'[unit of bare numbers, where the column'\''s name does not end in it]:UNIT:(mS/cm uS/cm dS/m mS/m ppm)' \
        --column'[reads rows from standard input (or --rows) and answers for this column of each]:NAME: ' \
        --rows'[file of rows instead of standard input, with --column]:FILE:_files' \
        --prefix'[put before the answer'\''s column names, where they clash]:TEXT: ' \
        --strict'[stops with exit code 2 at the first bad row]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'dose')
      (( CURRENT == 3 )) && compadd -- salts
      _arguments \
        --volume'[water there; the plan'\''s tank at full otherwise]:VOLUME: ' \
        --from'[what the meter reads in it; EC, or ppm; the plan'\''s water.ec otherwise]:EC: ' \
        --at'[temperature of the solution, for a meter that does not bring its reading to 25 C]:TEMP: ' \
        --scale'[ppm scale of the meter; meters.ec.scale of the plan otherwise]:500|640|700: ' \
        --to'[EC wanted, or ppm; target.ec of the plan otherwise]:EC: ' \
        --water-ec'[EC of the water that is poured in, or ppm; water.ec of the plan otherwise]:EC: ' \
        --label'[dose by the label instead; this share of its rate; tells the EC it makes]:SHARE: ' \
        --rate'[label rate, all bottles together; with --each the rate of each bottle]:RATE: ' \
        --rate-ec'[what that rate adds to pure water]:EC: ' \
        --parts'[equal bottles that share the rate]:N: ' \
        --each'[the rate is that of each bottle; "5 mL of each"]' \
        --step'[mark of the measuring cup or syringe; each bottle to its nearest mark]:VOLUME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'dose salts')
      _arguments \
        --volume'[finished solution; the plan'\''s tank at full otherwise]:VOLUME: ' \
        '*'--ask'[an element wanted, in mg/L, mmol/L or meq/L; N-NO3 and N-NH4 apart; oxides such as K2O in mg/L]:ELEMENT=MG_L: ' \
        '*'--salt'[a salt that may be weighed; feed.salts of the plan otherwise]:NAME:(calcium-nitrate-4h2o calcium-nitrate-greenhouse potassium-nitrate ammonium-nitrate magnesium-nitrate-6h2o sodium-nitrate monopotassium-phosphate dipotassium-phosphate monoammonium-phosphate diammonium-phosphate magnesium-sulfate-7h2o magnesium-sulfate-1h2o potassium-sulfate ammonium-sulfate calcium-chloride-2h2o calcium-sulfate-2h2o potassium-chloride magnesium-chloride-6h2o sodium-chloride potassium-bicarbonate iron-sulfate-7h2o manganese-sulfate-1h2o manganese-chloride-4h2o zinc-sulfate-7h2o zinc-sulfate-1h2o copper-sulfate-5h2o boric-acid borax sodium-molybdate-2h2o ammonium-molybdate iron-edta-13 iron-dtpa-11 iron-dtpa-6-liquid iron-eddha-6 molybdic-acid-85)' \
        '*'--weighed'[a salt that was weighed into --volume, to tell what it makes]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --within'[exit code 1 when an asked element is missed by more]:SHARE: ' \
        --scale-step'[smallest step of the scale; every salt to its nearest step]:STEP: ' \
        '*'--feed'[a liquid feed by the figures of its label; N-P-K as printed (P2O5 and K2O), or MgO=1 for another figure; the labels of feed.parts of the plan otherwise]:FIGURES: ' \
        --rate'[dose of the liquid feed, with --feed]:RATE: ' \
        --density'[its density, when the label'\''s per cent are by weight; by volume otherwise]:DENSITY: ' \
        --list'[lists the whole table that leat knows]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'stock')
      _arguments \
        '*'--weigh'[a salt of the recipe and its grams; feed.stock.grams of the plan otherwise]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --for'[the grams are for this much tower water, as `dose salts` tells them; for one bottle otherwise]:VOLUME: ' \
        --bottle'[size of each bottle]:VOLUME: ' \
        --makes'[tower water that the weighed salts make]:VOLUME: ' \
        --coldest'[coldest night where the bottles stand]:TEMP: ' \
        --one-bottle'[judges all salts in one bottle]' \
        --season'[solution the season takes; from the plan otherwise]:VOLUME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'topup')
      _arguments \
        --volume'[what is in the tank; a band as 28..34 L when a stepped sender reads it]:VOLUME: ' \
        --reading'[instead of a volume, what the plan'\''s sender reads, with the pump off]:OHM: ' \
        --counts'[the reading is counts of the ADC, through sender.divider]' \
        '*'--log'[goes on from what a logger'\''s rows say, as leat log reads them; several in order]:FILE:_files' \
        --now'[what the clock says; without it, the time of the newest row]:TIME: ' \
        --motion'[which way the level has moved since the reading last changed]:WAY:(unknown rising falling)' \
        --ec'[what the meter reads in it; EC, or ppm]:EC: ' \
        --at'[temperature of the solution, for a meter that does not bring its reading to 25 C]:TEMP: ' \
        --scale'[ppm scale of the meter; meters.ec.scale of the plan otherwise]:500|640|700: ' \
        --full'[the full mark; litres, or a level of the plan'\''s tank; the plan'\''s otherwise]:MARK: ' \
        --target'[EC aimed at, or ppm; target.ec of the plan otherwise]:EC: ' \
        --water-ec'[EC of the water that is poured in, or ppm; water.ec of the plan otherwise]:EC: ' \
        --rate'[label rate, all bottles together]:RATE: ' \
        --rate-ec'[what that rate adds to pure water]:EC: ' \
        --parts'[equal bottles that share the rate]:N: ' \
        '*'--weigh'[a salt of the recipe and its grams; feed.stock.grams of the plan otherwise]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --makes'[tower water that the weighed salts make]:VOLUME: ' \
        --rain'[rain that has fallen in since the reading; rain that is in volume and EC already counts by itself]:VOLUME: ' \
        --rainfall'[the same by a rain gauge, over tank.rain_area of the plan]:DEPTH: ' \
        --rain-ec'[EC of the rain]:EC: ' \
        --ph'[pH of the tank, to tell the pH of the mix; target.ph of the plan otherwise]:PH: ' \
        --was'[what was in the tank after the last top-up; tells the rain that fell in since]:VOLUME: ' \
        --was-ec'[the EC that it had then, with --was]:EC: ' \
        --can'[biggest can; splits the water]:VOLUME: ' \
        --column'[reads rows from standard input (or --rows) and answers for this column of each]:NAME: ' \
        --rows'[file of rows instead of standard input, with --column]:FILE:_files' \
        --prefix'[put before the answer'\''s column names, where they clash]:TEXT: ' \
        --strict'[stops with exit code 2 at the first bad row]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'acid')
      _arguments \
        --volume'[the water; a full tank of the plan otherwise]:VOLUME: ' \
        --alkalinity'[its alkalinity; mg/L as CaCO3, meq/L or dH of carbonate hardness]:ALK: ' \
        --ph'[its pH; water.ph of the plan otherwise]:PH: ' \
        --to'[the pH wanted]:PH: ' \
        --acid'[acid and strength in per cent by weight; citric is weighed]:NAME:(nitric-38 nitric-60 phosphoric-75 phosphoric-85 sulfuric-35 sulfuric-37 hydrochloric-31 citric citric-1h2o)' \
        --density'[the acid'\''s, from its label; a handbook'\''s otherwise]:DENSITY: ' \
        --temperature'[temperature of the water]:TEMP: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'crops')
      _arguments \
        --list'[lists the whole table that leat knows]' \
        --widen'[a pH given as one point counts 0.3 either way]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:(basil bean broccoli cabbage celery courgette cucumber aubergine leek lettuce pak-choi parsley pepper sage spinach strawberry tomato chard kale mint rocket zucchini eggplant bok-choy pak-choy arugula swiss-chard beans tomatoes)' ;;
    'oxygen')
      _arguments \
        '*'--at'[temperature of the water; tank.warmest of the plan otherwise]:TEMPERATURE: ' \
        --altitude'[height over the sea]:HEIGHT: ' \
        --pressure'[air pressure at the place itself, not the forecast'\''s, instead of the altitude]:PRESSURE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'clean')
      _arguments \
        --volume'[water and sanitiser together; the plan'\''s tank at its full mark otherwise]:VOLUME: ' \
        --with'[sanitiser; hypochlorite (bleach is the same) or peroxide; clean.with of the plan otherwise]:AGENT:(hypochlorite peroxide bleach)' \
        --strength'[strength on the bottle'\''s label]:SHARE: ' \
        --basis'[what the label'\''s per cent counts; volume, grams of chlorine or peroxide in 100 mL; weight, in 100 g; hypochlorite-volume and hypochlorite-weight, grams of sodium hypochlorite]:COUNTS:(volume weight hypochlorite-volume hypochlorite-weight)' \
        --density'[the bottle'\''s density, for labels by weight]:DENSITY: ' \
        --aim'[strength wanted in the loop, or per cent; 0.3 % is 3 g/L]:STRENGTH: ' \
        --contact'[how long it runs]:TIME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'duty')
      (( CURRENT == 3 )) && compadd -- backup cable cap
      _arguments \
        --power'[electrical power of the pump while it runs]:POWER: ' \
        --run'[how long the pump runs; also --on]:TIME: ' \
        --rest'[how long it rests; also --off]:TIME: ' \
        '*'--against'[another timing to compare with]:RUN/REST: ' \
        --price'[price of energy]:PRICE: ' \
        --standing'[standing charge of the meter]:PRICE: ' \
        --standing-share'[share of the standing charge that the tower bears; none otherwise]:SHARE: ' \
        --days'[length of the period]:N: ' \
        --from'[first day of the period]:DATE: ' \
        --to'[last day of the period]:DATE: ' \
        --time-zone'[time zone of the clock]:ZONE: ' \
        --controller'[draw of the controller, all the time]:POWER: ' \
        --relay'[what the relay'\''s contact is rated for, resistive]:CURRENT: ' \
        --cycles'[operations the relay is rated for]:N: ' \
        --coil'[draw of the relay'\''s coil]:POWER: ' \
        --inrush'[current at the moment of starting, times the running current]:N: ' \
        --mains'[mains voltage the pump runs on]:VOLTAGE: ' \
        --dc'[direct voltage the pump runs on]:VOLTAGE: ' \
        --suggest'[proposes the timing of least energy, from the plan'\''s towers]' \
        --most-starts'[with --suggest, most starts an hour]:RATE: ' \
        --plug-water'[with --suggest, water that one plug and its roots hold]:VOLUME: ' \
        --plant-use'[with --plug-water, what one plant drinks; else by the plan'\''s season]:FLOW: ' \
        --dry-limit'[longest rest by day]:TIME: ' \
        --dry-limit-night'[longest rest at night]:TIME: ' \
        --wetting'[how long the lowest pot is wetted]:TIME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'duty backup')
      _arguments \
        --hours'[how long the power cut lasts]:TIME: ' \
        --battery'[voltage of the battery]:VOLTAGE: ' \
        --capacity'[capacity of the battery you have]:CHARGE: ' \
        --chemistry'[lithium (iron phosphate) or lead]:WORD:(lithium lead)' \
        --depth'[share of it that may be taken out]:SHARE: ' \
        --reserve'[reserve for age and cold]:SHARE: ' \
        --inverter'[efficiency of the inverter]:SHARE: ' \
        --idle'[draw of the inverter with nothing on]:POWER: ' \
        --power'[electrical power of the pump while it runs]:POWER: ' \
        --run'[how long the pump runs; also --on]:TIME: ' \
        --rest'[how long it rests; also --off]:TIME: ' \
        --controller'[draw of the controller, all the time]:POWER: ' \
        --dc'[direct voltage the pump runs on]:VOLTAGE: ' \
        --sun'[peak sun hours of the worst month, for a solar panel that covers every day]:HOURS: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'duty cable')
      _arguments \
        --dc'[direct voltage the pump runs on]:VOLTAGE: ' \
        --power'[electrical power of the pump while it runs]:POWER: ' \
        --length'[length of the cable, one way]:LENGTH: ' \
        --section'[copper section of one core; the least that will do otherwise]:AREA: ' \
        --gauge'[wire gauge in place of --section]:AWG: ' \
        --strands'[flexible cord, or solid and stranded wire]:WORD:(flexible solid)' \
        --temperature'[temperature of the copper (default 20 C)]:TEMP: ' \
        --inrush'[current at the moment of starting, times the running current]:N: ' \
        --least-voltage'[voltage the pump needs to start]:VOLTAGE: ' \
        --drop'[drop that is still good (default 5 %)]:SHARE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'duty cap')
      _arguments \
        --wet'[counts of the sensor under running water]:COUNTS: ' \
        --dry'[counts of the sensor when dried out]:COUNTS: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'sow')
      _arguments \
        --pots'[pots of the crop]:N: ' \
        --first'[first sowing]:DATE: ' \
        --nursery'[sowing to planting, whole days]:DAYS: ' \
        --growing'[planting to harvest, whole days]:DAYS: ' \
        --every'[days between sowings; one sowing without it]:DAYS: ' \
        --until'[last day on which is sown]:DATE: ' \
        --germination'[seeds that come up]:SHARE: ' \
        --loss'[plants lost after]:SHARE: ' \
        --turnaround'[days from harvest until the pot is planted]:DAYS: ' \
        --sizes'[how pots are shared between batches; spread over all, or equal batches]:HOW:(spread equal)' \
        --earliest-transplant'[no batch is planted before this day]:DATE: ' \
        --latest-harvest'[no batch is harvested after this day]:DATE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html ics)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'season')
      (( CURRENT == 3 )) && compadd -- day light
      _arguments \
        --by'[rows of weeks or months]:SPAN:(week month)' \
        '*'--log'[goes on from what a logger'\''s rows say, as leat log reads them; several in order]:FILE:_files' \
        --now'[what the clock says; without it, the time of the newest row]:TIME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html ics)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'season day')
      _arguments \
        --date'[the day]:DATE: ' \
        --tmin'[lowest temperature of the day, or its mean over the month]:TEMPERATURE: ' \
        --tmax'[highest temperature of the day, or its mean over the month]:TEMPERATURE: ' \
        --rh-min'[lowest relative humidity]:SHARE: ' \
        --rh-max'[highest relative humidity]:SHARE: ' \
        --rh-mean'[mean relative humidity]:SHARE: ' \
        --dew-point'[dew point]:TEMPERATURE: ' \
        --wind'[mean wind]:SPEED: ' \
        --wind-height'[height at which the wind is measured]:LENGTH: ' \
        --radiation'[sun on the level ground in the day]:RADIATION: ' \
        --sun'[hours of sunshine]:TIME: ' \
        --latitude'[latitude, north positive]:ANGLE: ' \
        --altitude'[height over the sea]:LENGTH: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'season light')
      _arguments \
        --month'[one month, 1 for January, or its name]:MONTH: ' \
        --tmin'[lowest temperature of the day, or its mean over the month]:TEMPERATURE: ' \
        --tmax'[highest temperature of the day, or its mean over the month]:TEMPERATURE: ' \
        --light'[light of the day in the open as a sensor summed it, mol/m2; no month is asked then]:MOL: ' \
        --lux'[reading of a lux meter at the plants, mean of the hours of light]:LX: ' \
        --lux-of'[light it reads]:LIGHT:(sun white-led fluorescent sodium halide)' \
        --lux-hours'[hours of light of that reading]:TIME: ' \
        --crop'[crop whose need is meant]:NAME: ' \
        --need'[light that the plants want a day, mol/m2]:MOL: ' \
        --window'[pane before the plants; width x height over them]:SIZE: ' \
        --distance'[distance of the plants from the pane]:LENGTH: ' \
        --cover'[glass or film over the plants]:COVER:(none glass double-glass double-window triple-window twin-wall film glasshouse)' \
        --transmission'[light that glass or film lets through]:SHARE: ' \
        --shade'[light that houses, trees or cloth keep off]:SHARE: ' \
        --lamp-power'[what a lamp draws]:POWER: ' \
        --lamp-efficacy'[umol of light for a joule]:N: ' \
        --lamp-lumens'[or lumens for a watt, a white lamp'\''s]:N: ' \
        --lamp-share'[share of its light on the plants]:SHARE: ' \
        --lamp-hours'[longest lamp day]:TIME: ' \
        --lamp-area'[area that it lights]:AREA: ' \
        --latitude'[latitude, north positive]:ANGLE: ' \
        --altitude'[height over the sea]:LENGTH: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'check')
      _arguments \
        --all'[text shows the rules that pass, too]' \
        --strict'[what warns, and what cannot be judged, counts as a no, too (exit code 1)]' \
        --known'[with --strict; what cannot be judged does not count]' \
        --compare'[plans side by side; where they differ, with the values in columns]' \
        --rules'[lists the rules with their limits and sources]' \
        '*'--rule'[judges this rule only]:ID:_leat_rule' \
        --doubt'[draws all guesses N times; how sure each rule is]:N: ' \
        --seed'[draws with another seed; other numbers as good]:N: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_or_rule' ;;
    'sweep')
      _arguments \
        '*'--vary'[a key and the values it takes; a list, from..to step s, from..to with --sample, or files of a section]:KEY=VALUES:_leat_key' \
        --rows'[a table of designs, headers are keys]:FILE:_files' \
        --sample'[so many designs between the ends]:N: ' \
        --seed'[draws with another seed; other numbers as good]:N: ' \
        '*'--measure'[a number to show of each design]:NAME:(flow_low_L_min flow_full_L_min margin_m margin_pct fill_time_s velocity_m_s drain_back_L derate_pct usable_L full_L capacity_L tank_height_mm litres_per_step blind_bottom_L top_step_L blind_top_L sender_steps pots height_mm total_height_mm top_pot_mm pot_spacing_mm filament_kg print_h print_days spools cost_filament cost_parts mass_wet_kg deck_kPa tips_at_m_s slides_at_m_s lid_tips_at_m_s opens_at_m_s safety_factor tension_N least_run_s run_share_pct starts_per_day kwh_day kwh_season cost_electricity relay_days dry_day_min dry_night_min drunk_season_L water_season_L feed_season_mL drained_season_L lowest_L topups changes dry_days overflow_days ec_min_mS_cm ec_max_mS_cm cost_season harvest_kg payback_seasons)' \
        --measures'[lists the numbers that designs can be compared by]' \
        --rank'[least first; -NAME for most first]:NAME:(flow_low_L_min flow_full_L_min margin_m margin_pct fill_time_s velocity_m_s drain_back_L derate_pct usable_L full_L capacity_L tank_height_mm litres_per_step blind_bottom_L top_step_L blind_top_L sender_steps pots height_mm total_height_mm top_pot_mm pot_spacing_mm filament_kg print_h print_days spools cost_filament cost_parts mass_wet_kg deck_kPa tips_at_m_s slides_at_m_s lid_tips_at_m_s opens_at_m_s safety_factor tension_N least_run_s run_share_pct starts_per_day kwh_day kwh_season cost_electricity relay_days dry_day_min dry_night_min drunk_season_L water_season_L feed_season_mL drained_season_L lowest_L topups changes dry_days overflow_days ec_min_mS_cm ec_max_mS_cm cost_season harvest_kg payback_seasons)' \
        --pareto'[designs no other beats in all of these]:A,B: ' \
        --top'[the first N only]:N: ' \
        '*'--where'[designs that meet it only]:CONDITION: ' \
        --all'[designs that fail a rule, too]' \
        '*'--rule'[judges this rule only]:ID:_leat_rule' \
        --slice'[the i-th of n parts]:I/N: ' \
        --jobs'[threads; as many as the machine has otherwise]:N: ' \
        --nudge'[moves each guess to its ends; which answer moves most]' \
        --doubt'[draws all guesses N times; how sure each rule is]:N: ' \
        --yes'[also for more than 100 million designs]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        --chart'[text draws the answer, too, in plain characters; a page of html has its charts anyway]' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'plan')
      (( CURRENT == 3 )) && compadd -- new set schema show card header keys
      _arguments \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' ;;
    'plan new')
      _arguments \
        --name'[name of the plan]:NAME: ' \
        --currency'[currency of the plan'\''s prices]:CODE: ' \
        --force'[writes over a file that is there already]' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' ;;
    'plan set')
      _arguments \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_or_key' ;;
    'plan schema')
      _arguments \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' ;;
    'plan show')
      _arguments \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'plan card')
      _arguments \
        --paper'[paper that it is printed on]:SIZE:(a4 letter)' \
        --dipstick'[a strip in true scale to cut out and tape to the tank instead]' \
        --date'[date on the card; today otherwise]:DATE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'plan header')
      _arguments \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_plan_files' ;;
    'plan keys')
      _arguments \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:_leat_key' ;;
    'units')
      _arguments \
        {--format,-f}'[what the answer is written as; html is one page for a browser, charts inside, without any network]:FORMAT:(text csv json html)' \
        --value'[only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1]:KEY:_leat_key' \
        {--output,-o}'[writes the answer to a file, whole or not at all]:FILE:_files' \
        --units'[units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric]:SYSTEM:(metric us)' \
        --delimiter'[between the columns of csv, read or written]:CHAR: ' \
        --decimal'[decimal sign of csv, read or written]:CHAR: ' \
        --raw'[csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them]' \
        --color'[colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set]:WHEN:(auto always never)' \
        {--quiet,-q}'[no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt]' \
        --explain'[shows each formula with the numbers in it, its range and its source]' \
        {--help,-h}'[shows this help]' \
        '*:operand:(length area volume mass time flow head pressure temperature speed power energy force EC concentration alkalinity resistance voltage current angle share count number)' ;;
  esac
}

if [[ $funcstack[1] = _leat ]]; then
  _leat "$@"
elif (( $+functions[compdef] )); then
  compdef _leat leat
fi
