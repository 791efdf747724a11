#compdef leat
# Completion of leat for zsh: source it behind compinit, or put it on the fpath as _leat.
# Made from the declarations of the program; change those.

_leat_keys=('name=' 'about=' 'currency=' 'units=' 'site.time_zone=' 'site.latitude=' 'site.altitude=' 'site.terrain=' 'site.height_above_ground=' 'site.wind.speed=' 'site.wind.is=' 'site.shelter=' 'site.weather=' 'site.sun_on_tank=' 'tank.shape=' 'tank.bottom=' 'tank.top=' 'tank.diameter=' 'tank.length=' 'tank.height=' 'tank.corner=' 'tank.corner_top=' 'tank.table=' 'tank.between=' 'tank.bodies[0].name=' 'tank.bodies[0].area=' 'tank.bodies[0].from=' 'tank.bodies[0].to=' 'tank.holds=' 'tank.holds_full=' 'tank.full=' 'tank.low=' 'tank.intake=' 'tank.rim_overflow=' 'tank.wall.thickness=' 'tank.wall.colour=' 'tank.wall.insulation=' 'tank.warmest=' 'tank.mass=' 'tank.foot=' 'tank.ground=' 'tank.rain_area=' 'tank.drain.bore=' 'tank.drain.height=' 'tank.drain.length=' 'tank.drain.drop=' 'sender.steps=' 'sender.edges=' 'sender.ladder.reeds=' 'sender.ladder.first=' 'sender.ladder.pitch=' 'sender.ladder.levels=' 'sender.ladder.resistors=' 'sender.ladder.empty=' 'sender.ladder.full=' 'sender.ladder.return_at=' 'sender.ladder.pull_in=' 'sender.ladder.drop_out=' 'sender.ladder.stops=' 'sender.below=' 'sender.hysteresis=' 'sender.hysteresis_volume=' 'sender.edge_error=' 'sender.tolerance=' 'sender.reading=' 'sender.lead=' 'sender.open_above=' 'sender.short_below=' 'sender.divider.supply=' 'sender.divider.resistor=' 'sender.divider.sender_side=' 'sender.divider.bits=' 'sender.divider.reference=' 'sender.divider.resistor_tolerance=' 'sender.divider.supply_tolerance=' 'sender.divider.reference_tolerance=' 'sender.divider.adc_error=' 'sender.divider.blind=' 'sender.divider.ratiometric=' 'pump.curve=' 'pump.shutoff_head=' 'pump.max_flow=' 'pump.derate=' 'pump.speed=' 'pump.measured=' 'pump.power=' 'pump.power_factor=' 'pump.supply.mains=' 'pump.supply.dc=' 'pump.supply.cable.length=' 'pump.supply.cable.section=' 'pump.check_valve=' 'pump.body=' 'cap_sensor.wet=' 'cap_sensor.dry=' 'hold_up=' 'pipe.bore=' 'pipe.length=' 'pipe.material=' 'pipe.roughness=' 'pipe.k=' 'pipe.fittings=' 'pipe.valve=' 'towers[0].name=' 'towers[0].count=' 'towers[0].riser.bore=' 'towers[0].riser.length=' 'towers[0].riser.material=' 'towers[0].riser.roughness=' 'towers[0].riser.k=' 'towers[0].riser.fittings=' 'towers[0].riser.valve=' 'towers[0].outlet=' 'towers[0].wanted=' 'towers[0].base.height=' 'towers[0].modules[0].name=' 'towers[0].modules[0].count=' 'towers[0].modules[0].height=' 'towers[0].modules[0].overlap=' 'towers[0].modules[0].diameter=' 'towers[0].modules[0].wall=' 'towers[0].modules[0].pots=' 'towers[0].modules[0].pot=' 'towers[0].modules[0].turn=' 'towers[0].modules[0].mass=' 'towers[0].modules[0].print_time=' 'towers[0].cap.mass=' 'towers[0].cap.spreader=' 'towers[0].cap.gap=' 'towers[0].cap.plate=' 'towers[0].cap.clearance=' 'towers[0].cap.grip=' 'towers[0].cap.print_time=' 'towers[0].guys.lines=' 'towers[0].guys.ring=' 'towers[0].guys.run=' 'towers[0].guys.anchor=' 'towers[0].foot_radius=' 'towers[0].fastened=' 'strainer.aperture=' 'strainer.wire=' 'strainer.diameter=' 'strainer.clogged=' 'strainer.freeboard=' 'timing[0].run=' 'timing[0].rest=' 'timing[0].from=' 'timing[0].to=' 'timing[0].months=' 'timing[0].days=' 'wetting=' 'dry_limit.day=' 'dry_limit.night=' 'dry_limit.alarm=' 'controller.power=' 'controller.relay.rated=' 'controller.relay.coil=' 'controller.relay.coil_when=' 'controller.relay.cycles=' 'controller.relay.inrush=' 'backup.hours=' 'backup.battery=' 'backup.capacity=' 'backup.chemistry=' 'backup.depth=' 'backup.reserve=' 'backup.inverter=' 'backup.idle=' 'tariff.price=' 'tariff.standing=' 'tariff.bands[0].from=' 'tariff.bands[0].to=' 'tariff.bands[0].months=' 'tariff.bands[0].days=' 'tariff.bands[0].price=' 'water.ec=' 'water.alkalinity=' 'water.ph=' 'water.nitrate=' 'water.phosphorus=' 'water.potassium=' 'water.calcium=' 'water.magnesium=' 'water.sulfate=' 'water.sodium=' 'water.chloride=' 'water.temperature=' 'water.price=' 'rain.ec=' 'feed.parts[0].name=' 'feed.parts[0].rate=' 'feed.parts[0].price=' 'feed.rate_ec=' 'feed.acid.name=' 'feed.acid.price=' 'feed.stock.bottle=' 'feed.stock.makes=' 'feed.stock.coldest=' 'feed.stock.grams=' 'feed.salts[0].name=' 'feed.salts[0].elements=' 'feed.salts[0].price=' 'meters.ec.slope=' 'meters.ec.checked=' 'meters.ec.compensates=' 'meters.ec.scale=' 'meters.ph.offset=' 'meters.ph.checked=' 'target.ec=' 'target.ec_low=' 'target.ec_high=' 'target.ph=' 'target.ph_low=' 'target.ph_high=' 'thirst=' 'drinks=' 'crops[0].name=' 'crops[0].tower=' 'crops[0].pots=' 'crops[0].sow=' 'crops[0].until=' 'crops[0].every=' 'crops[0].nursery=' 'crops[0].growing=' 'crops[0].germination=' 'crops[0].loss=' 'crops[0].harvest=' 'crops[0].water=' 'crops[0].ec_low=' 'crops[0].ec_high=' 'crops[0].ph_low=' 'crops[0].ph_high=' 'crops[0].seed_price=' 'crops[0].shop_price=' 'season.from=' 'season.to=' 'season.refill=' 'season.change.every=' 'season.change.or_added=' 'season.away[0].from=' 'season.away[0].to=' 'season.catch=' 'prices.filament=' 'prices.spool=' 'prices.pump=' 'prices.tank=' 'prices.sender=' 'prices.controller=' 'prices.other=' 'prices.life=' 'printer.power=' 'printer.count=' 'printer.jobs=' 'printer.waste=' 'clean.with=' 'clean.strength=' 'clean.aim=' 'clean.contact=' 'limits=' 'log.time=' 'log.reading=' 'log.ec=' 'log.ph=' 'log.temperature=' 'log.pump=' 'log.cap=' 'log.delimiter=' 'log.decimal=')
_leat_rules=(reaches-top pump-margin tower-fed flow-wanted valve-needed pump-on-curve outlet-over-top reach no-siphon freeboard intake-covered cap-lift film-closed film-not-flooding gap-carries gap-clear riser-not-fast riser-not-slow strainer-head strainer-holds pump-measured steps-resolvable low-above-step intake-seen full-seen step-under-thirst dip-seen sender-fitted run-covers rest-day rest-night starts-per-hour relay-life cost-season backup-hours cable-drop crops-share target-in-band target-above-water oxygen meters-checked water-alkalinity change-interval parts-compatible acid-household)
_leat_commands=(
  'head:head lost in a riser at a flow'
  'pump:where a pump'\''s curve meets the riser(s): flow, margin, throttle, fill time'
  'tank:litres at a level and back; dipstick table; size for a thirst'
  'level:ohms or counts of a stepped float sender to litres'
  'ec:EC, ppm scales, temperature; meter check against a standard; EC predicted from ions'
  'dose:concentrate by EC or label rate; `dose salts`: grams for asked elements'
  'stock:what to weigh into two bottles; solubility and precipitation'
  'topup:what to drain and add to reach a volume and an EC: the daily line'
  'acid:acid to bring water of an alkalinity to a pH'
  'crops:EC and pH bands with sources; which crops can share one tank'
  'oxygen:oxygen the water can hold at a temperature and altitude'
  'clean:sanitiser dilution for closing the season'
  'duty:pump timing: kWh, cost, starts, relay life; compares and proposes timings'
  'check:every design rule over one or many plans: pass, warn, fail, unknown'
  'plan:what can be done with a plan: start one, change it, show it, look up its keys'
  'units:what can be typed: every unit, by what it measures'
)

