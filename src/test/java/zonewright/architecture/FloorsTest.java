package zonewright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The floors of the house: dependencies point from the screen down to the science. */
class FloorsTest {
  static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("zonewright");

  private static final String[] ABOVE_THE_TRADE = {
    "zonewright.design..",
    "zonewright.whatif..",
    "zonewright.equation..",
    "zonewright.uncertainty..",
    "zonewright.audit..",
    "zonewright.help..",
    "zonewright.handover..",
    "zonewright.practice..",
    "zonewright.exchange..",
    "zonewright.workbook..",
    "zonewright.disk..",
    "zonewright.recovery..",
    "zonewright.desk..",
    "zonewright.command.."
  };

  /** Classes of the program outside the packages named. */
  private static DescribedPredicate<JavaClass> programBut(String... packages) {
    return resideInAPackage("zonewright..").and(not(resideInAnyPackage(packages)));
  }

  @Test
  void noTwoClassesHaveOneName() {
    Map<String, List<String>> places =
        PROGRAM.stream()
            .filter(JavaClass::isTopLevelClass)
            .filter(each -> !each.getSimpleName().equals("package-info"))
            .collect(
                Collectors.groupingBy(
                    JavaClass::getSimpleName,
                    Collectors.mapping(JavaClass::getPackageName, Collectors.toList())));
    assertThat(places).hasSizeGreaterThan(100).allSatisfy((name, in) -> assertThat(in).hasSize(1));
  }

  @Test
  void theProgramWasFoundAtAll() {
    assertThat(PROGRAM).hasSizeGreaterThan(60);
  }

