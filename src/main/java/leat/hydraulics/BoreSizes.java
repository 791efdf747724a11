package leat.hydraulics;

/**
 * The rows of {@link Bores}: name, what to say, bore, least, greatest, outside, wall (mm, blank
 * when unknown), usual or rare, note.
 *
 * <p>Source: sheet hydraulics-bores.csv; each group names its own.
 */
final class BoreSizes {
  /** Family, how it is known (V seen, C computed, M memory, P practice), source, rows. */
  static final String[][] GROUPS = {
    {
      "hose",
      "V",
      "a hose maker's public tolerance page after EN ISO 1307:2008, column without " + "mandrel",
      "",
      "4 mm hose|4 mm|4|3.4|4.6|||rare|",
      "5 mm hose|5 mm (3/16 in)|5|4.2|5.4|||rare|",
      "6.3 mm hose|6.3 mm (1/4 in)|6.3|5.6|7.2|||rare|",
      "8 mm hose|8 mm (5/16 in)|8|7.2|8.8|||usual|",
      "10 mm hose|10 mm (3/8 in)|10|8.7|10.3|||usual|",
      "12.5 mm hose|12.5 mm (1/2 in)|12.5|11.9|13.5|||usual|sold as 12 or 13 mm too",
      "16 mm hose|16 mm (5/8 in)|16|15.1|16.7|||usual|sold as 15 or 16 mm",
      "19 mm hose|19 mm (3/4 in)|19|18.3|19.9|||usual|",
      "20 mm hose|20 mm|20|19.3|20.9|||rare|",
      "25 mm hose|25 mm (1 in)|25|24.2|26.6|||usual|",
      "31.5 mm hose|31.5 mm (1 1/4 in)|31.5|30.2|33.4|||usual|sold as 32 mm too",
      "38 mm hose|38 mm (1 1/2 in)|38|36.5|39.7|||rare|",
    },
    {
      "inch-tube",
      "M",
      "memory; inches times 25.4",
      "tolerance not verified; take that of hose",
      "1/4 in vinyl tube or garden hose|6.4 mm (1/4 in)|6.35|||||usual|",
      "5/16 in vinyl tube or garden hose|7.9 mm (5/16 in)|7.94|||||rare|",
    },
    {
      "inch-tube",
      "V",
      "public pages: garden hose 1/2, 5/8, 3/4, 1 in are inside sizes; vinyl tube 3/8 "
          + "to 1 in inside",
      "tolerance not verified; take that of hose",
      "3/8 in vinyl tube or garden hose|9.5 mm (3/8 in)|9.53|||||usual|",
      "1/2 in vinyl tube or garden hose|12.7 mm (1/2 in)|12.7|||||usual|",
      "5/8 in vinyl tube or garden hose|15.9 mm (5/8 in)|15.88|||||usual|",
      "3/4 in vinyl tube or garden hose|19.1 mm (3/4 in)|19.05|||||usual|",
      "1 in vinyl tube or garden hose|25.4 mm (1 in)|25.4|||||usual|",
    },
    {
      "silicone",
      "V sizes and class; P that it applies",
      "sizes: a maker's list, thin sleeving; tolerance: a maker's page after ISO "
          + "3302-1 class EN2, for mandrel-built hose",
      "soft: bore shrinks in a tight bend, grows under a barb",
      "4 mm silicone tube|4 mm|4|3.6|4.4|||usual|",
      "5 mm silicone tube|5 mm|5|4.5|5.5|||rare|",
      "6 mm silicone tube|6 mm|6|5.5|6.5|||usual|",
      "8 mm silicone tube|8 mm|8|7.4|8.6|||usual|",
      "10 mm silicone tube|10 mm|10|9.4|10.6|||usual|",
      "12 mm silicone tube|12 mm|12|11.2|12.8|||usual|",
      "14 mm silicone tube|14 mm|14|13.2|14.8|||rare|",
      "16 mm silicone tube|16 mm|16|15.2|16.8|||usual|",
      "18 mm silicone tube|18 mm|18|17|19|||rare|",
      "20 mm silicone tube|20 mm|20|19|21|||usual|",
      "22 mm silicone tube|22 mm|22|21|23|||rare|",
      "25 mm silicone tube|25 mm|25|24|26|||usual|",
    },
    {
      "silicone",
      "P",
      "common practice; tolerance as the other sizes",
      "soft: bore shrinks in a tight bend, grows under a barb",
      "13 mm silicone tube|13 mm|13|12.2|13.8|||rare|",
    },
    {
      "vinyl",
      "P",
      "common practice; not verified",
      "outside sizes differ by maker",
      "4 x 6 mm clear PVC hose|4 mm|4|||6|1|usual|",
      "5 x 8 mm clear PVC hose|5 mm|5|||8|1.5|usual|",
      "6 x 9 mm clear PVC hose|6 mm|6|||9|1.5|usual|",
      "8 x 11 mm clear PVC hose|8 mm|8|||11|1.5|usual|",
      "10 x 14 mm clear PVC hose|10 mm|10|||14|2|usual|",
      "12 x 16 mm clear PVC hose|12 mm|12|||16|2|usual|",
      "16 x 20 mm clear PVC hose|16 mm|16|||20|2|usual|",
      "19 x 25 mm clear PVC hose|19 mm|19|||25|3|usual|",
      "25 x 32 mm clear PVC hose|25 mm|25|||32|3.5|usual|",
    },
    {
      "pe",
      "V, C",
      "a pipe maker's public table, public PE100 table (outside and wall, least to "
          + "greatest); least walls also in a second maker's ISO 4427 table",
      "",
      "PE 20 mm SDR 11|20 mm outside, 15.9 inside|15.85|15.4|16.3|20|2|usual|bore = "
          + "mean outside less twice the mean wall; nominal 16",
      "PE 20 mm SDR 9|20 mm outside, 15.2 inside|15.15|14.6|15.7|20|2.3|rare|bore = "
          + "mean outside less twice the mean wall; nominal 15.4",
      "PE 20 mm SDR 7.4|20 mm outside, 13.8 inside|13.75|13.2|14.3|20|3|rare|bore = "
          + "mean outside less twice the mean wall; nominal 14",
      "PE 25 mm SDR 13.6|25 mm outside, 20.9 inside|20.85|20.4|21.3|25|2|rare|bore = "
          + "mean outside less twice the mean wall; nominal 21",
      "PE 25 mm SDR 11|25 mm outside, 20.2 inside|20.15|19.6|20.7|25|2.3|usual|bore = "
          + "mean outside less twice the mean wall; nominal 20.4",
      "PE 25 mm SDR 9|25 mm outside, 18.8 inside|18.75|18.2|19.3|25|3|rare|bore = "
          + "mean outside less twice the mean wall; nominal 19",
      "PE 25 mm SDR 7.4|25 mm outside, 17.7 inside|17.65|17|18.3|25|3.5|rare|bore = "
          + "mean outside less twice the mean wall; nominal 18",
      "PE 32 mm SDR 17|32 mm outside, 27.9 inside|27.85|27.4|28.3|32|2|usual|bore = "
          + "mean outside less twice the mean wall; nominal 28",
      "PE 32 mm SDR 13.6|32 mm outside, 27.0 inside|26.95|26.4|27.5|32|2.4|rare|bore "
          + "= mean outside less twice the mean wall; nominal 27.2",
      "PE 32 mm SDR 11|32 mm outside, 25.8 inside|25.75|25.2|26.3|32|3|usual|bore = "
          + "mean outside less twice the mean wall; nominal 26",
      "PE 32 mm SDR 9|32 mm outside, 24.5 inside|24.45|23.8|25.1|32|3.6|rare|bore = "
          + "mean outside less twice the mean wall; nominal 24.8",
      "PE 40 mm SDR 17|40 mm outside, 35.0 inside|35|34.4|35.6|40|2.4|usual|bore = "
          + "mean outside less twice the mean wall; nominal 35.2",
      "PE 40 mm SDR 13.6|40 mm outside, 33.7 inside|33.7|33|34.4|40|3|rare|bore = "
          + "mean outside less twice the mean wall; nominal 34",
      "PE 40 mm SDR 11|40 mm outside, 32.3 inside|32.3|31.6|33|40|3.7|usual|bore = "
          + "mean outside less twice the mean wall; nominal 32.6",
    },
    {
      "pe",
      "M",
      "memory",
      "wall 2.0 is the least made",
      "PE 16 mm SDR 11|16 mm outside, 12 inside|12|||16|2|rare|",
    },
    {
      "drip",
      "P",
      "hydraulics.md section 2; not verified again",
      "16 mm is outside",
      "16 mm irrigation pipe, thick wall|16 mm outside, 13.6 "
          + "inside|13.6|13|13.8|16|1.2|usual|",
    },
    {
      "drip",
      "M",
      "memory",
      "",
      "20 mm irrigation pipe|20 mm outside, 17.4 "
          + "inside|17.4|16.5|17.6|20|1.3|usual|20 mm is outside",
      "US 1/4 in micro tubing 0.170 x 0.250 in|4.3 mm (0.170 " + "in)|4.32|||6.35|1.02|usual|",
    },
    {
      "drip",
      "V",
      "two public irrigation pages",
      "all are sold as 1/2 in: read the print on the tube",
      "US 1/2 in drip tubing 0.520 x 0.620 in|13.2 mm (0.520 " + "in)|13.21|||15.75|1.27|usual|",
      "US 1/2 in drip tubing 0.570 x 0.670 in|14.5 mm (0.570 " + "in)|14.48|||17.02|1.27|usual|",
      "US 1/2 in drip tubing 0.580 x 0.700 in|14.7 mm (0.580 " + "in)|14.73|||17.78|1.52|usual|",
      "US 1/2 in drip tubing 0.600 x 0.700 in|15.2 mm (0.600 " + "in)|15.24|||17.78|1.27|usual|",
      "US 1/2 in drip tubing 0.620 x 0.710 in|15.7 mm (0.620 " + "in)|15.75|||18.03|1.14|usual|",
    },
    {
      "pex-us",
      "V, C",
      "a seller's table kept in a county's public record, after ASTM F876, SDR 9",
      "from the least wall: true bore up to 0.5 mm less (M)",
      "3/8 in PEX|9.1 mm (3/8 in PEX)|9.14|||12.7|1.78|usual|",
      "1/2 in PEX|12.3 mm (1/2 in PEX)|12.32|||15.88|1.78|usual|",
      "5/8 in PEX|14.8 mm (5/8 in PEX)|14.83|||19.05|2.11|usual|",
      "3/4 in PEX|17.3 mm (3/4 in PEX)|17.3|||22.23|2.46|usual|",
      "1 in PEX|22.2 mm (1 in PEX)|22.23|||28.58|3.18|usual|",
    },
    {
      "pex",
      "M",
      "sizes of ISO 15875-2 and of floor heating pipe by memory; the standard's scope "
          + "only was seen",
      "wall may be 0.3 mm more (M)",
      "PEX 16 x 2 mm|16 mm outside, 12.0 inside|12|||16|2|usual|",
      "PEX 16 x 2.2 mm|16 mm outside, 11.6 inside|11.6|||16|2.2|usual|",
      "PEX 20 x 2 mm|20 mm outside, 16.0 inside|16|||20|2|usual|",
      "PEX 20 x 2.8 mm|20 mm outside, 14.4 inside|14.4|||20|2.8|usual|",
      "PEX 25 x 2.3 mm|25 mm outside, 20.4 inside|20.4|||25|2.3|rare|",
      "PEX 25 x 3.5 mm|25 mm outside, 18.0 inside|18|||25|3.5|usual|",
      "PEX 32 x 4.4 mm|32 mm outside, 23.2 inside|23.2|||32|4.4|rare|",
    },
    {
      "sch40",
      "V, C",
      "public copies of ASTM D1785 tables: outside, least wall, average bore; wall + "
          + "0.020 in by memory, agrees with the averages",
      "",
      "3/8 in schedule 40 PVC|12.0 mm (3/8 in schedule "
          + "40)|12.01|11.4|12.62|17.15|2.31|rare|tables often print 0.493 in, the bore at "
          + "the least wall",
      "1/2 in schedule 40 PVC|15.3 mm (1/2 in schedule "
          + "40)|15.29|14.68|15.9|21.34|2.77|usual|tables often print 0.622 in, the bore at "
          + "the least wall",
      "3/4 in schedule 40 PVC|20.4 mm (3/4 in schedule "
          + "40)|20.42|19.81|21.03|26.67|2.87|usual|tables often print 0.824 in, the bore "
          + "at the least wall",
      "1 in schedule 40 PVC|26.1 mm (1 in schedule "
          + "40)|26.14|25.5|26.77|33.4|3.38|usual|tables often print 1.049 in, the bore at "
          + "the least wall",
    },
    {
      "sch40",
      "V outside and wall, C average",
      "public copies of ASTM D1785 tables: outside, least wall, average bore; wall + "
          + "0.020 in by memory, agrees with the averages",
      "tables often print 1.380 in, the bore at the least wall",
      "1 1/4 in schedule 40 PVC|34.5 mm (1 1/4 in schedule "
          + "40)|34.54|33.91|35.18|42.16|3.56|usual|",
    },
    {
      "pvc-u",
      "M",
      "EN ISO 1452 PN 16 walls by memory",
      "wall may be 0.3 mm more (M)",
      "PVC-U 16 x 1.5 mm|16 mm outside, 13.0 inside|13|||16|1.5|rare|",
      "PVC-U 20 x 1.5 mm|20 mm outside, 17.0 inside|17|||20|1.5|usual|",
      "PVC-U 25 x 1.9 mm|25 mm outside, 21.2 inside|21.2|||25|1.9|usual|",
      "PVC-U 32 x 2.4 mm|32 mm outside, 27.2 inside|27.2|||32|2.4|usual|",
    },
    {
      "barb",
      "P",
      "common practice: hose less 3 to 4 mm (plastic, 12.5 mm up); no public table " + "found",
      "measure with a drill shank",
      "barb for 4 mm hose|2.5 mm bore in a barb for 4 mm|2.5|2.2|2.8|||usual|",
      "barb for 6 mm hose|3.9 mm bore in a barb for 6 mm|3.85|3.5|4.2|||usual|",
      "barb for 8 mm hose|5.4 mm bore in a barb for 8 mm|5.4|5|5.8|||usual|",
      "barb for 10 mm hose|7.0 mm bore in a barb for 10 mm|7|6.5|7.5|||usual|",
      "barb for 12.5 mm hose|9.3 mm bore in a barb for 12.5 mm|9.25|8.5|10|||usual|",
      "barb for 16 mm hose|12.3 mm bore in a barb for 16 mm|12.25|11.5|13|||usual|",
      "barb for 19 mm hose|15.3 mm bore in a barb for 19 mm|15.25|14.5|16|||usual|",
      "barb for 25 mm hose|20.8 mm bore in a barb for 25 mm|20.75|20|21.5|||usual|",
    },
  };

  private BoreSizes() {}
}
