package leat.quantity;

import static leat.quantity.Dimension.*;
import static leat.quantity.UnitSystem.BOTH;
import static leat.quantity.UnitSystem.METRIC;
import static leat.quantity.UnitSystem.US;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The one table of units: reading, printing, {@code leat units}, help, schema and manual are made
 * from it. Longer than other files because a table reads best in one piece.
 *
 * <p>Exact factors. Source: NIST SP 811 (2008) appendix B and NIST Handbook 44 appendix C: inch
 * 0.0254 m, US gallon 231 cubic inches, pound 0.45359237 kg, standard gravity 9.80665 m/s2,
 * imperial gallon 4.54609 L (UK Weights and Measures Act 1985), nautical mile 1852 m, metre of
 * water 9806.65 Pa (conventional), teaspoon 1/768 US gallon (4.93 mL; kitchen spoons are 5 mL).
 * Alkalinity: 50.04 mg of CaCO3 and 61.016 mg of HCO3 a milliequivalent, a German degree 17.85 mg/L
 * of CaCO3. ppm is read as mg/L, which holds in dilute water.
 */
public final class Units {
  private static final List<Unit> ALL = new ArrayList<>(200);

  // Length, base m.
  public static final Unit MM =
      u(LENGTH, METRIC, "mm", "millimetre", 1, 1000, "millimetres|millimeter|millimeters");
  public static final Unit CM =
      u(LENGTH, METRIC, "cm", "centimetre", 1, 100, "centimetres|centimeter|centimeters");
  public static final Unit M = u(LENGTH, METRIC, "m", "metre", 1, 1, "metres|meter|meters");
  public static final Unit KM =
      u(LENGTH, METRIC, "km", "kilometre", 1000, 1, "kilometres|kilometer|kilometers");
  public static final Unit UM =
      u(LENGTH, METRIC, "um", "micrometre", 1, 1000000, "micron|microns|micrometer|micrometres");
  public static final Unit INCH = u(LENGTH, US, "in", "inch", 254, 10000, "inch|inches|\"|''");
  public static final Unit FOOT = u(LENGTH, US, "ft", "foot", 3048, 10000, "foot|feet|'");
  public static final Unit MILE = u(LENGTH, US, "mi", "mile", 1609344, 1000, "mile|miles");
  public static final Unit YARD = u(LENGTH, US, "yd", "yard", 9144, 10000, "yard|yards");
  public static final Unit MIL =
      u(LENGTH, US, "mil", "thousandth of an inch", 254, 10000000, "mils|thou");

  // Area, base m2.
  public static final Unit MM2 =
      u(AREA, METRIC, "mm2", "square millimetre", 1, 1000000, "sq mm|sqmm");
  public static final Unit CM2 = u(AREA, METRIC, "cm2", "square centimetre", 1, 10000, "sq cm");
  public static final Unit M2 = u(AREA, METRIC, "m2", "square metre", 1, 1, "sq m|sqm");
  public static final Unit IN2 = u(AREA, US, "in2", "square inch", 64516, 100000000, "sq in|sqin");
  public static final Unit FT2 =
      u(AREA, US, "ft2", "square foot", 9290304, 100000000, "sq ft|sqft");

