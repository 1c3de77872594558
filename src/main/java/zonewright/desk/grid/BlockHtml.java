package zonewright.desk.grid;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.parser.ParserDelegator;

/** Blocks of cells as tables of the web, which word processors and mail programs exchange. */
final class BlockHtml {
  private BlockHtml() {}

  /** Returns the cells of the tables in a page; none where it holds no table. */
  static List<List<String>> read(String page) {
    Reader reader = new Reader();
    try {
      new ParserDelegator().parse(new StringReader(page), reader, true);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return reader.rows;
  }

  /** Returns cells as a table. */
  static String write(List<List<String>> rows) {
    StringBuilder page =
        new StringBuilder("<html><head><meta charset=\"utf-8\"></head><body><table>\n");
    for (List<String> row : rows) {
      page.append("<tr>");
      for (String cell : row) {
        page.append("<td>").append(escaped(cell)).append("</td>");
      }
      page.append("</tr>\n");
    }
    return page.append("</table></body></html>").toString();
  }

  private static String escaped(String cell) {
    return cell.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\n", "<br>");
  }

  /** Gathers the words of cells. */
  private static final class Reader extends HTMLEditorKit.ParserCallback {
    private final List<List<String>> rows = new ArrayList<>();
    private StringBuilder cell = new StringBuilder();
    private boolean inside;

    @Override
    public void handleStartTag(HTML.Tag tag, MutableAttributeSet attributes, int at) {
      if (tag == HTML.Tag.TR) {
        rows.add(new ArrayList<>());
      } else if (tag == HTML.Tag.TD || tag == HTML.Tag.TH) {
        inside = true;
        cell = new StringBuilder();
      }
    }

    @Override
    public void handleEndTag(HTML.Tag tag, int at) {
      boolean ends = tag == HTML.Tag.TD || tag == HTML.Tag.TH;
      if (ends && inside && !rows.isEmpty()) {
        rows.get(rows.size() - 1).add(cell.toString().strip());
        inside = false;
      }
    }

    @Override
    public void handleSimpleTag(HTML.Tag tag, MutableAttributeSet attributes, int at) {
      if (tag == HTML.Tag.BR && inside) {
        cell.append('\n');
      }
    }

    @Override
    public void handleText(char[] words, int at) {
      if (inside) {
        cell.append(words);
      }
    }
  }
}
