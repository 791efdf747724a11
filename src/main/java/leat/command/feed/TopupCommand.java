package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.cli.Output;
import leat.cli.RowStream;
import leat.level.Status;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.quantity.Dimension;

/** {@code leat topup}: what to drain and add to reach a volume and an EC. */
public final class TopupCommand extends Command {
  private static final Kind VOLUME = Kind.quantity(Dimension.VOLUME);
  private static final Column HELD_UP = Column.of("hold_up_L", "hold up", Show.L);
  private static final Column STATUS_WORD = Column.plain("sender", "sender");

  @Override
  public String name() {
    return "topup";
  }

  @Override
  public Flag[] flags() {
    return TopupFlags.all();
  }

  @Override
  public int stream(Call call, Output output) {
    return call.has("--column") ? new RowStream(call, TopupRows.of(call)).run(output) : -1;
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    Held.refuseTwo(call);
    TopupAsked asked = new TopupAsked(call);
    Held held = Held.of(call);
    if (held.isUnknown()) {
      return unknown(call, asked, held);
    }
    return asked.feed == null
        ? new TopupBySalts(asked, held).answer()
        : new TopupByLabel(asked, held).answer();
  }

  private static Answer unknown(Call call, TopupAsked asked, Held held) {
    Answer answer =
        new Answer(
            asked.feed == null
                ? new Column[] {TopupColumns.SENDER, TopupColumns.STATUS}
                : TopupColumns.of(true, asked.feed));
    Row row =
        answer.row().set(TopupColumns.SENDER, held.status()).set(TopupColumns.STATUS, "no-volume");
    answer.sentence(
        row,
        "The sender reads {sender_status}: what is in the tank is not known, and nothing is to be poured.");
    call.withTaken(answer);
    return answer
        .next(
            call.again("tank")
                + " --level ...   with the level by a stick; then leat topup --volume ...")
        .no();
  }

  /** Doubts about the sender's reading. */
  static void readingMinds(Answer answer, Plan plan, Held held) {
    if (held.log != null) {
      held.log.minds(answer);
      return;
    }
    if (held.reading == null) {
      return;
    }
    if (held.reading.status() == Status.BETWEEN_STEPS) {
      answer.mind(
          "sender-doubt",
          "a reading between two steps is a poor contact or a wet plug more often than a level; look if it comes again.");
    } else if (held.reading.status() != Status.OK) {
      answer.mind(
          "sender-doubt",
          Row.aside(STATUS_WORD).set(STATUS_WORD, held.status()),
          "the sender's reading is not plain ({sender}): look into the tank before you pour.");
    }
    pumpOff(answer, plan);
  }

  private static void pumpOff(Answer answer, Plan plan) {
    Double heldUp = plan.root().maybe("hold_up");
    if (heldUp == null) {
      answer.mind("pump-off", "read with the pump off: running towers hold some water.");
    } else {
      answer.mind(
          "pump-off",
          Row.aside(HELD_UP).set(HELD_UP, heldUp),
          "read with the pump off: running towers hold {hold_up_L}.");
    }
  }
}
