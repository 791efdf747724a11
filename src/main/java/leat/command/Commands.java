package leat.command;

import leat.check.Rules;
import leat.cli.Command;
import leat.cli.CommandList;
import leat.cli.Flag;
import leat.cli.Run;
import leat.cli.Terminal;
import leat.command.build.HeadCommand;
import leat.command.build.PartsCommand;
import leat.command.build.PumpCommand;
import leat.command.build.TankCommand;
import leat.command.build.WindCommand;
import leat.command.feed.AcidCommand;
import leat.command.feed.CleanCommand;
import leat.command.feed.CropsCommand;
import leat.command.feed.DoseCommand;
import leat.command.feed.DoseSaltsCommand;
import leat.command.feed.EcCommand;
import leat.command.feed.OxygenCommand;
import leat.command.feed.StockCommand;
import leat.command.feed.TopupCommand;
import leat.command.plans.CheckCommand;
import leat.command.plans.PlanCommand;
import leat.command.plans.PlanKeysCommand;
import leat.command.plans.PlanNewCommand;
import leat.command.plans.PlanSchemaCommand;
import leat.command.plans.PlanSetCommand;
import leat.command.plans.PlanShowCommand;
import leat.command.plans.SweepCommand;
import leat.command.plans.UnitsCommand;
import leat.command.run.DutyBackupCommand;
import leat.command.run.DutyCableCommand;
import leat.command.run.DutyCapCommand;
import leat.command.run.DutyCommand;
import leat.command.run.SeasonCommand;
import leat.command.run.SeasonDayCommand;
import leat.command.run.SeasonLightCommand;
import leat.command.run.SowCommand;
import leat.command.sense.LevelCommand;
import leat.command.sense.LevelDividerCommand;
import leat.command.sense.LevelFitCommand;
import leat.command.sense.LevelLadderCommand;
import leat.command.sense.LevelTableCommand;
import leat.command.sense.LogCommand;
import leat.hydraulics.Fitting;
import leat.solution.Crops;
import leat.solution.Salts;
import leat.solution.acid.Acids;
import leat.sweep.Measures;

/**
 * The one list of commands, in the order help shows them; group, help, completion and manual pages
 * derive from it.
 */
public final class Commands extends CommandList {
  /** The exit code of a command line. */
  public static int run(String[] args, Terminal terminal) {
    return Run.run(args, terminal, new Commands());
  }

  @Override
  public String[] groups() {
    return new String[] {"build", "sense", "feed", "run", "plans"};
  }

  @Override
  public Command version() {
    return new VersionCommand();
  }

  @Override
  public String[] words(Flag flag) {
    switch (flag.name()) {
      case "--acid":
        return Acids.names().toArray(new String[0]);
      case "--salt":
      case "--weighed":
      case "--weigh":
        return Salts.names();
      case "--fitting":
        return Fitting.names();
      case "--rule":
        return Rules.ids();
      case "--measure":
      case "--rank":
        return Measures.names().toArray(new String[0]);
      default:
        return super.words(flag);
    }
  }

  @Override
  public String[] operandWords(Command command) {
    switch (command.name()) {
      case "crops":
        return Crops.names().toArray(new String[0]);
      case "units":
        return UnitsCommand.words();
      default:
        return null;
    }
  }

  @Override
  protected Command walk() {
    if (is("build", "head")) return new HeadCommand();
    if (is("build", "pump")) return new PumpCommand();
    if (is("build", "tank")) return new TankCommand();
    if (is("build", "wind")) return new WindCommand();
    if (is("build", "parts")) return new PartsCommand();
    if (is("sense", "level")) return new LevelCommand();
    if (is("sense", "level table")) return new LevelTableCommand();
    if (is("sense", "level ladder")) return new LevelLadderCommand();
    if (is("sense", "level divider")) return new LevelDividerCommand();
    if (is("sense", "level fit")) return new LevelFitCommand();
    if (is("sense", "log")) return new LogCommand();
    if (is("feed", "ec")) return new EcCommand();
    if (is("feed", "dose")) return new DoseCommand();
    if (is("feed", "dose salts")) return new DoseSaltsCommand();
    if (is("feed", "stock")) return new StockCommand();
    if (is("feed", "topup")) return new TopupCommand();
    if (is("feed", "acid")) return new AcidCommand();
    if (is("feed", "crops")) return new CropsCommand();
    if (is("feed", "oxygen")) return new OxygenCommand();
    if (is("feed", "clean")) return new CleanCommand();
    if (is("run", "duty")) return new DutyCommand();
    if (is("run", "duty backup")) return new DutyBackupCommand();
    if (is("run", "duty cable")) return new DutyCableCommand();
    if (is("run", "duty cap")) return new DutyCapCommand();
    if (is("run", "sow")) return new SowCommand();
    if (is("run", "season")) return new SeasonCommand();
    if (is("run", "season day")) return new SeasonDayCommand();
    if (is("run", "season light")) return new SeasonLightCommand();
    if (is("plans", "check")) return new CheckCommand();
    if (is("plans", "sweep")) return new SweepCommand();
    if (is("plans", "plan")) return new PlanCommand();
    if (is("plans", "plan new")) return new PlanNewCommand();
    if (is("plans", "plan set")) return new PlanSetCommand();
    if (is("plans", "plan schema")) return new PlanSchemaCommand();
    if (is("plans", "plan show")) return new PlanShowCommand();
    if (is("plans", "plan keys")) return new PlanKeysCommand();
    if (is("plans", "units")) return new UnitsCommand();
    return null;
  }
}
