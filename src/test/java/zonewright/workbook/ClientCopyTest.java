package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.ForClient;
import zonewright.design.IrrigationSheets;
import zonewright.design.NightsCalendar;
import zonewright.design.Sample;
import zonewright.design.SheetsInUse;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Extras;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.estimate.ProposalFacts;
import zonewright.formula.Reference;
import zonewright.handover.HandoverPages;
import zonewright.handover.ProposalPages;
import zonewright.retrofit.AsFound;
import zonewright.savings.Cases;
import zonewright.savings.Savings;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.pack.PackOrder;

/** A client gets the design and the price, and nothing of how the office came to it. */
class ClientCopyTest {
  /** What is typed on sheets of the office and printed on the proposal, because it is meant so. */
  private static final Set<Reference> PRINTED =
      Set.of(
          JobFacts.CURRENCY.reference(),
          Extras.LABEL.reference(),
          ProposalFacts.CLIENT.reference(),
          ProposalFacts.NUMBER.reference(),
          ProposalFacts.DATE.reference(),
          ProposalFacts.VALID.reference(),
          ProposalFacts.SCOPE.reference(),
          ProposalFacts.EXCLUDED.reference(),
          ProposalFacts.DEPOSIT_SHARE.reference(),
          ProposalFacts.PROGRESS_SHARE.reference(),
          ProposalFacts.TERMS.reference(),
          ProposalFacts.SIGNED_BY.reference(),
          Savings.DISCOUNT.reference(),
          Savings.WATER_RISE.reference(),
          Savings.LIFE.reference(),
          Savings.UPKEEP.reference(),
          Cases.ACHIEVED.reference(),
          Cases.RISE.reference());

  /** Words of the client's sheets that are meant for a client. */
  private static final Set<Reference> MEANT =
      Set.of(
          Facts.PROJECT_NAME.reference(),
          Facts.LOCATION.reference(),
          Facts.PREPARED_BY.reference(),
          Facts.ZONE_PLACE.reference(),
          AsFound.of(Facts.ZONE_PLACE));

  /** How near two sums of money, rounded to cents and taken apart again, may come. */
  private static final double NEAR = 2e-5;

  @TempDir Path folder;

  private final Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
  private final Book book = design.book();
  private final List<Edit> edits = new ArrayList<>();
  private final Random random = new Random(61);
  private final List<String> words = new ArrayList<>();
  private final Map<Double, Column> numbers = new LinkedHashMap<>();

  /** The first zones are enough. */
  @BeforeEach
  void small() {
    for (String table : List.of(Sheets.ZONES, Sheets.FOUND)) {
      book.perform(design.edits().removed(table, 3, book.rows(table) - 3));
    }
  }

  private Path written(PackOrder order) throws DesignFileException {
    Path file = folder.resolve("client.xlsx");
    DesignFile.write(design, file, order, Optional.empty());
    return file;
  }

