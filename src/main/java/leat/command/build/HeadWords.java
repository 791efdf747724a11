package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.hydraulics.HeadLoss;
import leat.hydraulics.Regime;
import leat.hydraulics.Riser;

/** Doubts and formulas of {@code leat head}. */
final class HeadWords {
  private static final Column SLOW = Column.of("slow_m_s", "slow", Show.M_S.digits(1));
  private static final Column FAST = Column.of("fast_m_s", "fast", Show.M_S.digits(2));
  private static final Column ABSURD = Column.of("absurd_m_s", "absurd", Show.M_S.digits(2));

  private HeadWords() {}

  static void minds(Answer answer, Row row, HeadLoss loss, Riser riser) {
    HeadLoss.OfSection s = loss.fastest();
    answer.mind("head-accuracy", "lost head good to about 10 %; the bends' K is the soft part.");
    if (s.flickers()) {
      answer.mind(
          "transition",
          row,
          "near the transition the flow may flicker between laminar and turbulent; friction uncertain by a fifth. Churchill's formula gives {total_head_churchill_m} in all.");
    }
    speed(answer, s);
    pipe(answer, loss, riser);
  }

  private static void pipe(Answer answer, HeadLoss loss, Riser riser) {
    if (loss.heavy()) {
      answer.mind(
          "heavy-loss", "more than half of the climb is lost on the way: a wider bore pays.");
    }
    if (riser.shorterThanLift()) {
      answer.mind(
          "short-pipe", "the pipe is shorter than the height it must climb: measure again.");
    }
    if (!loss.fastest().usualBore()) {
      answer.mind("bore-range", "the formulas were checked for bores of 4 to 50 mm.");
    }
  }

  private static void speed(Answer answer, HeadLoss.OfSection s) {
    Row limits = limits();
    if (s.slow()) {
      answer.mind("slow", limits, "under {slow_m_s} air and grit stay in the tube.");
    }
    if (s.absurd()) {
      answer.mind(
          "very-fast",
          limits,
          "over {absurd_m_s} in a tower's riser: are these L/h and not L/min?");
    } else if (s.fast()) {
      answer.mind(
          "fast",
          limits,
          "over {fast_m_s} it is noisy and friction eats the head: try the next bore up, see --bores.");
    }
  }

  private static Row limits() {
    return Row.aside(SLOW, FAST, ABSURD)
        .set(SLOW, HeadLoss.OfSection.SLOW)
        .set(FAST, HeadLoss.OfSection.FAST)
        .set(ABSURD, HeadLoss.OfSection.ABSURD);
  }

  /** Of each stretch, from the pump; with several the sums, too. */
  static void workings(Answer answer, HeadLoss loss) {
    for (int i = 0; i < loss.sections().size(); i++) {
      HeadLoss.OfSection s = loss.sections().get(i);
      answer.working(
          Working.number(
              "Reynolds number",
              "Re = rho v D / mu",
              Phrase.of("v = ").add(s.velocity(), Show.M_S).add(", D = ").add(s.bore(), Show.MM),
              s.reynolds(),
              4,
              "any",
              "viscosity: IAPWS SR6-08(2011); density: Tanaka et al. 2001"));
      answer.working(s.ridged() ? ridges(s) : factor(s));
      heads(answer, s);
    }
    if (loss.sections().size() > 1) {
      sums(answer, loss);
    }
  }

  private static Working factor(HeadLoss.OfSection s) {
    return Working.number(
        "friction factor (Darcy)",
        formula(s.regime()),
        Phrase.of("Re = ").number(s.reynolds(), 4),
        s.frictionFactor(),
        4,
        "Re 4000 to 1E8, e/D 0 to 0.05 for Colebrook",
        "Colebrook 1939; the line between Re 2000 and 4000 is our own");
  }

  private static Working ridges(HeadLoss.OfSection s) {
    return Working.number(
        "friction factor (Darcy) of the ridges",
        "f = K D/S, K = (1 - (D/(D + 0.438 S))^2)^2 of each",
        Phrase.of("D = ")
            .add(s.bore(), Show.MM)
            .add(", S from ridge to ridge = ")
            .add(s.pipe().ridges(), Show.MM),
        s.frictionFactor(),
        4,
        "ridges that rub more than the wall between them",
        "a sudden widening at each ridge; Hawthorne 1963");
  }

  private static void heads(Answer answer, HeadLoss.OfSection s) {
    answer.working(
        Working.of(
            "friction head",
            "h = f (L/D) v^2/(2 g)",
            Phrase.of("f = ")
                .number(s.frictionFactor(), 4)
                .add(", L = ")
                .add(s.pipe().length(), Show.M)
                .add(", D = ")
                .add(s.bore(), Show.MM)
                .add(", v = ")
                .add(s.velocity(), Show.M_S),
            s.frictionHead(),
            Show.M.digits(4),
            "full round pipe",
            "Darcy and Weisbach"));
    answer.working(
        Working.of(
            "bends and ends",
            "h = sum K v^2/(2 g)",
            Phrase.of("sum K = ")
                .number(s.pipe().fittingsK(), 4)
                .add(", v = ")
                .add(s.velocity(), Show.M_S),
            s.fittingHead(),
            Show.M.digits(4),
            "K good to 30 %",
            "handbook tables of K"));
  }

  private static void sums(Answer answer, HeadLoss loss) {
    Phrase friction = Phrase.of();
    Phrase fittings = Phrase.of();
    for (int i = 0; i < loss.sections().size(); i++) {
      HeadLoss.OfSection s = loss.sections().get(i);
      friction.add(i == 0 ? "" : " + ").add(s.frictionHead(), Show.M.digits(4));
      fittings.add(i == 0 ? "" : " + ").add(s.fittingHead(), Show.M.digits(4));
    }
    String each = "the stretches one behind the other";
    answer.working(
        Working.of(
            "friction head in all",
            "sum of h",
            friction,
            loss.frictionHead(),
            Show.M.digits(4),
            each,
            "definition"));
    answer.working(
        Working.of(
            "bends and ends in all",
            "sum of h",
            fittings,
            loss.fittingHead(),
            Show.M.digits(4),
            each,
            "definition"));
  }

  private static String formula(Regime regime) {
    switch (regime) {
      case LAMINAR:
        return "f = 64/Re";
      case TURBULENT:
        return "1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f)))";
      default:
        return "f = 0.032 + (Re - 2000)/2000 (f_Colebrook(4000) - 0.032)";
    }
  }
}
