# Completion of leat for bash:  source scripts/leat-completion.bash
# Made from the declarations of the program; change those.

_leat_commands='acid check clean crops dose duty ec head level log oxygen parts plan pump season sow stock sweep tank topup units wind help'

_leat_second() {
  case $1 in
    dose) echo 'salts' ;;
    duty) echo 'backup cable cap' ;;
    level) echo 'table ladder divider fit' ;;
    plan) echo 'new set schema show card header keys' ;;
    season) echo 'day light' ;;
  esac
}

_leat_flags() {
  case $1 in
    head) echo '--flow --lift --bore --length --roughness --ridges --k --fitting --temperature --tower --all-towers --bores --family --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    pump) echo '--shutoff-head --max-flow --point --derate --speed --power --lift --level --bore --length --roughness --ridges --k --temperature --check-valve --throttle-to --measured --balance --jug --at --needed --bores --family --tower --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    tank) echo '--level --volume --every --thirst --days --shape --top --bottom --diameter --length --height --corner --corner-top --floor-rise --floor-flat --surface --table --dipstick --drain-bore --drain-height --full --low --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    wind) echo '--state --gust --mean --terrain --height-above-ground --density --friction --mass --foot --face --lid --tower --foot-radius --lines --ring --run --anchor --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    parts) echo '--modules --reach --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    level) echo '--counts --motion --at-least --column --rows --prefix --strict --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    level\ table) echo '--every --c --cutoff --at-least --motion --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    level\ ladder) echo '--empty --full --range --steps --series --equal --bought --length --first --last --pull-in --drop-out --tolerance --reading --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    level\ divider) echo '--ohm --supply --reference --bits --sender-side --resistor --series --max-current --adc-error --resistor-tolerance --supply-tolerance --reference-tolerance --blind --lead --tolerance --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    level\ fit) echo '--cumulative --totals --start --litres-column --ohm-column --motion --drained --same-within --leave-out --paste --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    log) echo '--alarm --since --now --days-left --events --days --rows --name-column --value-column --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    ec) echo '--at --scale --coefficient --natural-water --standard --compensates --ion --weighed --volume --unit --column --rows --prefix --strict --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    dose) echo '--volume --from --at --scale --to --water-ec --label --rate --rate-ec --parts --each --step --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    dose\ salts) echo '--volume --ask --salt --weighed --within --scale-step --feed --rate --density --list --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    stock) echo '--weigh --for --bottle --makes --coldest --one-bottle --season --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    topup) echo '--volume --reading --counts --log --now --motion --ec --at --scale --full --target --water-ec --rate --rate-ec --parts --weigh --makes --rain --rainfall --rain-ec --ph --was --was-ec --can --column --rows --prefix --strict --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    acid) echo '--volume --alkalinity --ph --to --acid --density --temperature --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    crops) echo '--list --widen --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    oxygen) echo '--at --altitude --pressure --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    clean) echo '--volume --with --strength --basis --density --aim --contact --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    duty) echo '--power --run --rest --against --price --standing --standing-share --days --from --to --time-zone --controller --relay --cycles --coil --inrush --mains --dc --suggest --most-starts --plug-water --plant-use --dry-limit --dry-limit-night --wetting --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    duty\ backup) echo '--hours --battery --capacity --chemistry --depth --reserve --inverter --idle --power --run --rest --controller --dc --sun --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    duty\ cable) echo '--dc --power --length --section --gauge --strands --temperature --inrush --least-voltage --drop --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    duty\ cap) echo '--wet --dry --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    sow) echo '--pots --first --nursery --growing --every --until --germination --loss --turnaround --sizes --earliest-transplant --latest-harvest --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    season) echo '--by --log --now --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    season\ day) echo '--date --tmin --tmax --rh-min --rh-max --rh-mean --dew-point --wind --wind-height --radiation --sun --latitude --altitude --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    season\ light) echo '--month --tmin --tmax --light --lux --lux-of --lux-hours --crop --need --window --distance --cover --transmission --shade --lamp-power --lamp-efficacy --lamp-lumens --lamp-share --lamp-hours --lamp-area --latitude --altitude --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    check) echo '--all --strict --known --compare --rules --rule --doubt --seed --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    sweep) echo '--vary --rows --sample --seed --measure --measures --rank --pareto --top --where --all --rule --slice --jobs --nudge --doubt --yes --plan --set --format --value --output --units --delimiter --decimal --raw --color --chart --quiet --explain --help' ;;
    plan) echo '--format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ new) echo '--name --currency --force --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ set) echo '--format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ schema) echo '--format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ show) echo '--plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ card) echo '--paper --dipstick --date --plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ header) echo '--plan --set --format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    plan\ keys) echo '--format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
    units) echo '--format --value --output --units --delimiter --decimal --raw --color --quiet --explain --help' ;;
  esac
}