  // Volume, base m3.
  public static final Unit ML =
      u(VOLUME, METRIC, "mL", "millilitre", 1, 1000000, "ml|millilitres|milliliter|milliliters|cc");
  public static final Unit CL = u(VOLUME, METRIC, "cL", "centilitre", 1, 100000, "cl");
  public static final Unit DL = u(VOLUME, METRIC, "dL", "decilitre", 1, 10000, "dl");
  public static final Unit L =
      u(VOLUME, METRIC, "L", "litre", 1, 1000, "l|litre|litres|liter|liters|dm3");
  public static final Unit M3 =
      u(VOLUME, METRIC, "m3", "cubic metre", 1, 1, "cu m|cubic metre|cubic metres|cubic meters");
  public static final Unit CM3 = u(VOLUME, METRIC, "cm3", "cubic centimetre", 1, 1000000, "cu cm");
  public static final Unit MM3 = u(VOLUME, METRIC, "mm3", "cubic millimetre", 1, 1000000000);
  public static final Unit GALLON =
      u(
          VOLUME,
          US,
          "gal",
          "US gallon",
          473176473,
          125000000000L,
          "gals|gallon|gallons|usgal|US gal|US gallon|US gallons");
  public static final Unit QUART =
      u(VOLUME, US, "qt", "US quart", 473176473, 500000000000L, "quart|quarts");
  public static final Unit PINT =
      u(VOLUME, US, "pt", "US pint", 473176473, 1000000000000L, "pint|pints");
  public static final Unit CUP = u(VOLUME, US, "cup", "US cup", 473176473, 2000000000000L, "cups");
  public static final Unit FLOZ =
      u(
          VOLUME,
          US,
          "floz",
          "US fluid ounce",
          473176473,
          16000000000000L,
          "fl oz|fl. oz.|fl. oz|fluid ounce|fluid ounces");
  public static final Unit TBSP =
      u(VOLUME, US, "tbsp", "US tablespoon", 473176473, 32000000000000L, "tablespoon|tablespoons");
  public static final Unit TSP =
      u(VOLUME, US, "tsp", "US teaspoon", 157725491, 32000000000000L, "teaspoon|teaspoons");
  public static final Unit IMPGAL =
      u(
          VOLUME,
          BOTH,
          "impgal",
          "imperial gallon",
          454609,
          100000000,
          "imp gal|imperial gallon|imperial gallons|UK gal");
  public static final Unit IN3 =
      u(VOLUME, US, "in3", "cubic inch", 16387064, 1000000000000L, "cu in");
  public static final Unit FT3 =
      u(VOLUME, US, "ft3", "cubic foot", 28316846592L, 1000000000000L, "cu ft");

  // Mass, base kg.
  public static final Unit MG =
      u(MASS, METRIC, "mg", "milligram", 1, 1000000, "milligram|milligrams");
  public static final Unit G = u(MASS, METRIC, "g", "gram", 1, 1000, "gram|grams|gramme|grammes");
  public static final Unit KG =
      u(MASS, METRIC, "kg", "kilogram", 1, 1, "kilo|kilos|kilogram|kilograms");
  public static final Unit TONNE = u(MASS, METRIC, "t", "tonne", 1000, 1, "tonne|tonnes");
  public static final Unit OZ = u(MASS, US, "oz", "ounce", 45359237, 1600000000L, "ounce|ounces");
  public static final Unit LB = u(MASS, US, "lb", "pound", 45359237, 100000000, "lbs|pound|pounds");

  // Time, base s. No milliseconds, months or years: nothing here needs them.
  public static final Unit S = u(TIME, BOTH, "s", "second", 1, 1, "sec|secs|second|seconds");
  public static final Unit MIN = u(TIME, BOTH, "min", "minute", 60, 1, "mins|minute|minutes");
  public static final Unit H = u(TIME, BOTH, "h", "hour", 3600, 1, "hr|hrs|hour|hours");
  public static final Unit D = u(TIME, BOTH, "d", "day", 86400, 1, "day|days");
  public static final Unit WEEK = u(TIME, BOTH, "week", "week", 604800, 1, "weeks|wk|wks");

