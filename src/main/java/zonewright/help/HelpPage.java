package zonewright.help;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * One page.
 *
 * @param file its file name
 * @param title its title
 * @param body its content as HTML, without the frame
 * @param picture the name of the pictures it opens with, without look and ending; empty for none
 */
public record HelpPage(String file, String title, String body, String picture) {
  private static final String STYLE =
      "body{font-family:sans-serif;max-width:52em;margin:2em auto;padding:0 1em;line-height:1.5;color:#1f2a2e;background:#fdfdfb}"
          + "h1{font-size:1.6em}h2{font-size:1.2em;margin-top:2em}h3{font-size:1em;margin:1.6em 0 .2em}"
          + "table{border-collapse:collapse;margin:.4em 0 1em}td,th{text-align:left;vertical-align:top;padding:.15em .8em .15em 0;"
          + "border-bottom:1px solid #dde3dd}th{font-weight:600;white-space:nowrap}td.number{text-align:right}"
          + ".quiet{color:#5b6b66}a{color:#17627a}img{width:100%;height:auto;border:1px solid #dde3dd}";

  /**
   * Returns the whole page.
   *
   * @param folder where it is to stand: it shows the pictures that are there in {@code images}
   */
  public String html(Path folder) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>"
        + escaped(title)
        + "</title>\n<style>"
        + STYLE
        + "</style>\n</head>\n<body>\n<p class=\"quiet\"><a href=\"index.html\">All pages</a></p>\n<h1>"
        + escaped(title)
        + "</h1>\n"
        + figure(folder)
        + body
        + "\n</body>\n</html>\n";
  }

  private String figure(Path folder) {
    String light = "images/" + picture + "-light.png";
    String dark = "images/" + picture + "-dark.png";
    if (!Files.exists(folder.resolve(light)) || !Files.exists(folder.resolve(dark))) {
      return "";
    }
    return """
        <picture><source media="(prefers-color-scheme: dark)" srcset="%s"><img src="%s" alt="%s"></picture>
        """
        .formatted(dark, light, escaped(title) + ", as the window shows it");
  }

  /** Returns text that means itself in HTML. */
  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