# What stands behind a flag: words, keys of a plan, files, or something only you know.
_leat_values() {
  case $1:$2 in
    head:--color) echo 'auto always never' ;;
    head:--fitting) echo 'entrance= entrance-inward= entrance-rounded= exit= elbow= elbow-long= elbow-smooth= elbow-45= bend-180= tee-run= tee-branch= union= coupling= push-elbow= barb= swing-check= lift-check=' ;;
    head:--output|head:-o) echo 'files' ;;
    head:--family) echo 'hose inch-tube silicone vinyl pe drip pex-us pex sch40 pvc-u barb' ;;
    head:--set|head:--value) echo 'keys' ;;
    head:--units) echo 'metric us' ;;
    head:--flow|head:--lift|head:--bore|head:--length|head:--roughness|head:--ridges|head:--k|head:--temperature|head:--tower|head:--all-towers|head:--delimiter|head:--decimal) echo 'nothing' ;;
    head:--plan|head:-p) echo 'plans' ;;
    head:--format|head:-f) echo 'text csv json html' ;;
    pump:--color) echo 'auto always never' ;;
    pump:--output|pump:-o) echo 'files' ;;
    pump:--family) echo 'hose inch-tube silicone vinyl pe drip pex-us pex sch40 pvc-u barb' ;;
    pump:--set|pump:--value) echo 'keys' ;;
    pump:--at) echo 'low full' ;;
    pump:--units) echo 'metric us' ;;
    pump:--shutoff-head|pump:--max-flow|pump:--point|pump:--derate|pump:--speed|pump:--power|pump:--lift|pump:--level|pump:--bore|pump:--length|pump:--roughness|pump:--ridges|pump:--k|pump:--temperature|pump:--check-valve|pump:--throttle-to|pump:--measured|pump:--jug|pump:--tower|pump:--delimiter|pump:--decimal) echo 'nothing' ;;
    pump:--plan|pump:-p) echo 'plans' ;;
    pump:--format|pump:-f) echo 'text csv json html' ;;
    pump:--balance) echo 'wanted equal' ;;
    tank:--color) echo 'auto always never' ;;
    tank:--shape) echo 'box tapered-box cylinder cone lying-cylinder sloping-floor sections table' ;;
    tank:--dipstick|tank:--output|tank:-o) echo 'files' ;;
    tank:--set|tank:--value) echo 'keys' ;;
    tank:--units) echo 'metric us' ;;
    tank:--level|tank:--volume|tank:--every|tank:--thirst|tank:--days|tank:--top|tank:--bottom|tank:--diameter|tank:--length|tank:--height|tank:--corner|tank:--corner-top|tank:--floor-rise|tank:--floor-flat|tank:--surface|tank:--table|tank:--drain-bore|tank:--drain-height|tank:--full|tank:--low|tank:--delimiter|tank:--decimal) echo 'nothing' ;;
    tank:--plan|tank:-p) echo 'plans' ;;
    tank:--format|tank:-f) echo 'text csv json html' ;;
    wind:--color) echo 'auto always never' ;;
    wind:--terrain) echo 'coast flat open suburb city' ;;
    wind:--output|wind:-o) echo 'files' ;;
    wind:--anchor) echo 'ground tank' ;;
    wind:--set|wind:--value) echo 'keys' ;;
    wind:--units) echo 'metric us' ;;
    wind:--state|wind:--gust|wind:--mean|wind:--height-above-ground|wind:--density|wind:--friction|wind:--mass|wind:--foot|wind:--face|wind:--lid|wind:--tower|wind:--foot-radius|wind:--lines|wind:--ring|wind:--run|wind:--delimiter|wind:--decimal) echo 'nothing' ;;
    wind:--plan|wind:-p) echo 'plans' ;;
    wind:--format|wind:-f) echo 'text csv json html' ;;
    parts:--color) echo 'auto always never' ;;
    parts:--output|parts:-o) echo 'files' ;;
    parts:--set|parts:--value) echo 'keys' ;;
    parts:--units) echo 'metric us' ;;
    parts:--modules|parts:--reach|parts:--delimiter|parts:--decimal) echo 'nothing' ;;
    parts:--plan|parts:-p) echo 'plans' ;;
    parts:--format|parts:-f) echo 'text csv json html' ;;
    level:--color) echo 'auto always never' ;;
    level:--rows|level:--output|level:-o) echo 'files' ;;
    level:--set|level:--value) echo 'keys' ;;
    level:--units) echo 'metric us' ;;
    level:--at-least|level:--column|level:--prefix|level:--delimiter|level:--decimal) echo 'nothing' ;;
    level:--plan|level:-p) echo 'plans' ;;
    level:--format|level:-f) echo 'text csv json html' ;;
    level:--motion) echo 'unknown rising falling' ;;
    level\ table:--color) echo 'auto always never' ;;
    level\ table:--output|level\ table:-o) echo 'files' ;;
    level\ table:--set|level\ table:--value) echo 'keys' ;;
    level\ table:--units) echo 'metric us' ;;
    level\ table:--every|level\ table:--at-least|level\ table:--delimiter|level\ table:--decimal) echo 'nothing' ;;
    level\ table:--plan|level\ table:-p) echo 'plans' ;;
    level\ table:--format|level\ table:-f) echo 'text csv json html' ;;
    level\ table:--motion) echo 'unknown rising falling' ;;
    level\ ladder:--series) echo 'E6 E12 E24 E48 E96' ;;
    level\ ladder:--color) echo 'auto always never' ;;
    level\ ladder:--output|level\ ladder:-o) echo 'files' ;;
    level\ ladder:--set|level\ ladder:--value) echo 'keys' ;;
    level\ ladder:--units) echo 'metric us' ;;
    level\ ladder:--empty|level\ ladder:--full|level\ ladder:--range|level\ ladder:--steps|level\ ladder:--length|level\ ladder:--first|level\ ladder:--last|level\ ladder:--pull-in|level\ ladder:--drop-out|level\ ladder:--tolerance|level\ ladder:--reading|level\ ladder:--delimiter|level\ ladder:--decimal) echo 'nothing' ;;
    level\ ladder:--equal) echo 'ohms litres needle' ;;
    level\ ladder:--plan|level\ ladder:-p) echo 'plans' ;;
    level\ ladder:--format|level\ ladder:-f) echo 'text csv json html' ;;
    level\ divider:--series) echo 'E6 E12 E24 E48 E96 any' ;;
    level\ divider:--color) echo 'auto always never' ;;
    level\ divider:--output|level\ divider:-o) echo 'files' ;;
    level\ divider:--set|level\ divider:--value) echo 'keys' ;;
    level\ divider:--sender-side) echo 'low high' ;;
    level\ divider:--units) echo 'metric us' ;;
    level\ divider:--ohm|level\ divider:--supply|level\ divider:--reference|level\ divider:--bits|level\ divider:--resistor|level\ divider:--max-current|level\ divider:--adc-error|level\ divider:--resistor-tolerance|level\ divider:--supply-tolerance|level\ divider:--reference-tolerance|level\ divider:--blind|level\ divider:--lead|level\ divider:--tolerance|level\ divider:--delimiter|level\ divider:--decimal) echo 'nothing' ;;
    level\ divider:--plan|level\ divider:-p) echo 'plans' ;;
    level\ divider:--format|level\ divider:-f) echo 'text csv json html' ;;
    level\ fit:--color) echo 'auto always never' ;;
    level\ fit:--drained|level\ fit:--output|level\ fit:-o) echo 'files' ;;
    level\ fit:--set|level\ fit:--value) echo 'keys' ;;
    level\ fit:--units) echo 'metric us' ;;
    level\ fit:--start|level\ fit:--litres-column|level\ fit:--ohm-column|level\ fit:--same-within|level\ fit:--leave-out|level\ fit:--delimiter|level\ fit:--decimal) echo 'nothing' ;;
    level\ fit:--plan|level\ fit:-p) echo 'plans' ;;
    level\ fit:--motion) echo 'rising falling' ;;
    level\ fit:--format|level\ fit:-f) echo 'text csv json html' ;;
    log:--color) echo 'auto always never' ;;
    log:--output|log:-o) echo 'files' ;;
    log:--set|log:--value) echo 'keys' ;;
    log:--units) echo 'metric us' ;;
    log:--since|log:--now|log:--days-left|log:--name-column|log:--value-column|log:--delimiter|log:--decimal) echo 'nothing' ;;
    log:--plan|log:-p) echo 'plans' ;;
    log:--format|log:-f) echo 'text csv json html' ;;
    ec:--color) echo 'auto always never' ;;
    ec:--weighed) echo 'calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=' ;;
    ec:--rows|ec:--output|ec:-o) echo 'files' ;;
    ec:--set|ec:--value) echo 'keys' ;;
    ec:--unit) echo 'mS/cm uS/cm dS/m mS/m ppm' ;;
    ec:--units) echo 'metric us' ;;
    ec:--at|ec:--scale|ec:--coefficient|ec:--standard|ec:--compensates|ec:--ion|ec:--volume|ec:--column|ec:--prefix|ec:--delimiter|ec:--decimal) echo 'nothing' ;;
    ec:--plan|ec:-p) echo 'plans' ;;
    ec:--format|ec:-f) echo 'text csv json html' ;;
    dose:--color) echo 'auto always never' ;;
    dose:--output|dose:-o) echo 'files' ;;
    dose:--set|dose:--value) echo 'keys' ;;
    dose:--units) echo 'metric us' ;;
    dose:--volume|dose:--from|dose:--at|dose:--scale|dose:--to|dose:--water-ec|dose:--label|dose:--rate|dose:--rate-ec|dose:--parts|dose:--step|dose:--delimiter|dose:--decimal) echo 'nothing' ;;
    dose:--plan|dose:-p) echo 'plans' ;;
    dose:--format|dose:-f) echo 'text csv json html' ;;
    dose\ salts:--color) echo 'auto always never' ;;
    dose\ salts:--salt) echo 'calcium-nitrate-4h2o calcium-nitrate-greenhouse potassium-nitrate ammonium-nitrate magnesium-nitrate-6h2o sodium-nitrate monopotassium-phosphate dipotassium-phosphate monoammonium-phosphate diammonium-phosphate magnesium-sulfate-7h2o magnesium-sulfate-1h2o potassium-sulfate ammonium-sulfate calcium-chloride-2h2o calcium-sulfate-2h2o potassium-chloride magnesium-chloride-6h2o sodium-chloride potassium-bicarbonate iron-sulfate-7h2o manganese-sulfate-1h2o manganese-chloride-4h2o zinc-sulfate-7h2o zinc-sulfate-1h2o copper-sulfate-5h2o boric-acid borax sodium-molybdate-2h2o ammonium-molybdate iron-edta-13 iron-dtpa-11 iron-dtpa-6-liquid iron-eddha-6 molybdic-acid-85' ;;
    dose\ salts:--weighed) echo 'calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=' ;;
    dose\ salts:--output|dose\ salts:-o) echo 'files' ;;
    dose\ salts:--set|dose\ salts:--value) echo 'keys' ;;
    dose\ salts:--units) echo 'metric us' ;;
    dose\ salts:--volume|dose\ salts:--ask|dose\ salts:--within|dose\ salts:--scale-step|dose\ salts:--feed|dose\ salts:--rate|dose\ salts:--density|dose\ salts:--delimiter|dose\ salts:--decimal) echo 'nothing' ;;
    dose\ salts:--plan|dose\ salts:-p) echo 'plans' ;;
    dose\ salts:--format|dose\ salts:-f) echo 'text csv json html' ;;
    stock:--color) echo 'auto always never' ;;
    stock:--weigh) echo 'calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=' ;;
    stock:--output|stock:-o) echo 'files' ;;
    stock:--set|stock:--value) echo 'keys' ;;
    stock:--units) echo 'metric us' ;;
    stock:--for|stock:--bottle|stock:--makes|stock:--coldest|stock:--season|stock:--delimiter|stock:--decimal) echo 'nothing' ;;
    stock:--plan|stock:-p) echo 'plans' ;;
    stock:--format|stock:-f) echo 'text csv json html' ;;
    topup:--color) echo 'auto always never' ;;
    topup:--weigh) echo 'calcium-nitrate-4h2o= calcium-nitrate-greenhouse= potassium-nitrate= ammonium-nitrate= magnesium-nitrate-6h2o= sodium-nitrate= monopotassium-phosphate= dipotassium-phosphate= monoammonium-phosphate= diammonium-phosphate= magnesium-sulfate-7h2o= magnesium-sulfate-1h2o= potassium-sulfate= ammonium-sulfate= calcium-chloride-2h2o= calcium-sulfate-2h2o= potassium-chloride= magnesium-chloride-6h2o= sodium-chloride= potassium-bicarbonate= iron-sulfate-7h2o= manganese-sulfate-1h2o= manganese-chloride-4h2o= zinc-sulfate-7h2o= zinc-sulfate-1h2o= copper-sulfate-5h2o= boric-acid= borax= sodium-molybdate-2h2o= ammonium-molybdate= iron-edta-13= iron-dtpa-11= iron-dtpa-6-liquid= iron-eddha-6= molybdic-acid-85=' ;;
    topup:--log|topup:--rows|topup:--output|topup:-o) echo 'files' ;;
    topup:--set|topup:--value) echo 'keys' ;;
    topup:--units) echo 'metric us' ;;
    topup:--volume|topup:--reading|topup:--now|topup:--ec|topup:--at|topup:--scale|topup:--full|topup:--target|topup:--water-ec|topup:--rate|topup:--rate-ec|topup:--parts|topup:--makes|topup:--rain|topup:--rainfall|topup:--rain-ec|topup:--ph|topup:--was|topup:--was-ec|topup:--can|topup:--column|topup:--prefix|topup:--delimiter|topup:--decimal) echo 'nothing' ;;
    topup:--plan|topup:-p) echo 'plans' ;;
    topup:--format|topup:-f) echo 'text csv json html' ;;
    topup:--motion) echo 'unknown rising falling' ;;
    acid:--color) echo 'auto always never' ;;
    acid:--output|acid:-o) echo 'files' ;;
    acid:--set|acid:--value) echo 'keys' ;;
    acid:--units) echo 'metric us' ;;
    acid:--acid) echo 'nitric-38 nitric-60 phosphoric-75 phosphoric-85 sulfuric-35 sulfuric-37 hydrochloric-31 citric citric-1h2o' ;;
    acid:--volume|acid:--alkalinity|acid:--ph|acid:--to|acid:--density|acid:--temperature|acid:--delimiter|acid:--decimal) echo 'nothing' ;;
    acid:--plan|acid:-p) echo 'plans' ;;
    acid:--format|acid:-f) echo 'text csv json html' ;;
    crops:--color) echo 'auto always never' ;;
    crops:--output|crops:-o) echo 'files' ;;
    crops:--set|crops:--value) echo 'keys' ;;
    crops:--units) echo 'metric us' ;;
    crops:--delimiter|crops:--decimal) echo 'nothing' ;;
    crops:--plan|crops:-p) echo 'plans' ;;
    crops:--format|crops:-f) echo 'text csv json html' ;;
    oxygen:--color) echo 'auto always never' ;;
    oxygen:--output|oxygen:-o) echo 'files' ;;
    oxygen:--set|oxygen:--value) echo 'keys' ;;
    oxygen:--units) echo 'metric us' ;;
    oxygen:--at|oxygen:--altitude|oxygen:--pressure|oxygen:--delimiter|oxygen:--decimal) echo 'nothing' ;;
    oxygen:--plan|oxygen:-p) echo 'plans' ;;
    oxygen:--format|oxygen:-f) echo 'text csv json html' ;;
    clean:--color) echo 'auto always never' ;;
    clean:--output|clean:-o) echo 'files' ;;
    clean:--with) echo 'hypochlorite peroxide bleach' ;;
    clean:--set|clean:--value) echo 'keys' ;;
    clean:--units) echo 'metric us' ;;
    clean:--volume|clean:--strength|clean:--density|clean:--aim|clean:--contact|clean:--delimiter|clean:--decimal) echo 'nothing' ;;
    clean:--plan|clean:-p) echo 'plans' ;;
    clean:--format|clean:-f) echo 'text csv json html' ;;
    clean:--basis) echo 'volume weight hypochlorite-volume hypochlorite-weight' ;;
    duty:--color) echo 'auto always never' ;;
    duty:--output|duty:-o) echo 'files' ;;
    duty:--set|duty:--value) echo 'keys' ;;
    duty:--units) echo 'metric us' ;;
    duty:--power|duty:--run|duty:--on|duty:--rest|duty:--off|duty:--against|duty:--price|duty:--standing|duty:--standing-share|duty:--days|duty:--from|duty:--to|duty:--time-zone|duty:--controller|duty:--relay|duty:--cycles|duty:--coil|duty:--inrush|duty:--mains|duty:--dc|duty:--most-starts|duty:--plug-water|duty:--plant-use|duty:--dry-limit|duty:--dry-limit-night|duty:--wetting|duty:--delimiter|duty:--decimal) echo 'nothing' ;;
    duty:--plan|duty:-p) echo 'plans' ;;
    duty:--format|duty:-f) echo 'text csv json html' ;;
    duty\ backup:--color) echo 'auto always never' ;;
    duty\ backup:--output|duty\ backup:-o) echo 'files' ;;
    duty\ backup:--set|duty\ backup:--value) echo 'keys' ;;
    duty\ backup:--chemistry) echo 'lithium lead' ;;
    duty\ backup:--units) echo 'metric us' ;;
    duty\ backup:--hours|duty\ backup:--battery|duty\ backup:--capacity|duty\ backup:--depth|duty\ backup:--reserve|duty\ backup:--inverter|duty\ backup:--idle|duty\ backup:--power|duty\ backup:--run|duty\ backup:--on|duty\ backup:--rest|duty\ backup:--off|duty\ backup:--controller|duty\ backup:--dc|duty\ backup:--sun|duty\ backup:--delimiter|duty\ backup:--decimal) echo 'nothing' ;;
    duty\ backup:--plan|duty\ backup:-p) echo 'plans' ;;
    duty\ backup:--format|duty\ backup:-f) echo 'text csv json html' ;;
    duty\ cable:--color) echo 'auto always never' ;;
    duty\ cable:--output|duty\ cable:-o) echo 'files' ;;
    duty\ cable:--strands) echo 'flexible solid' ;;
    duty\ cable:--set|duty\ cable:--value) echo 'keys' ;;
    duty\ cable:--units) echo 'metric us' ;;
    duty\ cable:--dc|duty\ cable:--power|duty\ cable:--length|duty\ cable:--section|duty\ cable:--gauge|duty\ cable:--temperature|duty\ cable:--inrush|duty\ cable:--least-voltage|duty\ cable:--drop|duty\ cable:--delimiter|duty\ cable:--decimal) echo 'nothing' ;;
    duty\ cable:--plan|duty\ cable:-p) echo 'plans' ;;
    duty\ cable:--format|duty\ cable:-f) echo 'text csv json html' ;;
    duty\ cap:--color) echo 'auto always never' ;;
    duty\ cap:--output|duty\ cap:-o) echo 'files' ;;
    duty\ cap:--set|duty\ cap:--value) echo 'keys' ;;
    duty\ cap:--units) echo 'metric us' ;;
    duty\ cap:--wet|duty\ cap:--dry|duty\ cap:--delimiter|duty\ cap:--decimal) echo 'nothing' ;;
    duty\ cap:--plan|duty\ cap:-p) echo 'plans' ;;
    duty\ cap:--format|duty\ cap:-f) echo 'text csv json html' ;;
    sow:--color) echo 'auto always never' ;;
    sow:--output|sow:-o) echo 'files' ;;
    sow:--set|sow:--value) echo 'keys' ;;
    sow:--units) echo 'metric us' ;;
    sow:--pots|sow:--first|sow:--nursery|sow:--growing|sow:--every|sow:--until|sow:--germination|sow:--loss|sow:--turnaround|sow:--earliest-transplant|sow:--latest-harvest|sow:--delimiter|sow:--decimal) echo 'nothing' ;;
    sow:--plan|sow:-p) echo 'plans' ;;
    sow:--sizes) echo 'spread equal' ;;
    sow:--format|sow:-f) echo 'text csv json html ics' ;;
    season:--color) echo 'auto always never' ;;
    season:--log|season:--output|season:-o) echo 'files' ;;
    season:--set|season:--value) echo 'keys' ;;
    season:--units) echo 'metric us' ;;
    season:--now|season:--delimiter|season:--decimal) echo 'nothing' ;;
    season:--plan|season:-p) echo 'plans' ;;
    season:--format|season:-f) echo 'text csv json html ics' ;;
    season:--by) echo 'week month' ;;
    season\ day:--color) echo 'auto always never' ;;
    season\ day:--output|season\ day:-o) echo 'files' ;;
    season\ day:--set|season\ day:--value) echo 'keys' ;;
    season\ day:--units) echo 'metric us' ;;
    season\ day:--date|season\ day:--tmin|season\ day:--tmax|season\ day:--rh-min|season\ day:--rh-max|season\ day:--rh-mean|season\ day:--dew-point|season\ day:--wind|season\ day:--wind-height|season\ day:--radiation|season\ day:--sun|season\ day:--latitude|season\ day:--altitude|season\ day:--delimiter|season\ day:--decimal) echo 'nothing' ;;
    season\ day:--plan|season\ day:-p) echo 'plans' ;;
    season\ day:--format|season\ day:-f) echo 'text csv json html' ;;
    season\ light:--color) echo 'auto always never' ;;
    season\ light:--output|season\ light:-o) echo 'files' ;;
    season\ light:--set|season\ light:--value) echo 'keys' ;;
    season\ light:--units) echo 'metric us' ;;
    season\ light:--cover) echo 'none glass double-glass double-window triple-window twin-wall film glasshouse' ;;
    season\ light:--month|season\ light:--tmin|season\ light:--tmax|season\ light:--light|season\ light:--lux|season\ light:--lux-hours|season\ light:--crop|season\ light:--need|season\ light:--window|season\ light:--distance|season\ light:--transmission|season\ light:--shade|season\ light:--lamp-power|season\ light:--lamp-efficacy|season\ light:--lamp-lumens|season\ light:--lamp-share|season\ light:--lamp-hours|season\ light:--lamp-area|season\ light:--latitude|season\ light:--altitude|season\ light:--delimiter|season\ light:--decimal) echo 'nothing' ;;
    season\ light:--plan|season\ light:-p) echo 'plans' ;;
    season\ light:--lux-of) echo 'sun white-led fluorescent sodium halide' ;;
    season\ light:--format|season\ light:-f) echo 'text csv json html' ;;
    check:--color) echo 'auto always never' ;;
    check:--output|check:-o) echo 'files' ;;
    check:--set|check:--value) echo 'keys' ;;
    check:--units) echo 'metric us' ;;
    check:--doubt|check:--seed|check:--delimiter|check:--decimal) echo 'nothing' ;;
    check:--plan|check:-p) echo 'plans' ;;
    check:--rule) echo 'rules' ;;
    check:--format|check:-f) echo 'text csv json html' ;;
    sweep:--color) echo 'auto always never' ;;
    sweep:--rows|sweep:--output|sweep:-o) echo 'files' ;;
    sweep:--measure|sweep:--rank) echo 'flow_low_L_min flow_full_L_min margin_m margin_pct fill_time_s velocity_m_s drain_back_L derate_pct usable_L full_L capacity_L tank_height_mm litres_per_step blind_bottom_L top_step_L blind_top_L sender_steps pots height_mm total_height_mm top_pot_mm pot_spacing_mm filament_kg print_h print_days spools cost_filament cost_parts mass_wet_kg deck_kPa tips_at_m_s slides_at_m_s lid_tips_at_m_s opens_at_m_s safety_factor tension_N least_run_s run_share_pct starts_per_day kwh_day kwh_season cost_electricity relay_days dry_day_min dry_night_min drunk_season_L water_season_L feed_season_mL drained_season_L lowest_L topups changes dry_days overflow_days ec_min_mS_cm ec_max_mS_cm cost_season harvest_kg payback_seasons' ;;
    sweep:--vary|sweep:--set|sweep:--value) echo 'keys' ;;
    sweep:--units) echo 'metric us' ;;
    sweep:--sample|sweep:--seed|sweep:--pareto|sweep:--top|sweep:--where|sweep:--slice|sweep:--jobs|sweep:--doubt|sweep:--delimiter|sweep:--decimal) echo 'nothing' ;;
    sweep:--plan|sweep:-p) echo 'plans' ;;
    sweep:--rule) echo 'rules' ;;
    sweep:--format|sweep:-f) echo 'text csv json html' ;;
    plan:--color) echo 'auto always never' ;;
    plan:--output|plan:-o) echo 'files' ;;
    plan:--value) echo 'keys' ;;
    plan:--units) echo 'metric us' ;;
    plan:--delimiter|plan:--decimal) echo 'nothing' ;;
    plan:--format|plan:-f) echo 'text csv json html' ;;
    plan\ new:--color) echo 'auto always never' ;;
    plan\ new:--output|plan\ new:-o) echo 'files' ;;
    plan\ new:--value) echo 'keys' ;;
    plan\ new:--units) echo 'metric us' ;;
    plan\ new:--name|plan\ new:--currency|plan\ new:--delimiter|plan\ new:--decimal) echo 'nothing' ;;
    plan\ new:--format|plan\ new:-f) echo 'text csv json html' ;;
    plan\ set:--color) echo 'auto always never' ;;
    plan\ set:--output|plan\ set:-o) echo 'files' ;;
    plan\ set:--value) echo 'keys' ;;
    plan\ set:--units) echo 'metric us' ;;
    plan\ set:--delimiter|plan\ set:--decimal) echo 'nothing' ;;
    plan\ set:--format|plan\ set:-f) echo 'text csv json html' ;;
    plan\ schema:--color) echo 'auto always never' ;;
    plan\ schema:--output|plan\ schema:-o) echo 'files' ;;
    plan\ schema:--value) echo 'keys' ;;
    plan\ schema:--units) echo 'metric us' ;;
    plan\ schema:--delimiter|plan\ schema:--decimal) echo 'nothing' ;;
    plan\ schema:--format|plan\ schema:-f) echo 'text csv json html' ;;
    plan\ show:--color) echo 'auto always never' ;;
    plan\ show:--output|plan\ show:-o) echo 'files' ;;
    plan\ show:--set|plan\ show:--value) echo 'keys' ;;
    plan\ show:--units) echo 'metric us' ;;
    plan\ show:--delimiter|plan\ show:--decimal) echo 'nothing' ;;
    plan\ show:--plan|plan\ show:-p) echo 'plans' ;;
    plan\ show:--format|plan\ show:-f) echo 'text csv json html' ;;
    plan\ card:--paper) echo 'a4 letter' ;;
    plan\ card:--color) echo 'auto always never' ;;
    plan\ card:--output|plan\ card:-o) echo 'files' ;;
    plan\ card:--set|plan\ card:--value) echo 'keys' ;;
    plan\ card:--units) echo 'metric us' ;;
    plan\ card:--date|plan\ card:--delimiter|plan\ card:--decimal) echo 'nothing' ;;
    plan\ card:--plan|plan\ card:-p) echo 'plans' ;;
    plan\ card:--format|plan\ card:-f) echo 'text csv json html' ;;
    plan\ header:--color) echo 'auto always never' ;;
    plan\ header:--output|plan\ header:-o) echo 'files' ;;
    plan\ header:--set|plan\ header:--value) echo 'keys' ;;
    plan\ header:--units) echo 'metric us' ;;
    plan\ header:--delimiter|plan\ header:--decimal) echo 'nothing' ;;
    plan\ header:--plan|plan\ header:-p) echo 'plans' ;;
    plan\ header:--format|plan\ header:-f) echo 'text csv json html' ;;
    plan\ keys:--color) echo 'auto always never' ;;
    plan\ keys:--output|plan\ keys:-o) echo 'files' ;;
    plan\ keys:--value) echo 'keys' ;;
    plan\ keys:--units) echo 'metric us' ;;
    plan\ keys:--delimiter|plan\ keys:--decimal) echo 'nothing' ;;
    plan\ keys:--format|plan\ keys:-f) echo 'text csv json html' ;;
    units:--color) echo 'auto always never' ;;
    units:--output|units:-o) echo 'files' ;;
    units:--value) echo 'keys' ;;
    units:--units) echo 'metric us' ;;
    units:--delimiter|units:--decimal) echo 'nothing' ;;
    units:--format|units:-f) echo 'text csv json html' ;;
  esac
}