  // Flow, base m3/s.
  public static final Unit L_S = u(FLOW, METRIC, "L/s", "litre a second", 1, 1000, "l/s");
  public static final Unit L_MIN =
      u(FLOW, METRIC, "L/min", "litre a minute", 1, 60000, "l/min|lpm|LPM");
  public static final Unit L_H =
      u(FLOW, METRIC, "L/h", "litre an hour", 1, 3600000, "l/h|lph|LPH|L/hr|l/hr");
  public static final Unit L_D =
      u(FLOW, METRIC, "L/d", "litre a day", 1, 86400000, "l/d|L/day|l/day");
  public static final Unit ML_D =
      u(FLOW, METRIC, "mL/d", "millilitre a day", 1, 86400000000L, "ml/d|mL/day|ml/day");
  public static final Unit ML_S =
      u(FLOW, METRIC, "mL/s", "millilitre a second", 1, 1000000, "ml/s");
  public static final Unit ML_MIN =
      u(FLOW, METRIC, "mL/min", "millilitre a minute", 1, 60000000, "ml/min");
  public static final Unit M3_S = u(FLOW, METRIC, "m3/s", "cubic metre a second", 1, 1);
  public static final Unit M3_H =
      u(FLOW, METRIC, "m3/h", "cubic metre an hour", 1, 3600, "cmh|CMH");
  public static final Unit GPM =
      u(FLOW, US, "gal/min", "US gallon a minute", 157725491, 2500000000000L, "gpm|GPM");
  public static final Unit GPH =
      u(FLOW, US, "gal/h", "US gallon an hour", 157725491, 150000000000000L, "gph|GPH|gal/hr");
  public static final Unit GPD =
      u(FLOW, US, "gal/d", "US gallon a day", 157725491, 3600000000000000L, "gpd|GPD|gal/day");
  public static final Unit IMPGAL_MIN =
      u(FLOW, BOTH, "impgal/min", "imperial gallon a minute", 454609, 6000000000L);
  public static final Unit IMPGAL_H =
      u(FLOW, BOTH, "impgal/h", "imperial gallon an hour", 454609, 360000000000L);
  public static final Unit FLOZ_MIN =
      u(FLOW, US, "floz/min", "US fluid ounce a minute", 157725491, 320000000000000L);
  public static final Unit FLOZ_D =
      u(
          FLOW,
          US,
          "floz/d",
          "US fluid ounce a day",
          157725491,
          460800000000000000L,
          "floz/day|fl oz/d|fl oz/day");

  // Head, base metre of water.
  public static final Unit M_HEAD =
      u(HEAD, METRIC, "m", "metre of water", 1, 1, "metre|metres|meter|meters|mH2O|m H2O|mWC");
  public static final Unit CM_HEAD =
      u(HEAD, METRIC, "cm", "centimetre of water", 1, 100, "cmH2O|centimetres|centimeters");
  public static final Unit MM_HEAD =
      u(HEAD, METRIC, "mm", "millimetre of water", 1, 1000, "mmH2O|millimetres|millimeters");
  public static final Unit FT_HEAD =
      u(HEAD, US, "ft", "foot of water", 3048, 10000, "foot|feet|'|ftH2O|ft H2O");
  public static final Unit IN_HEAD =
      u(HEAD, US, "in", "inch of water", 254, 10000, "inch|inches|\"|''|inH2O|in H2O");
  public static final Unit KPA_HEAD = u(HEAD, METRIC, "kPa", "kilopascal", 20000, 196133);
  public static final Unit BAR_HEAD = u(HEAD, METRIC, "bar", "bar", 2000000, 196133);
  public static final Unit MBAR_HEAD = u(HEAD, METRIC, "mbar", "millibar", 2000, 196133);
  public static final Unit PA_HEAD = u(HEAD, METRIC, "Pa", "pascal", 20, 196133);
  public static final Unit PSI_HEAD =
      u(HEAD, US, "psi", "pound-force a square inch", 45359237, 64516000, "PSI");

  // Pressure, base Pa.
  public static final Unit PA = u(PRESSURE, METRIC, "Pa", "pascal", 1, 1);
  public static final Unit HPA = u(PRESSURE, METRIC, "hPa", "hectopascal", 100, 1);
  public static final Unit KPA = u(PRESSURE, METRIC, "kPa", "kilopascal", 1000, 1);
  public static final Unit MPA = u(PRESSURE, METRIC, "MPa", "megapascal", 1000000, 1);
  public static final Unit MBAR = u(PRESSURE, METRIC, "mbar", "millibar", 100, 1);
  public static final Unit BAR = u(PRESSURE, METRIC, "bar", "bar", 100000, 1);
  public static final Unit PSI =
      u(PRESSURE, US, "psi", "pound-force a square inch", 8896443230521L, 1290320000, "PSI");
  public static final Unit MH2O =
      u(PRESSURE, METRIC, "mH2O", "metre of water", 980665, 100, "m H2O|mWC");
  public static final Unit INH2O =
      u(PRESSURE, US, "inH2O", "inch of water", 24908891, 100000, "in H2O");

