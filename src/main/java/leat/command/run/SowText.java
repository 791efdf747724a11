package leat.command.run;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.quantity.DateWords;
import leat.season.Batches;
import leat.season.DroppedBatch;
import leat.season.PotUse;
import leat.season.Sowing;
import leat.system.PotsOf;
import leat.system.Sown;

/** What the answer of {@code sow} says. */
final class SowText {
  private static final Column CROP = Column.plain("crop", "crop");
  private static final Column FROM = Column.plain("from", "from");
  private static final Column LEAST = Column.plain("least", "least");
  private static final Column MOST = Column.plain("most", "most");
  private static final Column EVERY = Column.plain("every", "every");
  private static final Column HARVEST = Column.plain("first", "first");
  private static final Column LAST = Column.plain("last", "last");
  private static final Column WEEK = Column.number("week", "a week", 2);
  private static final Column N = Column.plain("n", "n");
  private static final Column DAY = Column.plain("day", "day");
  private static final Column CROPS = Column.plain("crops", "crops");

  private final Call call;
  private final List<Sown> crops;
  private final List<List<Sown>> towers;

  SowText(Call call, List<Sown> crops, List<List<Sown>> towers) {
    this.call = call;
    this.crops = crops;
    this.towers = towers;
  }

  void write(Answer answer, Row sums) {
    sentence(answer, sums);
    table(answer);
    for (Sown crop : crops) {
      minds(answer, crop);
    }
    empty(answer);
    if (answer.size() > 0) {
      seeds(answer);
    }
    answer.next(
        crops.get(0).name() == null
            ? "leat season PLAN   what they drink, week by week"
            : call.again("sow") + " --format ics -o sowing.ics   puts it into your calendar");
  }

  private void seeds(Answer answer) {
    boolean lost = false;
    boolean sure = false;
    for (Sown crop : crops) {
      lost |= crop.batches().sowing().success() < 1;
      sure |= crop.batches().sowing().success() == 1;
    }
    if (lost) {
      answer.mind(
          "seeds-on-average",
          "seeds are enough on average, so too few about half the time; \"to be sure\" is enough nine times of ten.");
    }
    if (sure) {
      answer.taken(List.of("every seed becomes a plant where germination and loss are not named"));
    }
  }

  private static void table(Answer answer) {
    answer.table(
        SowRows.SOW,
        SowRows.CROP,
        SowRows.SEEDS,
        SowRows.SEEDS_90,
        SowRows.TRANSPLANT,
        SowRows.HARVEST,
        SowRows.PLANTS);
    if (answer.size() == 0) {
      answer.table();
    }
  }

  private void sentence(Answer answer, Row sums) {
    if (answer.size() == 0) {
      answer.sentence(sums, "Nothing can be sown: no batch is left.");
    } else if (crops.size() > 1) {
      severalCrops(answer, sums);
    } else {
      oneCrop(answer);
    }
  }

  private void severalCrops(Answer answer, Row sums) {
    Row row = Row.aside(CROPS, N, HARVEST, LAST);
    row.set(CROPS, crops.size())
        .set(N, answer.size())
        .set(HARVEST, DateWords.day(java.time.LocalDate.parse(text(sums, SowSums.FIRST))))
        .set(LAST, DateWords.day(java.time.LocalDate.parse(text(sums, SowSums.LAST))));
    answer.sentence(
        sums.with(row),
        "{n} sowings of {crops} crops bring {plants_total} plants, the first on {first}, the last on {last}.");
  }

  private void oneCrop(Answer answer) {
    Row row = crop();
    if (answer.size() == 1) {
      answer.sentence(row, "Sow {most} seeds of {crop} on {from}; harvest on {first}.");
      return;
    }
    Batches batches = crops.get(0).batches();
    boolean even = batches.fewestSeeds() == batches.mostSeeds();
    answer.sentence(
        row,
        (even ? "Sow {most} seeds of {crop}" : "Sow {least} to {most} seeds of {crop}")
            + " every {every} days from {from}; first harvest on {first}, then about {week} a week until {last}.");
  }