_leat_operands() {
  case $1 in
    head) echo 'plans' ;;
    pump) echo 'plans' ;;
    tank) echo 'plans' ;;
    wind) echo 'plans' ;;
    parts) echo 'plans' ;;
    level) echo 'plans' ;;
    level\ table) echo 'plans' ;;
    level\ ladder) echo 'plans' ;;
    level\ divider) echo 'plans' ;;
    level\ fit) echo 'plans' ;;
    log) echo 'plans' ;;
    ec) echo 'plans' ;;
    dose) echo 'plans' ;;
    dose\ salts) echo 'plans' ;;
    stock) echo 'plans' ;;
    topup) echo 'plans' ;;
    acid) echo 'plans' ;;
    crops) echo 'basil bean broccoli cabbage celery courgette cucumber aubergine leek lettuce pak-choi parsley pepper sage spinach strawberry tomato chard kale mint rocket zucchini eggplant bok-choy pak-choy arugula swiss-chard beans tomatoes' ;;
    oxygen) echo 'plans' ;;
    clean) echo 'plans' ;;
    duty) echo 'plans' ;;
    duty\ backup) echo 'plans' ;;
    duty\ cable) echo 'plans' ;;
    duty\ cap) echo 'plans' ;;
    sow) echo 'plans' ;;
    season) echo 'plans' ;;
    season\ day) echo 'plans' ;;
    season\ light) echo 'plans' ;;
    check) echo 'plans' ;;
    sweep) echo 'plans' ;;
    plan\ set) echo 'plans-keys' ;;
    plan\ show) echo 'plans' ;;
    plan\ card) echo 'plans' ;;
    plan\ header) echo 'plans' ;;
    plan\ keys) echo 'keys' ;;
    units) echo 'length area volume mass time flow head pressure temperature speed power energy force EC concentration alkalinity resistance voltage current angle share count number' ;;
  esac
}