  /** The conventional inch of mercury: NIST SP 811, appendix B.8, 3386.389 Pa. */
  public static final Unit IN_HG =
      u(PRESSURE, US, "inHg", "inch of mercury", 3386389, 1000, "in Hg|\"Hg");

  // Temperature, base degree Celsius; differences, base K.
  public static final Unit C =
      t(TEMPERATURE, METRIC, "C", "degree Celsius", 1, 1, 0, "degC|deg C|Celsius|celsius");
  public static final Unit F =
      t(TEMPERATURE, US, "F", "degree Fahrenheit", 5, 9, -32, "degF|deg F|Fahrenheit|fahrenheit");
  public static final Unit KELVIN = t(TEMPERATURE, METRIC, "K", "kelvin", 1, 1, -273.15, "kelvin");
  public static final Unit K = u(TEMPERATURE_DIFFERENCE, METRIC, "K", "kelvin", 1, 1, "kelvin");
  public static final Unit C_DIFFERENCE =
      u(TEMPERATURE_DIFFERENCE, METRIC, "C", "degree Celsius", 1, 1, "degC|deg C");
  public static final Unit F_DIFFERENCE =
      u(TEMPERATURE_DIFFERENCE, US, "F", "degree Fahrenheit", 5, 9, "degF|deg F");

  // Speed, base m/s.
  public static final Unit M_S = u(SPEED, METRIC, "m/s", "metre a second", 1, 1, "mps");
  public static final Unit CM_S = u(SPEED, METRIC, "cm/s", "centimetre a second", 1, 100);
  public static final Unit MM_S = u(SPEED, METRIC, "mm/s", "millimetre a second", 1, 1000);
  public static final Unit KM_H =
      u(SPEED, METRIC, "km/h", "kilometre an hour", 1000, 3600, "kmh|kph|km/hr");
  public static final Unit MPH = u(SPEED, US, "mph", "mile an hour", 44704, 100000, "MPH|mi/h");
  public static final Unit KN = u(SPEED, BOTH, "kn", "knot", 1852, 3600, "kt|kts|knot|knots");
  public static final Unit FT_S = u(SPEED, US, "ft/s", "foot a second", 3048, 10000, "fps");

  // Power, base W; energy, base J; force, base N.
  public static final Unit MW = u(POWER, BOTH, "mW", "milliwatt", 1, 1000);
  public static final Unit W = u(POWER, BOTH, "W", "watt", 1, 1, "watt|watts|Watt|Watts");
  public static final Unit KW = u(POWER, BOTH, "kW", "kilowatt", 1000, 1, "kilowatt|kilowatts");
  public static final Unit HP =
      u(
          POWER,
          US,
          "hp",
          "horsepower (550 foot pound-force a second)",
          37284993579113511L,
          50000000000000L,
          "HP");
  public static final Unit J = u(ENERGY, BOTH, "J", "joule", 1, 1, "joule|joules");
  public static final Unit KJ = u(ENERGY, BOTH, "kJ", "kilojoule", 1000, 1);
  public static final Unit MJ = u(ENERGY, BOTH, "MJ", "megajoule", 1000000, 1);
  public static final Unit WH = u(ENERGY, BOTH, "Wh", "watt hour", 3600, 1, "W h");
  public static final Unit KWH = u(ENERGY, BOTH, "kWh", "kilowatt hour", 3600000, 1, "kW h");
  public static final Unit N = u(FORCE, METRIC, "N", "newton", 1, 1, "newton|newtons");
  public static final Unit KN_FORCE = u(FORCE, METRIC, "kN", "kilonewton", 1000, 1);
  public static final Unit KGF = u(FORCE, METRIC, "kgf", "kilogram-force", 980665, 100000, "kp");
  public static final Unit LBF = u(FORCE, US, "lbf", "pound-force", 8896443230521L, 2000000000000L);

