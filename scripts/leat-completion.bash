# Completion of leat for bash:  source scripts/leat-completion.bash
# Made from the declarations of the program; change those.

_leat_commands='check head pump tank units help'

_leat_second() {
  case $1 in
  esac
}

_leat_flags() {
  case $1 in
    head) echo '--flow --lift --bore --length --roughness --k --temperature --tower --plan --set --format --output --units --delimiter --decimal --quiet --explain --help' ;;
    pump) echo '--shutoff-head --max-flow --point --derate --speed --power --lift --level --bore --length --roughness --k --temperature --check-valve --throttle-to --measured --plan --set --format --output --units --delimiter --decimal --quiet --explain --help' ;;
    tank) echo '--level --volume --every --thirst --days --shape --top --bottom --diameter --length --height --corner --corner-top --table --drain-bore --drain-height --full --low --plan --set --format --output --units --delimiter --decimal --quiet --explain --help' ;;
    check) echo '--all --strict --rules --rule --plan --set --format --output --units --delimiter --decimal --quiet --explain --help' ;;
    units) echo '--format --output --units --delimiter --decimal --quiet --explain --help' ;;
  esac
}

# What stands behind a flag: words, keys of a plan, files, or something only you know.
_leat_values() {
  case $1:$2 in
    head:--output|head:-o) echo 'files' ;;
    head:--set) echo 'keys' ;;
    head:--units) echo 'metric us' ;;
    head:--flow|head:--lift|head:--bore|head:--length|head:--roughness|head:--k|head:--temperature|head:--tower|head:--delimiter|head:--decimal) echo 'nothing' ;;
    head:--plan|head:-p) echo 'plans' ;;
    head:--format|head:-f) echo 'text csv json' ;;
    pump:--output|pump:-o) echo 'files' ;;
    pump:--set) echo 'keys' ;;
    pump:--units) echo 'metric us' ;;
    pump:--shutoff-head|pump:--max-flow|pump:--point|pump:--derate|pump:--speed|pump:--power|pump:--lift|pump:--level|pump:--bore|pump:--length|pump:--roughness|pump:--k|pump:--temperature|pump:--check-valve|pump:--throttle-to|pump:--measured|pump:--delimiter|pump:--decimal) echo 'nothing' ;;
    pump:--plan|pump:-p) echo 'plans' ;;
    pump:--format|pump:-f) echo 'text csv json' ;;
    tank:--shape) echo 'box tapered-box cylinder cone lying-cylinder table' ;;
    tank:--output|tank:-o) echo 'files' ;;
    tank:--set) echo 'keys' ;;
    tank:--units) echo 'metric us' ;;
    tank:--level|tank:--volume|tank:--every|tank:--thirst|tank:--days|tank:--top|tank:--bottom|tank:--diameter|tank:--length|tank:--height|tank:--corner|tank:--corner-top|tank:--table|tank:--drain-bore|tank:--drain-height|tank:--full|tank:--low|tank:--delimiter|tank:--decimal) echo 'nothing' ;;
    tank:--plan|tank:-p) echo 'plans' ;;
    tank:--format|tank:-f) echo 'text csv json' ;;
    check:--output|check:-o) echo 'files' ;;
    check:--set) echo 'keys' ;;
    check:--units) echo 'metric us' ;;
    check:--delimiter|check:--decimal) echo 'nothing' ;;
    check:--plan|check:-p) echo 'plans' ;;
    check:--rule) echo 'rules' ;;
    check:--format|check:-f) echo 'text csv json' ;;
    units:--output|units:-o) echo 'files' ;;
    units:--units) echo 'metric us' ;;
    units:--delimiter|units:--decimal) echo 'nothing' ;;
    units:--format|units:-f) echo 'text csv json' ;;
  esac
}

_leat_operands() {
  case $1 in
    check) echo plans ;;
  esac
}