_leat_keys='name= about= currency= units= site.time_zone= site.latitude= site.altitude= site.terrain= site.height_above_ground= site.wind.speed= site.wind.is= site.shelter= site.gust_factor= site.air_density= site.weather= site.weather_columns= site.months[0].tmin= site.months[0].tmax= site.months[0].rain= site.months[0].rain_days= site.exposure= site.coast= site.wind_height= site.light.transmission= site.light.shade= site.sun_on_tank= tank.shape= tank.bottom= tank.top= tank.diameter= tank.length= tank.height= tank.corner= tank.corner_top= tank.floor_rise= tank.floor_flat= tank.sections= tank.table= tank.between= tank.bodies[0].name= tank.bodies[0].area= tank.bodies[0].from= tank.bodies[0].to= tank.holds= tank.holds_full= tank.full= tank.low= tank.intake= tank.rim_overflow= tank.wall.thickness= tank.wall.colour= tank.wall.insulation= tank.warmest= tank.mass= tank.foot= tank.stand= tank.ground= tank.friction= tank.rain_area= tank.rain_share= tank.open_area= tank.heel= tank.drain.bore= tank.drain.height= tank.drain.length= tank.drain.drop= sender.steps= sender.edges= sender.ladder.reeds= sender.ladder.first= sender.ladder.pitch= sender.ladder.levels= sender.ladder.resistors= sender.ladder.empty= sender.ladder.full= sender.ladder.return_at= sender.ladder.pull_in= sender.ladder.drop_out= sender.ladder.stops= sender.below= sender.hysteresis= sender.hysteresis_volume= sender.edge_error= sender.tolerance= sender.reading= sender.lead= sender.open_above= sender.short_below= sender.divider.supply= sender.divider.resistor= sender.divider.sender_side= sender.divider.bits= sender.divider.reference= sender.divider.resistor_tolerance= sender.divider.supply_tolerance= sender.divider.reference_tolerance= sender.divider.adc_error= sender.divider.blind= sender.divider.ratiometric= pump.curve= pump.shutoff_head= pump.max_flow= pump.derate= pump.speed= pump.measured= pump.power= pump.power_factor= pump.supply.mains= pump.supply.dc= pump.supply.cable.length= pump.supply.cable.section= pump.check_valve= pump.body= cap_sensor.wet= cap_sensor.dry= hold_up= pipe.bore= pipe.length= pipe.material= pipe.roughness= pipe.ridges= pipe.k= pipe.fittings= pipe.valve= towers[0].name= towers[0].count= towers[0].riser.bore= towers[0].riser.length= towers[0].riser.material= towers[0].riser.roughness= towers[0].riser.ridges= towers[0].riser.k= towers[0].riser.fittings= towers[0].riser.valve= towers[0].outlet= towers[0].wanted= towers[0].base.height= towers[0].modules[0].name= towers[0].modules[0].count= towers[0].modules[0].height= towers[0].modules[0].overlap= towers[0].modules[0].diameter= towers[0].modules[0].wall= towers[0].modules[0].pots= towers[0].modules[0].pot_at= towers[0].modules[0].pot= towers[0].modules[0].turn= towers[0].modules[0].mass= towers[0].modules[0].print_time= towers[0].cap.mass= towers[0].cap.height= towers[0].cap.spreader= towers[0].cap.gap= towers[0].cap.plate= towers[0].cap.clearance= towers[0].cap.grip= towers[0].cap.print_time= towers[0].guys.lines= towers[0].guys.ring= towers[0].guys.run= towers[0].guys.anchor= towers[0].guys.breaking= towers[0].grown.mass= towers[0].grown.width= towers[0].tie= towers[0].material= towers[0].foot_radius= towers[0].fastened= strainer.aperture= strainer.wire= strainer.diameter= strainer.clogged= strainer.freeboard= timing[0].run= timing[0].rest= timing[0].from= timing[0].to= timing[0].months= timing[0].days= wetting= dry_limit.day= dry_limit.night= dry_limit.alarm= controller.power= controller.relay.rated= controller.relay.coil= controller.relay.coil_when= controller.relay.cycles= controller.relay.inrush= backup.hours= backup.battery= backup.capacity= backup.chemistry= backup.depth= backup.reserve= backup.inverter= backup.idle= tariff.price= tariff.standing= tariff.bands[0].from= tariff.bands[0].to= tariff.bands[0].months= tariff.bands[0].days= tariff.bands[0].price= water.ec= water.alkalinity= water.ph= water.nitrate= water.phosphorus= water.potassium= water.calcium= water.magnesium= water.sulfate= water.sodium= water.chloride= water.temperature= water.price= rain.ec= feed.parts[0].name= feed.parts[0].rate= feed.parts[0].label= feed.parts[0].density= feed.parts[0].price= feed.rate_ec= feed.acid.name= feed.acid.price= feed.stock.bottle= feed.stock.makes= feed.stock.coldest= feed.stock.grams= feed.salts[0].name= feed.salts[0].elements= feed.salts[0].price= meters.ec.slope= meters.ec.checked= meters.ec.compensates= meters.ec.scale= meters.ph.offset= meters.ph.checked= target.ec= target.ec_low= target.ec_high= target.ph= target.ph_low= target.ph_high= thirst= drinks= crops[0].name= crops[0].tower= crops[0].pots= crops[0].sow= crops[0].until= crops[0].every= crops[0].nursery= crops[0].growing= crops[0].germination= crops[0].loss= crops[0].harvest= crops[0].water= crops[0].area= crops[0].initial= crops[0].development= crops[0].late= crops[0].start_share= crops[0].end_share= crops[0].turnaround= crops[0].sizes= crops[0].earliest_transplant= crops[0].latest_harvest= crops[0].base= crops[0].upper= crops[0].warmth= crops[0].ec_low= crops[0].ec_high= crops[0].ph_low= crops[0].ph_high= crops[0].seed_price= crops[0].shop_price= season.from= season.to= season.refill= season.start.volume= season.start.ec= season.start.changed= season.start.filled= season.start.added= season.uptake= season.dose_below= season.dilute_above= season.change.every= season.change.or_added= season.away[0].from= season.away[0].to= season.catch= lamp.power= lamp.efficacy= lamp.lumens= lamp.share= lamp.hours= lamp.area= prices.filament= prices.filaments= prices.spool= prices.tubes= prices.pump= prices.tank= prices.sender= prices.controller= prices.other= prices.life= printer.power= printer.count= printer.jobs= printer.changeover= printer.waste= clean.with= clean.strength= clean.aim= clean.contact= limits= log.time= log.reading= log.reading_in= log.ec= log.ph= log.temperature= log.pump= log.cap= log.rain= log.name= log.value= log.delimiter= log.decimal= log.keeper= log.thresholds.disorder= log.thresholds.rest= log.thresholds.clock_jump= log.thresholds.gap= log.thresholds.fault= log.thresholds.refill_steps= log.thresholds.refill_within= log.thresholds.change_above= log.thresholds.change_below= log.thresholds.change_fall= log.thresholds.change_refill= log.thresholds.rain_join= log.thresholds.rain_least= log.thresholds.rain_ec= log.thresholds.leak_factor= log.thresholds.leak_steps= log.thresholds.leak_join= log.thresholds.dry= log.thresholds.dry_intervals= log.thresholds.stuck_steps= log.thresholds.stuck_jump_steps= log.thresholds.stuck_jump= log.thresholds.wilt= log.thresholds.use_days= log.thresholds.use_least_days= log.thresholds.weekday_days= log.thresholds.day_from= log.thresholds.day_to= log.thresholds.night= log.thresholds.ec_rows= log.thresholds.silent='
_leat_rules='reaches-top pump-margin tower-fed flow-wanted valve-needed pump-on-curve outlet-over-top reach no-siphon freeboard intake-covered cap-lift film-closed film-not-flooding gap-carries gap-clear riser-not-fast riser-not-slow strainer-head strainer-holds pump-measured wind-tip wind-slide wind-lid wind-joint wind-line guy-anchor pots-fit same-column-spacing deck-load steps-resolvable low-above-step intake-seen full-seen step-under-thirst dip-seen sender-fitted run-covers rest-day rest-night starts-per-hour relay-life cost-season backup-hours cable-drop crops-share target-in-band target-above-water oxygen meters-checked water-alkalinity change-interval parts-compatible acid-household season-dry season-ec-high season-ec-low season-overflow away-dry tank-warm frost-pipes'

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
    [ "$command:$flag" = check:--explain ] && value=rules
    if [ "$value" = plans ] && [ -n "$words" ] && [ "$COMP_CWORD" -eq 2 ]; then
      case " $words " in *" $cur"*) value= ;; esac
    fi
    if [ "$value" = plans-keys ]; then
      [ "$COMP_CWORD" -gt 3 ] && value=keys || value=plans
    fi
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
    *)
      case $value in *=) compopt -o nospace 2>/dev/null ;; esac
      mapfile -t COMPREPLY < <(compgen -W "$value" -- "$cur")
      ;;
  esac
}

complete -F _leat leat