  // Money: the currency's code stands before these symbols.
  public static final Unit MONEY_UNIT = u(MONEY, BOTH, "", "units of the currency", 1, 1);
  public static final Unit PER_KWH =
      u(MONEY_PER_ENERGY, BOTH, "/kWh", "a kilowatt hour", 1, 1, "/kW h");
  public static final Unit PER_MWH = u(MONEY_PER_ENERGY, BOTH, "/MWh", "a megawatt hour", 1, 1000);
  public static final Unit PER_KG = u(MONEY_PER_MASS, METRIC, "/kg", "a kilogram", 1, 1);
  public static final Unit PER_G = u(MONEY_PER_MASS, METRIC, "/g", "a gram", 1000, 1);
  public static final Unit PER_LB = u(MONEY_PER_MASS, US, "/lb", "a pound", 100000000, 45359237);
  public static final Unit PER_OZ = u(MONEY_PER_MASS, US, "/oz", "an ounce", 1600000000, 45359237);
  public static final Unit PER_M3 = u(MONEY_PER_VOLUME, METRIC, "/m3", "a cubic metre", 1, 1);
  public static final Unit PER_L = u(MONEY_PER_VOLUME, METRIC, "/L", "a litre", 1000, 1, "/l");
  public static final Unit PER_ML =
      u(MONEY_PER_VOLUME, METRIC, "/mL", "a millilitre", 1000000, 1, "/ml");
  public static final Unit PER_GAL =
      u(MONEY_PER_VOLUME, US, "/gal", "a US gallon", 125000000000L, 473176473);
  public static final Unit PER_QT =
      u(MONEY_PER_VOLUME, US, "/qt", "a US quart", 500000000000L, 473176473);
  public static final Unit PER_KGAL =
      u(
          MONEY_PER_VOLUME,
          US,
          "/kgal",
          "a thousand US gallons",
          125000000L,
          473176473,
          "/1000gal|/1000 gal|/thousand gallons");
  public static final Unit PER_CCF =
      u(
          MONEY_PER_VOLUME,
          US,
          "/ccf",
          "a hundred cubic feet",
          312500000L,
          884901456,
          "/CCF|/hcf|/HCF");
  public static final Unit MONEY_PER_D = u(MONEY_PER_TIME, BOTH, "/d", "a day", 1, 1, "/day");
  public static final Unit MONEY_PER_H =
      u(MONEY_PER_TIME, BOTH, "/h", "an hour", 24, 1, "/hr|/hour");
  public static final Unit MONEY_PER_WEEK = u(MONEY_PER_TIME, BOTH, "/week", "a week", 1, 7, "/wk");

  // EC, base mS/cm.
  public static final Unit MS_CM =
      u(EC, BOTH, "mS/cm", "millisiemens a centimetre", 1, 1, "mS cm-1");
  public static final Unit US_CM =
      u(EC, BOTH, "uS/cm", "microsiemens a centimetre", 1, 1000, "uS cm-1");
  public static final Unit DS_M = u(EC, BOTH, "dS/m", "decisiemens a metre", 1, 1, "dS m-1");
  public static final Unit MS_M = u(EC, BOTH, "mS/m", "millisiemens a metre", 1, 100);
  public static final Unit S_M = u(EC, BOTH, "S/m", "siemens a metre", 10, 1);
  public static final Unit MMHO_CM =
      u(EC, BOTH, "mmho/cm", "millimho a centimetre", 1, 1, "mmhos/cm");
  public static final Unit UMHO_CM =
      u(EC, BOTH, "umho/cm", "micromho a centimetre", 1, 1000, "umhos/cm");
  public static final Unit CF =
      u(EC, BOTH, "CF", "conductivity factor, tenths of mS/cm", 1, 10, "cF");

