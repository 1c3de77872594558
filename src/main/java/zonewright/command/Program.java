package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import zonewright.sheet.Nearest;

/**
 * The whole command line: results to one stream, complaints to another, and a code for the script
 * that called. Nothing is thrown at a person.
 */
public final class Program {
  private static final int HELP_WIDTH = 100;
  private static final String NO_MEMORY =
      "There is not enough memory for this; close other programs and try again.";

  private final CommandLine commandLine;

  /**
   * Makes the command line.
   *
   * @param out where results go
   * @param err where complaints and remarks go
   * @param window what opens when no command is given
   */
  public Program(PrintWriter out, PrintWriter err, Window window) {
    this(out, err, window, Terminal.REAL);
  }

  /** Makes the command line with a terminal of its own, for tests. */
  Program(PrintWriter out, PrintWriter err, Window window, Terminal terminal) {
    commandLine =
        new CommandLine(new StartCommand(window, terminal))
            .addSubcommand(new CalculateCommand())
            .addSubcommand(new FindingsCommand())
            .addSubcommand(new TimetableCommand())
            .addSubcommand(new SeasonCommand())
            .addSubcommand(new WriteCommand())
            .addSubcommand(new HandoverCommand())
            .addSubcommand(new AlternativesCommand())
            .addSubcommand(new OfficeCommand())
            .addSubcommand(new SetCommand())
            .addSubcommand(new ProposalCommand())
            .addSubcommand(new FirstWeeksCommand())
            .addSubcommand(new SplitCommand())
            .addSubcommand(new PackCommand())
            .addSubcommand(new ImportCommand())
            .addSubcommand(new WeatherCommand())
            .addSubcommand(new PlacesCommand())
            .addSubcommand(new AnswerCommand())
            .addSubcommand(new FindCommand())
            .addSubcommand(new SureCommand())
            .addSubcommand(new ColumnsCommand())
            .addSubcommand(new ColumnCommand())
            .addSubcommand(new PracticeCommand())
            .addSubcommand(new RetrofitCommand())
            .addSubcommand(new PricesCommand())
            .addSubcommand(new GuideCommand())
            .registerConverter(Path.class, Program::path)
            .setOut(out)
            .setErr(err)
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setUsageHelpWidth(HELP_WIDTH)
            .setExitCodeExceptionMapper(problem -> ExitCode.FAULT)
            .setParameterExceptionHandler(Program::misunderstood)
            .setExecutionExceptionHandler(Program::failed);
  }

  /** Returns the commands by their names. */
  Map<String, CommandLine> commands() {
    return commandLine.getSubcommands();
  }

  /** Runs one command and returns its exit code: 0 where all went well. */
  public int run(String... arguments) {
    PrintWriter err = commandLine.getErr();
    int code;
    try {
      code = commandLine.execute(arguments);
    } catch (OutOfMemoryError problem) {
      err.println(NO_MEMORY);
      code = ExitCode.FAULT;
    }
    if (commandLine.getOut().checkError()) {
      err.println(
          "What was asked for could not be put out to its end: the disk is full, or what takes it has stopped.");
      code = ExitCode.FILE;
    }
    err.flush();
    return code;
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException problem) {
      throw new TypeConversionException(
          "“%s” cannot be the name of a file here; where it has letters that this language setting does not know, begin with LC_ALL=C.UTF-8."
              .formatted(name));
    }
  }

  private static int misunderstood(ParameterException problem, String[] arguments) {
    PrintWriter err = problem.getCommandLine().getErr();
    CommandSpec spec = problem.getCommandLine().getCommandSpec();
    err.println(sentence(problem, spec));
    err.println("How it works: " + spec.qualifiedName() + " --help");
    return ExitCode.USAGE;
  }

  private static String sentence(ParameterException problem, CommandSpec spec) {
    if (problem instanceof MissingParameterException missing) {
      return "Missing: "
          + missing.getMissing().stream().map(ArgSpec::paramLabel).collect(Collectors.joining(", "))
          + ".";
    }
    if (problem instanceof UnmatchedArgumentException unmatched) {
      return unknown(unmatched.getUnmatched(), spec);
    }
    if (problem instanceof OverwrittenOptionException) {
      return "An option is given twice; give it once.";
    }
    String message = problem.getMessage();
    if (problem.getCause() instanceof TypeConversionException cause) {
      message = cause.getMessage();
    }
    return message.endsWith(".") ? message : message + ".";
  }

  private static String unknown(List<String> words, CommandSpec spec) {
    String first = words.get(0);
    List<String> options = List.copyOf(spec.optionsMap().keySet());
    return first.startsWith("-") && !options.isEmpty()
        ? "There is no option “%s”; did you mean %s?"
            .formatted(first, Nearest.to(first, options, 1).get(0))
        : "“%s” is one word too many; put names with spaces in quotation marks.".formatted(first);
  }

  /** Says whether something failed for want of memory, however it was passed on. */
  static boolean lackedMemory(Throwable problem) {
    boolean lacked = false;
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      lacked |= cause instanceof OutOfMemoryError;
    }
    return lacked;
  }

  private static int failed(
      Exception problem, CommandLine command, CommandLine.ParseResult parsed) {
    PrintWriter err = command.getErr();
    if (problem instanceof Complaint complaint) {
      err.println(complaint.getMessage());
      return complaint.code();
    }
    if (lackedMemory(problem)) {
      err.println(NO_MEMORY);
      return ExitCode.FAULT;
    }
    err.println(
        "The program itself is at fault (%s: %s); nothing was changed. Please report it with the command you gave."
            .formatted(problem.getClass().getSimpleName(), problem.getMessage()));
    return ExitCode.FAULT;
  }
}
