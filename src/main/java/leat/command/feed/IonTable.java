package leat.command.feed;

import java.util.Arrays;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.numeric.Impossible;
import leat.plan.Origin;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.IonAmount;
import leat.quantity.NamedQuantity;
import leat.quantity.Nearest;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.Ion;
import leat.solution.IonName;
import leat.solution.Ions;

/** Ions as they are typed and shown: by weight, by number and by charge. */
final class IonTable {
  static final Column ION = Column.plain("ion", "ion");
  static final Column MG = Column.of("mg_L", "by weight", Show.MG_L);
  static final Column MMOL = Column.number("mmol_L", "by number, mmol/L", 3);
  static final Column MEQ = Column.of("meq_L", "by charge", Show.MEQ_L.digits(3));

  private IonTable() {}

  /** The ions of a repeated {@code --ion NAME=AMOUNT}; a bare amount is mg/L. */
  static Ions typed(Call call) {
    List<String> typed = call.texts("--ion");
    Ions ions = Ions.NONE;
    for (int i = 0; i < typed.size(); i++) {
      ions = with(ions, typed.get(i));
    }
    return ions;
  }

  private static Ions with(Ions ions, String typed) {
    int equals = typed.indexOf('=');
    String amount = typed.substring(equals + 1);
    if (!IonAmount.isCounted(amount)) {
      NamedQuantity one = EcPrediction.named("--ion", typed, Units.MG_L);
      return ions.andMilligrams(name(one.name()), one.quantity().value());
    }
    if (equals <= 0) {
      throw new Refused(EcErrors.noIonAmount(typed));
    }
    IonName name = name(typed.substring(0, equals).strip());
    try {
      double weight = name.milligramsPerMillimole();
      return ions.andMilligrams(
          name, IonAmount.mgPerL(amount, weight, Math.abs(name.ion().charge())));
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag("--ion", typed), "", e));
    }
  }

  private static IonName name(String typed) {
    try {
      return IonName.of(typed);
    } catch (Impossible e) {
      String near = Nearest.of(typed, Arrays.asList(IonName.names()));
      throw new Refused(EcErrors.noIon(typed, e.getMessage(), near));
    }
  }

  /** A row for each ion that is there. */
  static Answer of(Ions ions) {
    Answer table = new Answer(ION, MG, MMOL, MEQ);
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      if (ions.of(ion) > 0) {
        table
            .row()
            .set(ION, ion.symbol())
            .set(MG, ions.milligrams(ion))
            .set(MMOL, ions.of(ion))
            .set(MEQ, ions.milliequivalents(ion));
      }
    }
    return table;
  }

  /** A line of text for each. */
  static void tell(Answer answer, Answer table) {
    for (int i = 0; i < table.size(); i++) {
      Row row = table.row(i);
      answer.figure((String) row.get(ION), row, "{mg_L}", "{mmol_L} mmol/L", "{meq_L}");
    }
  }
}