  // Concentration, base mg/L.
  public static final Unit MG_L =
      u(MASS_CONCENTRATION, BOTH, "mg/L", "milligram a litre", 1, 1, "mg/l");
  public static final Unit PPM =
      u(MASS_CONCENTRATION, BOTH, "ppm", "part a million, as mg/L", 1, 1, "PPM");
  public static final Unit UG_L =
      u(MASS_CONCENTRATION, BOTH, "ug/L", "microgram a litre", 1, 1000, "ug/l");
  public static final Unit G_L =
      u(MASS_CONCENTRATION, METRIC, "g/L", "gram a litre", 1000, 1, "g/l");
  public static final Unit KG_L =
      u(MASS_CONCENTRATION, METRIC, "kg/L", "kilogram a litre", 1000000, 1, "kg/l");
  public static final Unit KG_M3 =
      u(MASS_CONCENTRATION, METRIC, "kg/m3", "kilogram a cubic metre", 1000, 1);
  public static final Unit G_ML =
      u(MASS_CONCENTRATION, METRIC, "g/mL", "gram a millilitre", 1000000, 1, "g/ml|g/cc");
  public static final Unit G_CM3 =
      u(MASS_CONCENTRATION, METRIC, "g/cm3", "gram a cubic centimetre", 1000000, 1);
  public static final Unit LB_GAL =
      u(MASS_CONCENTRATION, US, "lb/gal", "pound a US gallon", 56699046250000L, 473176473);
  public static final Unit OZ_GAL =
      u(MASS_CONCENTRATION, US, "oz/gal", "ounce a US gallon", 56699046250000L, 7570823568L);
  public static final Unit G_GAL =
      u(MASS_CONCENTRATION, US, "g/gal", "gram a US gallon", 125000000000L, 473176473);

  // Feed in water, base mL/L.
  public static final Unit ML_L =
      u(VOLUME_RATIO, METRIC, "mL/L", "millilitre a litre", 1, 1, "ml/l|ml/L|L/m3|l/m3");
  public static final Unit ML_10L =
      u(
          VOLUME_RATIO,
          METRIC,
          "mL/10 L",
          "millilitre in 10 litres",
          1,
          10,
          "mL/10L|ml/10 l|ml/10l|ml/10 L|ml/10L");
  public static final Unit ML_100L =
      u(
          VOLUME_RATIO,
          METRIC,
          "mL/100 L",
          "millilitre in 100 litres",
          1,
          100,
          "mL/100L|ml/100 l|ml/100l|ml/100 L|ml/100L");
  public static final Unit TSP_GAL =
      u(VOLUME_RATIO, US, "tsp/gal", "US teaspoon a US gallon", 1000, 768);
  public static final Unit TBSP_GAL =
      u(VOLUME_RATIO, US, "tbsp/gal", "US tablespoon a US gallon", 1000, 256);
  public static final Unit FLOZ_GAL =
      u(VOLUME_RATIO, US, "floz/gal", "US fluid ounce a US gallon", 1000, 128, "fl oz/gal");
  public static final Unit ML_GAL =
      u(VOLUME_RATIO, US, "mL/gal", "millilitre a US gallon", 125000000, 473176473, "ml/gal");

