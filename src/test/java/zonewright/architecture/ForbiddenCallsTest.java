package zonewright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Calls that would make the program differ from one computer to the next, or talk past people. */
class ForbiddenCallsTest {
  private static final Path SOURCES = Path.of("src", "main", "java", "zonewright");

  /** Calls that follow the computer's language, time zone or character set. */
  private static final Set<String> OF_THE_COMPUTER =
      Set.of(
          "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
          "java.lang.String.toLowerCase()",
          "java.lang.String.toUpperCase()",
          "java.lang.String.getBytes()",
          "java.lang.String.<init>([B)",
          "java.util.Locale.getDefault()",
          "java.util.Formatter.<init>()",
          "java.util.Scanner.<init>(java.io.InputStream)",
          "java.nio.charset.Charset.defaultCharset()",
          "java.io.InputStreamReader.<init>(java.io.InputStream)",
          "java.io.OutputStreamWriter.<init>(java.io.OutputStream)",
          "java.io.FileReader.<init>(java.io.File)",
          "java.io.FileReader.<init>(java.lang.String)",
          "java.io.FileWriter.<init>(java.io.File)",
          "java.io.FileWriter.<init>(java.lang.String)",
          "java.io.PrintStream.printf(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintWriter.printf(java.lang.String, [Ljava.lang.Object;)",
          "java.text.NumberFormat.getInstance()",
          "java.text.NumberFormat.getNumberInstance()",
          "java.text.NumberFormat.getIntegerInstance()",
          "java.text.NumberFormat.getPercentInstance()",
          "java.text.NumberFormat.getCurrencyInstance()",
          "java.text.DecimalFormat.<init>(java.lang.String)",
          "java.text.SimpleDateFormat.<init>(java.lang.String)",
          "java.text.MessageFormat.<init>(java.lang.String)",
          "java.text.MessageFormat.format(java.lang.String, [Ljava.lang.Object;)",
          "java.text.Collator.getInstance()",
          "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)");

  private static final ArchCondition<JavaClass> FOLLOW_THE_COMPUTER =
      new ArchCondition<>("follow the computer's language, time zone or character set") {
        @Override
        public void check(JavaClass from, ConditionEvents events) {
          for (JavaAccess<?> access : from.getAccessesFromSelf()) {
            if (OF_THE_COMPUTER.contains(access.getTarget().getFullName())) {
              events.add(SimpleConditionEvent.satisfied(from, access.getDescription()));
            }
          }
        }
      };

  @Test
  void nothingFollowsTheComputersLanguage() {
    noClasses()
        .should(FOLLOW_THE_COMPUTER)
        .because("a design must read and print the same in every country's settings")
        .check(FloorsTest.PROGRAM);
  }

  @Test
  void onlyTheCommandLineWritesToTheConsole() {
    noClasses()
        .that()
        .resideOutsideOfPackages("zonewright.command..", "zonewright")
        .should(ACCESS_STANDARD_STREAMS)
        .because("what a designer must know is told where the designer looks")
        .check(FloorsTest.PROGRAM);
  }

  /** {@code formatted} follows the computer's language for numbers, though not for words. */
  @Test
  void formatsTakeWordsOnlyUnlessTheyNameTheirLanguage() throws IOException {
    Pattern number = Pattern.compile("%[-#+ 0,(]*\\d*(\\.\\d+)?[dfeEgGtT](?![A-Za-z\\]])");
    for (Path source : sources()) {
      for (String line : Files.readAllLines(source, StandardCharsets.UTF_8)) {
        Matcher matcher = number.matcher(line);
        if (matcher.find() && !line.contains("Locale.ROOT")) {
          assertThat(line.strip()).as("%s formats a number", source).startsWith("//");
        }
      }
    }
  }

  @Test
  void everyPackageSaysItsReasonToExist() throws IOException {
    List<Path> packages = sources().stream().map(Path::getParent).distinct().toList();
    assertThat(packages).hasSizeGreaterThan(8);
    for (Path each : packages) {
      assertThat(each.resolve("package-info.java")).exists();
      String text = Files.readString(each.resolve("package-info.java"), StandardCharsets.UTF_8);
      assertThat(text).as("%s", each).startsWith("/**").containsPattern("\\w{3,} \\w+ \\w+");
    }
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }
}
