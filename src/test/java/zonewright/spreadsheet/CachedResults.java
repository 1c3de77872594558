package zonewright.spreadsheet;

import java.io.FilterInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLEventFactory;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLEventWriter;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.StartElement;
import javax.xml.stream.events.XMLEvent;

/**
 * Rewrites the results that an .xlsx file carries beside its formulas, leaving everything else
 * alone. A program that gives the right number for such a file has calculated it.
 *
 * <p>Source of the names: ECMA-376 part 1, 18.3.1.4 (c), 18.3.1.40 (f) and 18.3.1.96 (v).
 */
public final class CachedResults {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final QName CELL = new QName(MAIN, "c");
  private static final QName FORMULA = new QName(MAIN, "f");
  private static final QName VALUE = new QName(MAIN, "v");
  private static final XMLEventFactory EVENTS = XMLEventFactory.newInstance();

  private CachedResults() {}

  /**
   * Writes a copy whose formula cells carry no result.
   *
   * @return how many formula cells the workbook holds
   */
  public static int strip(Path workbook, Path copy) {
    return rewrite(workbook, copy, Optional.empty());
  }

  /**
   * Writes a copy whose formula cells all carry the same wrong number.
   *
   * @return how many formula cells the workbook holds
   */
  public static int plant(double wrong, Path workbook, Path copy) {
    return rewrite(workbook, copy, Optional.of(Double.toString(wrong)));
  }

  private static int rewrite(Path workbook, Path copy, Optional<String> result) {
    int formulas = 0;
    try (ZipInputStream from = new ZipInputStream(Files.newInputStream(workbook));
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(copy))) {
      for (ZipEntry part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
        to.putNextEntry(new ZipEntry(part.getName()));
        if (part.getName().matches("xl/worksheets/[^/]+\\.xml")) {
          formulas += rewriteSheet(from, to, result);
        } else {
          from.transferTo(to);
        }
        to.closeEntry();
      }
    } catch (IOException exception) {
      throw new UncheckedIOException("While rewriting " + workbook, exception);
    } catch (XMLStreamException exception) {
      throw new IllegalStateException(workbook + " holds a sheet that is not XML", exception);
    }
    return formulas;
  }

  private static int rewriteSheet(InputStream from, OutputStream to, Optional<String> result)
      throws XMLStreamException {
    XMLInputFactory input = XMLInputFactory.newInstance();
    input.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    XMLEventReader reader = input.createXMLEventReader(kept(from), "UTF-8");
    XMLEventWriter writer = XMLOutputFactory.newInstance().createXMLEventWriter(kept(to), "UTF-8");
    int formulas = 0;
    while (reader.hasNext()) {
      XMLEvent event = reader.nextEvent();
      if (!starts(event, CELL)) {
        writer.add(event);
        continue;
      }
      List<XMLEvent> cell = restOfCell(event.asStartElement(), reader);
      boolean calculated = cell.stream().anyMatch(inside -> starts(inside, FORMULA));
      formulas += calculated ? 1 : 0;
      for (XMLEvent inside : calculated ? withResult(cell, result) : cell) {
        writer.add(inside);
      }
    }
    writer.flush();
    return formulas;
  }

  private static List<XMLEvent> restOfCell(StartElement start, XMLEventReader reader)
      throws XMLStreamException {
    List<XMLEvent> cell = new ArrayList<>(List.of(start));
    while (!ends(cell.get(cell.size() - 1), CELL)) {
      cell.add(reader.nextEvent());
    }
    return cell;
  }

  private static List<XMLEvent> withResult(List<XMLEvent> cell, Optional<String> result) {
    List<XMLEvent> rewritten = new ArrayList<>();
    rewritten.add(withoutType(cell.get(0).asStartElement()));
    boolean inOldValue = false;
    for (XMLEvent event : cell.subList(1, cell.size() - 1)) {
      inOldValue |= starts(event, VALUE);
      if (!inOldValue) {
        rewritten.add(event);
      }
      inOldValue &= !ends(event, VALUE);
    }
    result.ifPresent(
        number -> {
          rewritten.add(EVENTS.createStartElement(VALUE, null, null));
          rewritten.add(EVENTS.createCharacters(number));
          rewritten.add(EVENTS.createEndElement(VALUE, null));
        });
    rewritten.add(cell.get(cell.size() - 1));
    return rewritten;
  }

  /** The type says what the old result was (text, error, truth); a number needs none. */
  private static StartElement withoutType(StartElement cell) {
    List<Attribute> attributes = new ArrayList<>();
    for (Iterator<Attribute> all = cell.getAttributes(); all.hasNext(); ) {
      Attribute attribute = all.next();
      if (!attribute.getName().equals(new QName("t"))) {
        attributes.add(attribute);
      }
    }
    return EVENTS.createStartElement(cell.getName(), attributes.iterator(), cell.getNamespaces());
  }

  private static boolean starts(XMLEvent event, QName name) {
    return event.isStartElement() && event.asStartElement().getName().equals(name);
  }

  private static boolean ends(XMLEvent event, QName name) {
    return event.isEndElement() && event.asEndElement().getName().equals(name);
  }

  /** The parser closes what it reads, but the archive has more parts. */
  private static InputStream kept(InputStream stream) {
    return new FilterInputStream(stream) {
      @Override
      public void close() {}
    };
  }

  private static OutputStream kept(OutputStream stream) {
    return new FilterOutputStream(stream) {
      @Override
      public void write(byte[] bytes, int start, int length) throws IOException {
        out.write(bytes, start, length);
      }

      @Override
      public void close() throws IOException {
        flush();
      }
    };
  }
}