  // Alkalinity, base meq/L.
  public static final Unit MEQ_L =
      u(
          ALKALINITY,
          BOTH,
          "meq/L",
          "milliequivalent a litre",
          1,
          1,
          "meq/l|mval/L|mval/l|mmol/L HCO3|mmol/l HCO3");
  public static final Unit MG_L_CACO3 =
      u(
          ALKALINITY,
          BOTH,
          "mg/L as CaCO3",
          "milligram a litre, as calcium carbonate",
          100,
          5004,
          "mg/L CaCO3|mg/L|mg/l as CaCO3|mg/l CaCO3|mg/l|ppm CaCO3|ppm as CaCO3|ppm");
  public static final Unit MG_L_HCO3 =
      u(
          ALKALINITY,
          BOTH,
          "mg/L HCO3",
          "milligram a litre of hydrogencarbonate",
          1000,
          61016,
          "mg/L as HCO3|mg/l HCO3|mg/l as HCO3");
  public static final Unit MMOL_L_CACO3 =
      u(
          ALKALINITY,
          BOTH,
          "mmol/L as CaCO3",
          "millimole a litre, as calcium carbonate",
          2,
          1,
          "mmol/L CaCO3|mmol/l as CaCO3|mmol/l CaCO3");
  public static final Unit DH = u(ALKALINITY, METRIC, "dH", "German degree", 1785, 5004, "dKH|KH");
  public static final Unit FH = u(ALKALINITY, METRIC, "fH", "French degree", 1000, 5004);

  // Electricity: base ohm, V, A, Ah.
  public static final Unit OHM = u(RESISTANCE, BOTH, "ohm", "ohm", 1, 1, "ohms|Ohm|Ohms");
  public static final Unit MOHM = u(RESISTANCE, BOTH, "mohm", "milliohm", 1, 1000);
  public static final Unit KOHM =
      u(RESISTANCE, BOTH, "kohm", "kilohm", 1000, 1, "kOhm|k ohm|kohms");
  public static final Unit MEGOHM = u(RESISTANCE, BOTH, "Mohm", "megohm", 1000000, 1, "MOhm");
  public static final Unit V = u(VOLTAGE, BOTH, "V", "volt", 1, 1, "volt|volts");
  public static final Unit MV = u(VOLTAGE, BOTH, "mV", "millivolt", 1, 1000);
  public static final Unit A = u(CURRENT, BOTH, "A", "ampere", 1, 1, "amp|amps|ampere|amperes");
  public static final Unit MA = u(CURRENT, BOTH, "mA", "milliampere", 1, 1000);
  public static final Unit AH = u(CHARGE, BOTH, "Ah", "ampere hour", 1, 1, "A h");
  public static final Unit MAH = u(CHARGE, BOTH, "mAh", "milliampere hour", 1, 1000, "mA h");

  // Angle, base rad.
  public static final Unit DEG =
      new Unit(ANGLE, BOTH, "deg", "degree", 1, 180, 0, true, "degree|degrees");
  public static final Unit RAD = u(ANGLE, BOTH, "rad", "radian", 1, 1, "radian|radians");

  // Shares, rates, counts.
  public static final Unit PERCENT = u(SHARE, BOTH, "%", "per cent", 1, 100);
  public static final Unit PER_S = u(RATE, BOTH, "/s", "times a second", 1, 1, "1/s");
  public static final Unit PER_MIN = u(RATE, BOTH, "/min", "times a minute", 1, 60, "1/min");
  public static final Unit PER_H = u(RATE, BOTH, "/h", "times an hour", 1, 3600, "1/h|/hr|/hour");
  public static final Unit PER_D = u(RATE, BOTH, "/d", "times a day", 1, 86400, "1/d|/day");
  public static final Unit PER_WEEK =
      u(RATE, BOTH, "/week", "times a week", 1, 604800, "1/week|/wk");
  public static final Unit H_D = u(TIME_PER_DAY, BOTH, "h/d", "hours a day", 1, 24, "h/day|hr/day");
  public static final Unit MIN_D =
      u(TIME_PER_DAY, BOTH, "min/d", "minutes a day", 1, 1440, "min/day");
  public static final Unit S_D = u(TIME_PER_DAY, BOTH, "s/d", "seconds a day", 1, 86400, "s/day");
  public static final Unit MJ_M2 =
      u(RADIATION, BOTH, "MJ/m2", "megajoules a square metre", 1, 1, "MJ/m^2|MJ m-2");
  public static final Unit KWH_M2 =
      u(RADIATION, BOTH, "kWh/m2", "kilowatt hours a square metre", 36, 10, "kWh/m^2|kWh m-2");
  public static final Unit COUNTS =
      u(COUNT, BOTH, "counts", "counts of a converter", 1, 1, "count");
  public static final Unit PIECES = u(COUNT, BOTH, "pieces", "pieces", 1, 1, "piece|pcs");
  public static final Unit SEASONS = u(COUNT, BOTH, "seasons", "seasons", 1, 1, "season");
  public static final Unit CYCLES = u(COUNT, BOTH, "cycles", "switching cycles", 1, 1, "cycle");

