package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Broken plans: each must be told in these words; the schema must refuse it too where it can. */
class BrokenPlansTest {
  /** Columns: the plan (\n for a new line, \t for a tab), what is told, after "p.yaml:". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "tank: {height: 330}|1:16: tank.height: a length needs its unit, such as \"13 mm\"; got \"330\"",
        "tank: {height: -330 mm}|1:16: tank.height: it must be above 0, such as \"330 mm\"; got \"-330 mm\"",
        "tank: {height: 0 mm}|1:16: tank.height: it must be above 0, such as \"330 mm\"; got \"0 mm\"",
        "tank: {height: 330 L}|1:20: tank.height: a length is needed, such as \"13 mm\"; got \"330 L\", which is a volume",
        "tank: {height: \"330 L\"}|1:21: tank.height: a length is needed, such as \"13 mm\"; got \"330 L\", which is a volume",
        "tank: {height: 5,5 cm}|1:18: YAML",
        "tank: {hight: 330 mm}|1:8: tank.hight: unknown key; did you mean \"height\"?",
        "tnak: {height: 330 mm}|1:1: tnak: unknown key; did you mean \"tank\"?",
        "tank: {bottom: 0 mm x 300 mm}|1:16: tank.bottom: \"0 mm\" must be above 0",
        "tank: {bottom: 480 mm x -300 mm}|1:25: tank.bottom: \"-300 mm\" must be above 0",
        "tank: {shape: bux}|1:15: tank.shape: one of box, tapered-box, cylinder, cone, lying-cylinder, sloping-floor, sections, table is needed; got \"bux\"; did you mean \"box\"?",
        "tank: 5|1:7: tank: a section is needed, such as \"tank: {shape: tapered-box}\"",
        "towers: {name: a}|1:9: towers: a list is needed, each item with \"- \" before it, such as \"- {name: north}\"",
        "towers: [{riser: {bore: 0 mm}}]|1:25: towers[0].riser.bore: it must be above 0, such as \"13 mm\"; got \"0 mm\"",
        "towers: [{riser: {fittings: {elbw: 1}}}]|1:30: towers[0].riser.fittings: no such name; did you mean \"elbow\"?",
        "towers: [{riser: {fittings: {elbow: -1}}}]|1:37: towers[0].riser.fittings.elbow: \"-1\" cannot be negative",
        "towers: [{riser: {fittings: elbow}}]|1:29: towers[0].riser.fittings: a map is needed, such as {entrance: 1, elbow: 2, exit: 1}",
        "pump: {curve: [0 L/h @ 2 m]}|1:15: pump.curve: at least 2 are needed, such as [0 L/h @ 2.4 m, 600 L/h @ 1.7 m, 1000 L/h @ 0 m]",
        "pump: {curve: 0 L/h @ 2 m}|1:15: pump.curve: a list is needed, such as [0 L/h @ 2.4 m, 600 L/h @ 1.7 m, 1000 L/h @ 0 m]",
        "pump: {curve: [0 L/h @ 2 m, 600 L/h @ 1.7 L]}|1:39: pump.curve[1]: expected a head after '@', such as \"600 L/h @ 1.7 m\"; got \"1.7 L\"",
        "pump: {curve: [0 L/h @ 2 m, -5 L/h @ 1 m]}|1:29: pump.curve[1]: \"-5 L/h\" cannot be negative",
        "pump: {power: [22 W]}|1:15: pump.power: one value is needed, such as \"22 W\"",
        "pump: {derate: 0.7}|1:16: pump.derate: a share needs its unit, such as \"85 %\"; got \"0.7\"",
        "timing: [{run: 15 m, rest: 12 min}]|1:19: timing[0].run: a time is needed, such as \"90 s\"; m is metres: for minutes type \"15 min\"; got \"15 m\"",
        "tariff: {bands: [{from: 22:00, to: \"06:00\", price: 0.22 EUR/kWh}]}|1:25: tariff.bands[0].from: put it in quotes: \"22:00\"; without them some YAML readers take it for a number in base 60",
        "tariff: {bands: [{from: \"25:00\", to: \"06:00\"}]}|1:26: tariff.bands[0].from: a time of day is needed, such as \"22:00\"; got \"25:00\"",
        "tariff: {bands: [{months: [0]}]}|1:28: tariff.bands[0].months[0]: it must lie between 1 and 12, such as \"[11, 12, 1]\"; got \"0\"",
        "tariff: {bands: [{months: []}]}|1:27: tariff.bands[0].months: at least 1 is needed, such as [11, 12, 1]",
        "season: {from: 10.4.2027}|1:16: season.from: a date is needed, such as 2027-04-10; got \"10.4.2027\"",
        "season: {refill: weekly}|1:18: season.refill: expected \"at low\", \"daily\" or a time such as \"every 3 d\"; got \"weekly\"",
        "water: {ph: 15}|1:13: water.ph: it can be 14 at most, such as \"7.6\"; got \"15\"",
        "currency: Euro|1:11: currency: the code of a currency is needed, such as EUR; got \"Euro\"; did you mean \"EUR\"?",
        "name: yes|1:7: name: put it in quotes: some YAML readers take yes for something else than text",
        "name: [a]|1:7: name: one value is needed, such as \"my first tower\"",
        "sender: {steps: [40 mm = 10 ohm, 60 mm 27 ohm]}|1:34: sender.steps[1]: expected '=' between a length and a resistance, such as \"40 mm = 10 ohm\"; got \"60 mm 27 ohm\"",
        "sender: {ladder: {stops: 26 mm}}|1:26: sender.ladder.stops: expected '..' between two values, each a length, such as \"26 mm to 268 mm\"; got \"26 mm\"",
        "- tank|1:1: a plan is a map of keys, such as \"tank: {height: 330 mm}\"",
        "just words|1:1: a plan is a map of keys, such as \"tank: {height: 330 mm}\"",
        "tank: {full: 1 m}\\n---\\npump: {}|2:1: a second document begins here; a plan is one document a file: put each tower system into a file of its own",
        "tank:\\n\\tfull: 1 m|2:1: a tab cannot start a YAML line or value: indent with spaces",
        "tank: {full: 1 m, full: 2 m}|1:19: \"full\" stands here a second time; the first is in line 1",
        "tank: {full: 1 m}\\npump: {}\\ntank: {low: 1 m}|3:1: \"tank\" stands here a second time; the first is in line 1",
        "pump: *pumps|1:7: nothing above is anchored as &pumps, so *pumps stands for nothing",
        "pump: &p {supply: *p}|1:19: nothing above is anchored as &p, so *p stands for nothing",
        "pump: {<<: 5}|1:8: << merges maps only, such as <<: *riser",
        "name: \"a|1:7: this is not YAML: a quote is opened and never closed",
        "tank: {full: 1 m|2:1: this is not YAML: a comma or the closing bracket is missing before this",
        "tank:\\n  full: 1 m\\n   low: 1 m|3:7: this is not YAML: this line does not fit under the one above; keys of one section begin in the same column, and each has a colon behind it",
        "name: a: b|1:8: this is not YAML: a second \": \" in one line; put a text that holds it in quotes, or begin a new line",
        "name: @a|1:7: this is not YAML: a value cannot begin with this character; put it in quotes",
        "? [a]\\n: b|1:3: a key must be a word",
      })
  void isTold(String typed, String told) {
    String yaml = typed.replace("\\n", "\n").replace("\\t", "\t") + "\n";
    if (told.endsWith("YAML")) {
      // YAML itself cuts 5,5 cm in two: the key 5 is told.
      assertThat(Plans.told(yaml)).isNotEmpty();
    } else {
      assertThat(Plans.told(yaml)).containsExactly("p.yaml:" + told);
    }
    assertThat(SchemaTest.refuses(yaml)).as("schema refuses %s", yaml).isTrue();
  }

  /** What a schema cannot see: several values, or what only we ask for. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "tank: {height: 300 mm, full: 310 mm}|1:30: tank.full: it lies above the rim: \"310 mm\" against height \"300 mm\"",
        "tank: {low: 90 mm, full: 80 mm}|1:13: tank.low: the refill mark lies above full: \"90 mm\" against full \"80 mm\"",
        "tank: {shape: lying-cylinder, diameter: 400 mm, length: 1 m, full: 410 mm}|1:68: tank.full: it lies above the rim: \"410 mm\" against diameter \"400 mm\"",
        "tank: {shape: table, table: [0 mm = 0 L, 100 mm = 12 L], full: 110 mm}|1:64: tank.full: \"110 mm\" lies above the rim of the tank, 100 mm",
        "tank: {height: 300 mm, drain: {bore: 19 mm, height: 310 mm}}|1:53: tank.drain.height: \"310 mm\" lies above the rim of the tank, 300 mm",
        "tank: {shape: table, table: [0 mm = 0 L, 100 mm = 12 L, 90 mm = 13 L]}|1:57: tank.table[2]: the levels must rise from item to item; \"90 mm\" comes after \"100 mm\"",
        "tank: {shape: table, table: [0 mm = 0 L, 100 mm = 12 L, 110 mm = 12 L]}|1:66: tank.table[2]: the volumes must rise from item to item; \"12 L\" stands here twice",
        "tank: {shape: box, bottom: 300 mm}|1:28: tank.bottom: a box needs length and width, such as \"540 mm x 360 mm\"",
        "tank: {shape: cone, bottom: 300 mm x 200 mm}|1:29: tank.bottom: a cone needs one diameter, such as \"300 mm\"",
        "tank: {shape: box, bottom: 300 mm x 200 mm, corner: 101 mm}|1:53: tank.corner: a corner radius cannot be over half the smaller side",
        "tank: {shape: tapered-box, bottom: 400 mm x 300 mm, top: 200 mm x 200 mm, corner: 101 mm}|1:83: tank.corner: a corner radius cannot be over half the smaller side",
        "tank: {bodies: [{area: 60 cm2, from: 80 mm, to: 80 mm}]}|1:49: tank.bodies[0].to: the body's upper end must lie above its lower end",
        "pump: {curve: [10 L/h @ 2 m, 600 L/h @ 1 m]}|1:16: pump.curve[0]: the first point is the head at no flow, such as \"0 L/h @ 2.4 m\"; got \"10 L/h\"",
        "pump: {curve: [0 L/h @ 2 m, 600 L/h @ 1 m, 500 L/h @ 0 m]}|1:44: pump.curve[2]: the flows must rise from item to item; \"500 L/h\" comes after \"600 L/h\"",
        "pump: {curve: [0 L/h @ 2 m, 600 L/h @ 1 m, 600 L/h @ 0 m]}|1:44: pump.curve[2]: the flows must rise from item to item; \"600 L/h\" stands here twice",
        "pump: {curve: [0 L/h @ 2 m, 600 L/h @ 2.1 m]}|1:39: pump.curve[1]: a pump's head cannot rise with its flow; \"2.1 m\" comes after \"2 m\"",
        "pump: {curve: [0 L/h @ 0 m, 600 L/h @ 0 m]}|1:15: pump.curve: it must be above 0",
        "pump: {curve: [0 L/h @ 2 m, 600 L/h @ 0 m], shutoff_head: 2 m}|1:59: pump.shutoff_head: shutoff_head and curve say the same thing; keep one of them",
        "pump: {supply: {mains: 230 V, dc: 12 V}}|1:35: pump.supply.dc: dc and mains say the same thing; keep one of them",
        "pump: {check_valve: yes}|1:21: pump.check_valve: true or false is needed, in small letters; got \"yes\"; did you mean \"true\"?",
        "pump: {check_valve: off}|1:21: pump.check_valve: true or false is needed, in small letters; got \"off\"; did you mean \"false\"?",
        "name: 12:30|1:7: name: put it in quotes: some YAML readers take 12:30 for something else than text",
        "pump: {derate: 201 %}|1:16: pump.derate: it can be 200 % at most, such as \"70 %\"; got \"201 %\"",
        "pipe: {bore: 13 mm, roughness: 20 mm}|1:32: pipe.roughness: roughness is between 0 and a twentieth of the bore; no formula holds beyond",
        "pipe: {bore: 13 mm, length: 0 m, k: 1, fittings: {elbow: 1}}|1:50: pipe.fittings: fittings and k say the same thing; keep one of them",
        "pipe: {bore: 3 m}|1:14: pipe.bore: a pipe's bore is between 0.1 mm and 2 m",
        "sender: {steps: [40 mm = 10 ohm, 30 mm = 27 ohm]}|1:34: sender.steps[1]: the levels must rise from item to item; \"30 mm\" comes after \"40 mm\"",
        "sender: {steps: [40 mm = 10 ohm, 60 mm = 27 ohm, 80 mm = 20 ohm]}|1:58: sender.steps[2]: a sender's readings only rise or only fall from step to step; \"20 ohm\" comes after \"27 ohm\"",
        "sender: {steps: [40 mm = 10 ohm, 60 mm = 27 ohm], edges: [1 L = 2 ohm, 2 L = 3 ohm]}|1:58: sender.edges: edges and steps say the same thing; keep one of them",
        "sender: {short_below: 1001 ohm}|1:23: sender.short_below: open must begin above what counts as a short",
        "sender: {ladder: {reeds: 2, first: 1 mm, pitch: 12 mm, resistors: [0 ohm, 1 ohm], pull_in: 8 mm, drop_out: 8 mm, stops: 0 mm to 30 mm}}|1:108: sender.ladder.drop_out: a reed drops out further off than it pulls in",
        "sender: {ladder: {reeds: 3, first: 1 mm, pitch: 12 mm, resistors: [0 ohm, 1 ohm], pull_in: 8 mm, drop_out: 9 mm, stops: 0 mm to 30 mm}}|1:67: sender.ladder.resistors: there must be one resistor a reed, 0 ohm for a link",
        "cap_sensor: {wet: 100, dry: 100}|1:29: cap_sensor.dry: wet and dry read the same, so the sensor tells nothing",
        "timing: [{run: 1 s, rest: 1 s, from: \"22:00\", to: \"06:00\"}]|1:39: timing[0].from: the first timing holds whenever no later one does, so it has no hours, months or days of its own; put one before it, such as \"- {run: 90 s, rest: 12 min}\"",
        "tariff: {bands: [{from: \"22:00\"}]}|1:26: tariff.bands[0].from: \"from\" needs \"to\" beside it, such as to: \"06:00\"",
        "tariff: {bands: [{from: \"24:00\", to: \"06:00\"}]}|1:26: tariff.bands[0].from: a window begins before 24:00; write \"00:00\"",
        "tariff: {price: 0.31 USD/kWh, standing: 0.3 EUR/d}|1:41: tariff.standing: a plan has one currency: this is EUR, tariff.price says USD",
        "currency: EUR\\ntariff: {price: 0.31 USD/kWh}|2:17: tariff.price: a plan has one currency: this is USD, \"currency\" says EUR",
        "currency: XYZ|1:11: currency: the code of a currency is needed, such as EUR; got \"XYZ\"",
        "season: {from: 2027-10-01, to: 2027-04-01}|1:32: season.to: it ends before it starts: \"2027-04-01\" against from \"2027-10-01\"",
        "season: {from: 2027-02-29}|1:16: season.from: that month has 28 days; got \"2027-02-29\"",
        "crops: [{sow: 2027-10-01, until: 2027-04-01}]|1:34: crops[0].until: it ends before it starts: \"2027-04-01\" against sow \"2027-10-01\"",
        "towers: [{name: north}, {name: south}]\\ncrops: [{tower: nort}]|2:17: crops[0].tower: no tower is named \"nort\"; did you mean \"north\"?",
        "towers: [{name: north}, {name: north}]|1:32: towers[1].name: \"north\" is the name of another one in this list already",
        "towers: [{modules: [{height: 20 mm, overlap: 21 mm}]}]|1:46: towers[0].modules[0].overlap: it sits deeper than it is high: \"21 mm\" against height \"20 mm\"",
        "target: {ec_low: 2 mS/cm, ec_high: 1 mS/cm}|1:18: target.ec_low: the lowest EC is above the highest: \"2 mS/cm\" against ec_high \"1 mS/cm\"",
        "feed: {salts: [{elements: {NO3: 12 %}}]}|1:28: feed.salts[0].elements.NO3: NO3 is the ion, 4.43 times its nitrogen: say N-NO3",
        "meters: {ec: {scale: 600}}|1:22: meters.ec.scale: meters show ppm as EC times 500, 640 or 700, and 1 mS/cm is 500, 640 or 700 ppm by them: say which of the three",
        "site: {latitude: 95 deg}|1:18: site.latitude: it must lie between -90 deg and 90 deg, such as \"47.9 deg\"; got \"95 deg\"",
        "cap_sensor: {wet: 017}|1:19: cap_sensor.wet: no leading zero: some YAML readers take 017 for a number in base 8",
        "controller: {relay: {coil_when: on}}|1:33: controller.relay.coil_when: put it in quotes: some YAML readers take on for something else than text",
        "name: !!str a|1:7: a plan takes no YAML tags such as !!str; put a text in quotes",
      })
  void isToldBeyondASchema(String typed, String told) {
    String yaml = typed.replace("\\n", "\n") + "\n";
    assertThat(Plans.told(yaml)).containsExactly("p.yaml:" + told);
  }
}