  private Path written() throws DesignFileException {
    return written(PackOrder.forClient());
  }

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  /** All parts of the file as text, and what else goes to a client. */
  private String everything(Path file) throws IOException {
    StringBuilder text = new StringBuilder();
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        ByteArrayOutputStream part = new ByteArrayOutputStream();
        zip.transferTo(part);
        text.append(part.toString(StandardCharsets.UTF_8)).append('\n');
      }
    }
    byte[] pages = HandoverPages.of(design);
    text.append(new String(pages, StandardCharsets.ISO_8859_1));
    for (byte[] each : List.of(pages, ProposalPages.of(design))) {
      try (PDDocument document = Loader.loadPDF(each)) {
        text.append(new PDFTextStripper().getText(document));
      }
    }
    design
        .nights()
        .plan()
        .flatMap(plan -> NightsCalendar.text(design, plan, Clock.systemUTC()))
        .ifPresent(text::append);
    return text.toString();
  }

  private static boolean office(TableDefinition table) {
    return !ForClient.SHEETS.contains(table.id());
  }

  /** Puts a secret into every typed cell of the office's sheets, and all words meant for nobody. */
  private void plant() {
    for (TableDefinition table : book.schema().tables()) {
      if (table.rows() instanceof TableDefinition.Rows.Free && book.rows(table.id()) == 0) {
        book.perform(design.edits().inserted(table.id(), 0, 2));
      }
      for (Column column : table.columns()) {
        boolean name = table.key().filter(column::equals).isPresent();
        if (!table.takesEntries(column) || PRINTED.contains(column.reference())) {
          continue;
        }
        for (int row = 0; row < book.rows(table.id()); row++) {
          if (column.content() == Column.Content.WORDS
              && (office(table) || !(name || MEANT.contains(column.reference())))) {
            words.add("secret" + (1000 + words.size()));
            set(column, row, new Entry.Words(words.get(words.size() - 1)));
          } else if (column.content() == Column.Content.NUMBER && office(table)) {
            secretNumber(column, row);
          }
        }
      }
    }
    book.perform(new Edit.Several("secrets", edits));
  }

  /** A number nobody else has, as large as the column allows; whole numbers tell nothing. */
  private void secretNumber(Column column, int row) {
    double secret = 5000 + random.nextInt(499_999) / 100.0;
    for (int digits = 0; digits < 7; digits++, secret /= 10) {
      double tried = secret;
      if (column
          .bounds()
          .flatMap(range -> range.problem(tried, column.kind(), book.system()))
          .isEmpty()) {
        numbers.put(secret, column);
        set(column, row, new Entry.Figure(secret));
        return;
      }
    }
  }

  private void set(Column column, int row, Entry entry) {
    edits.add(design.edits().set(column.reference(), row, entry));
  }

  private static List<Double> numbersIn(String text) {
    List<Double> found = new ArrayList<>();
    Matcher matcher = Pattern.compile("\\d[\\d,]*\\.\\d+(E-?\\d+)?").matcher(text);
    while (matcher.find()) {
      found.add(Double.valueOf(matcher.group().replace(",", "")));
    }
    return found;
  }

  private static boolean same(double one, double other, double near) {
    return Math.abs(one - other) <= near * Math.max(Math.abs(one), Math.abs(other));
  }

  @ParameterizedTest
  @ValueSource(strings = {JobFacts.ON_PRICE, JobFacts.ON_MATERIAL, JobFacts.IN_PRICES})
  void noSecretOfTheOfficeIsInAnyPartOfWhatTheClientGets(String taxOn) throws Exception {
    plant();
    type(JobFacts.TAX_ON, 0, taxOn);
    assertThat(words).hasSizeGreaterThan(100);
    assertThat(numbers).hasSizeGreaterThan(200);
    String everything = everything(written());
    assertThat(everything).contains("Proposal");
    assertThat(words.stream().filter(everything::contains)).isEmpty();
    TreeSet<Double> there = new TreeSet<>(numbersIn(everything));
    assertThat(
            numbers.entrySet().stream()
                .filter(
                    secret -> {
                      Double next = there.ceiling(secret.getKey() * (1 - 1e-9));
                      return next != null && same(next, secret.getKey(), 1e-9);
                    }))
        .isEmpty();
    assertThat(everything.toLowerCase(Locale.ROOT)).doesNotContain("at cost");
  }

  @ParameterizedTest
  @ValueSource(strings = {JobFacts.ON_PRICE, JobFacts.ON_MATERIAL, JobFacts.IN_PRICES})
  void nothingOfTheOfficeFollowsFromTwoPrintedNumbers(String taxOn) throws Exception {
    type(JobFacts.TAX_ON, 0, taxOn);
    type(JobFacts.TAX_SHARE, 0, "8.37 %");
    type(JobFacts.OVERHEAD_SHARE, 0, "13.71 %");
    type(JobFacts.PROFIT_SHARE, 0, "9.43 %");
    type(JobFacts.CONTINGENCY_SHARE, 0, "4.19 %");
    int allowance = book.rows(Sheets.EXTRAS);
    book.perform(design.edits().inserted(Sheets.EXTRAS, allowance, 1));
    type(Extras.LABEL, allowance, "Rock");
    type(Extras.KIND, allowance, Extras.ALLOWANCE);
    type(Extras.AMOUNT, allowance, "2317.43");
    double rate = book.number(JobFacts.TAX_SHARE.reference(), 0);
    List<Double> secrets = new ArrayList<>();
    for (Column column :
        List.of(
            BuildUp.MATERIAL,
            BuildUp.LABOUR,
            BuildUp.HOURS,
            BuildUp.EQUIPMENT,
            BuildUp.SUBCONTRACT,
            BuildUp.ALLOWANCES,
            BuildUp.DIRECT,
            BuildUp.OVERHEAD,
            BuildUp.PROFIT,
            BuildUp.CONTINGENCY,
            JobFacts.LABOUR_RATE,
            JobFacts.OVERHEAD_SHARE,
            JobFacts.PROFIT_SHARE,
            JobFacts.CONTINGENCY_SHARE)) {
      secrets.add(book.number(column.reference(), 0));
    }
    for (int row = 0; row < book.rows(Sheets.EXTRAS); row++) {
      secrets.add(book.number(Extras.AMOUNT.reference(), row));
    }
    secrets.removeIf(secret -> secret == 0);
    List<Double> printed = new ArrayList<>(List.of(rate, 1 + rate));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written()))) {
      for (Row row : workbook.getSheet("Proposal")) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.NUMERIC && cell.getNumericCellValue() != 0) {
            printed.add(cell.getNumericCellValue());
          }
        }
      }
    }
    assertThat(printed).hasSizeGreaterThan(20);
    assertThat(found(secrets, printed)).isEmpty();
    double tax = book.number(BuildUp.TAX.reference(), 0);
    if (taxOn.equals(JobFacts.ON_MATERIAL)) {
      assertThat(found(secrets, List.of(rate, tax)))
          .as("the tax on material, had it been printed, tells what the material costs")
          .contains(book.number(BuildUp.MATERIAL.reference(), 0));
    } else {
      assertThat(printed).as("what the client is charged").contains(tax);
    }
  }

  private static Set<Double> found(List<Double> secrets, List<Double> printed) {
    Set<Double> found = new TreeSet<>();
    for (double one : printed) {
      for (double other : printed) {
        for (double result :
            new double[] {
              one, one + other, one - other, one * other, one / other, one / other - 1
            }) {
          secrets.stream().filter(secret -> same(secret, result, NEAR)).forEach(found::add);
        }
      }
    }
    return found;
  }

  /** Whoever types words into a cell for a number or a choice types words nonetheless. */
  @Test
  void whatCannotBeReadStaysInTheOfficeToo() throws Exception {
    for (TableDefinition table : book.schema().tables()) {
      for (Column column : table.inputs()) {
        if (column.content() != Column.Content.WORDS && book.rows(table.id()) > 0) {
          edits.add(design.edits().typed(column.reference(), 0, "secret of nobody’s business"));
        }
      }
    }
    book.perform(new Edit.Several("secrets", edits));
    String everything = everything(written(PackOrder.forClient().withoutProposal()));
    assertThat(everything).contains("Zones").doesNotContain("nobody’s business");
  }

  @Test
  void itsSheetsAreThoseListedAndNoFormulaAsksForAnother() throws Exception {
    Path file = written();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (TableDefinition table : book.schema().tables()) {
        if (office(table)) {
          assertThat(workbook.getSheet(table.title())).as(table.title()).isNull();
        } else if (SheetsInUse.ALWAYS.contains(table.id())) {
          assertThat(workbook.getSheet(table.title())).as(table.title()).isNotNull();
        }
      }
    }
    String titles =
        book.schema().tables().stream()
            .filter(ClientCopyTest::office)
            .map(TableDefinition::title)
            .collect(Collectors.joining("|"));
    String everything = everything(file);
    Pattern asked = Pattern.compile("[(=,>' ](" + titles + ")(\\[|!|'!)[^<]{0,60}");
    assertThat(asked.matcher(everything).results().map(MatchResult::group)).isEmpty();
    Pattern named = Pattern.compile("name=\"(" + titles + ")_[^\"]*");
    assertThat(named.matcher(everything).results().map(MatchResult::group)).isEmpty();
    assertThat(everything).contains("Zones[", "Site_");
  }

  @Test
  void findingsOfTheOfficeAreNotForTheClient() throws Exception {
    type(Parts.PRICE, 0, "");
    type(JobFacts.LABOUR_RATE, 0, "");
    assertThat(design.findings()).anyMatch(each -> each.line().contains("has no price"));
    String everything = everything(written(PackOrder.forClient().withoutProposal()));
    assertThat(everything).doesNotContain("has no price", "an hour has no price", "labour");
  }

  @Test
  void withoutAProposalNothingIsWritten() {
    type(Parts.PRICE, 0, "");
    assertThatThrownBy(this::written)
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("The proposal cannot be made, so nothing was written.");
    assertThat(folder.resolve("client.xlsx")).doesNotExist();
  }

  @Test
  void theZonesGiveTheSameFiguresAsInTheOffice() throws Exception {
    Book client = ForClient.of(design).book();
    for (String table : ForClient.SHEETS) {
      assertThat(client.rows(table)).as(table).isEqualTo(book.rows(table));
      for (Column column : IrrigationSheets.schema().table(table).columns()) {
        for (int row = 0;
            column.content() == Column.Content.NUMBER && row < book.rows(table);
            row++) {
          assertThat(client.number(column.reference(), row))
              .as("%s, row %s", column, row)
              .isEqualTo(Double.valueOf(book.number(column.reference(), row)));
        }
      }
    }
    Design back = DesignFile.read(written()).design();
    assertThat(Designs.zones(back)).isEqualTo(Designs.zones(ForClient.of(design)));
  }

  @Test
  void thePriceIsInItAndAnotherProgramFindsNothingBroken() throws IOException, DesignFileException {
    SpreadsheetProgram.require();
    double price = book.number(BuildUp.TOTAL.reference(), 0);
    assertThat(price).isPositive();
    Path again = SpreadsheetProgram.recalculate(written(), folder);
    List<String> broken = new ArrayList<>();
    boolean found = false;
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(again))) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            CellType type =
                cell.getCellType() == CellType.FORMULA
                    ? cell.getCachedFormulaResultType()
                    : cell.getCellType();
            // #N/A says that something is not known yet; any other error is a broken formula.
            if (type == CellType.ERROR && cell.getErrorCellValue() != FormulaError.NA.getCode()) {
              broken.add(sheet.getSheetName() + " " + cell.getAddress());
            }
            found |=
                sheet.getSheetName().equals("Proposal")
                    && type == CellType.NUMERIC
                    && Math.abs(cell.getNumericCellValue() - price) < 0.005;
          }
        }
      }
    }
    assertThat(broken).isEmpty();
    assertThat(found).as("the proposal names the price %s", price).isTrue();
  }
}
