package leat.cli;

import java.io.File;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Format;
import leat.answer.Told;
import leat.html.AnswerPage;
import leat.html.BarePaths;
import leat.html.MadeBy;
import leat.plan.Plan;
import leat.plan.Refused;

/** The page of an answer: its words, and how it was made. Loaded only for --format html. */
final class Page {
  private Page() {}

  static String of(Call call, Answer answer, Format format) {
    if (answer.isPage()) {
      return answer.pageText();
    }
    if (answer.isVerbatim()) {
      throw new Refused(OutputErrors.noPage(call.command));
    }
    BarePaths paths = new BarePaths(call.words());
    return new AnswerPage(new Told(answer, format), madeBy(call, paths), paths).write();
  }

  private static MadeBy madeBy(Call call, BarePaths paths) {
    StringBuilder line = new StringBuilder("leat ").append(call.command.name());
    for (String word : call.words()) {
      line.append(' ').append(ShellWord.quoted(paths.of(word)));
    }
    List<Plan> plans = new ArrayList<>();
    for (Plan plan : call.plansRead()) {
      boolean known = false;
      for (Plan other : plans) {
        known |= java.util.Objects.equals(plan.fileName(), other.fileName());
      }
      if (!known) {
        plans.add(plan);
      }
    }
    String title = "leat " + call.command.name();
    if (plans.size() == 1 && plans.get(0).isFromFile()) {
      title += ": " + plans.get(0).title();
    }
    return new MadeBy(title, line.toString(), lines(call, plans));
  }

  private static List<String> lines(Call call, List<Plan> plans) {
    Clock clock = call.terminal.clock();
    List<String> lines = new ArrayList<>();
    lines.add(Help.version().strip() + ", " + LocalDate.now(clock));
    for (Plan plan : plans) {
      if (plan.isFromFile() && !"-".equals(plan.fileName())) {
        File file = call.terminal.file(plan.fileName());
        LocalDate day =
            LocalDate.ofInstant(Instant.ofEpochMilli(file.lastModified()), clock.getZone());
        lines.add("Plan " + file.getName() + " as saved on " + day);
      }
    }
    return lines;
  }
}