  @Test
  void unitsKnowNobody() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.units..")
        .should()
        .dependOnClassesThat(programBut("zonewright.units.."))
        .because("quantities are the ground floor and know nothing of tables or irrigation")
        .check(PROGRAM);
  }

  @Test
  void formulasKnowOnlyUnits() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.formula..")
        .should()
        .dependOnClassesThat(programBut("zonewright.formula..", "zonewright.units.."))
        .because("a formula is the same in a grid, a workbook and a worked sum")
        .check(PROGRAM);
  }

  @Test
  void sheetsKnowOnlyFormulasAndUnits() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.sheet..")
        .should()
        .dependOnClassesThat(
            programBut("zonewright.sheet..", "zonewright.formula..", "zonewright.units.."))
        .because("tables that calculate know nothing of irrigation")
        .check(PROGRAM);
  }

  @Test
  void equationsAreReadWithoutKnowingTheTrade() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.equation..")
        .should()
        .dependOnClassesThat(
            programBut(
                "zonewright.equation..",
                "zonewright.sheet..",
                "zonewright.formula..",
                "zonewright.units.."))
        .because("what people type is read by the names of columns, whatever they are of")
        .check(PROGRAM);
  }

  @Test
  void alternativesAreOfAnySheets() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.alternatives..")
        .should()
        .dependOnClassesThat(
            programBut(
                "zonewright.alternatives..",
                "zonewright.trade..",
                "zonewright.sheet..",
                "zonewright.formula..",
                "zonewright.units.."))
        .because("what differs is found cell by cell, whatever the sheets are of")
        .check(PROGRAM);
  }

  @Test
  void theTradeKnowsNothingOfDesignsFilesAndScreens() {
    noClasses()
        .that(programBut(ABOVE_THE_TRADE).and(not(resideInAPackage("zonewright"))))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(ABOVE_THE_TRADE)
        .because("whoever can read an equation can read the trade's packages by themselves")
        .check(PROGRAM);
  }

  @Test
  void theTimetableKnowsNobody() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.timetable..")
        .should()
        .dependOnClassesThat(programBut("zonewright.timetable.."))
        .because("placing cycles in nights is a problem of minutes and flows, whatever they are of")
        .check(PROGRAM);
  }

  @Test
  void theBalanceOfASoilKnowsNobody() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.balance..")
        .should()
        .dependOnClassesThat(programBut("zonewright.balance.."))
        .because("water in a soil is a matter of depths and days, whoever waters it")
        .check(PROGRAM);
  }

  @Test
  void theTradeKnowsNothingOfTheNights() {
    noClasses()
        .that(
            programBut(ABOVE_THE_TRADE)
                .and(
                    not(
                        resideInAnyPackage(
                            "zonewright", "zonewright.nights..", "zonewright.season.."))))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("zonewright.nights..")
        .because("run times, cycles and soaks are what they are, whenever they are given")
        .check(PROGRAM);
  }

  @Test
  void designsKnowNothingOfFilesAndScreens() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.design..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "zonewright.whatif..",
            "zonewright.uncertainty..",
            "zonewright.audit..",
            "zonewright.help..",
            "zonewright.exchange..",
            "zonewright.workbook..",
            "zonewright.desk..",
            "zonewright.command..")
        .because("a design is the same on a screen, on a command line and in a file")
        .check(PROGRAM);
  }

  @Test
  void whatIsTriedKnowsNothingOfFilesAndScreens() {
    noClasses()
        .that()
        .resideInAnyPackage("zonewright.whatif..", "zonewright.uncertainty..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("zonewright.workbook..", "zonewright.desk..", "zonewright.command..")
        .because("a search is the same on a screen and on a command line")
        .check(PROGRAM);
  }

  @Test
  void theDiskKnowsNobody() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.disk..")
        .should()
        .dependOnClassesThat(programBut("zonewright.disk.."))
        .because("how a file comes to stand on a disk does not depend on what is in it")
        .check(PROGRAM);
  }

  @Test
  void recoveryKnowsOnlySheetsAndTheDisk() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.recovery..")
        .should()
        .dependOnClassesThat(
            programBut(
                "zonewright.recovery..",
                "zonewright.disk..",
                "zonewright.sheet..",
                "zonewright.formula..",
                "zonewright.units.."))
        .because("what was typed is kept whatever the sheets are about")
        .check(PROGRAM);
  }

  @Test
  void workbooksKnowNothingOfScreens() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.workbook..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("zonewright.desk..", "zonewright.command..")
        .because("files are written without a window")
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  @Test
  void packagesAreFreeOfCircles() {
    slices()
        .matching("zonewright.(*)..")
        .should()
        .beFreeOfCycles()
        .because("a package in a circle cannot be read, tested or replaced alone")
        .check(PROGRAM);
  }

  @Test
  void thePartsOfTheDeskKnowNothingOfTheWindow() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.desk.(*)..")
        .should()
        .dependOnClassesThat(resideInAPackage("zonewright.desk"))
        .because("the window puts its parts together, not they it")
        .check(PROGRAM);
    slices().matching("zonewright.desk.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void classesOfTheDeskAreFreeOfCircles() {
    SliceAssignment classes =
        new SliceAssignment() {
          @Override
          public SliceIdentifier getIdentifierOf(JavaClass any) {
            return any.getPackageName().startsWith("zonewright.desk")
                ? SliceIdentifier.of(any.getName().replaceAll("\\$.*", ""))
                : SliceIdentifier.ignore();
          }

          @Override
          public String getDescription() {
            return "classes of the desk";
          }
        };
    slices()
        .assignedFrom(classes)
        .should()
        .beFreeOfCycles()
        .because("who reads one class of the window should not have to read them all")
        .check(PROGRAM);
  }

  @Test
  void onlyPaperKnowsTheLibraryForItsPages() {
    noClasses()
        .that()
        .resideOutsideOfPackage("zonewright.paper..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..")
        .because("what is on a page is said in words; how it is drawn stands in one place")
        .check(PROGRAM);
  }

  @Test
  void onlyWorkbooksKnowTheLibraryForTheirFiles() {
    noClasses()
        .that()
        .resideOutsideOfPackage("zonewright.workbook..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.poi..", "org.openxmlformats..", "org.apache.xmlbeans..")
        .because("another file format must cost one package")
        .check(PROGRAM);
  }

  @Test
  void onlyTheDeskKnowsTheScreen() {
    DescribedPredicate<JavaClass> screen =
        resideInAnyPackage(
            "java.awt..", "javax.swing..", "org.jdesktop..", "com.formdev..", "net.miginfocom..");
    noClasses()
        .that()
        .resideOutsideOfPackages("zonewright.desk..", "zonewright.command..", "zonewright")
        .should()
        .dependOnClassesThat(screen)
        .because("the calculation never knows the screen")
        .check(PROGRAM);
    noClasses()
        .that()
        .resideInAnyPackage("zonewright.command..", "zonewright")
        .should()
        .dependOnClassesThat(
            screen.and(
                not(JavaClass.Predicates.type(java.awt.GraphicsEnvironment.class))
                    .and(not(JavaClass.Predicates.type(java.awt.HeadlessException.class)))))
        .because("starting the program may ask whether there is a screen, and no more")
        .check(PROGRAM);
  }

  @Test
  void theDeskCalculatesNothing() {
    noClasses()
        .that()
        .resideInAPackage("zonewright.desk..")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("zonewright.formula.ColumnProgram")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("zonewright.formula.BlockColumn")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("zonewright.formula.Workspace")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("zonewright.formula.Expressed")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("zonewright.sheet.Calculation")
        .because("windows show what a book holds; every number comes from a column's formula")
        .allowEmptyShould(true)
        .check(PROGRAM);
  }
}
