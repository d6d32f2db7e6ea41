package trammel.app.commands.book;

import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.commands.CommonOptions;
import trammel.app.commands.JobCommand;
import trammel.app.commands.ShopFolder;

/** Keeps the course of jobs in the shop's ledger: quotes, changes, payments, goods, invoices. */
public final class BookCommand extends JobCommand {
  static final String WHAT = "WHAT";
  private static final int MOST_WORDS = 4;

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "The course of jobs from quote to paid, kept in the shop's ledger. Without WHAT it"
                    + " shows all jobs. JOB is a job file, or a job's number.")
            .arguments(
                WHAT,
                0,
                MOST_WORDS,
                "show JOB, or JOB alone: its course. quote JOB: keeps the quote as given, and says what changed"
                    + " since the one before. accept JOB [C1]: the customer agreed to the quote, or"
                    + " to a change order. change JOB: a change order, what the job is now against"
                    + " what was agreed. drop JOB [C1]: takes the latest back. stage JOB TITLE:"
                    + " promises it for --date. done JOB TITLE: it was done. paid JOB AMOUNT."
                    + " received ORDER [FORM]: goods that came; without a form it writes one."
                    + " unplace ORDER: an order that was not placed after all. invoice JOB. again"
                    + " JOB FILE: a new job from an old one. forget WHO: deletes a customer's data.")
            .option(
                ShopFolder.OPTION,
                "DIR",
                "The folder of the jobs; without it, that of the job, or this one.")
            .option(
                BookDesk.DATE, "DAY", "The day on which it was, or is to be; without it, today.")
            .option(BookDesk.WHY, "TEXT", "Why, or for what; stands on the paper.")
            .flag(ReceivedGoods.ALL, "With received: all that was ordered has come.")
            .flag(
                ForgottenCustomer.APPLY,
                "With forget: deletes; without it, says what would be deleted.")
            .option(CopiedJob.NUMBER, "TEXT", "With again: the number of the new job.")
            .option(CopiedJob.CUSTOMER, "TEXT", "With again: the customer of the new job.")
            .option(CopiedJob.VEHICLE, "TEXT", "With again: the vehicle of the new job."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    BookDesk desk =
        new BookDesk(
            arguments,
            BookWord.whole(arguments.arguments(WHAT)),
            screen,
            bench(options.units(), screen),
            options);
    return BookWord.of(desk).run(desk);
  }
}
