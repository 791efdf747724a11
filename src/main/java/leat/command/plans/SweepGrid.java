package leat.command.plans;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.cli.RowTable;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.sweep.Axis;
import leat.sweep.Grid;
import leat.sweep.SweepErrors;

/** The designs that a call of sweep names. */
final class SweepGrid {
  private SweepGrid() {}

  static Grid of(Call call, Plan plan) {
    if (call.has("--rows")) {
      return rows(call, plan);
    }
    List<Axis> axes = varied(call, plan);
    if (axes.isEmpty()) {
      throw new Refused(SweepErrors.nothingVaried());
    }
    return call.has("--sample")
        ? Grid.sample(
            axes, SweepCommand.atLeast1(call, "--sample"), DoubtFlags.seed(call), call.has("--yes"))
        : Grid.full(axes, call.has("--yes"));
  }

  private static List<Axis> varied(Call call, Plan plan) {
    List<Axis> axes = new ArrayList<>();
    Set<String> paths = new HashSet<>();
    for (String typed : call.texts("--vary")) {
      int equals = typed.indexOf('=');
      if (equals <= 0) {
        throw new Refused(SweepErrors.badVary(typed));
      }
      String path = typed.substring(0, equals).strip();
      if (!paths.add(path)) {
        throw new Refused(SweepErrors.keyTwice("--vary", path));
      }
      axes.add(axis(call, plan, path, typed.substring(equals + 1).strip()));
    }
    return axes;
  }

  private static Axis axis(Call call, Plan plan, String path, String values) {
    String first = values.indexOf(',') < 0 ? values : values.substring(0, values.indexOf(','));
    if (!first.endsWith(".yaml") && !first.endsWith(".yml")) {
      return Axis.of(plan, path, values);
    }
    List<String> names = Axis.parts(path, values);
    List<String> contents = new ArrayList<>();
    for (String name : names) {
      contents.add(fragment(call, name));
    }
    return Axis.ofTexts(path, names, contents);
  }

  private static String fragment(Call call, String name) {
    String text;
    try {
      text = Files.readString(call.terminal.file(name).toPath(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Refused(List.of(PlanErrors.cannotRead(name, "no such file, or no UTF-8 text")), 3);
    }
    if (text.lines().allMatch(line -> line.isBlank() || line.strip().startsWith("#"))) {
      throw new Refused(SweepErrors.emptyFragment(name));
    }
    return text;
  }

  private static Grid rows(Call call, Plan plan) {
    rowsAlone(call);
    RowTable table = new RowTable(call, call.text("--rows"));
    List<Axis> axes = new ArrayList<>();
    if (table.size() == 0) {
      throw new Refused(SweepErrors.noRows(call.text("--rows")));
    }
    Set<String> paths = new HashSet<>();
    for (String path : table.names()) {
      if (!paths.add(path)) {
        throw new Refused(SweepErrors.keyTwice("--rows", path));
      }
      int column = table.column(path);
      List<String> typed = new ArrayList<>();
      for (int r = 0; r < table.size(); r++) {
        typed.add(table.cell(r, column));
      }
      axes.add(Axis.ofRows(plan, path, typed));
    }
    return Grid.rows(axes);
  }

  private static void rowsAlone(Call call) {
    if (call.has("--vary") || call.has("--sample")) {
      throw new Refused(
          CommandErrors.notBoth(
              call.command, "--rows", call.has("--vary") ? "--vary" : "--sample"));
    }
  }
}