_leat_keys='name= about= currency= site.time_zone= site.latitude= site.altitude= site.terrain= site.height_above_ground= site.wind.speed= site.wind.is= site.shelter= site.weather= site.sun_on_tank= tank.shape= tank.bottom= tank.top= tank.diameter= tank.length= tank.height= tank.corner= tank.corner_top= tank.table= tank.between= tank.bodies[0].name= tank.bodies[0].area= tank.bodies[0].from= tank.bodies[0].to= tank.full= tank.low= tank.intake= tank.rim_overflow= tank.wall.thickness= tank.wall.colour= tank.wall.insulation= tank.mass= tank.foot= tank.ground= tank.rain_area= tank.drain.bore= tank.drain.height= tank.drain.length= tank.drain.drop= sender.steps= sender.edges= sender.ladder.reeds= sender.ladder.first= sender.ladder.pitch= sender.ladder.resistors= sender.ladder.empty= sender.ladder.full= sender.ladder.return_at= sender.ladder.pull_in= sender.ladder.drop_out= sender.ladder.stops= sender.below= sender.hysteresis= sender.tolerance= sender.reading= sender.lead= sender.open_above= sender.short_below= sender.divider.supply= sender.divider.resistor= sender.divider.sender_side= sender.divider.bits= sender.divider.reference= sender.divider.resistor_tolerance= sender.divider.supply_tolerance= sender.divider.reference_tolerance= sender.divider.adc_error= sender.divider.blind= sender.divider.ratiometric= pump.curve= pump.shutoff_head= pump.max_flow= pump.derate= pump.speed= pump.measured= pump.power= pump.power_factor= pump.supply.mains= pump.supply.dc= pump.supply.cable.length= pump.supply.cable.section= pump.check_valve= pump.body= cap_sensor.wet= cap_sensor.dry= hold_up= pipe.bore= pipe.length= pipe.material= pipe.roughness= pipe.k= pipe.fittings= pipe.valve= towers[0].name= towers[0].count= towers[0].riser.bore= towers[0].riser.length= towers[0].riser.material= towers[0].riser.roughness= towers[0].riser.k= towers[0].riser.fittings= towers[0].riser.valve= towers[0].outlet= towers[0].wanted= towers[0].base.height= towers[0].modules[0].name= towers[0].modules[0].count= towers[0].modules[0].height= towers[0].modules[0].overlap= towers[0].modules[0].diameter= towers[0].modules[0].wall= towers[0].modules[0].pots= towers[0].modules[0].pot= towers[0].modules[0].turn= towers[0].modules[0].mass= towers[0].modules[0].print_time= towers[0].cap.mass= towers[0].cap.spreader= towers[0].cap.gap= towers[0].cap.plate= towers[0].cap.clearance= towers[0].cap.grip= towers[0].cap.print_time= towers[0].guys.lines= towers[0].guys.ring= towers[0].guys.run= towers[0].guys.anchor= towers[0].foot_radius= towers[0].fastened= strainer.aperture= strainer.wire= strainer.diameter= strainer.clogged= strainer.freeboard= timing[0].run= timing[0].rest= timing[0].from= timing[0].to= timing[0].months= timing[0].days= wetting= dry_limit.day= dry_limit.night= dry_limit.alarm= controller.power= controller.relay.rated= controller.relay.coil= controller.relay.coil_when= controller.relay.cycles= controller.relay.inrush= backup.hours= backup.battery= backup.capacity= backup.depth= backup.reserve= backup.inverter= backup.idle= tariff.price= tariff.standing= tariff.bands[0].from= tariff.bands[0].to= tariff.bands[0].months= tariff.bands[0].days= tariff.bands[0].price= water.ec= water.alkalinity= water.ph= water.nitrate= water.phosphorus= water.potassium= water.calcium= water.magnesium= water.sulfate= water.sodium= water.chloride= water.temperature= water.price= rain.ec= feed.parts[0].name= feed.parts[0].rate= feed.parts[0].price= feed.rate_ec= feed.acid.name= feed.acid.price= feed.salts[0].name= feed.salts[0].elements= feed.salts[0].price= meters.ec.slope= meters.ec.checked= meters.ec.compensates= meters.ec.scale= meters.ph.offset= meters.ph.checked= target.ec= target.ec_low= target.ec_high= target.ph= target.ph_low= target.ph_high= thirst= drinks= crops[0].name= crops[0].tower= crops[0].pots= crops[0].sow= crops[0].until= crops[0].every= crops[0].nursery= crops[0].growing= crops[0].germination= crops[0].loss= crops[0].harvest= crops[0].water= crops[0].seed_price= crops[0].shop_price= season.from= season.to= season.refill= season.change.every= season.change.or_added= season.away[0].from= season.away[0].to= season.catch= prices.filament= prices.spool= prices.pump= prices.tank= prices.sender= prices.controller= prices.other= prices.life= printer.power= printer.count= printer.jobs= printer.waste= clean.with= clean.strength= clean.aim= clean.contact= limits= log.time= log.reading= log.ec= log.ph= log.temperature= log.pump= log.cap= log.delimiter= log.decimal='
_leat_rules='reaches-top pump-margin tower-starved flow-wanted run-out outlet-over-top siphon-back freeboard intake-covered cap-lift film-closed film-flood gap-carries gap-clogs riser-fast riser-slow strainer-head strainer-holds pump-guess'