  private Row crop() {
    Batches batches = crops.get(0).batches();
    Row row = Row.aside(CROP, FROM, LEAST, MOST, EVERY, HARVEST, LAST, WEEK);
    String name = crops.get(0).name();
    return row.set(CROP, name == null ? "the crop" : name)
        .set(FROM, DateWords.day(batches.batches().get(0).sow()))
        .set(LEAST, batches.fewestSeeds())
        .set(MOST, batches.mostSeeds())
        .set(EVERY, batches.sowing().everyDays())
        .set(HARVEST, DateWords.day(batches.firstHarvest()))
        .set(LAST, DateWords.day(batches.lastHarvest()))
        .set(WEEK, batches.sowing().plantsAWeek());
  }

  private static String text(Row row, Column column) {
    return (String) row.get(column);
  }

  private static void minds(Answer answer, Sown crop) {
    Batches batches = crop.batches();
    Sowing sowing = batches.sowing();
    Row row = Row.aside(CROP, N, DAY, MOST, EVERY, WEEK);
    row.set(CROP, crop.name() == null ? "the crop" : crop.name())
        .set(MOST, sowing.pots())
        .set(WEEK, sowing.plantsAWeekAtMost());
    tooEarly(answer, row, batches);
    tooLate(answer, row, batches);
    pots(answer, row, batches);
    if (sowing.leavesPotsEmpty() && batches.batches().size() > 1) {
      row.set(N, sowing.emptyDaysBetween());
      answer.mind(
          "every-longer",
          row,
          "the pots of {crop} stand empty for {n} days between batches: sowings lie further apart (every) than the plants grow (growing).");
    } else if (batches.batches().size() > 1) {
      answer.mind(
          "plants-a-week",
          row,
          "{most} pots of {crop} bring {week} plants a week at most, however often you sow.");
    }
  }

  private static void tooEarly(Answer answer, Row row, Batches batches) {
    int early = batches.dropped(DroppedBatch.Reason.TOO_EARLY);
    if (early > 0) {
      row.set(N, early).set(DAY, batches.sowing().firstThatWorks().toString());
      answer.mind(
          "too-early",
          row,
          "{n} sowings of {crop} fall out: planted before earliest_transplant. The first sowing that works is {day}.");
    }
  }

  private static void tooLate(Answer answer, Row row, Batches batches) {
    int late = batches.dropped(DroppedBatch.Reason.TOO_LATE);
    if (late > 0) {
      row.set(N, late).set(DAY, batches.sowing().lastThatWorks().toString());
      answer.mind(
          "too-late",
          row,
          "{n} sowings of {crop} fall out: harvested after latest_harvest. The last sowing that works is {day}.");
    }
  }

  private static void pots(Answer answer, Row row, Batches batches) {
    Sowing sowing = batches.sowing();
    int without = batches.kept() - batches.batches().size();
    if (without > 0) {
      row.set(N, without).set(EVERY, sowing.everyForNoEmptyBatch());
      answer.mind(
          "empty-batches",
          row,
          "{n} sowings of {crop} have no pot: {most} pots want {every} days or more between sowings.");
    }
    if (sowing.idlePots() > 0) {
      row.set(N, sowing.idlePots());
      answer.mind(
          "idle-pots",
          row,
          "equal batches of {crop} leave {n} pots empty for ever; spread fills them.");
    }
  }

  private void empty(Answer answer) {
    for (List<Sown> tower : towers) {
      PotUse use = PotsOf.use(tower);
      if (use.empty()) {
        continue;
      }
      PotUse.EmptyTime time = use.longestEmpty();
      if (time.days() > PotUse.LONGEST_EMPTY_DAYS) {
        Row row = Row.aside(N, DAY, CROP);
        row.set(N, time.days()).set(DAY, time.first().toString());
        answer.mind(
            time.tooLong() ? "tower-empty" : "tower-empty-own",
            row,
            "from {day} on no plant stands in the tower for {n} days.");
      }
    }
  }
}