_leat_plan_files() { _files -g '*.y(a|)ml' }
_leat_key() { compadd -S '' -- $_leat_keys }
_leat_rule() { compadd -- $_leat_rules }
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
    'level table'|'level ladder'|'level divider'|'level fit'|'dose salts'|'duty backup'|'duty cable'|'plan new'|'plan set'|'plan schema'|'plan show'|'plan keys') command="${words[2]} ${words[3]}" ;;
  esac
  case $command in
    'head')
      _arguments \
        --flow'[flow in the riser]:FLOW: ' \
        --lift'[height of the outlet over the water, at its lowest working level]:HEIGHT: ' \
        '*'--bore'[inside diameter; several for pipes in series]:LENGTH: ' \
        '*'--length'[length of pipe, one a bore]:LENGTH: ' \
        '*'--roughness'[roughness of the wall, one or one a bore]:LENGTH: ' \
        '*'--k'[sum of the loss factors of the fittings, one a bore]:K: ' \
        '*'--fitting'[a fitting by name and how many, in the last bore; instead of --k]:NAME=COUNT:(entrance= entrance-inward= entrance-rounded= exit= elbow= elbow-long= elbow-smooth= elbow-45= bend-180= tee-run= tee-branch= union= coupling= push-elbow= barb= swing-check= lift-check=)' \
        --temperature'[temperature of the water]:TEMP: ' \
        --tower'[tower of the plan; the first otherwise]:NAME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --power'[electrical power]:POWER: ' \
        --lift'[height of the outlet over the water, at its lowest working level]:HEIGHT: ' \
        --level'[one level of the tank instead of low and full]:LENGTH: ' \
        --bore'[inside diameter of the riser]:LENGTH: ' \
        --length'[length of the riser]:LENGTH: ' \
        --roughness'[roughness of its wall]:LENGTH: ' \
        --k'[sum of the loss factors of its fittings]:K: ' \
        --temperature'[temperature of the water]:TEMP: ' \
        --check-valve'[whether a check valve keeps the riser full]:YES: ' \
        --throttle-to'[flow that a valve in the riser should leave]:FLOW: ' \
        --measured'[flow caught in a bucket, all towers together; finds the derate]:FLOW: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
    'tank')
      _arguments \
        '*'--level'[level over the inside of the floor]:LENGTH: ' \
        '*'--volume'[litres whose level is asked]:VOLUME: ' \
        --every'[dipstick table, a row every so many millimetres]:STEP: ' \
        --thirst'[what the plants drink; the size that is needed]:FLOW: ' \
        --days'[days it must last, with --thirst]:N: ' \
        --shape'[shape of the inside]:SHAPE:(box tapered-box cylinder cone lying-cylinder table)' \
        --top'[inside at the rim]:SIZE: ' \
        --bottom'[inside at the floor]:SIZE: ' \
        --diameter'[inside diameter of a cylinder]:LENGTH: ' \
        --length'[inside length of a lying cylinder]:LENGTH: ' \
        --height'[inside height]:LENGTH: ' \
        --corner'[radius of the upright corners]:LENGTH: ' \
        --corner-top'[radius of the corners at the rim]:LENGTH: ' \
        '*'--table'[a row of a strapping table]:ROW: ' \
        --dipstick'[levels and litres as --every prints them, instead of the shape; - is standard input]:FILE:_files' \
        --drain-bore'[inside diameter of the drain; how long it takes to empty]:LENGTH: ' \
        --drain-height'[level of the drain'\''s centre]:LENGTH: ' \
        --full'[level when full]:LENGTH: ' \
        --low'[refill mark]:LENGTH: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --counts'[the readings are counts of the ADC, through sender.divider]' \
        --motion'[which way the level has moved since the reading last changed; rising, falling or unknown]:WAY:(unknown rising falling)' \
        --column'[reads rows from standard input (or --rows) and answers for this column of each]:NAME: ' \
        --rows'[file of rows instead of standard input, with --column]:FILE:_files' \
        --prefix'[put before the answer'\''s column names, where they clash]:TEXT: ' \
        --strict'[stops with exit code 2 at the first bad row]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
    'level table')
      _arguments \
        --every'[a row every so many ohms, interpolated; smooth for a display, no finer than the steps]:OHM: ' \
        --c'[a C array for a microcontroller]' \
        --motion'[which way the level has moved since the reading last changed; rising, falling or unknown]:WAY:(unknown rising falling)' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --range'[both from the trade; 0-190, 10-180 or 240-33]:RANGE: ' \
        --steps'[how many reeds]:N: ' \
        --series'[resistor values you can buy; E24 unless said]:SERIES:(E6 E12 E24 E48 E96)' \
        --equal'[ohms; even pitch, even ohms; litres; reeds spaced for the same litres a step; needle; even pitch, ohms that follow the litres, for a gauge'\''s needle]:WHAT:(ohms litres needle)' \
        --first'[level at the lowest reed]:LENGTH: ' \
        --last'[level at the highest reed]:LENGTH: ' \
        --pull-in'[half width at which a reed closes]:LENGTH: ' \
        --drop-out'[half width at which it opens again]:LENGTH: ' \
        --tolerance'[tolerance of the resistors]:SHARE: ' \
        --reading'[tolerance of the meter or ADC]:OHM: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --series'[values you can buy; E24 unless said]:SERIES:(E6 E12 E24 E48 E96 any)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --cumulative'[the litres are additions, to be summed up]' \
        --start'[litres in the tank before the first pour, with --cumulative]:VOLUME: ' \
        --litres-column'[column of the litres]:NAME: ' \
        --ohm-column'[column of the ohms]:NAME: ' \
        --motion'[rising when poured in (unless said), falling when drained]:WAY:(rising falling)' \
        --drained'[pairs while draining, for the hysteresis]:FILE:_files' \
        --same-within'[readings nearer than this are one step; half the smallest gap]:OHM: ' \
        '*'--leave-out'[leaves a row out, as a slip]:ROW: ' \
        --paste'[prints the sender section alone, to paste or redirect into the plan]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
    'ec')
      _arguments \
        --at'[temperature of a reading without compensation; leave it out when the meter says ATC]:TEMPERATURE: ' \
        --scale'[ppm scale of the meter]:500|640|700: ' \
        --coefficient'[change of the EC a degree, instead of 1.91 %]:SHARE: ' \
        --natural-water'[function of ISO 7888 for tap and well water, 0 to 35.9 C]' \
        --standard'[checks the meter; the value on the bottle of potassium chloride standard, at 25 C]:EC: ' \
        --compensates'[whether the meter brings its readings to 25 C itself (ATC)]:YES: ' \
        '*'--ion'[an ion of the solution in mg/L; predicts the EC; N-NO3 counts the nitrogen only]:NAME=MG_L: ' \
        '*'--weighed'[a salt weighed into --volume; predicts the EC]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --volume'[finished solution, with --weighed]:VOLUME: ' \
        --unit'[unit of bare numbers, where the column'\''s name does not end in it]:UNIT:(mS/cm uS/cm dS/m mS/m ppm)' \
        --column'[reads rows from standard input (or --rows) and answers for this column of each]:NAME: ' \
        --rows'[file of rows instead of standard input, with --column]:FILE:_files' \
        --prefix'[put before the answer'\''s column names, where they clash]:TEXT: ' \
        --strict'[stops with exit code 2 at the first bad row]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --from'[its EC at 25 C; the plan'\''s water.ec otherwise]:EC: ' \
        --to'[EC wanted]:EC: ' \
        --label'[dose by the label instead; this share of its rate; tells the EC it makes]:SHARE: ' \
        --rate'[label rate, all parts together; with --each the rate of each part]:RATE: ' \
        --rate-ec'[what that rate adds to pure water]:EC: ' \
        --parts'[equal bottles that share the rate]:N: ' \
        --each'[the rate is that of each part; "5 mL of each"]' \
        --step'[mark of the measuring cup or syringe; each part to its nearest mark]:VOLUME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        '*'--ask'[an element wanted, in mg/L; N-NO3 and N-NH4 apart; oxides such as K2O too]:ELEMENT=MG_L: ' \
        '*'--salt'[a salt that may be weighed; feed.salts of the plan otherwise]:NAME:(calcium-nitrate-4h2o calcium-nitrate-greenhouse potassium-nitrate ammonium-nitrate magnesium-nitrate-6h2o sodium-nitrate monopotassium-phosphate dipotassium-phosphate monoammonium-phosphate diammonium-phosphate magnesium-sulfate-7h2o magnesium-sulfate-1h2o potassium-sulfate ammonium-sulfate calcium-chloride-2h2o calcium-sulfate-2h2o potassium-chloride magnesium-chloride-6h2o sodium-chloride potassium-bicarbonate iron-sulfate-7h2o manganese-sulfate-1h2o manganese-chloride-4h2o zinc-sulfate-7h2o zinc-sulfate-1h2o copper-sulfate-5h2o boric-acid borax sodium-molybdate-2h2o ammonium-molybdate iron-edta-13 iron-dtpa-11 iron-dtpa-6-liquid iron-eddha-6 molybdic-acid-85)' \
        '*'--weighed'[the other way round; a salt that was weighed]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --within'[exit code 1 when an asked element is missed by more]:SHARE: ' \
        --scale-step'[smallest step of the scale; every salt to its nearest step]:STEP: ' \
        --list'[lists the salts with formula, elements and solubility]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        '*'--weigh'[a salt and its grams; feed.stock.grams of the plan otherwise]:SALT=GRAMS:(calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=)' \
        --for'[the grams are for this much tower water, as `dose salts` tells them; for one bottle otherwise]:VOLUME: ' \
        --bottle'[size of each bottle]:VOLUME: ' \
        --makes'[tower water that one bottle of each makes]:VOLUME: ' \
        --coldest'[coldest night where the bottles stand]:TEMP: ' \
        --one-bottle'[judges all salts in one bottle]' \
        --season'[solution the season takes; from the plan otherwise]:VOLUME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
    'topup')
      _arguments \
        --volume'[what is in the tank; a band as 28..34 L when a stepped sender reads it]:VOLUME: ' \
        --reading'[instead of a volume, what the plan'\''s sender reads, with the pump off]:OHM: ' \
        --counts'[the reading is counts of the ADC, through sender.divider]' \
        --motion'[which way the level has moved since the reading last changed]:WAY:(unknown rising falling)' \
        --ec'[its EC at 25 C]:EC: ' \
        --full'[litres at the full mark; the plan'\''s otherwise]:VOLUME: ' \
        --target'[EC aimed at]:EC: ' \
        --water-ec'[EC of the water poured]:EC: ' \
        --rate'[label rate, all parts together]:RATE: ' \
        --rate-ec'[what that rate adds to pure water]:EC: ' \
        --parts'[equal bottles that share the rate]:N: ' \
        --rain'[rain that has fallen in since the reading]:VOLUME: ' \
        --rainfall'[the same by a rain gauge, over tank.rain_area of the plan]:DEPTH: ' \
        --rain-ec'[EC of the rain]:EC: ' \
        --can'[biggest can; splits the water]:VOLUME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
    'acid')
      _arguments \
        --volume'[the water; a full tank of the plan otherwise]:VOLUME: ' \
        --alkalinity'[its alkalinity; mg/L as CaCO3, meq/L or dH of carbonate hardness]:ALK: ' \
        --ph'[its pH]:PH: ' \
        --to'[the pH wanted]:PH: ' \
        --acid'[acid and strength in per cent by weight; citric is weighed]:NAME:(nitric-38 nitric-60 phosphoric-75 phosphoric-85 sulfuric-35 sulfuric-37 hydrochloric-31 citric citric-1h2o)' \
        --density'[the acid'\''s, from its label; a handbook'\''s otherwise]:DENSITY: ' \
        --temperature'[temperature of the water]:TEMP: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --list'[lists every crop of the table]' \
        --widen'[a pH given as one point counts 0.3 either way]' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        '*'--at'[temperature of the solution; tank.warmest of the plan otherwise]:TEMPERATURE: ' \
        --altitude'[height over the sea]:HEIGHT: ' \
        --pressure'[air pressure at the place itself, not the forecast'\''s, instead of the altitude]:PRESSURE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --volume'[water and sanitiser together; what the plan'\''s loop needs otherwise]:VOLUME: ' \
        --with'[sanitiser; household bleach or peroxide]:AGENT:(hypochlorite peroxide)' \
        --strength'[strength on the bottle'\''s label]:SHARE: ' \
        --basis'[what the label'\''s per cent counts; grams of the agent in 100 mL or in 100 g; or grams of sodium hypochlorite]:COUNTS:(volume weight hypochlorite-volume hypochlorite-weight)' \
        --density'[the bottle'\''s density, for labels by weight]:DENSITY: ' \
        --aim'[strength wanted in the loop; 3 g/L of peroxide is 0.3 %]:STRENGTH: ' \
        --contact'[how long it runs]:TIME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
      (( CURRENT == 3 )) && compadd -- backup cable
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
        --plant-use'[with --plug-water, what one plant drinks]:FLOW: ' \
        --dry-limit'[longest rest by day]:TIME: ' \
        --dry-limit-night'[longest rest at night]:TIME: ' \
        --wetting'[how long the lowest pot is wetted]:TIME: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        --temperature'[temperature of the copper, 20 C otherwise]:TEMP: ' \
        --inrush'[current at the moment of starting, times the running current]:N: ' \
        --least-voltage'[voltage the pump needs to start]:VOLTAGE: ' \
        --drop'[drop that is still good, 5 % otherwise]:SHARE: ' \
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--plan,-p}'[the plan to read; - is standard input; LEAT_PLAN names it otherwise]:FILE:_leat_plan_files' \
        '*'--set'[sets a key of the plan, the value as in YAML; an empty one removes it]:KEY=VALUE:_leat_key' \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
    'plan')
      (( CURRENT == 3 )) && compadd -- new set schema show keys
      _arguments \
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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
        {--format,-f}'[what the answer is written as]:FORMAT:(text csv json)' \
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

(( $+functions[compdef] )) && compdef _leat leat