  // Plain numbers: pH, loss factors, months.
  public static final Unit NUMBER_UNIT = u(NUMBER, BOTH, "", "plain number", 1, 1, "pH");

  static {
    ALL.add(ALL.indexOf(RAD), DEG);
  }

  private Units() {}

  private static Unit u(
      Dimension of,
      UnitSystem system,
      String symbol,
      String name,
      long numerator,
      long denominator) {
    return t(of, system, symbol, name, numerator, denominator, 0, "");
  }

  private static Unit u(
      Dimension of,
      UnitSystem system,
      String symbol,
      String name,
      long numerator,
      long denominator,
      String aliases) {
    return t(of, system, symbol, name, numerator, denominator, 0, aliases);
  }

  private static Unit t(
      Dimension of,
      UnitSystem system,
      String symbol,
      String name,
      long numerator,
      long denominator,
      double offset,
      String aliases) {
    Unit unit = new Unit(of, system, symbol, name, numerator, denominator, offset, false, aliases);
    ALL.add(unit);
    return unit;
  }

  /** All units, by dimension in the order of {@link Dimension}. */
  public static List<Unit> all() {
    return Collections.unmodifiableList(ALL);
  }

  /** The units of one dimension, in the order of the table. */
  public static List<Unit> of(Dimension dimension) {
    List<Unit> some = new ArrayList<>();
    for (int i = 0; i < ALL.size(); i++) {
      if (ALL.get(i).dimension() == dimension) {
        some.add(ALL.get(i));
      }
    }
    return some;
  }

  /**
   * The unit of a dimension that is written so, case and all; null when there is none.
   *
   * @param text as typed: "l/h", "µS/cm", "gallons per hour"; for prices what follows the currency
   */
  public static Unit find(Dimension dimension, String text) {
    return Spelling.exactly(dimension, Spelling.ascii(text));
  }

  /** The unit that a US reader expects where a screen shows {@code metric}; the same if none. */
  public static Unit inUs(Unit metric) {
    for (int i = 0; i < US_FOR.length; i++) {
      if (US_FOR[i][0] == metric) {
        return US_FOR[i][1];
      }
    }
    return metric;
  }

  private static final Unit[][] US_FOR = {
    {MM, INCH},
    {CM, INCH},
    {M, FOOT},
    {KM, FOOT},
    {MM2, IN2},
    {CM2, IN2},
    {M2, FT2},
    {ML, FLOZ},
    {CL, FLOZ},
    {DL, FLOZ},
    {L, GALLON},
    {M3, GALLON},
    {CM3, IN3},
    {G, OZ},
    {KG, LB},
    {L_S, GPM},
    {L_MIN, GPM},
    {L_H, GPH},
    {L_D, GPD},
    {ML_MIN, FLOZ_MIN},
    {M3_S, GPM},
    {M3_H, GPM},
    {M_HEAD, FT_HEAD},
    {CM_HEAD, IN_HEAD},
    {MM_HEAD, IN_HEAD},
    {PA, PSI},
    {KPA, PSI},
    {BAR, PSI},
    {BAR_HEAD, PSI_HEAD},
    {KPA_HEAD, PSI_HEAD},
    {C, F},
    {K, F_DIFFERENCE},
    {C_DIFFERENCE, F_DIFFERENCE},
    {M_S, FT_S},
    {KM_H, MPH},
    {N, LBF},
    {PER_KG, PER_LB},
    {PER_M3, PER_GAL},
    {PER_L, PER_GAL},
    {G_L, OZ_GAL},
    {ML_L, TSP_GAL},
  };
}
