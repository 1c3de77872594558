package zonewright.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all commands have: help, a stream for results and one for complaints. */
abstract class Task implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  boolean helpAsked;

  /** Returns where results go. */
  final PrintWriter out() {
    return spec.commandLine().getOut();
  }

  /** Returns where complaints and remarks go. */
  final PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
