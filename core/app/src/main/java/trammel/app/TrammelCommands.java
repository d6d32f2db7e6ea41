package trammel.app;

import java.util.List;
import trammel.app.commandline.Command;
import trammel.app.commands.ArrangeCommand;
import trammel.app.commands.CheckCommand;
import trammel.app.commands.CloseCommand;
import trammel.app.commands.CompareCommand;
import trammel.app.commands.CutCommand;
import trammel.app.commands.FigureCommand;
import trammel.app.commands.FitUpCommand;
import trammel.app.commands.LayoutsCommand;
import trammel.app.commands.LedgerCommand;
import trammel.app.commands.MotionCommand;
import trammel.app.commands.OrderCommand;
import trammel.app.commands.PlanCommand;
import trammel.app.commands.PricesCommand;
import trammel.app.commands.QuoteCommand;
import trammel.app.commands.StartCommand;
import trammel.app.commands.TackedCommand;
import trammel.app.commands.TravelCommand;
import trammel.app.commands.book.BookCommand;

/**
 * The commands of Trammel: one line in the list and one in the switch for each. The page has a jar
 * of its own, which no other command opens; where that is missing there is no such command.
 */
final class TrammelCommands implements CommandTable {
  private static final Entry PAGE =
      new Entry("page", "The same work in a browser, on this machine, without a network.");

  private static final List<Entry> ENTRIES =
      List.of(
          new Entry("start", "Asks for the measurements of a job and writes its file."),
          new Entry("layouts", "The linkages and springs that are installed, with their options."),
          new Entry("check", "The layout of a job and every check, worst first."),
          new Entry("arrange", "Searches for layouts that pass every check, cheapest first."),
          new Entry("travel", "The curves of a job through heave and roll."),
          new Entry("plan", "Parts, tubes, plates, welds and hours of a job."),
          new Entry("quote", "A job from its measurements to its price."),
          new Entry("order", "One material order a supplier over one or many jobs."),
          new Entry("fitup", "Where each bracket goes from the marked datums."),
          new Entry("tacked", "What was tacked, judged before it is welded for good."),
          new Entry("close", "Hours and material really used; teaches the shop's hours."),
          new Entry("ledger", "The shop's ledger: closed jobs and rack, backups, tables."),
          new Entry("book", "The course of jobs from quote to paid: changes, payments, goods."),
          new Entry("prices", "A supplier's price list into the shop's catalog."),
          new Entry("compare", "Variants of a job side by side, with what makes the difference."),
          PAGE,
          new Entry("motion", "The engine alone on a bare linkage file."),
          new Entry("cut", "A bare cut list from sticks, sheets or a strip."),
          new Entry("figure", "The bench figures: any single formula of the tool."),
          new Entry("completion", "The script by which a shell completes commands."),
          new Entry("manual", "The manual page."));

  private static final String PAGE_JAR = "trammel-page.jar";

  @Override
  public List<Entry> entries() {
    return BroughtCommand.isThere(PAGE_JAR)
        ? ENTRIES
        : ENTRIES.stream().filter(entry -> entry != PAGE).toList();
  }

  @Override
  public Command create(String name) {
    // A switch, not a map of constructors: it loads no class before its branch is taken.
    return switch (name) {
      case "start" -> new StartCommand();
      case "layouts" -> new LayoutsCommand();
      case "check" -> new CheckCommand();
      case "arrange" -> new ArrangeCommand();
      case "travel" -> new TravelCommand();
      case "plan" -> new PlanCommand();
      case "quote" -> new QuoteCommand();
      case "order" -> new OrderCommand();
      case "compare" -> new CompareCommand();
      case "fitup" -> new FitUpCommand();
      case "tacked" -> new TackedCommand();
      case "close" -> new CloseCommand();
      case "ledger" -> new LedgerCommand();
      case "book" -> new BookCommand();
      case "prices" -> new PricesCommand();
      case "page" -> BroughtCommand.of(PAGE_JAR);
      case "motion" -> new MotionCommand();
      case "cut" -> new CutCommand();
      case "figure" -> new FigureCommand();
      case "completion" -> new ShellCommand(this, false);
      case "manual" -> new ShellCommand(this, true);
      default -> throw new IllegalArgumentException("There is no command '" + name + "'.");
    };
  }
}