_leat_plan_files() {
  local name
  compgen -d -S / -- "$1"
  compgen -f -- "$1" | while IFS= read -r name; do
    case $name in *.yaml|*.yml) printf '%s\n' "$name" ;; esac
  done
}

_leat() {
  local cur=$2 command words value flag i
  COMPREPLY=()
  if [ "$COMP_CWORD" -le 1 ]; then
    mapfile -t COMPREPLY < <(compgen -W "$_leat_commands --help --version" -- "$cur")
    return
  fi
  command=${COMP_WORDS[1]}
  if [ "$command" = help ]; then
    mapfile -t COMPREPLY < <(compgen -W "$_leat_commands" -- "$cur")
    return
  fi
  words=$(_leat_second "$command")
  if [ -n "$words" ] && [ "$COMP_CWORD" -gt 2 ]; then
    case " $words " in *" ${COMP_WORDS[2]} "*) command="$command ${COMP_WORDS[2]}" ;; esac
  fi
  # The flag this value belongs to; bash parts --flag=value at the equals sign.
  i=$((COMP_CWORD - 1))
  [ "$cur" = = ] && cur=
  [ "${COMP_WORDS[i]}" = = ] && i=$((i - 1))
  [ "${COMP_WORDS[COMP_CWORD]}" = = ] && i=$((COMP_CWORD - 1))
  flag=${COMP_WORDS[i]}
  case $flag in
    -*) value=$(_leat_values "$command" "$flag") ;;
  esac
  if [ -z "$value" ] && [ "${cur#-}" = "$cur" ]; then
    value=$(_leat_operands "$command")
  fi
  case $value in
    plans)
      compopt -o filenames 2>/dev/null
      mapfile -t COMPREPLY < <(_leat_plan_files "$cur")
      ;;
    files)
      compopt -o filenames 2>/dev/null
      mapfile -t COMPREPLY < <(compgen -f -- "$cur")
      ;;
    keys)
      compopt -o nospace 2>/dev/null
      mapfile -t COMPREPLY < <(compgen -W "$_leat_keys" -- "$cur")
      ;;
    rules) mapfile -t COMPREPLY < <(compgen -W "$_leat_rules" -- "$cur") ;;
    nothing) ;;
    '')
      [ "$COMP_CWORD" -eq 2 ] || words=
      mapfile -t COMPREPLY < <(compgen -W "$words $(_leat_flags "$command")" -- "$cur")
      ;;
    *) mapfile -t COMPREPLY < <(compgen -W "$value" -- "$cur") ;;
  esac
}

complete -F _leat leat
